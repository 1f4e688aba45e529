using System.Collections.Immutable;
using Commission.Checks.Charge;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
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
    private const int MostNamed = 3;

    private readonly CheckContext _context;
    private readonly ChargeAnalysis _charge;

    private CircuitDiagnosis(CheckContext context)
    {
        _context = context;
        _charge = context.Get<ChargeAnalysis>();
        Row = _charge.Spoken(OperatingMode.Cooling, r => r.HasCircuitReading)
            ?? _charge.Spoken(OperatingMode.Heating, r => r.HasCircuitReading)
            ?? _charge.Spoken(OperatingMode.Cooling, r => r.Written is { ReturnDryBulb: not null, SupplyDryBulb: not null })
            ?? _charge.Spoken(OperatingMode.Heating, r => r.Written is { ReturnDryBulb: not null, SupplyDryBulb: not null });
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

    /// <summary>What the ranked causes are called in a sentence.</summary>
    public ImmutableArray<string> Names { get; private set; } = [];

    /// <summary>The evidence; null when nothing was weighed.</summary>
    public RowEvidence? Evidence { get; private set; }

    /// <summary>Every cause with its probability and what moved it; empty when nothing was weighed.</summary>
    public ImmutableArray<WeighedCause> Weighed { get; private set; } = [];

    /// <inheritdoc/>
    public static CircuitDiagnosis Create(CheckContext context) => new(context);

    private Diagnosis Diagnose(ChargeRow row)
    {
        if (RestsBelowSaturation() is { } below)
            return Single(row, DiagnosisStanding.Fault, "wrong refrigerant", DiagnosisMessages.RestsBelow(Quantity(below), new TextValue(_context.Get<CircuitRefrigerant>().Designation ?? "")), DiagnosisMessages.WrongRefrigerantNext);
        if (Contradiction.In(_context, _charge, row) is { } why)
            return Single(row, DiagnosisStanding.Impossible, "reading cannot be", DiagnosisMessages.Impossible(new TextValue(why)), DiagnosisMessages.ImpossibleNext);
        if (AnotherRefrigerant() is var (other, place) && _context.Get<CircuitRefrigerant>().Designation is { } written)
            return Single(row, DiagnosisStanding.Fault, "wrong refrigerant", DiagnosisMessages.WrongRefrigerant(new TextValue(written), new TextValue(other), place), DiagnosisMessages.WrongRefrigerantNext);
        if (row.Mode == OperatingMode.Heating && row.Written.CoilClearOfFrost is { Value: false })
            return None(row, DiagnosisMessages.Frosted, DiagnosisMessages.FrostedNext);
        // What a modulating system shows says nothing of a charge that stands by its weight.
        if (row.HasCircuitReading && _context.Get<WeighedCharge>().Put is not null && row.Running?.Value != RunningState.Part && (_charge.ByWeightOnly ?? RunningCondition.Of(_context, row).Block) is { } weight)
            return Make(row, DiagnosisStanding.ByWeight, [], DiagnosisMessages.ByWeight(new TextValue(weight)), null, "none");
        // A charge set by weight needs no charging mode: the air alone is looked at then.
        var byAirAlone = _charge.ByWeightOnly is not null && !row.HasCircuitReading;
        var gates = _charge.IsRefrigeration || byAirAlone ? new ChargeGates(row.Settling) : new ChargeGates(row.Settling, RunningCondition.Of(_context, row));
        if (gates.Blocked is var (blocked, todo))
            return None(row, blocked, todo);
        if (row.Running?.Value == RunningState.Part)
            return None(row, DiagnosisMessages.PartLoad, DiagnosisMessages.PartLoadNext);
        if (row.Mode == OperatingMode.Cooling && _charge.ByWeightOnly is null && WindowOf(row)?.Windows.FirstOrDefault(w => w.Inside == false) is { } outside)
            return Outside(row, outside);
        if (Hunting.In(_context) is { } swing)
            return Single(row, DiagnosisStanding.Fault, "hunting", DiagnosisMessages.Hunting(Quantity(swing.Low), Quantity(swing.High)), DiagnosisMessages.HuntingNext);

        Evidence = RowEvidence.Of(_context, row);
        if (Evidence.Deviations.Count == 0)
            return None(row, DiagnosisMessages.NoNumbers, DiagnosisMessages.NoNumbersNext);
        Weighed = Weighing.Weigh(CauseTable.Instance, Evidence.Deviations, Evidence.Seen, Way(row), Absent());
        return Tell(row);
    }

    private CircuitWay Way(ChargeRow row) => row.Mode == OperatingMode.Heating ? CircuitWay.Heating : _charge.HasFixedMetering ? CircuitWay.Orifice : CircuitWay.Valve;

    // Air outdoors that is too cold or too hot hides the charge; a room that is tells of the load.
    private Diagnosis Outside(ChargeRow row, ValidityWindow window)
    {
        var why = WindowOf(row)!.Words(window);
        var next = MethodValidity.Advice(window);
        if (window.What == "outdoor dry bulb")
            return None(row, why, next);
        var load = window.IsBelow ? "low load" : "high load";
        return Single(row, DiagnosisStanding.Condition, load, DiagnosisMessages.Condition(List([why]), new TextValue(load)), next);
    }

    private Diagnosis Tell(ChargeRow row)
    {
        var way = Way(row);
        var first = Weighed[0];
        var named = Weighed.Take(MostNamed).Where((w, i) => i == 0 || w.Probability >= WorthNaming).ToImmutableArray();
        if (first.Cause.Next.Length == 0)
        {
            var told = List(Evidence!.Deviations.Take(4).Select(d => $"{d.Scale.Name} {d.Text}"));
            // A cause that is only often met, and for which no reading speaks, is not worth a word to people whose circuit runs well.
            named = [first, .. named.Skip(1).Where(w => w.Probability * first.Cause.Often > SpeaksFor * first.Probability * w.Cause.Often)];
            return named.Length == 1 || first.Probability >= AllButSure
                ? Make(row, DiagnosisStanding.Sound, [first], DiagnosisMessages.Sound(told), null, "none")
                : Make(row, DiagnosisStanding.Sound, named, DiagnosisMessages.SoundButOpen(told, List(named.Skip(1).Select(o => o.Cause.NameIn(way)), ListJoin.Or), new TextValue(named[1].Cause.TellApartIn(way) ?? "")), null, "none");
        }

        var evidence = List(Proofs(first));
        if (first.Cause.IsCondition)
            return Make(row, DiagnosisStanding.Condition, named, DiagnosisMessages.Condition(evidence, new TextValue(first.Cause.NameIn(way))), first.Cause.NextIn(way), "none");
        if (first.Probability >= Sure || named.Length == 1)
            return Make(row, DiagnosisStanding.Fault, named, DiagnosisMessages.Concluded(evidence, new TextValue(first.Cause.NameIn(way))), first.Cause.NextIn(way), first.Cause.Advice);
        var others = named.Skip(1).ToArray();
        var apart = first.Cause.TellApartIn(way) ?? others[0].Cause.TellApartIn(way) ?? "";
        return Make(
            row, DiagnosisStanding.Open, named,
            DiagnosisMessages.Ranked(evidence, new TextValue(first.Cause.NameIn(way)), List(others.Select(o => o.Cause.NameIn(way)), ListJoin.Or), new TextValue(apart)),
            DiagnosisMessages.UnclearNext, "none");
    }

    // What speaks most for the cause; of a cause that follows from how often it is met alone, what lies farthest out.
    private IEnumerable<string> Proofs(WeighedCause cause)
    {
        var byName = Evidence!.Deviations.ToDictionary(d => d.Scale.Name, d => $"{d.Scale.Name} {d.Place} ({d.Text})", StringComparer.Ordinal);
        foreach (var seen in Evidence.Seen)
            byName.TryAdd(seen.What, $"{seen.What}: {seen.Word}");
        var asExpected = Evidence.Deviations.Where(d => d.Place == "as expected").Select(d => d.Scale.Name).ToHashSet(StringComparer.Ordinal);
        var moved = cause.Moves.Where(m => m.LogFactor > 0.4 && !asExpected.Contains(m.Evidence)).OrderByDescending(m => m.LogFactor).Take(3).Select(m => byName[m.Evidence]).ToArray();
        return moved.Length > 0 ? moved : Evidence.Deviations.OrderByDescending(d => Math.Abs(d.Steps)).Take(2).Select(d => byName[d.Scale.Name]);
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
        var pressure = _context.Readings.Pressure("standing pressure", ReadingName.LiquidPressure, test.LiquidPressure);
        var below = _context.Get<CircuitSaturation>().Bubble(pressure).Value is { } at ? line.Value.Si - at.Value : 0;
        return below > RestTooLow ? below : null;
    }

    private bool HoldsLiquid() => _charge.Charging is { SightGlass.Value: SightGlass.Clear } or { ReceiverLevel.Value.Si: > 0.1 }
        || _charge.Rows.Any(r => r.Written is { SightGlass.Value: SightGlass.Clear } or { ReceiverLevel.Value.Si: > 0.1 });

    private MethodValidity? WindowOf(ChargeRow row) =>
        _charge.HasFixedMetering || _charge.HasValve ? MethodValidity.Of(_context, row, _charge.HasFixedMetering ? ChargeCriterion.Superheat : ChargeCriterion.Subcooling) : null;

    // What a circuit has not cannot fail in it; a receiver takes up what would be too much.
    private ImmutableArray<string> Absent() => [.. HasReversingValve() ? Array.Empty<string>() : ["reversing valve"], .. _charge.HasReceiver ? ["full condenser"] : Array.Empty<string>()];

    private bool HasReversingValve() => _context.Job.Equipment.System.Value is SystemKind.HeatPump or SystemKind.DuctlessSplit or SystemKind.MultiSplit or SystemKind.VRF
        || _charge.Rows.Any(r => r.Written.ReversingValve is not null || r.Mode == OperatingMode.Heating);

    private Diagnosis None(ChargeRow row, Message why, Message next) => None(row, _context.Present.Text(why), _context.Present.Text(next));

    private Diagnosis None(ChargeRow row, string why, string next) => Make(row, DiagnosisStanding.None, [], DiagnosisMessages.None(new TextValue(why)), next, "none");

    private Diagnosis Single(ChargeRow row, DiagnosisStanding standing, string cause, Message sentence, Message? next)
    {
        var made = Make(row, standing, [], sentence, next, "none");
        Names = [cause];
        return made with { Ranked = [new RankedCause(cause, 1, null)] };
    }

    private Diagnosis Make(ChargeRow row, DiagnosisStanding standing, ImmutableArray<WeighedCause> ranked, Message sentence, Message? next, string advice)
    {
        Standing = standing;
        Said = (sentence, next);
        Names = [.. ranked.Select(w => w.Cause.NameIn(Way(row)))];
        return new Diagnosis
        {
            At = row.Time,
            Sentence = Capital(_context.Present.Text(sentence)),
            NextStep = next is null ? "" : _context.Present.Text(next),
            Advice = advice,
            Ranked = [.. ranked.Select(w => new RankedCause(w.Cause.Name, w.Probability, ranked.Length > 1 ? w.Cause.TellApartIn(Way(row)) : null))],
            Readings =
            [
                .. (Evidence?.Deviations ?? []).Select(d => new WeighedReading(d.Scale.Name, d.Text, d.Expected, d.Place)),
                .. (Evidence?.Seen ?? []).Select(s => new WeighedReading(s.What, s.Word, "", s.Word)),
            ],
        };
    }

    private QuantityValue Quantity(double kelvin) => _context.Present.Value(kelvin, DisplayKind.TemperatureDifference, 1);

    private static ListValue List(IEnumerable<string> texts, ListJoin join = ListJoin.And) => new([.. texts.Select((t, i) => new TextValue(i == 0 && join == ListJoin.And ? Capital(t) : t))], join);

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
