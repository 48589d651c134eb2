using MeltShop.Records.Heats;
using MeltShop.Records.Keeping;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Yard;

namespace MeltShop.Records.Mapping;

/// <summary>The rows that are written once: facts, their parts, and the trail.</summary>
public static class AppendOnly
{
    private static readonly HashSet<Type> Parts =
    [
        typeof(MaterialPercent), typeof(HeelPercent), typeof(FurnaceMetalPercent), typeof(Laboratory.Reading), typeof(SampleFigure),
        typeof(ControlReading), typeof(Importing.ImportedSample), typeof(Importing.ImportedCheck), typeof(TrailRow),
    ];

    /// <summary>True for a type whose rows are neither changed nor deleted.</summary>
    public static bool Includes(Type type)
    {
        ArgumentNullException.ThrowIfNull(type);
        return type.IsAssignableTo(typeof(Fact)) || Parts.Contains(type);
    }
}
