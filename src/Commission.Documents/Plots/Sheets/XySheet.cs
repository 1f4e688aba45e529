using System.Globalization;
using Commission.Documents.Fonts;
using Commission.Documents.Pictures;
using Commission.Documents.Plots.Axes;
using Commission.Documents.Plots.Labels;
using Commission.Records.Series;
using AxisDivision = Commission.Records.Series.AxisScale;

namespace Commission.Documents.Plots.Sheets;

/// <summary>
/// A figure with axes: lays them out around the labels they need, draws curves and reference lines in the style of their role, and at
/// the end puts every label beside what it names.
/// </summary>
internal sealed partial class XySheet
{
    private const double TitleRow = 11;
    private const double FlagRow = 9.4;
    private const double Edge = 1.5;
    private const int MostTiers = 6;

    // The line of an event is interrupted for a label, but a label that no line cuts reads better.
    private const int FlagInk = 5;
    private readonly FigureData _data;
    private readonly SheetPlan _plan;
    private readonly Canvas _canvas;
    private readonly InkMap _ink;
    private readonly List<LabelRequest> _labels = [];
    private readonly List<HoverPoint> _hover = [];
    private readonly List<Box> _reserved = [];
    private readonly IReadOnlyList<Flag> _flags;
    private readonly Dictionary<CurveRole, int> _seen = [];
    private readonly IReadOnlyList<Tick> _xTicks;
    private readonly IReadOnlyList<Tick> _yTicks;
    private readonly int _xDecimals;
    private readonly int _yDecimals;
    private readonly InkMap _faint;
    private IReadOnlyList<Tick> _lowerTicks = [];
    private Box[] _lowerTitle = [];
    private double _flagsEnd;

    /// <summary>Lays out the axes of a figure.</summary>
    /// <param name="data">The figure.</param>
    /// <param name="size">Outer size.</param>
    /// <param name="plan">What the kind of plot decides.</param>
    public XySheet(FigureData data, PictureSize size, SheetPlan plan)
    {
        _data = data;
        _plan = plan;
        _canvas = new Canvas(size);
        _ink = new InkMap(size);
        _faint = new InkMap(size);

        var xRange = XRange();
        var logarithmic = data.Y.Scale == AxisDivision.Log10;
        var lowerGap = plan.LowerPanel > 0 ? plan.LowerPanel + 12 : 0;
        var bottom = size.Height - (NamesX ? 22.5 : 13) - lowerGap;
        var yRange = YRange(Math.Max(2, (int)((bottom - 2 * TitleRow) / 19)));
        var yTicks = logarithmic
            ? AxisTicks.Log(yRange.Low, yRange.High, Math.Max(2, (int)((bottom - TitleRow) / 13)))
            : AxisTicks.Linear(yRange.Low, yRange.High, Math.Max(2, (int)((bottom - 2 * TitleRow) / 19)));
        var numbers = yTicks.Max(tick => TickStyle.Width(tick.Label)) + 6;
        var left = plan.AxisOnRight ? 8 : Math.Max(numbers, 14);
        var right = size.Width - (plan.AxisOnRight ? Math.Max(numbers, 14) : 9);

        var x = new AxisMap(xRange.Low, xRange.High, left, right, false);
        var markers = data.Events.Select(e => (X: x.Clamped(e.X), e.Label))
            .Concat(data.Lines.Where(line => line.Axis == AxisName.X).Select(line => (X: x.Clamped(line.At), line.Label))).ToArray();
        // Beyond six rows the flags would eat the figure: further events keep their line and lose their label.
        _flags = [.. EventFlags.Arrange(markers, FlagStyle, Edge, size.Width - Edge, size.IsNarrow ? 4 : 3).Select(flag => flag.Tier < MostTiers ? flag : flag with { Text = "", Tier = 0, Width = 0 })];
        var tiers = _flags.Count == 0 ? 0 : _flags.Max(flag => flag.Tier) + 1;
        var area = new Box(left, TitleRow + 3 + tiers * FlagRow, right, bottom);

        Main = new Panel(_canvas, _ink, _faint, area, x, new AxisMap(yRange.Low, yRange.High, area.Bottom, area.Top, logarithmic));
        var roomForX = Math.Max(2, (int)((right - left) / (size.IsNarrow ? 40 : 50)));
        _xTicks = data.X.Scale switch
        {
            AxisDivision.Clock => AxisTicks.Clock(xRange.Low, xRange.High, roomForX),
            AxisDivision.Minutes => AxisTicks.Minutes(xRange.Low, xRange.High, roomForX),
            _ => AxisTicks.Linear(xRange.Low, xRange.High, roomForX),
        };
        _xDecimals = Decimals(_xTicks);
        _yDecimals = logarithmic ? -1 : Decimals(yTicks);

        _yTicks = yTicks;
        _reserved.Add(plan.AxisOnRight ? new Box(right + 0.5, area.Top - 4, size.Width, size.Height) : new Box(0, area.Top - 4, left - 0.5, size.Height));
        var title = WithUnit(data.Y);
        var anchor = plan.AxisOnRight ? TextAnchor.End : TextAnchor.Start;
        var titleX = plan.AxisOnRight ? size.Width - Edge : Edge;
        title = TitleStyle.Fit(title, size.Width - 2 * Edge);
        _canvas.Text(titleX, 8, title, TitleStyle, anchor);
        _reserved.Add(TitleStyle.BoxOf(titleX, 8, title, anchor));
    }

