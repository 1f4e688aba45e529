using System.Collections.Immutable;
using Commission.Messages;

namespace Commission.Checks.Inference;

/// <summary>Where a reading lies beside what it should be.</summary>
internal enum ReadingPlace
{
    /// <summary>Far below.</summary>
    FarBelow,

    /// <summary>Below.</summary>
    Below,

    /// <summary>Where it should be.</summary>
    AsExpected,

    /// <summary>Above.</summary>
    Above,

    /// <summary>Far above.</summary>
    FarAbove,
}

/// <summary>A number of the running circuit against what it should be.</summary>
/// <param name="Scale">Which reading it is.</param>
/// <param name="Steps">How far it lies from what it should be, in steps; positive above.</param>
/// <param name="Doubt">Standard uncertainty of that difference, in steps.</param>
/// <param name="Value">The value, with what it is to be seen beside.</param>
/// <param name="Expected">What it should be, and where that comes from.</param>
internal sealed record Deviation(ReadingScale Scale, double Steps, double Doubt, Message Value, Message Expected)
{
    /// <summary>How far a sound system strays, in steps: half of a tolerance that somebody states, else the table's scatter.</summary>
    public double Scatter { get; init; } = Scale.Scatter;

    private double Band => Math.Sqrt((Scatter * Scatter) + (Doubt * Doubt));

    /// <summary>Whether it lies inside the range that is printed beside it.</summary>
    public bool IsInside { get; init; }

    /// <summary>Where it lies.</summary>
    public ReadingPlace Place => IsInside ? ReadingPlace.AsExpected : (Steps / Math.Max(Band, 0.3)) switch
    {
        < -2.5 => ReadingPlace.FarBelow,
        < -1.25 => ReadingPlace.Below,
        > 2.5 => ReadingPlace.FarAbove,
        > 1.25 => ReadingPlace.Above,
        _ => ReadingPlace.AsExpected,
    };

    /// <summary>Logarithm of the likelihood under a shift of so many steps. One reading in fifty is simply wrong, and must not decide alone.</summary>
    public double LogLikelihood(double shift)
    {
        const double Wrong = 0.02;
        const double WrongBand = 4;
        var sound = Normal(Steps - shift, Band);
        return Math.Log(((1 - Wrong) * sound) + (Wrong * Normal(Steps, WrongBand)));
    }

    private static double Normal(double x, double sigma) => Math.Exp(-0.5 * x * x / (sigma * sigma)) / (sigma * Math.Sqrt(2 * Math.PI));
}

/// <summary>A thing seen or tried.</summary>
/// <param name="What">What was looked at: <c>sight glass</c>.</param>
/// <param name="Word">What it showed: <c>bubbles</c>.</param>
internal sealed record Seen(string What, string Word);

/// <summary>A cause with its probability and what each piece of evidence did for it.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Probability">Among all causes, 0 to 1.</param>
/// <param name="Moves">For each piece of evidence, by its id in the table, the factor (as a natural logarithm) by which it speaks for this cause against the sound circuit.</param>
internal sealed record WeighedCause(CauseEntry Cause, double Probability, ImmutableArray<(string Evidence, double LogFactor)> Moves);

/// <summary>
/// Weighs causes against evidence by Bayes' rule: how often a cause is met, times the likelihood of each reading under it, over sizes of the
/// fault from half a step table to more than twice. Readings count as independent given the cause; those that follow from others are left out.
/// </summary>
internal static class Weighing
{
    private static readonly double[] Sizes = [0.45, 0.7, 1, 1.5, 2.2];

    /// <summary>The causes, the likeliest first.</summary>
    /// <param name="table">The causes.</param>
    /// <param name="deviations">Numbers.</param>
    /// <param name="seen">Things seen.</param>
    /// <param name="way">How the circuit works.</param>
    /// <param name="absent">What the circuit has not, of the things a cause may need.</param>
    public static ImmutableArray<WeighedCause> Weigh(CauseTable table, IReadOnlyList<Deviation> deviations, IReadOnlyList<Seen> seen, CircuitWay way, ImmutableArray<string> absent)
    {
        var causes = table.Causes.Where((c, i) => (c.Needs is null || !absent.Contains(c.Needs, StringComparer.Ordinal)) && (i == 0 || !c.Shifts(way).IsEmpty)).ToArray();
        var logs = causes.Select(c => Log(c, causes[0], deviations, seen, way)).ToArray();
        var top = logs.Max();
        var total = logs.Sum(l => Math.Exp(l - top));
        return
        [
            .. causes
                .Select((c, i) => new WeighedCause(c, Math.Exp(logs[i] - top) / total, Moves(c, causes[0], deviations, seen, way)))
                .OrderByDescending(w => w.Probability),
        ];
    }

    private static double Log(CauseEntry cause, CauseEntry sound, IReadOnlyList<Deviation> deviations, IReadOnlyList<Seen> seen, CircuitWay way)
    {
        var logs = Forms(cause, way).Select(form => deviations.Sum(d => d.LogLikelihood(form.Shift(d)))).ToArray();
        var top = logs.Max();
        return Math.Log(cause.Often) + top + Math.Log(logs.Sum(l => Math.Exp(l - top)) / logs.Length) + seen.Sum(s => LogChance(cause, sound, s));
    }

    // What each reading says in the form that fits best.
    private static ImmutableArray<(string Evidence, double LogFactor)> Moves(CauseEntry cause, CauseEntry sound, IReadOnlyList<Deviation> deviations, IReadOnlyList<Seen> seen, CircuitWay way)
    {
        var form = Forms(cause, way).MaxBy(f => deviations.Sum(d => d.LogLikelihood(f.Shift(d))))!;
        return
        [
            .. deviations.Select(d => (d.Scale.Id, d.LogLikelihood(form.Shift(d)) - d.LogLikelihood(0))),
            .. seen.Select(s => (s.What, LogChance(cause, sound, s) - LogChance(sound, sound, s))),
        ];
    }

    private static IEnumerable<Form> Forms(CauseEntry cause, CircuitWay way)
    {
        var lines = cause.Shifts(way);
        return lines.IsEmpty ? [new Form(ImmutableDictionary<string, double>.Empty, 0)] : lines.SelectMany(line => Sizes.Select(size => new Form(line, size)));
    }

    // One way in which a cause shows itself, in one size.
    private sealed record Form(IReadOnlyDictionary<string, double> Line, double Size)
    {
        public double Shift(Deviation deviation) => Size * Line.GetValueOrDefault(deviation.Scale.Id);
    }

    // A cause that says nothing of a thing leaves it as a sound circuit has it; a thing nobody foresaw moves nothing.
    private static double LogChance(CauseEntry cause, CauseEntry sound, Seen seen) =>
        (cause.Seen.GetValueOrDefault(seen.What) ?? sound.Seen.GetValueOrDefault(seen.What))?.GetValueOrDefault(seen.Word) is { } chance and > 0 ? Math.Log(chance) : 0;
}
