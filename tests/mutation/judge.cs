// Runs the tests of a room against the mutants that Stryker wrote and counts who lives.
// Arguments: the room's project; the folder with Stryker's report and the tests beside the mutated assembly; the least score; patterns of the files
// that are judged, of the test classes that judge, and of the class that reads words (- for none); a part of a path (may be empty).
using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;

const int Seed = 1126;
const int AtOnce = 2;
const int Patience = 30;
const double Quick = 4; // seconds of the processor
const long MostBytes = 1_500_000_000;
var (room, folder, least) = (args[0], args[1], double.Parse(args[2], CultureInfo.InvariantCulture));
var (code, classes, words, part) = (new Regex(args[3]), new Regex(args[4]), args[5], args[6]);
var (tests, verdicts) = (Path.Combine(folder, "tests", $"{room}.Tests.dll"), Path.Combine(folder, "verdicts"));

// A fair order: code before words, each by chance. Verdicts of an earlier run stand, but those that lived get another trial.
var random = new Random(Seed);
var mutants = Mutants().Where(m => code.IsMatch(m.File) && m.File.Contains(part, StringComparison.Ordinal))
    .OrderBy(m => int.Parse(m.Id, CultureInfo.InvariantCulture)).ToArray();
random.Shuffle(mutants);
mutants = [.. mutants.OrderBy(m => m.IsWord)];
if (mutants.Length == 0) return Fail("No mutant was found.");
var fates = new Dictionary<string, Fate>();
if (File.Exists(verdicts))
    foreach (var line in File.ReadLines(verdicts).Select(l => l.Split(' '))) fates[line[0]] = Enum.Parse<Fate>(line[1]);
Console.WriteLine($"{mutants.Count(m => !m.IsWord)} mutants of code, {mutants.Count(m => m.IsWord)} of words, seed {Seed}");

// Which mutants a class of tests reaches, static initialisers included, and how long it takes: no class is run for a mutant that it does not reach.
var reaches = new ConcurrentBag<Reach>();
Each(Lines("-list", "classes").Where(l => !l.Contains(' ') && classes.IsMatch(l)), name =>
{
    var place = Directory.CreateTempSubdirectory("meltshop-reach-");
    var (fate, seconds) = Run("-1", 300, place.FullName, name);
    var lists = place.EnumerateFiles("reach-*").Select(f => File.ReadAllText(f.FullName).Split(';')).ToList();
    reaches.Add(new(name, fate, seconds, [.. lists.SelectMany(l => l).SelectMany(l => l.Split(','))], [.. lists.SelectMany(l => l[1].Split(','))]));
    place.Delete(recursive: true);
});
// To note what is reached makes a class slow: one that has not the time for that judges nothing.
foreach (var reach in reaches.Where(r => r.Fate != Fate.Lives)) Console.WriteLine($"{reach.Name} {reach.Fate} without any mutant and is left out.");
reaches = [.. reaches.Where(r => r.Fate == Fate.Lives)];
if (reaches.IsEmpty) return Fail("No tests pass without any mutant.");
foreach (var reach in reaches.OrderBy(r => r.Seconds)) Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{reach.Seconds:F1} s of {reach.Name} reach {reach.Mutants.Count} mutants"));

var gate = new Lock();
var warm = new ConcurrentBag<Process>();
Each(mutants.Where(m => fates.GetValueOrDefault(m.Id, Fate.Lives) == Fate.Lives).OrderBy(m => fates.ContainsKey(m.Id)).ToArray(), mutant =>
{
    var fate = Judge(mutant);
    lock (gate)
    {
        fates[mutant.Id] = fate;
        File.AppendAllText(verdicts, $"{mutant.Id} {fate}\n");
        if (fate != Fate.Dies) Console.WriteLine(Row(mutant));
        if (fates.Count % 20 == 0) Report();
    }
});
foreach (var process in warm) process.Kill(entireProcessTree: true);
Report();
return Score(word: false) >= least ? 0 : 1;

