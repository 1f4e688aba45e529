namespace Commission.Jobs.Photos;

/// <summary>A photo as it goes into a page.</summary>
/// <param name="Jpeg">A baseline or progressive JPEG of 8 bits, gray or of three colors that every viewer takes alike. Without metadata unless they were to stay.</param>
/// <param name="Width">Width as stored, pixels.</param>
/// <param name="Height">Height as stored, pixels.</param>
/// <param name="Orientation">1 to 8, as EXIF 2.32 counts them (tag 274): how whoever draws it has still to turn it. 1 unless the camera's own data were kept.</param>
/// <param name="IsGray">Whether it has one color component instead of three.</param>
public sealed record PagePhoto(byte[] Jpeg, int Width, int Height, int Orientation, bool IsGray)
{
    /// <summary>Width and height as it is to be seen, pixels.</summary>
    public (int Width, int Height) Seen => PhotoOrientation.Seen(Width, Height, Orientation);

    /// <summary>The same JPEG for a viewer that turns a picture as its EXIF block says, such as a browser: with a block that holds the orientation and nothing else.</summary>
    /// <returns>The JPEG; as it is when it need not be turned, or has its camera's block, which says the same.</returns>
    public byte[] JpegThatTurnsItself() => Orientation == PhotoOrientation.Upright ? Jpeg : JpegSegments.WithExif(Jpeg, ExifWriter.Of(Orientation));
}

/// <summary>
/// Makes of a job's photo, which may be a stranger's file of any size, what goes into a page. Pixels, passes and memory are bounded as in <see cref="PhotoReader"/>;
/// the same file gives the same bytes.
/// </summary>
public static class PhotoForPage
{
    /// <summary>The longest side of a box, pixels. Sums of a picture of that size need 100 MB; at 300 pixels an inch it is 17 cm.</summary>
    public const int MostSide = 2048;

    /// <summary>
    /// Makes a photo ready. A JPEG that fits into the box keeps its picture's data byte for byte and its orientation, which is handed on. Anything else (larger, a PNG,
    /// of four colors, of a coding or colors that viewers do not agree on) is turned upright, its transparent parts laid over white, made as small as the box, and
    /// compressed anew. Nothing that a camera wrote beside the picture goes along.
    /// </summary>
    /// <param name="open">Opens the file at its first byte; called one to three times, each stream is closed here.</param>
    /// <param name="mostWidth">Width of the box in pixels for the photo as it is to be seen, 1 to <see cref="MostSide"/>.</param>
    /// <param name="mostHeight">Height of the box in pixels, 1 to <see cref="MostSide"/>.</param>
    /// <param name="keepLocation">Whether what the camera wrote stays, the place among it: all segments of a JPEG that is kept, the EXIF block of another photo, which then says that it is upright.</param>
    /// <returns>The photo; null when the file cannot be decoded to its end, as reading the job has told.</returns>
    /// <exception cref="IOException">The file itself cannot be read.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The box is smaller or larger than a box can be.</exception>
    public static PagePhoto? Make(Func<Stream> open, int mostWidth, int mostHeight, bool keepLocation)
    {
        ArgumentNullException.ThrowIfNull(open);
        ArgumentOutOfRangeException.ThrowIfLessThan(mostWidth, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(mostWidth, MostSide);
        ArgumentOutOfRangeException.ThrowIfLessThan(mostHeight, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(mostHeight, MostSide);
        if (Decode(open, null) is not { } head)
            return null;
        var orientation = head.Exif.Orientation;
        var (width, height) = PhotoOrientation.Seen(head.Width, head.Height, orientation);
        if (head.PlainJpeg is not null && width <= mostWidth && height <= mostHeight && Kept(open, orientation, keepLocation) is { } kept)
            return kept;

        var rows = new ScaledRows(mostWidth, mostHeight, orientation);
        if (Decode(open, rows) is not { } photo)
            return null;
        var small = rows.Finish();
        var isGray = rows.Samples == PhotoSamples.Gray;
        var jpeg = JpegWriter.Write(small, rows.Samples, keepLocation ? ExifWriter.Upright(photo.ExifBlock) : []);
        return new PagePhoto(jpeg, small[0].Length / (isGray ? 1 : 3), small.Length, PhotoOrientation.Upright, isGray);
    }

    // The copy itself is decoded to its end: what goes into a page is known to be a picture.
    private static PagePhoto? Kept(Func<Stream> open, int orientation, bool keepLocation)
    {
        using var stream = open();
        using var source = new PhotoSource(stream, PhotoReader.MostBytes);
        if (PhotoReader.Guarded(() => JpegSegments.Copy(source, keepLocation)).Result is not { } copy)
            return null;
        return Decode(() => new MemoryStream(copy, writable: false), new BrightnessRows()) is { PlainJpeg: { } samples } photo
            ? new PagePhoto(copy, photo.Width, photo.Height, orientation, samples == PhotoSamples.Gray)
            : null;
    }

    private static DecodedPhoto? Decode(Func<Stream> open, IPhotoRows? rows)
    {
        using var stream = open();
        using var source = new PhotoSource(stream, PhotoReader.MostBytes);
        return PhotoReader.Decode(source, rows).Photo;
    }
}
