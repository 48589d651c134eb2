using System.Globalization;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Liquid iron that goes back into the furnace: from a ladle of this heat, whose analysis is known, or other iron with the analysis typed here.</summary>
public sealed partial class PourBackForm
{
    private readonly EntryForm form = new();
    private readonly TextEntry ladle;
    private readonly QuantityEntry kg;
    private readonly TextEntry reason;
    private readonly IReadOnlyList<(Element Element, QuantityEntry Percent)> percents;

    public PourBackForm()
    {
        ladle = form.Choice("treatedLadleId");
        kg = form.Quantity("kg", 0.01, ChargeDraft.MostKg, isRequired: true);
        reason = form.Words("reason", isRequired: true);
        Element[] usual = [Element.C, Element.Si, Element.Mn, Element.P, Element.S, Element.Mg];
        percents = [.. usual.Select(element => (element, form.Quantity($"percents.{element.Symbol}", 0, 100)))];
    }

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public EventCallback Done { get; set; }

    [Inject]
    private PourBack Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IEnumerable<Choice> Choices => Heat.Ladles.Where(of => of.Tap is not null)
        .Select(of => new Choice(CorrectionDraft.Id(of.Id), Text["LadleOf", of.Ordinal])).Append(new("", Text["OtherIron"]));

    protected override void OnInitialized() => ladle.Showing(Heat.Ladles.LastOrDefault(of => of.Tap is not null) is { } last ? CorrectionDraft.Id(last.Id) : "");

    private async Task Save()
    {
        long? from = ladle.Value is { } id ? long.Parse(id, CultureInfo.InvariantCulture) : null;
        var typed = from is not null ? null : percents.Where(percent => percent.Percent.Value is not null)
            .ToDictionary(percent => percent.Element.Symbol, percent => percent.Percent.Value!.Value);
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, Heat.Heat.Id, from, kg.Needed, typed, reason.Value!)));
        if (outcome?.Succeeded == true) await Done.InvokeAsync();
    }
}