// One whose name says that it is about this file first, else the quickest; then all quick ones, then the slow ones, and those on a server last.
Fate Judge(Mutant mutant)
{
    var near = mutant.IsWord ? words : Path.GetFileNameWithoutExtension(mutant.File);
    var reaching = reaches.Where(r => r.Mutants.Contains(mutant.Id)).OrderBy(r => !r.Name.Contains(near, StringComparison.Ordinal)).ThenBy(r => r.Seconds).ToList();
    var here = reaching.Where(r => !r.IsOnServer).ToList();
    var isStatic = reaching.Any(r => r.Statics.Contains(mutant.Id));
    foreach (var some in new[] { here.Take(1), here.Skip(1).Where(r => r.Seconds < Quick), here.Skip(1).Where(r => r.Seconds >= Quick), reaching.Where(r => r.IsOnServer) })
    {
        if (!some.Any()) continue;
        string[] names = [.. some.Select(r => r.Name)];
        var seconds = 10 + 3 * some.Sum(r => r.Seconds);
        var fate = isStatic ? Run(mutant.Id, seconds, null, names).Fate : Warm(mutant.Id, seconds, names);
        if (fate != Fate.Lives) return fate;
    }

    return Fate.Lives;
}

// What dies in a warm process died by itself where the tests pass again right after it; else, and where the process ends, it gets one of its own.
Fate Warm(string mutant, double mostSeconds, string[] names)
{
    if (!warm.TryTake(out var process)) process = Process.Start(new ProcessStartInfo("dotnet", Host()) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true })!;
    process.ErrorDataReceived += (_, _) => { };
    var fate = Answer(process, mutant, mostSeconds, names);
    var isSure = fate == Fate.Lives || fate == Fate.Hangs && !process.HasExited || fate == Fate.Dies && Answer(process, "-1", mostSeconds, names) == Fate.Lives;
    if (isSure && fate != Fate.Hangs && process.WorkingSet64 < MostBytes) warm.Add(process);
    else process.Kill(entireProcessTree: true);
    return isSure ? fate : Run(mutant, mostSeconds, null, names).Fate;
}

string[] Host() =>
    ["exec", "--depsfile", Path.ChangeExtension(tests, ".deps.json"), "--runtimeconfig", Path.ChangeExtension(tests, ".runtimeconfig.json"), Path.Combine(folder, "tests", "warm.dll"), $"{room}.Tests", room];

static Fate Answer(Process process, string mutant, double mostSeconds, string[] names)
{
    process.StandardInput.WriteLine($"{mutant} {string.Join(' ', names)}");
    process.StandardInput.Flush();
    string? said = null;
    var answer = Task.Run(() => said = process.StandardOutput.ReadLine());
    var (clock, before) = (Stopwatch.StartNew(), Used(process));
    while (!answer.Wait(100))
    {
        if (process.HasExited || clock.Elapsed.TotalSeconds > Patience * mostSeconds || Used(process) - before > mostSeconds) return Fate.Hangs;
    }

    return said switch { "0" => Fate.Lives, null => Fate.Hangs, _ => Fate.Dies };
}

// Time is the processor's, so that a busy machine kills nobody; who waits for ever uses none, and is given thirty times as long by the clock.
(Fate Fate, double Seconds) Run(string mutant, double mostSeconds, string? reach, params string[] names)
{
    var scratch = Directory.CreateTempSubdirectory("meltshop-mutant-").FullName;
    var start = Start([.. names.SelectMany(n => new[] { "-class", n }), "-stopOnFail"]);
    start.Environment["TMPDIR"] = reach ?? scratch;
    if (reach is not null) start.Environment["STRYKER_COVERAGE_FILE"] = "reach";
    start.Environment["STRYKER_MUTANT_ID_CONTROL_VAR"] = "MELTSHOP_MUTANT";
    start.Environment["MELTSHOP_MUTANT"] = mutant;
    using var process = Process.Start(start)!;
    process.OutputDataReceived += (_, _) => { };
    process.ErrorDataReceived += (_, _) => { };
    process.BeginOutputReadLine();
    process.BeginErrorReadLine();
    var (clock, seconds, fate) = (Stopwatch.StartNew(), 0.0, Fate.Hangs);
    while (seconds < mostSeconds && clock.Elapsed.TotalSeconds < Patience * mostSeconds)
    {
        if (process.WaitForExit(100))
        {
            fate = process.ExitCode == 0 ? Fate.Lives : Fate.Dies;
            break;
        }

        seconds = Math.Max(seconds, Used(process));
    }

    if (fate == Fate.Hangs) process.Kill(entireProcessTree: true);
    Directory.Delete(scratch, recursive: true);
    return (fate, seconds);
}

