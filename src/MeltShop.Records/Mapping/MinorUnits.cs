using MeltShop.Records.Keeping;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace MeltShop.Records.Mapping;

/// <summary>Money is kept in whole hundredths of the shop's currency, so that it sums and sorts exactly on both databases.</summary>
public sealed class MinorUnits() : ValueConverter<decimal, long>(amount => Money.ToMinorUnits(amount), units => Money.FromMinorUnits(units));
