using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.PressureTest.Analysis;
using Commission.Checks.Readings;
using Commission.Fluids;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.PressureTest;

/// <summary>The nitrogen hold of a job, worked out once: its readings corrected, referred to the temperature at the start by the density of real nitrogen, and the loss with its causes.</summary>
internal sealed class NitrogenRun : IAnalysis<NitrogenRun>
{
    private const double Hour = 3600;

    private readonly CheckContext context;

    private NitrogenRun(CheckContext context)
    {
        this.context = context;
        Test = context.Job.PressureTest;
        if (Test?.Tightness is not { } hold)
        {
            WhyNot = "no hold is written";
            return;
        }

        Hold = hold;
        Gauge = context.Get<InstrumentKit>().For(ReadingName.PressureTest, Test.With);
        Rows = NitrogenRows.Of(context, Test, hold);
        WhyNot = Rows.WhyNot;
        if (WhyNot is null)
            Compute(hold);
    }

    /// <summary>The test; null when the job has none.</summary>
    public Jobs.Model.PressureTest? Test { get; }

    /// <summary>The hold; null when none is written.</summary>
    public PressureHold? Hold { get; }

    /// <summary>The gauge; null when the job names none.</summary>
    public UsedInstrument? Gauge { get; }

    /// <summary>The readings; null without a hold.</summary>
    public NitrogenRows? Rows { get; }

    /// <summary>Why there is no loss; null when there is.</summary>
    public string? WhyNot { get; private set; }

    /// <summary>The loss between the ends; null when it cannot be computed.</summary>
    public NitrogenLoss? Loss { get; private set; }

    /// <summary>The log referred to the first temperature; null without a log.</summary>
    public NitrogenSeriesResult? Course { get; private set; }

    /// <inheritdoc/>
    public static NitrogenRun Create(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return new NitrogenRun(context);
    }

    /// <summary>Density of nitrogen, kg/m³; null outside the equation.</summary>
    /// <param name="kelvin">K.</param>
    /// <param name="pascals">Pa absolute.</param>
    public static double? Density(double kelvin, double pascals) => Nitrogen.Density(kelvin, pascals) is { Ok: true, Value: var rho } ? rho : null;

    private void Compute(PressureHold hold)
    {
        var rows = Rows!;
        var errors = Errors(rows);
        if (rows.IsLog)
        {
            Course = NitrogenSeries.Analyze(rows.Times, rows.Readings, errors, Density);
            // The same means again, with the readings of this scope: a Monte Carlo run draws its own.
            Loss = Course is { } course ? NitrogenHold.Between(course.Loss.Start, course.Loss.End, errors, Density, context.Scope) : null;
        }
        else
        {
            Loss = NitrogenHold.Between(rows.Readings[0], rows.Readings[^1], errors, Density, context.Scope);
        }

        if (Loss is null)
        {
            WhyNot = "the readings lie outside the equation of nitrogen";
            return;
        }

        foreach (var line in Loss.Loss.Budget)
            context.Causes.Enter(line.Cause, KindOf(line.Cause.Name));
    }

    private NitrogenErrors Errors(NitrogenRows rows)
    {
        var start = rows.Readings[0];
        var scale = Gauge?.FullScaleSi;
        var zero = Gauge?.HalfWidth(0, Dimension.PressureDifference) ?? 0;
        var half = Gauge?.HalfWidth(start.Gauge, Dimension.PressureDifference) ?? zero;
        var rectangle = Gauge is null ? 1 : Gauge.AccuracyCause.StandardUncertainty * Math.Sqrt(3);
        var limit = context.Limits.Find("assumption.nitrogen.temperature");
        var change = Math.Abs(rows.Readings[^1].Temperature - start.Temperature);
        var gas = Math.Max(limit?.Target?.Si ?? 0, (limit?.Companion("of change") ?? 0) * change);
        var atmosphere = context.Get<SiteAtmosphere>();
        return new NitrogenErrors
        {
            Resolution = Gauge?.ResolutionFor(Dimension.PressureDifference) ?? rows.Step,
            Repeatability = context.Assume("assumption.gauge.repeatability") * (scale ?? start.Gauge),
            Zero = zero * rectangle,
            Gain = start.Gauge > 0 ? (half - zero) / start.Gauge * rectangle : 0,
            Atmosphere = rows.IsAbsolute ? 0 : atmosphere.Value.StandardUncertainty * Math.Sqrt(3),
            AtmosphereChange = rows.IsAbsolute || rows.BarometerAtBothEnds ? 0 : Math.Min(
                context.Assume("assumption.atmosphere.change") * rows.Length / Hour, context.Assume("assumption.atmosphere.weather") * Math.Sqrt(3)),
            GasMinusClamp = gas,
            Thermometer = rows.ThermometerHalfWidth,
        };
    }

    // The causes are named by the analysis; their units follow from what they are.
    private static DisplayKind KindOf(string name) =>
        name.StartsWith("mean gas", StringComparison.Ordinal) || name.StartsWith("thermometer", StringComparison.Ordinal) ? DisplayKind.TemperatureDifference
        : name.StartsWith("gain", StringComparison.Ordinal) ? DisplayKind.Percentage
        : DisplayKind.PressureDifference;
}
