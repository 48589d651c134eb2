using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.People;

/// <summary>Somebody chooses the language and decimal sign of their pages. Answers it.</summary>
public sealed class ChooseCulture(Recorder recorder, TimeProvider time) : Operation<ChooseCulture.Command, string>(recorder, time)
{
    /// <param name="Culture">For example <c>de-DE</c>.</param>
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, string Culture) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = Role.All;

    protected override void Check(Command command, FieldCheck fields) => fields.Text("culture", command.Culture, 20);

    protected override async Task<Written<string>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        if (await writing.Db.Users.FindAsync([writing.Acting.PersonId], cancellation) is not { IsActive: true } person) return Refuse("", "right.missing", "");
        person.Culture = command.Culture;
        return Done(person.Culture, new ChangeNotice(ChangeKind.Person, person.Id));
    }
}
