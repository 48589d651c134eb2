using System.ComponentModel;
using MeltShop.Charging.Plans;

namespace MeltShop.Web.Api.Parts;

internal sealed record LineAnswer(
    [property: Description("The material.")] string Code,
    [property: Description("Weighed mass, kg.")] double Kg,
    [property: Description("Share of the total weighed mass, %.")] double Percent)
{
    public static LineAnswer From(PlanLine line) => new(line.Code, line.Kg, line.Percent);
}

internal sealed record UncutAnswer(
    [property: Description("Cost of all that would be weighed in.")] double TotalCost,
    [property: Description("Liquid mass, what is there already included and what is tapped off first gone, kg.")] double LiquidKg,
    [property: Description("What would be weighed in.")] IReadOnlyList<LineAnswer> Lines,
    [property: Description("Expected mass percent by element symbol.")] IReadOnlyDictionary<string, double> Analysis)
{
    public static UncutAnswer From(ChargeEvaluation uncut) =>
        new(uncut.Costs.Total, uncut.LiquidKg, [.. uncut.Lines.Select(LineAnswer.From)], PlanAnswer.Percents(uncut.Analysis));
}

internal sealed record LimitAnswer(
    [property: Description("The quantity.")] string Quantity,
    [property: Description("Its value in the melt.")] double Value,
    [property: Description("The least value asked for.")] double? Min,
    [property: Description("The greatest value asked for.")] double? Max,
    [property: Description("The bound that the plan sits on: none, min, max or both.")] string Binding,
    [property: Description("Change of the total cost for +0.01 on that bound; null with pieces or where raising it is impossible.")] double? MarginalCost)
{
    public static LimitAnswer From(LimitOutcome limit) =>
        new(limit.Quantity, limit.Value, limit.Min, limit.Max, Name(limit.Binding), limit.MarginalCost);

    private static string Name(BindingBound binding) => binding switch
    {
        BindingBound.None => "none",
        BindingBound.Min => "min",
        BindingBound.Max => "max",
        BindingBound.Both => "both",
        _ => throw new ArgumentOutOfRangeException(nameof(binding), binding, "A bound without a name in the contract."),
    };
}

internal sealed record MaterialAnswer(
    [property: Description("The material.")] string Code,
    [property: Description("Weighed mass in the plan, kg.")] double Kg,
    [property: Description("Price per 1000 kg at which a left-out material would come in; null with pieces or where it cannot.")] double? PriceToEnterPerTonne)
{
    public static MaterialAnswer From(MaterialOutcome material) => new(material.Code, material.Kg, material.PriceToEnterPerTonne);
}

internal sealed record ConflictAnswer(
    [property: Description("The quantity whose bound clashes, or meltKg where masses and shares alone are impossible.")] string Quantity,
    [property: Description("min or max; null for meltKg.")] string? Bound,
    [property: Description("The bound that clashes.")] double? Limit,
    [property: Description("The value that can be reached with the other members held; null where none.")] double? Nearest)
{
    public static ConflictAnswer From(Conflict conflict) => new(conflict.Quantity, conflict.Bound, conflict.Limit, conflict.Nearest);
}
