using System.Collections.Immutable;
using Commission.Checks.Charge;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;

namespace Commission.Checks.Inference;

/// <summary>How sure a diagnosis is.</summary>
internal enum DiagnosisStanding
{
    /// <summary>The conditions allow none.</summary>
    None,

    /// <summary>The circuit is sound.</summary>
    Sound,

    /// <summary>One fault explains the readings.</summary>
    Fault,

    /// <summary>Several explanations are left.</summary>
    Open,

    /// <summary>The conditions of the moment hide the charge.</summary>
    Condition,

    /// <summary>Readings contradict each other.</summary>
    Impossible,

    /// <summary>The charge stands by its weight, and readings say nothing of it.</summary>
    ByWeight,
}

/// <summary>
/// One diagnosis of the running circuit from everything that was read. First what makes every number worthless - too early, part load, readings that
/// contradict each other, a refrigerant that is not the one written, a valve that hunts - then the causes of <c>causes.yaml</c> weighed against the evidence.
/// </summary>
internal sealed class CircuitDiagnosis : IAnalysis<CircuitDiagnosis>
{
    private const double Sure = 0.6;
    private const double WorthNaming = 0.025;
    private const double AllButSure = 0.93;
    private const double RestTooLow = 5;
    private const double SpeaksFor = 0.7;
    private const double Moved = 0.1;
    private const double GlideThatMisleads = 2;
    private const int MostNamed = 3;
    private const string Recover = "recover";

    private static readonly (string Id, Message Name) WrongRefrigerant = ("wrong refrigerant", DiagnosisMessages.CauseWrongRefrigerant);

    private readonly CheckContext _context;
    private readonly ChargeAnalysis _charge;

    private CircuitDiagnosis(CheckContext context)
    {
        _context = context;
        _charge = context.Get<ChargeAnalysis>();
        Row = _charge.Spoken(OperatingMode.Cooling, r => r.HasCircuitReading)
            ?? _charge.Spoken(OperatingMode.Heating, r => r.HasCircuitReading)
            ?? _charge.Spoken(OperatingMode.Cooling, r => r.Written is { ReturnDryBulb: not null, SupplyDryBulb: not null })
            ?? _charge.Spoken(OperatingMode.Heating, r => r.Written is { ReturnDryBulb: not null, SupplyDryBulb: not null })
            ?? (IsSealed() ? _charge.Spoken(OperatingMode.Cooling, _ => true) ?? _charge.Spoken(OperatingMode.Heating, _ => true) : null);
        if (Row is not null)
            Result = Diagnose(Row);
    }

    /// <summary>The row it rests on; null without readings on the running system.</summary>
    public ChargeRow? Row { get; }

    /// <summary>The diagnosis as the record holds it; null without readings on the running system.</summary>
    public Diagnosis? Result { get; }

    /// <summary>How sure it is.</summary>
    public DiagnosisStanding Standing { get; private set; }

    /// <summary>The same sentences as messages.</summary>
    public (Message Sentence, Message? Next)? Said { get; private set; }

    /// <summary>Why there is no diagnosis, without a full stop; null where there is one.</summary>
    public Message? Why { get; private set; }

    /// <summary>How the circuit works.</summary>
    public CircuitWay Way { get; private set; }

    /// <summary>What the ranked causes are called in a sentence.</summary>
    public ImmutableArray<Message> Names { get; private set; } = [];

    /// <summary>The readings before the work that its next step names; null where it names none.</summary>
    public ChargeRow? FoundBefore { get; private set; }

    /// <summary>The evidence; null when nothing was weighed.</summary>
    public RowEvidence? Evidence { get; private set; }

    /// <summary>Every cause with its probability and what moved it; empty when nothing was weighed.</summary>
    public ImmutableArray<WeighedCause> Weighed { get; private set; } = [];

    /// <inheritdoc/>
    public static CircuitDiagnosis Create(CheckContext context) => new(context);

