using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Records.Laboratory;

namespace MeltShop.Operations.Laboratory;

/// <summary>One value of a burn, as it was typed or sent.</summary>
/// <param name="Element">Symbol.</param>
/// <param name="Percent">Mass percent; with <paramref name="BelowDetection"/> the limit of detection.</param>
/// <param name="BelowDetection">The instrument saw less than it can tell from nothing.</param>
/// <param name="InstrumentText">What stood on the screen or in the file, letter by letter.</param>
public sealed record ReadingInput(string Element, double Percent, bool BelowDetection, string InstrumentText);

internal static class ReadingInputs
{
    /// <summary>Most burns that one coin has room for.</summary>
    public const int MostBurns = 20;

    public static void Check(SampleKind kind, IReadOnlyList<IReadOnlyList<ReadingInput>> burns, FieldCheck fields)
    {
        var hasFigures = SampleKinds.OfFigures.Contains(kind);
        if (hasFigures && burns.Count > 0) fields.Add("burns", "sample.figuresOnly");
        if (!hasFigures && burns.Count == 0) fields.Add("burns", "sample.noBurns");
        if (burns.Count > MostBurns) fields.Add("burns", "sample.tooManyBurns", MostBurns);
        for (var i = 0; i < burns.Count; i++)
        {
            if (burns[i].Count == 0) fields.Add($"burns[{i}]", "burn.empty");
            fields.Analysis($"burns[{i}]", burns[i].Select(r => (r.Element, r.Percent)));
            foreach (var reading in burns[i]) fields.Text($"burns[{i}].{reading.Element}", reading.InstrumentText, 60);
        }
    }

    public static List<Burn> Rows(IReadOnlyList<IReadOnlyList<ReadingInput>> burns) =>
    [
        .. burns.Select((readings, index) => new Burn
        {
            Ordinal = index + 1,
            Readings =
            [
                .. readings.Select(r => new Reading
                {
                    Element = Element.Parse(r.Element),
                    Percent = r.Percent,
                    BelowDetection = r.BelowDetection,
                    InstrumentText = r.InstrumentText,
                }),
            ],
        }),
    ];
}
