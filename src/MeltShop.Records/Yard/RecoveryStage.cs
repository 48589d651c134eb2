namespace MeltShop.Records.Yard;

/// <summary>When a material comes into the melt: of an element more or less arrives by it.</summary>
public enum RecoveryStage
{
    /// <summary>With the cold charge, and melted with it.</summary>
    Charge,

    /// <summary>Into iron that is liquid: the bath, or a ladle.</summary>
    Bath,
}

/// <summary>Which of the two recoveries of an element counts.</summary>
public static class RecoveryStages
{
    /// <summary>The recovery at a stage, %. Into the bath the charge's counts where no other is known, which whoever shows it says.</summary>
    /// <param name="stage">When the material comes in.</param>
    /// <param name="chargePercent">With the charge; null where all of the element arrives.</param>
    /// <param name="bathPercent">Into the bath; null where nobody said.</param>
    public static double? Of(this RecoveryStage stage, double? chargePercent, double? bathPercent) =>
        stage is RecoveryStage.Bath ? bathPercent ?? chargePercent : chargePercent;
}
