using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Masses as a scale of that size shows them: nobody weighs scrap to the gram, nor ferro-alloys to ten kilograms.</summary>
public static class MassText
{
    /// <param name="kg">A mass, kg.</param>
    /// <returns>With its unit: whole kilograms from 100 kg on, one decimal from 10 kg on, two below.</returns>
    public static string Show(double kg) => NumberText.Show(kg, Decimals(kg)) + " kg";

    /// <summary>The same, with as many decimals more as it takes to tell it from a limit.</summary>
    public static string ShowBeside(double kg, double limitKg) => NumberText.ShowBeside(kg, Decimals(kg), limitKg) + " kg";

    private static int Decimals(double kg) => Math.Abs(kg) switch { 0 or >= 100 => 0, >= 10 => 1, _ => 2 };
}
