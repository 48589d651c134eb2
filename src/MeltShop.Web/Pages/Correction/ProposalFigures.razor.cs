using MeltShop.Charging.Plans;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Route;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Laboratory;
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
        WindowQuantity.Find(limit.Quantity) is { } quantity && quantity.Missing(Facts.Bath.Metal.Analysis).Count == 0 && quantity.IsMeantFor(Facts.Bath.Metal.Analysis)
        && quantity.Value(Facts.Bath.Metal.Analysis) is var value && !(value < Window(limit).Least) && !(value > Window(limit).Most));

    /// <summary>Elements of an addition whose recovery into the bath nobody said; null where there is none.</summary>
    private string? AsWithTheCharge(string code) =>
        Facts.View.Materials.FirstOrDefault(material => material.Code == code)?.AsWithTheCharge() is { Count: > 0 } elements ? string.Join(", ", elements) : null;

    /// <summary>How far the instrument of the last sample may be off when it reads the bath afterwards.</summary>
    private double? Repeatability(LimitOutcome limit) =>
        WindowQuantity.Find(limit.Quantity) is { } quantity ? QuantityJudgement.RepeatabilityAt(quantity, Plan.Plan.Analysis, Facts.View.LastBath?.Instrument) : null;

    /// <summary>Measured in the bath and without a window.</summary>
    private IEnumerable<KeyValuePair<Element, double>> Others => Plan.Plan.Analysis.Where(one =>
        one.Key != Element.Fe && Facts.Bath.Metal.Analysis.Has(one.Key) && Plan.Plan.Limits.All(limit => limit.Quantity != one.Key.Symbol));

    /// <summary>The window as the grade says it: the rows of a quantity that is not linear hold its margin already.</summary>
    private Bounds Window(LimitOutcome limit) => Facts.View.Grade.At(WindowStage.Furnace).FirstOrDefault(one => one.Quantity == limit.Quantity) is { } said
        ? new(said.Least, said.Aim, said.Most) : new(limit.Min, null, limit.Max);
}
