using MeltShop.Metallurgy;
using MeltShop.Records.Writing;

namespace MeltShop.Records.Tests.Writing;

public sealed class WrittenTests
{
    [Fact]
    public void Refusal_WithoutAFinding_IsAFaultOfWhoRefuses()
    {
        Assert.Throws<ArgumentException>(() => Written<int>.Refused());
        Assert.NotNull(Written<int>.Refused(new Finding("kg", "mass.negative")));
    }

    [Fact]
    public void Recorded_WithAFinding_DidNotSucceed()
    {
        Assert.True(new Recorded<int>(7, [], IsRepeat: true).Succeeded);
        Assert.False(new Recorded<int>(0, [new Finding("kg", "mass.negative")], IsRepeat: false).Succeeded);
    }
}
