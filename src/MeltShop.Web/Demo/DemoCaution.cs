namespace MeltShop.Web.Demo;

/// <summary>What to beware of; the words shown are texts of the page. Common practice, no source.</summary>
public enum DemoCaution
{
    /// <summary>Wet, snowy or rained on: steam explosion.</summary>
    Wet,

    /// <summary>Closed vessels and hollow parts burst; openings under 10 cm count as closed.</summary>
    ClosedVessel,

    /// <summary>Oil and paint: fume and fire.</summary>
    Oily,

    /// <summary>Zinc fume, and damage to the lining.</summary>
    Galvanised,

    /// <summary>Moulding sand: slag and worn lining.</summary>
    Sand,

    /// <summary>Chromium, tin or other alloyed parts among it.</summary>
    MixedAlloys,

    /// <summary>Fine: dust, losses, blown about.</summary>
    Fine,

    /// <summary>Gives heat when it dissolves.</summary>
    Exothermic,

    /// <summary>Damp, it gives off toxic or flammable gas.</summary>
    MoistureGas,

    /// <summary>On a hot bath it makes it boil.</summary>
    CarbonBoil,

    /// <summary>Carries nitrogen into the iron.</summary>
    Nitrogen,

    /// <summary>Sulphurous fume.</summary>
    Fumes,

    /// <summary>Heavy: sinks and dissolves slowly.</summary>
    Dense,

    /// <summary>Flare, splash, white fume.</summary>
    MagnesiumFlare,
}
