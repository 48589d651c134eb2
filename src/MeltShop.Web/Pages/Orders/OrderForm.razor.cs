using System.Globalization;
using MeltShop.Metallurgy;
using MeltShop.Operations;
using MeltShop.Operations.Orders;
using MeltShop.Records.Reading.Orders;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.History;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Orders;

/// <summary>Takes an order, or says one anew.</summary>
public sealed partial class OrderForm
{
    /// <summary>Beyond these somebody mistyped.</summary>
    private const double MostMm = 1000, MostKg = 200_000, MostPieces = 1_000_000;

    private readonly EntryForm form = new();
    private readonly TextEntry number, casting, grade, due;
    private readonly QuantityEntry wall, mass, mouldYield, pieces;
    private readonly SeenVersion seen = new();
    private bool isOpen;

    public OrderForm()
    {
        (number, casting, grade) = (form.Words("number", isRequired: true), form.Words("casting", isRequired: true), form.Choice("gradeId", isRequired: true));
        wall = form.Quantity("wallMm", 0, MostMm, isRequired: true);
        mass = form.Mass("castingKg", 0, MostKg, isRequired: true);
        mouldYield = form.Quantity("mouldYieldPercent", 0, 100, isRequired: true);
        pieces = form.Quantity("pieces", 1, MostPieces, isRequired: true);
        due = form.Words("dueOn", isRequired: true, judge: text => HistoryAddress.ReadDay(text) is null ? "order.day" : null);
    }

    /// <summary>The one to be said anew; null for a new one.</summary>
    [Parameter]
    public OrderView? Order { get; set; }

    [Parameter, EditorRequired]
    public IReadOnlyList<OrderGrade> Grades { get; set; } = [];

    [Parameter]
    public EventCallback Saved { get; set; }

    [Inject]
    private TakeOrder Taking { get; set; } = null!;

    [Inject]
    private SetOrder Setting { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IEnumerable<Choice> GradeChoices => Grades.Select(g => new Choice(g.Id.ToString(CultureInfo.InvariantCulture), g.Code));

    private OrderInput Said => new(
        number.Value!, casting.Value!, long.Parse(grade.Value!, CultureInfo.InvariantCulture), wall.Needed, mass.Needed, mouldYield.Needed, (int)pieces.Needed,
        HistoryAddress.ReadDay(due.Value)!.Value);

    protected override void OnParametersSet()
    {
        if (Order is { } order) seen.Arrived(order.Version);
    }

    private void Open()
    {
        isOpen = true;
        form.Open();
        seen.Open(Order?.Version ?? Guid.Empty);
        number.Showing(Order?.Number);
        casting.Showing(Order?.Casting);
        grade.Showing(Order?.GradeId.ToString(CultureInfo.InvariantCulture));
        wall.Showing(Order?.WallMm);
        mass.Showing(Order?.CastingKg);
        mouldYield.Showing(Order?.MouldYieldPercent);
        pieces.Showing(Order?.Pieces);
        due.Showing(Order is { } known ? HistoryAddress.Write(known.DueOn) : null);
    }

    private async Task Save()
    {
        var done = Order is { } order
            ? Done(await HandingIn.Send(form, made => Setting.Run(made.By, new(made.Key, made.ObservedAt, order.Id, seen.Value, Said)), Whole))
            : Done(await HandingIn.Send(form, made => Taking.Run(made.By, new(made.Key, made.ObservedAt, Said)), Whole));
        if (done) isOpen = false;
        await Saved.InvokeAsync();
    }

    private IEnumerable<Finding> Whole() => WholePieces.Check(pieces);

    private bool Done<TResult>(Outcome<TResult>? outcome)
    {
        if (outcome?.IsStale() == true) seen.Outdated();
        return outcome?.Succeeded == true;
    }
}
