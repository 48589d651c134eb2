using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;
using MeltShop.Web.Api.Parts;
using MeltShop.Web.Api.Reading;

namespace MeltShop.Web.Api.Charge;

/// <summary>Reads the question of the charge endpoint.</summary>
internal static class ChargeRequestReader
{
    public static ChargeProblem Read(ObjectReader request)
    {
        var meltKg = request.Needed("meltKg", NumberRule.SomeMass);
        var toleranceKg = request.Number("meltToleranceKg", NumberRule.Mass) ?? 0;
        var heel = ReadHeel(request);
        if (heel.Kg > meltKg) request.Report("heel.kg", "heel.heavierThanMelt", heel.Kg, meltKg);
        return new()
        {
            MeltKg = meltKg,
            MeltToleranceKg = toleranceKg,
            Heel = heel,
            Materials = MaterialReader.ReadAll(request, "materials", withHeat: false),
            Limits = LimitReader.ReadAll(request, withMargin: false),
            ConfidencePercent = request.Number("confidencePercent", NumberRule.Confidence) ?? 50,
        };
    }

    private static Metal ReadHeel(ObjectReader request)
    {
        if (request.Object("heel") is not { } reader) return Metal.None;
        var kg = reader.Needed("kg", NumberRule.Mass);
        var analysis = reader.Analysis("analysis");
        reader.RefuseTheRest();
        return double.IsNaN(kg) ? Metal.None : Metal.Of(kg, analysis);
    }
}
