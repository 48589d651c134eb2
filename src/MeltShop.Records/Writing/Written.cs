using MeltShop.Metallurgy;

namespace MeltShop.Records.Writing;

/// <summary>What a write came to: a value and the notices of what changed, or findings, and then nothing is kept.</summary>
public sealed class Written<TResult>
{
    private Written(TResult? value, IReadOnlyList<ChangeNotice> notices, IReadOnlyList<Finding> findings) =>
        (Value, Notices, Findings) = (value, notices, findings);

    internal TResult? Value { get; }
    internal IReadOnlyList<ChangeNotice> Notices { get; }
    internal IReadOnlyList<Finding> Findings { get; }

    public static Written<TResult> Of(TResult value, params IReadOnlyList<ChangeNotice> notices) => new(value, notices, []);

    /// <summary>The same with something more to tell of; a refusal stays one.</summary>
    public Written<TResult> And(ChangeNotice notice) => new(Value, [.. Notices, notice], Findings);

    public static Written<TResult> Refused(params IReadOnlyList<Finding> findings) =>
        findings.Count > 0 ? new(default, [], findings) : throw new ArgumentException("A refusal names at least one finding.", nameof(findings));
}

/// <summary>What was recorded.</summary>
/// <param name="Value">The result; of the first arrival, where this was a later one. Meaningless with findings.</param>
/// <param name="Findings">What stood in its way; then nothing was kept.</param>
/// <param name="IsRepeat">True where the same entry key had arrived before and nothing was done.</param>
public sealed record Recorded<TResult>(TResult? Value, IReadOnlyList<Finding> Findings, bool IsRepeat)
{
    public bool Succeeded => Findings.Count == 0;
}
