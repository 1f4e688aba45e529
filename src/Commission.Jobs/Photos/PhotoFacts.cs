namespace Commission.Jobs.Photos;

/// <summary>What is kept of a photo: never its bytes.</summary>
/// <param name="Format">JPEG or PNG.</param>
/// <param name="Width">Width in pixels, as the picture is to be seen.</param>
/// <param name="Height">Height in pixels, as the picture is to be seen.</param>
/// <param name="Print">What it looks like in 255 bits; null when it is one even tone, or too small to say.</param>
/// <param name="Taken">When the camera says that it was taken; null when it does not say.</param>
/// <param name="Sha256">SHA-256 of the file, lower-case hexadecimal.</param>
/// <param name="Bytes">Length of the file in bytes.</param>
public sealed record PhotoFacts(string Format, int Width, int Height, PicturePrint? Print, CameraTime? Taken, string Sha256, long Bytes);

/// <summary>A moment as a camera writes it: its own clock, and how far that is from UTC when the camera knows.</summary>
/// <param name="Clock">What its clock showed.</param>
/// <param name="Offset">The clock's distance from UTC; null when the camera did not write it.</param>
public readonly record struct CameraTime(DateTime Clock, TimeSpan? Offset);

/// <summary>What came of reading a file that was named as a photo.</summary>
/// <param name="Facts">The photo; null when it is none that can be read.</param>
/// <param name="Fault">Why not; null when it was read.</param>
internal sealed record PhotoReading(PhotoFacts? Facts, PhotoFault? Fault);

/// <summary>Why a file is no photo here, as the rest of a sentence that begins with its name.</summary>
/// <param name="Code">A short stable name of the fault.</param>
/// <param name="Found">What it is.</param>
/// <param name="Advice">What to do.</param>
internal sealed record PhotoFault(string Code, string Found, string Advice)
{
    private const string Again = "Copy it from the camera again: a copy was broken off or changed.";

    public static readonly PhotoFault Empty = new("photo-empty", "is empty.", "Copy the photo from the camera again.");

    public static readonly PhotoFault Text = new("photo-format", "is text, not a picture.", "Name the photo itself, a JPEG or PNG file.");

    public static readonly PhotoFault Unknown = new("photo-format", "is no picture that is read here.", "Photos are JPEG or PNG files: name one, or convert this file into one.");

    public static readonly PhotoFault Truncated = new("photo-damaged", "ends before its picture does.", Again);

    public static readonly PhotoFault Damaged = new("photo-damaged", "is damaged: its picture cannot be decoded to the end.", Again);

    public static readonly PhotoFault RareJpeg = new("photo-format", "is a JPEG of a rare kind (lossless or of more than 8 bits).", "Save it again as an ordinary JPEG.");

    public static readonly PhotoFault ManyScans = new("photo-size", "is a JPEG in far more passes than a camera writes.", "Save it again as an ordinary JPEG.");

    public static PhotoFault TooManyPixels(int width, int height, long most) => new(
        "photo-size",
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"has {width} × {height} pixels; at most {most / 1_000_000} million are read of such a file."),
        "Save it smaller: 2000 × 1500 pixels show everything.");

    public static PhotoFault Foreign(string what) => new("photo-format", $"is {what}, which is not read here.", "Take photos as JPEG (a setting of the camera), or convert this file to JPEG or PNG and name the new one.");
}

/// <summary>Ends the decoding of a photo.</summary>
internal sealed class PhotoStopException(PhotoFault fault) : Exception(fault.Found)
{
    public PhotoFault Fault { get; } = fault;
}
