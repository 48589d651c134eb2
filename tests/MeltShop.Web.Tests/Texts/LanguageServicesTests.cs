using System.Globalization;
using System.Security.Claims;
using MeltShop.Web.SignIn;
using MeltShop.Web.Texts;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Localization;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Options;

namespace MeltShop.Web.Tests.Texts;

public sealed class LanguageServicesTests
{
    [Theory]
    [InlineData("de-DE", "fr-FR", "de-DE")]
    [InlineData(null, "fr-FR", "fr-FR")]
    [InlineData(null, null, "en-GB")]
    [InlineData("xx-XX", null, "en-GB")]
    public async Task Request_PersonAndBrowser_SpeakThePersonsLanguageFirst(string? chosen, string? browser, string spoken)
    {
        var request = new DefaultHttpContext();
        if (chosen is not null) request.User = new(new ClaimsIdentity([new(PersonClaims.Culture, chosen)], "test"));
        request.Request.Headers.AcceptLanguage = browser;
        var options = new ServiceCollection().AddMeltShopTexts().BuildServiceProvider().GetRequiredService<IOptions<RequestLocalizationOptions>>();
        var culture = "";
        RequestDelegate next = _ =>
        {
            culture = CultureInfo.CurrentCulture.Name;
            return Task.CompletedTask;
        };
        await new RequestLocalizationMiddleware(next, options, NullLoggerFactory.Instance).Invoke(request);

        Assert.Equal(spoken, culture);
    }
}
