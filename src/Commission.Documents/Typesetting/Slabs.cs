using Commission.Documents.Markup;
using Commission.Documents.Media;
using Commission.Documents.Pictures;
using PdfSharp.Drawing;

namespace Commission.Documents.Typesetting;

/// <summary>One line of a paragraph, with the mark of a list item when it is the item's first.</summary>
internal sealed class LineSlab : Slab
{
    private readonly TextLine _line;
    private readonly double _size;
    private readonly double _indent;

    public LineSlab(TextLine line, double leading, double size, double indent)
    {
        _line = line;
        _size = size;
        _indent = indent;
        Height = leading;
    }

    /// <summary>The mark of a list item, right-aligned before the text; null for none.</summary>
    public TextBlock? Mark { get; init; }

    public override void Draw(Ink ink, double x, double y)
    {
        var baseline = Baseline(y, Height, _size);
        if (Mark is not null)
        {
            var mark = Mark.Lines(double.MaxValue)[0];
            ink.Open(new TagStart("Lbl"));
            ink.Line(mark, x + _indent - mark.Width - 4, baseline);
            ink.Close();
            ink.Open(new TagStart("LBody"));
        }

        ink.Line(_line, x + _indent, baseline);
    }

    /// <summary>Where the letters stand in a line: what is left of the leading is shared above and below.</summary>
    public static double Baseline(double top, double leading, double size) => top + ((leading - size) / 2) + (size * 0.78);
}

/// <summary>A horizontal rule.</summary>
internal sealed class RuleSlab : Slab
{
    private readonly double _width;
    private readonly Rgb _color;
    private readonly double _thickness;

    public RuleSlab(double width, Rgb color, double thickness)
    {
        _width = width;
        _color = color;
        _thickness = thickness;
        Height = thickness;
    }

    public override void Draw(Ink ink, double x, double y)
    {
        ink.BeginArtifact();
        ink.Rule(x, y + Height - (_thickness / 2), x + _width, _color, _thickness);
        ink.EndArtifact();
    }
}

/// <summary>A line to sign on, with the signature field that stands over it.</summary>
internal sealed class SignatureSlab : Slab
{
    /// <summary>Room to sign in where nothing presses, in points.</summary>
    public const double Room = 30;

    private const double Thickness = 0.5;

    private readonly double _width;
    private readonly string _name;
    private readonly string _statement;
    private readonly double _room;

    public SignatureSlab(double width, string name, string statement, double room)
    {
        _room = room;
        _width = width;
        _name = name;
        _statement = statement;
        Height = room + Thickness;
    }

    public override void Draw(Ink ink, double x, double y)
    {
        ink.BeginArtifact();
        ink.Rule(x, y + Height - (Thickness / 2), x + _width, Look.Ink, Thickness);
        ink.EndArtifact();
        ink.SignatureField(_name, _statement, new XRect(x, y, _width, _room));
    }
}

/// <summary>Columns side by side, read one after the other.</summary>
internal sealed class ColumnsSlab : Slab
{
    private readonly IReadOnlyList<(double X, IReadOnlyList<Slab> Slabs)> _columns;

    public ColumnsSlab(IReadOnlyList<(double X, IReadOnlyList<Slab> Slabs)> columns)
    {
        _columns = columns;
        Height = columns.Max(column => Stack.Height(column.Slabs));
        SpaceBefore = columns.Max(column => column.Slabs.Count == 0 ? 0 : column.Slabs[0].SpaceBefore);
        SpaceAfter = columns.Max(column => column.Slabs.Count == 0 ? 0 : column.Slabs[^1].SpaceAfter);
    }

    public override IEnumerable<(Slab Inner, double Y)> Inside => _columns.SelectMany(column => Stack.Places(column.Slabs, 0));

    public override void Draw(Ink ink, double x, double y)
    {
        foreach (var (left, slabs) in _columns)
        {
            foreach (var (slab, top) in Stack.Places(slabs, y))
                slab.DrawTagged(ink, x + left, top);
        }
    }
}

/// <summary>A figure of the record, drawn as vectors.</summary>
internal sealed class FigureSlab : Slab
{
    private readonly Picture _picture;
    private readonly string _alt;

    public FigureSlab(Picture picture, string alt)
    {
        _picture = picture;
        _alt = alt;
        Height = picture.Size.Height;
    }

    public override void Draw(Ink ink, double x, double y)
    {
        ink.OpenFigure(_alt, new XRect(x, y, _picture.Size.Width, _picture.Size.Height));
        ink.Picture(_picture, x, y);
        ink.Close();
    }
}

/// <summary>A photo of the job.</summary>
internal sealed class PhotoSlab : Slab
{
    private readonly EmbeddedPhoto _photo;
    private readonly string _alt;
    private readonly double _width;
    private readonly double _left;

    public PhotoSlab(EmbeddedPhoto photo, string alt, double width, double left)
    {
        _photo = photo;
        _alt = alt;
        _width = width;
        _left = left;
        Height = width / photo.Proportion;
    }

    public override void Draw(Ink ink, double x, double y)
    {
        var place = new XRect(x + _left, y, _width, Height);
        ink.OpenFigure(_alt, place);
        ink.Photo(_photo, place);
        ink.Close();
    }
}

/// <summary>A QR code drawn from rectangles, one for each run of dark squares in a row, filled at once: some viewers round each lone rectangle outward, and the white squares close up.</summary>
internal sealed class QrSlab : Slab
{
    private readonly bool[,] _modules;
    private readonly string _alt;
    private readonly double _size;
    private readonly double _left;

    public QrSlab(string data, string alt, double size, double left)
    {
        _modules = QrModules.Of(data);
        _alt = alt;
        _size = size;
        _left = left;
        Height = size;
    }

    public override void Draw(Ink ink, double x, double y)
    {
        x += _left;
        var count = _modules.GetLength(0);
        var square = _size / count;
        ink.OpenFigure(_alt, new XRect(x, y, _size, _size));
        var runs = new List<XRect>();
        for (var row = 0; row < count; row++)
        {
            for (var column = 0; column < count; column++)
            {
                if (!_modules[row, column])
                    continue;
                var end = column + 1;
                while (end < count && _modules[row, end])
                    end++;
                runs.Add(new XRect(x + (column * square), y + (row * square), (end - column) * square, square));
                column = end;
            }
        }

        ink.Fill(runs, Look.Ink);
        ink.Close();
    }
}
