namespace MeltShop.Records.Tests.Databases;

/// <summary>A persistence test is written once and runs on every database.</summary>
public sealed class EveryProviderTests
{
    public static TheoryData<Type> Abstract => new(
        typeof(EveryProviderTests).Assembly.GetTypes().Where(t => t.IsAbstract && t.Name.EndsWith("Tests", StringComparison.Ordinal)));

    [Theory]
    [MemberData(nameof(Abstract))]
    public void PersistenceTest_Abstract_RunsOnEveryDatabase(Type tests)
    {
        foreach (var database in typeof(Database).Assembly.GetTypes().Where(t => t.IsPublic && t.IsSubclassOf(typeof(Database))))
        {
            var on = database.Name.Replace("Database", "", StringComparison.Ordinal);
            var run = tests.Assembly.GetType($"{tests.FullName}On{on}");
            Assert.True(run?.IsSubclassOf(tests) == true, $"{tests.Name} does not run on {on}: {tests.Name}On{on} is missing.");
            Assert.True(run!.IsAssignableTo(typeof(IClassFixture<>).MakeGenericType(database)), $"{run.Name} does not use a {database.Name}.");
        }
    }

    [Fact]
    public void PersistenceTest_ThatTakesADatabase_IsAbstractOrDerived()
    {
        var alone = typeof(EveryProviderTests).Assembly.GetTypes()
            .Where(t => !t.IsAbstract && t.BaseType == typeof(object))
            .Where(t => t.GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(IClassFixture<>)));

        Assert.Empty(alone);
        Assert.NotEmpty(Abstract);
    }
}
