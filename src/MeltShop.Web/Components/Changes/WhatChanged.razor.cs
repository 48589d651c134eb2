using MeltShop.Metallurgy;
using MeltShop.Records.Reading.Changes;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Components.Changes;

/// <summary>Under the refusal of an outdated form: who changed what meanwhile, from what to what, and when.</summary>
public sealed partial class WhatChanged
{
    /// <summary>Lines of one entry: a coin of thirty elements is not read at a form.</summary>
    private const int Shown = 8;

    private IReadOnlyList<ChangeMade> made = [];
    private SeenRow? told;

    /// <summary>The refusal.</summary>
    [Parameter, EditorRequired]
    public Finding Finding { get; set; } = null!;

    [Inject]
    private ChangesSince Changes { get; set; } = null!;

    [Inject]
    private ShopSite Site { get; set; } = null!;

    [Inject]
    private IStringLocalizer<Texts.Changes> Localizer { get; set; } = null!;

    private ChangeWords Words => new(Localizer, Site);

    /// <summary>What was replaced before what was added.</summary>
    private IEnumerable<ValueChange> Told(ChangeMade change) => change.Values.Where(Words.Knows).OrderBy(value => value.Before is null);

    protected override async Task OnParametersSetAsync()
    {
        if (SeenRow.Of(Finding) is not { } seen || seen == told) return;
        told = seen;
        made = await Changes.Load(seen);
    }
}
