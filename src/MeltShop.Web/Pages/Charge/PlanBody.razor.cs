using MeltShop.Operations.Charging;
using MeltShop.Records.Reading.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>A plan with its materials and limits; for the metallurgist also why, what if, and other plans.</summary>
public sealed partial class PlanBody
{
    [Parameter, EditorRequired]
    public ChargeView View { get; set; } = null!;

    [Parameter, EditorRequired]
    public PlannedCharge Planned { get; set; } = null!;

    /// <summary>What the target asks of the furnace iron.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<TargetRow> Rows { get; set; } = [];

    [Parameter, EditorRequired]
    public ChargeDraft Draft { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    /// <summary>The plan answers what is in the fields now.</summary>
    [Parameter, EditorRequired]
    public bool IsCurrent { get; set; }

    /// <summary>Whether the person may keep it.</summary>
    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    [Parameter, EditorRequired]
    public bool IsWhyShown { get; set; }

    [Parameter]
    public EventCallback Changed { get; set; }

    /// <summary>The plan was kept or refused, or something was answered that asks for no other plan.</summary>
    [Parameter]
    public EventCallback Answered { get; set; }

    private enum Part
    {
        Materials,
        Rooms,
        Limits,
        WhatIfs,
    }

    /// <summary>Where there is no charge, what has to be loosened comes first. Each part keeps what is open in it when it moves.</summary>
    private IReadOnlyList<Part> Parts => Planned.IsImpossible && Draft.ByHand is null
        ? [Part.Limits, Part.WhatIfs, Part.Materials] : [Part.Materials, Part.Rooms, Part.Limits, Part.WhatIfs];

    private IReadOnlyDictionary<string, string> Names => View.Materials.ToDictionary(item => item.Code, item => item.Name);

    private Task Make()
    {
        Draft.Make(new HandDraft(Draft.Form, Planned.Plan.Continuous?.Lines ?? Planned.Plan.Lines));
        return Changed.InvokeAsync();
    }
}
