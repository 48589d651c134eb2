using MeltShop.Operations.Checking;
using MeltShop.Records;
using MeltShop.Records.Orders;
using MeltShop.Records.People;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Orders;

/// <summary>What is said of an order; findings stand at the names of these fields.</summary>
/// <param name="Number">The shop's own number of it.</param>
/// <param name="Casting">What is cast.</param>
/// <param name="WallMm">Relevant wall, mm, over 0.</param>
/// <param name="CastingKg">Mass of one casting, kg, over 0.</param>
/// <param name="MouldYieldPercent">Castings of the mould over metal poured into it, %, over 0 to 100.</param>
/// <param name="Pieces">Castings ordered, over 0.</param>
/// <param name="DueOn">Day by which they are to be poured; one that is over is right for what is late already.</param>
public sealed record OrderInput(string Number, string Casting, long GradeId, double WallMm, double CastingKg, double MouldYieldPercent, int Pieces, DateOnly DueOn);

internal static class OrderInputs
{
    /// <summary>Who promises castings, and who answers for their iron.</summary>
    public static IReadOnlyList<string> Roles { get; } = [Role.Supervisor, Role.Metallurgist];

    /// <summary>Nobody orders castings for a day outside these years: one is a slip of the finger.</summary>
    private const int FirstYear = 2000, LastYear = 2199;

    public static void Check(this FieldCheck fields, OrderInput order)
    {
        fields.Text("number", order.Number, 60);
        fields.Text("casting", order.Casting);
        fields.Positive("wallMm", order.WallMm);
        fields.Mass("castingKg", order.CastingKg);
        fields.Yield("mouldYieldPercent", order.MouldYieldPercent);
        fields.Positive("pieces", order.Pieces);
        if (order.DueOn.Year is < FirstYear or > LastYear) fields.Add("dueOn", "order.day");
    }

    /// <summary>What stands against it in the records.</summary>
    /// <param name="former">The order that it is to change; null for a new one.</param>
    public static async Task<Metallurgy.Finding?> Against(this OrderInput order, RecordsContext db, CastingOrder? former, CancellationToken cancellation)
    {
        var id = former?.Id;
        if (await db.CastingOrders.AnyAsync(o => o.Number == order.Number && o.Id != id, cancellation)) return new("number", "code.taken", order.Number);
        var isKept = former?.GradeId == order.GradeId; // an order of a grade that went out of use meanwhile can still be put right
        return await db.Grades.AnyAsync(g => g.Id == order.GradeId && (g.IsActive || isKept), cancellation) ? null : new("gradeId", "grade.unknown");
    }
}
