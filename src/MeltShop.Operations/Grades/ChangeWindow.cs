using MeltShop.Operations.Checking;
using MeltShop.Records.Grades;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Grades;

/// <summary>
/// Sets least, aim and most of one quantity, or takes it up where the grade did not have it. Plans already made keep the window
/// that they used. Answers the grade's new version.
/// </summary>
public sealed class ChangeWindow(Recorder recorder, TimeProvider time) : Operation<ChangeWindow.Command, Guid>(recorder, time)
{
    public sealed record Command(
        Guid EntryKey,
        DateTimeOffset ObservedAt,
        long GradeId,
        Guid Version,
        WindowStage Stage,
        string Quantity,
        double? Least,
        double? Aim,
        double? Most,
        double Margin) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields) => fields.Check("window", Input(command));

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var grade = await writing.Db.Grades.Include(g => g.Windows).SingleOrDefaultAsync(g => g.Id == command.GradeId, cancellation);
        if (grade is null) return Refuse("gradeId", "grade.unknown");
        if (grade.Version != command.Version) return Stale(writing, grade, command.Version);

        if (GradeInputs.Unmeant("window", command.Stage, command.Quantity, grade.Family) is { } finding) return Written<Guid>.Refused(finding);
        var window = grade.Windows.SingleOrDefault(w => w.Stage == command.Stage && w.Quantity == command.Quantity);
        if (window is null) grade.Windows.Add(Input(command).Row(grade.Id));
        else (window.Least, window.Aim, window.Most, window.Margin) = (command.Least, command.Aim, command.Most, command.Margin);

        // The window's row carries no version of its own: the grade's stands for all of it.
        writing.Db.Expect(grade, command.Version);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(grade.Version, new ChangeNotice(ChangeKind.Grade, grade.Id));
    }

    private static GradeWindowInput Input(Command command) =>
        new(command.Stage, command.Quantity, command.Least, command.Aim, command.Most, command.Margin);
}
