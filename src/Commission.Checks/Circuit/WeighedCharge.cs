using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Circuit;

/// <summary>
/// What the scale says went into the circuit, and what the circuit holds. Like is compared with like: a unit that came charged needs only
/// the adjustment for its lines, an empty one needs the whole charge.
/// </summary>
internal sealed class WeighedCharge : IAnalysis<WeighedCharge>
{
    private readonly CheckContext _context;
    private readonly Charging? _charging;

    private WeighedCharge(CheckContext context)
    {
        _context = context;
        _charging = context.Job.Charging;
        Put = _charging is null ? null : MakePut(_charging);
        Required = RequiredCharge.Of(context);
        (Total, WhyNoTotal) = MakeTotal();
    }

    /// <summary>Refrigerant put into the circuit: added less removed less left in hoses, kg; negative when more was taken out. Null when nothing says.</summary>
    public MassNumber? Put { get; }

    /// <summary>What the maker's figures ask for.</summary>
    public RequiredCharge Required { get; }

    /// <summary>What the circuit holds, kg; null when that cannot be known.</summary>
    public MassNumber? Total { get; }

    /// <summary>Why the total cannot be known, without a full stop; null when it is known.</summary>
    public Message? WhyNoTotal { get; }

    /// <summary>Whether the scale saw the whole charge: the unit came empty or with nitrogen.</summary>
    public bool SawWholeCharge => _charging?.UnitArrived?.Value is ArrivalCharge.NitrogenHoldingCharge or ArrivalCharge.RecoveredAndEvacuated;

    /// <summary>Whether the unit came with its factory charge.</summary>
    public bool CameCharged => _charging?.UnitArrived?.Value == ArrivalCharge.Charged;

    /// <inheritdoc/>
    public static WeighedCharge Create(CheckContext context) => new(context);

    private MassNumber? MakePut(Charging job)
    {
        var moved = _context.Get<RefrigerantLedger>().Charging;
        if (moved.IsEmpty)
            return null;

        // Where nothing was moved no scale was read, and nothing stayed in a hose.
        if (job.LeftInHoses is null && moved.All(m => m.Weighing is null && m.Part.Value.Value == 0))
            return new MassNumber(Uncertain.Exact(0), [], [.. moved.SelectMany(m => m.Part.Readings).SelectMany(r => r.Uses)], []);
        var parts = new MassSum(_context);
        foreach (var movement in moved.OrderByDescending(m => m.Sign))
            parts.Add(movement.Part, movement.Sign);
        parts.Hoses(job.LeftInHoses, job.Hoses);
        return parts.Sum("m_put", CircuitMessages.PutIntoCircuit);
    }

    private (MassNumber? Total, Message? WhyNot) MakeTotal()
    {
        if (_charging is null)
            return (null, CircuitMessages.NothingOfCharging);
        if (_charging.UnitArrived is not { } arrived)
            return (null, CircuitMessages.ArrivalNotWritten);
        if (arrived.Value == ArrivalCharge.Unknown)
            return (null, CircuitMessages.ArrivalUnknown);
        if (SawWholeCharge)
            return Put is { } all ? (all with { Uses = [.. all.Uses, arrived.Use(_context.Present.Text(ReadingsMessages.UnitArrived))] }, null) : (null, CircuitMessages.NothingWeighed);
        var plate = _context.Get<PlateRefrigerant>();
        if (plate.FactoryCharge is not { } factory)
            return (null, plate.IsAnother ? CircuitMessages.FactoryChargeOfAnother : CircuitMessages.FactoryChargeNotWritten);
        var part = Uncertain.Exact(factory.Value.Si);
        var value = Put is { } put ? part + put.Value : part;
        var present = _context.Present;
        var step = new TraceStep(
            "m_total", present.Text(CircuitMessages.TotalCharge), present.Text(CircuitMessages.TotalChargeFormula),
            $"{factory.Text} + {(Put is null ? present.Text(CircuitMessages.NothingPut) : present.Text(Put.Value.Value, DisplayKind.Mass))}", present.Text(value, DisplayKind.Mass), present.Text(CircuitMessages.Definition));
        return (new MassNumber(value, Put?.Readings ?? [], [.. Put?.Uses ?? [], factory.Use(present.Text(ReadingsMessages.FactoryCharge)), arrived.Use(_context.Present.Text(ReadingsMessages.UnitArrived))], [.. Put?.Steps ?? [], step]), null);
    }
}

/// <summary>Every movement of refrigerant a job tells of, and what its cylinders say of the same.</summary>
internal sealed class RefrigerantLedger : IAnalysis<RefrigerantLedger>
{
    private readonly CheckContext _context;

