using System.Globalization;
using System.Security.Claims;
using MeltShop.Web.SignIn;
using Microsoft.AspNetCore.Localization;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Localization;
using Microsoft.Extensions.Options;

namespace MeltShop.Web.Texts;

/// <summary>Texts from resources, in the person's language.</summary>
public static class LanguageServices
{
    /// <summary>The languages and decimal signs that a person may choose; texts without a translation are English.</summary>
    public static IReadOnlyList<string> Spoken { get; } = ["en-GB", "en-US", "de-DE", "fr-FR", "es-ES", "it-IT", "pl-PL"];

    /// <summary>Those, and the one that is for tests and developers.</summary>
    public static IReadOnlyList<string> Cultures { get; } = [.. Spoken, PseudoLanguage.Culture];

    /// <summary>The language in which the texts are: English where a person's own has no translation, whatever its decimal sign.</summary>
    public static string Language(this IStringLocalizer<Shell> texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        return texts[nameof(Language)].Value.Trim(PseudoLanguage.Opening[0], PseudoLanguage.Closing[0]);
    }

    public static IServiceCollection AddMeltShopTexts(this IServiceCollection services)
    {
        services.AddLocalization();
        services.Replace(ServiceDescriptor.Singleton<IStringLocalizerFactory>(provider => new PseudoLanguage(
            new ResourceManagerStringLocalizerFactory(
                provider.GetRequiredService<IOptions<LocalizationOptions>>(),
                provider.GetRequiredService<ILoggerFactory>()))));
        services.Configure<RequestLocalizationOptions>(options =>
        {
            var cultures = Cultures.Select(CultureInfo.GetCultureInfo).ToList();
            options.SupportedCultures = cultures;
            options.SupportedUICultures = cultures;
            options.SetDefaultCulture(Cultures[0]);
            options.RequestCultureProviders.Insert(0, new CustomRequestCultureProvider(Chosen));
        });
        return services;
    }

    /// <summary>What the person chose; before they sign in the browser's language stands.</summary>
    internal static Task<ProviderCultureResult?> Chosen(HttpContext request) =>
        Task.FromResult(request.User.FindFirstValue(PersonClaims.Culture) is { Length: > 0 } culture ? new ProviderCultureResult(culture) : null);
}
