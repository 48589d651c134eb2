using MeltShop.Operations;
using MeltShop.Records;
using MeltShop.Records.Keeping;
using MeltShop.Web.Tests.Texts;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Components.Changes;

/// <summary>Whatever an outdated form has to tell has words.</summary>
public sealed class ChangeTextTests : IDisposable
{
    private static readonly HashSet<string> Keys = TextKeyTests.Keys("Changes");

    private readonly ServiceProvider services = new ServiceCollection()
        .AddMeltShopRecords(new() { Provider = RecordsProvider.Sqlite, ConnectionString = "Data Source=:memory:" }).BuildServiceProvider();

    public void Dispose() => services.Dispose();

    [Fact]
    public void Operation_OfAnyKind_HasWords()
    {
        var operations = typeof(Operation<,>).Assembly.GetTypes()
            .Where(type => type is { IsAbstract: false, BaseType.IsGenericType: true } && type.BaseType.GetGenericTypeDefinition() == typeof(Operation<,>))
            .Select(type => type.Name).ToList();

        Assert.True(operations.Count > 50);
        Assert.All(operations, name => Assert.Contains($"Operation.{name}", Keys));
    }

    [Fact]
    public void Column_OfWhatTwoPeopleMayEdit_HasWordsAndSoHaveItsValues()
    {
        using var db = services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContext();
        var columns = db.Model.GetRelationalModel().Tables
            .Where(table => table.EntityTypeMappings.Any(m => m.TypeBase.ClrType.IsAssignableTo(typeof(IVersioned)) && m.TypeBase.ClrType != typeof(Draft)))
            .SelectMany(table => table.Columns.Where(column => IsEdited(column.PropertyMappings[0].Property)))
            .ToList();

        Assert.True(columns.Count > 50);
        Assert.All(columns, c => Assert.True(Keys.Contains($"Column.{c.Name}") || Keys.Contains($"{c.Table.Name}.{c.Name}"), $"{c.Table.Name}.{c.Name}"));
        var values = columns.Select(c => Nullable.GetUnderlyingType(c.PropertyMappings[0].Property.ClrType) ?? c.PropertyMappings[0].Property.ClrType)
            .Where(type => type.IsEnum).Distinct().SelectMany(type => Enum.GetNames(type).Select(name => $"{type.Name}.{name}"));
        Assert.All(values, value => Assert.Contains(value, Keys));
    }

    /// <summary>Not what is set once and for all: keys, and what a row is born with.</summary>
    private static bool IsEdited(IProperty property) =>
        !property.IsPrimaryKey() && property.Name != nameof(IVersioned.Version) && property.PropertyInfo?.SetMethod is { } set
        && !set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(System.Runtime.CompilerServices.IsExternalInit));
}
