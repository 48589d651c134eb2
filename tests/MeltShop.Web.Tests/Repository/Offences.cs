namespace MeltShop.Web.Tests.Repository;

internal static class Offences
{
    /// <summary>Passes when there is none; else the message lists them all.</summary>
    public static void None(IEnumerable<string> offences)
    {
        var list = offences.ToList();
        Assert.True(list.Count == 0, string.Join('\n', list));
    }
}
