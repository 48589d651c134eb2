using MeltShop.Metallurgy;

namespace MeltShop.Web.Components.Fields;

/// <summary>A typed quantity: its range, and the number that the text says.</summary>
/// <param name="range">What it takes, in the unit of the records.</param>
/// <param name="dimension">Decides the unit in which it is shown and typed.</param>
public sealed class QuantityEntry(EntryForm form, string path, NumberRange range, bool isRequired, bool allowsBelow, Dimension dimension) : FieldEntry(form, path)
{
    /// <summary>A recorded number that was filled in, while nothing was typed over it: it is handed in as it was.</summary>
    private double? standing;

    /// <summary>The same once something was typed over it: typed again as it stood it is that number again.</summary>
    private double? filled;

    /// <summary>What it is; set where a choice beside the field decides.</summary>
    public Dimension Dimension { get; private set; } = dimension;

    /// <summary>The unit in which it is shown and typed.</summary>
    public Measure Unit => Form.Units.Of(Dimension);

    /// <summary>What it takes, in the unit in which it is typed.</summary>
    public NumberRange Range => Unit.FromRecorded(range);

    public bool IsRequired => isRequired;
    public bool AllowsBelow => allowsBelow;

    /// <summary>What the text says, in the unit in which it is typed.</summary>
    public NumberReading Reading => NumberText.Read(Text, Range, allowsBelow);

    public override string Text
    {
        get => standing is { } number ? Shown(number) : base.Text;
        set
        {
            // More is recorded than is shown; what is typed into an emptied field is a number of its own.
            if (value.Length == 0) filled = null;
            standing = filled is { } number && value == Shown(number) ? number : null;
            base.Text = value;
        }
    }

    /// <summary>The number where there is one and the field takes it, in the unit of the records; null otherwise.</summary>
    public double? Value => Own is not null ? null : standing ?? (Reading.Value is { } typed ? Unit.ToRecorded(typed) : null);

    /// <summary>The number of a required field, after the form found nothing against it.</summary>
    public double Needed => Value ?? throw new InvalidOperationException($"{Path} was not checked before it was used.");

    protected override Finding? Own => standing is { } stands ? Judge(stands) : Reading switch
    {
        { Finding: { } finding } => finding with { Path = Path },
        { Value: not null } when !Unit.IsRecorded && Text.Count(char.IsAsciiDigit) > Measure.Digits => new Finding(Path, "number.tooLong"),
        { Value: { } typed } => Judge(Unit.ToRecorded(typed)),
        _ => null,
    };

    internal override Finding? Standing => Own ?? (isRequired && Reading.IsEmpty ? new Finding(Path, "number.missing") : null);

    /// <summary>Says what it is.</summary>
    public QuantityEntry Of(Dimension chosen)
    {
        Dimension = chosen;
        return this;
    }

    /// <summary>Fills in a number that stands already, so that it is read back as the same number.</summary>
    public QuantityEntry Showing(double? value)
    {
        Fill("");
        (standing, filled) = (value, value);
        return this;
    }

    /// <summary>Fills in a reading as it stands in the records.</summary>
    public QuantityEntry Kept(Records.Reading.Laboratory.ReadingView reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        (standing, filled) = (null, null);
        Fill((reading.BelowDetection ? "<" : "") + NumberText.Unmistakable(reading.Percent));
        return this;
    }

    private string Shown(double number) => NumberText.Unmistakable(Unit.Readable(number));

    private Finding? Judge(double recorded) =>
        recorded < range.Least ? new Finding(Path, "number.tooSmall", Range.Least!.Value)
        : recorded > range.Most ? new Finding(Path, "number.tooLarge", Range.Most!.Value)
        : null;
}
