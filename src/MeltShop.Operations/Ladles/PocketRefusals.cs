using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;

namespace MeltShop.Operations.Ladles;

/// <summary>What a card is refused for although it can be worked out: iron that this process, this alloy or this ladle does not fit.</summary>
internal static class PocketRefusals
{
    /// <summary>
    /// Less base sulphur gives too much effective magnesium, chill and few nodules: 0.004 % is named as too low (C. Forrest, Sorelmetal
    /// Suggestion Sheet 95, read in an excerpt).
    /// </summary>
    private const double LeastSulphurPercent = 0.004;

    public static void Check(PocketFacts facts, PocketChoice choice, PocketAnswer answer, FieldCheck fields)
    {
        if (answer.Problem is { } problem) Sulphur(facts, problem.BaseAnalysis.OrZero(Element.S), fields);
        if (facts.Process is { } process && answer.Problem is not null)
        {
            if (choice.PlannedKg < process.IronLeastKg) fields.Add("plannedKg", "process.tooLittleIron", process.IronLeastKg);
            if (choice.PlannedKg > process.IronMostKg) fields.Add("plannedKg", "process.tooMuchIron", process.IronMostKg);
        }

        var silicon = facts.Poured.FirstOrDefault(w => w.Quantity == Element.Si.Symbol)?.Most;
        if (answer.SiliconPercent > silicon) fields.Add(answer.Problem is null ? "inoculantRatePercent" : "alloyMaterialId", "silicon.tooHigh", answer.SiliconPercent, silicon);
        if (choice.TemperatureC > facts.Ladle.MostTreatmentC) fields.Add("temperatureC", "treatment.tooHot", facts.Ladle.MostTreatmentC);
        if (answer.Temperature.LastMouldC < facts.Ladle.LeastPouringC)
        {
            fields.Add("temperatureC", "treatment.notHotEnough", answer.Temperature.LastMouldC, facts.Ladle.LeastPouringC);
        }
    }

    private static void Sulphur(PocketFacts facts, double sulphur, FieldCheck fields)
    {
        if (sulphur > facts.Process?.BaseSulphurMost) fields.Add("baseSulphurPercent", "sulphur.tooHigh", sulphur, facts.Process.BaseSulphurMost);
        if (sulphur <= LeastSulphurPercent) fields.Add("baseSulphurPercent", "sulphur.tooLow", sulphur, LeastSulphurPercent);
    }
}
