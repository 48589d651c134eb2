using System.ComponentModel;
using MeltShop.Metallurgy.Statistics;
using MeltShop.Web.Api.Answering;

namespace MeltShop.Web.Api.Burns;

/// <summary>The answer of the burns endpoint.</summary>
internal sealed record BurnsAnswer
{
    public BurnsAnswer(BurnsQuestion question) => Elements = ReplicateBurns
        .Evaluate(question.Burns, question.RepeatabilityPercent)
        .ToDictionary(element => element.Element.Symbol, element => new ElementAnswer(element));

    [Description("By element symbol, every element that a burn holds.")]
    public IReadOnlyDictionary<string, ElementAnswer> Elements { get; }
}

internal sealed record ElementAnswer
{
    public ElementAnswer(BurnEvaluation evaluation)
    {
        Mean = evaluation.Mean;
        StandardDeviation = evaluation.StandardDeviation;
        Count = evaluation.Count;
        Range = evaluation.Range;
        Suspects = [.. evaluation.Suspects.Select(SuspectAnswer.From)];
        Why = evaluation.Why is null ? null : Words.For(evaluation.Why);
    }

    [Description("Mean over all burns that hold the element, suspects included, %.")]
    public double Mean { get; }

    [Description("Standard deviation with n − 1, percentage points; null for a single burn.")]
    public double? StandardDeviation { get; }

    [Description("Burns that hold the element.")]
    public int Count { get; }

    [Description("Highest less lowest, percentage points.")]
    public double Range { get; }

    [Description("Burns that do not fit the others. They are marked, not removed.")]
    public IReadOnlyList<SuspectAnswer> Suspects { get; }

    [Description("Why no test could be made.")]
    public string? Why { get; }
}

internal sealed record SuspectAnswer(
    [property: Description("Place among the burns, from 0.")] int Burn,
    [property: Description("range (against the known repeatability) or grubbs.")] string Test,
    [property: Description("Level of the test that it fails, %: 5 or 1.")] int Level,
    [property: Description("suspect at 5 %, outlying at 1 %.")] string Verdict)
{
    public static SuspectAnswer From(SuspectBurn suspect) => new(
        suspect.Burn, suspect.Test == BurnTest.Range ? "range" : "grubbs", suspect.LevelPercent, suspect.LevelPercent == 1 ? "outlying" : "suspect");
}
