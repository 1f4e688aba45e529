using System.Buffers.Binary;
using System.IO.Compression;

namespace Commission.Jobs.Photos;

/// <summary>
/// Decodes a PNG (ISO/IEC 15948) to its last row, a row at a time: chunks with their check sums, the runtime's inflate, the five filters,
/// the seven passes of an interlaced picture.
/// </summary>
internal static class PngPhoto
{
    internal const long MostPixels = 128_000_000;

    private const int MostExif = 64 * 1024;

    // First column and row, and the steps, of the passes of an interlaced picture.
    private static readonly (int X, int Y, int StepX, int StepY)[] Interlaced =
        [(0, 0, 8, 8), (4, 0, 8, 8), (0, 4, 4, 8), (2, 0, 4, 4), (0, 2, 2, 4), (1, 0, 2, 2), (0, 1, 1, 2)];

    private static readonly (int X, int Y, int StepX, int StepY)[] Straight = [(0, 0, 1, 1)];

    /// <summary>Decodes.</summary>
    /// <param name="source">The file, at its first byte.</param>
    /// <param name="rows">What takes its rows; null to look over its picture.</param>
    /// <exception cref="PhotoStopException">It cannot be decoded to its end.</exception>
    public static DecodedPhoto Decode(PhotoSource source, IPhotoRows? rows)
    {
        Span<byte> signature = stackalloc byte[8];
        source.ReadAll(signature);
        var chunks = new PngChunks(source);
        chunks.Next();
        var shape = chunks.Type == PngChunks.Header ? PngShape.Of(chunks.ReadWhole(13)) : throw Damaged();
        byte[] palette = [];
        byte[] transparency = [];
        byte[] exif = [];
        var seen = false;
        chunks.Next();
        while (chunks.Type != PngChunks.End)
        {
            switch (chunks.Type)
            {
                case PngChunks.Palette when chunks.Left is > 0 and <= 768 && chunks.Left % 3 == 0:
                    palette = chunks.ReadWhole(chunks.Left);
                    break;
                case PngChunks.Transparency when chunks.Left is > 0 and <= 256:
                    transparency = chunks.ReadWhole(chunks.Left);
                    break;
                case PngChunks.Data when !seen && rows is null:
                    seen = true;
                    chunks.SkipData();
                    continue;
                case PngChunks.Data when !seen:
                    seen = true;
                    if (shape.IsPalette && palette.Length == 0)
                        throw Damaged();
                    using (var data = new ZLibStream(new PngData(chunks), CompressionMode.Decompress))
                        ReadRows(data, shape, new PngColors(shape, palette, transparency, rows!.InColor), rows);
                    // The stream of data ends at the first chunk of another kind, which is looked at now.
                    chunks.SkipData();
                    continue;
                case PngChunks.Exif when chunks.Left <= MostExif:
                    exif = chunks.ReadWhole(chunks.Left);
                    break;
                default:
                    chunks.Skip();
                    break;
            }

            chunks.Next();
        }

        chunks.Skip();
        chunks.Close();
        return seen ? new DecodedPhoto("PNG", shape.Width, shape.Height, ExifReader.Read(exif), exif) : throw Damaged();
    }

    private static PhotoStopException Damaged() => new(PhotoFault.Damaged);

    private static void ReadRows(Stream data, PngShape shape, PngColors colors, IPhotoRows rows)
    {
        rows.Open(shape.Width, shape.Height, colors.Samples);
        var pair = new byte[2][];
        foreach (var (x, y, stepX, stepY) in shape.IsInterlaced ? Interlaced : Straight)
        {
            var width = (shape.Width - x + stepX - 1) / stepX;
            var height = (shape.Height - y + stepY - 1) / stepY;
            if (width <= 0 || height <= 0)
                continue;
            // A row with its filter before it; the row above the first is nothing.
            pair[0] = new byte[shape.RowBytes(width) + 1];
            pair[1] = new byte[pair[0].Length];
            var pixels = new byte[width * (colors.Samples == PhotoSamples.Gray ? 1 : 3)];
            for (var row = 0; row < height; row++)
            {
                var now = pair[row % 2];
                data.ReadExactly(now);
                Unfilter(now, pair[(row + 1) % 2].AsSpan(1), shape.PixelBytes);
                colors.Convert(now.AsSpan(1), pixels);
                rows.Add(y + (row * stepY), pixels, x, stepX);
            }
        }

        // Only now the inflate looks at the check sum behind the last row.
        _ = data.ReadByte();
    }

