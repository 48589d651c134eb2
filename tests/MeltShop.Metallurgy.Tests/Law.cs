using System.Globalization;
using CsCheck;

namespace MeltShop.Metallurgy.Tests;

/// <summary>Runs a law over many random cases from a fixed seed, which it prints.</summary>
internal static class Law
{
    /// <summary>
    /// Cases of a law. A mutation run asks for fewer by <c>MELTSHOP_LAW_CASES</c>, for it runs the laws thousands of times; fewer cases can only let more mutants live.
    /// </summary>
    private static readonly int Cases = int.TryParse(Environment.GetEnvironmentVariable("MELTSHOP_LAW_CASES"), NumberStyles.None, CultureInfo.InvariantCulture, out var asked) && asked > 0
        ? asked : 10_000;

    public static void Holds<T>(Gen<T> cases, Action<T> law, ulong seed = 1785)
    {
        var count = Cases;
        TestContext.Current.TestOutputHelper?.WriteLine($"seed {seed}, {count} cases");
        var random = new PCG(1, seed);
        for (var number = 0; number < count; number++)
        {
            var one = cases.Generate(random, null, out _);
            try
            {
                law(one);
            }
            catch (Exception fault)
            {
                throw new InvalidOperationException($"seed {seed}, case {number}: {one}", fault);
            }
        }
    }

    /// <summary>Equal to a part in so many of the larger.</summary>
    public static void Close(double expected, double actual, double relative = 1e-9) =>
        Assert.True(Math.Abs(expected - actual) <= relative * Math.Max(Math.Abs(expected), Math.Abs(actual)), $"{expected:R} against {actual:R}");

    /// <summary>Equal to so many units.</summary>
    public static void Near(double expected, double actual, double tolerance = 1e-9) =>
        Assert.True(Math.Abs(expected - actual) <= tolerance, $"{expected:R} against {actual:R}");
}
