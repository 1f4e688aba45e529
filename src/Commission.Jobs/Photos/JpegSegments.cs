namespace Commission.Jobs.Photos;

/// <summary>
/// Copies a JPEG segment by segment (ITU-T T.81 annex B) to the end of its picture, its scan data byte for byte. Without what a camera or a program wrote
/// beside the picture: of the segments for applications only two stay, and only as much of them as says how colors were coded, JFIF (ITU-T T.871) and
/// Adobe's (segment APP14, ITU-T T.872). What lies between segments or behind the picture goes.
/// </summary>
internal static class JpegSegments
{
    private const byte Exif = 0xE1;
    private const byte Jfif = 0xE0;
    private const byte Adobe = 0xEE;
    private const byte Comment = 0xFE;
    private const byte Start = 0xD8;
    private const byte End = 0xD9;
    private const byte Scan = 0xDA;

    // Sign, version, two words of flags, the transform.
    private const int AdobeBytes = 12;

    // Version 1.01, pixels as wide as high, no thumbnail.
    private static readonly byte[] PlainJfif = [.. "JFIF\0"u8, 1, 1, 0, 0, 1, 0, 1, 0, 0];

    /// <summary>Copies a JPEG.</summary>
    /// <param name="source">The file, at its first byte.</param>
    /// <param name="keepAll">Whether all its segments stay as they are.</param>
    /// <returns>The copy; null when it has a segment that viewers do not know, such as that of another coding.</returns>
    /// <exception cref="PhotoStopException">The file ends before its picture does.</exception>
    public static byte[]? Copy(PhotoSource source, bool keepAll)
    {
        using var copy = new MemoryStream();
        var bytes = new Bytes(source);
        copy.Write([0xFF, Start]);
        var (marker, inScans, hasJfif) = (Marker(bytes), false, false);
        if (marker != Start)
            return null;
        marker = Marker(bytes);
        for (; marker != End; marker = marker == Scan ? ScanData(bytes, copy) : Marker(bytes))
        {
            if (marker is 0x01 or (>= 0xD0 and <= 0xD7))
                continue;
            if (!IsKnown(marker))
                return null;
            var content = bytes.Segment();
            inScans |= marker == Scan;
            if (!keepAll)
            {
                content = Stripped(marker, content, inScans || hasJfif, inScans);
                hasJfif |= marker == Jfif && !content.IsEmpty;
            }

            // No segment that matters is empty.
            if (!content.IsEmpty || keepAll)
                Write(copy, marker, content);
        }

        copy.Write([0xFF, End]);
        return copy.ToArray();
    }

    /// <summary>The same JPEG with an EXIF block; as it is when it has one.</summary>
    /// <param name="jpeg">A JPEG that was copied here or written by <see cref="JpegWriter"/>.</param>
    /// <param name="tiff">The block from its byte order on.</param>
    public static byte[] WithExif(byte[] jpeg, ReadOnlySpan<byte> tiff)
    {
        var behindJfif = 2;
        for (var at = 2; jpeg[at + 1] != Scan; at += Length(jpeg, at))
        {
            if (jpeg[at + 1] == Exif && jpeg.AsSpan(at + 4).StartsWith(ExifReader.Sign))
                return jpeg;
            if (at == 2 && jpeg[at + 1] == Jfif)
                behindJfif += Length(jpeg, at);
        }

        using var copy = new MemoryStream();
        copy.Write(jpeg.AsSpan(0, behindJfif));
        Write(copy, Exif, [.. ExifReader.Sign, .. tiff]);
        copy.Write(jpeg.AsSpan(behindJfif));
        return copy.ToArray();
    }

    private static int Length(byte[] jpeg, int at) => 2 + (jpeg[at + 2] << 8) + jpeg[at + 3];

    // Frames coded by Huffman's tables (baseline, extended, progressive), tables, scans, notes. Two that a viewer reads over can hide notes, too:
    // a height written afterwards and tables of arithmetic coding.
    private static bool IsKnown(byte marker) => marker is 0xC0 or 0xC1 or 0xC2 or 0xC4 or Scan or 0xDB or 0xDD || IsNote(marker);

    private static bool IsNote(byte marker) => marker is (>= 0xE0 and <= 0xEF) or Comment or 0xDC or 0xCC;

    // What stays of a segment. Colors are settled where the first scan begins.
    private static ReadOnlySpan<byte> Stripped(byte marker, ReadOnlySpan<byte> content, bool hasJfif, bool inScans) => marker switch
    {
        Jfif when !hasJfif && content.Length >= PlainJfif.Length && content.StartsWith("JFIF\0"u8) => PlainJfif,
        Adobe when !inScans && content.Length >= AdobeBytes && content.StartsWith("Adobe"u8) => content[..AdobeBytes],
        _ => IsNote(marker) ? [] : content,
    };

    private static void Write(MemoryStream copy, byte marker, ReadOnlySpan<byte> content)
    {
        copy.Write([0xFF, marker, (byte)((content.Length + 2) >> 8), (byte)(content.Length + 2)]);
        copy.Write(content);
    }

    // The next marker, over what does not belong there and the FF that may stand before a marker.
    private static byte Marker(Bytes bytes)
    {
        while (true)
        {
            while (bytes.Next() != 0xFF)
            {
            }

            byte code;
            do
                code = bytes.Next();
            while (code == 0xFF);
            if (code != 0)
                return code;
        }
    }

    // Copies coded data, in which FF 00 is a byte and FF D0 to FF D7 are places to begin again, up to the marker behind them.
    private static byte ScanData(Bytes bytes, MemoryStream copy)
    {
        while (true)
        {
            var value = bytes.Next();
            if (value != 0xFF)
            {
                copy.WriteByte(value);
                continue;
            }

            var fill = 0;
            for (; value == 0xFF; fill++)
                value = bytes.Next();
            if (value is not (0 or (>= 0xD0 and <= 0xD7)))
                return value;
            for (; fill > 0; fill--)
                copy.WriteByte(0xFF);
            copy.WriteByte(value);
        }
    }

    private sealed class Bytes(PhotoSource source)
    {
        private readonly byte[] _buffer = new byte[16 * 1024];
        private int _at;
        private int _end;

        public byte Next()
        {
            if (_at == _end)
            {
                (_at, _end) = (0, source.Read(_buffer));
                if (_end == 0)
                    throw new PhotoStopException(PhotoFault.Truncated);
            }

            return _buffer[_at++];
        }

        // The content of a segment, whose length counts its own two bytes.
        public ReadOnlySpan<byte> Segment()
        {
            var length = (Next() << 8) + Next();
            if (length < 2)
                throw new PhotoStopException(PhotoFault.Damaged);
            var content = new byte[length - 2];
            for (var i = 0; i < content.Length; i++)
                content[i] = Next();
            return content;
        }
    }
}
