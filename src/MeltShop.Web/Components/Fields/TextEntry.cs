using MeltShop.Metallurgy;

namespace MeltShop.Web.Components.Fields;

/// <summary>A typed text or a choice from a list.</summary>
public sealed class TextEntry(EntryForm form, string path, bool isRequired, string missing) : FieldEntry(form, path)
{
    public bool IsRequired => isRequired;

    /// <summary>The text without outer blanks, or null where there is none.</summary>
    public string? Value => string.IsNullOrWhiteSpace(Text) ? null : Text.Trim();

    protected override Finding? Own => null;

    internal override Finding? Standing => isRequired && Value is null ? new Finding(Path, missing) : null;

    public TextEntry Showing(string? value)
    {
        Fill(value ?? "");
        return this;
    }
}
