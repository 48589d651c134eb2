using MeltShop.Records.Grades;
using MeltShop.Records.People;
using MeltShop.Records.Sites;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Sites;

/// <summary>The shop, and what it still lacks before its first heat.</summary>
public sealed class SetUpPage(IDbContextFactory<RecordsContext> contexts)
{
    public async Task<SetUpView> Load(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var site = await SitePage.Load(db, ct);
        var rolesWithout = Role.All.Except(await RolesHeld(db, ct)).ToList();
        (SetUpStep Step, bool IsDone)[] steps =
        [
            (SetUpStep.Site, site is not null),
            (SetUpStep.Furnace, await db.Furnaces.AnyAsync(f => f.IsActive, ct)),
            (SetUpStep.Grade, await db.Grades.AnyAsync(g => g.IsActive && g.Windows.Any(w => w.Stage == WindowStage.Furnace), ct)),
            (SetUpStep.Material, await Plannable(db).AnyAsync(ct)),
            (SetUpStep.Ladle, await db.Ladles.AnyAsync(l => l.IsActive && !PouringVessel.All.Contains(l.Process), ct)),
            (SetUpStep.People, rolesWithout.Count == 0),
        ];
        return new(site, [.. steps.Where(step => !step.IsDone).Select(step => step.Step)], rolesWithout);
    }

    private static IQueryable<Material> Plannable(RecordsContext db) =>
        db.Materials.Where(m => m.IsActive && (m.Uses & MaterialUses.Charge) != 0 && m.AnalysisId != null && m.MetallicYieldPercent != null);

    /// <summary>Of those who can sign in: after an import nobody has a password.</summary>
    private static async Task<List<string>> RolesHeld(RecordsContext db, CancellationToken ct) => await (
        from person in db.Users
        join held in db.UserRoles on person.Id equals held.UserId
        join role in db.Roles on held.RoleId equals role.Id
        where person.IsActive && person.PasswordHash != null
        select role.Name).Distinct().ToListAsync(ct);
}

/// <param name="Site">Null before it is set up.</param>
/// <param name="Missing">In the order in which they are best done; empty where a heat can be planned, melted and treated.</param>
/// <param name="RolesWithout">Roles that nobody holds who can sign in.</param>
public sealed record SetUpView(SiteView? Site, IReadOnlyList<SetUpStep> Missing, IReadOnlyList<string> RolesWithout);

/// <summary>What a shop needs before its first heat.</summary>
public enum SetUpStep
{
    Site,
    Furnace,

    /// <summary>With a furnace window, which a charge is planned for.</summary>
    Grade,

    /// <summary>One that can be planned: analysis and yield are known.</summary>
    Material,

    /// <summary>A treatment ladle.</summary>
    Ladle,

    /// <summary>Somebody in every role.</summary>
    People,
}
