using System.Globalization;
using Commission.Messages;

namespace Commission.Documents.Plots.Axes;

/// <summary>Chooses round values for the marks of an axis: 1, 2 or 5 times a power of ten, or what a clock counts in.</summary>
internal static class AxisTicks
{
    private const int MostTicks = 200;
    private static readonly double[] ClockSteps = [1, 2, 5, 10, 15, 20, 30, 60, 120, 180, 240, 360, 720, 1440, 2880];

    /// <summary>Marks for an even scale.</summary>
    /// <param name="low">Low end.</param>
    /// <param name="high">High end, above the low one.</param>
    /// <param name="wanted">About how many marks there is room for, at least 2.</param>
    /// <returns>The marks within the ends, from low to high, labels with the decimals that the step needs.</returns>
    public static IReadOnlyList<Tick> Linear(double low, double high, int wanted)
    {
        var step = Step(high - low, wanted);
        var decimals = Math.Max(0, -(int)Math.Floor(Math.Log10(step) + 1e-9));
        return Every(step, low, high, value => Number(value, decimals));
    }

    /// <summary>Marks for minutes since an event: steps that a clock counts in.</summary>
    /// <param name="low">Low end, min.</param>
    /// <param name="high">High end, min.</param>
    /// <param name="wanted">About how many marks there is room for.</param>
    /// <returns>The marks.</returns>
    public static IReadOnlyList<Tick> Minutes(double low, double high, int wanted)
    {
        var least = (high - low) / Math.Max(wanted, 1);
        if (least <= 0.5)
            return Linear(low, high, wanted);
        return Every(ClockStep(least), low, high, value => Number(value, 0));
    }

    /// <summary>Marks for a time of day.</summary>
    /// <param name="low">Low end, minutes after midnight; beyond 1440 is the next day.</param>
    /// <param name="high">High end.</param>
    /// <param name="wanted">About how many marks there is room for.</param>
    /// <returns>The marks, labelled hh:mm.</returns>
    public static IReadOnlyList<Tick> Clock(double low, double high, int wanted)
        => Every(ClockStep((high - low) / Math.Max(wanted, 1)), low, high, ClockLabel);

    /// <summary>A time of day as people write it.</summary>
    public static string ClockLabel(double minutes)
    {
        var whole = (long)Math.Round(minutes);
        var day = ((whole % 1440) + 1440) % 1440;
        return string.Create(CultureInfo.InvariantCulture, $"{day / 60:00}:{day % 60:00}");
    }

    /// <summary>Marks for a logarithmic scale: decades, and 2 and 5 between them when not much more than two decades are shown.</summary>
    /// <param name="low">Low end, positive.</param>
    /// <param name="high">High end, above the low one.</param>
    /// <param name="wanted">About how many labels there is room for.</param>
    /// <returns>Labelled marks, and marks without a number for the rest of 1 to 9 where they help.</returns>
    public static IReadOnlyList<Tick> Log(double low, double high, int wanted)
    {
        var decades = Math.Log10(high / low);
        int[] labelled = decades <= 2.2 && decades * 3 <= wanted + 1 ? [1, 2, 5] : [1];
        if (decades < 0.75)
            return Linear(low, high, wanted);
        var ticks = new List<Tick>();
        var first = (int)Math.Floor(Math.Log10(low) + 1e-9);
        var last = (int)Math.Ceiling(Math.Log10(high) - 1e-9);
        var skip = Math.Max(1, (int)Math.Ceiling((last - first + 1) / (double)Math.Max(wanted, 2)));
        for (var power = first; power <= last; power++)
        {
            for (var digit = 1; digit <= 9; digit++)
            {
                var value = digit * Math.Pow(10, power);
                if (value < low * (1 - 1e-9) || value > high * (1 + 1e-9))
                    continue;
                var says = Array.IndexOf(labelled, digit) >= 0 && (power - first) % skip == 0;
                ticks.Add(new Tick(value, says ? Number(value, Math.Max(0, -power)) : ""));
            }
        }

        return ticks;
    }

    /// <summary>Rounds the ends of an even scale outwards to marks.</summary>
    /// <param name="low">Lowest value shown.</param>
    /// <param name="high">Highest value shown.</param>
    /// <param name="wanted">About how many marks there is room for.</param>
    /// <returns>The ends.</returns>
    public static (double Low, double High) RoundOut(double low, double high, int wanted)
    {
        if (high <= low)
            (low, high) = low == 0 ? (-1, 1) : (low - Math.Abs(low) * 0.05, high + Math.Abs(high) * 0.05);
        var step = Step(high - low, wanted);
        return (Math.Floor(low / step + 1e-6) * step, Math.Ceiling(high / step - 1e-6) * step);
    }

