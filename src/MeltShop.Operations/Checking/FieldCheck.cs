using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Route;

namespace MeltShop.Operations.Checking;

/// <summary>Collects what is wrong with the fields of a command, each finding at the path of its field.</summary>
public sealed class FieldCheck
{
    private readonly List<Finding> findings = [];

    /// <summary>Liquid iron and everything that a probe in it can show lies between these, °C.</summary>
    public const double LowestC = 1000, HighestC = 1800;

    public IReadOnlyList<Finding> Findings => findings;

    public void Add(string path, string code, params object[] arguments) => findings.Add(new Finding(path, code, arguments));

    public void AddAll(IEnumerable<Finding> more) => findings.AddRange(more);

    /// <summary>Finite, or <c>number.notANumber</c>.</summary>
    public bool Number(string path, double value)
    {
        if (double.IsFinite(value)) return true;
        Add(path, "number.notANumber");
        return false;
    }

    /// <summary>Finite and over zero, kg: <c>mass.negative</c>, <c>mass.zero</c>.</summary>
    public void Mass(string path, double kg)
    {
        MassOrZero(path, kg);
        if (kg == 0) Add(path, "mass.zero");
    }

    /// <summary>Finite and not negative, kg.</summary>
    public void MassOrZero(string path, double kg)
    {
        if (Number(path, kg) && kg < 0) Add(path, "mass.negative", kg);
    }

    /// <summary>Finite, 0 to 100 %: <c>percent.negative</c>, <c>percent.over100</c>.</summary>
    public void Percent(string path, double percent)
    {
        if (!Number(path, percent)) return;
        if (percent < 0) Add(path, "percent.negative", percent);
        if (percent > 100) Add(path, "percent.over100", percent);
    }

    /// <inheritdoc cref="Percent(string, double)"/>
    public void Percent(string path, double? percent)
    {
        if (percent is { } given) Percent(path, given);
    }

    /// <summary>A bound on a quantity, in its unit: of a percentage as <see cref="Percent(string, double)"/>, else <c>bound.outOfRange</c>.</summary>
    public void Bound(string path, double? bound, WindowQuantity quantity)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        if (bound is not { } value) return;
        var (from, to) = quantity.Range;
        if (from == 0 && to == 100) Percent(path, value);
        else if (Number(path, value) && (value < from || value > to)) Add(path, "bound.outOfRange", value, from, to);
    }

    /// <summary>What of a material becomes metal, above 0 to 100 %: <c>yield.zero</c> and what <see cref="Percent(string, double)"/> finds.</summary>
    public void Yield(string path, double percent)
    {
        Percent(path, percent);
        if (percent == 0) Add(path, "yield.zero");
    }

    /// <summary>Finite and not negative, of any unit: <c>number.negative</c>.</summary>
    public void NotNegative(string path, double value)
    {
        if (Number(path, value) && value < 0) Add(path, "number.negative", value);
    }

    /// <summary>Finite and over zero, of any unit: <c>number.notPositive</c>.</summary>
    public void Positive(string path, double value)
    {
        if (Number(path, value) && value <= 0) Add(path, "number.notPositive", value);
    }

    /// <summary>Whole hundredths of the currency: <c>money.decimals</c>.</summary>
    public void Money(string path, decimal amount)
    {
        if (amount != Records.Keeping.Money.Rounded(amount)) Add(path, "money.decimals", amount);
    }

    /// <summary>A temperature that liquid iron can have, °C: <c>temperature.outOfRange</c>.</summary>
    public void Temperature(string path, double temperatureC)
    {
        if (Number(path, temperatureC) && temperatureC is < LowestC or > HighestC)
        {
            Add(path, "temperature.outOfRange", temperatureC, LowestC, HighestC);
        }
    }

    /// <summary>Not blank and not longer than the field holds: <c>text.missing</c>, <c>text.tooLong</c>.</summary>
    public void Text(string path, string? text, int most = 200)
    {
        if (string.IsNullOrWhiteSpace(text)) Add(path, "text.missing");
        else OptionalText(path, text, most);
    }

    /// <summary>Not longer than the field holds; may be left out.</summary>
    public void OptionalText(string path, string? text, int most = 2000)
    {
        if (text?.Length > most) Add(path, "text.tooLong", most);
    }

    /// <summary>A member of the enumeration: <c>choice.unknown</c>.</summary>
    public void Choice<TEnum>(string path, TEnum value)
        where TEnum : struct, Enum
    {
        if (!Enum.IsDefined(value)) Add(path, "choice.unknown", value.ToString());
    }
}
