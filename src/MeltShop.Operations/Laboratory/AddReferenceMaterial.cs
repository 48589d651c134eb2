using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Laboratory;

/// <summary>A certified value as it was typed.</summary>
/// <param name="Element">Symbol.</param>
/// <param name="Percent">Mass percent.</param>
/// <param name="PlusMinus">Half of the certified interval of 95 %, percentage points; null where the certificate states none.</param>
public sealed record CertifiedInput(string Element, double Percent, double? PlusMinus = null);

/// <summary>Takes a piece of known composition into the laboratory. A new melt of it is a new one. Answers it.</summary>
public sealed class AddReferenceMaterial(Recorder recorder, TimeProvider time) : Operation<AddReferenceMaterial.Command, long>(recorder, time)
{
    /// <param name="Certificate">Who certifies the values, and in which document.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, string Code, string Name, string Certificate, IReadOnlyList<CertifiedInput> Values) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("code", command.Code, 60);
        fields.Text("name", command.Name);
        fields.Text("certificate", command.Certificate, 500);
        if (command.Values.Count == 0) fields.Add("values", "reference.noValues");
        fields.Analysis("values", command.Values.Select(v => (v.Element, v.Percent)));
        foreach (var value in command.Values.Where(v => v.PlusMinus is not null)) fields.NotNegative($"values.{value.Element}.plusMinus", value.PlusMinus!.Value);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        if (await writing.Db.ReferenceMaterials.AnyAsync(r => r.Code == command.Code, cancellation)) return Refuse("code", "code.taken", command.Code);
        var reference = new ReferenceMaterial
        {
            Code = command.Code,
            Name = command.Name,
            Certificate = command.Certificate,
            Values = [.. command.Values.Select(v => new CertifiedValue { Element = Element.Parse(v.Element), Percent = v.Percent, PlusMinus = v.PlusMinus })],
        };
        writing.Db.Add(reference);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(reference.Id, new ChangeNotice(ChangeKind.Instrument, reference.Id, reference.Version));
    }
}
