using System.Security.Cryptography;
using System.Text;

namespace MeltShop.Web.Demo;

/// <summary>The entry key of a thing that the demo makes, the same at every start: what is there already is not made twice.</summary>
internal static class DemoKey
{
    public static Guid Of(string what) => new(SHA256.HashData(Encoding.UTF8.GetBytes($"demo/{what}")).AsSpan(0, 16));
}
