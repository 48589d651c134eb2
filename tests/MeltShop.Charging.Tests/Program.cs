using MeltShop.Charging.Tests;
using MeltShop.Charging.Workers;
using Xunit.MicrosoftTestingPlatform;
using Xunit.Runner.InProc.SystemConsole;

// What the entry point made by xunit does, and a worker process for the tests of workers.
if (args is ["solve"])
{
    SolveWorker.Serve(Console.In, Console.Out);
    return 0;
}

return args.Any(a => a is "--server" or "--internal-msbuild-node")
    ? await TestPlatformTestFramework.RunAsync(args, SelfRegisteredExtensions.AddSelfRegisteredExtensions)
    : await ConsoleRunner.Run(args);
