namespace MeltShop.Operations.Yard;

/// <summary>What of a material can hurt people, the lining or the iron, as codes; a page has the words.</summary>
public static class MaterialCautions
{
    /// <summary>Everything that can be said, what hurts people first.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "wet", "closedVessel", "oily", "galvanised", "exothermic", "carbonBoil", "moistureGas", "magnesiumFlare", "fumes", "sand", "mixedAlloys", "fine", "nitrogen", "dense",
    ];
}
