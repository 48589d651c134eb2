namespace MeltShop.Web.Components.Ribbon;

/// <summary>Where a step stands.</summary>
public enum RibbonStanding
{
    Done,
    Now,
    Later,
}

/// <summary>One step of a heat, as a ribbon shows it.</summary>
/// <param name="Words">Its name.</param>
/// <param name="Standing">Done, running or to come.</param>
/// <param name="Minutes">How long it took, or has taken so far; null where that is not known.</param>
public sealed record RibbonStep(string Words, RibbonStanding Standing, double? Minutes = null);