    /// <summary>How numbers along the axes are set.</summary>
    public static TextStyle TickStyle { get; } = new(FontFace.Regular, 7.2, Palette.Quiet);

    /// <summary>How axis titles are set.</summary>
    public static TextStyle TitleStyle { get; } = new(FontFace.SemiBold, 7.4, Palette.Quiet);

    /// <summary>How labels of events are set.</summary>
    public static TextStyle FlagStyle { get; } = new(FontFace.Regular, 7.4, Palette.Ink);

    /// <summary>Size of type of the labels of curves, pt.</summary>
    public const double LabelSize = 7.8;

    /// <summary>The main panel.</summary>
    public Panel Main { get; }

    // The hours of a clock need no name where room is short.
    private bool NamesX => !(_canvas.Size.IsSmall && _data.X.Scale == AxisDivision.Clock);

    /// <summary>The figure drawn on.</summary>
    public Canvas Canvas => _canvas;

    /// <summary>The style of the next curve of its role; curves of a role are told apart by their order.</summary>
    public SeriesStyle NextStyle(FigureCurve curve)
    {
        var index = _seen.GetValueOrDefault(curve.Role);
        _seen[curve.Role] = index + 1;
        return SeriesStyle.Of(curve.Role, index);
    }

    /// <summary>Adds the second panel, below the main one.</summary>
    /// <param name="low">Lowest value it shows.</param>
    /// <param name="high">Highest value.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="ticks">Its marks; chosen when not given.</param>
    /// <returns>The panel.</returns>
    public Panel Lower(double low, double high, string title, IReadOnlyList<Tick>? ticks = null)
    {
        var top = Main.Area.Bottom + 12;
        var area = new Box(Main.Area.Left, top, Main.Area.Right, top + _plan.LowerPanel);
        var panel = new Panel(_canvas, _ink, _faint, area, Main.X, new AxisMap(low, high, area.Bottom, area.Top, false));
        _lowerTicks = ticks ?? AxisTicks.Linear(low, high, Math.Max(2, (int)(area.Height / 19)));
        if (title.Length > 0)
        {
            var text = TitleStyle.Fit(title, area.Width);
            _canvas.Text(area.Left, top - 3, text, TitleStyle);
            _lowerTitle = [TitleStyle.BoxOf(area.Left, top - 3, text)];
            _reserved.AddRange(_lowerTitle);
        }

        return panel;
    }

    /// <summary>Draws hair lines, marks and numbers of every axis; bands that lie behind them are drawn before.</summary>
    /// <param name="lower">The second panel, when there is one.</param>
    public void Axes(Panel? lower = null)
    {
        Main.VerticalAxis(_yTicks, TickStyle, _plan.AxisOnRight);
        Main.HorizontalAxis(_xTicks, TickStyle, lower is null);
        if (lower is not null)
        {
            lower.VerticalAxis(_lowerTicks, TickStyle, _plan.AxisOnRight);
            lower.HorizontalAxis(_xTicks, TickStyle);
        }

        if (!NamesX)
            return;
        var title = TitleStyle.Fit(WithUnit(_data.X), _canvas.Size.Width - 2 * Edge);
        _canvas.Text(Main.Area.Right, _canvas.Size.Height - 3, title, TitleStyle, TextAnchor.End);
    }

