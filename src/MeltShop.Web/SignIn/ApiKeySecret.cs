using System.Security.Cryptography;
using System.Text;

namespace MeltShop.Web.SignIn;

/// <summary>A key that lets a machine in.</summary>
internal sealed record ApiKeySecret(string Text)
{
    public string Hash => HashOf(Text);

    public static ApiKeySecret Make() => new("ms_" + Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(32)));

    /// <summary>
    /// SHA-256, lower-case hexadecimal. Plain and fast is right here: a slow, salted hash protects what people make up and
    /// others guess; 256 random bits cannot be guessed, and every request has to be checked.
    /// </summary>
    public static string HashOf(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
