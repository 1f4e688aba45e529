using System.Globalization;
using Commission.Documents.Fonts;
using Commission.Documents.Pictures;
using Commission.Documents.Plots.Sheets;
using Commission.Measurement.Decisions;
using Commission.Records.Series;

namespace Commission.Documents.Plots.Kinds;

/// <summary>
/// All judged checks at a glance: one row a check, its value and U on the scale of its own limit. The shaded zone is what the limit
/// accepts; where a side is not limited the zone runs on. The verdict stands beside it as a word and a mark.
/// </summary>
internal sealed class StripPlot : IPlot
{
    private const double Row = 11.6;
    private const double NarrowRow = 21.5;
    private const double Head = 13;
    private const double LeastScale = 150;
    private const double Low = -0.6;
    private const double High = 1.6;

    private static readonly TextStyle LabelStyle = new(FontFace.Regular, 7.8, Palette.Ink);
    private static readonly TextStyle ValueStyle = new(FontFace.Regular, 7.4, Palette.Quiet);
    private static readonly TextStyle HeadStyle = new(FontFace.SemiBold, 7.2, Palette.Quiet);

    /// <inheritdoc/>
    public string Kind => "strip";

    /// <inheritdoc/>
    public double HeightFor(FigureData data, double width) => Head + Math.Max(1, data.Rows.Length) * RowHeight(width) + 4;

    /// <inheritdoc/>
    public Picture Draw(FigureData data, PictureSize size)
    {
        var canvas = new Canvas(size);
        var hover = new List<HoverPoint>();
        var columns = Columns.For(data, size);
        var row = RowHeight(size.Width);
        var bottom = Head + data.Rows.Length * row;

        if (!size.IsNarrow)
        {
            canvas.Text(columns.Label, 8, "Check", HeadStyle);
            canvas.Text(columns.Value, 8, HeadStyle.Fit("Measured", columns.ValueRoom), HeadStyle);
            canvas.Text(columns.Verdict, 8, "Verdict", HeadStyle);
        }

        var zone = HeadStyle.Fit("Accepted", columns.One - columns.Zero + 20);
        canvas.Text((columns.Zero + columns.One) / 2, 8, zone, HeadStyle, TextAnchor.Middle);
        for (var i = 0; i < data.Rows.Length; i++)
        {
            var bar = data.Rows[i];
            var top = Head + i * row;
            var middle = size.IsNarrow ? top + row - 6 : top + row / 2;
            canvas.Line(0, top, size.Width, top, new Stroke(Palette.Grid, 0.5));
            DrawZone(canvas, columns, bar, size.IsNarrow ? top + row - 10.5 : top + 1.2, size.IsNarrow ? top + row - 1.5 : top + row - 1.2);
            DrawValue(canvas, columns, bar, middle);
            hover.Add(new HoverPoint(columns.At(bar.Value), middle, string.Create(CultureInfo.InvariantCulture, $"{bar.Label}: {bar.Text}, {VerdictSign.Word(bar.Verdict)}")));

            var baseline = (size.IsNarrow ? top + 8.2 : middle + LabelStyle.CapHeight / 2);
            canvas.Text(columns.Label, baseline, LabelStyle.Fit(bar.Label, columns.LabelRoom), LabelStyle);
            canvas.Text(columns.Value, middle + ValueStyle.CapHeight / 2, ValueStyle.Fit(columns.Says(bar), columns.ValueRoom), ValueStyle);
            VerdictSign.Draw(canvas, columns.Mark, size.IsNarrow ? top + 8.2 - LabelStyle.CapHeight / 2 : middle, bar.Verdict);
            canvas.Text(columns.Verdict, baseline, VerdictSign.Word(bar.Verdict), VerdictSign.Style(bar.Verdict));
        }

        canvas.Line(0, bottom, size.Width, bottom, new Stroke(Palette.Grid, 0.5));
        return canvas.Finish(hover);
    }

    private static double RowHeight(double width) => new PictureSize(width, 1).IsNarrow ? NarrowRow : Row;

