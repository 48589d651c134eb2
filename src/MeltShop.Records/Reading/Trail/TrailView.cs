using System.Text.Json;

namespace MeltShop.Records.Reading.Trail;

/// <param name="Entries">In the order that was asked for.</param>
/// <param name="More">Whether there are more in that direction.</param>
public sealed record TrailView(IReadOnlyList<TrailEntry> Entries, bool More);

/// <param name="Asked">The command, in kg, °C and percent.</param>
/// <param name="Result">What it returned, mostly the id of what it made.</param>
/// <param name="Hash">Of the trail up to here.</param>
public sealed record TrailEntry(
    long Number, string Operation, string Person, string Station, DateTimeOffset EnteredAt, JsonElement Asked, JsonElement Result, string Hash);
