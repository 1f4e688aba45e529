using System.Buffers.Binary;
using System.Globalization;
using System.Text;

namespace Commission.Jobs.Photos;

/// <summary>What a camera wrote beside the picture, as far as it is used here.</summary>
/// <param name="Orientation">1 to 8; 1 when it does not say.</param>
/// <param name="Taken">When the picture was taken; null when it does not say.</param>
internal readonly record struct ExifNotes(int Orientation, CameraTime? Taken)
{
    public static readonly ExifNotes None = new(1, null);
}

/// <summary>
/// Reads orientation and time out of an EXIF block (TIFF 6.0 layout; EXIF 2.32: tags 274, 306, 34665, 36867, 36881). Two tables are looked at, each
/// once; what lies outside the block is not there.
/// </summary>
internal static class ExifReader
{
    public const int Orientation = 0x0112;
    public const ushort Short = 3;
    public const int EntryBytes = 12;

    private const int Changed = 0x0132;
    private const int ExifTable = 0x8769;
    private const int Original = 0x9003;
    private const int OffsetOfOriginal = 0x9011;

    private const ushort Ascii = 2;
    private const ushort Long = 4;

    /// <summary>What stands before a block in a JPEG.</summary>
    public static ReadOnlySpan<byte> Sign => "Exif\0\0"u8;

    /// <summary>Reads a block.</summary>
    /// <param name="tiff">The block from its byte order on.</param>
    public static ExifNotes Read(ReadOnlySpan<byte> tiff)
    {
        var (at, count) = MainTable(tiff, out var little);
        var main = tiff.Slice(at, count * EntryBytes);
        var orientation = Find(main, Orientation, little) is [_, ..] turned && U16(turned[2..], little) == Short ? U16(turned[8..], little) : 1;
        var deeper = Pointed(tiff, Find(main, ExifTable, little), little);
        // The day of the last change is the day of the picture where a camera writes no other.
        var clock = Clock(Text(tiff, Find(deeper, Original, little), little)) ?? Clock(Text(tiff, Find(main, Changed, little), little));
        return new ExifNotes(
            orientation is >= 1 and <= 8 ? orientation : 1,
            clock is { } taken ? new CameraTime(taken, Offset(Text(tiff, Find(deeper, OffsetOfOriginal, little), little))) : null);
    }

    /// <summary>The entries of a block's first table, which is about the picture itself: none when it is no block.</summary>
    /// <param name="tiff">The block from its byte order on.</param>
    /// <param name="little">Whether the lowest byte comes first.</param>
    /// <returns>Place of the first entry, and how many of them lie inside the block.</returns>
    public static (int At, int Count) MainTable(ReadOnlySpan<byte> tiff, out bool little)
    {
        little = tiff.StartsWith("II*\0"u8);
        return tiff.Length >= 8 && (little || tiff.StartsWith("MM\0*"u8)) ? Table(tiff, U32(tiff[4..], little), little) : (0, 0);
    }

    private static (int At, int Count) Table(ReadOnlySpan<byte> tiff, uint at, bool little)
    {
        if (at > tiff.Length - 2)
            return (0, 0);
        var first = (int)at + 2;
        return (first, Math.Min(U16(tiff[(int)at..], little), (tiff.Length - first) / EntryBytes));
    }

    // The table that an entry points to.
    private static ReadOnlySpan<byte> Pointed(ReadOnlySpan<byte> tiff, ReadOnlySpan<byte> pointer, bool little)
    {
        if (pointer.IsEmpty || U16(pointer[2..], little) != Long)
            return [];
        var (at, count) = Table(tiff, U32(pointer[8..], little), little);
        return tiff.Slice(at, count * EntryBytes);
    }

    private static ReadOnlySpan<byte> Find(ReadOnlySpan<byte> table, int tag, bool little)
    {
        for (; !table.IsEmpty; table = table[EntryBytes..])
        {
            if (U16(table, little) == tag)
                return table[..EntryBytes];
        }

        return [];
    }

    private static string Text(ReadOnlySpan<byte> tiff, ReadOnlySpan<byte> entry, bool little)
    {
        if (entry.IsEmpty || U16(entry[2..], little) != Ascii)
            return "";
        var count = U32(entry[4..], little);
        var at = U32(entry[8..], little);
        if (count > 64)
            return "";
        if (count <= 4)
            return Encoding.ASCII.GetString(entry.Slice(8, (int)count)).TrimEnd('\0', ' ');
        return at > tiff.Length - (long)count ? "" : Encoding.ASCII.GetString(tiff.Slice((int)at, (int)count)).TrimEnd('\0', ' ');
    }

    private static DateTime? Clock(string text) =>
        DateTime.TryParseExact(text, "yyyy:MM:dd HH:mm:ss", CultureInfo.InvariantCulture, DateTimeStyles.None, out var clock) ? clock : null;

    private static TimeSpan? Offset(string text) =>
        text is [('+' or '-') and var sign, .. var digits] && TimeSpan.TryParseExact(digits, @"hh\:mm", CultureInfo.InvariantCulture, out var offset) && offset.TotalHours <= 14
            ? sign == '-' ? -offset : offset
            : null;

    public static ushort U16(ReadOnlySpan<byte> at, bool little) => little ? BinaryPrimitives.ReadUInt16LittleEndian(at) : BinaryPrimitives.ReadUInt16BigEndian(at);

    private static uint U32(ReadOnlySpan<byte> at, bool little) => little ? BinaryPrimitives.ReadUInt32LittleEndian(at) : BinaryPrimitives.ReadUInt32BigEndian(at);
}
