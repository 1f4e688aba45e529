namespace Commission.Jobs.Photos;

/// <summary>What the bytes of a decoded pixel say.</summary>
internal enum PhotoSamples
{
    /// <summary>Brightness, one byte.</summary>
    Gray,

    /// <summary>Red, green, blue.</summary>
    Rgb,

    /// <summary>Brightness and two differences of color, as a JPEG keeps them (ITU-T T.871).</summary>
    YCbCr,
}

/// <summary>Takes the rows of a picture while it is decoded.</summary>
internal interface IPhotoRows
{
    /// <summary>Whether colors are wanted; otherwise brightness alone comes, which takes less time.</summary>
    bool InColor { get; }

    /// <summary>Begins a picture.</summary>
    /// <param name="width">Width as stored, pixels.</param>
    /// <param name="height">Height as stored, pixels.</param>
    /// <param name="samples">What its pixels are; <see cref="PhotoSamples.Gray"/> when no colors are wanted.</param>
    void Open(int width, int height, PhotoSamples samples);

    /// <summary>Adds pixels of a row. Each pixel of the picture comes once; in the passes of an interlaced picture a row comes in pieces.</summary>
    /// <param name="y">The row.</param>
    /// <param name="pixels">The pixels' bytes.</param>
    /// <param name="first">Place of the first pixel in the row.</param>
    /// <param name="step">Places from one pixel to the next.</param>
    void Add(int y, ReadOnlySpan<byte> pixels, int first = 0, int step = 1);
}
