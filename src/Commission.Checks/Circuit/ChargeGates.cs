using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;

namespace Commission.Checks.Circuit;

/// <summary>Something a judgement of the charge rests on beyond its own readings: steady running, the right stage, enough air.</summary>
internal interface IChargeGate
{
    /// <summary>Why nothing may be judged, without a full stop; null when something may.</summary>
    string? Block { get; }

    /// <summary>What would make it possible; null when it is possible.</summary>
    string? Todo { get; }

    /// <summary>What was not shown and makes a pass conditional; null when everything was.</summary>
    string? Reservation { get; }

    /// <summary>Names in a finding everything of the job the gate looked at.</summary>
    void NameIn(FindingBuilder finding);
}

/// <summary>The gates of one judgement, in the order in which a technician would look.</summary>
internal sealed class ChargeGates
{
    private readonly IChargeGate[] _gates;

    /// <summary>Gathers gates.</summary>
    /// <param name="gates">The gates; the first that blocks is told.</param>
    public ChargeGates(params IChargeGate?[] gates) => _gates = [.. gates.OfType<IChargeGate>()];

    /// <summary>The first gate that blocks; null when none does.</summary>
    public (string Why, string Todo)? Blocked
    {
        get
        {
            foreach (var gate in _gates)
            {
                if (gate.Block is { } why)
                    return (why, gate.Todo ?? "Put it right and read again.");
            }

            return null;
        }
    }

    /// <summary>Everything that was not shown, without a full stop; null when everything was.</summary>
    public string? Open => _gates.Select(g => g.Reservation).OfType<string>().ToArray() is { Length: > 0 } open ? string.Join("; ", open) : null;

    /// <summary>Names what the gates looked at.</summary>
    public void NameIn(FindingBuilder finding)
    {
        foreach (var gate in _gates)
            gate.NameIn(finding);
    }

    /// <summary>Makes a pass conditional for whatever was not shown.</summary>
    public void ReserveIn(FindingBuilder finding)
    {
        foreach (var gate in _gates)
        {
            if (gate.Reservation is { } what)
                finding.Reserve(what);
        }
    }
}

/// <summary>By which number of the running system the charge is judged.</summary>
internal enum ChargeCriterion
{
    /// <summary>Superheat, with a fixed orifice or a capillary.</summary>
    Superheat,

    /// <summary>Subcooling, with a valve that holds the superheat.</summary>
    Subcooling,
}

/// <summary>Whether orifice and units belong together as the maker lists them: a target holds for that combination alone.</summary>
internal sealed class EquipmentMatch : IChargeGate
{
    // Sizes of orifices are printed in whole thousandths of an inch.
    private const double Same = 0.5e-3 * ConversionFactors.Inch;

    private readonly CheckContext _context;
    private readonly Metering? _metering;

    private EquipmentMatch(CheckContext context)
    {
        _context = context;
        _metering = context.Job.Equipment.Metering;
    }

    /// <summary>Whether the job says anything about it.</summary>
    public bool IsShown => Fits is not null || _context.Job.Equipment.Matched is not null;

    /// <summary>Whether the installed orifice is the one the maker asks for; null when both sizes are not written.</summary>
    public bool? Fits => _metering is { Size: { } fitted, PlateSize: { } asked } ? Math.Abs(fitted.Value.Si - asked.Value.Si) <= Same : null;

    /// <summary>Why the pair does not fit, without a full stop; null when it does.</summary>
    public string? Mismatch => Fits == false
        ? $"the installed orifice of {Text(_metering!.Size!)} is not the {Text(_metering.PlateSize!)} the maker asks for, so the target does not hold"
        : null;

    /// <inheritdoc/>
    public string? Block => null;

    /// <inheritdoc/>
    public string? Todo => Mismatch is null ? null : "Fit the orifice the maker asks for, evacuate, weigh in and read again.";

    /// <inheritdoc/>
    public string? Reservation => Mismatch ?? (_context.Job.Equipment.Matched is { Value: false } ? "the maker does not list this pair of units" : null);

    /// <summary>Looks at the equipment.</summary>
    public static EquipmentMatch Of(CheckContext context) => new(context);

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding) => finding
        .Use("orifice installed", _metering?.Size)
        .Use("orifice the maker asks for", _metering?.PlateSize)
        .Use("matched", _context.Job.Equipment.Matched);

    private string Text(Given<Measurement.Quantities.Length> size) => _context.Present.Text(size.Value.Si, DisplayKind.TubeDiameter);
}

/// <summary>Whether it was neither too cold nor too hot, outdoors and indoors, for the charging method.</summary>
internal sealed class MethodValidity : IChargeGate
{
    private readonly CheckContext _context;

    private MethodValidity(CheckContext context, ImmutableArray<ValidityWindow> windows)
    {
        _context = context;
        Windows = windows;
    }

    /// <summary>The conditions.</summary>
    public ImmutableArray<ValidityWindow> Windows { get; }

    /// <inheritdoc/>
    public string? Block => Outside is { } window ? Words(window) : null;

    /// <inheritdoc/>
    public string? Todo => Outside is { } window ? Advice(window) : null;

