using System.Globalization;
using MeltShop.Metallurgy;
using MeltShop.Operations;
using MeltShop.Records.Reading.Drafts;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Entries;

/// <summary>
/// One thing that is entered on the floor: its fields as typed, what it belongs to, and the operation that takes it. The page makes
/// one to show it and the server another to take what was sent, so that a text is read by the same rules wherever it has waited.
/// </summary>
public abstract class TypedEntry
{
    private readonly Dictionary<string, string> about = new(StringComparer.Ordinal);

    public EntryForm Form { get; } = new();

    /// <summary>Name of the operation that takes it.</summary>
    public abstract string Operation { get; }

    /// <summary>What it belongs to and nobody typed: the heat, the version that was seen.</summary>
    public IReadOnlyDictionary<string, string> About => about;

    /// <summary>The same as it goes on its way, with the units in which its texts are typed.</summary>
    public IReadOnlyDictionary<string, string> Sent => new Dictionary<string, string>(about.Concat(Form.Units.About()));

    /// <summary>Where its texts lie as drafts, seen by all, until it is handed in; null where they do not.</summary>
    public virtual string? DraftSubject => null;

    /// <summary>Says what it belongs to.</summary>
    public void Belongs(string name, object value) => about[name] = Convert.ToString(value, CultureInfo.InvariantCulture)!;

    /// <summary>The field of a path; made where the entry has as many as are typed.</summary>
    public virtual FieldEntry? Field(string path) => Form.Fields.FirstOrDefault(field => field.Path == path);

    /// <summary>Takes texts that were typed elsewhere.</summary>
    /// <exception cref="BadHttpRequestException">There is no such field: whoever sent it speaks of another program.</exception>
    public void Fill(IReadOnlyDictionary<string, string> texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        Form.Speak(ShopUnits.Told(about));
        Told();
        foreach (var (path, text) in texts)
        {
            var field = Field(path) ?? throw new BadHttpRequestException($"{Operation} has no field {path}.");
            field.Text = text;
        }
    }

    /// <summary>What it belongs to was said, and its texts come: for what a field is by that.</summary>
    protected virtual void Told()
    {
    }

    /// <summary>Hands it in for a person.</summary>
    internal abstract Task<EntryAnswer> HandIn(IServiceProvider services, EntryMade made);

    /// <summary>A number of what it belongs to.</summary>
    protected long Id(string name) =>
        long.TryParse(Named(name), NumberStyles.None, CultureInfo.InvariantCulture, out var id) ? id : throw new BadHttpRequestException($"{name} is no number.");

    /// <summary>The version that was seen.</summary>
    protected Guid Version => Guid.TryParse(Named("version"), out var version) ? version : throw new BadHttpRequestException("version is none.");

    /// <summary>What was said of it under a name; null where nothing was.</summary>
    protected string? Said(string name) => about.GetValueOrDefault(name);

    private string Named(string name) => about.GetValueOrDefault(name) ?? throw new BadHttpRequestException($"{name} is missing.");
}

/// <typeparam name="TResult">What the operation answers.</typeparam>
public abstract class TypedEntry<TResult> : TypedEntry
{
    internal sealed override async Task<EntryAnswer> HandIn(IServiceProvider services, EntryMade made)
    {
        var outcome = await Form.Send(_ => Run(services, made), Check);
        return outcome is { Succeeded: true } ? new([]) : new(Form.Findings);
    }

    /// <summary>What the entry itself finds, beyond what each field says.</summary>
    protected virtual IEnumerable<Finding> Check() => [];

    /// <summary>Runs the operation on what was read from the fields.</summary>
    protected abstract Task<Outcome<TResult>> Run(IServiceProvider services, EntryMade made);
}

/// <summary>What became of an entry: accepted where nothing was found.</summary>
public sealed record EntryAnswer(IReadOnlyList<Finding> Findings)
{
    public bool IsAccepted => Findings.Count == 0;
}
