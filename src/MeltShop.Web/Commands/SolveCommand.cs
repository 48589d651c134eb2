using MeltShop.Charging.Workers;

namespace MeltShop.Web.Commands;

/// <summary>The inside of a worker process; the program starts it itself. It needs no settings and touches no data.</summary>
internal static class SolveCommand
{
    public const string Word = "solve";

    public static int Run()
    {
        SolveWorker.Serve(Console.In, Console.Out);
        return 0;
    }
}
