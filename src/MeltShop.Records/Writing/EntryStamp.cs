namespace MeltShop.Records.Writing;

/// <summary>What arrives to be recorded.</summary>
/// <param name="Key">Made by the client, once for each thing that it wants.</param>
/// <param name="Operation">Name of the operation.</param>
/// <param name="PersonId">Who asked; 0 where the program itself did, before there are people. A fact needs a person.</param>
/// <param name="PersonName">As it is shown beside what they did.</param>
/// <param name="Station">The station or device.</param>
/// <param name="ObservedAt">When it happened; kept in UTC, whole microseconds.</param>
/// <param name="Payload">The command: it goes into the trail as JSON, so it holds no secret.</param>
public sealed record EntryStamp(
    Guid Key, string Operation, long PersonId, string PersonName, string Station, DateTimeOffset ObservedAt, object Payload);

/// <summary>What every fact of one entry carries.</summary>
public sealed record Stamp(Guid EntryKey, long PersonId, DateTimeOffset ObservedAt, DateTimeOffset EnteredAt);
