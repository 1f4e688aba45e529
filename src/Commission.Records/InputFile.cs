using System.Collections.Immutable;
using System.Globalization;
using Commission.Source;

namespace Commission.Records;

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
