using System.Globalization;
using BitMiracle.LibJpeg.Classic;

namespace Commission.Jobs.Photos;

/// <summary>
/// Decodes a JPEG to its last row, a row at a time; its colors, or of colors in YCbCr the brightness alone. What a viewer would gloss over, missing or impossible
/// codes, ends it. (The library can decode to a half, a quarter or an eighth of the size, but its version 1.5 gives wrong brightness there.)
/// </summary>
internal static class JpegPhoto
{
    /// <summary>Pixels of a picture written in one pass, which needs memory for a few rows only.</summary>
    internal const long MostPixels = 128_000_000;

    // A picture in several passes is held as a whole, about 8 bytes a pixel at worst.
    internal const long MostPixelsInPasses = 36_000_000;

    // A camera writes one, a program that saves for the web ten.
    private const int MostPasses = 40;

    private const int MarkerOfExif = 0xE1;

    /// <summary>Decodes.</summary>
    /// <param name="source">The file, at its first byte.</param>
    /// <param name="rows">What takes its rows; null to read no further than to the first of them.</param>
    /// <exception cref="PhotoStopException">It cannot be decoded to its end.</exception>
    public static DecodedPhoto Decode(PhotoSource source, IPhotoRows? rows)
    {
        var errors = new StrictErrors();
        var decoder = new jpeg_decompress_struct(errors) { Src = new Bytes(source) };
        var exif = ExifNotes.None;
        byte[] block = [];
        decoder.jpeg_set_marker_processor(MarkerOfExif, d => ReadExif(d, ref exif, ref block));
        decoder.jpeg_read_header(true);
        var (width, height) = (decoder.Image_width, decoder.Image_height);
        var most = decoder.jpeg_has_multiple_scans() ? MostPixelsInPasses : MostPixels;
        if ((long)width * height > most)
            throw new PhotoStopException(PhotoFault.TooManyPixels(width, height, most));
        if (rows is not null)
            ReadRows(decoder, rows, errors);
        return new DecodedPhoto("JPEG", width, height, exif, block, Plain(decoder, errors));
    }

    private static void ReadRows(jpeg_decompress_struct decoder, IPhotoRows rows, StrictErrors errors)
    {
        if (rows.InColor && JpegColors.Of(decoder, errors.AdobeTransform) is { } inColor)
        {
            inColor.Read(rows);
            return;
        }

        if (decoder.Jpeg_color_space is J_COLOR_SPACE.JCS_YCbCr or J_COLOR_SPACE.JCS_GRAYSCALE)
            decoder.Out_color_space = J_COLOR_SPACE.JCS_GRAYSCALE;
        decoder.jpeg_start_decompress();

        rows.Open(decoder.Output_width, decoder.Output_height, PhotoSamples.Gray);
        var colors = decoder.Output_components;
        byte[][] row = [new byte[decoder.Output_width * colors]];
        var brightness = colors == 1 ? row[0] : new byte[decoder.Output_width];
        while (decoder.Output_scanline < decoder.Output_height)
        {
            var y = decoder.Output_scanline;
            if (decoder.jpeg_read_scanlines(row, 1) != 1)
                throw new PhotoStopException(PhotoFault.Damaged);
            if (colors > 1)
                Means(row[0], colors, brightness);
            rows.Add(y, brightness);
        }

        decoder.jpeg_finish_decompress();
    }

    // What the samples are where every viewer says the same: three colors are brightness and differences unless Adobe's segment says otherwise. Where that and
    // JFIF contradict each other, viewers differ.
    private static PhotoSamples? Plain(jpeg_decompress_struct decoder, StrictErrors errors) => (decoder.Num_components, errors.AdobeTransform) switch
    {
        (1, _) => PhotoSamples.Gray,
        (3, null or 1) when decoder.Jpeg_color_space == J_COLOR_SPACE.JCS_YCbCr => PhotoSamples.YCbCr,
        (3, 0) when decoder.Jpeg_color_space == J_COLOR_SPACE.JCS_RGB && !errors.IsJfif => PhotoSamples.Rgb,
        _ => null,
    };

