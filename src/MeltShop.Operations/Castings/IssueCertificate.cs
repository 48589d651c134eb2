using System.Security.Cryptography;
using System.Text.Json.Serialization;
using MeltShop.Operations.Checking;
using MeltShop.Records.Castings;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Castings;

/// <summary>
/// Keeps a certificate of released castings as it was printed: its bytes and their SHA-256. The first of a ladle is revision 1; a later one
/// needs a reason and supersedes it, and both stay readable. Nothing is issued for castings that are not released.
/// </summary>
public sealed class IssueCertificate(Recorder recorder, TimeProvider time) : Operation<IssueCertificate.Command, long>(recorder, time)
{
    private const int MostBytes = 5_000_000;

    /// <param name="Version">Of the ladle, as it was when the document was made: a decision since then makes it stale.</param>
    /// <param name="Revision">As printed on the document.</param>
    /// <param name="Document">The PDF; the trail has it with the row that it becomes.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long TreatedLadleId, Guid Version, string Number, int Revision, string TrailHead,
        [property: JsonIgnore] ReadOnlyMemory<byte> Document, string? Reason)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Inspector];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("number", command.Number, 80);
        fields.Text("trailHead", command.TrailHead, 80);
        if (command.Document.Length is 0 or > MostBytes) fields.Add("document", "document.size", MostBytes);
        fields.OptionalText("reason", command.Reason, 500);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var treated = await db.TreatedLadles.FindAsync([command.TreatedLadleId], cancellation);
        if (treated is null) return Refuse("treatedLadleId", "ladle.unknown");
        if (treated.Version != command.Version) return Stale(writing, treated, command.Version);
        var units = await CastingUnits.Load(db, treated.Id, cancellation);
        if (treated.State != TreatedLadleState.Released && units.All.All(u => u.Apart != CastingVerdict.Release)) return Refuse("treatedLadleId", "certificate.notReleased");
        var last = await db.Certificates.AsNoTracking().Where(c => c.TreatedLadleId == treated.Id).OrderByDescending(c => c.Revision)
            .Select(c => new { c.Id, c.Revision }).FirstOrDefaultAsync(cancellation);
        if (command.Revision != (last?.Revision ?? 0) + 1) return Stale(writing, treated, command.Version);
        if (last is not null && string.IsNullOrWhiteSpace(command.Reason)) return Refuse("reason", "text.missing");

        var certificate = new Certificate
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = writing.Stamp.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            SupersedesId = last?.Id,
            Reason = last is null ? null : command.Reason,
            TreatedLadleId = treated.Id,
            Number = command.Number,
            Revision = command.Revision,
            Document = command.Document.ToArray(),
            Sha256 = Convert.ToHexStringLower(SHA256.HashData(command.Document.Span)),
            TrailHead = command.TrailHead,
        };
        db.Add(certificate);
        await db.SaveChangesAsync(cancellation);
        return Done(certificate.Id, new ChangeNotice(ChangeKind.TreatedLadle, treated.Id, treated.Version));
    }
}