static double Used(Process process)
{
    try
    {
        process.Refresh();
        return process.TotalProcessorTime.TotalSeconds;
    }
    catch (Exception e) when (e is InvalidOperationException or System.ComponentModel.Win32Exception)
    {
        return 0; // it ended just now
    }
}

ProcessStartInfo Start(params IEnumerable<string> arguments) =>
    new("dotnet", [tests, "-noColor", "-noLogo", "-noAutoReporters", .. arguments]) { RedirectStandardOutput = true, RedirectStandardError = true };

string[] Lines(params string[] arguments)
{
    using var process = Process.Start(Start(arguments))!;
    return process.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}

static void Each<T>(IEnumerable<T> all, Action<T> act) =>
    Parallel.ForEach(Partitioner.Create(all, EnumerablePartitionerOptions.NoBuffering), new ParallelOptions { MaxDegreeOfParallelism = AtOnce }, act);

void Report()
{
    var lines = mutants.Where(m => fates.TryGetValue(m.Id, out var fate) && fate != Fate.Dies).Select(Row).Order(StringComparer.Ordinal);
    var summary = $"{Sum(false)} of code. {Sum(true)} of words.";
    File.WriteAllText(Path.Combine(folder, "mutants.md"), $"{summary}\n\n| Where | Kind | Before | After | Fate |\n| --- | --- | --- | --- | --- |\n{string.Join('\n', lines)}\n");
    Console.WriteLine(summary);
}

string Row(Mutant m) => $"| {m.File}:{m.Line} | {m.Kind} | `{m.Before}` | `{m.After}` | {fates[m.Id]}{(reaches.Any(r => r.Mutants.Contains(m.Id)) ? "" : ", no test reaches it")} |";

string Sum(bool word) => string.Create(CultureInfo.InvariantCulture,
    $"{Of(word, Fate.Dies) + Of(word, Fate.Hangs)} of {Judged(word)} mutants die ({Of(word, Fate.Hangs)} hang), {Score(word):F1} %, {mutants.Count(m => m.IsWord == word)} there are");

int Of(bool word, Fate fate) => mutants.Count(m => m.IsWord == word && fates.TryGetValue(m.Id, out var its) && its == fate);
int Judged(bool word) => mutants.Count(m => m.IsWord == word && fates.ContainsKey(m.Id));
double Score(bool word) => Judged(word) == 0 ? 100 : 100.0 - 100.0 * Of(word, Fate.Lives) / Judged(word);

int Fail(string why)
{
    Console.Error.WriteLine(why);
    return 1;
}

// Mutants that do not compile, or lie in a block whose removal is a mutant too, are left out, as Stryker leaves them out.
IEnumerable<Mutant> Mutants()
{
    using var document = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder, "stryker/reports/mutation-report.json")));
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
            var (path, home) = (file.Name.Replace('\\', '/'), $"{room}/");
            yield return new(
                mutant.GetProperty("id").GetString()!, path[(path.IndexOf(home, StringComparison.Ordinal) is var at and >= 0 ? at + home.Length : 0)..], line, kind,
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

/// <summary>What a class of tests reaches, and what of it in static initialisers, which run once in a process.</summary>
internal sealed record Reach(string Name, Fate Fate, double Seconds, HashSet<string> Mutants, HashSet<string> Statics)
{
    public bool IsOnServer => Name.EndsWith("OnPostgres", StringComparison.Ordinal);
}
