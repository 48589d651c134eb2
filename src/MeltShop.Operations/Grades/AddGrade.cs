using MeltShop.Operations.Checking;
using MeltShop.Records.Grades;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Grades;

/// <summary>Takes a grade into the shop, with its furnace and poured windows and its recipe.</summary>
public sealed class AddGrade(Recorder recorder, TimeProvider time) : Operation<AddGrade.Command, long>(recorder, time)
{
    public sealed record Command(
        Guid EntryKey,
        DateTimeOffset ObservedAt,
        string Code,
        IronFamily Family,
        string Source,
        IReadOnlyList<GradeWindowInput> Windows,
        GradeRecipeInput? Recipe) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("code", command.Code, 60);
        fields.Choice("family", command.Family);
        fields.Text("source", command.Source, 2000);
        for (var i = 0; i < command.Windows.Count; i++)
        {
            var window = command.Windows[i];
            fields.Check($"windows[{i}]", window);
            if (GradeInputs.Unmeant($"windows[{i}]", window.Stage, window.Quantity, command.Family) is { } finding) fields.AddAll([finding]);
            if (command.Windows.Take(i).Any(w => w.Stage == window.Stage && w.Quantity == window.Quantity))
            {
                fields.Add($"windows[{i}].quantity", "window.twice", window.Quantity);
            }
        }

        if (command.Recipe is { } recipe) fields.Check("recipe", recipe, command.Family);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        if (await writing.Db.Grades.AnyAsync(g => g.Code == command.Code, cancellation)) return Refuse("code", "code.taken", command.Code);

        var grade = new Grade
        {
            Code = command.Code,
            Family = command.Family,
            Source = command.Source,
            Recipe = command.Recipe?.Row(),
            Windows = [.. command.Windows.Select(w => w.Row())],
        };
        writing.Db.Add(grade);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(grade.Id, new ChangeNotice(ChangeKind.Grade, grade.Id));
    }
}
