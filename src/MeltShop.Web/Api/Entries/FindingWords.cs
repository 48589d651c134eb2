using MeltShop.Metallurgy;
using MeltShop.Web.Components.Fields;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Api.Entries;

/// <summary>A finding in the person's language, for where no field is left to stand at.</summary>
internal static class FindingWords
{
    public static string Of(IStringLocalizer<Texts.Findings> words, Finding finding) =>
        words[finding.Code, [.. finding.Arguments.Select(argument => argument is double number ? new FindingNumber(number) : argument)]];
}
