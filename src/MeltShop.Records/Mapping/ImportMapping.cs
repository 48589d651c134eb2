using MeltShop.Records.Importing;
using MeltShop.Records.Laboratory;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Mapping;

internal static class ImportMapping
{
    public static void Apply(ModelBuilder model)
    {
        model.Entity<ImportMap>(map =>
        {
            map.HasIndex(m => m.Name).IsUnique();
            map.Refers<ImportMap, Instrument>(m => m.InstrumentId);
        });
        model.Entity<ImportedFile>(file =>
        {
            file.Refers<ImportedFile, ImportMap>(f => f.ImportMapId);
            file.HasIndex(f => f.Sha256);
        });
        model.Entity<ImportedCheck>(check =>
        {
            check.Refers<ImportedCheck, ImportedFile>(c => c.ImportedFileId);
            check.Refers<ImportedCheck, ControlSample>(c => c.ControlSampleId);
            check.HasIndex(c => c.Identity).IsUnique();
            check.HasIndex(c => c.ControlSampleId);
            check.HasIndex(c => c.ImportedFileId);
        });
        model.Entity<ImportedSample>(sample =>
        {
            sample.Refers<ImportedSample, ImportedFile>(s => s.ImportedFileId);
            sample.Refers<ImportedSample, Sample>(s => s.SampleId);
            sample.HasIndex(s => s.Identity).IsUnique();
            sample.HasIndex(s => s.SampleId);
            sample.HasIndex(s => s.ImportedFileId);
        });
    }
}