    private static void Means(ReadOnlySpan<byte> row, int colors, Span<byte> brightness)
    {
        for (var x = 0; x < brightness.Length; x++)
        {
            var sum = 0;
            for (var i = 0; i < colors; i++)
                sum += row[(x * colors) + i];
            brightness[x] = (byte)(sum / colors);
        }
    }

    // The first EXIF block counts; a block has at most 64 kB, and only that one is remembered.
    private static bool ReadExif(jpeg_decompress_struct decoder, ref ExifNotes exif, ref byte[] counting)
    {
        decoder.Src.GetTwoBytes(out var length);
        if (length < 2)
            throw new PhotoStopException(PhotoFault.Damaged);
        var block = new byte[length - 2];
        for (var i = 0; i < block.Length; i++)
        {
            decoder.Src.GetByte(out var value);
            block[i] = (byte)value;
        }

        if (exif == ExifNotes.None && block.AsSpan().StartsWith(ExifReader.Sign))
        {
            counting = block[ExifReader.Sign.Length..];
            exif = ExifReader.Read(counting);
        }

        return true;
    }

    private sealed class Bytes(PhotoSource source) : jpeg_source_mgr
    {
        private readonly byte[] _buffer = new byte[16 * 1024];

        public override void init_source() => initInternalBuffer(_buffer, 0);

        public override bool fill_input_buffer()
        {
            var read = source.Read(_buffer);
            if (read == 0)
                throw new PhotoStopException(PhotoFault.Truncated);
            initInternalBuffer(_buffer, read);
            return true;
        }
    }

    private sealed class StrictErrors : jpeg_error_mgr
    {
        private J_MESSAGE_CODE _code;
        private int _passes;
        private string _words = "";

        /// <summary>What Adobe's segment says of the colors: 0 as they are, 1 or 2 transformed; null when there is none.</summary>
        public int? AdobeTransform { get; private set; }

        /// <summary>Whether it says that it is a JFIF file, in which three colors are brightness and differences.</summary>
        public bool IsJfif { get; private set; }

        public override void error_exit() => throw new PhotoStopException(
            Code() is J_MESSAGE_CODE.JERR_SOF_UNSUPPORTED or J_MESSAGE_CODE.JERR_BAD_PRECISION or J_MESSAGE_CODE.JERR_CONVERSION_NOTIMPL or J_MESSAGE_CODE.JERR_NOTIMPL
                ? PhotoFault.RareJpeg
                : PhotoFault.Damaged);

        public override void emit_message(int msg_level)
        {
            switch (Code())
            {
                case J_MESSAGE_CODE.JTRC_SOS when ++_passes > MostPasses:
                    throw new PhotoStopException(PhotoFault.ManyScans);
                case J_MESSAGE_CODE.JWRN_HIT_MARKER or J_MESSAGE_CODE.JWRN_HUFF_BAD_CODE or J_MESSAGE_CODE.JWRN_ARITH_BAD_CODE
                    or J_MESSAGE_CODE.JWRN_MUST_RESYNC or J_MESSAGE_CODE.JWRN_NOT_SEQUENTIAL or J_MESSAGE_CODE.JWRN_JPEG_EOF:
                    throw new PhotoStopException(PhotoFault.Damaged);
                case J_MESSAGE_CODE.JTRC_JFIF:
                    IsJfif = true;
                    break;
                case J_MESSAGE_CODE.JTRC_ADOBE:
                    AdobeTransform = int.Parse(_words, CultureInfo.InvariantCulture);
                    break;
                default:
                    break;
            }
        }

        public override void output_message()
        {
        }

        // The library tells the code only while it looks for the words, and what it found only in them: version, flags, transform.
        protected override string GetMessageText(int code)
        {
            _code = (J_MESSAGE_CODE)code;
            return _code == J_MESSAGE_CODE.JTRC_ADOBE ? "{3}" : "";
        }

        private J_MESSAGE_CODE Code()
        {
            _words = format_message();
            return _code;
        }
    }
}
