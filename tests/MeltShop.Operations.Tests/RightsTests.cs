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
    public void Room_WhatTheHeatPageCallsJudging_AreOperations() =>
        Assert.Subset(OperationsServices.All.Select(o => o.Name).ToHashSet(), Records.Reading.Heats.HeatPage.Judging.ToHashSet());

    /// <summary>Where the rows of an entry begin is found by that name, so that a page of the trail need not read them.</summary>
    [Fact]
    public void Room_NoCommandAndNoResult_HoldsAListCalledRows()
    {
        var (seen, open) = (new HashSet<Type>(), new Queue<Type>(OperationsServices.All.SelectMany(o => o.BaseType!.GetGenericArguments())));
        while (open.TryDequeue(out var type))
        {
            if (!seen.Add(type)) continue;
            foreach (var argument in type.GetGenericArguments()) open.Enqueue(argument);
            if (type.Assembly.GetName().Name!.StartsWith("MeltShop.", StringComparison.Ordinal)) foreach (var property in type.GetProperties()) Look(property);
        }

        Assert.True(seen.Count > 100);

        void Look(System.Reflection.PropertyInfo property)
        {
            var isHidden = property.IsDefined(typeof(System.Text.Json.Serialization.JsonIgnoreAttribute), false);
            var isList = property.PropertyType != typeof(string) && property.PropertyType.IsAssignableTo(typeof(System.Collections.IEnumerable));
            Assert.False(property.Name == "Rows" && isList && !isHidden, $"{property.DeclaringType!.Name}.{property.Name}");
            if (!isHidden) open.Enqueue(property.PropertyType);
        }
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
