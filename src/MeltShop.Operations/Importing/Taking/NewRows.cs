using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Importing.Subjects;
using MeltShop.Operations.Laboratory;
using MeltShop.Records;
using MeltShop.Records.Importing;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Importing.Taking;

/// <summary>The rows of all tables that new samples come to, with their keys.</summary>
internal sealed record NewRows(
    IReadOnlyList<Sample> Samples, IReadOnlyList<Burn> Burns, IReadOnlyList<Reading> Readings, IReadOnlyList<SampleMean> Means,
    IReadOnlyList<SampleFigure> Figures, IReadOnlyList<ImportedSample> Origins)
{
    public static async Task<NewRows> Of(Writing writing, IReadOnlyList<FoundSample> samples, long instrumentId, long fileId, CancellationToken ct)
    {
        var db = writing.Db;
        var sampleIds = await db.FreeIds<Sample>(samples.Count, ct);
        var burns = await Burned(db, samples, sampleIds, ct);
        var means = samples.SelectMany((s, i) => SampleMeans.Of(burns[i]).Select(m => (SampleId: sampleIds[i], Mean: m))).ToList();
        var meanIds = await db.FreeIds<SampleMean>(means.Count, ct);
        var figures = samples.SelectMany((s, i) => s.Sample.Figures.Select(f => (SampleId: sampleIds[i], Figure: f))).ToList();
        var figureIds = await db.FreeIds<SampleFigure>(figures.Count, ct);
        var coins = await WaitingCoins.Of(db, samples, ct);
        var originIds = await db.FreeIds<ImportedSample>(samples.Count, ct);
        return new(
            [.. samples.Select((s, i) => Row(writing.Stamp, s, sampleIds[i], instrumentId, coins.GetValueOrDefault(s)))],
            [.. burns.SelectMany(b => b)],
            [.. burns.SelectMany(b => b).SelectMany(b => b.Readings)],
            [.. means.Select((m, i) => new SampleMean { Id = meanIds[i], SampleId = m.SampleId, Element = m.Mean.Element, Percent = m.Mean.Percent, Count = m.Mean.Count })],
            [.. figures.Select((f, i) => new SampleFigure { Id = figureIds[i], SampleId = f.SampleId, Quantity = f.Figure.Quantity, Value = f.Figure.Value, InstrumentText = f.Figure.InstrumentText })],
            [.. samples.Select((s, i) => new ImportedSample { Id = originIds[i], ImportedFileId = fileId, SampleId = sampleIds[i], Identity = s.Identity, Line = s.Sample.Line, Text = s.Sample.Text })]);
    }

    public async Task Write(RecordsContext db, CancellationToken ct)
    {
        await db.InsertAll(Samples, ct);
        await db.InsertAll(Burns, ct);
        await db.InsertAll(Readings, ct);
        await db.InsertAll(Means, ct);
        await db.InsertAll(Figures, ct);
        await db.InsertAll(Origins, ct);
    }

    private static async Task<List<List<Burn>>> Burned(RecordsContext db, IReadOnlyList<FoundSample> samples, IReadOnlyList<long> sampleIds, CancellationToken ct)
    {
        var burnIds = await db.FreeIds<Burn>(samples.Sum(s => s.Sample.Burns.Count), ct);
        var readingIds = await db.FreeIds<Reading>(samples.Sum(s => s.Sample.Burns.Sum(r => r.Readings.Count)), ct);
        var (burn, reading) = (0, 0);
        return
        [
            .. samples.Select((sample, place) => sample.Sample.Burns.Select((row, index) =>
            {
                var id = burnIds[burn++];
                var readings = row.Readings.Select(r => new Reading
                {
                    Id = readingIds[reading++], BurnId = id, Element = Element.Parse(r.Element), Percent = r.Percent, BelowDetection = r.BelowDetection,
                    InstrumentText = r.InstrumentText,
                });
                return new Burn { Id = id, SampleId = sampleIds[place], Ordinal = index + 1, Readings = [.. readings] };
            }).ToList()),
        ];
    }

    private static Sample Row(Stamp stamp, FoundSample found, long id, long instrumentId, CoinOnItsWay? coin) => new()
    {
        Id = id,
        EntryKey = stamp.EntryKey,
        PersonId = stamp.PersonId,
        ObservedAt = coin?.ObservedAt ?? found.Sample.TakenAt, // the file's time is often that of measuring
        EnteredAt = stamp.EnteredAt,
        HeatId = found.HeatId,
        TreatedLadleId = found.TreatedLadleId,
        Kind = found.Sample.Subject.Kind,
        CoinNumber = found.Sample.Subject.Coin,
        Remarks = found.Sample.Remarks,
        InstrumentId = instrumentId,
        CoinOnItsWayId = coin?.Id,
        GreyFracture = found.Sample.Subject.IsGrey,
        IsMeanOnly = found.Sample.IsMeanOnly,
    };
}
