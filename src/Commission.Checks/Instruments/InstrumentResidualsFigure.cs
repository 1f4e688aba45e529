using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Fluids.Water;
using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Series;

namespace Commission.Checks.Instruments;

/// <summary>What each thermometer and each pressure gauge showed less what was known, with U, between the edges of what is good.</summary>
internal sealed class InstrumentResidualsFigure : IFigureSource
{
    private readonly record struct Point(double Known, double Residual, double Expanded);

    /// <inheritdoc/>
    public IEnumerable<FigureData> Figures(CheckContext context)
    {
        var instruments = context.Get<InstrumentKit>().All;
        var thermometers = instruments.Select(i => (i.Id, Points: Temperatures(context, i).ToImmutableArray())).Where(t => !t.Points.IsEmpty).ToList();
        // Readings in ice alone say less in a figure than in their lines of the table.
        if (thermometers.Exists(t => t.Points.Length > 1))
            yield return Temperature(context, thermometers);
        var gauges = instruments.Select(i => (i.Id, Points: Pressures(context, i).ToImmutableArray())).Where(g => g.Points.Length > 1).ToList();
        if (gauges.Count > 0)
            yield return Pressure(context, gauges);
    }

    private static FigureData Temperature(CheckContext context, List<(string Id, ImmutableArray<Point> Points)> thermometers)
    {
        var present = context.Present;
        var unit = present.Unit(DisplayKind.TemperatureDifference);
        var factor = present.Units[DisplayKind.TemperatureDifference].Unit.Factor;
        var good = context.Limits.Find(LimitIds.InstrumentsIcePointGood)?.Upper?.Si;
        return new FigureData
        {
            Id = "instrument-residuals",
            Plot = "instrument-residuals",
            Phase = Phases.Instruments,
            Title = present.Text(InstrumentsMessages.FigureThermometers),
            Caption = present.Text(InstrumentsMessages.FigureThermometersCaption),
            AltText = present.Text(InstrumentsMessages.FigureResidualsAlt(new ListValue([.. thermometers.Select(i => InstrumentsMessages.ResidualsOf(new(i.Id), new ListValue([.. i.Points.Select(p => present.InMessage(p.Residual, DisplayKind.TemperatureDifference))], ListJoin.Comma)))], ListJoin.Semicolons))),
            X = new FigureAxis(present.Text(InstrumentsMessages.AxisKnownTemperature), present.Unit(DisplayKind.Temperature), AxisScale.Linear),
            Y = new FigureAxis(present.Text(InstrumentsMessages.AxisGaugeError), unit, AxisScale.Linear),
            Curves = [.. thermometers.Select(t => Curve(t.Id, t.Points, si => present.Value(si, DisplayKind.Temperature), factor))],
            Lines = good is { } g ? Edges(-g / factor, g / factor, present.Text(InstrumentsMessages.LineGood(present.InMessage(g, DisplayKind.TemperatureDifference)))) : [],
        };
    }

    private static FigureData Pressure(CheckContext context, List<(string Id, ImmutableArray<Point> Points)> gauges)
    {
        var present = context.Present;
        var factor = present.Units[DisplayKind.PressureDifference].Unit.Factor;
        return new FigureData
        {
            Id = "instrument-residuals-pressure",
            Plot = "instrument-residuals",
            Phase = Phases.Instruments,
            Title = present.Text(InstrumentsMessages.FigureGauges),
            Caption = present.Text(InstrumentsMessages.FigureGaugesCaption),
            AltText = present.Text(InstrumentsMessages.FigureResidualsAlt(new ListValue([.. gauges.Select(i => InstrumentsMessages.ResidualsOf(new(i.Id), new ListValue([.. i.Points.Select(p => present.InMessage(p.Residual, DisplayKind.PressureDifference))], ListJoin.Comma)))], ListJoin.Semicolons))),
            X = new FigureAxis(present.Text(InstrumentsMessages.AxisKnownPressure), present.Unit(DisplayKind.Pressure), AxisScale.Linear),
            Y = new FigureAxis(present.Text(InstrumentsMessages.AxisGaugeError), present.Unit(DisplayKind.PressureDifference), AxisScale.Linear),
            Curves = [.. gauges.Select(g => Curve(g.Id, g.Points, si => present.Value(si, DisplayKind.Pressure), factor))],
        };
    }

