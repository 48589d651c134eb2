using System.IO.Compression;

namespace MeltShop.Operations.Importing.Files;

/// <summary>Looks into a workbook before it is opened: what it says of its size counts for nothing, so every part is unpacked once and counted.</summary>
internal static class PackedParts
{
    /// <exception cref="SheetFault">Too many parts, too large when unpacked, or no sound archive.</exception>
    public static void Check(byte[] bytes)
    {
        try
        {
            using var archive = new ZipArchive(new MemoryStream(bytes, writable: false), ZipArchiveMode.Read);
            if (archive.Entries.Count > FileBounds.MostParts) throw SheetFault.Of("importFile.parts", FileBounds.MostParts);
            var most = Math.Min(FileBounds.MostUnpackedBytes, (long)bytes.Length * FileBounds.MostRatio);
            var unpacked = 0L;
            var part = new byte[64 * 1024];
            foreach (var entry in archive.Entries)
            {
                using var content = entry.Open();
                for (int read; (read = content.Read(part)) > 0;)
                {
                    unpacked += read;
                    if (unpacked > most) throw SheetFault.Of("importFile.bomb", most / 1024 / 1024);
                }
            }
        }
        catch (Exception fault) when (fault is InvalidDataException or IOException or NotSupportedException or ArgumentException)
        {
            throw SheetFault.Of("importFile.unreadable");
        }
    }
}
