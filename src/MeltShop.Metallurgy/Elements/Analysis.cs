using System.Collections;

namespace MeltShop.Metallurgy.Elements;

/// <summary>
/// Mass percents by element; what is left to 100 % is iron. An element that is absent was not measured: whether that may be
/// read as zero is for the caller to decide, and to say.
/// </summary>
public sealed class Analysis : IEnumerable<KeyValuePair<Element, double>>, IEquatable<Analysis>
{
    /// <summary>Tolerance on the sum of 100 %, percentage points: room for rounding, not for mistakes.</summary>
    public const double SumTolerance = 1e-9;

    private readonly SortedDictionary<Element, double> percents;

    private Analysis(SortedDictionary<Element, double> percents) => this.percents = percents;

    /// <summary>Nothing measured.</summary>
    public static Analysis Empty { get; } = new([]);

    /// <summary>The elements given, in report order.</summary>
    public IReadOnlyCollection<Element> Elements => percents.Keys;

    /// <summary>Sum of the percents given, 0 to 100.</summary>
    public double SumPercent => percents.Values.Sum();

    /// <summary>The remainder that counts as iron, mass percent, never below zero.</summary>
    public double IronPercent => Math.Max(0, 100 - SumPercent);

    /// <summary>Mass percent of an element, or null where it was not measured.</summary>
    public double? this[Element element] => percents.TryGetValue(element, out var percent) ? percent : null;

    /// <summary>Makes an analysis from percents.</summary>
    /// <exception cref="ArgumentException">What <see cref="Check"/> finds: use it first for anything that a person or a machine typed.</exception>
    public static Analysis Of(IEnumerable<KeyValuePair<Element, double>> percents)
    {
        ArgumentNullException.ThrowIfNull(percents);
        var sorted = new SortedDictionary<Element, double>();
        foreach (var (element, percent) in percents) sorted.Add(element, percent);
        var findings = Check(sorted, "analysis").ToList();
        return findings.Count == 0 ? new Analysis(sorted) : throw new ArgumentException(findings[0].ToString(), nameof(percents));
    }

    /// <inheritdoc cref="Of(IEnumerable{KeyValuePair{Element, double}})"/>
    public static Analysis Of(params ReadOnlySpan<(Element Element, double Percent)> percents)
    {
        var list = new List<KeyValuePair<Element, double>>(percents.Length);
        foreach (var (element, percent) in percents) list.Add(new(element, percent));
        return Of(list);
    }

    /// <summary>
    /// Findings that forbid an analysis: <c>percent.notFinite</c>, <c>percent.negative</c>, <c>percent.over100</c>,
    /// <c>analysis.iron</c> (iron is the remainder and never given) and <c>analysis.sum</c>.
    /// </summary>
    public static IEnumerable<Finding> Check(IEnumerable<KeyValuePair<Element, double>> percents, string path)
    {
        ArgumentNullException.ThrowIfNull(percents);
        var sum = 0.0;
        var sound = true;
        foreach (var (element, percent) in percents)
        {
            var code = !double.IsFinite(percent) ? "percent.notFinite"
                : percent < 0 ? "percent.negative"
                : percent > 100 + SumTolerance ? "percent.over100"
                : element == Element.Fe ? "analysis.iron"
                : null;
            sum += percent;
            if (code is null) continue;
            sound = false;
            yield return new Finding($"{path}.{element.Symbol}", code, percent);
        }

        if (sound && sum > 100 + SumTolerance) yield return new Finding(path, "analysis.sum", sum);
    }

    /// <summary>True where the element was measured, zero included.</summary>
    public bool Has(Element element) => percents.ContainsKey(element);

    /// <summary>Mass percent, or 0 where not measured: for balances, whose answer then names what it assumed.</summary>
    public double OrZero(Element element) => percents.GetValueOrDefault(element);

    /// <summary>This analysis with one percent set.</summary>
    public Analysis With(Element element, double percent) =>
        Of(percents.Where(p => p.Key != element).Append(new(element, percent)));

    /// <inheritdoc/>
    public IEnumerator<KeyValuePair<Element, double>> GetEnumerator() => percents.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>Equal where the same elements were measured with the same percents.</summary>
    public bool Equals(Analysis? other) => other is not null && percents.SequenceEqual(other.percents);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Analysis);

    /// <inheritdoc/>
    public override int GetHashCode() => percents.Aggregate(0, (hash, p) => HashCode.Combine(hash, p.Key.Symbol, p.Value));

    /// <inheritdoc/>
    public override string ToString() => string.Join(' ', percents.Select(p => FormattableString.Invariant($"{p.Key} {p.Value}")));
}
