using Commission.Checks.EvacuationAnalysis;
using Commission.Checks.Readings;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;

namespace Commission.Checks.Evacuation;

/// <summary>The gauge that read the evacuation: its step, its accuracy, whether it feels the gas.</summary>
internal sealed class VacuumGauge
{
    private readonly CheckContext context;
    private readonly double step;

    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="instrument">The instrument; null when the job names none.</param>
    /// <param name="step">Smallest step that the readings show, Pa, for a gauge whose resolution is not written.</param>
    public VacuumGauge(CheckContext context, UsedInstrument? instrument, double step)
    {
        this.context = context;
        this.step = step;
        Instrument = instrument;
    }

    /// <summary>The instrument; null when the job names none.</summary>
    public UsedInstrument? Instrument { get; }

    /// <summary>Its name in the job.</summary>
    public string? Id => Instrument?.Id;

    /// <summary>Smallest step, Pa: stated, else as the readings show it.</summary>
    public double Resolution => Instrument?.ResolutionFor(Dimension.VacuumLevel) ?? step;

    /// <summary>Whether its accuracy is written.</summary>
    public bool AccuracyKnown => Instrument?.HalfWidth(0, Dimension.VacuumLevel) is not null;

    /// <summary>Whether it shows other gases than air wrongly. A gauge whose sensor is not written is taken as one that does.</summary>
    public bool FeelsTheGas => Instrument?.Described.Sensor?.Value is not (SensorKind.Capacitance or SensorKind.Piezo);

    /// <summary>What is missing, as a reservation; null when nothing is.</summary>
    public string? Reservation => Instrument is null ? "the vacuum gauge is not named, so U is too small"
        : AccuracyKnown ? null
        : $"the accuracy of {Id} is not written, so U is too small";

    /// <summary>Its errors around a pressure as the analysis of a hold wants them, half-widths of rectangles.</summary>
    /// <param name="pascals">The pressure, Pa.</param>
    public GaugeCharacter CharacterAt(double pascals)
    {
        if (Instrument is not { } gauge || gauge.HalfWidth(pascals, Dimension.VacuumLevel) is not { } half || gauge.HalfWidth(0, Dimension.VacuumLevel) is not { } zero)
            return new GaugeCharacter(Resolution, 0, 0);
        // A statement with its own k is as wide as the rectangle of the same standard uncertainty.
        var rectangle = gauge.AccuracyCause.StandardUncertainty * Math.Sqrt(3);
        return new GaugeCharacter(Resolution, pascals > 0 ? (half - zero) / pascals * rectangle : 0, zero * rectangle);
    }

    /// <summary>A row of a log with what makes it doubtful: the gauge's accuracy, shared by all rows, and one step.</summary>
    /// <param name="name">What was read, with its time.</param>
    /// <param name="pascals">The pressure, Pa.</param>
    public Uncertain Reading(string name, double pascals)
    {
        var terms = new List<RootTerm>(2);
        if (Instrument?.HalfWidth(pascals, Dimension.VacuumLevel) is { } half)
            terms.Add(half * Instrument.AccuracyCause);
        if (Instrument?.DigitsIncluded != true && Resolution > 0)
            terms.Add(1.0 * context.Causes.Enter(RootCause.FromResolution($"{name}: resolution", "smallest step of the indication", Resolution), DisplayKind.Vacuum));
        return context.Scope.Reading(pascals, [.. terms]);
    }
}
