using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;

namespace Commission.Checks.Circuit;

/// <summary>Something a judgement of the charge rests on beyond its own readings: steady running, the right stage, enough air.</summary>
internal interface IChargeGate
{
    /// <summary>Why nothing may be judged, without a full stop; null when something may.</summary>
    Message? Block { get; }

    /// <summary>What would make it possible; null when it is possible.</summary>
    Message? Todo { get; }

    /// <summary>What was not shown and makes a pass conditional; null when everything was.</summary>
    Message? Reservation { get; }

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
    public (Message Why, Message Todo)? Blocked
    {
        get
        {
            foreach (var gate in _gates)
            {
                if (gate.Block is { } why)
                    return (why, gate.Todo ?? CircuitMessages.PutRightNext);
            }

            return null;
        }
    }

    /// <summary>Everything that was not shown, without a full stop; null when everything was.</summary>
    public Message? Open => _gates.Select(g => g.Reservation).OfType<Message>().ToArray() is { Length: > 0 } open ? CommonMessages.Several(new([.. open], ListJoin.Semicolons)) : null;

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
    public Message? Mismatch => Fits == false
        ? CircuitMessages.WrongOrifice(Diameter(_metering!.Size!), Diameter(_metering.PlateSize!))
        : null;

    /// <inheritdoc/>
    public Message? Block => null;

    /// <inheritdoc/>
    public Message? Todo => Mismatch is null ? null : CircuitMessages.WrongOrificeNext;

    /// <inheritdoc/>
    public Message? Reservation => Mismatch ?? (_context.Job.Equipment.Matched is { Value: false } ? CircuitMessages.PairNotListed : null);

    /// <summary>What does not fit, as a sentence; null when nothing is known against it.</summary>
    public Message? Sentence => Fits == false ? ChargeMessages.MatchWrongOrifice(Diameter(_metering!.Size!), Diameter(_metering.PlateSize!))
        : Reservation is null ? null : ChargeMessages.MatchNotListed;

    /// <summary>Looks at the equipment.</summary>
    public static EquipmentMatch Of(CheckContext context) => new(context);

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding) => finding
        .Use(CircuitMessages.OrificeInstalled, _metering?.Size)
        .Use(CircuitMessages.OrificeRequired, _metering?.PlateSize)
        .Use(CircuitMessages.Matched, _context.Job.Equipment.Matched);

    private Messages.QuantityValue Diameter(Given<Measurement.Quantities.Length> size) => _context.Present.InMessage(size.Value.Si, DisplayKind.TubeDiameter);
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
    public Message? Block => Outside is { } window ? Words(window) : null;

    /// <inheritdoc/>
    public Message? Todo => Outside is { } window ? Advice(window) : null;

    /// <inheritdoc/>
    public Message? Reservation
    {
        get
        {
            var missing = Windows.Where(w => w.Reading is null).Select(w => w.What).ToArray();
            return missing.Length == 0 ? null : CircuitMessages.NotRead(new([.. missing.Select(ValidityWindow.Name)]), missing.Length);
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
            windows.Add(Winter(context, row, criterion, new ValidityWindow(ValidityReading.OutdoorDryBulb, row.OutdoorDryBulb, outdoor)));
        if (context.Get<ChargeAnalysis>().HasWaterSide)
            return new MethodValidity(context, windows.ToImmutable());
        if (Find(context, LimitIds.ChargeValidityReturnDryBulb, makersChart) is { } indoor)
            windows.Add(new ValidityWindow(ValidityReading.ReturnDryBulb, row.ReturnDryBulb, indoor));
        if (Find(context, LimitIds.ChargeValidityReturnWetBulb, makersChart) is { } wet && (wet.Tier == LimitTier.Maker || UsesTable(context, criterion)))
            windows.Add(new ValidityWindow(ValidityReading.ReturnWetBulb, row.ReturnWetBulb, wet));
        return new MethodValidity(context, windows.ToImmutable());
    }

    /// <summary>One condition in words, when it does not hold.</summary>
    /// <param name="window">The condition.</param>
    public Message Words(ValidityWindow window) => CircuitMessages.OutsideMethod(
        ValidityWindow.Name(window.What), _context.Present.InMessage(window.Reading!.Value.Value, DisplayKind.Temperature), LimitText.Of(window.Limit, _context.Present.Units));

    /// <summary>What to do when a condition does not hold.</summary>
    /// <param name="window">The condition.</param>
    public static Message Advice(ValidityWindow window) => (window.What, window.IsBelow) switch
    {
        (ValidityReading.OutdoorDryBulb, true) => CircuitMessages.TooColdNext,
        (ValidityReading.OutdoorDryBulb, false) => CircuitMessages.TooHotNext,
        (_, true) => CircuitMessages.RoomTooColdNext,
        _ => CircuitMessages.RoomTooWarmNext,
    };

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding)
    {
        foreach (var reading in Windows.Select(w => w.Reading).OfType<CorrectedReading>())
        {
            foreach (var use in reading.Uses)
                finding.Use(use);
        }

        finding.Use(CircuitMessages.HeadPressureRaised, _context.Job.Charging?.HeadPressureRaised);
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
        var held = new ValidityWindow(usual.What, row.OutdoorDryBulb, winter, CircuitMessages.ReadWithHeadPressure(new(winter.Source)));
        return held.Inside == true ? held : usual;
    }
}

/// <summary>A reading that a charging method asks about.</summary>
internal enum ValidityReading
{
    /// <summary>Outdoor air, dry bulb.</summary>
    OutdoorDryBulb,

    /// <summary>Return air, dry bulb.</summary>
    ReturnDryBulb,

    /// <summary>Return air, wet bulb.</summary>
    ReturnWetBulb,
}

/// <summary>One condition under which a charging method counts.</summary>
/// <param name="What">What is looked at.</param>
/// <param name="Reading">The reading; null when it was not taken.</param>
/// <param name="Limit">The range asked for.</param>
/// <param name="Remark">Why a reading outside the usual range is taken as inside; null when it needs no word.</param>
internal sealed record ValidityWindow(ValidityReading What, CorrectedReading? Reading, Limit Limit, Message? Remark = null)
{
    /// <summary>Its name in a sentence.</summary>
    /// <param name="reading">The reading.</param>
    public static Message Name(ValidityReading reading) => reading switch
    {
        ValidityReading.OutdoorDryBulb => ReadingsMessages.OutdoorDryBulb,
        ValidityReading.ReturnDryBulb => ReadingsMessages.ReturnDryBulb,
        _ => ReadingsMessages.ReturnWetBulb,
    };

    /// <summary>Whether the reading lies inside; null without a reading.</summary>
    public bool? Inside => Reading is { Value.Value: var kelvin }
        ? kelvin >= (Limit.Lower?.Si ?? double.NegativeInfinity) && kelvin <= (Limit.Upper?.Si ?? double.PositiveInfinity)
        : null;

    /// <summary>Whether the reading lies below the range.</summary>
    public bool IsBelow => Reading is { Value.Value: var kelvin } && kelvin < Limit.Lower?.Si;
}
