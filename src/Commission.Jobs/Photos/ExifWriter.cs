using System.Buffers.Binary;

namespace Commission.Jobs.Photos;

/// <summary>Writes orientation into EXIF blocks (TIFF 6.0 layout; EXIF 2.32: tag 274).</summary>
internal static class ExifWriter
{
    /// <summary>A block that says how the picture is turned, and nothing else.</summary>
    /// <param name="orientation">1 to 8.</param>
    /// <returns>The block from its byte order on.</returns>
    public static byte[] Of(int orientation) =>
    [
        .. "MM\0*"u8, 0, 0, 0, 8,
        0, 1, ExifReader.Orientation >> 8, ExifReader.Orientation & 0xFF, 0, (byte)ExifReader.Short, 0, 0, 0, 1, 0, (byte)orientation, 0, 0,
        0, 0, 0, 0,
    ];

    /// <summary>A copy of a block for a picture that was turned upright. The picture's own table is changed; that of a thumbnail, which was not turned, stays.</summary>
    /// <param name="tiff">The block from its byte order on.</param>
    public static byte[] Upright(ReadOnlySpan<byte> tiff)
    {
        var block = tiff.ToArray();
        var (at, count) = ExifReader.MainTable(block, out var little);
        // All that bear the tag, of whatever type: another reader may look at the last, or take a type that is not taken here.
        for (var entry = block.AsSpan(at, count * ExifReader.EntryBytes); !entry.IsEmpty; entry = entry[ExifReader.EntryBytes..])
        {
            if (ExifReader.U16(entry, little) != ExifReader.Orientation)
                continue;
            Put16(entry[2..], ExifReader.Short, little);
            Put16(entry[4..], little ? 1 : 0, little);
            Put16(entry[6..], little ? 0 : 1, little);
            Put16(entry[8..], PhotoOrientation.Upright, little);
            Put16(entry[10..], 0, little);
        }

        return block;
    }

    private static void Put16(Span<byte> at, int value, bool little)
    {
        if (little)
            BinaryPrimitives.WriteUInt16LittleEndian(at, (ushort)value);
        else
            BinaryPrimitives.WriteUInt16BigEndian(at, (ushort)value);
    }
}
