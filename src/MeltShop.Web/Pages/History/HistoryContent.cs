using MeltShop.Records.Reading.History;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.History;

/// <summary>A page of heats and what they can be filtered by.</summary>
public sealed record HistoryContent(HistoryView History, IReadOnlyList<Choice> Grades, IReadOnlyList<Choice> Furnaces);
