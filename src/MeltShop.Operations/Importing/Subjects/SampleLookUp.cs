using MeltShop.Operations.Importing.Rows;
using MeltShop.Records;

namespace MeltShop.Operations.Importing.Subjects;

/// <summary>Looks up what the samples of a file name. It is done for the preview, and again inside the transaction that takes them in.</summary>
internal static class SampleLookUp
{
    public static async Task<FoundSamples> Find(RecordsContext db, ReadFile file, long instrumentId, CancellationToken ct)
    {
        var finder = new SubjectFinder(await NamedThings.Load(db, file.Samples, ct), instrumentId);
        var (found, faults) = (new List<FoundSample>(), new List<RowFault>(file.Faults));
        foreach (var sample in file.Samples)
        {
            var (subject, code, arguments) = finder.Find(sample);
            if (subject is not null) found.Add(subject);
            else Refuse(sample, code!, arguments);
        }

        // Without a number of the sender's own, two texts of a heat and a furnace may turn out to be the same coin.
        foreach (var twice in found.GroupBy(f => f.Identity).Where(g => g.Count() > 1).SelectMany(g => g.Skip(1)).ToList())
        {
            found.Remove(twice);
            Refuse(twice.Sample, "importSample.again");
        }

        var (fresh, known, other) = await KnownSamples.Part(db, found, ct);
        foreach (var sample in other) Refuse(sample.Sample, "importSample.other");
        return new(fresh, known, [.. faults.OrderBy(f => f.Line)]);

        void Refuse(ImportSample sample, string code, params object[] arguments) =>
            faults.AddRange(sample.Rows.Select(r => new RowFault(r.Line, "", r.Text, code, arguments)));
    }
}
