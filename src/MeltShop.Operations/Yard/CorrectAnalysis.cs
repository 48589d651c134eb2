using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Yard;

/// <summary>Puts a better analysis in force; the one before it stays readable. Answers the material's new version.</summary>
public sealed class CorrectAnalysis(Recorder recorder, TimeProvider time) : Operation<CorrectAnalysis.Command, Guid>(recorder, time)
{
    public sealed record Command(
        Guid EntryKey,
        DateTimeOffset ObservedAt,
        long MaterialId,
        Guid Version,
        IReadOnlyList<MaterialPercentInput> Percents,
        string Source,
        string SourceKind,
        string Reason) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields)
    {
        MaterialPercentInputs.Check(command.Percents, fields);
        AnalysisSource.Check(command.Source, command.SourceKind, fields);
        fields.Text("reason", command.Reason, 500);
    }

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var material = await writing.Db.Materials.FindAsync([command.MaterialId], cancellation);
        if (material is null) return Refuse("materialId", "material.unknown");
        if (material.Version != command.Version) return Stale(writing, material, command.Version);

        var analysis = writing.Stamp.Analysis(
            material.Id, command.Percents, command.Source, command.SourceKind, material.AnalysisId, command.Reason);
        writing.Db.Add(analysis);
        await writing.Db.SaveChangesAsync(cancellation);
        material.AnalysisId = analysis.Id;
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(material.Version, new ChangeNotice(ChangeKind.Material, material.Id, material.Version));
    }
}
