using System.Globalization;
using Commission.Messages;

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

/// <summary>Why a file is no photo here.</summary>
/// <param name="Code">A short stable name of the fault.</param>
/// <param name="Found">What it is, from its name.</param>
/// <param name="Advice">What to do.</param>
internal sealed record PhotoFault(string Code, Func<TextValue, Message> Found, Message Advice)
{
    public static readonly PhotoFault Empty = new("photo-empty", PhotosMessages.Empty, PhotosMessages.CopyNext);

    public static readonly PhotoFault Text = new("photo-format", PhotosMessages.Text, PhotosMessages.TextNext);

    public static readonly PhotoFault Unknown = new("photo-format", PhotosMessages.Unknown, PhotosMessages.UnknownNext);

    public static readonly PhotoFault Truncated = new("photo-damaged", PhotosMessages.Truncated, PhotosMessages.CopyAgainNext);

    public static readonly PhotoFault Damaged = new("photo-damaged", PhotosMessages.Damaged, PhotosMessages.CopyAgainNext);

    public static readonly PhotoFault RareJpeg = new("photo-format", PhotosMessages.Rare, PhotosMessages.SaveAgainNext);

    public static readonly PhotoFault ManyScans = new("photo-size", PhotosMessages.ManyPasses, PhotosMessages.SaveAgainNext);

    public static PhotoFault TooManyPixels(int width, int height, long most) => new(
        "photo-size",
        file => PhotosMessages.TooManyPixels(file, new(string.Create(CultureInfo.InvariantCulture, $"{width} × {height}")), (int)(most / 1_000_000)),
        PhotosMessages.TooManyPixelsNext);

    public static PhotoFault Foreign(PhotosMessages.ForeignFormat format) => new("photo-format", file => PhotosMessages.Foreign(file, format), PhotosMessages.ForeignNext);
}

/// <summary>Ends the decoding of a photo.</summary>
internal sealed class PhotoStopException(PhotoFault fault) : Exception(fault.Code)
{
    public PhotoFault Fault { get; } = fault;
}
