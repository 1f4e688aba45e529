using System.Globalization;
using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Kernel;

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

/// <summary>
/// A number that was written down without an instrument of the job: a room's area, a mass on a label. What is known of its doubt is what
/// was written behind it, else the last digit of the number itself.
/// </summary>
internal static class WrittenNumber
{
    /// <summary>The number with its doubt.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="name">What it is.</param>
    /// <param name="given">The number.</param>
    /// <param name="kind">How it is displayed, for the budget.</param>
    public static Uncertain Of<T>(CheckContext context, string name, Given<T> given, DisplayKind kind)
        where T : struct, IQuantity<T>
    {
        var cause = given.Stated is { } stated
            ? RootCause.FromExpanded($"{name}: as stated", string.Create(CultureInfo.InvariantCulture, $"written with the number, k = {stated.CoverageFactor:0.##}"), stated.HalfWidthSi, stated.CoverageFactor)
            : given.Step is { } step and > 0 ? RootCause.FromResolution($"{name}: last digit", "smallest step of the number as written", step) : null;
        return cause is null ? Uncertain.Exact(given.Value.Si) : context.Scope.Reading(given.Value.Si, 1.0 * context.Causes.Enter(cause, kind));
    }
}
