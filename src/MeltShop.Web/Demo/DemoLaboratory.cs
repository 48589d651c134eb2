using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;

namespace MeltShop.Web.Demo;

/// <summary>The laboratory of the demo: one spectrometer, of which nobody has found the scatter yet.</summary>
internal static class DemoLaboratory
{
    private static readonly string[] Measured = ["C", "Si", "Mn", "P", "S", "Cr", "Ni", "Cu", "Sn", "Mg"];

    public static Task Add(DemoHands hands) => hands.Do(hands.The<AddInstrument>(), Role.Metallurgist, new(
        DemoKey.Of("instrument/spark"), hands.Now, "spark-1", "Spark spectrometer", InstrumentKind.Spark, false,
        [.. Measured.Select(symbol => new InstrumentElementInput(symbol))]));
}
