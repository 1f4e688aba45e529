using System.Collections.Immutable;
using Commission.Measurement.Decisions;
using Commission.Records.Series;

namespace Commission.Documents.Tests.Plots;

/// <summary>Invented figures that press where drawing is hard: crowded events, gaps, two readings only, long series, curves that meet.</summary>
internal static class FigureSamples
{
    public static ImmutableArray<FigureData> All =>
    [
        InstrumentResiduals(), NitrogenHold(), NitrogenTwoReadings(), PullDown(), PullDownCrowded(), Hold(), HoldTwoReadings(),
        ChargeTime(), ChargeTimeWithLines(), PressureEnthalpy(), Psychrometric(),
    ];

    public static FigureData InstrumentResiduals() => Empty("instrument-residuals", "instrument-residuals") with
    {
        X = new FigureAxis("Reference temperature", "°F", AxisScale.Linear),
        Y = new FigureAxis("Shown less known", "°F", AxisScale.Linear),
        Curves =
        [
            Curve("suction clamp", CurveRole.Residual, [32, 104.2], [0.4, 0.9], [0.1, 0.2], [0.7, 1.6]),
            Curve("liquid clamp", CurveRole.Residual, [32, 104.2], [-0.2, 0.3], [-0.5, -0.4], [0.1, 1.0]),
            Curve("return psychrometer", CurveRole.Residual, [32], [-0.9], [-1.2], [-0.6]),
        ],
        Lines = [new FigureLine("+1 °F", 1, AxisName.Y, LineRole.Tolerance), new FigureLine("−1 °F", -1, AxisName.Y, LineRole.Tolerance)],
    };

    public static FigureData NitrogenHold()
    {
        var x = Enumerable.Range(0, 14).Select(i => 490 + 5.0 * i).ToArray();
        var raw = x.Select(t => (double?)(440 + 5.8 * (1 - Math.Exp(-(t - 490) / 25)))).ToArray();
        var referred = x.Select((t, i) => (double?)(440 - 0.25 * Math.Sin(i * 1.1))).ToArray();
        return Empty("nitrogen-hold", "nitrogen-hold") with
        {
            X = new FigureAxis("Time", "", AxisScale.Clock),
            Y = new FigureAxis("Pressure", "psig", AxisScale.Linear),
            Curves =
            [
                Curve("as read", CurveRole.Measured, x, raw),
                Curve("referred to 71.0 °F", CurveRole.Model, x, referred, [.. referred.Select(v => v - 1.5)], [.. referred.Select(v => v + 1.5)]),
            ],
            Events = [new FigureEvent(490, "filled and settled"), new FigureEvent(555, "end of hold")],
        };
    }

    public static FigureData NitrogenTwoReadings() => Empty("nitrogen-two", "nitrogen-hold") with
    {
        X = new FigureAxis("Time", "", AxisScale.Clock),
        Y = new FigureAxis("Pressure", "psig", AxisScale.Linear),
        Curves =
        [
            Curve("read", CurveRole.Measured, [490, 555], [440.0, 445.8], [438.5, 444.3], [441.5, 447.3]),
            Curve("without loss", CurveRole.Model, [490, 555], [440.0, 446.1]),
        ],
    };

    public static FigureData PullDown()
    {
        var x = Enumerable.Range(0, 280).Select(i => i / 3.0).ToArray();
        return Empty("pull-down", "pull-down") with
        {
            X = new FigureAxis("Time since the pump started", "min", AxisScale.Minutes, 0, 95),
            Y = new FigureAxis("Pressure", "micron", AxisScale.Log10, 100, 1_000_000),
            Curves = [Curve("measured", CurveRole.Measured, x, [.. x.Select(t => t is > 24 and < 27 ? (double?)null : Level(t))])],
            Lines =
            [
                new FigureLine("target 500 micron", 500, AxisName.Y, LineRole.Target),
                new FigureLine("decay limit 1,000 micron", 1000, AxisName.Y, LineRole.DecayLimit),
                new FigureLine("water boils at 66 °F", 16_330, AxisName.Y, LineRole.Saturation),
            ],
            Events = [new FigureEvent(24, "nitrogen break"), new FigureEvent(71, "isolated"), new FigureEvent(93, "end")],
        };
    }

