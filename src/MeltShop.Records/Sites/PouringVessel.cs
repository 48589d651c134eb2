namespace MeltShop.Records.Sites;

/// <summary>Equipment that is filled from ladles and never from a furnace: nothing is treated in it.</summary>
public static class PouringVessel
{
    /// <summary>What <see cref="Ladle.Process"/> says of one.</summary>
    public static IReadOnlyList<string> All { get; } = ["pouringFurnace", "trough"];

    public static bool Is(string process) => All.Contains(process);
}
