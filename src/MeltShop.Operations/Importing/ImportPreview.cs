using MeltShop.Operations.Importing.Maps;
using MeltShop.Operations.Importing.Subjects;
using MeltShop.Operations.Importing.Taking;
using MeltShop.Records.Importing;

namespace MeltShop.Operations.Importing;

/// <summary>What a file would bring if it were taken in now.</summary>
/// <param name="MapId">The map that it was read by; null where the sender named everything itself.</param>
public sealed record ImportPreview(long? MapId, long InstrumentId, ReadFile File, FoundSamples Found)
{
    /// <summary>The command that takes in what is shown here, and nothing else.</summary>
    public ImportSamples.Command Taking(Guid entryKey, DateTimeOffset observedAt, ImportWay way, string name) => new(
        entryKey, observedAt, MapId, InstrumentId, way, name, File.Sha256, File.Bytes, File.Rows, Found.NewRows, Found.KnownRows, Found.RefusedRows)
    {
        File = File,
    };
}
