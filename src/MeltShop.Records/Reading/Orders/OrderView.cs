using MeltShop.Metallurgy.Pouring;
using MeltShop.Records.Orders;

namespace MeltShop.Records.Reading.Orders;

/// <inheritdoc cref="CastingOrder"/>
public sealed record OrderView(
    long Id, Guid Version, string Number, string Casting, long GradeId, string GradeCode, double WallMm, double CastingKg, double MouldYieldPercent,
    int Pieces, int PiecesPoured, DateOnly DueOn, OrderState State)
{
    /// <summary>Castings still to be poured.</summary>
    public int PiecesLeft => OrderMetal.PiecesLeft(Pieces, PiecesPoured);

    /// <summary>Metal that they need, kg.</summary>
    public double LeftKg => OrderMetal.Kg(PiecesLeft, CastingKg, MouldYieldPercent);

    /// <summary>Whether it is open, its day is over, and castings of it are still to be poured.</summary>
    public bool IsLate(DateOnly today) => State == OrderState.Open && PiecesLeft > 0 && DueOn < today;
}
