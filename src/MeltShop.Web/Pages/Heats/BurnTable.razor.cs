using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Statistics;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>The burns as the instrument gave them. A suspect one is marked by its rule; a person sets it aside, with a reason, and it stays visible.</summary>
public sealed partial class BurnTable
{
    private readonly EntryForm form = new();
    private readonly TextEntry reason;
    private BurnView? opened;

    public BurnTable() => reason = form.Words("reason", isRequired: true);

    [Parameter, EditorRequired]
    public SampleView Sample { get; set; } = null!;

    /// <summary>Of the burns that count, in their order.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<BurnEvaluation> Evaluations { get; set; } = [];

    [Parameter, EditorRequired]
    public bool MaySetAside { get; set; }

    [Inject]
    private SetBurnAside Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IReadOnlyList<Element> Elements =>
        [.. Sample.Burns.SelectMany(burn => burn.Readings).Select(reading => reading.Element).Distinct().Order()];

    private IReadOnlyList<BurnView> Counting => [.. Sample.Burns.Where(burn => !burn.SetAside)];

    /// <summary>Which test each element got: one whose repeatability is known is held against that, up to six burns.</summary>
    private IEnumerable<string> Rules => Evaluations.GroupBy(RuleOf).Select(of => Text[of.Key, Named(of), Counting.Count, Grubbs.FewestReadings].Value);

    private static string RuleOf(BurnEvaluation found) => found.Test is { } test ? $"Rule{test}" : found.Count == 1 ? "RuleSingle" : "RuleTooFew";

    private string Named(IGrouping<string, BurnEvaluation> found) => found.Count() == Evaluations.Count ? Text["AllElements"] : string.Join(", ", found.Select(one => one.Element.Symbol));

    private BurnEvaluation? Of(Element element) => Evaluations.FirstOrDefault(found => found.Element == element);

    /// <summary>With all its digits, and with those of the mean below it: 1.40 over 1.40.</summary>
    private static string Shown(BurnView burn, Element element) => burn.Readings.FirstOrDefault(reading => reading.Element == element) is { } read
        ? (read.BelowDetection ? "<" : "") + NumberText.ShowAtLeast(read.Percent, element.Decimals) : "–";

    /// <summary>The mark before a mean: over readings below detection it is at most what it says, for they count as their limit of detection.</summary>
    internal static string BelowMark(SampleView sample, Element element)
    {
        var isBelow = sample.Burns.Where(burn => !burn.SetAside).SelectMany(burn => burn.Readings)
            .Where(reading => reading.Element == element).Select(reading => reading.BelowDetection).ToList();
        return isBelow.Count > 0 && isBelow.TrueForAll(below => below) ? "<" : isBelow.Contains(true) ? "≤" : "";
    }

    /// <inheritdoc cref="BelowMark(SampleView, Element)"/>
    internal static string BelowMark(SampleView sample, string quantity) => Element.TryParse(quantity, out var element) ? BelowMark(sample, element) : "";

    private string Mean(Element element) => Sample.Mean(element) is { } mean ? BelowMark(Sample, element) + PercentText.Show(element, mean) : "–";

    private IReadOnlyList<string> SuspectIn(BurnView burn)
    {
        var place = burn.SetAside ? -1 : Counting.ToList().IndexOf(burn);
        return
        [
            .. Evaluations.SelectMany(found => found.Suspects.Where(suspect => suspect.Burn == place)
                .Select(suspect => $"{found.Element.Symbol} ({Text[$"Test.{suspect.Test}", suspect.LevelPercent]})")),
        ];
    }

    private void Open(BurnView burn)
    {
        opened = burn;
        reason.Showing(null);
        form.Open();
    }

    private void Leave() => opened = null;

    private async Task Save()
    {
        var burn = opened!;
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, Sample.Id, burn.Ordinal, reason.Value!, !burn.SetAside)));
        if (outcome?.Succeeded == true) opened = null;
    }
}
