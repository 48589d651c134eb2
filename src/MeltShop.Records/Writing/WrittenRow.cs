namespace MeltShop.Records.Writing;

/// <summary>A row as the trail wrote it last. Rows that came in bulk share the names of their columns: there may be millions of them.</summary>
internal sealed class WrittenRow(IReadOnlyList<string> names, string?[] texts)
{
    private IReadOnlyList<string> names = names;
    private string?[] texts = texts;

    public bool TryGetValue(string name, out string? text)
    {
        var place = Place(name);
        text = place < 0 ? null : texts[place];
        return place >= 0;
    }

    /// <summary>A later image of the same row; a part of it adds its columns.</summary>
    public void Take(IReadOnlyDictionary<string, string?> columns)
    {
        var added = columns.Keys.Where(c => Place(c) < 0).ToList();
        if (added.Count > 0)
        {
            names = [.. names, .. added];
            Array.Resize(ref texts, names.Count);
        }

        foreach (var (name, text) in columns) texts[Place(name)] = text;
    }

    private int Place(string name)
    {
        for (var i = 0; i < names.Count; i++)
        {
            if (names[i] == name) return i;
        }

        return -1;
    }
}
