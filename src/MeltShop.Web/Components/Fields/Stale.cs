using MeltShop.Operations;
using MeltShop.Records.Writing;

namespace MeltShop.Web.Components.Fields;

/// <summary>Two people edited the same thing.</summary>
public static class Stale
{
    /// <summary>Whether somebody else was faster: read again, show theirs, keep what was typed.</summary>
    public static bool IsStale<TResult>(this Outcome<TResult> outcome)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        return outcome.Findings.Any(finding => finding.Code == SeenRow.Code);
    }
}
