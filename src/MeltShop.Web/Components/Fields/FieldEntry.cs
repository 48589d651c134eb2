using MeltShop.Metallurgy;

namespace MeltShop.Web.Components.Fields;

/// <summary>What a person typed into one field of a form, kept as typed whatever becomes of it.</summary>
/// <param name="form">The form that it belongs to.</param>
/// <param name="path">The field's name in the command: findings with this path are shown here.</param>
public abstract class FieldEntry(EntryForm form, string path)
{
    private string text = "";

    public EntryForm Form => form;
    public string Path => path;

    /// <summary>As typed. Typing takes back what was found wrong with the former text, and makes an accepted form a new entry.</summary>
    public virtual string Text
    {
        get => text;
        set
        {
            text = value;
            form.Edited(this);
        }
    }

    /// <summary>What is wrong with the text here, or with the field in the answer to the last attempt.</summary>
    public Finding? Finding => Own ?? form.At(path);

    /// <summary>Fills in a text that nobody typed.</summary>
    protected void Fill(string filled) => text = filled;

    /// <summary>What the field itself finds wrong with a text; null while it may be right.</summary>
    protected abstract Finding? Own { get; }

    /// <summary>What stands against handing in, a missing value included.</summary>
    internal abstract Finding? Standing { get; }
}