    private RefrigerantLedger(CheckContext context)
    {
        _context = context;
        Charging = [.. Charged()];
        var circuit = context.Get<CircuitRefrigerant>().Designation;
        Movements = [.. Charging.Select(m => m.AsMovement(context) with { Refrigerant = circuit }), .. Recovered().Select(m => m with { Refrigerant = context.Get<RecoveredRefrigerant>().Designation })];
    }

    /// <summary>
    /// What went in and was taken off again while charging: the scale speaks before a mass that was written, and a mass for the whole before
    /// the masses of single events.
    /// </summary>
    public ImmutableArray<ChargeMovement> Charging { get; }

    /// <summary>The movements: charged, taken off again, recovered.</summary>
    public ImmutableArray<Movement> Movements { get; }

    /// <summary>What went in less what came out of the refrigerant now in the circuit, kg; null when a movement was not weighed or there is none.</summary>
    public Uncertain? Net
    {
        get
        {
            var own = Movements.Where(m => m.Refrigerant == _context.Get<CircuitRefrigerant>().Designation).ToList();
            return own.Count == 0 || Movements.Any(m => m.Mass is null) ? null : own.Select(m => m.Sign * m.Mass!.Value).Aggregate((a, b) => a + b);
        }
    }

    /// <inheritdoc/>
    public static RefrigerantLedger Create(CheckContext context) => new(context);

    /// <summary>The described cylinder a movement used: by its name, or the only one there is.</summary>
    public Cylinder? CylinderOf(Movement movement) => movement.Cylinder is { } id
        ? _context.Job.Cylinders.FirstOrDefault(c => string.Equals(c.Id.Value, id, StringComparison.Ordinal))
        : _context.Job.Cylinders.Length == 1 && Movements.Length == 1 ? _context.Job.Cylinders[0] : null;

    /// <summary>
    /// The movements a cylinder's own gross masses stand for, in the order of the work: recovery first, then charging. One that was filled and then charged from
    /// may have been weighed for both or for one of them: the masses written with a movement tell where its own begin and end.
    /// </summary>
    public ImmutableArray<Movement> WeighedBy(Cylinder cylinder)
    {
        var all = Movements.Where(m => ReferenceEquals(CylinderOf(m), cylinder)).OrderBy(m => m.Kind == MovementKind.Recovered ? 0 : 1).ToImmutableArray();
        if (all.Length < 2 || cylinder is not { Before: { } before, After: { } after })
            return all;
        var first = all.IndexOf(all.FirstOrDefault(m => Same(m.Weighing?.Before, before))!);
        var last = all.LastIndexOf(all.LastOrDefault(m => Same(m.Weighing?.After, after))!);
        return first >= 0 && last >= first ? all[first..(last + 1)] : all;

        static bool Same(Given<Mass>? one, Given<Mass> other) => one is not null && Math.Abs(one.Value.Si - other.Value.Si) < 1e-6;
    }

    /// <summary>What left a cylinder by its own gross masses, kg; null when they are not written.</summary>
    public MassNumber? LeftBy(Cylinder cylinder)
    {
        if (cylinder is not { Before: { } before, After: { } after })
            return null;
        var name = cylinder.Id.Value;
        var first = _context.Readings.Plain(_context.Present.Text(CircuitMessages.CylinderBefore(new(name))), ReadingName.Charge, before, DisplayKind.Mass);
        var second = _context.Readings.Plain(_context.Present.Text(CircuitMessages.CylinderAfter(new(name))), ReadingName.Charge, after, DisplayKind.Mass);
        var value = first.Value - second.Value;
        return new MassNumber(value, [first, second], [], [new TraceStep("Δm", _context.Present.Text(CircuitMessages.OutOf(new(name))), _context.Present.Text(CircuitMessages.BeforeAfter), $"{before.Text} − {after.Text}", _context.Present.Text(value, DisplayKind.Mass), _context.Present.Text(CircuitMessages.Definition))]);
    }

