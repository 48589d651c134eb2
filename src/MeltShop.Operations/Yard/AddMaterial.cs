using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Yard;

/// <summary>Takes a new material into the yard, with its analysis and its first price.</summary>
public sealed class AddMaterial(Recorder recorder, TimeProvider time) : Operation<AddMaterial.Command, long>(recorder, time)
{
    /// <param name="MetallicYieldPercent">Above 0 to 100 %; null where nobody knows: then it is in the yard, and in no plan.</param>
    public sealed record Command(
        Guid EntryKey,
        DateTimeOffset ObservedAt,
        string Code,
        string Name,
        MaterialKind Kind,
        MaterialUses Uses,
        decimal PricePerTonne,
        double? MetallicYieldPercent,
        IReadOnlyList<MaterialPercentInput> Percents,
        string Source,
        string SourceKind,
        double? PieceKg = null,
        double? BulkDensityTonnesPerM3 = null,
        double? MaxSharePercent = null,
        string Cautions = "",
        bool IsDemo = false) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("code", command.Code, 60);
        fields.Text("name", command.Name);
        fields.Choice("kind", command.Kind);
        fields.Money("pricePerTonne", command.PricePerTonne);
        if (command.MetallicYieldPercent is { } yield) fields.Yield("metallicYieldPercent", yield);
        if (command.PieceKg is { } piece) fields.Mass("pieceKg", piece);
        if (command.BulkDensityTonnesPerM3 is { } density) fields.Positive("bulkDensityTonnesPerM3", density);
        fields.Percent("maxSharePercent", command.MaxSharePercent);
        fields.OptionalText("cautions", command.Cautions);
        foreach (var caution in command.Cautions.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!MaterialCautions.All.Contains(caution)) fields.Add("cautions", "choice.unknown", caution);
        }

        MaterialPercentInputs.Check(command.Percents, fields);
        AnalysisSource.Check(command.Source, command.SourceKind, fields);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        if (await writing.Db.Materials.AnyAsync(m => m.Code == command.Code, cancellation)) return Refuse("code", "code.taken", command.Code);

        var material = new Material
        {
            Code = command.Code,
            Name = command.Name,
            Kind = command.Kind,
            Uses = command.Uses,
            PricePerTonne = command.PricePerTonne,
            MetallicYieldPercent = command.MetallicYieldPercent,
            PieceKg = command.PieceKg,
            BulkDensityTonnesPerM3 = command.BulkDensityTonnesPerM3,
            MaxSharePercent = command.MaxSharePercent,
            Cautions = command.Cautions,
            IsDemo = command.IsDemo,
        };
        writing.Db.Add(material);
        await writing.Db.SaveChangesAsync(cancellation);

        var analysis = writing.Stamp.Analysis(material.Id, command.Percents, command.Source, command.SourceKind);
        writing.Db.Add(analysis);
        writing.Db.Add(writing.Stamp.Price(material.Id, command.PricePerTonne));
        await writing.Db.SaveChangesAsync(cancellation);
        material.AnalysisId = analysis.Id;
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(material.Id, new ChangeNotice(ChangeKind.Material, material.Id, material.Version));
    }
}
