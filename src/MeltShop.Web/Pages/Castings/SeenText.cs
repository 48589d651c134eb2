using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;
using MeltShop.Web.Components.Limits;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Pages.Castings;

/// <summary>What was seen when a decision was made, in words: the same on the ladle's page and on the certificate.</summary>
internal static class SeenText
{
    public static string Words(IStringLocalizer<Texts.Castings> text, IStringLocalizer<Texts.Limits> names, SeenCastings seen) => string.Join("; ", Parts(text, names, seen));

    private static IEnumerable<string> Parts(IStringLocalizer<Texts.Castings> text, IStringLocalizer<Texts.Limits> names, SeenCastings seen)
    {
        var outside = seen.Window.Where(v => v.Standing != WindowStanding.Inside).Select(v => v.Quantity).ToList();
        yield return seen.SampleId is not { } id ? text["SeenNoSample"]
            : outside.Count == 0 ? text["SeenSampleIn", id] : text["SeenSampleOut", id, QuantityText.Names(names, outside)];
        if (seen.Tests.Count == 0) yield return text["SeenNoTest"];
        foreach (var piece in seen.Tests.GroupBy(t => t.Piece))
        {
            int Count(PropertyStanding standing) => piece.Count(t => t.Standing == standing);
            yield return text["SeenPiece", piece.Key, Count(PropertyStanding.Meets), Count(PropertyStanding.Fails), Count(PropertyStanding.NotTested)];
        }

        if (seen.LateMoulds.Count > 0) yield return text["SeenLate", string.Join(", ", seen.LateMoulds)];
    }
}
