using System.Net;
using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.Api;

public sealed class HealthTests(WebApp app) : IClassFixture<WebApp>
{
    [Theory]
    [InlineData("/health/live")]
    [InlineData("/health/ready")]
    public async Task Health_WithoutAKey_IsAnswered(string address)
    {
        using var client = app.CreateClient();

        using var response = await client.GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }
}
