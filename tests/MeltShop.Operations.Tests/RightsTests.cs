using MeltShop.Operations.Tests.Shops;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.People;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Tests;

public sealed class RightsTests
{
    private static readonly Recorder Recorder = new(null!, null!, null!);

    public static TheoryData<Type> Operations => [.. OperationsServices.All];

    [Theory]
    [MemberData(nameof(Operations))]
    public void Operation_AnyOfThem_SaysWhoMay(Type operation)
    {
        var needs = operation.GetConstructors().Single().GetParameters();
        var made = Activator.CreateInstance(operation, [.. needs.Select(p => p.ParameterType == typeof(Recorder) ? (object)Recorder : null)]);
        var roles = (IReadOnlyList<string>)operation.GetProperty("Roles")!.GetValue(made)!;

        Assert.NotEmpty(roles);
        Assert.All(roles, role => Assert.Contains(role, Role.All));
    }

    [Fact]
    public void Room_EveryClassThatTakesARecorder_IsAnOperation()
    {
        var writers = typeof(OperationsServices).Assembly.GetTypes()
            .Where(t => !t.IsAbstract && t.GetConstructors().Any(c => c.GetParameters().Any(p => p.ParameterType == typeof(Recorder))));

        Assert.Equal(OperationsServices.All.OrderBy(t => t.Name), writers.OrderBy(t => t.Name));
    }

    [Fact]
    public void Room_EveryCommand_BelongsToAnOperation()
    {
        var commands = typeof(Command).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Command)));
        var taken = OperationsServices.All.Select(o => o.BaseType!.GetGenericArguments()[0]);

        Assert.Equal(commands.OrderBy(t => t.FullName), taken.OrderBy(t => t.FullName));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Operation_WithoutTheRight_IsRefusedAndNothingIsKept(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        await using var db = shop.Db();
        var before = db.TrailRows.Count();

        var outcome = await Shop.Do(shop.Get<ChangePrice>(), shop.Melter, new(Guid.NewGuid(), shop.Now, shop.SteelId, Guid.Empty, 1));

        var finding = Assert.Single(outcome.Findings);
        Assert.Equal(("", "right.missing"), (finding.Path, finding.Code));
        Assert.Equal(before, db.TrailRows.Count());
    }
}
