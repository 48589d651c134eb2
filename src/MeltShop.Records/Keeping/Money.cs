namespace MeltShop.Records.Keeping;

/// <summary>Amounts of the shop's one currency: decimal in code, whole hundredths in the database.</summary>
public static class Money
{
    /// <summary>The amount rounded to whole hundredths, half away from zero: for a computed amount before it is kept.</summary>
    public static decimal Rounded(decimal amount) => decimal.Round(amount, 2, MidpointRounding.AwayFromZero);

    /// <summary>Whole hundredths.</summary>
    /// <exception cref="ArgumentException">The amount has more than two decimals: nothing is rounded behind the caller's back.</exception>
    public static long ToMinorUnits(decimal amount) =>
        amount == Rounded(amount)
            ? decimal.ToInt64(amount * 100)
            : throw new ArgumentException(FormattableString.Invariant($"{amount} is not in whole hundredths; round it first."), nameof(amount));

    /// <summary>The amount of so many hundredths, with two decimals.</summary>
    public static decimal FromMinorUnits(long units) => new decimal(units) / 100m;
}
