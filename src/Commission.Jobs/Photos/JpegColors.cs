using BitMiracle.LibJpeg.Classic;

namespace Commission.Jobs.Photos;

/// <summary>
/// Reads the colors of a JPEG of three or four components. The components come from the library as they were coded and are brought together here, each sample
/// spread evenly over the pixels it stands for, as a mean over areas asks for: the library's own spreading (version 1.5) gives wrong colors or none for some
/// of the ways in which cameras code fewer samples of chroma. Brightness and differences of color are handed on as they are, for their means are
/// those of the colors.
/// </summary>
internal sealed class JpegColors
{
    private const int BlockSide = 8;

    private readonly jpeg_decompress_struct _decoder;
    private readonly bool _isLight;

    private JpegColors(jpeg_decompress_struct decoder, bool isLight) => (_decoder, _isLight) = (decoder, isLight);

    /// <summary>Prepares for a JPEG of which the header was read.</summary>
    /// <param name="decoder">The decoder.</param>
    /// <param name="adobe">What Adobe's segment says: 0 colors as they are, 1 or 2 transformed; null when there is none.</param>
    /// <returns>What reads it; null when its components are no such colors.</returns>
    public static JpegColors? Of(jpeg_decompress_struct decoder, int? adobe) => decoder.Jpeg_color_space switch
    {
        // Programs that write Adobe's segment write light where ink would be expected.
        J_COLOR_SPACE.JCS_YCbCr or J_COLOR_SPACE.JCS_RGB or J_COLOR_SPACE.JCS_CMYK or J_COLOR_SPACE.JCS_YCCK => new JpegColors(decoder, adobe is not null),
        _ => null,
    };

    /// <summary>Decodes to the end.</summary>
    /// <param name="rows">What takes the rows.</param>
    /// <exception cref="PhotoStopException">It cannot be decoded to its end.</exception>
    public void Read(IPhotoRows rows)
    {
        _decoder.Raw_data_out = true;
        // Else some components would be decoded to twice their size.
        _decoder.Do_fancy_upsampling = false;
        _decoder.jpeg_start_decompress();
        var (width, height) = (_decoder.Output_width, _decoder.Output_height);
        var components = _decoder.Comp_info[.._decoder.Num_components];
        var (most, mostDown) = (components.Max(c => c.H_samp_factor), components.Max(c => c.V_samp_factor));
        // The blocks that are coded together, side by side as far as the picture reaches.
        var across = (width + (most * BlockSide) - 1) / (most * BlockSide);
        var planes = Array.ConvertAll(components, c => Enumerable.Range(0, c.V_samp_factor * BlockSide).Select(_ => new byte[across * c.H_samp_factor * BlockSide]).ToArray());
        var lines = mostDown * BlockSide;
        var together = new byte[width * components.Length];
        var pixels = components.Length == 3 ? together : new byte[width * 3];
        rows.Open(width, height, _decoder.Jpeg_color_space == J_COLOR_SPACE.JCS_YCbCr ? PhotoSamples.YCbCr : PhotoSamples.Rgb);
        for (var top = 0; top < height; top += lines)
        {
            if (_decoder.jpeg_read_raw_data(planes, lines) != lines)
                throw new PhotoStopException(PhotoFault.Damaged);
            for (var y = 0; y < lines && top + y < height; y++)
            {
                for (var i = 0; i < components.Length; i++)
                    Spread(planes[i][y * components[i].V_samp_factor / mostDown], components[i].H_samp_factor, most, together.AsSpan(i), components.Length);
                if (components.Length == 4)
                    Unprint(together, pixels);
                rows.Add(top + y, pixels);
            }
        }

        _decoder.jpeg_finish_decompress();
    }

    // A component's samples, of which there are some to so many pixels, into the pixels.
    private static void Spread(ReadOnlySpan<byte> samples, int some, int many, Span<byte> pixels, int step)
    {
        var (at, part) = (0, 0);
        for (var i = 0; i < pixels.Length; i += step)
        {
            pixels[i] = samples[at];
            part += some;
            if (part < many)
                continue;
            part -= many;
            at++;
        }
    }

    // Three inks and black, one behind the other, to light.
    private void Unprint(ReadOnlySpan<byte> inks, Span<byte> light)
    {
        var flip = _isLight ? 0 : 255;
        Span<int> three = stackalloc int[3];
        for (var x = 0; x < inks.Length / 4; x++)
        {
            var ink = inks.Slice(4 * x, 4);
            (three[0], three[1], three[2]) = _decoder.Jpeg_color_space == J_COLOR_SPACE.JCS_YCCK ? Untransformed(ink[0], ink[1] - 128, ink[2] - 128) : (ink[0], ink[1], ink[2]);
            for (var i = 0; i < 3; i++)
                light[(3 * x) + i] = (byte)((((three[i] ^ flip) * (ink[3] ^ flip)) + 127) / 255);
        }
    }

    // Inks coded as brightness and differences of their complements: ITU-T T.871 clause 7, in parts of 65,536.
    private static (int Cyan, int Magenta, int Yellow) Untransformed(int brightness, int blue, int red)
    {
        static int Complement(int brightness, int difference) => 255 - Math.Clamp(brightness + ((difference + 32_768) >> 16), 0, 255);
        return (Complement(brightness, 91_881 * red), Complement(brightness, (-22_554 * blue) - (46_802 * red)), Complement(brightness, 116_130 * blue));
    }
}
