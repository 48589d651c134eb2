using MeltShop.Records.Writing;

namespace MeltShop.Records.Tests.Writing;

/// <summary>A mark is typed from a printed sheet: what is no mark is told from one that does not fit.</summary>
public sealed class TrailMarkTests
{
    private const string Hash = "9f3a00112233445566778899aabbccddeeff00112233445566778899aabbccdd";

    [Theory]
    [InlineData($"161-{Hash}", 161L, Hash)]
    [InlineData("161-9f3a001122334455", 161L, "9f3a001122334455")]
    [InlineData("  161 - 9F3A001122334455 ", 161L, "9f3a001122334455")]
    [InlineData("161 9f3a001122334455", 161L, "9f3a001122334455")]
    [InlineData("9f3a001122334455", null, "9f3a001122334455")]
    public void Mark_AsPrintedOrTyped_IsRead(string text, long? number, string hash) => Assert.Equal(new TrailMark(number, hash), TrailMark.Read(text));

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("161")]
    [InlineData("161-9f3a00112233445")] // fifteen digits say too little
    [InlineData($"161-{Hash}0")]
    [InlineData("161-9f3a00112233445g")]
    [InlineData("x161-9f3a001122334455")]
    [InlineData("161-9f3a001122334455 x")]
    public void Text_ThatIsNoMark_IsNotRead(string? text) => Assert.Null(TrailMark.Read(text));

    [Fact]
    public void Mark_Written_IsWhatIsReadAgain()
    {
        Assert.Equal($"161-{Hash}", new TrailMark(161, Hash).ToString());
        Assert.Equal("9f3a001122334455", new TrailMark(null, "9f3a001122334455").ToString());
    }

    [Fact]
    public void Mark_OfAnotherEntryOrHash_IsNotThere()
    {
        var mark = new TrailMark(161, Hash[..16]);

        Assert.True(mark.IsAt(161, Hash));
        Assert.True((mark with { Number = null }).IsAt(160, Hash));
        Assert.False(mark.IsAt(160, Hash));
        Assert.False(mark.IsAt(161, "0" + Hash[1..]));
        Assert.False((mark with { Number = null }).IsAt(161, Hash[1..] + "0"));
    }
}
