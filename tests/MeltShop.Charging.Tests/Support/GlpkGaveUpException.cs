using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;

namespace MeltShop.Charging.Tests.Support;

/// <summary>
/// There is no second opinion on a program: GLPK could not solve it for reasons of its own, such as planes that lie almost parallel, or called impossible what a charge keeps.
/// </summary>
internal sealed class GlpkGaveUpException(string log) : InvalidOperationException(log)
{
    public const string Erred = "GLPK calls impossible what a charge keeps";

    /// <summary>Holds what GLPK calls impossible against a charge that was found for the same problem.</summary>
    /// <exception cref="GlpkGaveUpException">The charge keeps all rows by the contract's arithmetic: GLPK is wrong.</exception>
    public static void ThrowIfKept(ChargeProblem problem, IEnumerable<PlanLine> lines)
    {
        if (KeptRows.Keeps(problem, lines)) throw new GlpkGaveUpException(Erred);
    }
}
