using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Web.Api.Reading;

namespace MeltShop.Web.Api.Treatment;

/// <summary>Reads the question of the treatment endpoint.</summary>
internal static class TreatmentRequestReader
{
    public static TreatmentProblem Read(ObjectReader request)
    {
        var baseAnalysis = request.NeededAnalysis("baseAnalysis");
        // More magnesium on top of some is a second treatment: the recovery of the first says nothing about it.
        if (baseAnalysis.OrZero(Element.Mg) > 0)
            request.Report("baseAnalysis.Mg", "treatment.baseHasMagnesium", baseAnalysis.OrZero(Element.Mg));
        return new()
        {
            IronKg = request.Needed("ironKg", NumberRule.SomeMass),
            TemperatureC = request.Needed("temperatureC", NumberRule.LiquidIron),
            BaseAnalysis = baseAnalysis,
            TargetMgPercent = request.Needed("targetMgPercent", NumberRule.WantedPercent),
            AtMinutes = request.Needed("atMinutes", NumberRule.Minutes),
            Recipe = new()
            {
                Alloy = ReadAlloy(request),
                MgRecoveryPercent = request.Needed("mgRecoveryPercent", NumberRule.Recovery),
                RecoveryTemperatureC = request.Number("recoveryTemperatureC", NumberRule.LiquidIron),
                Fade = ReadFade(request),
                SulphurLeftPercent = request.Needed("sulphurLeftPercent", NumberRule.Percent),
            },
        };
    }

    private static MaterialComposition ReadAlloy(ObjectReader request)
    {
        if (request.NeededObject("alloy") is not { } reader) return new() { Analysis = Analysis.Empty };
        var alloy = new MaterialComposition
        {
            Analysis = reader.NeededAnalysis("analysis"),
            RecoveryPercent = reader.PerElement("recoveryPercent", NumberRule.Recovery),
        };
        if (alloy.RecoveryPercent.ContainsKey(Element.Mg)) reader.Report("recoveryPercent.Mg", "treatment.recoveryNamesMagnesium");
        reader.RefuseTheRest();
        return alloy;
    }

    private static Fade ReadFade(ObjectReader request)
    {
        var none = new Fade.Exponential(0);
        if (request.NeededObject("fade") is not { } reader) return none;
        var perMinute = reader.Number("perMinute", NumberRule.Fade);
        var percentPerMinute = reader.Number("percentPerMinute", NumberRule.Fade);
        if (reader.Has("perMinute") == reader.Has("percentPerMinute")) request.Report("fade", "fade.notOne");
        reader.RefuseTheRest();
        return (perMinute, percentPerMinute) switch
        {
            ({ } k, null) => new Fade.Exponential(k),
            (null, { } a) => new Fade.Linear(a),
            _ => none,
        };
    }
}
