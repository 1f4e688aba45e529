using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.AirReadings;

/// <summary>
/// External static pressure as the maker counts it. Whether coil and filter belong to it depends on the appliance; a tap on the wrong side of
/// either is put right with the measured drop, and where that was not measured the number is a bound.
/// </summary>
internal sealed class StaticReading : IAnalysis<StaticReading>
{
    private readonly CheckContext _context;
    private readonly List<CorrectedReading> _readings = [];
    private readonly List<ReadingUse> _uses = [];
    private readonly List<TraceStep> _steps = [];

    private StaticReading(CheckContext context)
    {
        _context = context;
        Written = context.Job.Air?.Static;
        var written = Written ?? new StaticPressures();
        External = Make(written);
        if (External is not null)
            External = Coil(written, Filter(written, External));
        Total = External is null ? null : MakeTotal(written);
    }

    /// <summary>The part as written; null when the job has none, and then everything else is empty.</summary>
    public StaticPressures? Written { get; }

    /// <summary>External static pressure, Pa; null when it is not known.</summary>
    public Uncertain? External { get; private set; }

    /// <summary>Static pressure across the whole air handler, filter and coil included, Pa; null when the taps do not tell.</summary>
    public Uncertain? Total { get; }

    /// <summary>Why the external static pressure is not known, without a full stop; null when it is.</summary>
    public string? WhyNot { get; private set; }

    /// <summary>What would help; null when it is known.</summary>
    public Message? Todo { get; private set; }

    /// <summary>How that is written in the job file; null where the words say it.</summary>
    public string? InFile { get; private set; }

    /// <summary>What of it is missing in the number, which then is too low, without a full stop; null when nothing is.</summary>
    public string? TooLow { get; private set; }

    /// <summary>What is in the number that does not belong to it, which then is too high, without a full stop; null when nothing is.</summary>
    public string? TooHigh { get; private set; }

    /// <summary>What is not written about the taps, without a full stop; null when it is clear.</summary>
    public string? Unclear { get; private set; }

    /// <summary>Whether neither tap is written.</summary>
    public bool TapsUnwritten => Written is { ReturnTap: null, SupplyTap: null, External: null };

    /// <summary>The readings it rests on.</summary>
    public IReadOnlyList<CorrectedReading> Readings => _readings;

    /// <summary>What else of the job it rests on.</summary>
    public IReadOnlyList<ReadingUse> Uses => _uses;

    /// <summary>How it came about.</summary>
    public IReadOnlyList<TraceStep> Steps => _steps;

    /// <summary>The drop of the filter; null when it was not read.</summary>
    public CorrectedReading? FilterDrop => Drop("filter drop", _context.Job.Air?.FilterDrop);

    /// <summary>The drop of the coil; null when it was not read.</summary>
    public CorrectedReading? CoilDrop => Drop("coil drop", _context.Job.Air?.CoilDrop);

    /// <inheritdoc/>
    public static StaticReading Create(CheckContext context) => new(context);

    private ImmutableArray<Given<string>> With => _context.Job.Air?.With ?? [];

    private Uncertain? Make(StaticPressures written)
    {
        var present = _context.Present;
        if (written.External is { } sum && (written.Return is null || written.Supply is null))
            return Named("external static pressure", sum).Value;
        if (written.Return is null && written.Supply is null)
            return None("no static pressure is written", "Read return and supply static pressure against the room.");
        if (written is not { Return: { } entering, Supply: { } leaving })
        {
            return None(
                $"the static pressure of the {(written.Return is null ? "return" : "supply")} side is not written",
                "Read both sides: return (negative) and supply, against the room.");
        }

        var low = Named("return static pressure", entering);
        var high = Named("supply static pressure", leaving);
        if (entering.Value.Si > 0)
        {
            return None(
                $"the return static pressure is written as {entering.Text}, above the room's, and a running blower draws the return below it",
                AirMessages.ReturnAboveRoomNext,
                $"air: {{static: {{return: -{entering.Text}}}}}");
        }

        var external = high.Value - low.Value;
        _steps.Add(new TraceStep("ESP", "static pressure between the taps", "p_supply − p_return", $"{leaving.Text} − ({entering.Text})", present.Text(external, DisplayKind.StaticPressure), "definition"));
        return external;
    }

