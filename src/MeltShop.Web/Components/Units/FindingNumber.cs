using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Units;

/// <summary>
/// A number in a finding. The finding's text says what it is: <c>{0:mass}</c> is printed in the shop's unit with its sign,
/// <c>{0:temperature}</c> likewise, and <c>{0}</c> is a bare number.
/// </summary>
internal sealed record FindingNumber(double Number) : IFormattable
{
    public string ToString(string? format, IFormatProvider? formatProvider) => format switch
    {
        "mass" => MassText.ShowFully(Number),
        "temperature" => TemperatureText.Show(Number),
        null or "" => NumberText.Show(Number),
        _ => throw new FormatException($"A finding's number is no {format}."),
    };
}
