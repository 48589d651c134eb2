namespace MeltShop.Charging.Problems;

/// <summary>What no problem may hold: a caller that lets it through has a fault. What is well formed but impossible is not refused here.</summary>
internal static class ProblemCheck
{
    /// <exception cref="ArgumentException">A group or a weighing names no material of the problem, a number is not finite or has the wrong sign, or bounds are crossed.</exception>
    public static void Require(ChargeProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var codes = problem.Materials.Select(m => m.Code).ToHashSet();
        if (problem.WeighedKg.Keys.Concat(problem.Groups.SelectMany(g => g.Codes)).FirstOrDefault(c => !codes.Contains(c)) is { } stranger)
            throw new ArgumentException($"No material of the problem is called {stranger}.", nameof(problem));

        foreach (var (code, kg) in problem.WeighedKg) NotNegative(kg, $"weighed {code}");
        if (problem.CapacityKg is { } capacity) Positive(capacity, "capacity of the furnace");
        NotNegative(problem.SlagCostPerTonne, "cost of slag");
        NotNegative(problem.EnergyPricePerKWh, "price of energy");
        foreach (var material in problem.Materials)
        {
            if (material.LeastIfUsedKg is { } least) Positive(least, $"least mass worth weighing of {material.Code}");
            if (material.BulkDensityTonnesPerM3 is { } density) Positive(density, $"bulk density of {material.Code}");
            NotNegative(material.SlagPercent, $"slag of {material.Code}");
            NotNegative(material.MeltingKWhPerTonne, $"melting energy of {material.Code}");
            NotNegative(material.UseUpBonusPerTonne, $"bonus of {material.Code}");
        }

        foreach (var group in problem.Groups)
        {
            NotNegative(group.MinKg, $"least mass of {group.Name}");
            NotNegative(group.MinPercent, $"least share of {group.Name}");
            if (group.MinKg > group.MaxKg || group.MinPercent > group.MaxPercent) throw new ArgumentException($"The bounds of {group.Name} are crossed.", nameof(problem));
        }

        foreach (var volume in problem.Volumes) Positive(volume.MostM3, $"room of {volume.Name}");
        foreach (var limit in problem.Limits)
        {
            Positive(limit.HarmWeight, $"harm of {limit.Quantity.Name}");
            if (limit.Nearness is { } near) NotNegative(near.PricePerPointTonne, $"price of nearness to the aim of {limit.Quantity.Name}");
        }
    }

    private static void NotNegative(double value, string what)
    {
        if (!double.IsFinite(value) || value < 0) throw new ArgumentException($"The {what} is {value}: it has to be a finite number, 0 or more.");
    }

    private static void Positive(double value, string what)
    {
        if (!double.IsFinite(value) || value <= 0) throw new ArgumentException($"The {what} is {value}: it has to be a finite number above 0.");
    }
}
