namespace MeltShop.Operations;

/// <summary>What a person or a device asks for.</summary>
/// <param name="EntryKey">Made by the client once for each thing that it wants: the second arrival gets the first result.</param>
/// <param name="ObservedAt">When it happened; when it was entered is stamped here.</param>
public abstract record Command(Guid EntryKey, DateTimeOffset ObservedAt);
