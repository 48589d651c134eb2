using MeltShop.Metallurgy.Formulas;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>Metres and feed time of the wire, or kilograms, for the iron that was weighed; and what was really given.</summary>
public sealed partial class DoseForm
{
    private readonly DoseEntry entry = new();

    [Parameter, EditorRequired]
    public TreatedLadleView Treated { get; set; } = null!;

    [Parameter, EditorRequired]
    public LadleEquipment Station { get; set; } = null!;

    [Parameter, EditorRequired]
    public DoseAnswer Dose { get; set; } = null!;

    private bool IsWire => Station.WireMgGramsPerMetre is not null;

    private IReadOnlyList<Formula> Formulas => IsWire ? [TreatmentBalance.Formula, CoredWire.MetresFormula, CoredWire.SecondsFormula] : [TreatmentBalance.Formula];

    private string Figures => Dose switch
    {
        { Metres: { } metres, Seconds: { } seconds } => Text["DoseWire", NumberText.Show(metres, 1), NumberText.Show(seconds, 0)],
        { Metres: { } metres } => Text["DoseWireOnly", NumberText.Show(metres, 1)],
        _ => MassText.Show(Dose.Kg, 1),
    };

    protected override void OnParametersSet()
    {
        entry.Belongs("treatedLadleId", Treated.Id);
        entry.Belongs("version", Treated.Version);
        entry.Belongs("stationId", Station.Id);
        if (!IsWire) entry.WeighIt();
    }
}
