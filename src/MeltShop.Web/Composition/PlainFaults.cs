using System.Data.Common;

namespace MeltShop.Web.Composition;

/// <summary>
/// What can be wrong with an installation is told in a sentence, not as a trace of the program: a setting, a folder that cannot
/// be written, a database that does not answer, an address that is taken. Anything else is a fault of ours and keeps its trace.
/// </summary>
internal static class PlainFaults
{
    private const int Failed = 1;

    /// <summary>Runs the program, or tells why it cannot run.</summary>
    /// <returns>The exit code.</returns>
    public static async Task<int> TellAsync(Func<Task<int>> run)
    {
        try
        {
            return await run();
        }
        catch (SettingsException fault)
        {
            await Console.Error.WriteLineAsync(fault.Message);
        }
        catch (DbException fault)
        {
            await Console.Error.WriteLineAsync($"The database cannot be used: {fault.Message}");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            await Console.Error.WriteLineAsync($"MeltShop cannot run here: {fault.Message}");
        }

        return Failed;
    }
}
