using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Grades;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Grades;

/// <summary>Every grade with the heart of its two windows beside what the standard asks of the iron.</summary>
public sealed partial class GradeList
{
    private static readonly IReadOnlyList<string> FurnaceQuantities = ["C", "Si", "Mn"];
    private static readonly IReadOnlyList<string> PouredQuantities = ["C", "Si", "Mn", "Mg"];

    [Inject]
    private GradesPage Page { get; set; } = null!;

    [Inject]
    private AddGrade Adding { get; set; } = null!;

    protected override async Task<GradesView?> Read(CancellationToken ct) => await Page.Load(ct);

    protected override bool Concerns(ChangeNotice change) => change.Kind == ChangeKind.Grade;

    protected override bool IsEmpty(GradesView view) => view.Grades.Count == 0;

    private static string Span(GradeView grade, WindowStage stage, string quantity) =>
        grade.At(stage).FirstOrDefault(window => window.Quantity == quantity) switch
        {
            { Least: { } least, Most: { } most } => $"{Shown(quantity, least)}–{Shown(quantity, most)}",
            { Least: { } least } => $"≥ {Shown(quantity, least)}",
            { Most: { } most } => $"≤ {Shown(quantity, most)}",
            { Aim: { } aim } => Shown(quantity, aim),
            _ => "–",
        };

    private static string Minima(GradeView grade) => GradeProperties.For(grade.Code)?.Rows is [{ ByAgreement: false } first, ..]
        ? string.Join(" · ", new[] { first.TensileMPa, first.ProofMPa, first.ElongationPercent }.OfType<double>().Select(value => NumberText.Show(value)))
        : "–";

    private static string Shown(string quantity, double value) => NumberText.ShowAtLeast(value, Element.Parse(quantity).Decimals);
}
