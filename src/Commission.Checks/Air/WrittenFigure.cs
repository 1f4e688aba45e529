using System.Globalization;
using Commission.Checks.Readings;
using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Air;

/// <summary>A figure of the job that was not read on an instrument: a tape's length, a duct's area, a furnace's rating. It is as good as what is written behind it, else taken as it stands.</summary>
internal static class WrittenFigure
{
    /// <summary>The figure.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="name">What it is.</param>
    /// <param name="given">The figure.</param>
    /// <param name="kind">How it is displayed, for the budget.</param>
    public static CorrectedReading Of<T>(CheckContext context, string name, Given<T> given, DisplayKind kind)
        where T : struct, IQuantity<T>
    {
        var value = given.Stated is { } stated
            ? context.Scope.Reading(
                given.Value.Si,
                1.0 * context.Causes.Enter(
                    RootCause.FromExpanded($"{name}: as stated", string.Create(CultureInfo.InvariantCulture, $"written with the figure, k = {stated.CoverageFactor:0.##}"), stated.HalfWidthSi, stated.CoverageFactor),
                    kind))
            : Uncertain.Exact(given.Value.Si);
        return new CorrectedReading
        {
            Name = name,
            Value = value,
            AfterZero = given.Value.Si,
            Uses = [new ReadingUse(name, given.Text, given.At, null)],
            AccuracyKnown = true,
        };
    }
}
