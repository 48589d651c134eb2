using MeltShop.Records.Keeping;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace MeltShop.Records.Databases;

/// <summary>SQLite has no type for instants and cannot sort the text of one with an offset: whole ticks of UTC do.</summary>
public sealed class UtcTicks()
    : ValueConverter<DateTimeOffset, long>(instant => instant.Cut().UtcTicks, ticks => new DateTimeOffset(ticks, TimeSpan.Zero));

/// <summary>PostgreSQL keeps microseconds, and refuses an offset other than zero.</summary>
public sealed class UtcMicroseconds()
    : ValueConverter<DateTimeOffset, DateTimeOffset>(instant => instant.Cut(), kept => kept.ToUniversalTime());
