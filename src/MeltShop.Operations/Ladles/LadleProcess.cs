using MeltShop.Metallurgy.Treatment;
using MeltShop.Records.Reading.Ladles;

namespace MeltShop.Operations.Ladles;

/// <summary>The process of a ladle, with the ranges that are printed for it.</summary>
public static class LadleProcess
{
    public const string InMould = LadleTimesRows.InMould;

    /// <summary>Treatment in a chamber that the iron flows through on its way into the ladle.</summary>
    public const string FlowThrough = "flowThrough";

    /// <summary>Keys as a ladle keeps them, with their processes.</summary>
    public static IReadOnlyDictionary<string, MagnesiumProcess> All { get; } = MagnesiumProcess.All.ToDictionary(p => Key(p.Key), StringComparer.Ordinal);

    /// <summary>Null for a process that nothing is printed about.</summary>
    public static MagnesiumProcess? Of(string process) => All.GetValueOrDefault(process);

    /// <summary>
    /// Whether the treatment alloy lies in the ladle before the tap, where steel may cover it: not where it comes in after the tap, nor where the iron
    /// meets it in the mould or on its way into the ladle.
    /// </summary>
    public static bool HasPocket(string process) => Of(process)?.DosedOnWeighedMass != true && process is not (InMould or FlowThrough);

    // tundish-cover is kept as tundishCover.
    private static string Key(string printed) =>
        string.Concat(printed.Split('-').Select((word, n) => n == 0 ? word : char.ToUpperInvariant(word[0]) + word[1..]));
}
