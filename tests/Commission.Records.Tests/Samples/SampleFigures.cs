using System.Collections.Immutable;
using Commission.Records.Findings;
using Commission.Records.Series;

namespace Commission.Records.Tests.Samples;

/// <summary>Invented figures: smooth curves that look like a job's without being one.</summary>
internal static class SampleFigures
{
    public static ImmutableArray<FigureData> All() => [NitrogenHold(), PullDown(), Hold(), ChargeTime(), PressureEnthalpy()];

    private static FigureData NitrogenHold() => new()
    {
        Id = "nitrogen-hold",
        Plot = "nitrogen-hold",
        Phase = "pressure-test",
        Title = "Nitrogen hold",
        Caption = "Pressure as read and as it would be without any loss at the temperatures read.",
        AltText = "Pressure rises from 440.0 to 445.8 psig while the pipe warms from 71.0 to 77.6 °F; without loss it would have reached 446.1 psig.",
        X = new FigureAxis("Time", "", AxisScale.Clock),
        Y = new FigureAxis("Pressure", "psig", AxisScale.Linear),
        Curves =
        [
            Curve("read", CurveRole.Measured, [490, 555], [440.0, 445.8], [438.5, 444.3], [441.5, 447.3]),
            Curve("without loss", CurveRole.Model, [490, 555], [440.0, 446.1]),
        ],
    };

    private static FigureData PullDown()
    {
        var x = Enumerable.Range(0, 280).Select(i => i / 3.0).ToArray();
        var y = x.Select(t => t is > 24 and < 27 ? (double?)null : Level(t)).ToArray();
        return new FigureData
        {
            Id = "pull-down",
            Plot = "pull-down",
            Phase = "evacuation",
            Title = "Pull-down and hold",
            Caption = "Pressure at the system on a logarithmic scale; the gap is the nitrogen break, where the gauge is out of range.",
            AltText = "Pressure falls from atmosphere to 900 micron in 24 minutes, is broken with nitrogen, falls to 342 micron at 71 minutes, and rises to 480 micron at 93 minutes.",
            X = new FigureAxis("Time since the pump started", "min", AxisScale.Minutes, 0, 95),
            Y = new FigureAxis("Pressure", "micron", AxisScale.Log10, 100, 1_000_000),
            Curves = [Curve("measured", CurveRole.Measured, x, y)],
            Lines =
            [
                new FigureLine("target 500 micron", 500, AxisName.Y, LineRole.Target),
                new FigureLine("decay limit 1000 micron", 1000, AxisName.Y, LineRole.DecayLimit),
                new FigureLine("water boils at 66 °F", 16_330, AxisName.Y, LineRole.Saturation),
            ],
            Events = [new FigureEvent(24, "nitrogen break"), new FigureEvent(71, "isolated"), new FigureEvent(93, "end")],
        };
    }

    private static double Level(double t) => t switch
    {
        <= 24 => 700_000 * Math.Exp(-t / 3.2) + 900,
        <= 71 => 760_000 * Math.Exp(-(t - 27) / 3.0) + 330 + 0.3 * (71 - t),
        _ => 342 + 178 * (1 - Math.Exp(-(t - 71) / 9.0)),
    };

    private static FigureData Hold()
    {
        var x = Enumerable.Range(0, 67).Select(i => 71 + i / 3.0).ToArray();
        var model = x.Select(t => 342 + 178 * (1 - Math.Exp(-(t - 71) / 9.0))).ToArray();
        var noisy = model.Select((p, i) => (double?)Math.Round(p + 3 * Math.Sin(i * 1.7))).ToArray();
        return new FigureData
        {
            Id = "hold",
            Plot = "hold",
            Phase = "evacuation",
            Title = "Hold after isolation",
            Caption = "Readings, the model chosen (a source that levels off) with its band, and what a steady rise would look like.",
            AltText = "Pressure rises from 342 to about 500 micron in 22 minutes and levels off below the decay limit of 1000 micron.",
            X = new FigureAxis("Time since the pump started", "min", AxisScale.Minutes),
            Y = new FigureAxis("Pressure", "micron", AxisScale.Linear, 300, 1050),
            Curves =
            [
                Curve("measured", CurveRole.Measured, x, noisy),
                Curve("source", CurveRole.Model, x, [.. model.Select(p => (double?)p)], [.. model.Select(p => (double?)(p - 9))], [.. model.Select(p => (double?)(p + 9))]),
                Curve("steady rise", CurveRole.Model, [71, 93], [360, 530]),
            ],
            Lines = [new FigureLine("decay limit 1000 micron", 1000, AxisName.Y, LineRole.DecayLimit)],
        };
    }

    private static FigureData ChargeTime() => new()
    {
        Id = "charge-time",
        Plot = "charge-time",
        Phase = "charge",
        Title = "Superheat and subcooling",
        Caption = "Bars are U; the band is the maker's tolerance of subcooling.",
        AltText = "Superheat settles from 15.6 to 12.9 °F and subcooling from 9.1 to 10.5 °F between 11:05 and 11:35.",
        X = new FigureAxis("Time", "", AxisScale.Clock),
        Y = new FigureAxis("Temperature difference", "°F", AxisScale.Linear, 0, 20),
        Curves =
        [
            Curve("superheat", CurveRole.Measured, [665, 680, 695], [15.6, 13.2, 12.9], [14.1, 11.7, 11.4], [17.1, 14.7, 14.4]),
            Curve("subcooling", CurveRole.Measured, [665, 680, 695], [9.1, 10.2, 10.5], [7.7, 8.8, 9.1], [10.5, 11.6, 11.9]),
        ],
        Lines = [new FigureLine("6 °F", 6, AxisName.Y, LineRole.Tolerance), new FigureLine("12 °F", 12, AxisName.Y, LineRole.Tolerance)],
    };

    private static FigureData PressureEnthalpy()
    {
        var h = Enumerable.Range(0, 121).Select(i => 180 + 2.2 * i).ToArray();
        var p = h.Select(x => (double?)(5000 * Math.Exp(-Math.Pow((x - 310) / 62, 2)))).ToArray();
        return new FigureData
        {
            Id = "pressure-enthalpy",
            Plot = "pressure-enthalpy",
            Phase = "charge",
            Title = "Measured states in the pressure–enthalpy plane",
            Caption = "Dome, one isotherm and the states at 11:35 (invented shapes).",
            AltText = "Pressure–enthalpy diagram with the saturation dome and the four measured states at 11:35.",
            X = new FigureAxis("Specific enthalpy", "kJ/kg", AxisScale.Linear),
            Y = new FigureAxis("Pressure", "kPa", AxisScale.Log10, 300, 6000),
            Curves =
            [
                Curve("saturation", CurveRole.Dome, h, p),
                Curve("97 °F", CurveRole.Isotherm, [240, 248, 405, 430], [5500, 2350, 2350, 900]),
                Curve("11:35", CurveRole.State, [262, 262, 428, 470, 262], [2430, 902, 902, 2430, 2430]),
            ],
        };
    }

    private static FigureCurve Curve(
        string label, CurveRole role, double[] x, double?[] y, double?[]? low = null, double?[]? high = null) => new()
        {
            Label = label,
            Role = role,
            X = [.. x],
            Y = [.. y],
            YLow = low is null ? [] : [.. low],
            YHigh = high is null ? [] : [.. high],
        };
}
