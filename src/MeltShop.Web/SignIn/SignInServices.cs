using MeltShop.Records;
using MeltShop.Records.People;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Identity;

namespace MeltShop.Web.SignIn;

/// <summary>People sign in with a cookie, machines with a key; whoever has neither is refused unless a route says otherwise.</summary>
internal static class SignInServices
{
    public static void AddSignIn(this IServiceCollection services)
    {
        services.AddHttpContextAccessor();
        services.AddSingleton<ApiKeys>();
        services.AddSingleton<FirstAdministrator>();
        services.AddSingleton<PinAttempts>();
        services.AddScoped<ActingPerson>();
        services.AddScoped<AuthenticationStateProvider, RevalidatingPerson>();
        services.AddAuthentication(IdentityConstants.ApplicationScheme)
            .AddScheme<AuthenticationSchemeOptions, ApiKeyAuthentication>(ApiKeyAuthentication.SchemeName, null)
            .AddCookie(IdentityConstants.ApplicationScheme, SignInCookie.Configure);
        services.AddAuthorizationBuilder()
            .AddPolicy(ApiKeyAuthentication.Policy, policy => policy.AddAuthenticationSchemes(ApiKeyAuthentication.SchemeName).RequireAuthenticatedUser())
            .AddPolicy(
                ApiKeyAuthentication.ReaderPolicy,
                policy => policy.AddAuthenticationSchemes(ApiKeyAuthentication.SchemeName).RequireClaim(ApiKeyAuthentication.ReadsRecords))
            .SetFallbackPolicy(new AuthorizationPolicyBuilder().RequireAuthenticatedUser().Build());
        services.AddIdentityCore<Person>(ConfigureIdentity)
            .AddRoles<IdentityRole<long>>()
            .AddEntityFrameworkStores<RecordsContext>()
            .AddSignInManager<ShopSignIn>()
            .AddClaimsPrincipalFactory<PersonClaims>();
        // Nobody who was signed out, deactivated or given other roles keeps the old ones for longer than this.
        services.Configure<SecurityStampValidatorOptions>(options =>
        {
            options.ValidationInterval = TimeSpan.FromMinutes(1);
            options.OnRefreshingPrincipal = SignInCookie.KeepStationAsync;
        });
        services.AddDataProtection().SetApplicationName("MeltShop").PersistKeysToDbContext<RecordsContext>();
        services.AddSignInRateLimit();
        services.AddAntiforgery();
    }

    private static void ConfigureIdentity(IdentityOptions options)
    {
        // Length is what counts; signs of several kinds make people write passwords on the wall.
        options.Password.RequiredLength = 10;
        options.Password.RequireDigit = false;
        options.Password.RequireLowercase = false;
        options.Password.RequireUppercase = false;
        options.Password.RequireNonAlphanumeric = false;
        options.Lockout.MaxFailedAccessAttempts = 5;
        options.Lockout.DefaultLockoutTimeSpan = TimeSpan.FromMinutes(5);
        options.User.RequireUniqueEmail = false;
        options.ClaimsIdentity.UserIdClaimType = PersonClaims.Id;
        options.ClaimsIdentity.RoleClaimType = PersonClaims.Role;
    }
}
