using System.Net;
using MeltShop.Web.Tests.Running;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.StaticAssets;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Architecture;

/// <summary>Nobody gets anywhere by a forgotten rule.</summary>
public sealed class RouteTests(WebApp app) : IClassFixture<WebApp>
{
    /// <summary>All that is open to everybody, besides the files of the pages.</summary>
    private static readonly string[] Open =
    [
        "/first-administrator", "/first-administrator/add", "/health/live", "/health/ready", "/look", "/look/choose", "/openapi/{documentName}.json", "/sign-in", "/sign-in/enter",
    ];

    [Fact]
    public void Routes_OpenToEverybody_AreTheseOnly() => Assert.Equal(
        Open,
        Routes().Where(IsOpen).Select(Pattern).Where(pattern => pattern.Length > 0).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Route_OfOurs_HasARuleOfItsOwn()
    {
        // The framework's own (circuits, files while developing) carry none and fall to the rule for all: see the next test.
        var bare = Routes()
            .Where(route => !IsOpen(route) && route.Metadata.GetMetadata<IAuthorizeData>() is null)
            .Select(Pattern)
            .Where(pattern => !pattern.StartsWith("/_", StringComparison.Ordinal) && pattern != "/{**path:file}");

        Assert.Empty(bare);
    }

    [Fact]
    public async Task Route_ThatIsNotOpen_RefusesWhoeverIsNotSignedIn()
    {
        using var client = app.CreateClient(new() { AllowAutoRedirect = false });
        var closed = Routes().Where(route => !IsOpen(route)).ToList();

        Assert.NotEmpty(closed);
        foreach (var route in closed)
        {
            var method = route.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods[0] ?? "GET";
            var address = System.Text.RegularExpressions.Regex.Replace(Pattern(route), "{[^}]*}", "1");
            using var request = new HttpRequestMessage(new HttpMethod(method), new Uri(address, UriKind.Relative));
            using var response = await client.SendAsync(request, TestContext.Current.CancellationToken);
            Assert.True(
                response.StatusCode == HttpStatusCode.Unauthorized
                    || (response.StatusCode == HttpStatusCode.Redirect && response.Headers.Location!.ToString().Contains("/sign-in", StringComparison.Ordinal)),
                $"{method} {address}: {(int)response.StatusCode}");
        }
    }

    [Fact]
    public async Task Address_ThatDoesNotExist_IsRefusedToo()
    {
        using var client = app.CreateClient(new() { AllowAutoRedirect = false });

        using var page = await client.GetAsync(new Uri("/nowhere", UriKind.Relative), TestContext.Current.CancellationToken);
        using var call = await client.GetAsync(new Uri("/api/v1/nowhere", UriKind.Relative), TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.Redirect, page.StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, call.StatusCode);
    }

    private static bool IsOpen(RouteEndpoint route) => route.Metadata.GetMetadata<IAllowAnonymous>() is not null;

    private static string Pattern(RouteEndpoint route) => "/" + route.RoutePattern.RawText?.TrimStart('/');

    private IEnumerable<RouteEndpoint> Routes() => app.Services.GetRequiredService<EndpointDataSource>().Endpoints
        .OfType<RouteEndpoint>()
        .Where(route => route.Metadata.GetMetadata<StaticAssetDescriptor>() is null);
}
