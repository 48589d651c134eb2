using MeltShop.Records.Reading.Drafts;

namespace MeltShop.Web.Components.Entries;

/// <summary>
/// Lays what others typed at the same subject into an entry's fields, and takes away what they took away. A field in which
/// something else was typed here keeps it: that is for people to settle.
/// </summary>
public sealed class DraftBoard(TypedEntry entry)
{
    private Dictionary<string, DraftView> lying = new(StringComparer.Ordinal);

    /// <summary>What lies there, as it was read last.</summary>
    public IEnumerable<DraftView> Lying => lying.Values;

    /// <summary>Where somebody else's text lies and another one stands in the field.</summary>
    public IEnumerable<DraftView> Clashes => lying.Values.Where(draft => entry.Field(draft.Field) is { Text: var text } && text != draft.Text);

    /// <summary>The versions that the person sees, by field.</summary>
    public IReadOnlyDictionary<string, Guid> Versions => lying.ToDictionary(draft => draft.Key, draft => draft.Value.Version);

    /// <summary>Takes what lies there now.</summary>
    public void Lay(IEnumerable<DraftView> drafts)
    {
        var next = drafts.ToDictionary(draft => draft.Field, StringComparer.Ordinal);
        foreach (var path in lying.Keys.Union(next.Keys))
        {
            if (entry.Field(path) is not { } field) continue;
            var before = lying.GetValueOrDefault(path)?.Text ?? "";
            var now = next.GetValueOrDefault(path)?.Text ?? "";
            if (field.Text == before || field.Text.Length == 0) field.Text = now;
        }

        lying = next;
    }
}
