using System.Net;
using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.Api;

/// <summary>Strangers take no place among those who calculate.</summary>
public sealed class LimitAfterAuthenticationTests(WebApp app) : IClassFixture<WebApp>
{
    [Fact]
    public async Task Strangers_AHundredMoreThanThereArePlaces_AreAllToldThatTheyAreStrangers()
    {
        using var client = app.CreateClient();

        var answers = await Task.WhenAll(Enumerable.Range(0, 400).Select(_ => client.SendJsonAsync("analysis", "{}")));

        Assert.All(answers, answer => Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode));
        foreach (var answer in answers) answer.Dispose();
    }
}
