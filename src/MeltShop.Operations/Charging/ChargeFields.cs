using MeltShop.Operations.Checking;

namespace MeltShop.Operations.Charging;

/// <summary>What can be said of a choice without looking into the records.</summary>
internal static class ChargeFields
{
    public static void Check(this FieldCheck fields, ChargeChoice choice)
    {
        fields.Mass("meltKg", choice.MeltKg);
        fields.MassOrZero("meltToleranceKg", choice.MeltToleranceKg);
        if (choice.HeelKg is { } heel) fields.MassOrZero("heelKg", heel);
        fields.Choice("target", choice.Target);
        if (fields.Number("confidencePercent", choice.ConfidencePercent) && choice.ConfidencePercent is < 50 or >= 100)
        {
            fields.Add("confidencePercent", "confidence.outOfRange", choice.ConfidencePercent);
        }

        foreach (var material in choice.Materials ?? []) fields.Check(material);
        fields.Check(choice.Groups);
        fields.Check(choice.Wishes);
        foreach (var mass in choice.ByHand ?? []) fields.MassOrZero($"byHand.{mass.Code}", mass.Kg);
    }

    private static void Check(this FieldCheck fields, MaterialChoice material)
    {
        var path = $"materials.{material.Code}";
        if (material.MinKg is { } min) fields.MassOrZero($"{path}.minKg", min);
        if (material.MaxKg is { } max) fields.MassOrZero($"{path}.maxKg", max);
        if (material.MinKg > material.MaxKg) fields.Add($"{path}.minKg", "bounds.crossed", material.MinKg, material.MaxKg!);
        fields.Percent($"{path}.maxPercent", material.MaxPercent);
        fields.Percent($"{path}.minPercent", material.MinPercent);
    }

    public static void Check(this FieldCheck fields, ChargeWishes wishes)
    {
        foreach (var (name, value) in new[]
        {
            ("nearnessPrice", wishes.NearnessPrice), ("slagCostPerTonne", wishes.SlagCostPerTonne), ("energyPricePerKWh", wishes.EnergyPricePerKWh),
            ("meltingKWhPerTonne", wishes.MeltingKWhPerTonne), ("useUpBonusPerTonne", wishes.UseUpBonusPerTonne),
        })
        {
            if (value is { } number) fields.NotNegative($"wishes.{name}", number);
        }

        foreach (var (name, value) in new[] { ("furnaceM3", wishes.FurnaceM3), ("bucketM3", wishes.BucketM3), ("bucketFillings", wishes.BucketFillings) })
        {
            if (value is { } number) fields.Positive($"wishes.{name}", number);
        }

    }

    /// <summary>What counts only together, once the plan's wishes and the shop's are one.</summary>
    public static void CheckWhole(this FieldCheck fields, ChargeWishes wishes)
    {
        if (wishes is { BucketFillings: not null, BucketM3: null }) fields.Add("wishes.bucketM3", "number.missing");
        // Half of what melting costs is not what it costs.
        if (wishes is { EnergyPricePerKWh: > 0, MeltingKWhPerTonne: null }) fields.Add("wishes.meltingKWhPerTonne", "number.missing");
        if (wishes is { MeltingKWhPerTonne: > 0, EnergyPricePerKWh: null }) fields.Add("wishes.energyPricePerKWh", "number.missing");
    }
}
