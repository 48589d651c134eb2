using MeltShop.Charging.Plans;
using MeltShop.Metallurgy.Route;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Correcting;
using MeltShop.Records.Grades;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Correction;

/// <summary>A correction that keeps all limits: what to add in which order, what it costs, and the bath afterwards.</summary>
public sealed partial class ProposalFigures
{
    [Parameter, EditorRequired]
    public CorrectionFacts Facts { get; set; } = null!;

    [Parameter, EditorRequired]
    public CorrectionProposal Proposal { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    /// <summary>Asks for a correction without this material.</summary>
    [Parameter, EditorRequired]
    public EventCallback<string> LeaveOut { get; set; }

    private CorrectionPlan Plan => Proposal.Plan;

    /// <summary>The bath keeps every limit as it is; a quantity that needs what was not measured is not known to.</summary>
    private bool IsInside => Plan.Plan.Told().All(limit =>
        WindowQuantity.Find(limit.Quantity) is { } quantity && quantity.Missing(Facts.Bath.Metal.Analysis).Count == 0
        && quantity.Value(Facts.Bath.Metal.Analysis) is var value && !(value < limit.Min) && !(value > limit.Max));

    /// <summary>Elements of an addition whose recovery into the bath nobody said; null where there is none.</summary>
    private string? AsWithTheCharge(string code) =>
        Facts.View.Materials.FirstOrDefault(material => material.Code == code)?.AsWithTheCharge() is { Count: > 0 } elements ? string.Join(", ", elements) : null;

    private double? Aim(LimitOutcome limit) => Facts.View.Grade.At(WindowStage.Furnace).FirstOrDefault(window => window.Quantity == limit.Quantity)?.Aim;
}
