using MeltShop.Metallurgy;

namespace MeltShop.Web.Components.Fields;

/// <summary>A typed quantity: its range, and the number that the text says.</summary>
public sealed class QuantityEntry(EntryForm form, string path, NumberRange range, bool isRequired, bool allowsBelow) : FieldEntry(form, path)
{
    public NumberRange Range => range;
    public bool IsRequired => isRequired;
    public bool AllowsBelow => allowsBelow;

    public NumberReading Reading => NumberText.Read(Text, range, allowsBelow);

    /// <summary>The number where there is one and the field takes it; null otherwise.</summary>
    public double? Value => Own is null ? Reading.Value : null;

    /// <summary>The number of a required field, after the form found nothing against it.</summary>
    public double Needed => Value ?? throw new InvalidOperationException($"{Path} was not checked before it was used.");

    protected override Finding? Own => Reading switch
    {
        { Finding: { } finding } => finding with { Path = Path },
        { Value: { } value } when value < range.Least => new Finding(Path, "number.tooSmall", range.Least),
        { Value: { } value } when value > range.Most => new Finding(Path, "number.tooLarge", range.Most),
        _ => null,
    };

    internal override Finding? Standing => Own ?? (isRequired && Reading.IsEmpty ? new Finding(Path, "number.missing") : null);

    /// <summary>Fills in a number that stands already, so that it is read back as the same number.</summary>
    public QuantityEntry Showing(double? value)
    {
        Fill(value is { } number ? NumberText.Unmistakable(number) : "");
        return this;
    }

    /// <summary>Fills in a reading as it stands in the records.</summary>
    public QuantityEntry Kept(Records.Reading.Laboratory.ReadingView reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        Fill((reading.BelowDetection ? "<" : "") + NumberText.Unmistakable(reading.Percent));
        return this;
    }
}
