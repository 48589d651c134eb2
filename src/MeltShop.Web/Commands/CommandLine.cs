using MeltShop.Web.Composition;
using Microsoft.Extensions.Logging.Console;

namespace MeltShop.Web.Commands;

/// <summary>The commands of the one program. What a script reads goes to standard output, all else to standard error.</summary>
internal static class CommandLine
{
    private const int Misused = 2;

    private const string Usage = """
        Usage: MeltShop.Web [command] [--setting value ...]

          (no command)           serve; --urls http://127.0.0.1:5080 says where
          api-key add NAME       make a key for a machine; the last line printed is the key
          api-key add NAME reader
                                 the same for one that may also read all that was recorded
          api-key list           list the keys: number, name, made, revoked, reader or not
          api-key revoke NAME    end every key of that name
          migrate                bring the database to the schema of this program
          verify                 check the trail and every record against it; the last line printed is its end
                                 --against 161-9f3a... or a file: it must pass through an end that was printed or kept
          backup FILE            copy everything into a new file while people work, checked
          restore FILE           put a backup into the place of the database, where there is none yet
          move FILE              fill an empty PostgreSQL database from the SQLite file of a shop
          export FILE            write all that the shop owns into an open form (docs/EXCHANGE.md), without passwords and keys
          import FILE            read an export into an empty installation: its lines of JSON, or its CSV where those are not there
          solve                  a worker process for whole pieces: questions on standard input; the program starts it itself

        Settings: MeltShop:DataFolder, MeltShop:Database (sqlite or postgres), ConnectionStrings:MeltShop, MeltShop:OwnerConnection, MeltShop:TrailHeads.
        """;

    /// <summary>True where the first argument is a word and not a setting.</summary>
    public static bool HoldsCommand(string[] args) => args.Length > 0 && !args[0].StartsWith('-');

    /// <summary>Runs the command that the words before the first setting name.</summary>
    /// <returns>The exit code: 0 done, 1 failed, 2 not understood.</returns>
    public static async Task<int> RunAsync(string[] args)
    {
        var words = args.TakeWhile(argument => !argument.StartsWith('-')).ToArray();
        if (words is [SolveCommand.Word]) return SolveCommand.Run();
        Func<IServiceProvider, Task<int>>? command = words switch
        {
            ["api-key", "add", { Length: > 0 } name] => services => ApiKeyCommands.AddAsync(services, name, readsRecords: false),
            ["api-key", "add", { Length: > 0 } name, "reader"] => services => ApiKeyCommands.AddAsync(services, name, readsRecords: true),
            ["api-key", "list"] => ApiKeyCommands.ListAsync,
            ["api-key", "revoke", { Length: > 0 } name] => services => ApiKeyCommands.RevokeAsync(services, name),
            ["migrate"] => MigrateAsync,
            ["verify"] => VerifyCommand.RunAsync,
            ["backup", { Length: > 0 } file] => services => CopyCommands.BackupAsync(services, file),
            ["restore", { Length: > 0 } file] => services => CopyCommands.RestoreAsync(services, file),
            ["move", { Length: > 0 } file] => services => CopyCommands.MoveAsync(services, file),
            ["export", { Length: > 0 } file] => services => CopyCommands.ExportAsync(services, file),
            ["import", { Length: > 0 } file] => services => CopyCommands.ImportAsync(services, file),
            _ => null,
        };
        if (command is null) return await MisusedAsync(words);

        await using var app = Build(args[words.Length..]);
        return await command(app.Services);
    }

    private static async Task<int> MigrateAsync(IServiceProvider services)
    {
        await services.GetRequiredService<DatabasePreparation>().MigrateAsync(CancellationToken.None);
        await Console.Error.WriteLineAsync("The database is up to date.");
        return 0;
    }

    /// <summary>The same settings and services as when serving; nothing is started.</summary>
    private static WebApplication Build(string[] settings)
    {
        var builder = ProgramFolder.CreateBuilder(settings);
        builder.Services.Configure<ConsoleLoggerOptions>(options => options.LogToStandardErrorThreshold = LogLevel.Trace);
        builder.AddMeltShop();
        return builder.Build();
    }

    private static async Task<int> MisusedAsync(string[] words)
    {
        await Console.Error.WriteLineAsync($"Not understood: {string.Join(' ', words)}");
        await Console.Error.WriteLineAsync();
        await Console.Error.WriteLineAsync(Usage);
        return Misused;
    }
}
