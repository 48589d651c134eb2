using Bunit;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Tests.Components.Fields;

public sealed class ChoiceFieldTests : ComponentTest
{
    [Theory]
    [InlineData(true, 1)]
    [InlineData(false, 0)]
    public void Keyboard_OfAFormThatAPressOpened_GoesOnHereWhereItIsTheFirst(bool takesFocus, int times)
    {
        Render<ChoiceField>(parameters => parameters
            .Add(p => p.Entry, new EntryForm().Choice("kind")).Add(p => p.Label, "Kind").Add(p => p.Choices, [new("coin", "coin")]).Add(p => p.TakesFocus, takesFocus));

        Assert.Equal(times, JSInterop.Invocations.Count(call => call.Identifier.EndsWith(".focus", StringComparison.Ordinal)));
    }
}
