using System.Globalization;
using System.Text.RegularExpressions;
using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Heats;

/// <summary>The burns of one coin as they are typed: a row a burn, an element a column. An empty cell was not measured.</summary>
public sealed partial class SampleDraft
{
    /// <summary>More sparks a coin has no room for.</summary>
    public const int MostBurns = 20;

    private const int UsualBurns = 3;

    private readonly EntryForm form;
    private readonly List<Element> elements;
    private readonly List<Dictionary<Element, QuantityEntry>> burns = [];
    private IReadOnlyList<IReadOnlyList<ReadingInput>>? shown;

    public SampleDraft(EntryForm form, IEnumerable<Element> elements)
    {
        this.form = form;
        Usual = [.. elements];
        this.elements = [.. Usual, .. Element.All.Except(Usual).Where(element => element != Element.Fe)];
        for (var i = 0; i < UsualBurns; i++) AddBurn();
    }

    /// <summary>The burns as they stand, to be put right.</summary>
    public static SampleDraft Of(EntryForm form, SampleView sample)
    {
        ArgumentNullException.ThrowIfNull(sample);
        var draft = new SampleDraft(form, sample.Burns.SelectMany(burn => burn.Readings).Select(reading => reading.Element).Distinct().Order());
        while (draft.Burns < sample.Burns.Count) draft.AddBurn();
        foreach (var (burn, row) in sample.Burns.Select((burn, row) => (burn, row)))
        {
            foreach (var reading in burn.Readings) draft.burns[row][reading.Element].Kept(reading);
        }

        draft.shown = [.. draft.Inputs()];
        return draft;
    }

    /// <summary>The burns as they are typed now; null where they are those that were shown.</summary>
    public IReadOnlyList<IReadOnlyList<ReadingInput>>? Changed() =>
        shown is { } before && before.Count == Inputs().Count && before.Zip(Inputs()).All(pair => pair.First.SequenceEqual(pair.Second)) ? null : Inputs();

    /// <summary>The columns that the grade asks for.</summary>
    public IReadOnlyList<Element> Usual { get; }

    /// <summary>All columns: the usual ones, then every other element but iron.</summary>
    public IReadOnlyList<Element> Elements => elements;

    /// <summary>The rows.</summary>
    public int Burns => burns.Count;

    public QuantityEntry Cell(int burn, Element element) => burns[burn][element];

    /// <summary>The cell of a path, with the rows up to it; null where the path is of something else, or no such cell can be.</summary>
    public QuantityEntry? CellAt(string path)
    {
        if (Place(path) is not var (burn, symbol) || burn >= MostBurns || !Element.TryParse(symbol, out var element) || element == Element.Fe) return null;
        while (Burns <= burn) AddBurn();
        return Cell(burn, element);
    }

    /// <summary>Burn (from 0) and element symbol of a cell's path; null for a path of something else.</summary>
    public static (int Burn, string Symbol)? Place(string path) => CellPath().Match(path) is { Success: true } cell
        ? (int.Parse(cell.Groups[1].Value, NumberStyles.None, CultureInfo.InvariantCulture), cell.Groups[2].Value) : null;

    public void AddBurn()
    {
        burns.Add([]);
        foreach (var element in elements) AddCell(burns.Count - 1, element);
    }

    /// <summary>What is wrong with a burn as a whole, or with the table; each cell says what is wrong with it.</summary>
    public IEnumerable<Finding> Check()
    {
        if (Filled.Count == 0) yield return new Finding("burns", "sample.noBurns");
        foreach (var burn in Filled)
        {
            var percents = Read(burn).Select(cell => KeyValuePair.Create(cell.Element, cell.Percent)).ToList();
            foreach (var finding in Analysis.Check(percents, $"burns[{burn}]")) yield return finding;
        }
    }

    /// <summary>The burns that hold a value, in their order.</summary>
    public IReadOnlyList<IReadOnlyList<ReadingInput>> Inputs() =>
    [
        .. Filled.Select(burn => (IReadOnlyList<ReadingInput>)[.. Read(burn).Select(cell => new ReadingInput(cell.Element.Symbol, cell.Percent, cell.IsBelow, cell.Text))]),
    ];

    private IReadOnlyList<int> Filled => [.. Enumerable.Range(0, burns.Count).Where(burn => burns[burn].Values.Any(cell => cell.Value is not null))];

    private IEnumerable<(Element Element, double Percent, bool IsBelow, string Text)> Read(int burn) =>
        from element in elements
        let cell = burns[burn][element]
        where cell.Value is not null
        select (element, cell.Value!.Value, cell.Reading.IsBelow, cell.Text.Trim());

    private void AddCell(int burn, Element element) =>
        burns[burn][element] = form.Quantity($"burns[{burn}].{element.Symbol}", 0, 100, allowsBelow: true);

    [GeneratedRegex(@"^burns\[([0-9]{1,2})\]\.([A-Z][a-z]?)$")]
    private static partial Regex CellPath();
}
