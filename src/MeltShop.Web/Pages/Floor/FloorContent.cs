using MeltShop.Records.Reading.Floor;
using MeltShop.Records.Reading.Grades;

namespace MeltShop.Web.Pages.Floor;

/// <summary>What runs, the grades whose windows its samples are held against, and what waits for somebody.</summary>
public sealed record FloorContent(FloorView Floor, IReadOnlyDictionary<string, GradeView> Grades);
