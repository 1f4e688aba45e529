using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Limits;
using Commission.Messages;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Checks.Inference;

/// <summary>What can be wrong with a running circuit and what each cause does to each reading: <c>causes.yaml</c> beside this file, its words in the catalogue <c>causes</c>.</summary>
/// <param name="Readings">The readings that are weighed, by id.</param>
/// <param name="Causes">The causes, the sound circuit first.</param>
/// <param name="Words">Every message the table asked for when it was read, by its name in the catalogue.</param>
internal sealed record CauseTable(IReadOnlyDictionary<string, ReadingScale> Readings, ImmutableArray<CauseEntry> Causes, IReadOnlyDictionary<string, Message> Words)
{
    private static readonly Lazy<CauseTable> Embedded = new(() => EmbeddedYaml.Read("inference/causes", Read));

    /// <summary>The table of this program.</summary>
    public static CauseTable Instance => Embedded.Value;

    /// <summary>What a reading, or a thing that is looked at, is called.</summary>
    /// <param name="id">Its id in the table.</param>
    public Message NameOf(string id) => Readings.TryGetValue(id, out var scale) ? scale.Name : Words[CauseWords.NameOfSeen(id)];

    /// <summary>What a thing seen is called; its own word where the table does not know it.</summary>
    /// <param name="seen">What was looked at and what it showed.</param>
    public Message Told(Seen seen) => Words[CauseWords.NameOfSeen(seen.What, seen.Word)];

    /// <summary>The cause of an id.</summary>
    public CauseEntry Cause(string id) => Causes.Single(c => c.Id == id);

    /// <summary>Reads a table.</summary>
    internal static CauseTable? Read(SourceNode root, ProblemList problems)
    {
        if (StrictMapping.Open(root, PackPart.OfProgram("the table of causes"), problems) is not { } table || table.Require("readings") is not SourceMapping readings || table.Require("causes") is not SourceMapping causes)
            return null;
        table.Close();
        var words = new CauseWords(problems);
        var scales = readings.Entries.ToDictionary(e => e.Key.Text, e => Scale(e, words, problems), StringComparer.Ordinal);
        var entries = causes.Entries.Select((e, i) => Cause(e, isSound: i == 0, scales.Keys, words, problems)).ToImmutableArray();
        // The sound circuit names everything that may be seen.
        foreach (var (what, chances) in entries[0].Seen)
        {
            words.Require(CauseWords.NameOfSeen(what), causes.Entries[0].Key);
            foreach (var word in chances.Keys)
                words.Require(CauseWords.NameOfSeen(what, word), causes.Entries[0].Key);
        }

        return new CauseTable(scales, entries, words.Found);
    }

    private static ReadingScale Scale(SourceEntry entry, CauseWords words, ProblemList problems)
    {
        var scale = StrictMapping.Open(entry.Value, PackPart.OfProgram("a reading"), problems)!;
        var above = Step(scale.RequireText("step")!, problems);
        var below = scale.Text("step below") is { } lower ? Step(lower, problems) : above;
        var read = new ReadingScale(entry.Key.Text, words.Require($"reading-{CauseWords.Hyphens(entry.Key.Text)}", entry.Key), above, below, Number(scale.RequireText("scatter")!.Text));
        scale.Close();
        return read;
    }

    private static double Step(SourceScalar step, ProblemList problems)
    {
        if (step.Text.Split(' ') is [var number, "K" or "%"])
            return Number(number) * (step.Text.EndsWith('%') ? 0.01 : 1);
        problems.Add(step.Location, CommonMessages.AsWritten(new(step.Text)), null, null, "bad-step", step.Length);
        return 1;
    }

