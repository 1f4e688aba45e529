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
    private readonly List<Message> _tooLow = [];
    private readonly List<Message> _tooHigh = [];
    private readonly List<Message> _unclear = [];

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
    public Message? WhyNot { get; private set; }

    /// <summary>What would help; null when it is known.</summary>
    public Message? Todo { get; private set; }

    /// <summary>How that is written in the job file; null where the words say it.</summary>
    public string? InFile { get; private set; }

    /// <summary>What of it is missing in the number, which then is too low, without a full stop; null when nothing is.</summary>
    public Message? TooLow => Several(_tooLow);

    /// <summary>What is in the number that does not belong to it, which then is too high, without a full stop; null when nothing is.</summary>
    public Message? TooHigh => Several(_tooHigh);

    /// <summary>What is not written about the taps, without a full stop; null when it is clear.</summary>
    public Message? Unclear => Several(_unclear);

    /// <summary>Whether neither tap is written.</summary>
    public bool TapsUnwritten => Written is { ReturnTap: null, SupplyTap: null, External: null };

    /// <summary>The readings it rests on.</summary>
    public IReadOnlyList<CorrectedReading> Readings => _readings;

    /// <summary>What else of the job it rests on.</summary>
    public IReadOnlyList<ReadingUse> Uses => _uses;

    /// <summary>How it came about.</summary>
    public IReadOnlyList<TraceStep> Steps => _steps;

    /// <summary>The drop of the filter; null when it was not read.</summary>
    public CorrectedReading? FilterDrop => Drop(AirMessages.StaticDropFilter, _context.Job.Air?.FilterDrop);

    /// <summary>The drop of the coil; null when it was not read.</summary>
    public CorrectedReading? CoilDrop => Drop(AirMessages.StaticDropCoil, _context.Job.Air?.CoilDrop);

    /// <inheritdoc/>
    public static StaticReading Create(CheckContext context) => new(context);

    private ImmutableArray<Given<string>> With => _context.Job.Air?.With ?? [];

    private Uncertain? Make(StaticPressures written)
    {
        var present = _context.Present;
        if (written.External is { } sum && (written.Return is null || written.Supply is null))
            return Named(AirMessages.StaticExternal, sum).Value;
        if (written.Return is null && written.Supply is null)
            return None(AirMessages.StaticNotRead, AirMessages.StaticNotReadNext);
        if (written is not { Return: { } entering, Supply: { } leaving })
        {
            return None(
                AirMessages.StaticOneSide(written.Return is null ? AirMessages.StaticOneSideSide.Return : AirMessages.StaticOneSideSide.Supply),
                AirMessages.StaticOneSideNext);
        }

        var low = Named(AirMessages.StaticReturn, entering);
        var high = Named(AirMessages.StaticSupply, leaving);
        if (entering.Value.Si > 0)
        {
            return None(
                AirMessages.StaticReturnAboveRoom(new(entering.Text)),
                AirMessages.ReturnAboveRoomNext,
                $"air: {{static: {{return: -{entering.Text}}}}}");
        }

        var external = high.Value - low.Value;
        _steps.Add(new TraceStep("ESP", present.Text(AirMessages.StaticBetween), "p_supply − p_return", present.Symbols($"{leaving.Text} − ({entering.Text})"), present.Text(external, DisplayKind.StaticPressure), present.Text(AirMessages.Definition)));
        return external;
    }

    // A filter that the maker counts as external has to lie outside the taps' path to the unit: the return tap then stands after it.
    private Uncertain Filter(StaticPressures written, Uncertain external) => Side(
        external, Part.Filter, written.ReturnTap, written.IncludesFilter, FilterDrop,
        beforeUnit: written.ReturnTap?.Value switch { StaticTap.AfterFilter => true, StaticTap.BeforeFilter => false, _ => null });

    private Uncertain Coil(StaticPressures written, Uncertain external) => Side(
        external, Part.Coil, written.SupplyTap, written.IncludesCoil, CoilDrop,
        beforeUnit: written.SupplyTap?.Value switch { StaticTap.BeforeCoil => true, StaticTap.AfterCoil => false, _ => null });

    // beforeUnit: whether the part lies outside the two taps' own path, so that its drop is in the number.
    private Uncertain Side(Uncertain external, Part part, Given<StaticTap>? tap, Given<bool>? included, CorrectedReading? drop, bool? beforeUnit)
    {
        var isFilter = part == Part.Filter;
        Use(AirMessages.StaticTap(isFilter ? AirMessages.StaticTapPart.Filter : AirMessages.StaticTapPart.Coil), tap);
        Use(AirMessages.StaticIncludes(isFilter ? AirMessages.StaticIncludesPart.Filter : AirMessages.StaticIncludesPart.Coil), included);
        if (tap is null || beforeUnit is not { } counted)
            return external;
        if (included is null)
        {
            // The usual places, after the filter and after the coil, are what a plate means when it says nothing: it counts the filter and not the coil.
            if (counted != isFilter)
                _unclear.Add(AirMessages.StaticUnclear(isFilter ? AirMessages.StaticUnclearPart.Filter : AirMessages.StaticUnclearPart.Coil, new(tap.Text)));
            return external;
        }

        if (included.Value == counted)
            return external;
        if (drop is null)
        {
            if (included.Value)
                _tooLow.Add(AirMessages.StaticDropMissing(isFilter ? AirMessages.StaticDropMissingPart.Filter : AirMessages.StaticDropMissingPart.Coil));
            else
                _tooHigh.Add(AirMessages.StaticDropTooMuch(isFilter ? AirMessages.StaticDropTooMuchPart.Filter : AirMessages.StaticDropTooMuchPart.Coil));
            return external;
        }

        _readings.Add(drop);
        var moved = included.Value ? external + drop.Value : external - drop.Value;
        var present = _context.Present;
        _steps.Add(new TraceStep(
            "ESP", present.Text(Counted(isFilter, included.Value)), included.Value ? "ESP + Δp" : "ESP − Δp",
            $"{present.Text(external.Value, DisplayKind.StaticPressure)} {(included.Value ? "+" : "−")} {present.Symbols(drop.Uses[0].Text)}", present.Text(moved, DisplayKind.StaticPressure), present.Text(AirMessages.Definition)));
        return moved;
    }

    private Uncertain? MakeTotal(StaticPressures written)
    {
        if (written is not { Return: { } entering, Supply: { } leaving })
            return null;
        var between = Read(AirMessages.StaticSupply, leaving).Value - Read(AirMessages.StaticReturn, entering).Value;
        var coil = written.SupplyTap?.Value switch { StaticTap.BeforeCoil => Uncertain.Exact(0), StaticTap.AfterCoil => CoilDrop?.Value, _ => null };
        var filter = written.ReturnTap?.Value switch { StaticTap.AfterFilter => Uncertain.Exact(0), StaticTap.BeforeFilter => FilterDrop?.Value, _ => null };
        return coil is null || filter is null ? null : between + coil + filter;
    }

    private CorrectedReading? Drop(Message name, Given<PressureDifference>? given) => given is null ? null : Read(name, given);

    private CorrectedReading Read(Message name, Given<PressureDifference> given) => _context.Readings.Plain(_context.Present.Text(name), ReadingName.StaticPressure, given, DisplayKind.StaticPressure, With);

    private CorrectedReading Named(Message name, Given<PressureDifference> given)
    {
        var reading = Read(name, given);
        _readings.Add(reading);
        return reading;
    }

    private void Use<T>(Message name, Given<T>? given)
    {
        if (given is not null)
            _uses.Add(given.Use(_context.Present.Text(name)));
    }

    private Uncertain? None(Message why, Message todo, string? inFile = null)
    {
        WhyNot = why;
        Todo = todo;
        InFile = inFile;
        return null;
    }

    private static Message? Several(List<Message> reasons) => reasons.Count == 0 ? null : CommonMessages.Several(new([.. reasons], ListJoin.Semicolons));

    private static Message Counted(bool isFilter, bool included) => AirMessages.StaticAsCounted((isFilter, included) switch
    {
        (true, true) => AirMessages.StaticAsCountedPart.WithFilter,
        (true, false) => AirMessages.StaticAsCountedPart.WithoutFilter,
        (false, true) => AirMessages.StaticAsCountedPart.WithCoil,
        _ => AirMessages.StaticAsCountedPart.WithoutCoil,
    });

    private enum Part
    {
        Filter,
        Coil,
    }
}
