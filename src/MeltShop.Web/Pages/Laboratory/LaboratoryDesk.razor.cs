using MeltShop.Operations.Laboratory;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Laboratory;

/// <summary>The laboratory at a glance: coins on their way, instruments by their last check, and what they are checked on.</summary>
public sealed partial class LaboratoryDesk
{
    [Inject]
    private LaboratoryPage Page { get; set; } = null!;

    [Inject]
    private AddInstrument AddInstrument { get; set; } = null!;

    [Inject]
    private AddReferenceMaterial AddReference { get; set; } = null!;

    protected override async Task<LaboratoryView?> Read(CancellationToken ct) => await Page.Load(ct);

    protected override bool Concerns(ChangeNotice change) => change.Kind is ChangeKind.Instrument or ChangeKind.Sample or ChangeKind.Heat;

    // No value is torn apart at the end of a line.
    private static string Values(ReferenceView reference) => string.Join("; ", reference.Values.Select(v =>
        $"{v.Element.Symbol} {NumberText.ShowAtLeast(v.Percent, v.Element.Decimals)}{(v.PlusMinus is { } plusMinus ? $" ± {NumberText.ShowAtLeast(plusMinus, v.Element.Decimals)}" : "")} %".Replace(' ', UnitText.Blank)));
}