    /// <summary>Rounds the ends of a logarithmic scale outwards to 1, 2 or 5 times a power of ten.</summary>
    /// <param name="low">Lowest value shown, positive.</param>
    /// <param name="high">Highest value shown.</param>
    /// <returns>The ends.</returns>
    public static (double Low, double High) RoundOutLog(double low, double high)
    {
        if (high <= low)
            (low, high) = (low / 2, low * 2);
        var bottom = Math.Pow(10, Math.Floor(Math.Log10(low) + 1e-9));
        var top = Math.Pow(10, Math.Floor(Math.Log10(high) + 1e-9));
        double[] digits = [1, 2, 5, 10];
        return (bottom * digits.Last(digit => bottom * digit <= low * (1 + 1e-9)), top * digits.First(digit => top * digit >= high * (1 - 1e-9)));
    }

    /// <summary>A number with a comma between thousands.</summary>
    /// <param name="value">The number.</param>
    /// <param name="decimals">Decimals written.</param>
    /// <returns>The text; a true minus sign before negative numbers.</returns>
    public static string Number(double value, int decimals)
    {
        var text = (Math.Round(value, Math.Min(decimals, 12)) + 0.0).ToString(string.Create(CultureInfo.InvariantCulture, $"N{decimals}"), CultureInfo.InvariantCulture);
        return MessageWriter.WithTrueMinus(text);
    }

    private static double Step(double span, int wanted)
    {
        var raw = span / Math.Max(wanted, 1);
        var power = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        var digit = raw / power;
        return power * (digit <= 1.0001 ? 1 : digit <= 2.0001 ? 2 : digit <= 5.0001 ? 5 : 10);
    }

    private static double ClockStep(double least)
    {
        foreach (var step in ClockSteps)
        {
            if (step >= least - 1e-9)
                return step;
        }

        return Math.Ceiling(least / 1440) * 1440;
    }

    private static List<Tick> Every(double step, double low, double high, Func<double, string> label)
    {
        var ticks = new List<Tick>();
        var first = Math.Ceiling(low / step - 1e-6);
        var last = Math.Floor(high / step + 1e-6);
        // Ends so close that their distance is lost in rounding give no sensible marks; the cap keeps the loop finite.
        for (var i = 0; i < MostTicks && first + i <= last; i++)
            ticks.Add(new Tick((first + i) * step, label((first + i) * step)));
        return ticks;
    }
}

/// <summary>A mark on an axis.</summary>
/// <param name="Value">Where, in the unit of the axis.</param>
/// <param name="Label">What is written there; empty for a mark without a number.</param>
internal readonly record struct Tick(double Value, string Label);

/// <summary>Maps values to positions along one direction of a panel, evenly or by logarithm.</summary>
/// <param name="Low">Value at <paramref name="Start"/>; positive on a logarithmic scale.</param>
/// <param name="High">Value at <paramref name="End"/>, above <paramref name="Low"/>.</param>
/// <param name="Start">Position of the low end, pt.</param>
/// <param name="End">Position of the high end, pt; smaller than <paramref name="Start"/> on a vertical axis.</param>
/// <param name="Logarithmic">True for a logarithmic scale.</param>
internal sealed record AxisMap(double Low, double High, double Start, double End, bool Logarithmic)
{
    /// <summary>The position of a value, pt. Values outside lie outside; a value without a logarithm lies far below the low end.</summary>
    /// <param name="value">The value, in the unit of the axis.</param>
    /// <returns>The position.</returns>
    public double At(double value)
    {
        if (!Logarithmic)
            return Start + (value - Low) / (High - Low) * (End - Start);
        if (value <= 0)
            return Start - 10 * (End - Start);
        return Start + Math.Log(value / Low) / Math.Log(High / Low) * (End - Start);
    }

    /// <summary>Whether a value lies on the scale.</summary>
    /// <param name="value">The value, in the unit of the axis.</param>
    /// <returns>True within the ends.</returns>
    public bool Holds(double value) => value >= Low && value <= High;

    /// <summary>The nearest position on the scale for a value that may lie outside.</summary>
    /// <param name="value">The value, in the unit of the axis.</param>
    /// <returns>The position, pt.</returns>
    public double Clamped(double value) => At(Math.Clamp(value, Low, High));
}