    private static void DrawZone(Canvas canvas, Columns columns, FigureBar bar, double top, double bottom)
    {
        var left = bar.LowerIsLimit ? columns.Zero : columns.Left;
        var right = bar.UpperIsLimit ? columns.One : columns.Right;
        canvas.Rectangle(new Box(left, top, right, bottom), Palette.Zone);
        if (bar.LowerIsLimit)
            canvas.Line(left, top, left, bottom, new Stroke(Palette.ZoneEdge, 0.8));
        if (bar.UpperIsLimit)
            canvas.Line(right, top, right, bottom, new Stroke(Palette.ZoneEdge, 0.8));
    }

    private static void DrawValue(Canvas canvas, Columns columns, FigureBar bar, double y)
    {
        var color = VerdictSign.Color(bar.Verdict);
        if (bar.Low is { } low && bar.High is { } high && high >= Low && low <= High)
        {
            double left = columns.At(low), right = columns.At(high);
            canvas.Line(left, y, right, y, new Stroke(color, 1));
            if (low > Low)
                canvas.Line(left, y - 2, left, y + 2, new Stroke(color, 1));
            if (high < High)
                canvas.Line(right, y - 2, right, y + 2, new Stroke(color, 1));
        }

        // A value far outside sits at the edge as an arrow head: it must not look like a value that is just there.
        if (bar.Value < Low)
            canvas.Polygon([new(columns.Left, y), new(columns.Left + 4, y - 2.5), new(columns.Left + 4, y + 2.5)], color);
        else if (bar.Value > High)
            canvas.Polygon([new(columns.Right, y), new(columns.Right - 4, y - 2.5), new(columns.Right - 4, y + 2.5)], color);
        else
            canvas.Circle(columns.At(bar.Value), y, 2.3, bar.Verdict is Verdict.Pass or Verdict.Fail ? color : Palette.Paper, new Stroke(color, 1.1));
    }

    private sealed record Columns(double Label, double LabelRoom, double Left, double Right, double Value, double ValueRoom, double Mark, double Verdict, bool Briefly)
    {
        public double Zero => At(0);

        public double One => At(1);

        public double At(double value) => Left + (Math.Clamp(value, Low, High) - Low) / (High - Low) * (Right - Left);

        // The record says "value; limit". Where both do not fit, the limit is left to the table of checks and to whoever points at the row.
        public string Says(FigureBar bar) => Briefly ? ValueOnly(bar) : bar.Text;

        public static Columns For(FigureData data, PictureSize size)
        {
            var words = data.Rows.Select(bar => VerdictSign.Style(bar.Verdict).Width(VerdictSign.Word(bar.Verdict))).DefaultIfEmpty(0).Append(HeadStyle.Width("Verdict")).Max();
            var verdict = size.Width - words;
            var mark = verdict - 6.5;
            if (size.IsNarrow)
            {
                var middle = size.Width * 0.5;
                var room = size.Width - middle - 6;
                return new Columns(0, mark - 9, 0, middle, middle + 6, room, mark, verdict, Widest(data, static bar => bar.Text) > room);
            }

            var briefly = Widest(data, static bar => bar.Text) > size.Width * 0.24;
            var value = Math.Min(Widest(data, briefly ? ValueOnly : static bar => bar.Text), size.Width * 0.3);
            // The longest label may push the scale together, but not below the width at which U can be seen.
            var right = mark - 10 - value - 8;
            var label = Math.Min(data.Rows.Select(bar => LabelStyle.Width(bar.Label)).DefaultIfEmpty(0).Max(), right - 8 - LeastScale);
            return new Columns(0, label, label + 8, right, right + 8, value, mark, verdict, briefly);
        }

        private static string ValueOnly(FigureBar bar) => bar.Text.Split(';', 2)[0];

        private static double Widest(FigureData data, Func<FigureBar, string> text) => data.Rows.Select(bar => ValueStyle.Width(text(bar))).DefaultIfEmpty(0).Max();
    }
}
