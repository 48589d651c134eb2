using MeltShop.Operations.Tests.Importing.Corrupted;

namespace MeltShop.Operations.Tests.Importing;

/// <summary>A seeded share of what the long suite tries.</summary>
public sealed class CorruptionTests
{
    private const int First = 1, Cases = 1500;

    [Fact]
    public async Task ReadFile_OfDamagedFiles_AnswersEachWithWhatItHoldsOrWhyItCannotBeRead()
    {
        TestContext.Current.TestOutputHelper!.WriteLine($"seeds {First} to {First + Cases - 1}");
        var (whole, some, refused) = (0, 0, 0);
        for (var seed = First; seed < First + Cases; seed++)
        {
            var (file, fault) = await Corruption.Read(seed);
            Assert.True(fault is null, $"seed {seed}: {fault}");
            if (file!.Refusal is not null) refused++;
            else if (file.Faults.Count == 0) whole++;
            else some++;
        }

        // The damage is neither so great nor so small that nothing would be tried.
        TestContext.Current.TestOutputHelper.WriteLine($"{whole} read whole, {some} with refused rows, {refused} refused");
        Assert.All([whole, some, refused], count => Assert.True(count > Cases / 100));
    }
}
