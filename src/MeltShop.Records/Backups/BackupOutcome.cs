using MeltShop.Records.Writing;

namespace MeltShop.Records.Backups;

/// <summary>What a backup or a restore came to. Anything but <see cref="Done"/> leaves everything as it was.</summary>
public enum BackupState
{
    Done,

    /// <summary>There is a file where the backup or the database should be written: nothing is ever written over.</summary>
    Occupied,

    /// <summary>There is no file to read.</summary>
    Missing,

    /// <summary>The file is no database of this program, or of a later version of it.</summary>
    Foreign,

    /// <summary>The trail of the copy does not hold, or does not end where it did when the copy was made.</summary>
    Broken,
}

/// <param name="State">Whether it was done.</param>
/// <param name="Trail">What the check of the copy found; null where it did not come to that.</param>
/// <param name="Detail">What is foreign or broken, where it can be said.</param>
public sealed record BackupOutcome(BackupState State, TrailReport? Trail = null, string? Detail = null);
