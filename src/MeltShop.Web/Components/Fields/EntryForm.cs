using System.Globalization;
using MeltShop.Metallurgy;
using MeltShop.Operations;

namespace MeltShop.Web.Components.Fields;

/// <summary>
/// One thing that a person hands in: its fields, what was found against it, and its entry key. The key is made when the form
/// opens and made anew after acceptance, and an accepted form sends nothing more until something is typed or it is opened
/// again: a second press does nothing, whether it comes before the answer or after it.
/// </summary>
public sealed class EntryForm
{
    private readonly List<FieldEntry> fields = [];
    private IReadOnlyList<Finding> findings = [];
    private ShopUnits? units;

    public Guid Key { get; private set; } = Guid.NewGuid();

    /// <summary>On its way to the server.</summary>
    public bool IsBusy { get; private set; }

    /// <summary>Accepted, and nothing typed since.</summary>
    public bool IsAccepted { get; private set; }

    /// <summary>Findings that belong to no field of the form; shown above it.</summary>
    public IEnumerable<Finding> Unplaced => findings.Where(finding => fields.All(entry => entry.Path != finding.Path));

    public bool HasFindings => findings.Count > 0;

    /// <summary>All that stands against it.</summary>
    public IReadOnlyList<Finding> Findings => findings;

    public IReadOnlyList<FieldEntry> Fields => fields;

    /// <summary>The findings are of an attempt to hand in, not of a look at what is being typed.</summary>
    public bool WasRefused { get; private set; }

    /// <summary>The units in which its fields are shown and typed: the shop's, as they were when it was drawn.</summary>
    public ShopUnits Units => units ?? ShopUnits.Current;

    /// <summary>Keeps the units in which it is drawn, so that what is typed is read as its fields said, whatever the shop chooses meanwhile.</summary>
    public void Draw() => units ??= ShopUnits.Current;

    /// <summary>Takes texts that were typed in these units.</summary>
    public void Speak(ShopUnits typed) => units = typed;

    /// <summary>A field for a mass, its range in kg.</summary>
    public QuantityEntry Mass(string path, double? leastKg = null, double? mostKg = null, bool isRequired = false) =>
        Add(new QuantityEntry(this, path, new NumberRange(leastKg, mostKg), isRequired, false, Dimension.Mass));

    /// <summary>A field for a temperature, its range in °C.</summary>
    public QuantityEntry Temperature(string path, double? leastC = null, double? mostC = null, bool isRequired = false) =>
        Add(new QuantityEntry(this, path, new NumberRange(leastC, mostC), isRequired, false, Dimension.Temperature));

    /// <summary>A field for a price or an energy, its range for 1000 kg.</summary>
    public QuantityEntry PerTonne(string path, double? least = null, double? most = null, bool isRequired = false) =>
        Add(new QuantityEntry(this, path, new NumberRange(least, most), isRequired, false, Dimension.PerTonne));

    /// <summary>A field for a quantity whose unit is the same in every shop.</summary>
    public QuantityEntry Quantity(string path, double? least = null, double? most = null, bool isRequired = false, bool allowsBelow = false) =>
        Add(new QuantityEntry(this, path, new NumberRange(least, most), isRequired, allowsBelow, Dimension.Plain));

    /// <summary>A field for words.</summary>
    /// <param name="judge">The code of what is wrong with a text, or null.</param>
    public TextEntry Words(string path, bool isRequired = false, Func<string, string?>? judge = null) =>
        Add(new TextEntry(this, path, isRequired, "text.missing", judge));

    /// <summary>A field with a list to choose from.</summary>
    public TextEntry Choice(string path, bool isRequired = false) => Add(new TextEntry(this, path, isRequired, "choice.missing"));

    /// <summary>
    /// The first free name for another row of fields. Where the same rows are made in the same order they have the same names: by them a page that is loaded
    /// anew gives each row back what was typed into it.
    /// </summary>
    public string NameRow(string prefix = "row") => Enumerable.Range(0, int.MaxValue).Select(number => string.Create(CultureInfo.InvariantCulture, $"{prefix}{number}"))
        .First(name => fields.TrueForAll(field => !field.Path.StartsWith(name + ".", StringComparison.Ordinal)));

    /// <summary>Takes a field out, with what stood against it.</summary>
    public void Remove(FieldEntry field)
    {
        fields.Remove(field);
        Edited(field);
    }

    /// <summary>What the last attempt found at a path.</summary>
    public Finding? At(string path) => findings.FirstOrDefault(finding => finding.Path == path);

    /// <summary>Opens the form for another entry.</summary>
    public void Open()
    {
        Key = Guid.NewGuid();
        IsAccepted = false;
        findings = [];
        units = null;
    }

    /// <summary>
    /// Hands the entry in. Nothing is sent while a field stands against it, while an earlier press is on its way, or after it
    /// was accepted. A failure of the program keeps the key, so that the next press is the same entry.
    /// </summary>
    /// <param name="run">The operation, with the entry key for its command.</param>
    /// <param name="check">Findings of the page itself, beyond what each field says.</param>
    /// <returns>The result, or nothing.</returns>
    public async Task<Outcome<TResult>?> Send<TResult>(Func<Guid, Task<Outcome<TResult>>> run, Func<IEnumerable<Finding>>? check = null)
    {
        ArgumentNullException.ThrowIfNull(run);
        if (IsBusy || IsAccepted) return null;
        WasRefused = true;
        findings = [.. fields.Select(field => field.Standing).OfType<Finding>()];
        if (findings.Count == 0 && check is not null) findings = [.. check()];
        if (findings.Count > 0) return null;

        IsBusy = true;
        try
        {
            var outcome = await run(Key);
            findings = outcome.Findings;
            if (!outcome.Succeeded) return outcome;
            Key = Guid.NewGuid();
            IsAccepted = true;
            return outcome;
        }
        finally
        {
            IsBusy = false;
        }
    }

    /// <summary>Shows at the fields what a look at them found that was no attempt to hand in: a plan made live.</summary>
    public void Find(IReadOnlyList<Finding> found) => (findings, WasRefused) = (found, false);

    /// <summary>Takes the answer to an entry that went past the form, by the script of the entry path: accepted where nothing was found.</summary>
    public void Answer(IReadOnlyList<Finding> found)
    {
        ArgumentNullException.ThrowIfNull(found);
        (findings, WasRefused, IsAccepted) = (found, true, found.Count == 0);
        if (IsAccepted) Key = Guid.NewGuid();
    }

    /// <summary>Says that the program failed; the key stays.</summary>
    public void Fail() => findings = [new Finding("", "program.failed")];

    internal void Edited(FieldEntry field)
    {
        IsAccepted = false;
        findings = [.. findings.Where(finding => finding.Path != field.Path)];
    }

    private TField Add<TField>(TField field) where TField : FieldEntry
    {
        fields.Add(field);
        return field;
    }
}
