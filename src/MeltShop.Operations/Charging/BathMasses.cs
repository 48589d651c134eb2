using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;

namespace MeltShop.Operations.Charging;

/// <summary>
/// What went into the bath of a heat that is charged again, its coin having been another's: of its elements arrives what arrives there. So the question holds it as a material of its
/// own, of which all is in and no more comes; what is asked of the material is asked of both together. In the answer they are one again.
/// </summary>
internal static class BathMasses
{
    private const string Mark = " → bath";

    /// <param name="begun">What was asked, with all that is in.</param>
    /// <param name="intoBathKg">What of it went into the bath, kg by code.</param>
    /// <param name="yard">What lies in the yard now.</param>
    public static ChargeProblem Apart(ChargeProblem begun, IReadOnlyDictionary<string, double> intoBathKg, IReadOnlyList<MaterialView> yard)
    {
        if (intoBathKg.Count == 0) return begun;
        List<ChargeMaterial> both = [.. begun.Materials.Where(material => intoBathKg.ContainsKey(material.Code))];
        var weighed = begun.WeighedKg.ToDictionary(item => item.Key, item => item.Value - intoBathKg.GetValueOrDefault(item.Key));
        foreach (var (code, kg) in intoBathKg) weighed[code + Mark] = kg;
        return begun with
        {
            WeighedKg = weighed,
            Materials =
            [
                .. begun.Materials.Select(material => intoBathKg.TryGetValue(material.Code, out var kg) ? WithTheCharge(material, kg) : material),
                .. both.Select(material => IntoBath(material, intoBathKg[material.Code], yard.FirstOrDefault(item => item.Code == material.Code))),
            ],
            Groups =
            [
                .. begun.Groups.Select(group => group with { Codes = [.. group.Codes, .. group.Codes.Where(intoBathKg.ContainsKey).Select(code => code + Mark)] }),
                .. both.Select(Asked),
            ],
        };
    }

    /// <summary>What of a material went into the bath, kg.</summary>
    public static double Kg(ChargeProblem begun, string code) => begun.WeighedKg.GetValueOrDefault(code + Mark);

    /// <summary>The charge with each material once.</summary>
    public static ChargeEvaluation Together(ChargeEvaluation made) => !made.Lines.Any(line => IsMarked(line.Code)) ? made : made with
    {
        Lines = [.. made.Lines.GroupBy(line => Unmarked(line.Code)).Select(lines => new PlanLine(lines.Key, lines.Sum(line => line.Kg), lines.Sum(line => line.Percent)))],
        Groups = [.. made.Groups.Where(group => !IsMarked(group.Name))],
        Misses =
        [
            .. made.Misses.Select(miss => !IsMarked(miss.Name) ? miss
                : miss with { Name = Unmarked(miss.Name), Kind = miss.Kind is MissKind.GroupPercent ? MissKind.MaterialPercent : MissKind.MaterialKg }),
        ],
    };

    private static ChargeMaterial WithTheCharge(ChargeMaterial material, double intoBathKg) =>
        material with { AvailableKg = material.AvailableKg is { } kg ? Math.Max(0, kg - intoBathKg) : null, MinKg = 0, MaxKg = null, MinPercent = 0, MaxPercent = 100 };

    /// <summary>Where the yard cannot say any more what arrives there, it is reckoned as the plan reckons the material.</summary>
    private static ChargeMaterial IntoBath(ChargeMaterial material, double kg, MaterialView? lying) => material with
    {
        Code = material.Code + Mark,
        Composition = lying is not null && ChargeMaterials.Gap(lying, RecoveryStage.Bath) is null ? lying.Composition(RecoveryStage.Bath) : material.Composition,
        AvailableKg = null, MinKg = 0, MaxKg = kg, MinPercent = 0, MaxPercent = 100, PieceKg = null,
    };

    private static GroupLimit Asked(ChargeMaterial material) => new()
    {
        Name = material.Code + Mark,
        Codes = [material.Code, material.Code + Mark],
        MinKg = material.MinKg,
        MaxKg = material.MaxKg is { } most ? Math.Max(most, material.MinKg) : null,
        MinPercent = material.MinPercent,
        MaxPercent = material.MaxPercent,
    };

    private static bool IsMarked(string name) => name.EndsWith(Mark, StringComparison.Ordinal);

    private static string Unmarked(string name) => IsMarked(name) ? name[..^Mark.Length] : name;
}