    private IEnumerable<ChargeMovement> Charged()
    {
        if (_context.Job.Charging is not { } charging)
            yield break;
        for (var i = 0; i < charging.Scale.Length; i++)
        {
            var weighing = charging.Scale[i];
            var cylinder = charging.Scale.Length == 1 ? "" : weighing.Cylinder?.Value ?? _context.Present.Text(CircuitMessages.CylinderNumbered(i + 1));
            yield return new ChargeMovement(1, MassPart.Weighed(_context, weighing, cylinder, charging.With), weighing, weighing.At?.Text ?? "");
        }

        if (charging.Scale.IsEmpty && charging.Added is { } added)
            yield return AsWritten(1, CircuitMessages.RefrigerantAdded, added, "");
        if (charging.Removed is { } removed)
            yield return AsWritten(-1, CircuitMessages.RefrigerantRemoved, removed, "");
        foreach (var change in charging.Scale.IsEmpty ? charging.Events : [])
        {
            if (change.Added is { } more && charging.Added is null)
                yield return AsWritten(1, CircuitMessages.RefrigerantAddedAt(new(change.At.Text)), more, change.At.Text);
            if (change.Removed is { } less && charging.Removed is null)
                yield return AsWritten(-1, CircuitMessages.RefrigerantRemovedAt(new(change.At.Text)), less, change.At.Text);
        }

        ChargeMovement AsWritten(int sign, Message name, Given<Mass> given, string time) =>
            new(sign, MassPart.AsWritten(_context, _context.Present.Text(name), given, charging.With), null, time);
    }

    private IEnumerable<Movement> Recovered()
    {
        if (_context.Job.Recovery is not { } recovery)
        {
            if (_context.Job.AsFound?.ChargeRecovered is { } found)
                yield return new Movement(MovementKind.Recovered, -1, null, Written(_context.Present.Text(ReadingsMessages.ChargeRecovered), found, []));
            yield break;
        }

        var cylinder = recovery.Cylinder?.Value ?? recovery.Scale?.Cylinder?.Value;
        var time = recovery.At?.Text ?? "";
        if (recovery.Scale is { } scale)
        {
            var before = _context.Readings.Plain(_context.Present.Text(ReadingsMessages.Before(ReadingsMessages.RecoveryCylinder)), ReadingName.Charge, scale.Before, DisplayKind.Mass, recovery.With);
            var after = _context.Readings.Plain(_context.Present.Text(ReadingsMessages.After(ReadingsMessages.RecoveryCylinder)), ReadingName.Charge, scale.After, DisplayKind.Mass, recovery.With);
            var value = after.Value - before.Value;
            var step = new TraceStep("m_rec", _context.Present.Text(CircuitMessages.Recovered), _context.Present.Text(CircuitMessages.AfterBefore), $"{scale.After.Text} − {scale.Before.Text}", _context.Present.Text(value, DisplayKind.Mass), _context.Present.Text(CircuitMessages.Definition));
            yield return new Movement(MovementKind.Recovered, -1, cylinder, new MassNumber(value, [before, after], [], [step]), scale, time);
        }
        else if ((recovery.Mass ?? _context.Job.AsFound?.ChargeRecovered) is { } mass)
        {
            yield return new Movement(MovementKind.Recovered, -1, cylinder, Written(_context.Present.Text(ReadingsMessages.MassRecovered), mass, recovery.With), Time: time);
        }
        else
        {
            yield return new Movement(MovementKind.Recovered, -1, cylinder, null, Time: time);
        }
    }

    private MassNumber Written(string name, Given<Measurement.Quantities.Mass> given, ImmutableArray<Given<string>> with)
    {
        var reading = _context.Readings.Plain(name, ReadingName.Charge, given, DisplayKind.Mass, with);
        return new MassNumber(reading.Value, [reading], [], []);
    }
}

/// <summary>Refrigerant that went in or was taken off again while charging.</summary>
/// <param name="Sign">Plus one into the circuit, minus one out of it.</param>
/// <param name="Part">The mass.</param>
/// <param name="Weighing">The cylinder on the scale; null when the mass was only written.</param>
/// <param name="Time">When, as written; empty when the job does not say.</param>
internal sealed record ChargeMovement(int Sign, MassPart Part, ScaleReading? Weighing, string Time)
{
    /// <summary>The same as a line of the ledger.</summary>
    public Movement AsMovement(CheckContext context)
    {
        if (Weighing is null)
            return new Movement(Sign > 0 ? MovementKind.Charged : MovementKind.TakenOff, Sign, null, new MassNumber(Part.Value, Part.Readings, [], []), Time: Time);
        var sum = new MassSum(context);
        sum.Add(Part, 1);
        return new Movement(MovementKind.Charged, Sign, Weighing.Cylinder?.Value, sum.Sum("m", CircuitMessages.Charged), Weighing, Time);
    }
}

/// <summary>How refrigerant moved.</summary>
internal enum MovementKind
{
    /// <summary>Into the circuit.</summary>
    Charged,

    /// <summary>Out of it again while charging.</summary>
    TakenOff,

    /// <summary>Out of it before the work.</summary>
    Recovered,
}

