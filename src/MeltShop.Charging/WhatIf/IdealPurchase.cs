using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Charging.WhatIf;

/// <summary>The ideal metal is iron and the pure elements that the limits name, in the proportions that need the least of them together.</summary>
public sealed partial record IdealPurchase
{
    private const string Prefix = "pure ";

    internal static IdealPurchase? Least(ChargeProblem problem, ref bool isUncertain, CancellationToken cancellation)
    {
        var codes = problem.Materials.Select(m => m.Code).ToHashSet();
        var pure = new Dictionary<string, Element?> { [Free("iron", codes)] = null };
        foreach (var element in problem.Limits.SelectMany(l => l.Quantity.Terms.Keys).Distinct()) pure.Add(Free(element.Symbol, codes), element);
        var melt = ChargeOptimiser.MeltOf(problem with { Materials = [.. problem.Materials, .. pure.Select(p => Pure(p.Key, p.Value))] });
        if (Purchases.Solve(melt, c => pure.ContainsKey(c.Name), ref isUncertain, cancellation) is not { } result) return null;
        var kg = result.Sum(c => pure.ContainsKey(c.Name) ? 1 : 0);
        if (kg <= 1e-9 * melt.ScaleKg) return null;
        return new(kg, Analysis.Of(pure.Where(p => p.Value is not null)
            .Select(p => KeyValuePair.Create(p.Value!, 100 * result.Sum(c => c.Name == p.Key ? 1 : 0) / kg)).Where(p => p.Value > 0)));
    }

    private static ChargeMaterial Pure(string code, Element? element) => new()
    {
        Code = code,
        PricePerTonne = 0,
        Composition = new MaterialComposition { Analysis = element is null ? Analysis.Empty : Analysis.Of((element, 100)) },
    };

    private static string Free(string name, HashSet<string> taken)
    {
        var code = Prefix + name;
        while (taken.Contains(code)) code = Prefix + code;
        return code;
    }
}