    private Diagnosis Diagnose(ChargeRow row)
    {
        Way = row.Mode == OperatingMode.Heating ? CircuitWay.Heating : _charge.HasFixedMetering ? CircuitWay.Orifice : CircuitWay.Valve;
        if (RestsBelowSaturation() is { } below)
            return Single(row, DiagnosisStanding.Fault, WrongRefrigerant, DiagnosisMessages.RestsBelow(Quantity(below), new NameValue(_context.Get<CircuitRefrigerant>().Designation ?? "")), DiagnosisMessages.WrongRefrigerantNext);
        if (Contradiction.In(_context, _charge, row) is { } why)
        {
            Why = why;
            return Single(row, DiagnosisStanding.Impossible, ("reading cannot be", null), DiagnosisMessages.Impossible(why), DiagnosisMessages.ImpossibleNext);
        }

        if (AnotherRefrigerant() is var (other, place) && _context.Get<CircuitRefrigerant>().Designation is { } written)
            return Single(row, DiagnosisStanding.Fault, WrongRefrigerant, DiagnosisMessages.WrongRefrigerant(new NameValue(written), new NameValue(other), place), DiagnosisMessages.WrongRefrigerantNext);
        if (row.Mode == OperatingMode.Heating && row.Written.CoilClearOfFrost is { Value: false })
            return None(row, DiagnosisMessages.Frosted, DiagnosisMessages.FrostedNext);
        // What a modulating system shows says nothing of a charge that stands by its weight.
        if (row.HasCircuitReading && _context.Get<WeighedCharge>().Put is not null && row.Running?.Value != RunningState.Part && (_charge.ByWeightOnly ?? RunningCondition.Of(_context, row).Block) is { } weight)
            return Make(row, DiagnosisStanding.ByWeight, [], DiagnosisMessages.ByWeight(weight), null, "none");
        // Air readings alone set no charge and need no charging mode.
        var byAirAlone = !row.HasCircuitReading;
        var drift = row.Mode == OperatingMode.Cooling ? LogDrift.Of(_context) : null;
        var gates = _charge.IsRefrigeration || byAirAlone ? new ChargeGates(row.Settling, drift) : new ChargeGates(row.Settling, drift, RunningCondition.Of(_context, row));
        if (gates.Blocked is var (blocked, todo))
            return None(row, blocked, todo);
        if (row.Running?.Value == RunningState.Part)
            return None(row, DiagnosisMessages.PartLoad, DiagnosisMessages.PartLoadNext);
        if (row.Mode == OperatingMode.Cooling && _charge.ByWeightOnly is null && WindowOf(row)?.Windows.FirstOrDefault(w => w.Inside == false) is { } outside)
            return Outside(row, outside);
        if (Hunting.In(_context) is { } swing)
            return Single(row, DiagnosisStanding.Fault, ("hunting", DiagnosisMessages.CauseHunting), DiagnosisMessages.Hunting(Quantity(swing.Low), Quantity(swing.High)), DiagnosisMessages.HuntingNext);

        Evidence = RowEvidence.Of(_context, row);
        if (Evidence.Deviations.Count == 0)
        {
            // Nobody is sent to put a gauge on a circuit that came sealed and runs.
            return row.HasCircuitReading || !IsSealed()
                ? None(row, row.HasCircuitReading ? DiagnosisMessages.NoNumbers : DiagnosisMessages.NoGauge, DiagnosisMessages.NoNumbersNext)
                : None(row, DiagnosisMessages.NoGaugeSealed, null);
        }

        Weighed = Weighing.Weigh(CauseTable.Instance, Evidence.Deviations, Evidence.Seen, Way, Absent());
        return Tell(row);
    }

    // Air outdoors that is too cold or too hot hides the charge; a room that is tells of the load.
    private Diagnosis Outside(ChargeRow row, ValidityWindow window)
    {
        var why = WindowOf(row)!.Words(window);
        var next = MethodValidity.Advice(window);
        if (window.What == ValidityReading.OutdoorDryBulb)
            return None(row, why, next);
        var load = CauseTable.Instance.Cause(window.IsBelow ? "low load" : "high load");
        var name = load.SaidIn(Way).Name;
        return Single(row, DiagnosisStanding.Condition, (load.Id, name), DiagnosisMessages.Condition(name, List([why])), next);
    }

