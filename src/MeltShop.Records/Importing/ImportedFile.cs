using MeltShop.Records.Keeping;

namespace MeltShop.Records.Importing;

/// <summary>By which way a file came.</summary>
public enum ImportWay
{
    /// <summary>Somebody chose it, looked at the preview and accepted it.</summary>
    Page,

    /// <summary>It lay in the watched folder.</summary>
    Folder,

    /// <summary>A machine with a key sent it.</summary>
    Sender,
}

/// <summary>A file whose samples were taken in, all of them in one transaction. Observed-at is when it came.</summary>
public sealed class ImportedFile : Fact
{
    /// <summary>The map that it was read by; null where the sender named everything itself.</summary>
    public long? ImportMapId { get; init; }

    public required ImportWay Way { get; init; }

    /// <summary>Of the file; of what a machine sent, the sender's own name of it.</summary>
    public required string Name { get; init; }

    /// <summary>Of its bytes, 64 lower-case hexadecimal digits.</summary>
    public required string Sha256 { get; init; }

    public required long Bytes { get; init; }

    /// <summary>Rows that it holds: new, known and refused ones.</summary>
    public required int Rows { get; init; }

    /// <summary>Rows that were taken in.</summary>
    public required int NewRows { get; init; }

    /// <summary>Rows of samples that were here already.</summary>
    public required int KnownRows { get; init; }

    public required int RefusedRows { get; init; }

    /// <summary>Samples that were taken in.</summary>
    public required int Samples { get; init; }

    /// <summary>The rows that were refused and why, as JSON, the first thousand reasons.</summary>
    public required string Refusals { get; init; }
}

/// <summary>Where an imported check of an instrument comes from, with the original text; kept as written.</summary>
public sealed class ImportedCheck
{
    public long Id { get; init; }
    public required long ImportedFileId { get; init; }
    public required long ControlSampleId { get; init; }

    /// <summary>Instrument and sender's number, or instrument, reference material and instant: unique, so no check comes in twice.</summary>
    public required string Identity { get; init; }

    /// <summary>Of its first row in the file, from 1.</summary>
    public required int Line { get; init; }

    /// <summary>Its rows, letter by letter.</summary>
    public required string Text { get; init; }
}

/// <summary>Where an imported sample comes from, with the original text; kept as written.</summary>
public sealed class ImportedSample
{
    public long Id { get; init; }
    public required long ImportedFileId { get; init; }
    public required long SampleId { get; init; }

    /// <summary>Instrument and sender's number, or instrument, heat, coin and instant: unique, so no sample comes in twice.</summary>
    public required string Identity { get; init; }

    /// <summary>Of its first row in the file, from 1.</summary>
    public required int Line { get; init; }

    /// <summary>Its rows, letter by letter.</summary>
    public required string Text { get; init; }
}
