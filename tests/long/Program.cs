using MeltShop.Charging.Workers;
using MeltShop.Long;

if (args is ["solve"])
{
    SolveWorker.Serve(Console.In, Console.Out);
    return 0;
}

var runs = new (string Name, Func<Task<bool>> Run)[]
{
    ("plan", () => Task.FromResult(PlanBenchmark.Run())),
    ("pieces", () => Task.FromResult(PiecesBenchmark.Run())),
    ("yards", YardsRun.Run),
    ("reasons", ReasonsRun.Run),
    ("choices", ChoicesRun.Run),
    ("history", HistoryRun.Run),
    ("import", ImportRun.Run),
    ("grid", GridRun.Run),
    ("tablets", TabletsRun.Run),
    ("kills", LongerTests.Kills),
    ("tampering", LongerTests.Tampering),
    ("clients", LongerTests.Clients),
    ("paint", LongerTests.Paint),
    ("memory", () => Task.FromResult(MemoryRun.Run())),
};
var (passed, failed) = (0, 0);
foreach (var (name, run) in runs.Where(r => args.Length == 0 || args.Contains(r.Name)))
{
    Console.WriteLine($"== {name}");
    if (await run()) passed++;
    else failed++;
}

Console.WriteLine($"{passed} passed, {failed} failed");
return failed == 0 && passed > 0 ? 0 : 1;