    /// <summary>Sets the flags of events and of limits along the horizontal axis; their lines are drawn last, around the labels.</summary>
    /// <param name="bottom">Where the lines end, pt; the bottom of the main panel when not given.</param>
    public void Flags(double? bottom = null)
    {
        _flagsEnd = bottom ?? Main.Area.Bottom;
        foreach (var flag in _flags)
        {
            _ink.Line(new Point(flag.X, Main.Area.Top), new Point(flag.X, _flagsEnd), FlagInk);
            if (flag.Text.Length == 0)
                continue;
            var baseline = Baseline(flag);
            var anchor = flag.TurnsLeft ? TextAnchor.End : TextAnchor.Start;
            var at = flag.X + (flag.TurnsLeft ? -2.5 : 2.5);
            _canvas.Text(at, baseline, flag.Text, FlagStyle, anchor);
            _reserved.Add(FlagStyle.BoxOf(at, baseline, flag.Text, anchor));
        }
    }

    /// <summary>Places the labels and finishes the figure.</summary>
    public Picture Finish()
    {
        var placer = new LabelPlacer(_ink);
        foreach (var box in _reserved)
            placer.Reserve(box);
        var placed = placer.Place(_labels);
        Box[] interrupting = [.. placed.Select(label => label.Box.Grow(0.8)), .. _lowerTitle];
        foreach (var flag in _flags)
            FlagLine(flag, interrupting);
        foreach (var label in placed)
        {
            if (label.LeadsTo is { } target)
            {
                var from = PlacedLabel.LeaderFrom(label.Box, target);
                _canvas.Line(from.X, from.Y, target.X, target.Y, new Stroke(Palette.Axis, 0.4));
            }

            // A faint dashed line behind small type is hard on the eye: it is interrupted.
            if (_faint.Under(label.Box) > 0)
                _canvas.Rectangle(label.Box with { Top = label.Spot.Y - label.Request.Style.CapHeight - 0.8, Bottom = label.Spot.Y + 1.8 }, Palette.Paper);
            _canvas.Text(label.Spot.X, label.Spot.Y, label.Text, label.Request.Style, label.Spot.Anchor);
        }

        _ink.Return();
        _faint.Return();
        return _canvas.Finish(_hover);
    }

    private double Baseline(Flag flag) => Main.Area.Top - 3 - flag.Tier * FlagRow - FlagStyle.Descent;

    private void FlagLine(Flag flag, Box[] interrupting)
    {
        var isLimit = _data.Lines.Any(line => line.Axis == AxisName.X && Math.Abs(Main.X.Clamped(line.At) - flag.X) < 1e-6);
        var stroke = isLimit ? SeriesStyle.Of(LineRole.DecayLimit).Stroke : new Stroke(Palette.Quiet, 0.6, SeriesStyle.Fine);
        var from = flag.Text.Length == 0 ? Main.Area.Top : Baseline(flag) - FlagStyle.CapHeight;
        foreach (var box in interrupting.Where(box => box.Left < flag.X && box.Right > flag.X).OrderBy(box => box.Top))
        {
            if (box.Top > from)
                _canvas.Line(flag.X, from, flag.X, Math.Min(box.Top, _flagsEnd), stroke);
            from = Math.Max(from, box.Bottom);
        }

        if (from < _flagsEnd)
            _canvas.Line(flag.X, from, flag.X, _flagsEnd, stroke);
    }

    /// <summary>A value of the horizontal axis in words.</summary>
    /// <param name="value">The value.</param>
    /// <returns>A time of day, minutes, or number and unit.</returns>
    public string XText(double value) => _data.X.Scale switch
    {
        AxisDivision.Clock => AxisTicks.ClockLabel(value),
        AxisDivision.Minutes => AxisTicks.Number(value, Math.Max(1, _xDecimals)) + " min",
        _ => Joined(AxisTicks.Number(value, _xDecimals), _data.X.Unit),
    };

    /// <summary>A value of the vertical axis in words.</summary>
    public string YText(double value)
    {
        if (_yDecimals >= 0)
            return Joined(AxisTicks.Number(value, _yDecimals), _data.Y.Unit);
        // Four digits serve on a scale that spans decades.
        var decimals = value > 0 ? Math.Max(0, 3 - (int)Math.Floor(Math.Log10(value))) : 0;
        return Joined(AxisTicks.Number(value, Math.Min(decimals, 6)), _data.Y.Unit);
    }

