using MeltShop.Records.People;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Mapping;

internal static class PeopleMapping
{
    public static void Apply(ModelBuilder model)
    {
        model.Entity<Person>().ToTable("People");
        model.Entity<IdentityRole<long>>().ToTable("Roles");
        model.Entity<IdentityUserRole<long>>().ToTable("PersonRoles");
        model.Entity<IdentityUserClaim<long>>().ToTable("PersonClaims");
        model.Entity<IdentityUserLogin<long>>().ToTable("PersonLogins");
        model.Entity<IdentityUserToken<long>>().ToTable("PersonTokens");
        model.Entity<IdentityRoleClaim<long>>().ToTable("RoleClaims");
        model.Entity<ApiKey>().HasIndex(k => k.Hash).IsUnique();
    }
}
