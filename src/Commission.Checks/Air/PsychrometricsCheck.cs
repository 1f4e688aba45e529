using System.Collections.Immutable;
using Commission.Checks.AirReadings;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Wording;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;
using Commission.Records.Series;

namespace Commission.Checks.Air;

/// <summary>Return and supply air at the pressure of the site: humidity ratio, enthalpy, relative humidity, dew point, volume. Information.</summary>
internal sealed class PsychrometricsCheck : ICheck
{
    public string Id => "air.psychrometrics";

    public string Phase => Phases.Air;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var states = context.Get<AirStates>();
        if (states is { Row.Written: { ReturnWetBulb: not null } or { ReturnHumidity: not null }, Return: { } entering })
            yield return Tell(context, states.Row, entering);
        if (states is { Row.Written: { SupplyWetBulb: not null } or { SupplyHumidity: not null }, Supply: { } leaving })
            yield return Tell(context, states.Row, leaving);
    }

    private Finding Tell(CheckContext context, ChargeRow row, AirState state)
    {
        var present = context.Present;
        var finding = context.Finding(this, present.Text(AirMessages.StateSubject(state.Name, new(row.Time)))).Use(AirMessages.ReadingTime, row.Written.At);
        foreach (var reading in state.Readings)
            finding.Use(reading);
        if (state.WhyNot is { } why)
            return finding.NotEvaluated(why, state.Todo!);
        var atmosphere = context.Get<SiteAtmosphere>();
        foreach (var use in atmosphere.Uses)
            finding.Use(use);
        var enthalpy = AirText.Enthalpy(present, state.Enthalpy);
        var isUs = AirText.IsUs(present);
        var at = AirMessages.StateNumbers(present.InMessage(state.DryBulb.Value, DisplayKind.Temperature), present.InMessage(state.WetBulb.Value, DisplayKind.Temperature), present.Value(atmosphere.Value.Value, DisplayKind.AbsolutePressure, 3));
        finding
            .Step(atmosphere.Step)
            .Step("W", AirMessages.StateRatio, "((2501 − 2.326·t_wb)·W_s(t_wb) − 1.006·(t − t_wb)) / (2501 + 1.86·t − 4.186·t_wb)", at, AirText.Ratio(present, state.HumidityRatio), AirState.Source)
            .Step("h", isUs ? AirMessages.StateEnthalpyUs : AirMessages.StateEnthalpy, AirMessages.StateEnthalpyFormula, $"{present.Text(state.DryBulb.Value, DisplayKind.Temperature)}, {AirText.Ratio(present, Measurement.Uncertainty.Uncertain.Exact(state.HumidityRatio.Value))}", present.Text(enthalpy, DisplayKind.Enthalpy), AirState.Source)
            .Step("φ", AirMessages.StateHumidity, "p_v/p_s(t), p_v = p·W/(0.621945 + W)", at, present.Text(state.RelativeHumidity, DisplayKind.Percentage), AirState.Source);
        if (state.DewPoint is { } dew)
            finding.Step("t_d", AirMessages.StateDewPoint, "p_s(t_d) = p_v", at, present.Text(dew, DisplayKind.Temperature), AirState.Source);
        finding.Step("v", AirMessages.StateVolume, "0.287042·(t + 273.15)·(1 + 1.607858·W)/p", at, VolumeText(context, state), AirState.Source);
        finding.Measure(enthalpy, DisplayKind.Enthalpy);
        if (state.IsTakenAsSaturated)
            finding.Remark(AirMessages.StateTakenAsSaturated);
        var (water, time, humidity) = (new TextValue(AirText.Ratio(present, state.HumidityRatio)), new TextValue(row.Time), present.InMessage(state.RelativeHumidity, DisplayKind.Percentage));
        var heat = isUs ? AirMessages.StateHeatUs(present.InMessage(enthalpy, DisplayKind.Enthalpy)) : AirMessages.StateHeat(present.InMessage(enthalpy, DisplayKind.Enthalpy));
        return finding.Information(
            state.DewPoint is { } point ? AirMessages.StateWithDewPoint(state.Name, water, time, humidity, present.InMessage(point.Value, DisplayKind.Temperature), heat) : AirMessages.StateWas(state.Name, water, time, humidity, heat),
            AirMessages.StateKind);
    }

    // The trade's ft³/lb has no display kind of its own: the inverse of the density's unit.
    private static string VolumeText(CheckContext context, AirState state)
    {
        var unit = context.Present.Units[DisplayKind.Density].Unit;
        var value = QuantityFormat.Number(state.Volume.Value * unit.Factor, context.Present.Preset == "us" ? 3 : 4);
        return $"{value} {(context.Present.Preset == "us" ? "ft³/lb" : "m³/kg")}";
    }
}

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

    // Its dry bulbs, K, the largest humidity ratio, kg/kg, and the pressure it is drawn for.
    private readonly record struct Chart(double Low, double High, double Top, double Pascals);

    /// <inheritdoc/>
    public IEnumerable<FigureData> Figures(CheckContext context)
    {
        var states = context.Get<AirStates>();
        var present = context.Present;
        var known = new[] { states.Return, states.Supply }.OfType<AirState>().Where(s => s.WhyNot is null).Select(s => (s.Name, State: s)).ToArray();
        // One state alone says in a chart what its line of the table says.
        if (known.Length < 2)
            yield break;
        var pressure = context.Get<SiteAtmosphere>().Pressure;
        var (low, high) = Range(present, known.Min(s => s.State.DryBulb.Value), known.Max(s => s.State.DryBulb.Value));
        var top = Top(present, known.Max(s => s.State.HumidityRatio.Value + s.State.HumidityRatio.Expanded));
        var chart = new Chart(low, high, top, pressure.Si);
        var curves = ImmutableArray.CreateBuilder<FigureCurve>();
        curves.Add(Line(present, present.Text(AirMessages.CurveSaturation), CurveRole.Dome, Saturated, chart));
        foreach (var humidity in Humidities)
            curves.Add(Line(present, present.Text(AirMessages.CurveHumidity(present.Value(humidity, DisplayKind.Percentage, 0))), CurveRole.Isotherm, humidity, chart));
        foreach (var (name, state) in known)
            curves.Add(Point(present, present.Text(name), state));
        var areSeen = curves.Any(curve => curve.Role == CurveRole.State && SpreadBars.AreSeen(curve, 0, AirText.RatioValue(present, top), AxisScale.Linear));
        yield return new FigureData
        {
            Id = "psychrometric",
            Plot = "psychrometric",
            Phase = Phases.Air,
            Title = present.Text(AirMessages.PsychrometricTitle(new(states.Row!.Time))),
            Caption = RecordWords.Text(
                AirMessages.PsychrometricCaption(new(present.Text(pressure.Si, DisplayKind.AbsolutePressure, 2)), areSeen ? AirMessages.PsychrometricCaptionBars.Seen : AirMessages.PsychrometricCaptionBars.Hidden),
                present.Language),
            AltText = present.Text(AirMessages.PsychrometricAlt(new(states.Row.Time), Told(present, known[0].State), Told(present, known[1].State))),
            X = new FigureAxis(present.Text(AirMessages.AxisDryBulb), present.Unit(DisplayKind.Temperature), AxisScale.Linear, present.Value(low, DisplayKind.Temperature), present.Value(high, DisplayKind.Temperature)),
            Y = new FigureAxis(present.Text(AirMessages.AxisRatio), AirText.RatioUnit(present), AxisScale.Linear, 0, AirText.RatioValue(present, top)),
            Curves = curves.ToImmutable(),
        };
    }

    private static Message Told(Presentation present, AirState state) => AirMessages.PsychrometricState(
        state.Name, present.InMessage(state.DryBulb.Value, DisplayKind.Temperature), new(AirText.Ratio(present, state.HumidityRatio)), present.InMessage(state.RelativeHumidity.Value, DisplayKind.Percentage));

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
    private static FigureCurve Line(Presentation present, string label, CurveRole role, double humidity, Chart chart)
    {
        var x = ImmutableArray.CreateBuilder<double>();
        var y = ImmutableArray.CreateBuilder<double?>();
        for (var i = 0; i < Points; i++)
        {
            var kelvin = chart.Low + ((chart.High - chart.Low) * i / (Points - 1));
            if (AirState.RatioAt(kelvin, humidity, chart.Pascals) is not { } ratio)
                continue;
            x.Add(present.Value(kelvin, DisplayKind.Temperature));
            y.Add(AirText.RatioValue(present, ratio));
            if (ratio > chart.Top)
                break;
        }

        return new FigureCurve { Label = label, Role = role, X = x.ToImmutable(), Y = y.ToImmutable() };
    }

    private static FigureCurve Point(Presentation present, string label, AirState state)
    {
        var ratio = state.HumidityRatio;
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

/// <summary>The air side as written: static pressures, drops, how the airflow was found.</summary>
internal sealed class AirTable : ITableSource
{
    /// <inheritdoc/>
    public IEnumerable<RecordTable> Tables(CheckContext context)
    {
        if (context.Job.Air is not { } air)
            yield break;
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        void Add(Message what, string? text, string? note = null)
        {
            if (text is not null)
                rows.Add([context.Present.Text(what), text, note ?? ""]);
        }

        Add(AirMessages.TableFilter, air.Filter?.Text);
        Add(AirMessages.TableCoil, air.Coil?.Text, air.WetCoil is { } wet ? context.Present.Text(wet.Value ? AirMessages.TableWet : AirMessages.TableDry) : null);
        Add(AirMessages.TableOutdoorCoil, air.OutdoorCoil?.Text);
        Add(AirMessages.TablePanels, air.PanelsOn?.Text);
        Add(AirMessages.TableCoolingSpeed, air.BlowerAtCoolingSpeed?.Text);
        Add(AirMessages.TableBlowerSetting, air.BlowerSetting?.Text);
        Add(AirMessages.TableStaticReturn, air.Static?.Return?.Text, air.Static?.ReturnTap?.Text);
        Add(AirMessages.TableStaticSupply, air.Static?.Supply?.Text, air.Static?.SupplyTap?.Text);
        Add(AirMessages.TableExternal, air.Static?.External?.Text);
        Add(AirMessages.CheckFilterDrop, air.FilterDrop?.Text);
        Add(AirMessages.CheckCoilDrop, air.CoilDrop?.Text);
        foreach (var point in air.FanTable?.Points ?? [])
            Add(AirMessages.TableFanTable(new(point.Static.Text)), point.Airflow.Text, air.FanTable!.From.Value);
        var routes = context.Get<AirflowRoutes>();
        foreach (var route in routes.Chosen is { Value: not null } chosen ? routes.Others.Insert(0, chosen) : routes.Others)
            Add(AirMessages.TableAirflow(route.Words), context.Present.Text(route.Value!, DisplayKind.AirFlow), context.Present.Text(ReferenceEquals(route, routes.Chosen) ? AirMessages.TableCounts : AirMessages.TableCompared));
        Add(AirMessages.TableDesignAirflow, air.DesignAirflow?.Text);
        Add(AirMessages.TableBlowerPower, air.BlowerPower?.Text);
        if (rows.Count > 0)
        {
            yield return new RecordTable
            {
                Id = "air-side",
                Phase = Phases.Air,
                Title = context.Present.Text(AirMessages.TableTitle),
                Columns = [new TableColumn(context.Present.Text(AirMessages.TableWhat)), new TableColumn(context.Present.Text(AirMessages.TableValue)), new TableColumn(context.Present.Text(AirMessages.TablePlace))],
                Rows = rows.ToImmutable(),
            };
        }
    }
}

/// <summary>
/// Numbers of moist air as the trade prints them: humidity ratio in grains per pound or grams per kilogram; enthalpy above dry air at 0 °F
/// in US units, as its charts have it, and above dry air at 0 °C in SI.
/// </summary>
internal static class AirText
{
    private const double GrainsPerPound = 7000;
    private const double GramsPerKilogram = 1000;

    // Dry air from 0 °F to 0 °C with the heat capacity of the SI form, 1.006 kJ/(kg K).
    private const double ZeroFahrenheit = 1006 * 32 / 1.8;

    /// <summary>Unit of the humidity ratio.</summary>
    public static string RatioUnit(Presentation present) => IsUs(present) ? "gr/lb" : "g/kg";

    /// <summary>A humidity ratio in the unit of <see cref="RatioUnit"/>.</summary>
    /// <param name="present">How numbers are printed.</param>
    /// <param name="ratio">kg/kg.</param>
    public static double RatioValue(Presentation present, double ratio) => ratio * (IsUs(present) ? GrainsPerPound : GramsPerKilogram);

    /// <summary>A humidity ratio with its U.</summary>
    /// <param name="present">How numbers are printed.</param>
    /// <param name="ratio">kg/kg.</param>
    public static string Ratio(Presentation present, Uncertain ratio)
    {
        var most = IsUs(present) ? 1 : 2;
        var expanded = RatioValue(present, ratio.Expanded);
        var decimals = expanded > 0 ? QuantityFormat.DecimalsFor(expanded, most) : most;
        var value = QuantityFormat.Number(RatioValue(present, ratio.Value), decimals);
        return expanded > 0 ? $"{value} ± {QuantityFormat.Number(expanded, decimals)} {RatioUnit(present)}" : $"{value} {RatioUnit(present)}";
    }

    /// <summary>An enthalpy above the zero of the charts.</summary>
    /// <param name="present">How numbers are printed.</param>
    /// <param name="enthalpy">J/kg above dry air at 0 °C.</param>
    public static Uncertain Enthalpy(Presentation present, Uncertain enthalpy) => IsUs(present) ? enthalpy + ZeroFahrenheit : enthalpy;

    /// <summary>Whether enthalpy is zero at 0 °F; in SI it is at 0 °C.</summary>
    /// <param name="present">How numbers are printed.</param>
    public static bool IsUs(Presentation present) => present.Preset == "us";
}
