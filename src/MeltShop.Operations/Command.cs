using System.Text.Json.Serialization;

namespace MeltShop.Operations;

/// <summary>What a person or a device asks for.</summary>
/// <param name="EntryKey">Made by the client once for each thing that it wants: the second arrival gets the first result.</param>
/// <param name="ObservedAt">When it happened; when it was entered is stamped here.</param>
public abstract record Command(Guid EntryKey, DateTimeOffset ObservedAt)
{
    /// <summary>Where it was typed, if it lay there as drafts: they are gone once it is accepted. No part of what is asked.</summary>
    [JsonIgnore]
    public string? DraftSubject { get; init; }
}
