using MeltShop.Metallurgy;
using MeltShop.Operations;
using MeltShop.Web.SignIn;

namespace MeltShop.Web.Components.Fields;

/// <summary>What a command carries beside its subject.</summary>
/// <param name="By">Who acts.</param>
/// <param name="Key">The entry key of the form.</param>
/// <param name="ObservedAt">When it happened: now, for what is entered as it happens.</param>
public sealed record EntryMade(Acting By, Guid Key, DateTimeOffset ObservedAt);

/// <summary>Hands forms in for the person who acts here.</summary>
public sealed class HandingIn(ActingPerson person, TimeProvider clock, ILogger<HandingIn> log)
{
    /// <summary>
    /// Hands a form in, see <see cref="EntryForm.Send{TResult}"/>. A failure of the program is said on the form, which keeps its key
    /// and all that was typed.
    /// </summary>
    /// <param name="form">The form.</param>
    /// <param name="run">The operation.</param>
    /// <param name="check">Findings of the page itself, beyond what each field says.</param>
    /// <returns>The answer; null where nothing was sent, or the program failed.</returns>
    public async Task<Outcome<TResult>?> Send<TResult>(
        EntryForm form, Func<EntryMade, Task<Outcome<TResult>>> run, Func<IEnumerable<Finding>>? check = null)
    {
        ArgumentNullException.ThrowIfNull(form);
        try
        {
            return await form.Send(async key => await run(new(await person.GetAsync(), key, clock.GetUtcNow())), check);
        }
#pragma warning disable CA1031 // whatever kept it from being saved: the form says so and keeps what was typed
        catch (Exception fault)
#pragma warning restore CA1031
        {
            log.LogError(fault, "An entry could not be saved");
            form.Fail();
            return null;
        }
    }
}
