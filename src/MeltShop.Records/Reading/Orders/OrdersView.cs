using MeltShop.Records.Reading.Charge;

namespace MeltShop.Records.Reading.Orders;

/// <param name="IsClosed">Those that are closed; otherwise the open ones.</param>
/// <param name="Until">Only what is due up to this day; null for all.</param>
public sealed record OrderFilter(bool IsClosed = false, DateOnly? Until = null);

/// <summary>Metal of one grade that is to be poured by a day.</summary>
public sealed record MetalNeeded(DateOnly DueOn, string GradeCode, double Kg, int Orders);

/// <param name="Orders">Open ones by due day, closed ones the latest due first.</param>
/// <param name="More">True where there are more than are shown.</param>
/// <param name="ToPour">Every open order that still needs metal and meets the filter, shown or not.</param>
/// <param name="Grades">Grades in use: id and code.</param>
/// <param name="Furnaces">Furnaces in use, with what the last heat left in them.</param>
public sealed record OrdersView(
    IReadOnlyList<OrderView> Orders, bool More, IReadOnlyList<OrderView> ToPour, IReadOnlyList<OrderGrade> Grades, IReadOnlyList<ChargeFurnaceView> Furnaces)
{
    /// <summary>By day and grade, the nearest day first.</summary>
    public IReadOnlyList<MetalNeeded> Needed =>
    [
        .. ToPour.GroupBy(o => (o.DueOn, o.GradeCode)).OrderBy(g => g.Key.DueOn).ThenBy(g => g.Key.GradeCode, NaturalOrder.Names)
            .Select(g => new MetalNeeded(g.Key.DueOn, g.Key.GradeCode, g.Sum(o => o.LeftKg), g.Count())),
    ];

    /// <summary>By grade, over all days: the grade that is due first comes first.</summary>
    public IReadOnlyList<MetalNeeded> ByGrade =>
    [
        .. Needed.GroupBy(n => n.GradeCode).Select(g => new MetalNeeded(g.First().DueOn, g.Key, g.Sum(n => n.Kg), g.Sum(n => n.Orders))),
    ];
}

/// <summary>A grade that can be ordered.</summary>
public sealed record OrderGrade(long Id, string Code);

/// <param name="Grades">Grades in use, and its own.</param>
public sealed record OrderPageView(OrderView Order, IReadOnlyList<OrderGrade> Grades);
