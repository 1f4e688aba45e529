using System.Collections.Concurrent;
using Commission.Documents.Plots;

namespace Commission.Documents.Media;

/// <summary>A photo as pages carry it: small enough for paper, without what the camera wrote beside it.</summary>
/// <param name="Jpeg">The JPEG as it goes into a PDF, which knows no turning of its own.</param>
/// <param name="Width">Width as stored, pixels.</param>
/// <param name="Height">Height as stored, pixels.</param>
/// <param name="Orientation">How it has to be turned to be seen upright: 1 to 8 (EXIF 2.32, tag 274), 1 for not at all.</param>
/// <param name="Turned">The JPEG as a browser shows it upright.</param>
public sealed record EmbeddedPhoto(ReadOnlyMemory<byte> Jpeg, int Width, int Height, int Orientation, ReadOnlyMemory<byte> Turned)
{
    /// <summary>Whether it is seen with its sides exchanged.</summary>
    internal bool IsAcross => Orientation >= 5;

    /// <summary>Width over height as it is seen.</summary>
    internal double Proportion => IsAcross ? (double)Height / Width : (double)Width / Height;
}

/// <summary>The photos of a record, each made ready when a page asks for it, and once. May be asked by several threads.</summary>
public sealed class PhotoShelf
{
    /// <summary>Width of the box that a photo is made ready for, pixels: a third of the text at 200 to the inch.</summary>
    public const int BoxWidth = 447;

    /// <summary>Height of that box, pixels: of a photo taken across.</summary>
    public const int BoxHeight = BoxWidth * 3 / 4;

    private readonly HashSet<string> _files;
    private readonly Func<string, EmbeddedPhoto>? _load;
    private readonly ConcurrentDictionary<string, Lazy<EmbeddedPhoto>> _ready = new(StringComparer.Ordinal);

    /// <summary>A shelf of photos.</summary>
    /// <param name="files">Their names as the record has them.</param>
    /// <param name="load">Makes one of them ready.</param>
    public PhotoShelf(IEnumerable<string> files, Func<string, EmbeddedPhoto> load)
    {
        _files = [.. files];
        _load = load;
    }

    private PhotoShelf() => _files = [];

    /// <summary>The shelf of a record whose pictures are not at hand: pages show what is written of them.</summary>
    public static PhotoShelf Empty { get; } = new();

    /// <summary>Makes everything ready ahead, for a program that has a processor to spare.</summary>
    public void Load()
    {
        foreach (var file in _files)
            _ = Photo(file);
    }

    /// <summary>Whether pages may ask for a photo.</summary>
    internal bool Knows(string file) => _load is null || _files.Contains(file);

    /// <summary>A photo; null where the pictures are not at hand.</summary>
    internal EmbeddedPhoto? Photo(string file) => _load is null ? null : _ready.GetOrAdd(file, static (name, make) => new Lazy<EmbeddedPhoto>(() => make(name)), _load).Value;
}

/// <summary>What pages show beside text and tables.</summary>
/// <param name="Figures">Figures of the record.</param>
/// <param name="Photos">Photos of the job.</param>
public sealed record PageMedia(FigureShelf Figures, PhotoShelf Photos);