    private static CauseEntry Cause(SourceEntry entry, bool isSound, IEnumerable<string> readings, CauseWords words, ProblemList problems)
    {
        var cause = StrictMapping.Open(entry.Value, PackPart.OfProgram("a cause"), problems)!;
        var made = new CauseEntry(entry.Key.Text, Number(cause.RequireText("often")!.Text))
        {
            Advice = cause.Word("advice", ["add", "recover"]) ?? "none",
            Said = words.Of(entry.Key, isSound),
            Needs = cause.Word("needs", ["reversing valve", "full condenser"]),
            IsCondition = cause.Word("is a condition", ["yes"]) is not null,
            Valve = Shifts(cause.Take("valve"), readings, problems),
            Orifice = Shifts(cause.Take("orifice"), readings, problems),
            Heating = Shifts(cause.Take("heating"), readings, problems),
            Seen = cause.Take("seen") is SourceMapping seen
                ? seen.Entries.ToDictionary(e => e.Key.Text, e => Chances(e.Value), StringComparer.Ordinal)
                : [],
        };
        cause.Close();
        return made;
    }

    // One line of shifts, or a list of them where a cause shows itself in more than one way.
    private static ImmutableArray<IReadOnlyDictionary<string, double>> Shifts(SourceNode? node, IEnumerable<string> readings, ProblemList problems)
    {
        var lines = ImmutableArray.CreateBuilder<IReadOnlyDictionary<string, double>>();
        foreach (var shifts in (node is SourceSequence list ? list.Items : node is null ? [] : [node]).OfType<SourceMapping>())
        {
            foreach (var entry in shifts.Entries.Where(e => !readings.Contains(e.Key.Text, StringComparer.Ordinal)))
                problems.Add(entry.Key.Location, CommonMessages.AsWritten(new(entry.Key.Text)), null, null, "unknown-reading", entry.Key.Length);
            lines.Add(Chances(shifts));
        }

        return lines.ToImmutable();
    }

    private static Dictionary<string, double> Chances(SourceNode node) =>
        ((SourceMapping)node).Entries.ToDictionary(e => e.Key.Text, e => Number(((SourceScalar)e.Value).Text), StringComparer.Ordinal);

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}

/// <summary>How a reading is counted.</summary>
/// <param name="Id">Its id in the table.</param>
/// <param name="Name">Its name.</param>
/// <param name="Step">A clear shift upwards: K, or a share.</param>
/// <param name="StepBelow">A clear shift downwards.</param>
/// <param name="Scatter">How far a sound system strays, in steps, before the doubt of the instruments.</param>
internal sealed record ReadingScale(string Id, Message Name, double Step, double StepBelow, double Scatter)
{
    /// <summary>A difference in steps.</summary>
    public double Steps(double difference) => difference / (difference < 0 ? StepBelow : Step);
}

/// <summary>How the circuit works, on which it depends what a cause does.</summary>
internal enum CircuitWay
{
    /// <summary>Cooling, a valve holds the superheat.</summary>
    Valve,

    /// <summary>Cooling through a fixed orifice or a capillary.</summary>
    Orifice,

    /// <summary>Heating.</summary>
    Heating,
}

/// <summary>A cause and what it does.</summary>
/// <param name="Id">Its key in the table, which is the kind of cause that records and tests name.</param>
/// <param name="Often">How often it is met, in any measure.</param>
internal sealed record CauseEntry(string Id, double Often)
{
    /// <summary>What it advises to do to the charge: none, add or recover.</summary>
    public required string Advice { get; init; }

    /// <summary>What it is called and what is to be done, where a valve or nothing in particular meters.</summary>
    public required CauseSayings Said { get; init; }

    /// <summary>Whether it is the sound circuit, for which nothing is to be done.</summary>
    public bool IsSound => Said.Next is null;

    /// <summary>What it is called and what is to be done.</summary>
    public CauseSayings SaidIn(CircuitWay way) => way == CircuitWay.Orifice ? Said.WithOrifice ?? Said : Said;

    /// <summary>What a circuit must have to have it: a reversing valve, a condenser that no receiver drains; null for nothing.</summary>
    public required string? Needs { get; init; }

    /// <summary>Whether it is a condition of the moment and no fault of the circuit.</summary>
    public required bool IsCondition { get; init; }

    /// <summary>Steps by reading where a valve holds the superheat.</summary>
    public required ImmutableArray<IReadOnlyDictionary<string, double>> Valve { get; init; }

