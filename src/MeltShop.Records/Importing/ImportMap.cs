using MeltShop.Records.Keeping;

namespace MeltShop.Records.Importing;

/// <summary>How the files of one instrument are to be read, by name.</summary>
public sealed class ImportMap : IVersioned
{
    public long Id { get; init; }
    public required string Name { get; init; }
    public required long InstrumentId { get; init; }

    /// <summary>Columns, signs and forms, as JSON: the room above knows what they mean.</summary>
    public required string Definition { get; set; }

    public bool IsActive { get; set; } = true;
    public Guid Version { get; set; }
}
