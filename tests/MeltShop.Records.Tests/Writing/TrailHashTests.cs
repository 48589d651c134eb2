using MeltShop.Records.Keeping;
using MeltShop.Records.Writing;

namespace MeltShop.Records.Tests.Writing;

/// <summary>Whoever checks the trail with a program of their own has to come to the same hash.</summary>
public sealed class TrailHashTests
{
    [Fact]
    public void Hash_OfARow_IsThatOfItsFieldsWithTheirLengths() =>
        // Worked out by another program: SHA-256 over the nine fields in order, each in UTF-8 behind its length in four bytes, the highest first.
        Assert.Equal("3f152ce0ef7beb8aa48986201c32fe7e20beb7e94beecfa6c5c903c0cf676810", TrailHash.Of(Row("Ida", "Lab")));

    [Fact]
    public void Letter_ThatMovesIntoTheNextField_ChangesTheHash() => Assert.NotEqual(TrailHash.Of(Row("Ida", "Lab")), TrailHash.Of(Row("IdaL", "ab")));

    private static TrailRow Row(string person, string station) => new()
    {
        Number = 7, EntryKey = new("0a8e5f9e-3c7b-4a4e-9d0e-5d8f3b1c2a77"), Operation = "WeighIn", PersonId = 12, PersonName = person, Station = station,
        EnteredAt = new(639_000_000_000_000_000, TimeSpan.Zero), Payload = "{}", PreviousHash = TrailHash.BeforeTheFirst, Hash = "",
    };
}
