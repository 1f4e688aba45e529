using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Findings;
using Commission.Checks.Readings;
using Commission.Checks.Recording;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Series;

namespace Commission.Checks.Air;

/// <summary>Return and supply air on a psychrometric chart made for the pressure of the site: saturation, lines of relative humidity, the states with U.</summary>
internal sealed class PsychrometricFigure : IFigureSource
{
    private const int Points = 61;
    private const double Saturated = 1;

    // The chart shows about as much around the states as lies between them.
    private const double Margin = 5;
    private const double LeastWidth = 28;
    private const double Headroom = 1.5;

    private static readonly double[] Humidities = [0.2, 0.4, 0.6, 0.8];

    /// <inheritdoc/>
    public IEnumerable<FigureData> Figures(CheckContext context)
    {
        var states = context.Get<AirStates>();
        var known = new[] { (Words: "return air", State: states.Return), (Words: "supply air", State: states.Supply) }
            .Where(s => s.State is { WhyNot: null }).Select(s => (s.Words, State: s.State!)).ToArray();
        if (known.Length == 0)
            yield break;
        var present = context.Present;
        var pressure = context.Get<SiteAtmosphere>().Pressure;
        var (low, high) = Range(present, known.Min(s => s.State.DryBulb.Value), known.Max(s => s.State.DryBulb.Value));
        var top = Top(present, known.Max(s => s.State.HumidityRatio.Value + s.State.HumidityRatio.Expanded));
        var curves = ImmutableArray.CreateBuilder<FigureCurve>();
        curves.Add(Line(present, "saturation", CurveRole.Dome, Saturated, low, high, top, pressure.Si));
        foreach (var humidity in Humidities)
            curves.Add(Line(present, string.Create(CultureInfo.InvariantCulture, $"{100 * humidity:0} % RH"), CurveRole.Isotherm, humidity, low, high, top, pressure.Si));
        foreach (var (words, state) in known)
            curves.Add(Point(present, words, state));
        yield return new FigureData
        {
            Id = "psychrometric",
            Plot = "psychrometric",
            Phase = Phases.Air,
            Title = $"State of the air at {states.Row!.Time}",
            Caption = $"Saturation and lines of relative humidity at {present.Text(pressure.Si, DisplayKind.AbsolutePressure, 2)}, the pressure of the site. Bars are U of the humidity ratio.",
            AltText = $"Psychrometric chart at {states.Row.Time}: " + string.Join("; ", known.Select(s => $"{s.Words} {present.Text(s.State.DryBulb.Value, DisplayKind.Temperature)}, {AirText.Ratio(present, s.State.HumidityRatio)}, {present.Text(s.State.RelativeHumidity.Value, DisplayKind.Percentage)} relative humidity")) + ".",
            X = new FigureAxis("Dry bulb", present.Unit(DisplayKind.Temperature), AxisScale.Linear, present.Value(low, DisplayKind.Temperature), present.Value(high, DisplayKind.Temperature)),
            Y = new FigureAxis("Humidity ratio", AirText.RatioUnit(present), AxisScale.Linear, 0, AirText.RatioValue(present, top)),
            Curves = curves.ToImmutable(),
        };
    }

    // Ends on whole fives of the unit that is drawn.
    private static (double Low, double High) Range(Presentation present, double coldest, double warmest)
    {
        var unit = present.Units[DisplayKind.Temperature].Unit;
        var middle = (coldest + warmest) / 2;
        var half = Math.Max((warmest - coldest) / 2 + Margin, LeastWidth / 2);
        return (unit.ToSi(5 * Math.Floor(unit.FromSi(middle - half) / 5)), unit.ToSi(5 * Math.Ceiling(unit.FromSi(middle + half) / 5)));
    }

    private static double Top(Presentation present, double wettest)
    {
        var one = AirText.RatioValue(present, 1);
        var step = present.Preset == "us" ? 20 : 5;
        return step * Math.Ceiling(Headroom * wettest * one / step) / one;
    }

    // A line stops a little above the top of the chart: the drawing cuts it there.
    private static FigureCurve Line(Presentation present, string label, CurveRole role, double humidity, double low, double high, double top, double pascals)
    {
        var x = ImmutableArray.CreateBuilder<double>();
        var y = ImmutableArray.CreateBuilder<double?>();
        for (var i = 0; i < Points; i++)
        {
            var kelvin = low + ((high - low) * i / (Points - 1));
            if (AirState.RatioAt(kelvin, humidity, pascals) is not { } ratio)
                continue;
            x.Add(present.Value(kelvin, DisplayKind.Temperature));
            y.Add(AirText.RatioValue(present, ratio));
            if (ratio > top)
                break;
        }

        return new FigureCurve { Label = label, Role = role, X = x.ToImmutable(), Y = y.ToImmutable() };
    }

    private static FigureCurve Point(Presentation present, string label, AirState state)
    {
        Uncertain ratio = state.HumidityRatio;
        return new FigureCurve
        {
            Label = label,
            Role = CurveRole.State,
            X = [present.Value(state.DryBulb.Value, DisplayKind.Temperature)],
            Y = [AirText.RatioValue(present, ratio.Value)],
            YLow = [AirText.RatioValue(present, Math.Max(0, ratio.Value - ratio.Expanded))],
            YHigh = [AirText.RatioValue(present, ratio.Value + ratio.Expanded)],
        };
    }
}
