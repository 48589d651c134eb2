using MeltShop.Web.Components.Reading;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Tests.Components.Reading;

public sealed class SpanTextTests : ComponentTest
{
    [Theory]
    [InlineData(-3, "0\u00a0min")]
    [InlineData(89, "89\u00a0min")]
    [InlineData(90, "2\u00a0h")]
    [InlineData(1044, "17\u00a0h")]
    [InlineData(2880, "2 days")]
    public void Show_Span_IsSaidInTheUnitThatOneWouldSay(int minutes, string said) =>
        Assert.Equal(said, SpanText.Show(Services.GetRequiredService<IStringLocalizer<Web.Texts.States>>(), TimeSpan.FromMinutes(minutes)));
}
