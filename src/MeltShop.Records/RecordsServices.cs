using MeltShop.Records.Databases;
using MeltShop.Records.Exchange.Archives;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace MeltShop.Records;

/// <summary>Puts the records into a program.</summary>
public static class RecordsServices
{
    /// <summary>Registers the contexts of the chosen database, the recorder, the change notices and the page queries.</summary>
    public static IServiceCollection AddMeltShopRecords(this IServiceCollection services, RecordsOptions options)
    {
        services.TryAddSingleton(TimeProvider.System);
        services.AddSingleton(options);
        services.AddSingleton<IDbContextFactory<RecordsContext>, ContextFactory>();
        services.AddScoped(provider => provider.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContext());
        services.AddSingleton<ChangeNotices>();
        services.AddSingleton<Recorder>();
        services.AddSingleton<TrailCheck>();
        services.AddSingleton<ArchiveWriter>();
        PageQueries.AddTo(services);
        return services;
    }
}
