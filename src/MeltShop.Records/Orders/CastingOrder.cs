using MeltShop.Records.Keeping;

namespace MeltShop.Records.Orders;

/// <summary>What has become of an order.</summary>
public enum OrderState
{
    /// <summary>Castings of it are to be poured.</summary>
    Open,

    /// <summary>Closed: all that was wanted is poured.</summary>
    Done,

    /// <summary>Closed: nobody wants the rest.</summary>
    Withdrawn,
}

/// <summary>Castings to be poured by a day. A person counts what is poured: pours do not name an order yet.</summary>
public sealed class CastingOrder : IVersioned
{
    public long Id { get; init; }

    /// <summary>The shop's own number of it, unique.</summary>
    public required string Number { get; set; }

    /// <summary>What is cast.</summary>
    public required string Casting { get; set; }

    public required long GradeId { get; set; }

    /// <summary>Relevant wall of the casting, mm, over 0: what its properties are judged by.</summary>
    public required double WallMm { get; set; }

    /// <summary>Mass of one casting, kg, over 0.</summary>
    public required double CastingKg { get; set; }

    /// <summary>Castings of the mould over metal poured into it, %, over 0 to 100.</summary>
    public required double MouldYieldPercent { get; set; }

    /// <summary>Castings ordered, over 0.</summary>
    public required int Pieces { get; set; }

    /// <summary>Castings poured so far, as a person counted them; more than ordered where spares were poured.</summary>
    public int PiecesPoured { get; set; }

    /// <summary>Day by which they are to be poured.</summary>
    public required DateOnly DueOn { get; set; }

    public OrderState State { get; set; } = OrderState.Open;
    public Guid Version { get; set; }
}
