using MeltShop.Web.Demo;
using MeltShop.Web.SignIn;

namespace MeltShop.Web.Composition;

/// <summary>What the one who started the program has to know: where it is, and how to get in.</summary>
internal sealed class StartMessage(ShopSettings settings, FirstAdministrator first)
{
    public void Print(IEnumerable<string> addresses)
    {
        var address = addresses.FirstOrDefault() ?? "the address above";
        Console.WriteLine();
        Console.WriteLine($"MeltShop is at {address}");
        Console.WriteLine($"Its data are in {settings.DataFolder}");
        if (settings.Demo) Console.WriteLine($"This is a demo: the sign-in page names its people, whose password is {DemoFoundry.Password}");
        if (first.Code is { } code) Console.WriteLine($"Nobody is in charge yet. Open {address}{SignInPaths.FirstAdministrator} and enter the code {code}");
        Console.WriteLine();
    }
}
