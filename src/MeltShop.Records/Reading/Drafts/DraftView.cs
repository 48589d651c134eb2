namespace MeltShop.Records.Reading.Drafts;

/// <summary>A text that somebody typed and nobody has handed in.</summary>
/// <param name="Field">The field's path, as in the command that it will be part of.</param>
/// <param name="Text">Letter by letter.</param>
/// <param name="PersonId">Who typed it last.</param>
/// <param name="Person">Their name.</param>
/// <param name="Version">What an editor who saw it names.</param>
public sealed record DraftView(string Field, string Text, long PersonId, string Person, DateTimeOffset ChangedAt, Guid Version);
