using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Units;

/// <summary>Masses in the shop's unit. Every mass on a page or sheet is printed here.</summary>
public static class MassText
{
    public static string Sign => Unit.Sign;

    private static Measure Unit => ShopUnits.Current.Mass;

    /// <summary>As a scale of that size shows it: nobody weighs scrap to the gram, nor ferro-alloys to ten kilograms.</summary>
    /// <param name="kg">A mass, kg.</param>
    /// <returns>With its unit: whole from 100 on, one decimal from 10 on, two from 0.1 on, four below: a few grams are never printed as none.</returns>
    public static string Show(double kg) => UnitText.Of(Number(kg), Sign);

    /// <summary>With its unit and so many decimals.</summary>
    public static string Show(double kg, int decimals) => UnitText.Of(Number(kg, decimals), Sign);

    /// <summary>The same as a scale shows it, with as many decimals more as it takes to tell it from a limit.</summary>
    public static string ShowBeside(double kg, double limitKg)
    {
        var (shown, limit) = (Unit.FromRecorded(kg), Unit.FromRecorded(limitKg));
        return UnitText.Of(NumberText.ShowBeside(shown, Measure.ScaleDecimals(shown), limit), Sign);
    }

    /// <summary>In the whole units that it fills, so that it is never said to be more: a weight to stop at.</summary>
    public static string ShowDown(double kg) => UnitText.Of(NumberText.Show(Math.Floor(Unit.FromRecorded(kg)), 0), Sign);

    /// <summary>In whole units and never less: how much is over.</summary>
    public static string ShowUp(double kg) => UnitText.Of(NumberText.Show(Math.Ceiling(Unit.FromRecorded(kg)), 0), Sign);

    /// <summary>With all its digits, where it stands beside what was typed.</summary>
    public static string ShowFully(double kg) => UnitText.Of(NumberText.Show(Unit.Readable(kg)), Sign);

    /// <summary>As a scale of that size shows it, without its unit, for a column that names it.</summary>
    public static string Number(double kg) => Number(kg, Measure.ScaleDecimals(Unit.FromRecorded(kg)));

    /// <summary>Without its unit, for a column that names it.</summary>
    public static string Number(double kg, int decimals) => NumberText.Show(Unit.FromRecorded(kg), decimals);
}