    /// <inheritdoc/>
    public string? Reservation
    {
        get
        {
            var missing = Windows.Where(w => w.Reading is null).Select(w => w.What).ToArray();
            return missing.Length == 0 ? null : $"{string.Join(" and ", missing)} {(missing.Length == 1 ? "was" : "were")} not read";
        }
    }

    private ValidityWindow? Outside => Windows.FirstOrDefault(w => w.Inside == false);

    /// <summary>Looks at a row of readings.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="row">The readings.</param>
    /// <param name="criterion">What is to be judged.</param>
    /// <param name="makersChart">Whether a chart of the maker judges it, which is its own range unless the maker states another.</param>
    public static MethodValidity Of(CheckContext context, ChargeRow row, ChargeCriterion criterion, bool makersChart = false)
    {
        var windows = ImmutableArray.CreateBuilder<ValidityWindow>();
        if (Find(context, LimitIds.ChargeValidityOutdoor, makersChart) is { } outdoor)
            windows.Add(Winter(context, row, criterion, new ValidityWindow("outdoor dry bulb", row.OutdoorDryBulb, outdoor)));
        if (context.Get<ChargeAnalysis>().HasWaterSide)
            return new MethodValidity(context, windows.ToImmutable());
        if (Find(context, LimitIds.ChargeValidityReturnDryBulb, makersChart) is { } indoor)
            windows.Add(new ValidityWindow("return dry bulb", row.ReturnDryBulb, indoor));
        if (Find(context, LimitIds.ChargeValidityReturnWetBulb, makersChart) is { } wet && (wet.Tier == LimitTier.Maker || UsesTable(context, criterion)))
            windows.Add(new ValidityWindow("return wet bulb", row.ReturnWetBulb, wet));
        return new MethodValidity(context, windows.ToImmutable());
    }

    /// <summary>One condition in words, when it does not hold.</summary>
    /// <param name="window">The condition.</param>
    public string Words(ValidityWindow window) =>
        $"{window.What} at {_context.Present.Text(window.Reading!.Value.Value, DisplayKind.Temperature)} lies outside the range of the method, {LimitText.Of(window.Limit, _context.Present.Units)}";

    /// <summary>What to do when a condition does not hold.</summary>
    /// <param name="window">The condition.</param>
    public static string Advice(ValidityWindow window) => (window.What, window.IsBelow) switch
    {
        ("outdoor dry bulb", true) => "Weigh the charge in and come back in warmer weather; write the return visit.",
        ("outdoor dry bulb", false) => "Come back when it is cooler, or weigh the charge in.",
        (_, true) => "Warm the room and read again, or weigh the charge in.",
        _ => "Let the system bring the room down and read again.",
    };

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding)
    {
        foreach (var reading in Windows.Select(w => w.Reading).OfType<CorrectedReading>())
        {
            foreach (var use in reading.Uses)
                finding.Use(use);
        }

        finding.Use("head pressure raised", _context.Job.Charging?.HeadPressureRaised);
    }

    // The published windows are those of comfort cooling; a cold room has a window only where its maker gives one.
    private static Limit? Find(CheckContext context, string id, bool makerOnly) =>
        context.Limits.Find(id) is { } limit && (limit.Tier == LimitTier.Maker || (!makerOnly && !context.Get<ChargeAnalysis>().IsRefrigeration)) ? limit : null;

    // Only the table of target superheat asks for the wet bulb.
    private static bool UsesTable(CheckContext context, ChargeCriterion criterion) =>
        criterion == ChargeCriterion.Superheat && context.Get<ChargeAnalysis>() is { HasFixedMetering: true, IsRefrigeration: false } && context.Limits.Find(LimitIds.ChargeSuperheat) is null;

    // Holding the condenser back makes subcooling readable in the cold, where a document allows it; superheat never.
    private static ValidityWindow Winter(CheckContext context, ChargeRow row, ChargeCriterion criterion, ValidityWindow usual)
    {
        if (criterion != ChargeCriterion.Subcooling || !usual.IsBelow || context.Job.Charging?.HeadPressureRaised is not { Value: true })
            return usual;
        if (context.Limits.Find(LimitIds.ChargeValidityOutdoorWinterMethod) is not { } winter)
            return usual;
        var held = new ValidityWindow(usual.What, row.OutdoorDryBulb, winter, $"Read with the head pressure raised: {winter.Source}.");
        return held.Inside == true ? held : usual;
    }
}

/// <summary>One condition under which a charging method counts.</summary>
/// <param name="What">What is looked at: <c>outdoor dry bulb</c>.</param>
/// <param name="Reading">The reading; null when it was not taken.</param>
/// <param name="Limit">The range asked for.</param>
/// <param name="Remark">Why a reading outside the usual range is taken as inside; null when it needs no word.</param>
internal sealed record ValidityWindow(string What, CorrectedReading? Reading, Limit Limit, string? Remark = null)
{
    /// <summary>Whether the reading lies inside; null without a reading.</summary>
    public bool? Inside => Reading is { Value.Value: var kelvin }
        ? kelvin >= (Limit.Lower?.Si ?? double.NegativeInfinity) && kelvin <= (Limit.Upper?.Si ?? double.PositiveInfinity)
        : null;

    /// <summary>Whether the reading lies below the range.</summary>
    public bool IsBelow => Reading is { Value.Value: var kelvin } && kelvin < Limit.Lower?.Si;
}
