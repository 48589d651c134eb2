using MeltShop.Web.Composition;

namespace MeltShop.Web.Tests.Commands;

public sealed class ProgramFolderTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("meltshop-folder-").FullName;

    [Fact]
    public void Published_WithItsFilesBesideIt_TakesThemWhereverItIsStarted()
    {
        Directory.CreateDirectory(Path.Combine(folder, "wwwroot"));

        Assert.Equal(folder, ProgramFolder.Options([], folder).ContentRootPath);
    }

    [Fact]
    public void Built_WithoutFilesBesideIt_LeavesTheFolderToTheFramework() => Assert.Null(ProgramFolder.Options([], folder).ContentRootPath);

    public void Dispose() => Directory.Delete(folder, recursive: true);
}
