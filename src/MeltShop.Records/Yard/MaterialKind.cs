namespace MeltShop.Records.Yard;

public enum MaterialKind
{
    Returns,
    SteelScrap,
    PigIron,
    CastScrap,
    FerroAlloy,
    Carburiser,
    TreatmentAlloy,
    Inoculant,
    Cover,
}

/// <summary>Where a material may go.</summary>
[Flags]
public enum MaterialUses
{
    None = 0,
    Charge = 1,
    BathAddition = 2,
    Treatment = 4,
    Inoculation = 8,
}
