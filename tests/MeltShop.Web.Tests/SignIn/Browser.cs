using System.Text.RegularExpressions;
using MeltShop.Web.Tests.Running;
using Microsoft.AspNetCore.Mvc.Testing;

namespace MeltShop.Web.Tests.SignIn;

/// <summary>A person at a browser without scripts: opens a form, fills it in and posts it, cookies and all.</summary>
internal sealed partial class Browser(WebApp app) : IDisposable
{
    private readonly HttpClient client = app.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false });

    /// <summary>For what is sent by a script.</summary>
    public HttpClient Client => client;

    public Task<HttpResponseMessage> OpenAsync(string address) => client.GetAsync(Address(address), TestContext.Current.CancellationToken);

    public async Task<string> ReadAsync(string address)
    {
        using var response = await OpenAsync(address);
        return await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }

    /// <summary>Posts to an address with the token of the form on a page.</summary>
    public async Task<HttpResponseMessage> PostAsync(string page, string to, params (string Name, string Value)[] fields)
    {
        var token = Token().Match(await ReadAsync(page)).Groups[1].Value;
        return await PostAsync(to, [.. fields, ("__RequestVerificationToken", token)]);
    }

    /// <summary>Posts to an address without any token but what the fields hold.</summary>
    public Task<HttpResponseMessage> PostAsync(string to, params (string Name, string Value)[] fields) => client.PostAsync(
        Address(to), new FormUrlEncodedContent(fields.Select(field => KeyValuePair.Create(field.Name, field.Value))), TestContext.Current.CancellationToken);

    public Task<HttpResponseMessage> SignInAsync(string name, string password, string returnTo = "/") =>
        PostAsync("/sign-in", "/sign-in/enter", ("name", name), ("password", password), ("station", "Lab tablet"), ("returnTo", returnTo));

    public void Dispose() => client.Dispose();

    private static Uri Address(string address) => new(address, UriKind.RelativeOrAbsolute);

    [GeneratedRegex("""name="__RequestVerificationToken" value="([^"]+)"|value="([^"]+)" name="__RequestVerificationToken" """)]
    private static partial Regex Token();
}
