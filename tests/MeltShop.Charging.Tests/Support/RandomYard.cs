using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Charging.Tests.Support;

/// <summary>
/// Yards made up from a seed: 10 to 80 materials about the usual kinds, windows about a melt that they can make, and sometimes one that they
/// cannot. The same seed gives the same yard.
/// </summary>
internal sealed class RandomYard
{
    private static readonly Element[] Reported =
        [Element.C, Element.Si, Element.Mn, Element.P, Element.S, Element.Cr, Element.Cu, Element.Ni, Element.Mo, Element.Sn];

    /// <summary>Kind, price per tonne, and percents in the order of <see cref="Reported"/>.</summary>
    private static readonly (string Kind, double Price, double[] Percent)[] Kinds =
    [
        ("steel", 330, [.15, .2, .7, .02, .02, .1, .15, .08, .02, .01]),
        ("returns", 250, [3.5, 2.3, .35, .03, .012, .05, .3, .04, .01, .01]),
        ("pig", 470, [4.2, 1.0, .1, .05, .015, .02, .02, .02, 0, 0]),
        ("cast scrap", 290, [3.3, 2.0, .65, .1, .09, .12, .2, .08, .02, .02]),
        ("steel", 300, [.08, .05, .4, .01, .01, .04, .05, .03, .01, .005]),
        ("ferrosilicon", 1500, [.1, 74, .3, .03, .01, 0, 0, 0, 0, 0]),
        ("carburiser", 850, [98, 0, 0, 0, .1, 0, 0, 0, 0, 0]),
        ("ferromanganese", 1350, [6.5, 1, 75, .2, .02, 0, 0, 0, 0, 0]),
        ("copper", 7000, [0, 0, 0, 0, 0, 0, 99, 0, 0, .2]),
        ("ferrochromium", 1800, [6.5, 2, .2, .03, .03, 60, 0, 0, 0, 0]),
    ];

    private readonly Random random;

    private RandomYard(int seed) => random = new Random(seed);

    public static ChargeProblem Charge(int seed, bool pieces = false, double confidence = 50) => new RandomYard(seed).Make(pieces, confidence);

    private ChargeProblem Make(bool pieces, double confidence)
    {
        ChargeMaterial[] materials = [.. Enumerable.Range(0, random.Next(10, pieces ? 31 : 81)).Select(i => MaterialOf(i, confidence > 50))];
        var heel = Chance(0.5) ? Metal.Of(Between(200, 2000), MaterialOf(1, false).Composition.Analysis) : Metal.None;
        var recipe = materials.Select((m, i) => i < 10 || Chance(0.2) ? Between(0, 1) * (m.PricePerTonne > 600 ? 20 : 800) : 0).ToArray();
        var melt = materials.Zip(recipe).Aggregate(heel, (metal, p) => metal.Plus(Arrival.PerKilogram(p.First.Composition), p.Second));
        return new ChargeProblem
        {
            MeltKg = melt.Kg,
            MeltToleranceKg = pieces || Chance(0.4) ? Between(0.01, 0.05) * melt.Kg : 0,
            Heel = heel,
            Materials = [.. materials.Select((m, i) => Bounded(m, recipe[i], recipe.Sum(), pieces && i < 15 && i % 10 < 5))],
            Limits = [.. Limits(melt.Analysis)],
            ConfidencePercent = confidence,
        };
    }

    private ChargeMaterial MaterialOf(int index, bool scatters)
    {
        var (kind, price, percent) = Kinds[index % Kinds.Length];
        var analysis = percent.Select(p => p > 50 ? p : p * Between(0.5, 1.5)).ToArray();
        return new ChargeMaterial
        {
            Code = $"{kind} {index}",
            PricePerTonne = index > 10 && Chance(0.03) ? -20 : price * Between(0.8, 1.25),
            Composition = new MaterialComposition
            {
                Analysis = Analysis.Of(Reported.Zip(analysis).Where(p => p.Second > 0).Select(p => KeyValuePair.Create(p.First, p.Second))),
                MetallicYieldPercent = price > 600 ? 100 : Between(93, 99),
                RecoveryPercent = new Dictionary<Element, double> { [Element.C] = Between(85, 100), [Element.Si] = Between(88, 98), [Element.Mn] = Between(80, 97) },
            },
            SpreadPercent = scatters && Chance(0.7) ? Reported.Zip(analysis).ToDictionary(p => p.First, p => p.Second * Between(0, 0.12)) : new Dictionary<Element, double>(),
        };
    }

    private ChargeMaterial Bounded(ChargeMaterial material, double kg, double totalKg, bool piece) => material with
    {
        AvailableKg = Chance(0.5) ? kg * Between(1, 2) : null,
        MaxKg = Chance(0.2) ? kg * Between(1, 1.5) : null,
        MinKg = Chance(0.1) && !piece ? kg * Between(0, 0.9) : 0,
        MinPercent = Chance(0.05) ? 100 * kg / totalKg * Between(0, 0.8) : 0,
        MaxPercent = Chance(0.2) ? Math.Min(100, 100 * kg / totalKg * Between(1.1, 2)) : 100,
        PieceKg = piece ? Math.Round(Between(20, 250)) : null,
    };

    private IEnumerable<QuantityLimit> Limits(Analysis aim)
    {
        foreach (var element in Reported.Take(random.Next(5, Reported.Length + 1)))
        {
            var (value, width) = (aim.OrZero(element), Math.Max(aim.OrZero(element) * Between(0.01, 0.15), 1e-4));
            var shift = Chance(0.02) ? (Chance(0.5) ? -1 : 1) * Between(2, 20) * width : 0;
            var exact = Chance(0.02);
            var (min, max) = exact ? (value, value) : (value + shift - width * Between(0.1, 1), value + shift + width * Between(0.1, 1));
            yield return new QuantityLimit(LinearQuantity.Of(element), element.CompareTo(Element.Mn) > 0 && !exact ? null : Math.Max(min, 0), Math.Max(max, 0));
        }

        var equivalent = new LinearQuantity("CE", new Dictionary<Element, double> { [Element.C] = 1, [Element.Si] = 1 / 3.0, [Element.P] = 1 / 3.0 });
        if (Chance(0.7)) yield return new(equivalent, equivalent.Value(aim) - Between(0, 0.1), equivalent.Value(aim) + Between(0, 0.1));
        if (Chance(0.2)) yield return new(LinearQuantity.Of(Element.C), null, aim.OrZero(Element.C) + Between(0, 0.1));
        var manganese = new LinearQuantity("Mn - 1.7 S", new Dictionary<Element, double> { [Element.Mn] = 1, [Element.S] = -1.7 }, -0.1);
        if (Chance(0.3)) yield return new(manganese, manganese.Value(aim) - Between(0, 0.1), null);
    }

    private bool Chance(double probability) => random.NextDouble() < probability;

    private double Between(double least, double most) => least + (most - least) * random.NextDouble();
}
