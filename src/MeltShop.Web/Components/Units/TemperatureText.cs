using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Units;

/// <summary>Temperatures in the shop's unit. Every temperature on a page or sheet is printed here.</summary>
public static class TemperatureText
{
    private static Measure Unit => ShopUnits.Current.Temperature;

    /// <summary>With its unit and all its digits.</summary>
    public static string Show(double temperatureC) => UnitText.Of(NumberText.Show(Unit.Readable(temperatureC)), Unit.Sign);

    /// <summary>With its unit and so many decimals.</summary>
    public static string Show(double temperatureC, int decimals) => UnitText.Of(NumberText.Show(Unit.FromRecorded(temperatureC), decimals), Unit.Sign);

    /// <summary>The unit of a loss of temperature in a minute.</summary>
    public static string PerMinute => $"{ShopUnits.Current.TemperatureDifference.Sign}/min";

    /// <summary>A difference of temperatures, with its unit.</summary>
    public static string Difference(double kelvin, int decimals)
    {
        var unit = ShopUnits.Current.TemperatureDifference;
        return UnitText.Of(NumberText.Show(unit.FromRecorded(kelvin), decimals), unit.Sign);
    }
}