    private static ImmutableArray<FigureLine> Edges(double low, double high, string label) =>
    [
        new FigureLine(label, low, AxisName.Y, LineRole.Tolerance),
        new FigureLine("", high, AxisName.Y, LineRole.Tolerance),
    ];

    private static FigureCurve Curve(string label, ImmutableArray<Point> points, Func<double, double> known, double factor) => new()
    {
        Label = label,
        Role = CurveRole.Residual,
        X = [.. points.Select(p => known(p.Known))],
        Y = [.. points.Select(p => (double?)(p.Residual / factor))],
        YLow = [.. points.Select(p => (double?)((p.Residual - p.Expanded) / factor))],
        YHigh = [.. points.Select(p => (double?)((p.Residual + p.Expanded) / factor))],
    };

    private static IEnumerable<Point> Temperatures(CheckContext context, UsedInstrument instrument)
    {
        if (instrument.Dimension != Measurement.Quantities.Dimension.TemperatureDifference || instrument.Described.Checks is not { } checks)
            yield break;
        if (checks.IcePoint is { } ice)
            yield return At(context, instrument, ConversionFactors.CelsiusZero, (ice.Adjusted ?? ice.Read).Value.Si, 1.0 * instrument.BathCause);
        if (checks.WarmPoint is { } warm)
            yield return At(context, instrument, warm.Applied.Value.Si, (warm.Adjusted ?? warm.Read).Value.Si, Reference(warm.Applied));
        if (checks.BoilingPoint is { } boiling && context.Get<SiteAtmosphere>() is { IsStated: true } site && WaterSaturation.Temperature(site.Value.Value) is { Ok: true, Value: var boils })
        {
            var slope = WaterSaturation.Temperature(site.Value.Value * 1.001) is { Ok: true, Value: var above } ? (above - boils) / (0.001 * site.Value.Value) : 0;
            var weather = new RootCause(CommonMessages.AsWritten(new("T_b")), CommonMessages.AsWritten(new("p_atm")), slope * site.Value.StandardUncertainty);
            yield return At(context, instrument, boils, (boiling.Adjusted ?? boiling.Read).Value.Si, 1.0 * weather);
        }
    }

    private static IEnumerable<Point> Pressures(CheckContext context, UsedInstrument instrument)
    {
        if (instrument.Dimension != Measurement.Quantities.Dimension.PressureDifference || instrument.Described.Checks is not { } checks)
            yield break;
        if (checks.Zero is { } zero)
            yield return At(context, instrument, 0, (zero.Adjusted ?? zero.Read).Value.Si, default(RootTerm?));
        if (checks.KnownPressure is { } known)
            yield return At(context, instrument, known.Applied.Value.Si, (known.Adjusted ?? known.Read).Value.Si, Reference(known.Applied));
    }

    private static RootTerm? Reference(Given<Jobs.Model.QuantityValue> applied) =>
        applied.Stated is { } stated ? new RootTerm(RootCause.FromExpanded(CommonMessages.AsWritten(new("p_ref")), CommonMessages.AsWritten(new("U")), stated.HalfWidthSi, stated.CoverageFactor), 1) : default(RootTerm?);

    private static Point At(CheckContext context, UsedInstrument instrument, double known, double shown, RootTerm? reference)
    {
        var terms = new List<RootTerm> { 1.0 * instrument.ZeroCause };
        if (reference is { } r)
            terms.Add(r);
        var residual = context.Scope.Reading(shown - known, [.. terms]);
        return new Point(known, residual.Value, residual.Expanded);
    }
}
