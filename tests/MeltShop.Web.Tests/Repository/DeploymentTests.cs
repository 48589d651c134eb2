using System.Text.RegularExpressions;
using MeltShop.Records;
using MeltShop.Web.Composition;
using Microsoft.Extensions.Configuration;

namespace MeltShop.Web.Tests.Repository;

/// <summary>No container can be built where the tests run, so what would break one silently is read from the text.</summary>
public partial class DeploymentTests
{
    private static string Containerfile { get; } = Checkout.Read("deploy/Containerfile");

    private static string Compose { get; } = Checkout.Read("docker-compose.yml");

    [GeneratedRegex(@"(?:PASSWORD|Password|SECRET)\s*[:=]\s*[^\s$;]")]
    private static partial Regex SecretInText();

    [Fact]
    public void Container_Built_RunsWithoutRootAndTellsItsHealth()
    {
        Assert.Contains("USER $APP_UID", Containerfile, StringComparison.Ordinal);
        Assert.Contains("HEALTHCHECK", Containerfile, StringComparison.Ordinal);
        Assert.Contains("/health/ready", Containerfile, StringComparison.Ordinal);
        Assert.Contains("VOLUME /data", Containerfile, StringComparison.Ordinal);
        Assert.Contains("MeltShop__DataFolder=/data", Containerfile, StringComparison.Ordinal);
    }

    [Fact]
    public void Container_CopiedFiles_AreInTheRepository()
    {
        var sources = Containerfile.Split('\n')
            .Where(line => line.StartsWith("COPY ", StringComparison.Ordinal) && !line.Contains("--from", StringComparison.Ordinal))
            .SelectMany(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1..^1]);

        Offences.None(sources.Where(source => !Path.Exists(Path.Combine(Checkout.Root, source))));
    }

    [Fact]
    public void Compose_Services_AreOwnerMigrationAndApp()
    {
        Assert.Contains("image: postgres:", Compose, StringComparison.Ordinal);
        Assert.Contains("""command: ["migrate"]""", Compose, StringComparison.Ordinal);
        Assert.Contains("condition: service_completed_successfully", Compose, StringComparison.Ordinal);
        Assert.Contains("condition: service_healthy", Compose, StringComparison.Ordinal);
        Assert.Contains("\"127.0.0.1:8080:8080\"", Compose, StringComparison.Ordinal);
    }

    [Fact]
    public void Secret_OfTheContainers_StaysOutOfTheRepository()
    {
        Assert.DoesNotMatch(SecretInText(), Compose);
        Assert.Contains("deploy/secrets/", Checkout.Read(".gitignore"), StringComparison.Ordinal);
        Assert.DoesNotContain(Checkout.Files, file => file.EndsWith(".env", StringComparison.Ordinal));
    }

    [Fact]
    public void Owner_OfTheDatabase_IsUnknownToTheApp()
    {
        var settings = ShopSettings.From(Secrets("app.env"));

        Assert.Equal(RecordsProvider.Postgres, settings.Records.Provider);
        Assert.Contains("Username=meltshop_app;", settings.Records.ConnectionString, StringComparison.Ordinal);
        Assert.Null(settings.Records.OwnerConnection);
        Assert.False(settings.Demo);
    }

    [Fact]
    public void Migration_OfTheContainers_RunsAsTheOwner()
    {
        var settings = ShopSettings.From(Secrets("migrate.env"));

        Assert.Equal(RecordsProvider.Postgres, settings.Records.Provider);
        Assert.Contains("Username=meltshop_owner;", settings.Records.OwnerConnection, StringComparison.Ordinal);
    }

    /// <summary>The settings that make-secrets writes into one of its files, read as the program reads its environment.</summary>
    private static IConfiguration Secrets(string file)
    {
        var lines = Checkout.Lines("deploy/make-secrets")
            .SkipWhile(line => !line.Contains($"/{file}\"", StringComparison.Ordinal)).Skip(1)
            .TakeWhile(line => line != "END");
        return new ConfigurationBuilder().AddInMemoryCollection(lines
            .Select(line => line.Split('=', 2))
            .Select(pair => KeyValuePair.Create(pair[0].Replace("__", ":", StringComparison.Ordinal), (string?)pair[1]))).Build();
    }
}
