using MeltShop.Metallurgy.Pouring;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.JointPours;

/// <summary>Several ladles into one heavy casting, worked back from the pour; nothing of it is recorded.</summary>
public sealed partial class JointPouring
{
    private readonly EntryForm form = new();
    private readonly List<JointLadleDraft> ladles;
    private readonly QuantityEntry pourIn, late;

    public JointPouring()
    {
        pourIn = form.Quantity("pourIn", 0, 1440);
        late = form.Quantity("late", 0, 120);
        ladles = [new(form, 0), new(form, 1)];
    }

    [Inject]
    private EquipmentPage Page { get; set; } = null!;

    private DateTimeOffset? PourAt => pourIn.Value is { } minutes ? Clock.GetUtcNow().AddMinutes(minutes) : null;

    /// <summary>Null until each ladle is filled in.</summary>
    private JointPour? Pour => ladles.Select(ladle => ladle.Read(Text["Ladle", ladle.Number + 1])).ToList() is var read && read.TrueForAll(ladle => ladle is not null)
        ? JointPour.Of([.. read.OfType<JointLadle>()]) : null;

    protected override async Task<EquipmentView?> Read(CancellationToken ct) => await Page.Load(ct);

    protected override bool Concerns(ChangeNotice change) => change.Kind is ChangeKind.Ladle or ChangeKind.TreatedLadle;

    private void Add() => ladles.Add(new(form, ladles.Count));

    private void Remove()
    {
        foreach (var field in ladles[^1].Fields) form.Remove(field);
        ladles.RemoveAt(ladles.Count - 1);
    }
}
