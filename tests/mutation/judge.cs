// Runs the tests of the metallurgy room against every mutant that Stryker wrote, each in a process of its own, and counts who lives.
// Arguments: Stryker's report, the folder with the mutated assembly and the tests, the page to write, a part of a path (may be empty).
using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;

const string Namespace = "MeltShop.Metallurgy.Tests";
const int Seconds = 120;
const double Least = 85;
var (report, folder, page, part) = (args[0], args[1], args[2], args.Length > 3 ? args[3] : "");
var tests = Path.Combine(folder, $"{Namespace}.dll");
var mutants = Mutants().Where(m => m.File.Contains(part, StringComparison.Ordinal)).ToList();

if (Run("-1") != Fate.Lives) return Fail("The tests fail without any mutant.");
if (mutants.Count == 0) return Fail("No mutant was found.");

// Code first, for the score is of code; two at a time, each with its own process.
var lines = new List<string>();
var count = new Dictionary<(bool Word, Fate Fate), int>();
Parallel.ForEach(mutants.OrderBy(m => m.IsWord), new ParallelOptions { MaxDegreeOfParallelism = 2 }, mutant =>
{
    // Quick tests first: a word of a record is on the generated page, code has tests in a folder of its name. What they let live meets all tests.
    var fate = mutant.IsWord ? Run(mutant.Id, "-class", $"{Namespace}.Formulas.MetallurgyPageTests")
        : mutant.File.Contains('/', StringComparison.Ordinal) ? Run(mutant.Id, "-namespace", $"{Namespace}.{mutant.File.Split('/')[0]}")
        : Fate.Lives;
    if (fate == Fate.Lives) fate = Run(mutant.Id);
    lock (lines)
    {
        count[(mutant.IsWord, fate)] = count.GetValueOrDefault((mutant.IsWord, fate)) + 1;
        if (fate != Fate.Dies) lines.Add($"| {mutant.File}:{mutant.Line} | {mutant.Kind} | `{mutant.Before}` | `{mutant.After}` | {fate} |");
        if (fate != Fate.Dies) Console.WriteLine(lines[^1]);
        if (count.Values.Sum() % 100 == 0) Console.WriteLine(Summary());
    }
});

lines.Sort(StringComparer.Ordinal);
File.WriteAllText(page, $"{Summary()}\n\n| Where | Kind | Before | After | Fate |\n| --- | --- | --- | --- | --- |\n{string.Join('\n', lines)}\n");
Console.WriteLine(Summary());
return Score(word: false) >= Least ? 0 : 1;

string Summary() => string.Create(CultureInfo.InvariantCulture,
    $"{Total(false) - Of(false, Fate.Lives)} of {Total(false)} mutants of code die ({Of(false, Fate.Hangs)} hang): {Score(false):F1} %. {Total(true) - Of(true, Fate.Lives)} of {Total(true)} mutants of words die: {Score(true):F1} %.");

int Of(bool word, Fate fate) => count.GetValueOrDefault((word, fate));
int Total(bool word) => count.Where(c => c.Key.Word == word).Sum(c => c.Value);
double Score(bool word) => Total(word) == 0 ? 100 : 100.0 * (Total(word) - Of(word, Fate.Lives)) / Total(word);

int Fail(string why)
{
    Console.Error.WriteLine(why);
    return 1;
}

Fate Run(string mutant, params string[] more)
{
    var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
    foreach (var argument in new[] { tests, "-noColor", "-noLogo", "-noAutoReporters", "-stopOnFail" }.Concat(more)) start.ArgumentList.Add(argument);
    start.Environment["STRYKER_MUTANT_ID_CONTROL_VAR"] = "MELTSHOP_MUTANT";
    start.Environment["MELTSHOP_MUTANT"] = mutant;
    using var process = Process.Start(start)!;
    process.OutputDataReceived += (_, _) => { };
    process.ErrorDataReceived += (_, _) => { };
    process.BeginOutputReadLine();
    process.BeginErrorReadLine();
    if (process.WaitForExit(TimeSpan.FromSeconds(Seconds))) return process.ExitCode == 0 ? Fate.Lives : Fate.Dies;
    process.Kill(entireProcessTree: true);
    return Fate.Hangs;
}

// Mutants that do not compile, or lie in a block whose removal is a mutant too, are left out, as Stryker leaves them out.
IEnumerable<Mutant> Mutants()
{
    using var document = JsonDocument.Parse(File.ReadAllText(report));
    foreach (var file in document.RootElement.GetProperty("files").EnumerateObject())
    {
        var source = file.Value.GetProperty("source").GetString()!.Split('\n');
        foreach (var mutant in file.Value.GetProperty("mutants").EnumerateArray())
        {
            if (mutant.GetProperty("status").GetString() == "CompileError" || Reason(mutant).StartsWith("Removed by block", StringComparison.Ordinal)) continue;
            var kind = mutant.GetProperty("mutatorName").GetString()!;
            var (from, to) = (mutant.GetProperty("location").GetProperty("start"), mutant.GetProperty("location").GetProperty("end"));
            var (line, column) = (from.GetProperty("line").GetInt32(), from.GetProperty("column").GetInt32());
            var text = source[line - 1][(column - 1)..];
            if (to.GetProperty("line").GetInt32() == line) text = text[..(to.GetProperty("column").GetInt32() - column)];
            var name = file.Name.Replace('\\', '/');
            yield return new(
                mutant.GetProperty("id").GetString()!, name[(name.IndexOf("MeltShop.Metallurgy/", StringComparison.Ordinal) is var at and >= 0 ? at + 20 : 0)..], line, kind,
                Short(text), Short(mutant.GetProperty("replacement").GetString() ?? ""), kind.StartsWith("String", StringComparison.Ordinal));
        }
    }
}

static string Reason(JsonElement mutant) => mutant.TryGetProperty("statusReason", out var reason) ? reason.GetString() ?? "" : "";

static string Short(string text)
{
    var flat = new StringBuilder(string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))).Replace("|", "\\|").Replace('`', '\'').ToString();
    return flat.Length > 90 ? flat[..90] + "…" : flat;
}

internal enum Fate
{
    Lives,
    Dies,
    Hangs,
}

internal sealed record Mutant(string Id, string File, int Line, string Kind, string Before, string After, bool IsWord);
