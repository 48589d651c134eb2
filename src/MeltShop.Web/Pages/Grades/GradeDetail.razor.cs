using MeltShop.Operations.Grades;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Writing;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Grades;

/// <summary>One grade: its furnace and its poured window, and what the standard asks.</summary>
public sealed partial class GradeDetail
{
    [Parameter]
    public long Id { get; set; }

    [Inject]
    private GradesPage Page { get; set; } = null!;

    [Inject]
    private ChangeWindow Window { get; set; } = null!;

    protected override Task<GradeView?> Read(CancellationToken ct) => Page.Grade(Id, ct);

    protected override bool Concerns(ChangeNotice change) => change.Kind == ChangeKind.Grade ? change.Id == Id : change.Kind is ChangeKind.Material;
}
