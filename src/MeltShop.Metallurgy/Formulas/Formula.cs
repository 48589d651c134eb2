namespace MeltShop.Metallurgy.Formulas;

/// <summary>
/// All that a reader must know to trust a formula: what it says, its symbols, its source, the range in which it was found,
/// and a case that the code is run on. <c>docs/METALLURGY.md</c> is generated from these records.
/// </summary>
public sealed record Formula
{
    /// <summary>Short key, unique, for saved results and for the docs.</summary>
    public required string Key { get; init; }

    /// <summary>What it is called in the trade.</summary>
    public required string Name { get; init; }

    /// <summary>One sentence: what the result says.</summary>
    public required string Sentence { get; init; }

    /// <summary>The formula as text.</summary>
    public required string Expression { get; init; }

    /// <summary>The symbols on the right-hand side.</summary>
    public required IReadOnlyList<Symbol> Symbols { get; init; }

    /// <summary>Unit of the result; a pure number is <c>1</c>.</summary>
    public required string Unit { get; init; }

    /// <summary>Where it comes from, the decisive source first.</summary>
    public required IReadOnlyList<Source> Sources { get; init; }

    /// <summary>Where it holds.</summary>
    public required string Range { get; init; }

    /// <summary>What speaks against it: sources that differ, values only remembered. Null where nothing is known.</summary>
    public string? Doubt { get; init; }

    /// <summary>The public member that computes it, as Type.Member.</summary>
    public required string Code { get; init; }

    /// <summary>A case with a known answer.</summary>
    public required WorkedExample Example { get; init; }
}