/// <summary>Refrigerant that went into the circuit or came out of it.</summary>
/// <param name="Kind">What it was.</param>
/// <param name="Sign">Plus one into the circuit, minus one out of it.</param>
/// <param name="Cylinder">The cylinder it came from or went to; null when the job does not say.</param>
/// <param name="Mass">How much, kg, never negative by itself; null when it was not weighed.</param>
/// <param name="Weighing">What the scale showed before and after; null when there is none.</param>
/// <param name="Time">When, as written; empty when the job does not say.</param>
internal sealed record Movement(MovementKind Kind, int Sign, string? Cylinder, MassNumber? Mass, ScaleReading? Weighing = null, string Time = "")
{
    /// <summary>What it was, in words.</summary>
    public Message Name => Kind switch
    {
        MovementKind.Charged => CircuitMessages.Charged,
        MovementKind.TakenOff => CircuitMessages.TakenOff,
        _ => CircuitMessages.Recovered,
    };

    /// <summary>Designation of the refrigerant.</summary>
    public string Refrigerant { get; init; } = "";
}

/// <summary>
/// The refrigerant in the circuit, for whatever follows from its mass: by weight where the job weighed it, else what the unit's label or
/// plate says. Rooms, carbon-dioxide equivalent, leak-check duties and the level of recovery all ask here.
/// </summary>
internal sealed class CircuitCharge : IAnalysis<CircuitCharge>
{
    private CircuitCharge(MassNumber? total, Message? whyNot, bool isWeighed, MassNumber? full)
    {
        Total = total;
        WhyNot = whyNot;
        IsWeighed = isWeighed;
        Full = full;
    }

    /// <summary>What the circuit holds after the work, kg; null when that cannot be known.</summary>
    public MassNumber? Total { get; }

    /// <summary>Why the total cannot be known, without a full stop; null when it is known.</summary>
    public Message? WhyNot { get; }

    /// <summary>Whether the total follows from scales, and is not only written on the unit.</summary>
    public bool IsWeighed { get; }

    /// <summary>The normal full charge of the circuit, kg: by the label, else by weight, else the nameplate's factory charge, else what was recovered. Null when nothing says.</summary>
    public MassNumber? Full { get; }

    /// <inheritdoc/>
    public static CircuitCharge Create(CheckContext context)
    {
        var job = context.Job;
        var weighed = context.Get<WeighedCharge>();
        var labelled = job.Label?.Total is { } label ? AsWritten(context, CircuitMessages.LabelTotal, label) : null;
        var factory = context.Get<PlateRefrigerant>().FactoryCharge is { } plate ? AsWritten(context, ReadingsMessages.FactoryCharge, plate) : null;
        var recovered = job.Recovery?.Mass is { } mass ? AsWritten(context, ReadingsMessages.MassRecovered, mass)
            : job.AsFound?.ChargeRecovered is { } found ? AsWritten(context, ReadingsMessages.ChargeRecovered, found) : null;
        var full = labelled ?? weighed.Total ?? factory ?? recovered;
        if (job.Identity.Work.Value == WorkKind.Decommissioning)
            return new CircuitCharge(null, CircuitMessages.CircuitEmptied, isWeighed: false, full);
        if (weighed.Total is { } total)
            return new CircuitCharge(total, null, isWeighed: true, full);
        if (labelled is not null)
            return new CircuitCharge(labelled, null, isWeighed: false, full);

        // Where nothing was opened and nothing weighed in, the unit holds what its maker put in.
        var untouched = weighed.Put is null && job.Charging?.UnitArrived is null
            && (job.Identity.Work.Value == WorkKind.SeasonalCheck || (job.Identity.Work.Value == WorkKind.NewInstallation && job.Equipment.ComesWhole()));
        return untouched && factory is not null
            ? new CircuitCharge(factory, null, isWeighed: false, full)
            : new CircuitCharge(null, weighed.WhyNoTotal ?? CircuitMessages.TotalNotWritten, isWeighed: false, full);
    }

    private static MassNumber AsWritten(CheckContext context, Message what, Given<Mass> given)
    {
        var name = context.Present.Text(what);
        return new MassNumber(
            Written.Value(context, name, given, DisplayKind.Mass),
            [],
            [given.Use(name)],
            [new TraceStep("m", name, context.Present.Text(CircuitMessages.AsWritten), given.Text, given.Text, "")]);
    }
}

/// <summary>What the kind of a system says about where its circuit was closed.</summary>
internal static class FactoryBuilt
{
    /// <summary>Whether the whole circuit comes charged from the factory: one housing, or a water machine without lines of the site.</summary>
    public static bool ComesWhole(this Equipment equipment) => equipment.System.Value switch
    {
        SystemKind.Packaged => true,
        SystemKind.AirToWaterHeatPump or SystemKind.Chiller => equipment.Piping.IsEmpty,
        _ => false,
    };
}
