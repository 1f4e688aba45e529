using System.Globalization;
using System.Xml.Linq;

namespace Commission.Documents.Markup;

/// <summary>A value with its U on the scale of its limit, small enough to stand in a row of a table: 0 is the lower limit, 1 the upper one.</summary>
/// <param name="Value">Place of the value.</param>
/// <param name="Low">Place of value − U; null without U.</param>
/// <param name="High">Place of value + U; null without U.</param>
/// <param name="LowerIsLimit">Whether there is a limit at 0.</param>
/// <param name="UpperIsLimit">Whether there is a limit at 1.</param>
internal sealed record LimitBar(double Value, double? Low, double? High, bool LowerIsLimit, bool UpperIsLimit)
{
    /// <summary>Left end of what is drawn; what lies beyond sits at the end.</summary>
    public const double From = -0.5;

    /// <summary>Right end of what is drawn.</summary>
    public const double To = 1.5;

    /// <summary>Reads the element; it was checked.</summary>
    public static LimitBar? In(XElement cell) => cell.Element("bar") is { } bar
        ? new LimitBar(Number(bar, "value") ?? 0, Number(bar, "low"), Number(bar, "high"), Is(bar, "lower"), Is(bar, "upper"))
        : null;

    /// <summary>Where a place lies between the ends of the drawing, 0 to 1.</summary>
    public static double Share(double place) => (Math.Clamp(place, From, To) - From) / (To - From);

    private static double? Number(XElement bar, string name) => double.TryParse(bar.Attribute(name)?.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static bool Is(XElement bar, string name) => bar.Attribute(name)?.Value == "true";
}
