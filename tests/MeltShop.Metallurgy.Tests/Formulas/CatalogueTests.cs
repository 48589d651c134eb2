using System.Reflection;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Tests.Formulas;

public class CatalogueTests
{
    private static readonly Type[] Types = typeof(Formula).Assembly.GetExportedTypes();

    public static TheoryData<string> Keys => [.. Catalogue.All.Select(f => f.Key)];

    [Theory]
    [MemberData(nameof(Keys))]
    public void Formula_WorkedExample_IsReproduced(string key)
    {
        var example = Catalogue.All.Single(f => f.Key == key).Example;

        Assert.InRange(example.Run(), example.Expected - example.Tolerance, example.Expected + example.Tolerance);
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void Formula_Record_IsComplete(string key)
    {
        var formula = Catalogue.All.Single(f => f.Key == key);
        var member = formula.Code.Split('.');
        var type = Assert.Single(Types, t => t.Name == member[0]);

        Assert.NotEmpty(type.GetMember(member[1], BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance));
        Assert.NotEmpty(formula.Sources);
        Assert.NotEmpty(formula.Symbols);
        Assert.All([formula.Name, formula.Sentence, formula.Expression, formula.Unit, formula.Range, formula.Example.Text], t => Assert.NotEmpty(t.Trim()));
        Assert.All(formula.Sources, s => Assert.DoesNotContain("http", s.Citation, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Catalogue_EveryRecordOfTheRoom_IsListedOnce()
    {
        var records = Types
            .SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Static))
            .Where(p => p.PropertyType == typeof(Formula))
            .Select(p => ((Formula)p.GetValue(null)!).Key);

        Assert.Equal(records.Order(), Catalogue.All.Select(f => f.Key).Order());
        Assert.Distinct(Catalogue.All.Select(f => f.Key));
    }
}
