using System.Globalization;
using Commission.Checks.AirReadings;
using Commission.Checks.Charge;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Inference;

/// <summary>The diagnosis among the findings: a fault that one cause explains is no circuit to hand over.</summary>
internal sealed class DiagnosisCheck : ICheck
{
    private const int MostShown = 5;
    private const double WorthShowing = 0.2;

    public string Id => Diagnosis.Check;

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var diagnosis = context.Get<CircuitDiagnosis>();
        if (diagnosis is not { Row: { } row, Said: var (sentence, next) })
            yield break;
        var finding = context.Finding(this, row.Time);
        Name(context, row, finding);
        foreach (var number in diagnosis.Evidence?.Numbers ?? [])
            finding.Use(number);
        foreach (var e in context.Job.Charging?.Events ?? [])
            finding.Use(DiagnosisMessages.ReadingAdded(new(e.At.Text)), e.Added);
        if (diagnosis.FoundBefore is { } found)
            finding.Use(found.Superheat).Name(new[] { found.OutdoorDryBulb, found.ReturnDryBulb, found.ReturnWetBulb }.OfType<CorrectedReading>());
        foreach (var deviation in diagnosis.Evidence?.Deviations ?? [])
        {
            finding.Step(
                "z", deviation.Scale.Name, DiagnosisMessages.WeighedSteps, DiagnosisMessages.WeighedAgainst(deviation.Value, deviation.Expected),
                string.Create(CultureInfo.InvariantCulture, $"{deviation.Steps:+0.0;−0.0;0.0} ± {2 * deviation.Doubt:0.0}"), DiagnosisMessages.WeighedTable);
        }

        foreach (var cause in diagnosis.Weighed.Take(MostShown))
        {
            var moves = cause.Moves.Where(m => Math.Abs(m.LogFactor) >= WorthShowing).OrderByDescending(m => Math.Abs(m.LogFactor)).Select(m => DiagnosisMessages.WeighedMove(CauseTable.Instance.NameOf(m.Evidence), Factor(m.LogFactor)));
            finding.Step(
                "P", cause.Cause.SaidIn(diagnosis.Way).Name, DiagnosisMessages.WeighedChance, DiagnosisMessages.WeighedMoves(new ListValue([.. moves], ListJoin.Comma)),
                string.Create(CultureInfo.InvariantCulture, $"{100 * cause.Probability:0} %"), DiagnosisMessages.WeighedRule);
        }

        yield return diagnosis.Standing switch
        {
            DiagnosisStanding.Sound => finding.Decide(true).Say(sentence).Build(),
            DiagnosisStanding.ByWeight => finding.Information(sentence, DiagnosisMessages.WeighedByWeight),
            DiagnosisStanding.Fault => finding.Fail(Cause(diagnosis)).Say(sentence).Next(next!).Build(),
            DiagnosisStanding.Open => finding.Fail(Cause(diagnosis)).Say(sentence).Next(next!).Build(),
            // The sentence says that there is none; the reason says why.
            _ => finding.Say(sentence).NotEvaluated(diagnosis.Why ?? sentence, next),
        };
    }

    // One cause where one is concluded, else those that are left.
    private static Message Cause(CircuitDiagnosis diagnosis) =>
        DiagnosisMessages.Reason(new ListValue([.. diagnosis.Names.Take(diagnosis.Standing == DiagnosisStanding.Fault ? 1 : int.MaxValue)], ListJoin.Or));

    private static NumberValue Factor(double log) => Math.Exp(Math.Clamp(log, -9, 9)) is var factor && factor >= 10 ? new NumberValue(factor, 0) : new NumberValue(factor, 2);

    // Everything that could move it, whether it did or not.
    private static void Name(CheckContext context, ChargeRow row, FindingBuilder finding)
    {
        var job = context.Job;
        row.Settling.NameIn(finding);
        RunningCondition.Of(context, row).NameIn(finding);
        Hunting.NameIn(context, finding);
        CorrectedReading?[] readings =
        [
            row.VaporPressure, row.LiquidPressure, row.TrueSuctionPressure, row.VaporLine, row.LiquidLine, row.LiquidAfterDrier, row.DischargeLine, row.CompressorSuctionLine,
            row.EvaporatorOutlet, row.IndoorCoilOutlet, row.OutdoorDryBulb, row.ReturnDryBulb, row.ReturnWetBulb, row.SupplyDryBulb, row.BoxTemperature,
        ];
        finding.Name(readings.OfType<CorrectedReading>())
            .Use(ReadingsMessages.Refrigerant, job.Equipment.Refrigerant).Use(DiagnosisMessages.ReadingPlateRefrigerant, job.Equipment.Nameplate?.Refrigerant)
            .Use(ReadingsMessages.CompressorCurrent, row.Written.CompressorCurrent).Use(DiagnosisMessages.ReadingRatedCurrent, job.Equipment.Nameplate?.CompressorRLA)
            .Use(ReadingsMessages.Capacity, job.Equipment.Capacity).Use(ReadingsMessages.TemperatureOfBox, job.Equipment.BoxTemperature)
            .Use(DiagnosisMessages.ReadingSightGlass, row.Written.SightGlass ?? job.Charging?.SightGlass).Use(DiagnosisMessages.ReadingFrost, row.Written.Frost).Use(DiagnosisMessages.ReadingClearOfFrost, row.Written.CoilClearOfFrost)
            .Use(DiagnosisMessages.ReadingFilter, job.Air?.Filter).Use(DiagnosisMessages.ReadingIndoorCoil, job.Air?.Coil).Use(DiagnosisMessages.ReadingOutdoorCoil, job.Air?.OutdoorCoil)
            .Use(DiagnosisMessages.ReadingEconomizer, job.Air?.OutsideAir?.Economizer).Use(DiagnosisMessages.ReadingDamper, job.Air?.OutsideAir?.DamperTest)
            .Use(DiagnosisMessages.ReadingReversingIn, row.Written.ReversingValve?.SuctionIn).Use(DiagnosisMessages.ReadingReversingOut, row.Written.ReversingValve?.SuctionOut);
        if (context.Get<AirflowRoutes>().Chosen is { } route)
            route.UseIn(finding);
        var pressures = context.Get<StaticReading>();
        finding.Name(pressures.Readings);
        foreach (var use in pressures.Uses)
            finding.Use(use);
        if (job.Charging?.StandingTest is not null)
        {
            foreach (var use in new NonCondensablesCheck().Evaluate(context).SelectMany(f => f.Readings))
                finding.Use(use);
        }
    }
}
