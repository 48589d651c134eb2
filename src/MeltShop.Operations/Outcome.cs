using MeltShop.Metallurgy;

namespace MeltShop.Operations;

/// <summary>A result, or findings that say what stands in its way; then nothing was written.</summary>
public sealed class Outcome<TResult>
{
    private readonly TResult? value;

    private Outcome(TResult? value, IReadOnlyList<Finding> findings)
    {
        this.value = value;
        Findings = findings;
    }

    public IReadOnlyList<Finding> Findings { get; }
    public bool Succeeded => Findings.Count == 0;

    /// <exception cref="InvalidOperationException">There are findings instead.</exception>
    public TResult Value => Succeeded ? value! : throw new InvalidOperationException(string.Join("; ", Findings));

    public static Outcome<TResult> Of(TResult value) => new(value, []);
    public static Outcome<TResult> Refused(IReadOnlyList<Finding> findings) =>
        findings.Count > 0 ? new(default, findings) : throw new ArgumentException("A refusal names at least one finding.", nameof(findings));
}