    // A filter that the maker counts as external has to lie outside the taps' path to the unit: the return tap then stands after it.
    private Uncertain Filter(StaticPressures written, Uncertain external) => Side(
        external, ("filter", true), written.ReturnTap, "return tap", written.IncludesFilter, FilterDrop,
        beforeUnit: written.ReturnTap?.Value switch { StaticTap.AfterFilter => true, StaticTap.BeforeFilter => false, _ => null });

    private Uncertain Coil(StaticPressures written, Uncertain external) => Side(
        external, ("coil", false), written.SupplyTap, "supply tap", written.IncludesCoil, CoilDrop,
        beforeUnit: written.SupplyTap?.Value switch { StaticTap.BeforeCoil => true, StaticTap.AfterCoil => false, _ => null });

    // part.Counts: whether its drop is in a plate's figure that says nothing. beforeUnit: whether the part lies outside the two taps' own path, so that its drop is in the number.
    private Uncertain Side(Uncertain external, (string Name, bool Counts) part, Given<StaticTap>? tap, string tapWords, Given<bool>? included, CorrectedReading? drop, bool? beforeUnit)
    {
        Use(tapWords, tap);
        Use($"maker's figure includes {part.Name}", included);
        if (tap is null || beforeUnit is not { } counted)
            return external;
        if (included is null)
        {
            // The usual places, after the filter and after the coil, are what a plate means when it says nothing.
            if (counted != part.Counts)
                Unclear = And(Unclear, $"the {tapWords} is {tap.Text}, and it is not written whether the maker's external static pressure includes the {part.Name}");
            return external;
        }

        if (included.Value == counted)
            return external;
        if (drop is null)
        {
            if (included.Value)
                TooLow = And(TooLow, $"the maker's external static pressure includes the {part.Name}, whose drop is not in the reading and not written");
            else
                TooHigh = And(TooHigh, $"the reading holds the drop of the {part.Name}, which the maker's external static pressure leaves out and which is not written");
            return external;
        }

        _readings.Add(drop);
        var moved = included.Value ? external + drop.Value : external - drop.Value;
        var present = _context.Present;
        _steps.Add(new TraceStep(
            "ESP", $"external static pressure as the maker counts it, {(included.Value ? "with" : "without")} the {part.Name}", included.Value ? $"ESP + {part.Name} drop" : $"ESP − {part.Name} drop",
            $"{present.Text(external.Value, DisplayKind.StaticPressure)} {(included.Value ? "+" : "−")} {drop.Uses[0].Text}", present.Text(moved, DisplayKind.StaticPressure), "definition"));
        return moved;
    }

    private Uncertain? MakeTotal(StaticPressures written)
    {
        if (written is not { Return: { } entering, Supply: { } leaving })
            return null;
        var between = Read("supply static pressure", leaving).Value - Read("return static pressure", entering).Value;
        var coil = written.SupplyTap?.Value switch { StaticTap.BeforeCoil => Uncertain.Exact(0), StaticTap.AfterCoil => CoilDrop?.Value, _ => null };
        var filter = written.ReturnTap?.Value switch { StaticTap.AfterFilter => Uncertain.Exact(0), StaticTap.BeforeFilter => FilterDrop?.Value, _ => null };
        return coil is null || filter is null ? null : between + coil + filter;
    }

    private CorrectedReading? Drop(string name, Given<PressureDifference>? given) => given is null ? null : Read(name, given);

    private CorrectedReading Read(string name, Given<PressureDifference> given) => _context.Readings.Plain(name, ReadingName.StaticPressure, given, DisplayKind.StaticPressure, With);

    private CorrectedReading Named(string name, Given<PressureDifference> given)
    {
        var reading = Read(name, given);
        _readings.Add(reading);
        return reading;
    }

    private void Use<T>(string name, Given<T>? given)
    {
        if (given is not null)
            _uses.Add(given.Use(name));
    }

    private Uncertain? None(string why, Message todo, string? inFile = null)
    {
        WhyNot = why;
        Todo = todo;
        InFile = inFile;
        return null;
    }

    private static string And(string? before, string more) => before is null ? more : $"{before}; {more}";
}
