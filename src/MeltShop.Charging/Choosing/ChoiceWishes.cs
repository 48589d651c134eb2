namespace MeltShop.Charging.Choosing;

/// <summary>What the plans to choose from are to be like.</summary>
public sealed record ChoiceWishes
{
    /// <summary>How much dearer than the cheapest plan a plan may be that has fewer materials, more returns or more safety; percent of its cost, 0 or more.</summary>
    public double MostDearerPercent { get; init; } = 2;

    /// <summary>Codes of the materials that count as returns; where there are none, no plan with most returns is made.</summary>
    public IReadOnlyList<string> Returns { get; init; } = [];

    /// <summary>
    /// What was charged last time, kg by code; only the proportions matter, and a code that the problem does not hold is gone. Empty: no such plan is made.
    /// </summary>
    public IReadOnlyDictionary<string, double> LastTimeKg { get; init; } = new Dictionary<string, double>();

    /// <summary>Less of a material than this nobody weighs, kg weighed, 0 or more: the plans beside the cheapest do without such traces where they can. 0: any mass will do.</summary>
    public double LeastKg { get; init; }

    /// <exception cref="ArgumentException">A number is not finite or below zero.</exception>
    internal void Require()
    {
        foreach (var number in (double[])[.. LastTimeKg.Values, MostDearerPercent, LeastKg])
        {
            if (!double.IsFinite(number) || number < 0) throw new ArgumentException($"{number} has to be a finite number, 0 or more.");
        }
    }
}
