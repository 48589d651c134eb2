using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using MeltShop.Charging.Problems;

namespace MeltShop.Charging.Tests.Support;

/// <summary>
/// A second opinion: the same problem written as text in plain kilograms, from the words of the calculation contract and not from this
/// program's formulation, and solved by GLPK as a program of its own (package glpk-utils). Scatter, which GLPK does not know, is cut off by planes until none
/// is missed: J. E. Kelley, "The Cutting-Plane Method for Solving Convex Programs", Journal of SIAM 8 (1960) 703–712.
/// </summary>
internal static class Glpk
{
    private const int MostRounds = 300;

    /// <summary>The least cost, or null where there is no charge.</summary>
    public static Task<double?> LeastCost(ChargeProblem problem, CancellationToken cancellation) =>
        Least(problem, new([.. problem.Materials.Select(m => m.PricePerTonne / 1000)]), cancellation);

    /// <summary>The least of something else, or null where there is no charge.</summary>
    public static async Task<double?> Least(ChargeProblem problem, GlpkWish wish, CancellationToken cancellation)
    {
        // Planes are cheap to find where pieces may be cut, and most of them serve where they may not.
        foreach (var relaxed in problem.ConfidencePercent > 50 ? new[] { true, false } : [false])
        {
            for (var round = 0; ; round++)
            {
                Assert.True(round < MostRounds, "The planes come to no end.");
                if (await Solve(problem, wish, relaxed, cancellation) is not { } found) return null;
                var planes = GlpkPlanes.Missed(problem, found.Kilograms).ToList();
                wish = wish with { Rows = [.. wish.Rows, .. planes] };
                if (planes.Count > 0) continue;
                if (!relaxed) return found.Least;
                break;
            }
        }

        throw new InvalidOperationException("The last solve is never a relaxed one.");
    }

