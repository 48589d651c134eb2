using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Tests.Components.Fields;

public sealed class SeenVersionTests
{
    private static readonly Guid First = Guid.NewGuid();
    private static readonly Guid Second = Guid.NewGuid();
    private static readonly Guid Third = Guid.NewGuid();

    [Fact]
    public void Arrived_WhileNobodyRefused_KeepsWhatThePersonSaw()
    {
        var seen = new SeenVersion();
        seen.Open(First);
        seen.Arrived(Second);

        Assert.Equal(First, seen.Value);
    }

    [Fact]
    public void Arrived_AfterARefusal_IsSeenOnceAndLaterChangesAreToldAgain()
    {
        var seen = new SeenVersion();
        seen.Open(First);
        seen.Outdated();
        seen.Arrived(First);
        Assert.Equal(First, seen.Value);
        seen.Arrived(Second);
        seen.Arrived(Third);

        Assert.Equal(Second, seen.Value);
    }
}
