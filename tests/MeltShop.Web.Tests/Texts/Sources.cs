using System.Runtime.CompilerServices;

namespace MeltShop.Web.Tests.Texts;

/// <summary>The source files, as they lie beside the tests.</summary>
internal static class Sources
{
    public static string Root { get; } = Find();

    public static IEnumerable<string> Files(string folder, string pattern) =>
        Directory.EnumerateFiles(Path.Combine(Root, "src", folder), pattern, SearchOption.AllDirectories)
            .Where(file => !file.Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj"))
            .Order(StringComparer.Ordinal);

    public static string Name(string file) => Path.GetRelativePath(Root, file);

    private static string Find([CallerFilePath] string here = "")
    {
        var folder = File.Exists(here) ? Path.GetDirectoryName(here) : AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "MeltShop.sln"))) folder = Path.GetDirectoryName(folder);
        return folder ?? throw new InvalidOperationException("The tests run inside the source tree.");
    }
}
