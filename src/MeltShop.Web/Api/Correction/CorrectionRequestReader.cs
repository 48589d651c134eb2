using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;
using MeltShop.Web.Api.Parts;
using MeltShop.Web.Api.Reading;

namespace MeltShop.Web.Api.Correction;

/// <summary>Reads the question of the correction endpoint.</summary>
internal static class CorrectionRequestReader
{
    public static CorrectionProblem Read(ObjectReader request)
    {
        var bathKg = request.Needed("bathKg", NumberRule.SomeMass);
        var analysis = request.NeededAnalysis("analysis");
        var maxTapOffKg = request.Number("maxTapOffKg", NumberRule.Mass) ?? 0;
        var tapOffCost = request.Number("tapOffCostPerTonne", new("tapOff.costNotPositive", cost => cost > 0 || maxTapOffKg == 0));
        if (maxTapOffKg > 0 && !request.Has("tapOffCostPerTonne")) request.Report("tapOffCostPerTonne", "tapOff.noCost");
        return new()
        {
            Bath = double.IsNaN(bathKg) ? Metal.None : Metal.Of(bathKg, analysis),
            TemperatureC = request.Needed("temperatureC", NumberRule.LiquidIron),
            Additions = MaterialReader.ReadAll(request, "additions", withHeat: true),
            Limits = LimitReader.ReadAll(request, withMargin: true),
            MaxAdditionKg = request.Number("maxAdditionKg", NumberRule.Mass),
            CapacityKg = request.Number("capacityKg", NumberRule.Mass),
            MaxTapOffKg = maxTapOffKg,
            TapOffCostPerTonne = tapOffCost,
        };
    }
}
