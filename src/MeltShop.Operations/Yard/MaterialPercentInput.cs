using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Records.Yard;

namespace MeltShop.Operations.Yard;

/// <summary>One element of a material's analysis, as it was typed.</summary>
/// <param name="Element">Symbol.</param>
/// <param name="Percent">Mass percent.</param>
/// <param name="Spread">Standard deviation, percentage points; null where it is not known.</param>
/// <param name="RecoveryPercent">Share that arrives in the melt with the charge, %; null where all of it does.</param>
/// <param name="BathRecoveryPercent">Share that arrives when it goes into liquid iron, %; null where nobody knows: then that of the charge counts.</param>
public sealed record MaterialPercentInput(string Element, double Percent, double? Spread = null, double? RecoveryPercent = null, double? BathRecoveryPercent = null);

internal static class MaterialPercentInputs
{
    public static void Check(IReadOnlyList<MaterialPercentInput> percents, FieldCheck fields)
    {
        fields.Analysis("percents", percents.Select(p => (p.Element, p.Percent)));
        foreach (var percent in percents)
        {
            if (percent.Spread is { } spread) fields.NotNegative($"percents.{percent.Element}.spread", spread);
            fields.Percent($"percents.{percent.Element}.recoveryPercent", percent.RecoveryPercent);
            fields.Percent($"percents.{percent.Element}.bathRecoveryPercent", percent.BathRecoveryPercent);
        }
    }

    public static List<MaterialPercent> Rows(IReadOnlyList<MaterialPercentInput> percents) =>
    [
        .. percents.Select(p => new MaterialPercent
        {
            Element = Element.Parse(p.Element), Percent = p.Percent, Spread = p.Spread,
            RecoveryPercent = p.RecoveryPercent, BathRecoveryPercent = p.BathRecoveryPercent,
        }),
    ];
}
