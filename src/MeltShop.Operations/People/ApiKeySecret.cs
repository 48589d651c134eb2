using System.Security.Cryptography;
using System.Text;

namespace MeltShop.Operations.People;

/// <summary>A key that lets a machine in. Whoever asks for one sees <see cref="Text"/> once; the records only ever see the hash.</summary>
/// <param name="Text">The key as it is sent: 256 random bits.</param>
public sealed record ApiKeySecret(string Text)
{
    /// <summary>What is kept.</summary>
    public string Hash => HashOf(Text);

    public static ApiKeySecret Make() => new("ms_" + Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(32)));

    /// <summary>SHA-256, 64 lower-case hexadecimal digits. With 256 random bits there is nothing to guess that salt would guard.</summary>
    public static string HashOf(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    /// <summary>For a message or a log: without the key.</summary>
    public override string ToString() => nameof(ApiKeySecret);
}
