using System.Buffers;
using System.Text;
using Commission.Messages;

namespace Commission.Jobs.Photos;

/// <summary>A picture that was decoded to its end, or of which the beginning was read.</summary>
/// <param name="Format">JPEG or PNG.</param>
/// <param name="Width">Width as stored, pixels.</param>
/// <param name="Height">Height as stored, pixels.</param>
/// <param name="Exif">What the camera wrote beside it.</param>
/// <param name="ExifBlock">The block that says so, from its byte order on; empty when there is none.</param>
/// <param name="PlainJpeg">Of a JPEG with colors that every viewer takes alike, what they are; null of another picture.</param>
internal sealed record DecodedPhoto(string Format, int Width, int Height, ExifNotes Exif, byte[] ExifBlock, PhotoSamples? PlainJpeg = null);

/// <summary>
/// Looks at a file that was named as a photo: what it is, whether it decodes to its end, what it looks like. The one place where strangers'
/// pictures are decoded. Bounded by construction: the file's length by the folder, pixels and passes by the decoders before they begin, memory by a few rows
/// (of a JPEG in passes, by its pixels); nothing that a file holds makes it throw.
/// </summary>
internal static class PhotoReader
{
    /// <summary>The longest file that is read as a photo, bytes.</summary>
    internal const long MostBytes = 64L * 1024 * 1024;

    private const int HeadBytes = 512;

    /// <summary>Reads a photo.</summary>
    /// <param name="stream">The file.</param>
    /// <param name="most">Its greatest length in bytes.</param>
    /// <returns>What is kept of it, or why it is none.</returns>
    /// <exception cref="IOException">The file itself cannot be read.</exception>
    public static PhotoReading Read(Stream stream, long most)
    {
        using var source = new PhotoSource(stream, most);
        var rows = new BrightnessRows();
        var (decoded, fault) = Decode(source, rows);
        if (decoded is null)
            return new PhotoReading(null, fault);
        var hash = source.Finish();
        var (width, height) = PhotoOrientation.Seen(decoded.Width, decoded.Height, decoded.Exif.Orientation);
        return new PhotoReading(new PhotoFacts(decoded.Format, width, height, rows.Print(decoded.Exif.Orientation), decoded.Exif.Taken, hash, source.Length), null);
    }

    /// <summary>Decodes a photo.</summary>
    /// <param name="source">The file, at its first byte.</param>
    /// <param name="rows">What takes its rows; null to read only what says what it is.</param>
    /// <returns>The photo, or why it is none.</returns>
    /// <exception cref="IOException">The file itself cannot be read.</exception>
    public static (DecodedPhoto? Photo, PhotoFault? Fault) Decode(PhotoSource source, IPhotoRows? rows)
    {
        var head = source.Head(HeadBytes);
        if (FormatOf(head) is { } fault)
            return (null, fault);
        var isPng = IsPng(head);
        return Guarded(() => isPng ? PngPhoto.Decode(source, rows) : JpegPhoto.Decode(source, rows));
    }

    /// <summary>Does work on the bytes of a file that may hold anything.</summary>
    /// <returns>What came of it, or why nothing did.</returns>
    /// <exception cref="IOException">The file itself cannot be read.</exception>
    public static (T? Result, PhotoFault? Fault) Guarded<T>(Func<T> work)
        where T : class?
    {
        try
        {
            return (work(), null);
        }
        catch (PhotoStopException stop)
        {
            return (null, stop.Fault);
        }
        // Two decoders with hundreds of ways to meet nonsense: whatever they make of it, the file is damaged and the program goes on.
        catch (Exception nonsense) when (nonsense is (not IOException) or EndOfStreamException)
        {
            return (null, PhotoFault.Damaged);
        }
    }

    private static bool IsPng(ReadOnlySpan<byte> head) => head.StartsWith<byte>([0x89, (byte)'P', (byte)'N', (byte)'G', (byte)'\r', (byte)'\n', 0x1A, (byte)'\n']);

    private static bool IsJpeg(ReadOnlySpan<byte> head) => head.StartsWith<byte>([0xFF, 0xD8, 0xFF]);

