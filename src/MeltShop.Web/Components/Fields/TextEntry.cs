using MeltShop.Metallurgy;

namespace MeltShop.Web.Components.Fields;

/// <summary>A typed text or a choice from a list.</summary>
/// <param name="judge">The code of what is wrong with a text, or null; the text is its argument.</param>
public sealed class TextEntry(EntryForm form, string path, bool isRequired, string missing, Func<string, string?>? judge = null)
    : FieldEntry(form, path)
{
    public bool IsRequired => isRequired;

    /// <summary>The text without outer blanks, or null where there is none.</summary>
    public string? Value => string.IsNullOrWhiteSpace(Text) ? null : Text.Trim();

    protected override Finding? Own => Value is { } value && judge?.Invoke(value) is { } code ? new Finding(Path, code, value) : null;

    internal override Finding? Standing => Own is { } finding ? finding : isRequired && Value is null ? new Finding(Path, missing) : null;

    public TextEntry Showing(string? value)
    {
        Fill(value ?? "");
        return this;
    }
}
