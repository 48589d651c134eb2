namespace MeltShop.Records.Reading.Recall;

/// <summary>What is suspect.</summary>
public enum RecallFrom
{
    /// <summary>A material by its code or name, all of it or one lot, used in a time.</summary>
    Material,

    /// <summary>A heat by its number.</summary>
    Heat,

    /// <summary>One filling of a ladle, <c>number of its heat/number of the ladle</c>, or a ladle by its code in a time.</summary>
    Ladle,

    /// <summary>A certificate by its number or by its SHA-256.</summary>
    Certificate,

    /// <summary>An instrument by its code or name: what it measured in a time.</summary>
    Instrument,
}

/// <summary>Whose castings are asked for.</summary>
/// <param name="From">What is suspect.</param>
/// <param name="Of">What it is called.</param>
/// <param name="Lot">For a material: the lot as it stands on the bag; null for all of it.</param>
/// <param name="Since">For a material or a ladle by its code: from this instant; null from the first record.</param>
/// <param name="Before">Until before this instant; null to the last record.</param>
/// <param name="Heels">How many heats the iron that stays in a furnace is followed into.</param>
public sealed record RecallQuestion(RecallFrom From, string Of, string? Lot = null, DateTimeOffset? Since = null, DateTimeOffset? Before = null, int Heels = 1)
{
    /// <summary>Heels are followed no further: a few per cent of a few per cent are left by then.</summary>
    public const int MostHeels = 5;
}
