using System.Collections.Immutable;
using Commission.Checks.Readings;
using Commission.Measurement.Uncertainty;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>A number worked out from one row of readings, at both stages of correction, or why there is none.</summary>
internal sealed record RowNumber
{
    private RowNumber()
    {
    }

    /// <summary>After every correction, SI; null when there is none.</summary>
    public Uncertain? Value { get; private init; }

    /// <summary>After zero offsets and ice-point residuals alone, SI; not a number when that does not exist.</summary>
    public double AfterZero { get; private init; } = double.NaN;

    /// <summary>Why there is none; null when there is one.</summary>
    public string? WhyNot { get; private init; }

    /// <summary>The readings it rests on.</summary>
    public ImmutableArray<CorrectedReading> Readings { get; private init; } = [];

    /// <summary>How it came about, after the corrections of the readings.</summary>
    public ImmutableArray<TraceStep> Steps { get; private init; } = [];

    /// <summary>A number.</summary>
    /// <param name="value">After every correction.</param>
    /// <param name="afterZero">After zero and residual alone.</param>
    /// <param name="readings">What it rests on.</param>
    /// <param name="steps">How it came about.</param>
    public static RowNumber Of(Uncertain value, double afterZero, ImmutableArray<CorrectedReading> readings, ImmutableArray<TraceStep> steps) =>
        new() { Value = value, AfterZero = afterZero, Readings = readings, Steps = steps };

    /// <summary>None.</summary>
    /// <param name="why">Why, without a full stop.</param>
    /// <param name="readings">What was read all the same.</param>
    public static RowNumber None(string why, params ImmutableArray<CorrectedReading> readings) => new() { WhyNot = why.TrimEnd('.'), Readings = readings };
}