    public static FigureData PullDownCrowded()
    {
        var random = new Random(20260704);
        var x = Enumerable.Range(0, 2000).Select(i => i * 0.075).ToArray();
        return Empty("pull-down-crowded", "pull-down") with
        {
            X = new FigureAxis("Time since the pump started", "min", AxisScale.Minutes),
            Y = new FigureAxis("Pressure", "Pa", AxisScale.Log10),
            Curves =
            [
                Curve("measured", CurveRole.Measured, x,
                [
                    .. x.Select(t =>
                    {
                        var noise = 1 + 0.03 * (random.NextDouble() - 0.5);
                        if (t < 6 || t is > 40 and < 44 || t is > 70 and < 73)
                            return (double?)null;
                        var since = t < 40 ? t : t < 70 ? t - 40 : t - 70;
                        return t < 128 ? (90_000 * Math.Exp(-since / 2.6) + 45) * noise : (45 + 3.5 * (t - 128)) * noise;
                    }),
                ]),
            ],
            Lines =
            [
                new FigureLine("target 67 Pa", 67, AxisName.Y, LineRole.Target),
                new FigureLine("decay limit 133 Pa", 133, AxisName.Y, LineRole.DecayLimit),
                new FigureLine("saturation of water at −4 °C (ice), coldest part", 437, AxisName.Y, LineRole.Saturation),
                new FigureLine("hold judged at 10 min", 138, AxisName.X, LineRole.DecayLimit),
            ],
            Events =
            [
                new FigureEvent(40, "first nitrogen break to 0.14 bar above atmosphere"), new FigureEvent(44, "pump on"), new FigureEvent(70, "second nitrogen break"),
                new FigureEvent(73, "pump on"), new FigureEvent(100, "gas ballast closed"), new FigureEvent(126, "cores closed"), new FigureEvent(128, "isolated"), new FigureEvent(149.9, "end of hold"),
            ],
        };
    }

    public static FigureData Hold()
    {
        var random = new Random(7);
        var x = Enumerable.Range(0, 265).Select(i => i / 12.0).ToArray();
        double Source(double t) => 342 + 178 * (1 - Math.Exp(-t / 9.0));
        var measured = x.Select(t => (double?)Math.Round(Source(t) + 4 * (random.NextDouble() + random.NextDouble() - 1))).ToArray();
        return Empty("hold", "hold") with
        {
            X = new FigureAxis("Time since isolation", "min", AxisScale.Minutes),
            Y = new FigureAxis("Pressure", "micron", AxisScale.Linear),
            Curves =
            [
                Curve("measured", CurveRole.Measured, x, measured),
                Curve("source that levels off", CurveRole.Model, x, [.. x.Select(t => (double?)Source(t))], [.. x.Select(t => (double?)(Source(t) - 9 - 0.3 * t))], [.. x.Select(t => (double?)(Source(t) + 9 + 0.3 * t))]),
                Curve("steady rise", CurveRole.Model, [0, 22], [371, 526], [340, 480], [402, 572]),
                Curve("Readings less source", CurveRole.Residual, x, [.. x.Select((t, i) => measured[i] - Source(t))]),
            ],
            Lines = [new FigureLine("decay limit 1,000 micron", 1000, AxisName.Y, LineRole.DecayLimit), new FigureLine("judged at 10 min", 10, AxisName.X, LineRole.DecayLimit)],
            Events = [new FigureEvent(0, "isolated"), new FigureEvent(22, "end")],
        };
    }

    public static FigureData HoldTwoReadings() => Empty("hold-two", "hold") with
    {
        X = new FigureAxis("Time since isolation", "min", AxisScale.Minutes),
        Y = new FigureAxis("Pressure", "micron", AxisScale.Linear),
        Curves = [Curve("as written down", CurveRole.Measured, [0, 15], [410, 720], [390, 690], [430, 750])],
        Lines = [new FigureLine("decay limit 1,000 micron", 1000, AxisName.Y, LineRole.DecayLimit), new FigureLine("judged at 10 min", 10, AxisName.X, LineRole.DecayLimit)],
    };

    public static FigureData ChargeTime()
    {
        double[] x = [650, 655, 660, 665, 670, 675, 680, 685, 690, 695];
        double?[] superheat = [21.2, 19.0, 17.1, 15.6, 14.8, 13.9, 13.2, 13.1, 12.9, 12.9];
        double?[] subcooling = [5.2, 6.9, 8.0, 9.1, 9.6, 10.0, 10.2, 10.3, 10.5, 10.5];
        return Empty("charge-time", "charge-time") with
        {
            X = new FigureAxis("Time", "", AxisScale.Clock),
            Y = new FigureAxis("Temperature difference", "°F", AxisScale.Linear),
            Curves =
            [
                Curve("superheat", CurveRole.Measured, x, superheat, [.. superheat.Select(v => v - 1.5)], [.. superheat.Select(v => v + 1.5)]),
                Curve("subcooling", CurveRole.Measured, x, subcooling, [.. subcooling.Select(v => v - 1.4)], [.. subcooling.Select(v => v + 1.4)]),
                Curve("superheat target 13.6 ± 5 °F", CurveRole.Limit, [650, 695], [13.6, 13.6], [8.6, 8.6], [18.6, 18.6]),
                Curve("subcooling plate 9 ± 3 °F", CurveRole.Limit, [650, 695], [9, 9], [6, 6], [12, 12]),
            ],
            Events = [new FigureEvent(662, "+3 oz"), new FigureEvent(672, "+2 oz"), new FigureEvent(687, "steady from here")],
        };
    }

