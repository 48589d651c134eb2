#:property PublishAot=false
// Keeps the tests of a room warm: to start a process, a database model and a solver anew for each mutant would take most of a run's time.
// Arguments: names of the tests' assembly and of the mutated one. Each line that comes in is a mutant's number and classes of tests; the answer is 0 where
// they pass. Runs in the folder of the tests and with their dependencies.
using System.Globalization;
using System.Reflection;

var tests = Assembly.Load(args[0]);
Assembly.SetEntryAssembly(tests);
var active = Assembly.Load(args[1]).GetTypes().Single(t => t.Name == "MutantControl").GetField("ActiveMutant")!;
var answers = Console.Out;
Console.SetOut(TextWriter.Null);
while (Console.ReadLine() is { } line)
{
    var words = line.Split(' ');
    active.SetValue(null, int.Parse(words[0], CultureInfo.InvariantCulture));
    string[] run = ["-noColor", "-noLogo", "-noAutoReporters", "-stopOnFail", .. words.Skip(1).SelectMany(c => new[] { "-class", c })];
    answers.WriteLine(tests.EntryPoint!.Invoke(null, [run]));
}
