using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Heat;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Checking;
using MeltShop.Records.Grades;

namespace MeltShop.Operations.Ladles;

/// <summary>What a pocket card says beside the magnesium: later inoculants, copper or tin, silicon that is poured, temperatures.</summary>
internal static class PocketAdditions
{
    private static readonly IReadOnlyList<Element> PearliteFormers = [Element.Cu, Element.Sn];

    public static PocketAnswer With(PocketFacts facts, PocketChoice choice, PocketAnswer answer, FieldCheck fields)
    {
        double? Kg(double? rate) => rate is { } percent ? Inoculation.InoculantKg(choice.PlannedKg, percent) : null;
        var (stream, mould) = (Kg(choice.Extras.StreamRatePercent), Kg(choice.Extras.MouldRatePercent));
        var iron = answer.Iron?.AtStart ?? Metal.Of(choice.PlannedKg, facts.Bath);
        var poured = facts.Inoculant is { } inoculant ? Inoculation.After(iron, inoculant, answer.InoculantKg + (stream ?? 0) + (mould ?? 0)) : null;
        return answer with
        {
            StreamInoculantKg = stream,
            MouldInoculantKg = mould,
            PearliteKg = facts.Pearlite is { } former ? Pearlite(facts, former, poured ?? iron, fields) : null,
            SiliconPercent = facts.Bath.Has(Element.Si) ? poured?.Percent(Element.Si) : null,
            Temperature = Temperature(facts, choice, answer),
        };
    }

    /// <summary>Kilograms that bring the leading pearlite former of a material to the aim of the poured window, or its least; 0 where it is there.</summary>
    private static double? Pearlite(PocketFacts facts, MaterialComposition material, Metal iron, FieldCheck fields)
    {
        var element = PearliteFormers.MaxBy(e => material.Analysis.OrZero(e))!;
        var window = facts.Poured.FirstOrDefault(w => w.Quantity == element.Symbol);
        if ((window?.Aim ?? window?.Least) is not { } wanted || !facts.Bath.Has(element))
        {
            fields.Add("pearliteMaterialId", "pearlite.noWindow", element.Symbol);
            return null;
        }

        if (iron.Percent(element) >= wanted) return 0;
        if (Addition.Kg(iron, Arrival.PerKilogram(material), element, wanted) is { } kg) return kg;
        fields.Add("pearliteMaterialId", "pearlite.cannot", element.Symbol, wanted);
        return null;
    }

    private static PocketTemperature Temperature(PocketFacts facts, PocketChoice choice, PocketAnswer answer)
    {
        var isGrey = answer.MgFloorPercent is null;
        double? after = isGrey ? choice.TemperatureC : choice.TemperatureC - facts.Ladle.TreatmentLossK;
        var minutes = choice.MinutesToLastMould ?? facts.Recipe?.MinutesToLastMould;
        return new(after, after is { } c && minutes is { } m ? new TemperatureBudget(0, [TemperatureBudget.Ladle(facts.Ladle.HeatLossKPerMinute, m)]).LastMouldC(c) : null);
    }
}
