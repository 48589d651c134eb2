using MeltShop.Operations;
using MeltShop.Records.People;

namespace MeltShop.Web.Demo;

/// <summary>The people of the demo at work: each thing is done by somebody whose role allows it.</summary>
internal sealed class DemoHands(IServiceProvider services, TimeProvider time)
{
    private readonly Dictionary<string, Acting> people = new() { [Role.Administrator] = Composition.ProgramItself.Acting };

    /// <summary>When the demo is made.</summary>
    public DateTimeOffset Now { get; } = time.GetUtcNow();

    /// <summary>From now on this person does what their role does.</summary>
    public void Welcome(string role, long id, string name) => people[role] = new Acting(id, name, "Demo", [role]);

    /// <summary>Name of the person of a role.</summary>
    public string Name(string role) => people[role].PersonName;

    public TOperation The<TOperation>()
        where TOperation : notnull => services.GetRequiredService<TOperation>();

    /// <summary>Does it, or finds it done by an earlier start.</summary>
    /// <exception cref="InvalidOperationException">It was refused: a fault of the demo data.</exception>
    public async Task<TResult> Do<TCommand, TResult>(Operation<TCommand, TResult> operation, string role, TCommand command)
        where TCommand : Command
    {
        var outcome = await operation.Run(people[role], command);
        return outcome.Succeeded
            ? outcome.Value
            : throw new InvalidOperationException($"The demo cannot do {operation.GetType().Name}: {string.Join("; ", outcome.Findings)}");
    }
}
