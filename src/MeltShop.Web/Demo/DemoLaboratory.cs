using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;

namespace MeltShop.Web.Demo;

/// <summary>
/// The laboratory of the demo: one spectrometer, and a piece of white iron on which it was checked twice a day. All figures are invented. One check
/// came out with too much manganese; the next one was good again.
/// </summary>
internal static class DemoLaboratory
{
    private const double HoursBetweenChecks = 12, HoursSinceTheLast = 6;
    private const int BadCheck = 24;

    private static readonly (string Symbol, double Percent, double PlusMinus, double Scatter)[] Certified =
    [
        ("C", 3.32, 0.02, 0.012), ("Si", 1.85, 0.02, 0.008), ("Mn", 0.52, 0.006, 0.003), ("P", 0.045, 0.002, 0.0006),
        ("S", 0.021, 0.001, 0.0004), ("Cr", 0.11, 0.003, 0.001), ("Cu", 0.30, 0.005, 0.002),
    ];

    /// <summary>How far each check was off, in parts of the scatter, in turn; each element starts at another place.</summary>
    private static readonly double[] Off =
        [0.3, -0.8, 1.1, -0.2, 0.6, -1.3, 0.1, 0.9, -0.5, -0.1, 1.4, -0.7, 0.2, -1.0, 0.5, 0.0, -0.4, 0.8, -0.9, 0.4, 0.7, -0.6, 1.0, -0.3, 0.2, -1.2, 0.6, -0.4, 0.9, -0.2];

    private static readonly InstrumentElementInput[] Measured =
    [
        new("C", 0.015), new("Si", 0.015), new("Mn", 0.004), new("P", 0.001), new("S", 0.0006), new("Cr", 0.002), new("Ni"), new("Cu", 0.004), new("Sn"), new("Mg", 0.001),
    ];

    public static async Task Add(DemoHands hands, CancellationToken cancellation)
    {
        var instrument = await hands.Do(hands.The<AddInstrument>(), Role.Metallurgist, new(
            DemoKey.Of("instrument/spark"), hands.Now, "spark-1", "Spark spectrometer", InstrumentKind.Spark, false, Measured, "invented for the demo"));
        var block = await hands.Do(hands.The<AddReferenceMaterial>(), Role.Metallurgist, new(
            DemoKey.Of("reference/white-iron"), hands.Now, "white-iron-7", "White iron, melt 7", "Invented for the demo; no such piece exists",
            [.. Certified.Select(c => new CertifiedInput(c.Symbol, c.Percent, c.PlusMinus))]));
        for (var check = 0; check < Off.Length; check++)
        {
            cancellation.ThrowIfCancellationRequested();
            await hands.Do(hands.The<RecordControlSample>(), Role.Metallurgist, new(
                DemoKey.Of($"check/{check}"), hands.Now.AddHours(-HoursSinceTheLast - ((Off.Length - 1 - check) * HoursBetweenChecks)), instrument, block, DemoBurns.Of(Read(check)),
                check == BadCheck ? "Table ground again, argon line flushed" : null));
        }
    }

    private static Analysis Read(int check) => Analysis.Of(Certified.Select((c, place) => KeyValuePair.Create(
        Element.Parse(c.Symbol), c.Percent + (c.Scatter * (check == BadCheck && c.Symbol == "Mn" ? 5 : Off[(check + (4 * place)) % Off.Length])))));
}
