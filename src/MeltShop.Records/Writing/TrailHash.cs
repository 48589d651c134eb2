using System.Buffers.Binary;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using MeltShop.Records.Keeping;

namespace MeltShop.Records.Writing;

/// <summary>SHA-256 over every stored field of a trail row, the hash of the row before included.</summary>
public static class TrailHash
{
    /// <summary>Stands where the hash of a row before the first would stand.</summary>
    public static string BeforeTheFirst { get; } = new('0', 64);

    /// <summary>64 lower-case hexadecimal digits.</summary>
    public static string Of(TrailRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        string[] fields =
        [
            row.Number.ToString(CultureInfo.InvariantCulture),
            row.EntryKey.ToString("D"),
            row.Operation,
            row.PersonId.ToString(CultureInfo.InvariantCulture),
            row.PersonName,
            row.Station,
            row.EnteredAt.UtcTicks.ToString(CultureInfo.InvariantCulture),
            row.Payload,
            row.PreviousHash,
        ];
        Span<byte> length = stackalloc byte[sizeof(int)];
        foreach (var field in fields)
        {
            // With its length before it, no text can move from one field into the next unseen.
            var bytes = Encoding.UTF8.GetBytes(field);
            BinaryPrimitives.WriteInt32BigEndian(length, bytes.Length);
            hash.AppendData(length);
            hash.AppendData(bytes);
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }
}
