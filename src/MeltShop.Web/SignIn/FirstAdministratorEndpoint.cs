using MeltShop.Operations.People;
using MeltShop.Records.People;
using MeltShop.Web.Composition;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace MeltShop.Web.SignIn;

/// <summary>Takes the form with which the first administrator is made.</summary>
internal static class FirstAdministratorEndpoint
{
    /// <summary>They get every role: until they have added others, they do everything.</summary>
    public static async Task<RedirectHttpResult> AddAsync(
        FirstAdministrator first, AddPerson add, TimeProvider time,
        [FromForm] string? code, [FromForm] string? displayName, [FromForm] string? name, [FromForm] string? password)
    {
        if (!first.Take(code)) return Back("code");
        var added = await add.Run(ProgramItself.Acting, new(Guid.NewGuid(), time.GetUtcNow(), name?.Trim() ?? "", displayName?.Trim() ?? "", Role.All)
        {
            Password = password ?? "",
        });
        if (added.Succeeded) return TypedResults.LocalRedirect(SignInPaths.Page + QueryString.Create("name", name!.Trim()));
        first.GiveBack(code!);
        return Back(added.Findings[0].Path);

        // What was typed stays, but for the password and the code.
        RedirectHttpResult Back(string problem) => TypedResults.LocalRedirect(SignInPaths.FirstAdministrator + QueryString.Create(
            new Dictionary<string, string?> { ["problem"] = problem, ["name"] = name, ["displayName"] = displayName }));
    }
}