    // Null for a JPEG or PNG.
    private static PhotoFault? FormatOf(ReadOnlySpan<byte> head)
    {
        if (head.IsEmpty)
            return PhotoFault.Empty;
        if (IsPng(head) || IsJpeg(head))
            return null;
        if (ForeignFormats.Of(head) is { } what)
            return PhotoFault.Foreign(what);
        return IsText(head) ? PhotoFault.Text : PhotoFault.Unknown;
    }

    // UTF-16 tells itself by its mark; anything else is text when it is UTF-8 without control characters, the last character perhaps cut.
    private static bool IsText(ReadOnlySpan<byte> head)
    {
        if (head.StartsWith<byte>([0xFF, 0xFE]) || head.StartsWith<byte>([0xFE, 0xFF]))
            return true;
        while (!head.IsEmpty)
        {
            var state = Rune.DecodeFromUtf8(head, out var rune, out var length);
            if (state != OperationStatus.Done)
                return state == OperationStatus.NeedMoreData;
            if (Rune.IsControl(rune) && rune.Value is not ('\t' or '\r' or '\n'))
                return false;
            head = head[length..];
        }

        return true;
    }
}

/// <summary>Formats of pictures and other files that are named as photos by mistake, told by their first bytes.</summary>
internal static class ForeignFormats
{
    private static readonly (int At, byte[] Bytes, PhotosMessages.ForeignFormat Format)[] Signs =
    [
        (0, "GIF8"u8.ToArray(), PhotosMessages.ForeignFormat.Gif),
        (0, "BM"u8.ToArray(), PhotosMessages.ForeignFormat.Bmp),
        (0, "II*\0"u8.ToArray(), PhotosMessages.ForeignFormat.Tiff),
        (0, "MM\0*"u8.ToArray(), PhotosMessages.ForeignFormat.Tiff),
        (8, "WEBP"u8.ToArray(), PhotosMessages.ForeignFormat.Webp),
        (0, [0xFF, 0x0A], PhotosMessages.ForeignFormat.JpegXl),
        (4, "JXL "u8.ToArray(), PhotosMessages.ForeignFormat.JpegXl),
        (4, "jP  "u8.ToArray(), PhotosMessages.ForeignFormat.Jpeg2000),
        (0, [0xFF, 0x4F, 0xFF, 0x51], PhotosMessages.ForeignFormat.Jpeg2000),
        (0, "8BPS"u8.ToArray(), PhotosMessages.ForeignFormat.Layered),
        (0, "%PDF"u8.ToArray(), PhotosMessages.ForeignFormat.Pdf),
        (0, "PK\x03\x04"u8.ToArray(), PhotosMessages.ForeignFormat.Archive),
        (0, "<svg"u8.ToArray(), PhotosMessages.ForeignFormat.Svg),
        (0, [0x1A, 0x45, 0xDF, 0xA3], PhotosMessages.ForeignFormat.Video),
    ];

    // Brands of the ISO base media file format, 14496-12: pictures have their own, everything else is a video.
    private static readonly (string Brands, PhotosMessages.ForeignFormat Format)[] Media =
    [
        ("heic heix heim heis hevc hevx mif1 msf1", PhotosMessages.ForeignFormat.Heic),
        ("avif avis", PhotosMessages.ForeignFormat.Avif),
        ("crx ", PhotosMessages.ForeignFormat.Raw),
    ];

    /// <summary>What a file is; null when no sign is known.</summary>
    /// <param name="head">Its first bytes.</param>
    public static PhotosMessages.ForeignFormat? Of(ReadOnlySpan<byte> head)
    {
        if (head.Length >= 12 && head[4..].StartsWith("ftyp"u8))
        {
            var brand = Encoding.Latin1.GetString(head.Slice(8, 4));
            foreach (var (brands, format) in Media)
            {
                if (brands.Contains(brand, StringComparison.Ordinal))
                    return format;
            }

            return PhotosMessages.ForeignFormat.Video;
        }

        foreach (var (at, bytes, format) in Signs)
        {
            if (head.Length >= at + bytes.Length && head[at..].StartsWith(bytes))
                return format;
        }

        return null;
    }
}