    private Diagnosis Tell(ChargeRow row)
    {
        var first = Weighed[0];
        var said = first.Cause.SaidIn(Way);
        var named = Weighed.Take(MostNamed).Where((w, i) => i == 0 || w.Probability >= WorthNaming).ToImmutableArray();
        if (first.Cause.IsSound)
        {
            var told = List(Evidence!.Deviations.Take(4).Select(d => DiagnosisMessages.Shown(d.Scale.Name, d.Value)));
            // A cause that is only often met, and for which no reading speaks, is not worth a word to people whose circuit runs well.
            named = [first, .. named.Skip(1).Where(w => w.Moves.Any(m => Math.Abs(m.LogFactor) > Moved) && w.Probability * first.Cause.Often > SpeaksFor * first.Probability * w.Cause.Often)];
            // Without its superheat nothing clears the charge of an orifice.
            if (named.Length == 1 && Way == CircuitWay.Orifice && Evidence.Deviations.All(d => d.Scale.Id != "superheat"))
                return Make(row, DiagnosisStanding.Sound, [first], DiagnosisMessages.SoundWithoutTarget(told), null, "none");
            return named.Length == 1 || first.Probability >= AllButSure
                ? Make(row, DiagnosisStanding.Sound, [first], DiagnosisMessages.Sound(told), null, "none")
                : Make(row, DiagnosisStanding.Sound, named, DiagnosisMessages.SoundButOpen(told, Others(named), named[1].Cause.SaidIn(Way).Apart!), null, "none");
        }

        var evidence = List(Proofs(first));
        if (first.Cause.IsCondition)
            return Make(row, DiagnosisStanding.Condition, named, DiagnosisMessages.Condition(said.Name, evidence), said.Next, "none");
        if (first.Probability >= Sure || named.Length == 1)
            return Make(row, DiagnosisStanding.Fault, named, DiagnosisMessages.Concluded(said.Name, evidence), NextWhereAdded(first) ?? said.Next, first.Cause.Advice);
        return Make(row, DiagnosisStanding.Open, named, DiagnosisMessages.Ranked(said.Name, Others(named), evidence), DiagnosisMessages.RankedNext(said.Apart!), "none");
    }

    private bool IsSealed() => _context.Job.Equipment.HermeticallySealed?.Value == true && _context.Get<WeighedCharge>() is { CameCharged: true, Put: null };

    // What was put in on this visit, where the crew added in steps; null when nothing was.
    private QuantityValue? AddedToday() => _charge.Charging?.Events.Sum(e => e.Added?.Value.Si ?? 0) is > 0 and var mass ? _context.Present.InMessage(mass, DisplayKind.Mass) : null;

    private Message? NextWhereAdded(WeighedCause first)
    {
        if (first.Cause.Advice != Recover || AddedToday() is not { } added)
            return null;
        // What the circuit had before is the best measure of what was too much.
        if (_charge.AsFound.LastOrDefault() is { Superheat.Value: { } before } found && ChargeTarget.Superheat(_context, found) is { Limit: { LowerSi: { } low, UpperSi: { } high } limit } && before.Value >= low && before.Value <= high)
        {
            FoundBefore = found;
            var (superheat, target) = (_context.Present.InMessage(before, DisplayKind.TemperatureDifference), new TextValue(limit.Text));
            return OnBubbleScale(found, before) is { } misread
                ? DiagnosisMessages.RecoverAddedAsFoundBlendNext(added, superheat, target, new NameValue(_context.Get<CircuitRefrigerant>().Designation), Quantity(misread))
                : DiagnosisMessages.RecoverAddedAsFoundNext(added, superheat, target);
        }

        return DiagnosisMessages.RecoverAddedNext(added);
    }

