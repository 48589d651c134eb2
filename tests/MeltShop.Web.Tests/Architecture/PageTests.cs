using ArchUnitNET.Loader;
using MeltShop.Records;
using static ArchUnitNET.Fluent.ArchRuleDefinition;

namespace MeltShop.Web.Tests.Architecture;

/// <summary>Pages read by query classes and write by operations: they never reach into the database themselves.</summary>
public class PageTests
{
    private static readonly ArchUnitNET.Domain.Architecture Code = new ArchLoader().LoadAssemblies(typeof(Program).Assembly, typeof(RecordsContext).Assembly).Build();

    [Fact]
    public void Page_Any_LeavesTheDatabaseToQueriesAndOperations() => Assert.Empty(Violations("""^MeltShop\.Web\.(Pages|Components)"""));

    [Fact]
    public void Check_OfARoomThatDoesUseTheDatabase_FindsIt() => Assert.NotEmpty(Violations("""^MeltShop\.Web\.Composition"""));

    private static IEnumerable<string> Violations(string namespaces)
    {
        var rule = Types().That().ResideInNamespaceMatching(namespaces).Should().NotDependOnAny(typeof(RecordsContext));
        return rule.Evaluate(Code).Where(result => !result.Passed).Select(result => result.Description);
    }
}
