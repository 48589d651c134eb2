using MeltShop.Operations.Charging;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Pages.Charge;

/// <summary>What people call a kind of material that a charge bounds.</summary>
public static class KindText
{
    public static string Of(string group, IStringLocalizer<Texts.Charge> text, IStringLocalizer<Texts.Yard> yard)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(yard);
        return group == ChargeGroups.Galvanised ? text["Galvanised"] : yard["Kind." + group];
    }
}