    // ISO/IEC 15948 clause 9.
    private static void Unfilter(Span<byte> filtered, ReadOnlySpan<byte> above, int pixel)
    {
        var row = filtered[1..];
        switch (filtered[0])
        {
            case 0:
                break;
            case 1:
                for (var i = pixel; i < row.Length; i++)
                    row[i] += row[i - pixel];
                break;
            case 2:
                for (var i = 0; i < row.Length; i++)
                    row[i] += above[i];
                break;
            case 3:
                for (var i = 0; i < row.Length; i++)
                    row[i] += (byte)(((i < pixel ? 0 : row[i - pixel]) + above[i]) / 2);
                break;
            case 4:
                for (var i = 0; i < row.Length; i++)
                    row[i] += i < pixel ? above[i] : Paeth(row[i - pixel], above[i], above[i - pixel]);
                break;
            default:
                throw Damaged();
        }
    }

    private static byte Paeth(byte left, byte above, byte corner)
    {
        var toLeft = Math.Abs(above - corner);
        var toAbove = Math.Abs(left - corner);
        var toCorner = Math.Abs(left + above - (2 * corner));
        return toLeft <= toAbove && toLeft <= toCorner ? left : toAbove <= toCorner ? above : corner;
    }

    /// <summary>The data chunks one behind the other, without what is around them.</summary>
    private sealed class PngData(PngChunks chunks) : Stream
    {
        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position
        {
            get => throw new NotSupportedException();
            set => throw new NotSupportedException();
        }

        public override int Read(Span<byte> buffer)
        {
            while (chunks.Type == PngChunks.Data && chunks.Left == 0)
                chunks.Next();
            return chunks.Type == PngChunks.Data ? chunks.Read(buffer) : 0;
        }

        public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}

/// <summary>The chunks of a PNG: length, kind, content, check sum (ISO/IEC 15948 clause 5.3).</summary>
internal sealed class PngChunks(PhotoSource source)
{
    public const uint Header = 0x49484452;
    public const uint Palette = 0x504C5445;
    public const uint Transparency = 0x74524E53;
    public const uint Data = 0x49444154;
    public const uint Exif = 0x65584966;
    public const uint End = 0x49454E44;

    private static readonly uint[] Table = [.. Enumerable.Range(0, 256).Select(n => Enumerable.Range(0, 8).Aggregate((uint)n, (c, _) => (c & 1) == 1 ? 0xEDB88320 ^ (c >> 1) : c >> 1))];

    private uint _sum = uint.MaxValue;
    private bool _isOpen;

    /// <summary>The chunk's four letters.</summary>
    public uint Type { get; private set; }

    /// <summary>Bytes of its content that were not read yet.</summary>
    public int Left { get; private set; }

    /// <summary>Goes to the next chunk; the content of this one was read.</summary>
    public void Next()
    {
        Span<byte> head = stackalloc byte[8];
        if (_isOpen)
            Close();
        source.ReadAll(head);
        var length = BinaryPrimitives.ReadUInt32BigEndian(head);
        if (length > int.MaxValue)
            throw new PhotoStopException(PhotoFault.Damaged);
        Left = (int)length;
        Type = BinaryPrimitives.ReadUInt32BigEndian(head[4..]);
        _isOpen = true;
        _sum = uint.MaxValue;
        Add(head[4..]);
    }

    /// <summary>Holds the check sum against the content, which was read.</summary>
    public void Close()
    {
        Span<byte> sum = stackalloc byte[4];
        source.ReadAll(sum);
        if (BinaryPrimitives.ReadUInt32BigEndian(sum) != ~_sum)
            throw new PhotoStopException(PhotoFault.Damaged);
    }

    /// <summary>Reads some of the content.</summary>
    public int Read(Span<byte> into)
    {
        var piece = into[..Math.Min(into.Length, Left)];
        if (piece.IsEmpty)
            return 0;
        var read = source.Read(piece);
        if (read == 0)
            throw new PhotoStopException(PhotoFault.Truncated);
        Left -= read;
        Add(piece[..read]);
        return read;
    }

    /// <summary>Reads the whole content of a chunk that has this many bytes.</summary>
    public byte[] ReadWhole(int length)
    {
        if (Left != length)
            throw new PhotoStopException(PhotoFault.Damaged);
        var content = new byte[length];
        for (var at = 0; at < length;)
            at += Read(content.AsSpan(at));
        return content;
    }

    /// <summary>Reads over the rest of the content.</summary>
    public void Skip()
    {
        Span<byte> rest = stackalloc byte[4096];
        while (Left > 0)
            Read(rest);
    }

    /// <summary>Reads over the data chunks that the picture did not need, to the chunk behind them.</summary>
    public void SkipData()
    {
        while (Type == Data)
        {
            Skip();
            Next();
        }
    }

    private void Add(ReadOnlySpan<byte> bytes)
    {
        var sum = _sum;
        foreach (var value in bytes)
            sum = Table[(byte)(sum ^ value)] ^ (sum >> 8);
        _sum = sum;
    }
}
