using MeltShop.Records.Laboratory;

namespace MeltShop.Operations.Importing.Maps;

/// <summary>What one column of the file holds.</summary>
/// <param name="Place">From 0.</param>
/// <param name="Heading">As it stood in the sample file: a file with another heading at this place is refused.</param>
/// <param name="Element">Symbol, for <see cref="ColumnRole.Element"/>.</param>
/// <param name="Unit">Of the element's values.</param>
/// <param name="Figure">For <see cref="ColumnRole.Figure"/>, °C or mm.</param>
public sealed record MappedColumn(
    int Place, string Heading, ColumnRole Role, string? Element = null, ElementUnit Unit = ElementUnit.Percent, FigureQuantity? Figure = null);

public enum ColumnRole
{
    /// <summary>The sender's own number of the sample: the same number is the same sample, for ever.</summary>
    SampleNumber,

    /// <summary>Number of the heat.</summary>
    Heat,

    /// <summary>Code of the furnace: the heat is the one that was in it when the coin was taken.</summary>
    Furnace,

    /// <summary>Code of the ladle: the ladle of the heat that was tapped last before the coin was taken.</summary>
    Ladle,

    Kind,
    Coin,

    /// <summary>When the coin was taken; several such columns are read as one text with blanks between.</summary>
    TakenAt,

    /// <summary>The burn's number, from 1; without it burns count in the order of the file.</summary>
    Burn,

    Remarks,
    Element,

    /// <summary>How the coin broke, grey or white.</summary>
    Fracture,

    /// <summary>A figure of a cup or a chill wedge.</summary>
    Figure,

    /// <summary>Code of a reference material: a row that has one is a check of the instrument, of no heat.</summary>
    Reference,
}

public enum ElementUnit
{
    /// <summary>Mass percent.</summary>
    Percent,

    /// <summary>Parts per million by mass: a ten-thousandth of a percent.</summary>
    PartsPerMillion,
}
