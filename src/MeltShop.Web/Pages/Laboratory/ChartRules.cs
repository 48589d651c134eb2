using MeltShop.Metallurgy.Statistics;

namespace MeltShop.Web.Pages.Laboratory;

/// <summary>The rules that a chart looks at, as they stand in an address: names between dots.</summary>
internal static class ChartRules
{
    /// <summary>The usual ones where the address says none, or nothing that is a rule. The first is always among them.</summary>
    public static IReadOnlySet<RunRule> Read(string? text)
    {
        var named = (text ?? "").Split('.').Select(name => Enum.TryParse<RunRule>(name, out var rule) && Enum.IsDefined(rule) ? rule : (RunRule?)null).OfType<RunRule>().ToHashSet();
        if (named.Count == 0) return RunRules.Usual;
        named.Add(RunRule.OneBeyondThree);
        return named;
    }

    public static string Write(IEnumerable<RunRule> rules) => string.Join('.', rules.Order());
}
