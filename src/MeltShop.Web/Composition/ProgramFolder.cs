namespace MeltShop.Web.Composition;

/// <summary>
/// Where the program's own files are. The framework takes the folder that one stands in, which for a published program is any:
/// its settings would not be found and its style sheets be served empty. `dotnet run` stands in the project's folder, as it should.
/// </summary>
internal static class ProgramFolder
{
    /// <summary>How to make the program's builder.</summary>
    /// <param name="args">Settings.</param>
    /// <param name="folder">The folder of the program's library.</param>
    public static WebApplicationOptions Options(string[] args, string folder) => new()
    {
        Args = args,
        ContentRootPath = Directory.Exists(Path.Combine(folder, "wwwroot")) ? folder : null,
    };

    /// <summary>The builder of this program, for serving and for commands.</summary>
    public static WebApplicationBuilder CreateBuilder(string[] args) => WebApplication.CreateBuilder(Options(args, AppContext.BaseDirectory));
}