    private static async Task<(double Least, double[] Kilograms)?> Solve(ChargeProblem problem, GlpkWish wish, bool relaxed, CancellationToken cancellation)
    {
        var folder = Directory.CreateTempSubdirectory("glpk");
        try
        {
            var (model, answer) = (Path.Combine(folder.FullName, "yard.lp"), Path.Combine(folder.FullName, "answer"));
            await File.WriteAllTextAsync(model, Model(problem, wish), cancellation);
            string[] arguments = ["--lp", model, "-w", answer, "--nopresol", "--mipgap", "1e-9", "--tmlim", "900", .. relaxed ? ["--nomip"] : Array.Empty<string>()];
            using var process = Process.Start(new ProcessStartInfo("glpsol", arguments) { RedirectStandardOutput = true })!;
            var log = await process.StandardOutput.ReadToEndAsync(cancellation);
            await process.WaitForExitAsync(cancellation);
            Assert.True(process.ExitCode == 0, log);
            return Read(await File.ReadAllLinesAsync(answer, cancellation), problem.Materials.Count, log);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static (double Least, double[] Kilograms)? Read(string[] lines, int materials, string log)
    {
        var fields = lines.Single(l => l.StartsWith("s ", StringComparison.Ordinal)).Split(' ');
        var isMixed = fields[1] == "mip";
        if (isMixed ? fields[4] == "o" : fields[4] == "f" && fields[5] == "f")
        {
            var columns = lines.Where(l => l.StartsWith("j ", StringComparison.Ordinal)).Take(materials);
            return (Number(fields[^1]), [.. columns.Select(l => Number(l.Split(' ')[isMixed ? 2 : 3]))]);
        }

        Assert.DoesNotContain("TIME LIMIT", log, StringComparison.OrdinalIgnoreCase);
        return Regex.IsMatch(log, "NO (PRIMAL )?FEASIBLE|NO INTEGER FEASIBLE") ? null : throw new GlpkGaveUpException(log);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string Model(ChargeProblem problem, GlpkWish wish)
    {
        var text = new StringBuilder("Minimize\n cost:");
        // Columns are numbered as they come up: the objective names each, so that they are in order in the answer.
        Sum(text, wish.Objective, all: true);
        text.Append("\nSubject To\n");
        double[] liquid = [.. problem.Materials.Select(Liquid)];
        Row(text, liquid, ">=", problem.MeltKg - problem.Heel.Kg);
        Row(text, liquid, "<=", problem.MeltKg + problem.MeltToleranceKg - problem.Heel.Kg);
        foreach (var limit in problem.Limits)
        {
            if (limit.Min is { } min) Limit(text, problem, limit, ">=", min);
            if (limit.Max is { } max) Limit(text, problem, limit, "<=", max);
        }

        for (var j = 0; j < liquid.Length; j++)
        {
            var material = problem.Materials[j];
            Row(text, Share(liquid.Length, j, material.MinPercent), ">=", 0);
            Row(text, Share(liquid.Length, j, material.MaxPercent), "<=", 0);
            if (material.AvailableKg is { } stock) Row(text, One(liquid.Length, j), "<=", stock);
            if (material.MaxKg is { } most) Row(text, One(liquid.Length, j), "<=", most);
            if (material.MinKg > 0) Row(text, One(liquid.Length, j), ">=", material.MinKg);
            if (material.PieceKg is { } piece) Row(text, [.. One(liquid.Length, j), .. Enumerable.Range(0, j).Select(_ => 0.0), -piece], "=", 0);
        }

        foreach (var (coefficients, sense, right) in wish.Rows) Row(text, coefficients, sense, right);
        var whole = Enumerable.Range(0, liquid.Length).Where(j => problem.Materials[j].PieceKg is not null).Select(j => $" x{liquid.Length + j}");
        return text.Append("General\n").AppendJoin('\n', whole).Append("\nBinary\n").AppendJoin('\n', wish.Binary.Select(c => $" x{c}")).Append("\nEnd\n").ToString();
    }

    private static void Limit(StringBuilder text, ChargeProblem problem, QuantityLimit limit, string sense, double bound)
    {
        var (coefficients, right) = Limit(problem, limit, bound);
        Row(text, coefficients, sense, right);
    }

    /// <summary>Mass of a quantity over a bound, percent × kg: coefficients of the weighed kilograms, and the negative of what the heel brings.</summary>
    public static (double[] Coefficients, double Right) Limit(ChargeProblem problem, QuantityLimit limit, double bound)
    {
        var quantity = limit.Quantity;
        var coefficients = problem.Materials.Select(m =>
            quantity.Terms.Sum(t => t.Value * m.Composition.MetallicYieldPercent / 100 * m.Composition.Analysis.OrZero(t.Key) * m.Composition.Recovery(t.Key) / 100)
            + (quantity.Constant - bound) * Liquid(m));
        var heel = problem.Heel.Kg * (quantity.Terms.Sum(t => t.Value * problem.Heel.Analysis.OrZero(t.Key)) + quantity.Constant - bound);
        return ([.. coefficients], -heel);
    }

    /// <summary>Liquid of a weighed kilogram.</summary>
    public static double Liquid(ChargeMaterial material)
    {
        var (analysis, yield) = (material.Composition.Analysis, material.Composition.MetallicYieldPercent / 100);
        return yield * (100 - analysis.Sum(p => p.Value) + analysis.Sum(p => p.Value * material.Composition.Recovery(p.Key) / 100)) / 100;
    }

    private static double[] One(int count, int at) => [.. Enumerable.Range(0, count).Select(j => j == at ? 1.0 : 0.0)];

    private static double[] Share(int count, int at, double percent) => [.. One(count, at).Select(one => one - percent / 100)];

    private static void Row(StringBuilder text, double[] coefficients, string sense, double right)
    {
        Sum(text, coefficients);
        text.Append(CultureInfo.InvariantCulture, $" {sense} {right:R}\n");
    }

    private static void Sum(StringBuilder text, IEnumerable<double> coefficients, bool all = false)
    {
        var index = 0;
        foreach (var coefficient in coefficients)
        {
            // GLPK refuses an empty row, so the first column is always written. Blanks around the signs: "a+b" is one name to it.
            if (all || coefficient != 0 || index == 0) text.Append(CultureInfo.InvariantCulture, $" {(coefficient < 0 ? '-' : '+')} {Math.Abs(coefficient):R} x{index}");
            index++;
        }
    }
}

/// <summary>
/// What GLPK is to minimise beside the rows of a problem of n materials: columns 0 to n − 1 are the kilograms, n to 2n − 1 the numbers of pieces, and
/// further ones, 0 or more, are free for the wish.
/// </summary>
internal sealed record GlpkWish(double[] Objective)
{
    public IReadOnlyList<(double[] Coefficients, string Sense, double Right)> Rows { get; init; } = [];

    public IReadOnlyList<int> Binary { get; init; } = [];

    /// <summary>The wish among charges that cost no more than this.</summary>
    public GlpkWish Within(ChargeProblem problem, double mostCost) =>
        this with { Rows = [.. Rows, ([.. problem.Materials.Select(m => m.PricePerTonne / 1000)], "<=", mostCost)] };
}
