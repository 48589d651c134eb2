using System.Text.Json;
using MeltShop.Web.Components.Entries;

namespace MeltShop.Web.Tests.Components.Entries;

/// <summary>A finding that comes back to a form says what it said where it was found.</summary>
public sealed class EntryAnsweredTests
{
    [Fact]
    public void Argument_ThatWasAnInstant_IsOneAgainAndANameStaysAName()
    {
        var sent = JsonSerializer.SerializeToElement(new object[] { "OTF-2026-0002", "2026-11-27", new DateTimeOffset(2026, 11, 27, 1, 44, 13, TimeSpan.Zero), 1.5 });

        var finding = new EntryAnsweredEventArgs.Answered("observedAt", "time.beforeHeat", [.. sent.EnumerateArray()]).Finding;

        Assert.Equal(["OTF-2026-0002", "2026-11-27", new DateTimeOffset(2026, 11, 27, 1, 44, 13, TimeSpan.Zero), 1.5], finding.Arguments);
    }
}
