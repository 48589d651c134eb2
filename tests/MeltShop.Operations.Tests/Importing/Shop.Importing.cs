using MeltShop.Operations.Importing;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Operations.Importing.Taking;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Tests.Importing.Corrupted;
using MeltShop.Records.Importing;
using MeltShop.Records.Laboratory;

namespace MeltShop.Operations.Tests.Shops;

public sealed partial class Shop
{
    /// <summary>The spectrometer and a map of its files.</summary>
    public async Task<long> ImportMap(ColumnMap? map = null)
    {
        await Do(Get<AddInstrument>(), Metallurgist, new(Guid.NewGuid(), Now, SampleFiles.Map.Instrument, "Spark", InstrumentKind.Spark, false, []));
        return (await Do(Get<SaveImportMap>(), Metallurgist, new(Guid.NewGuid(), Now, null, null, "burns", map ?? SampleFiles.Map))).Value;
    }

    public async Task<ImportPreview> Preview(long mapId, byte[] bytes) => (await Get<ImportDesk>().Look(mapId, bytes, TestContext.Current.CancellationToken)).Value;

    /// <summary>Looks at the file and accepts what the preview shows.</summary>
    public async Task<Outcome<ImportSamples.Result>> Import(long mapId, byte[] bytes, string name = "burns.csv") =>
        await Do(Get<ImportSamples>(), Metallurgist, (await Preview(mapId, bytes)).Taking(Guid.NewGuid(), Now, ImportWay.Page, name));

    /// <summary>The site's own clock, as files write it.</summary>
    public string LocalTime(double minutesAgo = 0) => TimeZoneInfo.ConvertTime(Now.AddMinutes(-minutesAgo), TimeZoneInfo.FindSystemTimeZoneById("Europe/Berlin"))
        .ToString("yyyy-MM-dd HH:mm:ss", System.Globalization.CultureInfo.InvariantCulture);
}
