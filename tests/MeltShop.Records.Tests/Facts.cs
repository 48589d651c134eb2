using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Grades;
using MeltShop.Records.Castings;
using MeltShop.Records.Heats;
using MeltShop.Records.Importing;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;

namespace MeltShop.Records.Tests;

/// <summary>Facts with the stamp of their entry.</summary>
public static class Facts
{
    public static MaterialAnalysis Analysis(this Stamp stamp, long materialId, params (Element Element, double Percent, double? Spread, double? Recovery)[] percents) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        MaterialId = materialId, Source = "invented for a test", SourceKind = "memory",
        Percents = [.. percents.Select(p => new MaterialPercent { Element = p.Element, Percent = p.Percent, Spread = p.Spread, RecoveryPercent = p.Recovery, BathRecoveryPercent = p.Recovery - 15 })],
    };

    public static FurnaceMetal Metal(this Stamp stamp, long furnaceId, FurnaceMetalKind kind, double kg, long? supersedes = null) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        FurnaceId = furnaceId, Kind = kind, Kg = kg, SupersedesId = supersedes, Reason = supersedes is null ? null : "misread",
    };

    public static FurnaceMetal PouredBack(this Stamp stamp, long furnaceId, double kg) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        FurnaceId = furnaceId, Kind = FurnaceMetalKind.PouredBack, Kg = kg, Percents = [new() { Element = Element.Mg, Percent = 0.04 }],
    };

    public static HeatStep Came(this Stamp stamp, long heatId, HeatState state) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt, HeatId = heatId, State = state,
    };

    public static HeatCorrection Corrected(this Stamp stamp, Heat heat) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt, Reason = "the other furnace",
        HeatId = heat.Id, GradeId = heat.GradeId, FormerGradeId = heat.GradeId, StartedAt = heat.StartedAt, FormerStartedAt = heat.StartedAt.AddMinutes(-3),
    };

    public static Sites.ChargeRule ChargeRule(this Stamp stamp) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt, SlagCostPerTonne = 42.5, BucketM3 = 1.25,
    };

    public static LadleStep Came(this Stamp stamp, long treatedLadleId, TreatedLadleState state) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        TreatedLadleId = treatedLadleId, State = state,
    };

    public static Heel Heel(this Stamp stamp, long furnaceId, Heat? from, double kg, params (Element Element, double Percent)[] percents) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        FurnaceId = furnaceId, FromHeatId = from?.Id, Kg = kg,
        Percents = [.. percents.Select(p => new HeelPercent { Element = p.Element, Percent = p.Percent })],
    };

    public static PriceFact Price(this Stamp stamp, long materialId, decimal price) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        MaterialId = materialId, PricePerTonne = price,
    };

    public static StockFact Stock(this Stamp stamp, long materialId, double kg, StockKind kind = StockKind.Received, string? lot = null) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        MaterialId = materialId, Kind = kind, Kg = kg, Lot = lot,
    };

    public static LotPlace Place(this Stamp stamp, long materialId, string? lot, string? bin) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        MaterialId = materialId, Lot = lot, Bin = bin,
    };

    public static Weighing Weighing(this Stamp stamp, long heatId, long materialId, double kg, long? supersedes = null, bool intoBath = false) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        HeatId = heatId, MaterialId = materialId, Kg = kg, IntoBath = intoBath, SupersedesId = supersedes, Reason = supersedes is null ? null : "digits swapped",
    };

    public static TemperatureReading Temperature(this Stamp stamp, long heatId, double celsius, long? treatedLadleId = null) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        HeatId = heatId, TemperatureC = celsius, TreatedLadleId = treatedLadleId,
    };

    /// <summary>A sample with one burn for each carbon; the first reads magnesium below its limit of detection.</summary>
    public static Sample Sample(this Stamp stamp, long heatId, long? treatedLadleId, SampleKind kind, params double[] carbon) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        HeatId = heatId, TreatedLadleId = treatedLadleId, Kind = kind, CoinNumber = "17", Remarks = "für den Prüfer",
        Burns = [.. carbon.Select((c, n) => new Burn { Ordinal = n + 1, Readings = Readings(c, n == 0) })],
        Means = [new() { Element = Element.C, Percent = carbon.Average(), Count = carbon.Length }],
    };

    /// <summary>A bath coin with carbon and silicon.</summary>
    public static Sample Coin(this Stamp stamp, long heatId, double carbon, bool isGrey, long? supersedes = null, string? number = null) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        HeatId = heatId, Kind = SampleKind.Bath, CoinNumber = number, GreyFracture = isGrey, SupersedesId = supersedes, Reason = supersedes is null ? null : "misread",
        Means = [new() { Element = Element.C, Percent = carbon, Count = 1 }, new() { Element = Element.Si, Percent = 1.5, Count = 1 }],
    };

    /// <summary>A bath coin whose result has not come.</summary>
    public static CoinOnItsWay Sent(this Stamp stamp, long heatId, string number) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        HeatId = heatId, Kind = SampleKind.Bath, CoinNumber = number,
    };

    public static BurnDecision SetAside(this Stamp stamp, long sampleId, int ordinal) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        SampleId = sampleId, Ordinal = ordinal, SetAside = true, Reason = "crack in the coin",
    };

    public static BathCorrection Correction(this Stamp stamp, long heatId, long sampleId) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        HeatId = heatId, SampleId = sampleId, Goal = "cost", Problem = "{}", Answer = "{}", Versions = "{}", TotalCost = 12.34m,
    };

    public static PocketCard Card(this Stamp stamp, long treatedLadleId, long inoculantId) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        TreatedLadleId = treatedLadleId, PlannedKg = 1000, TemperatureC = 1480, TargetMgPercent = 0.045, InoculantMaterialId = inoculantId,
        InoculantKg = 6, StopWeightKg = 1075, Versions = "{}",
    };

    public static Tap Tap(this Stamp stamp, long treatedLadleId, long heatId, double kg) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        TreatedLadleId = treatedLadleId, HeatId = heatId, Kg = kg, MgAfterTreatmentPercent = 0.046, MinutesToFloor = 11.5,
    };

    public static CastingDecision Decision(this Stamp stamp, long treatedLadleId, CastingVerdict verdict, long? sampleId) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        TreatedLadleId = treatedLadleId, Verdict = verdict, SampleId = sampleId, Reason = "magnesium below the floor",
    };

    /// <summary>A coin on its way, a cup, and a check of an instrument on a reference material.</summary>
    public static IEnumerable<Records.Keeping.Fact> OfTheLaboratory(this Stamp stamp, long heatId, Instrument instrument, ReferenceMaterial reference) =>
    [
        new CoinOnItsWay
        {
            EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
            HeatId = heatId, Kind = SampleKind.Bath, CoinNumber = "7", Remarks = "thin", IsLost = true,
        },
        new Sample
        {
            EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
            HeatId = heatId, Kind = SampleKind.Cup, Figures = [new() { Quantity = FigureQuantity.LiquidusC, Value = 1152.5, InstrumentText = "1152,5" }],
        },
        new ControlSample
        {
            EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
            InstrumentId = instrument.Id, ReferenceMaterialId = reference.Id, Remarks = "after cleaning",
            Readings = [new() { Ordinal = 1, Element = Element.Pb, Percent = 0.0005, BelowDetection = true, InstrumentText = "<0,0005" }],
        },
    ];

    public static Records.Orders.CastingOrder Order(string number, long gradeId) => new()
    {
        Number = number, Casting = "Bracket", GradeId = gradeId, WallMm = 22.5, CastingKg = 85.125, MouldYieldPercent = 68, Pieces = 12, PiecesPoured = 5, DueOn = new(2026, 3, 31),
    };

    public static ReferenceMaterial Reference(string code) => new()
    {
        Code = code, Name = "White iron block", Certificate = "invented for a test", Values = [new() { Element = Element.C, Percent = 3.31, PlusMinus = 0.02 }],
    };

    /// <summary>A map, a file that was read by it, and where a sample comes from.</summary>
    public static void Imported(this Stamp stamp, RecordsContext db, long instrumentId, long sampleId)
    {
        var map = new ImportMap { Name = $"map {instrumentId}", InstrumentId = instrumentId, Definition = "{}" };
        db.Add(map);
        db.SaveChanges();
        var file = new ImportedFile
        {
            EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt, ImportMapId = map.Id,
            Way = ImportWay.Folder, Name = "burns.csv", Sha256 = new string('a', 64), Bytes = 1234, Rows = 4, NewRows = 2, KnownRows = 1, RefusedRows = 1, Samples = 1, Refusals = "[]",
        };
        db.Add(file);
        db.SaveChanges();
        var reference = new ReferenceMaterial { Code = $"imported {instrumentId}", Name = "White iron block", Certificate = "invented for a test" };
        db.Add(reference);
        db.SaveChanges();
        var check = new ControlSample
        {
            EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt, InstrumentId = instrumentId, ReferenceMaterialId = reference.Id,
        };
        db.Add(check);
        db.SaveChanges();
        db.Add(new ImportedCheck { ImportedFileId = file.Id, ControlSampleId = check.Id, Identity = $"{instrumentId}|#8", Line = 4, Text = "8;3,30" });
        db.Add(new ImportedSample { ImportedFileId = file.Id, SampleId = sampleId, Identity = $"{instrumentId}|#7", Line = 2, Text = "7;3,61" });
    }

    public static Instrument Instrument(string code) => new()
    {
        Code = code, Name = "Spark spectrometer", Kind = InstrumentKind.Spark, FiguresSource = "invented for a test",
        Elements = [new() { Element = Element.C, Repeatability = 0.0125, GuardFactor = 2 }, new() { Element = Element.Si }],
    };

    public static TestPiece TestPiece(this Stamp stamp, long treatedLadleId) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        TreatedLadleId = treatedLadleId, Label = "K 1", Shape = TestPieceShape.KeelBlock, SampleType = SampleType.CastSample, WallMm = 25, TestUnit = "moulds 1 to 12",
    };

    public static Castings.TestResult Tested(this Stamp stamp, long testPieceId) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        TestPieceId = testPieceId, Property = CastProperty.ProofMPa, Value = 331.5, Method = "ISO 6892-1",
    };

    public static Certificate Certificate(this Stamp stamp, long treatedLadleId) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        TreatedLadleId = treatedLadleId, Number = "HB-2026-0001/1", Revision = 1, Document = [37, 80, 68, 70, 0, 255], Sha256 = new string('b', 64), TrailHead = new string('c', 64),
    };

    /// <summary>One of everything that is entered while a ladle is poured, and a figure of the ladle itself.</summary>
    public static IEnumerable<Records.Keeping.Fact> OfTheLadle(this Stamp stamp, long treatedLadleId, long ladleId, long materialId) =>
    [
        new PouredMould
        {
            EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
            TreatedLadleId = treatedLadleId, Label = "12 b", FirstAt = stamp.ObservedAt.AddSeconds(-18), Kg = 85.5,
            LateFor = PouringLimitKind.HouseRule, StopAt = stamp.ObservedAt.AddMinutes(-1),
        },
        new LadleRest
        {
            EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
            TreatedLadleId = treatedLadleId, IntoLadleId = treatedLadleId, Kg = 40, MixedMgPercent = 0.0385, MinutesToFloor = 8.5,
        },
        new LadleInoculation
        {
            EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
            TreatedLadleId = treatedLadleId, Place = InoculationPlace.Stream, MaterialId = materialId, Kg = 0.85,
        },
        new MagnesiumDose
        {
            EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
            TreatedLadleId = treatedLadleId, MaterialId = materialId, Kg = 4.2, WireMetres = 36.06, FeedSeconds = 65.6, MgPercent = 0.045,
            MgLeastPercent = 0.038, MinutesToFloor = 15, LeastMinutesToFloor = 4,
        },
        new Sites.LadleFigure
        {
            EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
            LadleId = ladleId, Kind = Sites.LadleFigureKind.MgRecovery, Value = 50, Least = 35, Most = 70, Standing = Sites.FigureStanding.Published,
            Source = "invented for a test",
        },
    ];

    private static List<Laboratory.Reading> Readings(double carbon, bool withMagnesium)
    {
        List<Laboratory.Reading> readings = [new() { Element = Element.C, Percent = carbon, InstrumentText = carbon.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture) }];
        if (withMagnesium) readings.Add(new() { Element = Element.Mg, Percent = 0.001, BelowDetection = true, InstrumentText = "<0.0010" });
        return readings;
    }
}
