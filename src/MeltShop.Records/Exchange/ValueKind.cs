namespace MeltShop.Records.Exchange;

/// <summary>What a stored value is, whichever database holds it and however.</summary>
public enum ValueKind
{
    Text,

    /// <summary>A whole number; money is a whole number of hundredths.</summary>
    Integer,

    /// <summary>A binary floating-point number of 64 bits.</summary>
    Number,

    YesNo,

    /// <summary>UTC, whole microseconds. SQLite holds ticks.</summary>
    Instant,

    /// <summary>A GUID. SQLite holds text.</summary>
    Identifier,

    Bytes,
}
