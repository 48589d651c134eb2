namespace MeltShop.Records.Reading.Changes;

/// <summary>Something that somebody entered, and what it changed.</summary>
/// <param name="Operation">Its name, as in the trail.</param>
/// <param name="Values">What it changed of the row that was looked at and of what belongs to it.</param>
public sealed record ChangeMade(string Operation, string Person, DateTimeOffset EnteredAt, IReadOnlyList<ValueChange> Values);

/// <param name="Table">Where it lies.</param>
/// <param name="Which">The row among others of its kind, as people tell them apart: an element, a stage and a quantity. Empty for the row that was looked at.</param>
/// <param name="Column">What changed.</param>
/// <param name="Before">As the property holds it; what refers to another row is its code. Null for nothing and for a row that is new.</param>
/// <param name="After">Likewise; null where it is gone.</param>
public sealed record ValueChange(string Table, IReadOnlyList<object> Which, string Column, object? Before, object? After);
