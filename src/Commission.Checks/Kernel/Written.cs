using System.Globalization;
using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;
using Commission.Source;

namespace Commission.Checks.Kernel;

/// <summary>
/// A number of the job that none of its instruments read: a tape's length, a room's area, a mass on a label. Its doubt is what was written
/// behind it, else the last digit of the number itself; a rating (a capacity, a heat output) is a name and is taken as it stands.
/// </summary>
internal static class Written
{
    /// <summary>A number that somebody measured.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="name">What it is; the same number under the same name is one cause in every check.</param>
    /// <param name="given">The number.</param>
    /// <param name="kind">How it is displayed, for the budget.</param>
    public static Uncertain Value<T>(CheckContext context, string name, Given<T> given, DisplayKind kind)
        where T : struct, IQuantity<T> =>
        context.Get<WrittenCauses>().Of(name, given, kind) is { } cause ? context.Scope.Reading(given.Value.Si, 1.0 * cause) : Uncertain.Exact(given.Value.Si);

    /// <summary>A number that somebody measured, with where it stands.</summary>
    /// <inheritdoc cref="Value"/>
    public static CorrectedReading Reading<T>(CheckContext context, string name, Given<T> given, DisplayKind kind)
        where T : struct, IQuantity<T> => AsReading(name, given, Value(context, name, given, kind));

    /// <summary>A rating: exact, unless something is written behind it.</summary>
    /// <inheritdoc cref="Value"/>
    public static CorrectedReading Rating<T>(CheckContext context, string name, Given<T> given, DisplayKind kind)
        where T : struct, IQuantity<T> => AsReading(name, given, given.Stated is null ? Uncertain.Exact(given.Value.Si) : Value(context, name, given, kind));

    /// <summary>The cause behind a stated uncertainty.</summary>
    /// <param name="name">What was read.</param>
    /// <param name="stated">What is written behind it.</param>
    /// <param name="what">What it is written behind.</param>
    public static RootCause AsStated(string name, Stated stated, KernelMessages.StatedBehindWhat what = KernelMessages.StatedBehindWhat.Reading) =>
        RootCause.FromExpanded(KernelMessages.AsStated(new(name)), Behind(stated, what), stated.HalfWidthSi, stated.CoverageFactor);

    /// <summary>Where a stated uncertainty comes from.</summary>
    /// <param name="stated">What is written.</param>
    /// <param name="what">What it is written behind.</param>
    public static Message Behind(Stated stated, KernelMessages.StatedBehindWhat what) =>
        KernelMessages.StatedBehind(what, new(stated.CoverageFactor.ToString("0.##", CultureInfo.InvariantCulture)));

    /// <summary>Where a value stands in the job, for the list of what a number rests on.</summary>
    /// <typeparam name="T">The value.</typeparam>
    /// <param name="given">The value.</param>
    /// <param name="name">What it is.</param>
    /// <param name="instrument">Which instrument read it; null when none of the job's did.</param>
    public static ReadingUse Use<T>(this Given<T> given, string name, string? instrument = null) => new(name, given.Text, given.At, instrument);

    private static CorrectedReading AsReading<T>(string name, Given<T> given, Uncertain value)
        where T : struct, IQuantity<T> => new()
        {
            Name = name,
            Value = value,
            AfterZero = given.Value.Si,
            Uses = [given.Use(name)],
            AccuracyKnown = true,
        };

    /// <summary>One cause for one number, whichever checks rest on it.</summary>
    private sealed class WrittenCauses : IAnalysis<WrittenCauses>
    {
        private readonly CheckContext _context;
        private readonly Dictionary<(SourceLocation At, string Name), RootCause?> _causes = [];

        private WrittenCauses(CheckContext context) => _context = context;

        public static WrittenCauses Create(CheckContext context) => new(context);

        public RootCause? Of<T>(string name, Given<T> given, DisplayKind kind)
            where T : struct, IQuantity<T>
        {
            if (_causes.TryGetValue((given.At, name), out var known))
                return known;
            var cause = given.Stated is { } stated ? AsStated(name, stated, KernelMessages.StatedBehindWhat.Number)
                : given.Step is { } step and > 0 ? RootCause.FromResolution(KernelMessages.LastDigit(new(name)), KernelMessages.StepAsWritten, step, CauseKind.LastDigit) : null;
            if (cause is not null)
                _context.Causes.Enter(cause, kind);
            _causes.Add((given.At, name), cause);
            return cause;
        }
    }
}
