using System.Collections.Immutable;
using Commission.Checks.Readings;
using Commission.Checks.Recording;
using Commission.Fluids;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Series;

namespace Commission.Checks.Charge;

/// <summary>The measured states in the pressure–enthalpy plane, with the saturation dome and lines of constant temperature.</summary>
internal sealed class PressureEnthalpyFigure : IFigureSource
{
    private const int DomePoints = 60;
    private const int IsothermPoints = 24;

    // Saturation is followed to here, as a share of the critical temperature; nearer to the critical point the two phases cannot be told apart.
    private const double NearCritical = 0.9995;

    // The diagram shows somewhat more than the cycle, and the whole of the dome above it.
    private const double BelowCycle = 0.6;
    private const double AboveCycle = 1.6;
    private const double AboveDome = 1.1;

    /// <inheritdoc/>
    public IEnumerable<FigureData> Figures(CheckContext context)
    {
        if (context.Get<ChargeAnalysis>().Judged(OperatingMode.Cooling, ChargeCycle.Has) is not { } row || context.Get<CircuitRefrigerant>().Fluid is not { } fluid)
            yield break;
        var cycle = ChargeCycle.Of(context, row);
        if (cycle.WhyNot is not null)
            yield break;
        var present = context.Present;
        var low = cycle.Suction.Pressure * BelowCycle;
        var high = cycle.Isentropic.Pressure * AboveCycle;
        if (fluid.CriticalPoint is { Ok: true, Value: var critical })
            high = Math.Max(high, critical.Pressure * AboveDome);
        var curves = ImmutableArray.CreateBuilder<FigureCurve>();
        if (Dome(context, fluid, low) is { } dome)
            curves.Add(dome);
        foreach (var temperature in new[] { cycle.Suction.Temperature, cycle.Liquid.Temperature, cycle.Isentropic.Temperature })
        {
            if (Isotherm(context, fluid, temperature, low, high) is { } isotherm)
                curves.Add(isotherm);
        }

        curves.Add(States(context, row, cycle));
        var designation = context.Get<CircuitSaturation>().Designation;
        yield return new FigureData
        {
            Id = "pressure-enthalpy",
            Plot = "pressure-enthalpy",
            Phase = Phases.Charge,
            Title = $"Measured states of {designation}",
            Caption = $"Saturation dome of {designation}, lines of constant temperature and the states at {row.Time}: vapor at the service valve, ideal compression, liquid at the service valve, throttled. Bars are U of the pressures.",
            AltText = $"Pressure–enthalpy diagram of {designation} at {row.Time}: evaporation at {present.Text(cycle.Suction.Pressure, DisplayKind.AbsolutePressure)}, "
                + $"condensation at {present.Text(cycle.Isentropic.Pressure, DisplayKind.AbsolutePressure)}, {present.Text(cycle.Capacity.Value, DisplayKind.Enthalpy)} taken up.",
            X = new FigureAxis("Specific enthalpy", present.Unit(DisplayKind.Enthalpy), AxisScale.Linear),
            Y = new FigureAxis("Pressure", present.Unit(DisplayKind.AbsolutePressure), AxisScale.Log10, Pressure(context, low), Pressure(context, high)),
            Curves = curves.ToImmutable(),
        };
    }

    private static FigureCurve? Dome(CheckContext context, Refrigerant fluid, double lowest)
    {
        if (fluid.CriticalPoint is not { Ok: true, Value: var critical } || fluid.BubbleAtPressure(lowest) is not { Ok: true, Value: var start })
            return null;
        var liquid = new List<(double H, double P)>();
        var vapor = new List<(double H, double P)>();
        for (var i = 0; i < DomePoints; i++)
        {
            // Closer together toward the top, where the dome bends.
            var away = 1 - (i / (double)(DomePoints - 1));
            var t = start.Temperature + (((NearCritical * critical.Temperature) - start.Temperature) * (1 - (away * away)));
            if (fluid.BubbleAtTemperature(t) is { Ok: true, Value: var bubble })
                liquid.Add((bubble.LiquidEnthalpy, bubble.Pressure));
            if (fluid.DewAtTemperature(t) is { Ok: true, Value: var dew })
                vapor.Add((dew.VaporEnthalpy, dew.Pressure));
        }

        if (liquid.Count < 2 || vapor.Count < 2)
            return null;
        vapor.Reverse();
        return Make(context, "saturation", CurveRole.Dome, [.. liquid.Select(p => ((double H, double? P))(p.H, p.P)), .. vapor.Select(p => ((double H, double? P))(p.H, p.P))]);
    }

    // Inside the dome of a blend a line of constant temperature is neither straight nor level: it is left out there, and drawn across for a pure fluid.
    private static FigureCurve? Isotherm(CheckContext context, Refrigerant fluid, double kelvin, double low, double high)
    {
        var points = new List<(double H, double? P)>();
        var bubble = fluid.BubbleAtTemperature(kelvin);
        var dew = fluid.DewAtTemperature(kelvin);
        if (bubble is { Ok: true, Value: var b } && b.Pressure < high)
        {
            AddBranch(fluid, kelvin, high, Math.Max(b.Pressure, low), Phase.Liquid, points);
            if (fluid.IsBlend && points.Count > 0)
                points.Add((points[^1].H, null));
        }

        if (!dew.Ok)
            AddBranch(fluid, kelvin, high, low, Phase.Vapor, points);
        else if (dew.Value.Pressure > low)
            AddBranch(fluid, kelvin, Math.Min(dew.Value.Pressure, high), low, Phase.Vapor, points);
        return points.Count(p => p.P is not null) < 2 ? null : Make(context, context.Present.Text(kelvin, DisplayKind.Temperature), CurveRole.Isotherm, points);
    }

    private static void AddBranch(Refrigerant fluid, double kelvin, double from, double to, Phase branch, List<(double H, double? P)> points)
    {
        for (var i = 0; i < IsothermPoints; i++)
        {
            var p = from * Math.Pow(to / from, i / (double)(IsothermPoints - 1));
            if (fluid.At(kelvin, p, branch) is { Ok: true, Value: var state })
                points.Add((state.Enthalpy, p));
        }
    }

    private static FigureCurve States(CheckContext context, ChargeRow row, ChargeCycle cycle)
    {
        var low = row.VaporPressure!.Value;
        var liquid = row.LiquidPressure!.Value;
        var top = (row.DischargePressure ?? row.LiquidPressure)!.Value;
        var states = new List<(double H, Uncertain P)> { (cycle.Suction.Enthalpy, low), (cycle.Discharge?.Enthalpy ?? cycle.Isentropic.Enthalpy, top), (cycle.Liquid.Enthalpy, liquid), (cycle.Throttled.Enthalpy, low), (cycle.Suction.Enthalpy, low) };
        return Make(context, row.Time, CurveRole.State, [.. states.Select(s => (s.H, (double?)s.P.Value))]) with
        {
            YLow = [.. states.Select(s => (double?)Pressure(context, s.P.Value - s.P.Expanded))],
            YHigh = [.. states.Select(s => (double?)Pressure(context, s.P.Value + s.P.Expanded))],
        };
    }

    private static FigureCurve Make(CheckContext context, string label, CurveRole role, IReadOnlyList<(double H, double? P)> points) => new()
    {
        Label = label,
        Role = role,
        X = [.. points.Select(p => context.Present.Value(p.H, DisplayKind.Enthalpy))],
        Y = [.. points.Select(p => p.P is { } pascals ? Pressure(context, pascals) : (double?)null)],
    };

    private static double Pressure(CheckContext context, double pascals) => context.Present.Value(pascals, DisplayKind.AbsolutePressure);
}
