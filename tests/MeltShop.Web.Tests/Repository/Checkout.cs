using System.Diagnostics;

namespace MeltShop.Web.Tests.Repository;

/// <summary>The files that a commit would hold: tracked ones and new ones that are not ignored.</summary>
internal static class Checkout
{
    private static readonly Lazy<IReadOnlyList<string>> files = new(AskGit);

    public static string Root { get; } = FindRoot();

    /// <summary>Paths from the top of the repository, with forward slashes.</summary>
    public static IReadOnlyList<string> Files => files.Value;

    public static IEnumerable<string> FilesEndingIn(params string[] endings) =>
        Files.Where(file => endings.Any(ending => file.EndsWith(ending, StringComparison.Ordinal)));

    public static string Read(string file) => File.ReadAllText(Path.Combine(Root, file));

    public static string[] Lines(string file) => File.ReadAllLines(Path.Combine(Root, file));

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "MeltShop.sln")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException("The tests do not run from inside the repository.");
    }

    private static List<string> AskGit()
    {
        // The folder may belong to another account, as in a container; reading its list of files is harmless.
        var start = new ProcessStartInfo("git", ["-c", "safe.directory=*", "ls-files", "-z", "--cached", "--others", "--exclude-standard"])
        {
            WorkingDirectory = Root,
            RedirectStandardOutput = true,
        };
        start.Environment.Remove("GIT_DIR");
        start.Environment.Remove("GIT_WORK_TREE");
        using var git = Process.Start(start) ?? throw new InvalidOperationException("git did not start.");
        var names = git.StandardOutput.ReadToEnd().Split('\0', StringSplitOptions.RemoveEmptyEntries);
        git.WaitForExit();
        return git.ExitCode == 0
            ? [.. names.Distinct().Where(name => File.Exists(Path.Combine(Root, name))).Order(StringComparer.Ordinal)]
            : throw new InvalidOperationException("git could not list the files: is this a clone?");
    }
}
