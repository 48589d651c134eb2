using System.Collections;
using System.Reflection;

namespace MeltShop.Metallurgy.Tests.Formulas;

public class OutsideChecks
{
    private const BindingFlags Members = BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance;

    [Fact]
    public void Room_ChecksAgainstSources_AreAtLeastAHundred()
    {
        var tests = typeof(OutsideChecks).Assembly.GetTypes().SelectMany(t => t.GetMethods(Members))
            .Select(m => (Method: m, Printed: m.GetCustomAttribute<PrintedAttribute>())).Where(t => t.Printed is not null).ToList();

        Assert.All(tests, t => Assert.False(string.IsNullOrWhiteSpace(t.Printed!.Source)));
        Assert.All(tests, t => Assert.DoesNotContain("http", t.Printed!.Source, StringComparison.OrdinalIgnoreCase));
        var checks = tests.Sum(t => Cases(t.Method));
        TestContext.Current.TestOutputHelper?.WriteLine($"{checks} outside checks in {tests.Count} tests");
        Assert.True(checks >= 100, $"{checks} outside checks");
    }

    private static int Cases(MethodInfo method) =>
        method.GetCustomAttributes<InlineDataAttribute>().Count() is > 0 and var rows ? rows
            : method.GetCustomAttribute<MemberDataAttribute>() is { } data
                ? ((IEnumerable)method.DeclaringType!.GetProperty(data.MemberName, Members)!.GetValue(null)!).Cast<object>().Count()
                : 1;
}
