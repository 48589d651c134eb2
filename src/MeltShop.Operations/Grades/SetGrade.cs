using MeltShop.Operations.Checking;
using MeltShop.Records.Grades;
using MeltShop.Records.Heats;
using MeltShop.Records.Orders;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Grades;

/// <summary>
/// Says the designation, the family and the source of a grade anew, or takes it out of use. The family stays once a heat was made by it. Plans
/// and certificates that are kept stay as they are. Answers the new version.
/// </summary>
public sealed class SetGrade(Recorder recorder, TimeProvider time) : Operation<SetGrade.Command, Guid>(recorder, time)
{
    /// <param name="IsActive">False takes it out of use: it is offered in no new plan and no new order.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long GradeId, Guid Version, string Code, IronFamily Family, string Source, bool IsActive)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("code", command.Code, 60);
        fields.Choice("family", command.Family);
        fields.Text("source", command.Source, 2000);
    }

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var grade = await db.Grades.FindAsync([command.GradeId], cancellation);
        if (grade is null) return Refuse("gradeId", "grade.unknown");
        if (grade.Version != command.Version) return Stale(writing, grade, command.Version);
        if (await db.Grades.AnyAsync(g => g.Id != grade.Id && g.Code == command.Code, cancellation)) return Refuse("code", "code.taken", command.Code);
        var heats = db.Heats.Where(h => h.GradeId == grade.Id);
        if (command.Family != grade.Family)
        {
            if (await heats.OrderBy(h => h.Id).Select(h => h.Number).FirstOrDefaultAsync(cancellation) is { } made) return Refuse("family", "grade.made", made);
            var fields = new FieldCheck();
            if (grade.Recipe is { } recipe) fields.Check("recipe", Said(recipe), command.Family);
            if (fields.Findings.Count > 0) return Refuse("family", "grade.recipeOfTheOther");
        }

        if (!command.IsActive)
        {
            var open = await heats.Where(h => h.State == HeatState.Charging || h.State == HeatState.Bath || h.State == HeatState.Tapping)
                .Select(h => h.Number).FirstOrDefaultAsync(cancellation);
            if (open is not null) return Refuse("isActive", "grade.inUse", open);
            var order = await db.CastingOrders.Where(o => o.GradeId == grade.Id && o.State == OrderState.Open).OrderBy(o => o.DueOn).Select(o => o.Number).FirstOrDefaultAsync(cancellation);
            if (order is not null) return Refuse("isActive", "grade.ordered", order);
        }

        (grade.Code, grade.Family, grade.Source, grade.IsActive) = (command.Code, command.Family, command.Source, command.IsActive);
        await db.SaveChangesAsync(cancellation);
        return Done(grade.Version, new ChangeNotice(ChangeKind.Grade, grade.Id));
    }

    private static GradeRecipeInput Said(GradeRecipe recipe) => new(
        recipe.TargetMgPercent, recipe.MgFloorPercent, recipe.SulphurLeftPercent, recipe.TreatmentAlloyCode, recipe.InoculantCode, recipe.InoculantRatePercent,
        recipe.MinutesToLastMould, recipe.CoverCode, recipe.CoverRatePercent);
}
