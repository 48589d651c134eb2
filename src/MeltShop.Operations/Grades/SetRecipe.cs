using MeltShop.Operations.Checking;
using MeltShop.Records.Grades;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Grades;

/// <summary>
/// Says how iron of a grade is treated and inoculated unless a ladle says otherwise. Plans and pocket cards already made keep what they used.
/// Answers the grade's new version.
/// </summary>
public sealed class SetRecipe(Recorder recorder, TimeProvider time) : Operation<SetRecipe.Command, Guid>(recorder, time)
{
    /// <param name="Recipe">All of it: what is left out is not given any more.</param>
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long GradeId, Guid Version, GradeRecipeInput Recipe)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields)
    {
        // What may be in a recipe depends on the family of its grade.
    }

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var grade = await writing.Db.Grades.SingleOrDefaultAsync(g => g.Id == command.GradeId, cancellation);
        if (grade is null) return Refuse("gradeId", "grade.unknown");
        if (grade.Version != command.Version) return Stale(writing, grade, command.Version);
        var fields = new FieldCheck();
        fields.Check("recipe", command.Recipe, grade.Family);
        if (fields.Findings.Count > 0) return Written<Guid>.Refused([.. fields.Findings]);

        if (grade.Recipe is { } standing) Take(standing, command.Recipe.Row());
        else grade.Recipe = command.Recipe.Row();

        // The recipe carries no version of its own: the grade's stands for all of it.
        writing.Db.Expect(grade, command.Version);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(grade.Version, new ChangeNotice(ChangeKind.Grade, grade.Id));
    }

    private static void Take(GradeRecipe standing, GradeRecipe said)
    {
        (standing.TargetMgPercent, standing.MgFloorPercent, standing.SulphurLeftPercent) = (said.TargetMgPercent, said.MgFloorPercent, said.SulphurLeftPercent);
        (standing.TreatmentAlloyCode, standing.InoculantCode) = (said.TreatmentAlloyCode, said.InoculantCode);
        (standing.InoculantRatePercent, standing.MinutesToLastMould) = (said.InoculantRatePercent, said.MinutesToLastMould);
        (standing.CoverCode, standing.CoverRatePercent) = (said.CoverCode, said.CoverRatePercent);
    }
}
