namespace MeltShop.Metallurgy.Quantities;

/// <summary>Which iron a quantity speaks of.</summary>
public enum IronState
{
    /// <summary>Furnace iron and poured iron alike, each with its own analysis.</summary>
    Any,

    /// <summary>Iron as poured, after treatment and inoculation: the furnace analysis gives a wrong answer.</summary>
    Poured,

    /// <summary>Iron in the furnace, before treatment: a question of the bath and its lining.</summary>
    Furnace,
}