    // Whoever reads a blend's superheat on the scale of its liquid sees a starved coil where there is none, and fills it.
    private double? OnBubbleScale(ChargeRow found, Uncertain superheat) =>
        found is { VaporPressure: { } pressure, VaporLine: { } line } && _context.Get<CircuitSaturation>().Bubble(pressure).Value is { } bubble
        && line.Value.Value - bubble.Value - superheat.Value > GlideThatMisleads
            ? line.Value.Value - bubble.Value
            : null;

    private ListValue Others(ImmutableArray<WeighedCause> named) => List(named.Skip(1).Select(o => o.Cause.SaidIn(Way).Name), ListJoin.Or);

    // What speaks most for the cause; of a cause that follows from how often it is met alone, what lies farthest out.
    private IEnumerable<Message> Proofs(WeighedCause cause)
    {
        var byId = Evidence!.Deviations.ToDictionary(d => d.Scale.Id, d => DiagnosisMessages.Proof(d.Scale.Name, PlaceOf(d.Place), d.Value), StringComparer.Ordinal);
        foreach (var seen in Evidence.Seen)
            byId.TryAdd(seen.What, CauseTable.Instance.Told(seen));
        var asExpected = Evidence.Deviations.Where(d => d.Place == ReadingPlace.AsExpected).Select(d => d.Scale.Id).ToHashSet(StringComparer.Ordinal);
        var moved = cause.Moves.Where(m => m.LogFactor > 0.4 && !asExpected.Contains(m.Evidence)).OrderByDescending(m => m.LogFactor).Take(3).Select(m => byId[m.Evidence]).ToArray();
        return moved.Length > 0 ? moved : Evidence.Deviations.OrderByDescending(d => Math.Abs(d.Steps)).Take(2).Select(d => byId[d.Scale.Id]);
    }

    private (string Other, DiagnosisMessages.WrongRefrigerantWhere Where)? AnotherRefrigerant()
    {
        var job = _context.Job;
        var own = job.Equipment.Refrigerant?.Value;
        if (own is null)
            return null;
        if (job.RefrigerantChange is null && job.Identity.Work.Value != WorkKind.RefrigerantChange && job.Equipment.Nameplate?.Refrigerant is { } plate && plate.Value != own)
            return (plate.Value, DiagnosisMessages.WrongRefrigerantWhere.Plate);
        var given = job.Charging?.Scale.Select(s => s.Cylinder?.Value).OfType<string>().ToHashSet(StringComparer.Ordinal) ?? [];
        var foreign = job.Cylinders.FirstOrDefault(c => c.Refrigerant is { } gas && gas.Value != own && c.Id is { } id && given.Contains(id.Value));
        return foreign is null ? null : (foreign.Refrigerant!.Value, DiagnosisMessages.WrongRefrigerantWhere.Cylinder);
    }

    // At rest, with liquid in the circuit, the pressure is that of saturation at the temperature of the line: air can only raise it.
    private double? RestsBelowSaturation()
    {
        if (_charge.Charging?.StandingTest is not { LiquidLine: { } line } test || !HoldsLiquid())
            return null;
        var pressure = _context.Readings.Pressure(_context.Present.Text(DiagnosisMessages.ReadingStandingPressure), ReadingName.LiquidPressure, test.LiquidPressure);
        var below = _context.Get<CircuitSaturation>().Bubble(pressure).Value is { } at ? line.Value.Si - at.Value : 0;
        return below > RestTooLow ? below : null;
    }

    private bool HoldsLiquid() => _charge.Charging is { SightGlass.Value: SightGlass.Clear } or { ReceiverLevel.Value.Si: > 0.1 }
        || _charge.Rows.Any(r => r.Written is { SightGlass.Value: SightGlass.Clear } or { ReceiverLevel.Value.Si: > 0.1 });

    private MethodValidity? WindowOf(ChargeRow row) =>
        _charge.HasFixedMetering || _charge.HasValve ? MethodValidity.Of(_context, row, _charge.HasFixedMetering ? ChargeCriterion.Superheat : ChargeCriterion.Subcooling) : null;

