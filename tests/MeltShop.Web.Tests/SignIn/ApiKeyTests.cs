using System.Net;
using System.Net.Http.Headers;
using MeltShop.Operations.People;
using MeltShop.Records;
using MeltShop.Web.Tests.Api;
using MeltShop.Web.Tests.Running;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.SignIn;

public sealed class ApiKeyTests(WebApp app) : IClassFixture<WebApp>
{
    [Theory]
    [InlineData(null)]
    [InlineData("Bearer")]
    [InlineData("Bearer ")]
    [InlineData("Bearer wrong")]
    [InlineData("Basic dXNlcjpwYXNz")]
    public async Task Calculation_NoKeyOrAWrongOne_IsRefusedWithAProblemDocument(string? authorization)
    {
        using var client = app.CreateClient();
        if (authorization is not null) client.DefaultRequestHeaders.TryAddWithoutValidation("Authorization", authorization);

        // The body is wrong too: without a key nobody learns what.
        using var response = await client.SendJsonAsync("analysis", "{");

        Assert.Equal(HttpStatusCode.Unauthorized, response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
        Assert.Contains(response.Headers.WwwAuthenticate, challenge => challenge.Scheme == "Bearer");
    }

    [Fact]
    public async Task Key_MadeWhileTheServerRuns_IsValidAtOnceAndUntilItIsRevoked()
    {
        using var client = app.CreateClient();
        var name = $"scale {Guid.NewGuid()}";
        client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", await app.AddKeyAsync(name));

        using var before = await client.SendJsonAsync("analysis", Bodies.Analysis);
        await app.RevokeKeysAsync(name);
        using var after = await client.SendJsonAsync("analysis", Bodies.Analysis);

        Assert.Equal(HttpStatusCode.OK, before.StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, after.StatusCode);
    }

    [Fact]
    public async Task Key_InTheDatabase_IsAHashAndNothingElse()
    {
        var key = await app.AddKeyAsync("spectrometer");

        await using var records = await app.Services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(TestContext.Current.CancellationToken);
        Assert.True(await records.ApiKeys.AnyAsync(k => k.Hash == ApiKeySecret.HashOf(key), TestContext.Current.CancellationToken));
        foreach (var file in Directory.EnumerateFiles(app.DataFolder))
        {
            await using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            using var reader = new StreamReader(stream, System.Text.Encoding.Latin1);
            Assert.DoesNotContain(key, await reader.ReadToEndAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Key_OfAMachine_OpensNoPage()
    {
        using var client = app.CreateClient(new() { AllowAutoRedirect = false });
        client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", await app.AddKeyAsync("curious"));

        using var response = await client.GetAsync(new Uri("/yard", UriKind.Relative), TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.Redirect, response.StatusCode);
        Assert.StartsWith("/sign-in", response.Headers.Location?.PathAndQuery, StringComparison.Ordinal);
    }
}
