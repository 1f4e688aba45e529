using Commission.Documents.Markup;
using PdfSharp.Drawing;

namespace Commission.Documents.Typesetting;

/// <summary>A QR code drawn from rectangles, one for each run of dark squares in a row.</summary>
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
        for (var row = 0; row < count; row++)
        {
            for (var column = 0; column < count; column++)
            {
                if (!_modules[row, column]) continue;
                var end = column + 1;
                while (end < count && _modules[row, end]) end++;
                ink.Fill(new XRect(x + (column * square), y + (row * square), (end - column) * square, square), Look.Ink);
                column = end;
            }
        }

        ink.Close();
    }
}