    /// <summary>Steps by reading with a fixed orifice or a capillary.</summary>
    public required ImmutableArray<IReadOnlyDictionary<string, double>> Orifice { get; init; }

    /// <summary>Steps by reading in heating, where the indoor coil condenses; empty when nothing is known of it.</summary>
    public required ImmutableArray<IReadOnlyDictionary<string, double>> Heating { get; init; }

    /// <summary>What it does to each reading.</summary>
    public ImmutableArray<IReadOnlyDictionary<string, double>> Shifts(CircuitWay way) => way switch
    {
        CircuitWay.Heating => Heating,
        CircuitWay.Orifice => Orifice,
        _ => Valve,
    };

    /// <summary>Chances of things seen, by what was looked at.</summary>
    public required IReadOnlyDictionary<string, Dictionary<string, double>> Seen { get; init; }
}

/// <summary>What a cause is called and what is to be done.</summary>
/// <param name="Name">The cause, as a noun with its article.</param>
/// <param name="Next">The next step; null for the sound circuit.</param>
/// <param name="Apart">How to tell it from others, as an order without a full stop; null for the sound circuit.</param>
internal sealed record CauseSayings(Message Name, Message? Next, Message? Apart)
{
    /// <summary>The same with a fixed orifice, where that is another; null where it is not.</summary>
    public CauseSayings? WithOrifice { get; init; }
}

/// <summary>
/// The messages of the table of causes: catalogue <c>causes</c>, named after the keys of the table. They are looked up while the table is read,
/// so that a key without its words is a fault of the table at its line, and not of the job that meets it first.
/// </summary>
/// <param name="problems">Where faults go.</param>
internal sealed class CauseWords(ProblemList problems)
{
    /// <summary>The catalogue.</summary>
    public const string Phase = "causes";

    private const string WithOrifice = "-with-orifice";

    private readonly Dictionary<string, Message> _found = new(StringComparer.Ordinal);

    /// <summary>Every message found, by its name.</summary>
    public IReadOnlyDictionary<string, Message> Found => _found;

    /// <summary>A key as messages are named.</summary>
    public static string Hyphens(string key) => key.Replace(' ', '-');

    /// <summary>The name of the message for what is looked at.</summary>
    /// <param name="what">What is looked at.</param>
    public static string NameOfSeen(string what) => $"seen-{Hyphens(what)}";

    /// <summary>The name of the message for what was seen.</summary>
    /// <param name="what">What was looked at.</param>
    /// <param name="word">What it showed.</param>
    public static string NameOfSeen(string what, string word) => $"{NameOfSeen(what)}-{Hyphens(word)}";

    /// <summary>The messages of a cause.</summary>
    /// <param name="key">Its key in the table.</param>
    /// <param name="isSound">Whether it is the sound circuit, which has a name and nothing else.</param>
    public CauseSayings Of(SourceScalar key, bool isSound)
    {
        var name = $"cause-{Hyphens(key.Text)}";
        var said = new CauseSayings(Require(name, key), isSound ? null : Require($"{name}-next", key), isSound ? null : Require($"{name}-apart", key));
        return Find(name + WithOrifice) is { } called
            ? said with { WithOrifice = new CauseSayings(called, Require($"{name}-next{WithOrifice}", key), Require($"{name}-apart{WithOrifice}", key)) }
            : said;
    }

    /// <summary>A message that has to be there.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="key">The key of the table that asks for it.</param>
    public Message Require(string name, SourceScalar key)
    {
        if (Find(name) is { } message)
            return message;
        problems.Add(key.Location, CommonMessages.AsWritten(new($"{Phase}.{name}")), null, null, "missing-text", key.Length);
        return CommonMessages.AsWritten(new(key.Text));
    }

    private Message? Find(string name)
    {
        if (!MessageCatalogue.BuiltIn.Has(Language.English, Phase, name))
            return null;
        return _found[name] = Message.Of(Phase, name, []);
    }
}
