namespace MeltShop.Operations.Ladles;

/// <summary>What a person chooses for a ladle before the tap; what they leave open comes from the grade's recipe and the bath.</summary>
/// <param name="PlannedKg">Iron to be tapped, kg.</param>
/// <param name="TemperatureC">Treatment temperature, °C.</param>
/// <param name="BaseSulphurPercent">Base sulphur, %; null for what the bath sample says.</param>
/// <param name="TargetMgPercent">Residual magnesium wanted at the last mould, %; null for the recipe's.</param>
/// <param name="MgFloorPercent">Least residual magnesium at the last mould, %; null for the recipe's.</param>
/// <param name="MinutesToLastMould">End of the reaction to the end of the pour of the last mould; null for the recipe's.</param>
/// <param name="InoculantRatePercent">Inoculant, % of the tapped mass.</param>
public sealed record PocketChoice(
    double PlannedKg,
    double TemperatureC,
    double? BaseSulphurPercent,
    double? TargetMgPercent,
    double? MgFloorPercent,
    double? MinutesToLastMould,
    double InoculantRatePercent);
