using MeltShop.Operations;
using MeltShop.Records;
using MeltShop.Records.Databases;
using MeltShop.Web.Api;
using MeltShop.Web.Api.Answering;
using MeltShop.Web.Api.Description;
using MeltShop.Web.Api.Samples;
using MeltShop.Web.Api.Trends;
using MeltShop.Web.Api.Weighings;
using MeltShop.Web.Api.Certificates;
using MeltShop.Web.Api.Events;
using MeltShop.Web.Api.Entries;
using MeltShop.Web.Commands;
using MeltShop.Web.Demo;
using MeltShop.Web.SignIn;
using MeltShop.Web.Watching;

namespace MeltShop.Web.Composition;

/// <summary>Puts the program together: what it needs, and what answers which request.</summary>
internal static class MeltShopApp
{
    /// <summary>Everything that serving and commands need.</summary>
    /// <exception cref="SettingsException">A setting is missing or makes no sense.</exception>
    public static WebApplicationBuilder AddMeltShop(this WebApplicationBuilder builder)
    {
        var settings = ShopSettings.From(builder.Configuration);
        builder.UseLoopbackUnlessTold();
        builder.Services.AddSingleton(settings);
        builder.Services.AddMeltShopRecords(settings.Records);
        builder.Services.AddMeltShopOperations();
        builder.Services.AddSingleton<DatabasePreparation>();
        builder.Services.AddSingleton<DemoFoundry>();
        builder.Services.AddSingleton<StartMessage>();
        if (settings.Records.Provider == RecordsProvider.Postgres) builder.Services.AddHostedService<OtherInstances>();
        builder.Services.AddHostedService<DailyHead>();
        builder.Services.AddHostedService<Solvers>();
        builder.Services.AddSignIn();
        builder.Services.AddMeltShopPages();
        CalculationBounds.AddTo(builder.Services);
        builder.Services.AddScoped<ScaleDesk>();
        builder.Services.AddScoped<TapDesk>();
        builder.Services.AddScoped<SampleDesk>();
        builder.Services.AddWatchedFolder(builder.Configuration);
        builder.Services.AddRefusalOfTooMany();
        builder.Services.AddApiDescription();
        builder.Services.AddProblemDetails();
        builder.Services.AddHealth();
        return builder;
    }

    /// <summary>The pipeline. Whoever is not named by a rule is refused: <see cref="SignInServices"/> sets the fallback.</summary>
    public static WebApplication UseMeltShop(this WebApplication app)
    {
        app.UseFaults();
        app.UseSecurityHeaders();
        app.UsePageForMissingPages();
        app.UseAuthentication();
        app.UseAuthorization();
        // Only who is let in takes a place: strangers would keep machines with a key waiting.
        app.UseRateLimiter();
        app.UseRequestTimeouts();
        app.UseActingPerson();
        app.MapHealth();
        app.MapOpenApi().AllowAnonymous();
        app.MapCalculations();
        app.MapWeighings();
        app.MapTaps();
        app.MapSamples();
        app.MapEvents();
        app.MapCertificates();
        app.MapTrends();
        app.MapEntries();
        app.MapSignIn();
        app.MapMeltShopPages();
        app.UseFormsThatGrewOld();
        return app;
    }
}
