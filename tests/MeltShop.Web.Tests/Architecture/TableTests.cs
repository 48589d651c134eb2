using MeltShop.Records;
using MeltShop.Web.Tests.Running;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Architecture;

/// <summary>How rows and their tables are named.</summary>
public sealed class TableTests(WebApp app) : IClassFixture<WebApp>
{
    [Fact]
    public void Entity_Any_IsASealedClassOfTheRecordsRoomOrOfTheFramework() => Assert.All(
        Entities().Select(entity => entity.ClrType).Where(type => type.Assembly == typeof(RecordsContext).Assembly && !type.IsAbstract),
        type => Assert.True(type.IsSealed && type.Namespace!.StartsWith("MeltShop.Records.", StringComparison.Ordinal), type.FullName));

    [Fact]
    public void Table_Any_IsNamedInFullWordsAndHasOneEntity()
    {
        var tables = Entities().Select(entity => entity.GetTableName()).OfType<string>().ToList();

        Assert.All(tables, table => Assert.Matches("^([A-Z][a-z]+)+$", table));
        Assert.Equal(tables.Count, tables.Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    [Fact]
    public void Column_Any_IsNamedAsItsProperty() => Assert.All(
        Entities().SelectMany(entity => entity.GetProperties()),
        property => Assert.Equal(property.Name, property.GetColumnName()));

    private IEnumerable<IEntityType> Entities()
    {
        using var records = app.Services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContext();
        return [.. records.Model.GetEntityTypes().Where(entity => !entity.IsOwned())];
    }
}
