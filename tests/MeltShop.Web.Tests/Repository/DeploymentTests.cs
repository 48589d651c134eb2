using System.Text.RegularExpressions;

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
        var parts = Checkout.Read("deploy/make-secrets").Split("cat >");
        var app = Assert.Single(parts, part => part.Contains("/app.env", StringComparison.Ordinal));

        Assert.Contains("Username=meltshop_app;Password=$app", app, StringComparison.Ordinal);
        Assert.DoesNotContain("owner", app, StringComparison.OrdinalIgnoreCase);
    }
}
