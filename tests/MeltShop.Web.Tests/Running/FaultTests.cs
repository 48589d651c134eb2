using System.Net;
using MeltShop.Records.People;
using MeltShop.Records.Reading.People;
using MeltShop.Web.Tests.SignIn;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Running;

public sealed class FaultTests(FaultTests.BrokenApp app) : IClassFixture<FaultTests.BrokenApp>
{
    /// <summary>An app in which one query fails.</summary>
    public sealed class BrokenApp : WebApp
    {
        protected override void ConfigureWebHost(IWebHostBuilder builder)
        {
            base.ConfigureWebHost(builder);
            builder.ConfigureTestServices(services => services.AddSingleton<PeoplePage>(_ => throw new InvalidOperationException("broken for a test")));
        }
    }

    [Theory]
    [InlineData("text/html,application/xhtml+xml", "text/html")]
    [InlineData("application/json", "application/problem+json")]
    public async Task Page_ThatFails_IsAPageToABrowserAndAProblemToAProgram(string accept, string answered)
    {
        var name = $"gesa{answered.Length}";
        await app.AddPersonAsync(name, Role.Melter);
        using var browser = new Browser(app);
        using var entered = await browser.SignInAsync(name, WebApp.Password);
        browser.Client.DefaultRequestHeaders.Add("Accept", accept);

        using var failed = await browser.OpenAsync("/station");

        Assert.Equal((HttpStatusCode.InternalServerError, answered), (failed.StatusCode, failed.Content.Headers.ContentType?.MediaType));
        var text = await failed.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.DoesNotContain("broken for a test", text, StringComparison.Ordinal);
        if (answered == "text/html") Assert.Contains("Something went wrong", text, StringComparison.Ordinal);
    }
}
