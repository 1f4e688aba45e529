using System.Collections.Immutable;
using System.Globalization;
using Commission.Source;

namespace Commission.Records;

/// <summary>What job this is: the head of page 1.</summary>
public sealed record JobHeader
{
    /// <summary>The job's own identifier.</summary>
    public required string Id { get; init; }

    /// <summary>Kind of work, for example <c>new installation</c>.</summary>
    public required string Work { get; init; }

    /// <summary>Date of the work as printed.</summary>
    public required string Date { get; init; }

    /// <summary>Day of issue as printed: of the moment that was stated, else of the work.</summary>
    public string Issued { get; init; } = "";

    /// <summary>Who issues the record.</summary>
    public IssuerNote Issuer { get; init; } = new("", "", "", "");

    /// <summary>What it replaces; null in the first record of a job.</summary>
    public RevisionNote? Revision { get; init; }

    /// <summary>Name of the site.</summary>
    public required string Site { get; init; }

    /// <summary>One line that names the system, for example <c>Split system, R-454B, 3 ton</c>.</summary>
    public string System { get; init; } = "";

    /// <summary>The crew's own notes; empty for none.</summary>
    public string Notes { get; init; } = "";

    /// <summary>Site, people, equipment and nameplate as label and value.</summary>
    public ImmutableArray<HeaderGroup> Groups { get => field.IsDefault ? [] : field; init; }
}

/// <summary>Who issues a record.</summary>
/// <param name="Name">The company, else the technician; empty when nobody is named.</param>
/// <param name="Address">Address of the company; empty when none is written.</param>
/// <param name="Certificate">Number of the company's certificate; empty when none is written.</param>
/// <param name="Logo">Name of the file with its sign; empty for none.</param>
public sealed record IssuerNote(string Name, string Address, string Certificate, string Logo);

/// <summary>What a corrected record replaces.</summary>
/// <param name="Number">2 for the first correction.</param>
/// <param name="Replaces">Digest of the record that it replaces.</param>
/// <param name="Reason">Why it was corrected.</param>
public sealed record RevisionNote(int Number, string Replaces, string Reason);

/// <summary>A titled group of header lines, for example the outdoor unit.</summary>
/// <param name="Title">Title of the group.</param>
/// <param name="Rows">Its lines in order.</param>
public sealed record HeaderGroup(string Title, ImmutableArray<LabelValue> Rows)
{
    /// <summary>Its lines in order.</summary>
    public ImmutableArray<LabelValue> Rows { get => field.IsDefault ? [] : field; init; } = Rows;
}

/// <summary>A line of the header: a label and what was written for it.</summary>
/// <param name="Label">Label in the trade's words.</param>
/// <param name="Value">Value as printed.</param>
/// <param name="At">Where it was written; null when it was worked out.</param>
public sealed record LabelValue(string Label, string Value, SourceLocation? At = null);

/// <summary>An input file as it was read.</summary>
/// <param name="Name">Name relative to the job's folder.</param>
/// <param name="Bytes">Length in bytes.</param>
/// <param name="Sha256">SHA-256 in lower-case hexadecimal.</param>
public sealed record InputFile(string Name, long Bytes, string Sha256)
{
    /// <summary>The length as printed, for example <c>12,345</c>.</summary>
    public string SizeText => Bytes.ToString("#,0", CultureInfo.InvariantCulture);
}

/// <summary>A node of the job file as read: key, canonical text, place. The record carries it so that it stands alone.</summary>
/// <param name="Key">Key of a mapping, or the position in a list from 1.</param>
/// <param name="Text">Canonical text of a value; null for a mapping or a list.</param>
/// <param name="At">Where it was written.</param>
/// <param name="Children">Entries of a mapping or items of a list.</param>
public sealed record InputNode(string Key, string? Text, SourceLocation? At, ImmutableArray<InputNode> Children)
{
    /// <summary>Entries of a mapping or items of a list.</summary>
    public ImmutableArray<InputNode> Children { get => field.IsDefault ? [] : field; init; } = Children;
}

/// <summary>A photo that belongs to the job; the picture itself stays with the crew, its hash proves which it is.</summary>
/// <param name="File">Name relative to the job's folder.</param>
/// <param name="Shows">What it shows.</param>
/// <param name="Taken">When it was taken, as printed; empty when unknown.</param>
/// <param name="Sha256">SHA-256 in lower-case hexadecimal.</param>
public sealed record PhotoNote(string File, string Shows, string Taken, string Sha256);