    // What a circuit has not cannot fail in it; a receiver takes up what would be too much.
    private ImmutableArray<string> Absent() => [.. HasReversingValve() ? Array.Empty<string>() : ["reversing valve"], .. _charge.HasReceiver ? ["full condenser"] : Array.Empty<string>()];

    private bool HasReversingValve() => _context.Job.Equipment.System.Value is SystemKind.HeatPump or SystemKind.DuctlessSplit or SystemKind.MultiSplit or SystemKind.VRF or SystemKind.AirToWaterHeatPump
        || _charge.Rows.Any(r => r.Written.ReversingValve is not null || r.Mode == OperatingMode.Heating);

    private Diagnosis None(ChargeRow row, Message why, Message? next)
    {
        Why = why;
        return Make(row, DiagnosisStanding.None, [], DiagnosisMessages.None(why), next, "none");
    }

    private Diagnosis Single(ChargeRow row, DiagnosisStanding standing, (string Id, Message? Name) cause, Message sentence, Message? next)
    {
        var made = Make(row, standing, [], sentence, next, "none");
        Names = cause.Name is null ? [] : [cause.Name];
        return made with { Ranked = [new RankedCause(cause.Id, 1, null)] };
    }

    private Diagnosis Make(ChargeRow row, DiagnosisStanding standing, ImmutableArray<WeighedCause> ranked, Message sentence, Message? next, string advice)
    {
        var present = _context.Present;
        Standing = standing;
        Said = (sentence, next);
        Names = [.. ranked.Select(w => w.Cause.SaidIn(Way).Name)];
        return new Diagnosis
        {
            At = row.Time,
            Sentence = present.Text(sentence),
            NextStep = next is null ? "" : present.Text(next),
            Advice = advice,
            Ranked = [.. ranked.Select(w => new RankedCause(w.Cause.Id, w.Probability, ranked.Length > 1 && w.Cause.SaidIn(Way).Apart is { } apart ? present.Text(apart) : null))],
            Readings =
            [
                .. WithoutTarget(row),
                .. (Evidence?.Deviations ?? []).Select(d => new WeighedReading(present.Text(d.Scale.Name), present.Text(d.Value), present.Text(d.Expected), MemberWords.Of(d.Place.ToString()))
                {
                    PlaceText = d.Place == ReadingPlace.AsExpected ? "" : present.Text(PlaceOf(d.Place)),
                }),
                .. (Evidence?.Seen ?? []).Select(s => new WeighedReading(present.Text(CauseTable.Instance.NameOf(s.What)), present.Text(CauseTable.Instance.Told(s)), "", s.Word)),
            ],
        };
    }

    // Superheat of an orifice for which the conditions give no target: a crew looks for it all the same.
    private IEnumerable<WeighedReading> WithoutTarget(ChargeRow row)
    {
        if (Evidence is null || Evidence.Deviations.Any(d => d.Scale.Id == "superheat") || row.Mode == OperatingMode.Heating || row.Superheat.Value is not { } value)
            yield break;
        var present = _context.Present;
        yield return new WeighedReading(present.Text(CauseTable.Instance.NameOf("superheat")), present.Text(value, DisplayKind.TemperatureDifference), present.Text(DiagnosisMessages.ExpectedNone), "as expected");
    }

    private static Message PlaceOf(ReadingPlace place) => DiagnosisMessages.Place(place switch
    {
        ReadingPlace.FarBelow => DiagnosisMessages.PlacePlace.FarBelow,
        ReadingPlace.Below => DiagnosisMessages.PlacePlace.Below,
        ReadingPlace.Above => DiagnosisMessages.PlacePlace.Above,
        ReadingPlace.FarAbove => DiagnosisMessages.PlacePlace.FarAbove,
        _ => DiagnosisMessages.PlacePlace.AsExpected,
    });

    private QuantityValue Quantity(double kelvin) => _context.Present.Value(kelvin, DisplayKind.TemperatureDifference, 1);

    private static ListValue List(IEnumerable<Message> items, ListJoin join = ListJoin.And) => new([.. items], join);
}
