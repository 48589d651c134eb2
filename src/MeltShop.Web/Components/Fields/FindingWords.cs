using System.Globalization;
using MeltShop.Metallurgy;
using MeltShop.Web.Components.Limits;
using MeltShop.Web.Components.Reading;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Components.Fields;

/// <summary>A finding in the person's language, its numbers with the person's decimal sign.</summary>
internal static class FindingWords
{
    /// <summary>Codes that name a member of an enumeration, and where its words stand: <c>State.Pouring</c>.</summary>
    internal static readonly IReadOnlyDictionary<string, string> Groups = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["state.wrong"] = "State",
        ["ladle.unpoured"] = "State",
        ["mould.late"] = "Limit",
        ["test.fails"] = "Property",
        ["test.missing"] = "Property",
        ["quantity.pouredOnly"] = "Quantity",
        ["quantity.untreatedOnly"] = "Quantity",
        ["quantity.treatedOnly"] = "Quantity",
        ["plan.infeasible"] = "Quantity",
        ["window.notJudged"] = "Quantity",
        ["window.notMeasured"] = "Quantity",
        ["window.overMost"] = "Quantity",
        ["window.underLeast"] = "Quantity",
    };

    /// <param name="words">The texts of findings.</param>
    /// <param name="finding">What was found.</param>
    /// <param name="site">In whose zone instants are said; null where there is none yet.</param>
    public static string Of(IStringLocalizer<Texts.Findings> words, Finding finding, ShopSite? site = null) =>
        words[finding.Code, [.. finding.Arguments.Select(argument => argument switch
        {
            double number when finding.Arguments[0] is string quantity && Groups.GetValueOrDefault(finding.Code) == "Quantity" => Bound(finding, quantity, number),
            double number => new FindingNumber(number),
            DateTimeOffset instant => site?.DayAndTime(instant) ?? instant.ToString("u", CultureInfo.CurrentCulture),
            string name when Groups.TryGetValue(finding.Code, out var group) && words[$"{group}.{name}"] is { ResourceNotFound: false } said => said.Value,
            _ => argument,
        })]];

    /// <summary>In the unit of the quantity, and told apart from the others that the finding names.</summary>
    private static string Bound(Finding finding, string quantity, double number)
    {
        var other = finding.Arguments.OfType<double>().Where(one => one != number).Select(one => (double?)one).FirstOrDefault();
        return QuantityText.Show(quantity, number, other);
    }
}
