namespace MeltShop.Operations.Importing.Files;

/// <summary>What a file may ask of the program. An instrument's year of burns is far below, a trap far above.</summary>
public static class FileBounds
{
    /// <summary>Bytes of a file as it is sent.</summary>
    public const int MostBytes = 32 * 1024 * 1024;

    /// <summary>Bytes of a workbook after it is unpacked, all parts together.</summary>
    public const long MostUnpackedBytes = 256L * 1024 * 1024;

    /// <summary>Parts of a workbook.</summary>
    public const int MostParts = 500;

    /// <summary>Unpacked bytes for each packed one; a sheet full of one and the same row comes to about 100.</summary>
    public const int MostRatio = 200;

    public const int MostRows = 200_000;
    public const int MostColumns = 256;

    /// <summary>Signs of one cell.</summary>
    public const int MostSigns = 2000;
}
