using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Limits;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Checks.Inference;

/// <summary>What can be wrong with a running circuit and what each cause does to each reading: <c>causes.yaml</c> beside this file.</summary>
/// <param name="Readings">The readings that are weighed, by id.</param>
/// <param name="Causes">The causes, the sound circuit first.</param>
internal sealed record CauseTable(IReadOnlyDictionary<string, ReadingScale> Readings, ImmutableArray<CauseEntry> Causes)
{
    private static readonly Lazy<CauseTable> Embedded = new(() => EmbeddedYaml.Read("inference/causes", Read));

    /// <summary>The table of this program.</summary>
    public static CauseTable Instance => Embedded.Value;

    private static CauseTable? Read(SourceNode root, ProblemList problems)
    {
        if (StrictMapping.Open(root, "the table of causes", problems) is not { } table || table.Require("readings") is not SourceMapping readings || table.Require("causes") is not SourceMapping causes)
            return null;
        table.Close();
        var scales = readings.Entries.ToDictionary(e => e.Key.Text, e => Scale(e, problems), StringComparer.Ordinal);
        return new CauseTable(scales, [.. causes.Entries.Select(e => Cause(e, scales.Keys, problems))]);
    }

    private static ReadingScale Scale(SourceEntry entry, ProblemList problems)
    {
        var scale = StrictMapping.Open(entry.Value, "a reading", problems)!;
        var step = scale.RequireText("step")!;
        var (number, unit) = step.Text.Split(' ') is [var n, var u] ? (n, u) : ("", "");
        if (unit is not ("K" or "%"))
            problems.Add(step.Location, $"\"{step.Text}\" is no step.", "A number of K or % was expected.", "", "bad-step", step.Length);
        var read = new ReadingScale(entry.Key.Text, scale.RequireText("name")!.Text, Number(number) * (unit == "%" ? 0.01 : 1), Number(scale.RequireText("scatter")!.Text));
        scale.Close();
        return read;
    }

    private static CauseEntry Cause(SourceEntry entry, IEnumerable<string> readings, ProblemList problems)
    {
        var cause = StrictMapping.Open(entry.Value, "a cause", problems)!;
        var made = new CauseEntry(entry.Key.Text, Number(cause.RequireText("often")!.Text))
        {
            Advice = cause.Word("advice", ["add", "recover"]) ?? "none",
            Next = cause.Text("next")?.Text ?? "",
            TellApart = cause.Text("tell apart")?.Text,
            NeedsReversingValve = cause.Word("needs", ["reversing valve"]) is not null,
            IsCondition = cause.Word("is a condition", ["yes"]) is not null,
            Valve = Shifts(cause.Take("valve"), readings, problems),
            Orifice = Shifts(cause.Take("orifice"), readings, problems),
            Seen = cause.Take("seen") is SourceMapping seen
                ? seen.Entries.ToDictionary(e => e.Key.Text, e => Chances(e.Value), StringComparer.Ordinal)
                : [],
        };
        cause.Close();
        return made;
    }

    private static Dictionary<string, double> Shifts(SourceNode? node, IEnumerable<string> readings, ProblemList problems)
    {
        if (node is not SourceMapping shifts)
            return [];
        foreach (var entry in shifts.Entries.Where(e => !readings.Contains(e.Key.Text, StringComparer.Ordinal)))
            problems.Add(entry.Key.Location, $"There is no reading \"{entry.Key.Text}\".", "", "Name one of the readings above.", "unknown-reading", entry.Key.Length);
        return Chances(shifts);
    }

    private static Dictionary<string, double> Chances(SourceNode node) =>
        ((SourceMapping)node).Entries.ToDictionary(e => e.Key.Text, e => Number(((SourceScalar)e.Value).Text), StringComparer.Ordinal);

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}

/// <summary>How a reading is counted.</summary>
/// <param name="Id">Its id in the table.</param>
/// <param name="Name">Its name in the trade's words.</param>
/// <param name="Step">A clear shift: K, or a share.</param>
/// <param name="Scatter">How far a sound system strays, in steps, before the doubt of the instruments.</param>
internal sealed record ReadingScale(string Id, string Name, double Step, double Scatter);

/// <summary>A cause and what it does.</summary>
/// <param name="Name">The cause in the trade's words.</param>
/// <param name="Often">How often it is met, in any measure.</param>
internal sealed record CauseEntry(string Name, double Often)
{
    /// <summary>What it advises to do to the charge: none, add or recover.</summary>
    public required string Advice { get; init; }

    /// <summary>The next step; empty for the sound circuit.</summary>
    public required string Next { get; init; }

    /// <summary>The reading that tells it from others.</summary>
    public required string? TellApart { get; init; }

    /// <summary>Whether only a circuit with a reversing valve can have it.</summary>
    public required bool NeedsReversingValve { get; init; }

    /// <summary>Whether it is a condition of the moment and no fault of the circuit.</summary>
    public required bool IsCondition { get; init; }

    /// <summary>Steps by reading where a valve holds the superheat.</summary>
    public required IReadOnlyDictionary<string, double> Valve { get; init; }

    /// <summary>Steps by reading with a fixed orifice or a capillary.</summary>
    public required IReadOnlyDictionary<string, double> Orifice { get; init; }

    /// <summary>Chances of things seen, by what was looked at.</summary>
    public required IReadOnlyDictionary<string, Dictionary<string, double>> Seen { get; init; }
}