    private static string WithUnit(FigureAxis axis) => axis.Unit.Length == 0 ? axis.Label : string.Create(CultureInfo.InvariantCulture, $"{axis.Label}, {axis.Unit}");

    private static string Joined(string number, string unit) => unit.Length == 0 ? number : string.Create(CultureInfo.InvariantCulture, $"{number} {unit}");

    // Decimals that resolve about a fiftieth of the distance between marks: what a careful eye could read off a large print.
    private static int Decimals(IReadOnlyList<Tick> ticks)
    {
        if (ticks.Count < 2)
            return 1;
        return Math.Clamp((int)Math.Floor(-Math.Log10((ticks[1].Value - ticks[0].Value) / 50) + 1e-9), 0, 6);
    }

    private (double Low, double High) XRange()
    {
        var extent = new Extent();
        foreach (var curve in _data.Curves)
            extent.AddAll(curve.X.Select(value => (double?)value));
        foreach (var line in _data.Lines.Where(line => line.Axis == AxisName.X))
            extent.Add(line.At);
        foreach (var e in _data.Events)
            extent.Add(e.X);
        if (extent.IsEmpty)
            extent.AddAll([0, 1]);
        double low = _data.X.Min ?? extent.Low, high = _data.X.Max ?? extent.High;
        if (high <= low)
            (low, high) = (low - 1, low + 1);
        var pad = (high - low) * 0.02;
        if (_data.X.Max is null)
            high += pad;
        if (_data.X.Min is null && !(_data.X.Scale == AxisDivision.Minutes && low is >= 0 && low < pad))
            low -= pad;
        return (low, high);
    }

    private (double Low, double High) YRange(int wanted)
    {
        var logarithmic = _data.Y.Scale == AxisDivision.Log10;
        var extent = new Extent();
        foreach (var curve in _data.Curves.Where(curve => _plan.InMain(curve) && !_plan.IsBackdrop(curve)))
            AddCurve(extent, curve, logarithmic, double.NegativeInfinity, double.PositiveInfinity);
        foreach (var line in _data.Lines.Where(line => line.Axis == AxisName.Y && (!logarithmic || line.At > 0)))
            extent.Add(line.At);
        foreach (var value in _plan.MustShow.Where(value => !logarithmic || value > 0))
            extent.Add(value);

        // A model's band may open like a trumpet; it may stretch the axis by a third of what the readings need, no further.
        var span = extent.IsEmpty ? double.PositiveInfinity : Math.Max(extent.High - extent.Low, 1e-12);
        double floor = extent.IsEmpty ? double.NegativeInfinity : extent.Low - span / 3, ceiling = extent.IsEmpty ? double.PositiveInfinity : extent.High + span / 3;
        foreach (var curve in _data.Curves.Where(curve => _plan.InMain(curve) && _plan.IsBackdrop(curve)))
            AddCurve(extent, curve, logarithmic, floor, ceiling);
        if (extent.IsEmpty)
            extent.AddAll([1, 10]);

        var (low, high) = logarithmic
            ? AxisTicks.RoundOutLog(extent.Low, extent.High * Math.Pow(extent.High / extent.Low, _plan.Headroom))
            : AxisTicks.RoundOut(Below(extent), extent.High + _plan.Headroom * (extent.High - extent.Low), wanted * 4);
        low = _data.Y.Min ?? low;
        high = _data.Y.Max ?? high;
        return high > low ? (low, high) : (low, logarithmic ? low * 10 : low + 1);
    }

    // A little air below the data, but quantities that cannot be negative do not get a negative axis.
    private static double Below(Extent extent)
    {
        var low = extent.Low - 0.03 * (extent.High - extent.Low);
        return extent.Low >= 0 && low < 0 ? 0 : low;
    }

    private static void AddCurve(Extent extent, FigureCurve curve, bool logarithmic, double floor, double ceiling)
    {
        foreach (var values in new[] { curve.Y, curve.YLow, curve.YHigh })
        {
            foreach (var value in values)
            {
                if (!logarithmic || value > 0)
                    extent.Add(value is { } number ? Math.Clamp(number, floor, ceiling) : null);
            }
        }
    }
}