    public static FigureData ChargeTimeWithLines() => Empty("charge-lines", "charge-time") with
    {
        X = new FigureAxis("Time", "", AxisScale.Clock),
        Y = new FigureAxis("Temperature difference", "°F", AxisScale.Linear, 0, 20),
        Curves =
        [
            Curve("superheat", CurveRole.Measured, [665, 680, 695], [15.6, 13.2, 12.9], [14.1, 11.7, 11.4], [17.1, 14.7, 14.4]),
            Curve("subcooling", CurveRole.Measured, [665, 680, 695], [9.1, 10.2, 10.5], [7.7, 8.8, 9.1], [10.5, 11.6, 11.9]),
        ],
        Lines = [new FigureLine("6 °F", 6, AxisName.Y, LineRole.Tolerance), new FigureLine("12 °F", 12, AxisName.Y, LineRole.Tolerance)],
    };

    public static FigureData PressureEnthalpy()
    {
        var h = Enumerable.Range(0, 121).Select(i => 190 + 2.0 * i).ToArray();
        double Dome(double x) => 5300 * Math.Exp(-Math.Pow(Math.Abs(x - 335) / (x < 335 ? 75 : 52), 2.2));
        return Empty("pressure-enthalpy", "pressure-enthalpy") with
        {
            X = new FigureAxis("Specific enthalpy", "kJ/kg", AxisScale.Linear),
            Y = new FigureAxis("Pressure", "kPa", AxisScale.Log10, 300, 6000),
            Curves =
            [
                Curve("saturation of R-454B", CurveRole.Dome, h, [.. h.Select(x => (double?)Dome(x))]),
                Curve("50 °F", CurveRole.Isotherm, [229, 229.5, 245, 398, 424, 433], [6000, 4000, 1000, 980, 700, 400]),
                Curve("100 °F", CurveRole.Isotherm, [262, 262.5, 275, 383, 425, 455], [6000, 4000, 2350, 2300, 1500, 800]),
                Curve("150 °F", CurveRole.Isotherm, [318, 325, 352, 408, 452, 480], [6000, 5400, 4700, 3600, 2200, 800]),
                Curve("cycle at 11:35", CurveRole.State, [262, 262, 428, 462, 262], [2430, 902, 902, 2430, 2430], [2400, 880, 880, 2400, 2400], [2460, 924, 924, 2460, 2460]),
            ],
        };
    }

    public static FigureData Psychrometric()
    {
        var t = Enumerable.Range(0, 61).Select(i => 40.0 + i).ToArray();
        double Saturated(double f) => 5.2 * Math.Exp((f - 40) * 0.0385);
        return Empty("psychrometric", "psychrometric") with
        {
            X = new FigureAxis("Dry bulb", "°F", AxisScale.Linear, 40, 100),
            Y = new FigureAxis("Humidity ratio", "g/kg", AxisScale.Linear, 0, 25),
            Curves =
            [
                Curve("saturation", CurveRole.Dome, t, [.. t.Select(f => (double?)Saturated(f))]),
                .. new[] { 20, 40, 60, 80 }.Select(rh => Curve($"{rh} % RH", CurveRole.Isotherm, t, [.. t.Select(f => (double?)(Saturated(f) * rh / 100))])),
                Curve("return air", CurveRole.State, [76], [9.8], [9.2], [10.4]),
                Curve("supply air", CurveRole.State, [57], [8.6], [8.1], [9.1]),
            ],
        };
    }

    private static double Level(double t) => t switch
    {
        <= 24 => 700_000 * Math.Exp(-t / 3.2) + 900,
        <= 71 => 760_000 * Math.Exp(-(t - 27) / 3.0) + 330 + 0.3 * (71 - t),
        _ => 342 + 178 * (1 - Math.Exp(-(t - 71) / 9.0)),
    };

    private static FigureData Empty(string id, string plot) => new()
    {
        Id = id,
        Plot = plot,
        Phase = "evacuation",
        Title = id,
        Caption = "An invented figure.",
        AltText = "An invented figure.",
        X = new FigureAxis("", "", AxisScale.Linear),
        Y = new FigureAxis("", "", AxisScale.Linear),
    };

    private static FigureCurve Curve(string label, CurveRole role, double[] x, double?[] y, double?[]? low = null, double?[]? high = null) => new()
    {
        Label = label,
        Role = role,
        X = [.. x],
        Y = [.. y],
        YLow = low is null ? [] : [.. low],
        YHigh = high is null ? [] : [.. high],
    };
}
