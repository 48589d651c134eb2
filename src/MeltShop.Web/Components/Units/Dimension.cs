namespace MeltShop.Web.Components.Units;

/// <summary>What a number of a field is; a shop chooses the unit of all but <see cref="Plain"/>.</summary>
public enum Dimension
{
    /// <summary>Its unit is the same in every shop.</summary>
    Plain,

    /// <summary>Recorded in kg.</summary>
    Mass,

    /// <summary>Recorded in °C.</summary>
    Temperature,

    /// <summary>A difference of temperatures, recorded in K.</summary>
    TemperatureDifference,

    /// <summary>A price or an energy for iron or material, recorded for 1000 kg.</summary>
    PerTonne,
}
