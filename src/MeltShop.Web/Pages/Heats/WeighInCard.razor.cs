using System.Globalization;
using MeltShop.Charging.Problems;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Storing;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.Pages.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>What goes into the furnace, in the order of loading: target, what the scale said, and what is left. A material may be weighed several times.</summary>
public sealed partial class WeighInCard : IDisposable
{
    private readonly WeighingEntry entry = new();
    private (double Kg, string Name)? weighed;
    private bool wasCharging;
    private string? offered;
    private int before; // how often the material in the form was weighed, as far as was known when the form was last empty
    private bool isBegun; // a mass is being typed
    private bool hasFailed;
    private bool isAnswered; // what the rest of this charge should be was asked, and it is known or could not be
    private bool isStopped;
    private RestAnswer? rest;
    private HeatScreen? planned;
    private CancellationTokenSource? planning;

    [Parameter, EditorRequired]
    public HeatScreen Screen { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    [Inject]
    private ShopSite Site { get; set; } = null!;

    [Inject]
    private ILogger<WeighInCard> Log { get; set; } = null!;

    [Inject]
    private TimeProvider Clock { get; set; } = null!;

    private IReadOnlyList<WeighingRow> Rows { get; set; } = [];

    /// <summary>Of what is still to come nothing is asked for. While the rest is being planned, that is not known.</summary>
    private bool IsAllIn => planning is null && !isStopped && !Rows.Any(row => row.IsOpen);

    private ChargeProblem Asked => StoredJson.Value<ChargeProblem>(Screen.Heat.Plan.Problem);

    /// <summary>Once the bath was sampled what is weighed goes into the bath.</summary>
    private bool IsBath => Screen.Heat.Heat.State is not HeatState.Charging;

    /// <summary>When the bath was sampled first; null where no such sample is in force.</summary>
    private DateTimeOffset? FirstCoinAt => Screen.Heat.Samples.Where(sample => sample.Kind is SampleKind.Bath && !sample.Origin.IsCorrected).Min(sample => (DateTimeOffset?)sample.Origin.ObservedAt);

    /// <summary>It goes in with the charge; once the bath was sampled, only what comes late and was weighed before that.</summary>
    private bool IsOfCharge => !IsBath || (entry.Minutes.Value is not null && entry.Minutes.Before(Clock.GetUtcNow()) < FirstCoinAt);

    /// <summary>What is only for the charge is not offered for a bath; what was chosen stays in the list, whatever is typed beside it.</summary>
    private IEnumerable<Choice> Choices => Rows.Where(row => row.MaterialId is not null).Select(row => new Choice(Id(row.MaterialId!.Value), row.Name))
        .Concat(Screen.Yard.Where(item => Rows.All(row => row.MaterialId != item.Id) && (IsFor(item) || Id(item.Id) == entry.Material.Value))
            .Select(item => new Choice(Id(item.Id), item.Name)));

    private WeighingRow? Current => Rows.FirstOrDefault(IsChosen);

    /// <summary>Asked for only where the yard has lots of the material.</summary>
    private IReadOnlyList<LotView>? Lots => Screen.Yard.FirstOrDefault(item => Id(item.Id) == entry.Material.Value)?.Lots;

    private string? Left => Current is { IsOpen: true } row ? Text["StillTo", MassText.Show(row.LeftKg)].Value : null;

    /// <summary>What is for the charge alone would go into the bath as the form stands: it stays chosen, since it may be the minutes that are missing.</summary>
    private string? OnlyCharged =>
        !IsOfCharge && Screen.Yard.FirstOrDefault(item => Id(item.Id) == entry.Material.Value) is { } item && !item.Uses.HasFlag(MaterialUses.BathAddition) ? Text["OnlyCharged"].Value : null;

    public void Dispose() => Stop();

    protected override async Task OnParametersSetAsync()
    {
        if (planned == Screen)
        {
            Show();
            return;
        }

        planned = Screen;
        Stop();
        // Once the bath was sampled its correction has the word.
        if (IsBath) (rest, hasFailed, isAnswered) = (null, false, false);
        Show();
        if (IsBath) return;
        planning = new();
        await PlanRest(Screen, planning.Token);
        Show();
    }

    /// <summary>Plans the rest from what is really in, away from the page's own thread. Where that fails the page says so, and <see cref="FirstPlan"/> says whether the first plan stays.</summary>
    private async Task PlanRest(HeatScreen screen, CancellationToken cancellation)
    {
        try
        {
            var answer = await Task.Run(() => RestQuestion.Answer(screen.Heat, screen.Yard, cancellation), cancellation);
            if (planned != screen) return; // it asks for itself, and that is not to be stopped here
            (rest, hasFailed, isAnswered) = (answer, false, true);
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            // Another weighing came meanwhile, or the page was left.
            return;
        }
#pragma warning disable CA1031 // whatever kept it from being planned: weighing goes on
        catch (Exception fault)
#pragma warning restore CA1031
        {
            if (planned != screen) return;
            Log.LogError(fault, "The rest of a charge could not be planned");
            (rest, hasFailed, isAnswered) = (null, true, true);
        }

        Stop();
    }

    private void Stop()
    {
        planning?.Cancel();
        planning?.Dispose();
        planning = null;
    }

    private void Show()
    {
        // Until it is known what the rest should be, the first plan is not asked for where the charge has left it.
        isStopped = FirstPlan.IsStopped(Screen.Heat, rest, hasFailed || (!IsBath && !isAnswered));
        Rows = WeighingRow.Of(Screen.Heat, Screen.Yard, rest?.Lines, isStopped);
        entry.Belongs("heatId", Screen.Heat.Heat.Id);
        entry.Belongs("intoBath", IsBath ? 1 : 0);
        if (!IsBath && !isBegun && (entry.Material.Value is null || IsOfferOver)) Offer(Rows.FirstOrDefault(row => row.IsOpen));
        // What was the next thing to charge is not what a bath needs: that a person chooses.
        if (wasCharging && IsBath) Offer(null);
        wasCharging = !IsBath;
    }

    private bool IsFor(MaterialView item) => (item.Uses & (IsBath ? IsOfCharge ? MaterialUses.Charge | MaterialUses.BathAddition : MaterialUses.BathAddition : MaterialUses.Charge)) != 0;

    private static string Id(long id) => id.ToString(CultureInfo.InvariantCulture);

    private static string Standing(WeighingRow row) => row.IsDone ? "done" : row.IsOver ? "over" : row.IsStopped ? "stopped" : "open";

    private bool IsChosen(WeighingRow row) => row.MaterialId is { } id && entry.Material.Value == Id(id);

    private string? KindOf(WeighingRow row) => row.Kind is { } kind ? YardText["Kind." + kind].Value : null;

    /// <summary>What was offered is no longer wanted by the rest as it was planned since; what a person chose stands.</summary>
    private bool IsOfferOver => offered is not null && entry.Material.Value == offered && entry.Kg.Text.Length == 0 && Current is not { IsOpen: true };

    private void Offer(WeighingRow? row)
    {
        var material = offered = row?.MaterialId is { } id ? Id(id) : null;
        if (material != entry.Material.Value) entry.Lot.Showing(null);
        entry.Material.Showing(material);
        before = row?.Entries ?? 0;
    }

    /// <summary>A mass is of the material beside which it was begun; what was offered instead by then is taken back, while the charge still goes in.</summary>
    private void Begin(EntryBegunEventArgs begun)
    {
        if (IsBath) return;
        isBegun = true;
        if (!begun.Fields.TryGetValue(entry.Material.Path, out var material) || material == entry.Material.Text) return;
        offered = null;
        entry.Material.Showing(material);
        entry.Lot.Showing(begun.Fields.GetValueOrDefault(entry.Lot.Path));
        before = Current?.Entries ?? 0;
    }

    private void Typed() => isBegun = entry.Kg.Text.Length > 0;

    private void Choose(WeighingRow row)
    {
        entry.Material.Text = Id(row.MaterialId!.Value);
        Chosen();
    }

    // A lot belongs to its material.
    private void Chosen()
    {
        (weighed, offered) = (null, null);
        entry.Lot.Showing(null);
        before = Current?.Entries ?? 0;
    }

    private string Words(WeighingRow row) => row switch
    {
        { IsDone: true } => Text["Done"],
        { IsOver: true, PlannedKg: 0 } => Text["Extra", MassText.Show(row.ActualKg)],
        { IsOver: true } => RestText["Over", MassText.Show(row.ActualKg - row.PlannedKg)],
        { IsStopped: true } => "–",
        { TargetKg: 0 } => RestText["NoMore"],
        { IsPast: true } => RestText["Under", MassText.Show(row.LeftKg)],
        _ => Text["StillTo", MassText.Show(row.LeftKg)],
    };

    /// <summary>The card may have been read with its mass already, or not yet: what is left then is told apart by how often the material was weighed.</summary>
    private void Saved()
    {
        if (entry.Kg.Value is not { } mass) return;
        weighed = (mass, Words(entry.Material));
        entry.Kg.Showing(null);
        entry.Minutes.Showing(null);
        isBegun = false;
        if (Current is not { } row) return;
        var left = row.Entries > before ? row.LeftKg : row.LeftKg - mass;
        before = Math.Max(row.Entries, before + 1);
        if (left <= row.TargetKg / 100) Offer(Rows.FirstOrDefault(other => other.Code != row.Code && other.IsOpen) ?? row);
    }

    /// <summary>Its mass has left the field. The card may have been read with it or without it: the next material is offered once the row says that this one is done.</summary>
    private void SavedLate(EntryAnsweredEventArgs told)
    {
        var late = new WeighingEntry();
        foreach (var (name, value) in entry.Sent) late.Belongs(name, value);
        late.Fill(told.Late!);
        weighed = (late.Kg.Needed, Words(late.Material));
        if (told.IsTouched || late.Material.Value != entry.Material.Value) return;
        offered = entry.Material.Value;
        Show();
    }

    private string Words(TextEntry material) =>
        Rows.FirstOrDefault(row => row.MaterialId is { } id && Id(id) == material.Value)?.Name ?? Screen.Yard.FirstOrDefault(item => Id(item.Id) == material.Value)?.Name ?? "";
}
