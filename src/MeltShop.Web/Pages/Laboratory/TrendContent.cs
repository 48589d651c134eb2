using MeltShop.Operations.Laboratory;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Laboratory;

/// <param name="Grade">The one that is drawn; null where all are.</param>
public sealed record TrendContent(TrendView Trend, FirstSampleHits Hits, GradeView? Grade, IReadOnlyList<Choice> Grades, IReadOnlyList<Choice> Furnaces);
