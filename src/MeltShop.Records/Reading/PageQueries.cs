using MeltShop.Records.Reading.Changes;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Drafts;
using MeltShop.Records.Reading.Finding;
using MeltShop.Records.Reading.Floor;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.History;
using MeltShop.Records.Reading.Importing;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Reading.Orders;
using MeltShop.Records.Reading.People;
using MeltShop.Records.Reading.Recall;
using MeltShop.Records.Reading.Sites;
using MeltShop.Records.Reading.Trail;
using MeltShop.Records.Reading.Yard;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Records.Reading;

internal static class PageQueries
{
    /// <summary>One query class a page; none holds a connection between calls.</summary>
    public static void AddTo(IServiceCollection services)
    {
        services.AddSingleton<FloorPage>();
        services.AddSingleton<FindPage>();
        services.AddSingleton<YardPage>();
        services.AddSingleton<GradesPage>();
        services.AddSingleton<ChargePage>();
        services.AddSingleton<OrdersPage>();
        services.AddSingleton<HeatPage>();
        services.AddSingleton<CorrectionPage>();
        services.AddSingleton<NearbyHeats>();
        services.AddSingleton<LadlePage>();
        services.AddSingleton<EquipmentPage>();
        services.AddSingleton<RecallPage>();
        services.AddSingleton<HistoryPage>();
        services.AddSingleton<HistoryChoices>();
        services.AddSingleton<DraftRows>();
        services.AddSingleton<PeoplePage>();
        services.AddSingleton<SitePage>();
        services.AddSingleton<SetUpPage>();
        services.AddSingleton<FurnacesPage>();
        services.AddSingleton<TrailPage>();
        services.AddSingleton<ChangesSince>();
        services.AddSingleton<InstrumentsPage>();
        services.AddSingleton<ImportPage>();
        services.AddSingleton<InstrumentPage>();
        services.AddSingleton<LaboratoryPage>();
        services.AddSingleton<TrendPage>();
    }
}
