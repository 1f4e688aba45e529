using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.NitrogenAnalysis;
using Commission.Checks.VacuumAnalysis;
using Commission.Checks.Wording;
using Commission.Fluids.Water;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Evacuation;

/// <summary>What the shape of the hold says of its cause, and what would tell more. Information: the decay limit is judged elsewhere.</summary>
internal sealed class RiseCauseCheck : ICheck
{
    // Gauges of a tenth, and a degree at the coldest part (common practice, no source).
    private const double NearSaturation = 0.15;

    public string Id => "evacuation.cause";

    public string Phase => Phases.Evacuation;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation)
            yield break;
        var run = context.Get<EvacuationRun>();
        var finding = run.Temperatures.NameIn(run.Name(context.Finding(this))).Use(VacuumHoldMessages.ReadingGaugePlace, evacuation.Gauge).Use(VacuumHoldMessages.ReadingIsolatedAt, evacuation.IsolatedAt).Use(VacuumHoldMessages.ReadingTarget, evacuation.Target)
            .Use(VacuumHoldMessages.ReadingDecayLimit, evacuation.DecayLimit?.Level);
        foreach (var level in evacuation.Levels)
            finding.Use(VacuumHoldMessages.ReadingIsolated(new(level.At.Text)), level.Isolated);
        if (run.Obstacle is { } block)
            yield return finding.NotEvaluated(block.Why, block.Next);
        else if (run is not { Hold: { } hold, Parts: { Isolation: { } isolation, HoldEnd: { } end } })
            yield return NoIsolation.Of(run, run.DecayLimit?.Companion("after")).End(finding);
        else
            yield return Told(context, run, run.Name(finding, isolation, end), hold);
    }

    private static Finding Told(CheckContext context, EvacuationRun run, FindingBuilder finding, HoldResult hold)
    {
        if (run.Rows.Log is null && hold.Reason is CannotTellReason.NoRows or CannotTellReason.TooFewBlocks)
            return finding.NotEvaluated(VacuumHoldMessages.ShapeLevels, VacuumHoldMessages.ShapeLevelsNext);
        if (hold.Reason == CannotTellReason.NoRows)
            return finding.NotEvaluated(VacuumHoldMessages.ShapeNoReadings, VacuumHoldMessages.ShapeNoReadingsNext);
        var present = context.Present;
        var wording = Wording(context, run);
        Explain(present, finding, hold);
        // Only a slope that the conclusion speaks of is a result; beside a source it is a bound.
        if (run.Slope is { } slope && hold.Conclusion is HoldConclusion.SteadyRise or HoldConclusion.SteadyRiseAndSource)
            finding.Measure(slope, DisplayKind.VacuumRise);
        if (NextStep(context, run) is { } next)
        {
            // Where the hold failed, what its shape says is half the answer; where it passed, a rise that goes on is to be looked at all the same.
            if (JudgedHold.HasFailed(run) || hold is { Conclusion: HoldConclusion.SteadyRise or HoldConclusion.SteadyRiseAndSource } or { Reason: CannotTellReason.SpeedsUp })
                finding.LookAt(next);
            else
                finding.Next(next);
        }

        if (hold.Conclusion is HoldConclusion.Source or HoldConclusion.SteadyRiseAndSource && run is { Evacuation.ColdestPartAtEnd: null, Temperatures.Log: null })
            finding.Remark(VacuumHoldMessages.ShapeWaterWarms);
        return finding.Remark(NitrogenWitness.Of(context, run, hold)?.Use(finding, wording.Scene)).Remark(NearWater(context, run, hold)).Remark(Warmed(context, run, hold)).Remark(run.View.HoldRemark).Information(wording.Statement(hold), VacuumHoldMessages.ShapeKind);
    }

    /// <summary>What a crew does next: what the shape of the rise asks for, the rig first where nobody has watched it alone.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="run">The evacuation.</param>
    /// <returns>The step; null where the hold asks for nothing.</returns>
    internal static Message? NextStep(CheckContext context, EvacuationRun run)
    {
        if (run.Hold is not { } hold)
            return null;
        var hasFailed = JudgedHold.HasFailed(run);
        if (run.IsCharged && hasFailed)
            return EvacuationMessages.HoldFailedChargedNext;
        if (Wording(context, run).NextStep(hold, NitrogenWitness.Of(context, run, hold) is { SpeaksAgainstHole: true }, NearWater(context, run, hold) is not null) is not { } shape)
            return null;

        // A steady rise has to be found whether or not it passed.
        var isSteady = hold.Conclusion is HoldConclusion.SteadyRise or HoldConclusion.SteadyRiseAndSource;
        return run.Evacuation.RigCheck is null && !run.IsCharged && (isSteady || (hold.Conclusion is HoldConclusion.Source && hasFailed)) ? EvacuationMessages.RigAloneNext(RigInHold(run), shape) : shape;
    }

    /// <summary>What a hold of this job shows, in words.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="run">The evacuation.</param>
    internal static HoldWording Wording(CheckContext context, EvacuationRun run) =>
        VacuumText.Wording(context.Present, new HoldScene(run.IsBesideChargedUnit, run.IsCharged, VacuumRigCheck.HasHeld(context, run)));

    // What two written temperatures make of a steady rise: the first thing that is asked of it.
    private static Message? Warmed(CheckContext context, EvacuationRun run, HoldResult hold) =>
        hold.Conclusion is HoldConclusion.SteadyRise or HoldConclusion.SteadyRiseAndSource && run is { Evacuation: { ColdestPart: { } before, ColdestPartAtEnd: { } after }, AtIsolation.Value: var begun }
        && Math.Abs(after.Value.Si - before.Value.Si) >= 1
            ? EvacuationMessages.ShapeWarmed(VacuumText.Value(context.Present, begun * (after.Value.Si - before.Value.Si) / before.Value.Si), new(before.Text), new(after.Text))
            : null;

    // A rise that runs towards what water gives off at the coldest part, as nearly as gauge and thermometer tell.
    private static Message? NearWater(CheckContext context, EvacuationRun run, HoldResult hold) =>
        hold.Conclusion == HoldConclusion.Source && hold.Plateau is { Value: var level } && run.Temperatures.Last is { } coldest && coldest.Value.Si >= WaterSaturation.TripleTemperature
        && WaterVapor.SaturationPressure(coldest.Value.Si) is { Ok: true, Value: var saturation } && Math.Abs((level / saturation) - 1) <= NearSaturation
            ? EvacuationMessages.ShapeNearWater(new(context.Present.Text(level / saturation, DisplayKind.Percentage, 0)), new(coldest.Text))
            : null;

    // What of the rig lies on the circuit's side of the closed valve, and so inside the hold.
    private static EvacuationMessages.RigAloneNextInside RigInHold(EvacuationRun run) =>
        run.Evacuation is { Gauge.Value: GaugePlace.AtTheSystem, IsolatedAt.Value: IsolationPlace.ValveOnTheServicePort } ? EvacuationMessages.RigAloneNextInside.Gauge : EvacuationMessages.RigAloneNextInside.Hoses;

    private static void Explain(Presentation present, FindingBuilder finding, HoldResult hold)
    {
        var rows = hold.Rows;
        finding.Step(
            "n", VacuumHoldMessages.ShapeUsed, VacuumHoldMessages.ShapeUsedFormula,
            string.Create(CultureInfo.InvariantCulture, $"{rows.InHold} − {rows.Skipped} − {rows.OverRange} − {rows.Outliers}"), rows.Used.ToString(CultureInfo.InvariantCulture));
        if (hold.Correlation is { } rho)
        {
            finding.Step(
                "n_b", VacuumHoldMessages.ShapeBlocks, VacuumHoldMessages.ShapeBlocksFormula,
                VacuumHoldMessages.ShapeBlocksValues(new(string.Create(CultureInfo.InvariantCulture, $"{rho:0.00}")), hold.BlockRows, new(hold.BlockSeconds)), hold.Blocks.ToString(CultureInfo.InvariantCulture), VacuumHoldMessages.ShapeSimulated);
        }

        finding.Step("Δp_c", VacuumHoldMessages.ShapeCounts, VacuumHoldMessages.ShapeCountsFormula, VacuumHoldMessages.ShapeCountsStep(VacuumText.Value(present, hold.Resolution)), VacuumText.Level(present, hold.CountingRise), VacuumHoldMessages.ShapeDefault);
        foreach (var evidence in hold.Evidence)
        {
            finding.Step(
                "AICc", Curve(evidence.Model), VacuumHoldMessages.ShapeEvidenceFormula,
                string.Create(CultureInfo.InvariantCulture, $"k = {evidence.Parameters}{(double.IsFinite(evidence.RootMeanSquare) ? $", σ = {VacuumText.Level(present, evidence.RootMeanSquare)}" : "")}"),
                evidence.Difference is { } d ? d.ToString("0.0", CultureInfo.InvariantCulture) : VacuumHoldMessages.ShapeTooFew, Cited.FromMemory("Hurvich and Tsai, Biometrika 76 (1989) 297"));
        }

        Interval(finding, "a", VacuumHoldMessages.ShapeSteadyPart, hold.Slope, r => VacuumText.Rate(present, r));
        if (hold.SourcesExcludedUpTo is { } excluded)
            finding.Step("τ_x", VacuumHoldMessages.ShapeExcluded, VacuumHoldMessages.ShapeExcludedFormula, "", EvacuationClock.Span(excluded), Cited.FromMemory("Bates and Watts, Nonlinear Regression Analysis (1988) chapter 6"));
        Interval(finding, "p∞", VacuumHoldMessages.ShapePlateau, hold.Plateau, p => VacuumText.Level(present, p));
        Interval(finding, "τ", VacuumHoldMessages.ShapeTimeConstant, hold.TimeConstant, EvacuationClock.Span);
    }

    private static void Interval(FindingBuilder finding, string symbol, Message name, Interval? interval, Func<double, string> text)
    {
        if (interval is not { } i)
            return;
        var bounds = (double.IsFinite(i.Low), double.IsFinite(i.High)) switch
        {
            (true, true) => VacuumHoldMessages.ShapeBoundsBetween(new(text(i.Low)), new(text(i.High))),
            (true, false) => VacuumHoldMessages.ShapeBoundsAtLeast(new(text(i.Low))),
            (false, true) => VacuumHoldMessages.ShapeBoundsAtMost(new(text(i.High))),
            _ => VacuumHoldMessages.ShapeNoBounds,
        };
        finding.Step(symbol, name, VacuumHoldMessages.ShapeIntervalFormula, bounds, text(i.Value), Cited.FromMemory("Bates and Watts, Nonlinear Regression Analysis (1988) chapter 6"));
    }

    /// <summary>A curve in words, as figures and traces name it.</summary>
    /// <param name="model">The curve.</param>
    internal static Message Curve(HoldModel model) => EvacuationMessages.CurveOf(model switch
    {
        HoldModel.Flat => EvacuationMessages.CurveOfModel.Flat,
        HoldModel.Line => EvacuationMessages.CurveOfModel.Line,
        HoldModel.Source => EvacuationMessages.CurveOfModel.Source,
        HoldModel.Outgassing => EvacuationMessages.CurveOfModel.Outgassing,
        _ => EvacuationMessages.CurveOfModel.Both,
    });
}

/// <summary>Says with every evacuation that a vacuum proves no tightness, and asks for the pressure test where there is none.</summary>
internal sealed class TightnessNotProvedCheck : ICheck
{
    public string Id => "evacuation.tightness-not-proved";

    public string Phase => Phases.Evacuation;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation)
            yield break;
        var finding = context.Finding(this).Use(VacuumHoldMessages.ReadingSectionUnderVacuum, evacuation.Section);
        var test = context.Job.PressureTest;
        if (test?.Tightness is not null)
        {
            finding.Use(VacuumHoldMessages.ReadingTestGas, test.Gas).Use(VacuumHoldMessages.ReadingSectionUnderTest, test.Section);
            if (!test.Joints.IsEmpty)
            {
                yield return finding.Information(VacuumHoldMessages.TightnessShown, VacuumHoldMessages.TightnessKind);
                yield break;
            }

            yield return finding.Next(VacuumHoldMessages.TightnessNotSearchedNext).Information(VacuumHoldMessages.TightnessNotSearched, VacuumHoldMessages.TightnessKind);
            yield break;
        }

        yield return finding.Next(this.WhenItFails()).Information(VacuumHoldMessages.TightnessNoHold, VacuumHoldMessages.TightnessKind);
    }
}

/// <summary>
/// What the nitrogen hold says of a steady rise: a hole to the outside that lets air into the vacuum would have let nitrogen out. As a
/// share of the charge the volume drops out; a hole that chokes passes in proportion to the pressure, a fine one with its square.
/// </summary>
internal sealed class NitrogenWitness
{
    private const double AirOverNitrogen = 18.2 / 17.6;

    private readonly CheckContext _context;
    private readonly NitrogenRun _nitrogen;
    private readonly double _least;
    private readonly double _most;

    private NitrogenWitness(CheckContext context, NitrogenRun nitrogen, double least, double most)
    {
        _context = context;
        _nitrogen = nitrogen;
        _least = least;
        _most = most;
    }

    /// <summary>The witness of a steady rise; null when there is no steady rise, no nitrogen hold of the same section, or nothing to be seen in it.</summary>
    public static NitrogenWitness? Of(CheckContext context, EvacuationRun run, HoldResult hold)
    {
        if (hold.Conclusion is not (HoldConclusion.SteadyRise or HoldConclusion.SteadyRiseAndSource) || hold.Slope is not { Value: > 0 } slope || context.Job.PressureTest is not { } test
            || test.Section?.Value != run.Evacuation.Section?.Value || context.Get<NitrogenRun>() is not { Loss: { } loss, Rows: { } rows } nitrogen)
        {
            return null;
        }

        var air = context.Get<SiteAtmosphere>().Value.Value;
        var pressed = loss.Start.Absolute;
        var share = Math.Max(slope.Low, 0) * rows.Length / air;
        var choked = 1 - Math.Exp(-share);
        var viscous = 1 - Math.Exp(-share * AirOverNitrogen * ((pressed * pressed) - (air * air)) / (air * pressed));
        return new NitrogenWitness(context, nitrogen, choked, viscous);
    }

    /// <summary>Whether the nitrogen hold excludes a hole to the outside that would let in so much air.</summary>
    public bool SpeaksAgainstHole => _nitrogen.Loss!.Loss is var loss && loss.Value + loss.Expanded < _least;

    /// <summary>Names the nitrogen hold in a finding that rests on it.</summary>
    public void NameIn(FindingBuilder finding)
    {
        foreach (var reading in _nitrogen.Rows!.Corrected)
        {
            foreach (var use in reading.Uses)
                finding.Use(use);
        }

        foreach (var use in _nitrogen.Rows.Uses)
            finding.Use(use);
        foreach (var at in _nitrogen.Rows.At)
            finding.Use(VacuumHoldMessages.ReadingNitrogenTime, at);
    }

    /// <summary>Names the nitrogen hold, shows what it would have lost, and gives the sentence.</summary>
    /// <param name="finding">The finding that rests on it.</param>
    /// <param name="scene">What stands around the hold.</param>
    public Message Use(FindingBuilder finding, HoldScene scene)
    {
        NameIn(finding);
        var present = _context.Present;
        finding.Step(
            "L_w", VacuumHoldMessages.WitnessLoss, VacuumHoldMessages.WitnessLossFormula,
            VacuumHoldMessages.WitnessLossValues(new(_nitrogen.Rows!.Length), present.InMessage(_nitrogen.Loss!.Start.Absolute, DisplayKind.AbsolutePressure)),
            $"{present.Text(_least, DisplayKind.Percentage)} to {present.Text(_most, DisplayKind.Percentage, 0)}", VacuumHoldMessages.WitnessSource);
        var (least, seen) = (present.InMessage(_least, DisplayKind.Percentage), present.InMessage(_nitrogen.Loss.Loss, DisplayKind.Percentage));
        return SpeaksAgainstHole ? EvacuationMessages.NitrogenAgainstHole(least, seen, scene.Refrigerant, scene.HasHeldRig ? EvacuationMessages.NitrogenAgainstHoleRig.Held : EvacuationMessages.NitrogenAgainstHoleRig.Open) : EvacuationMessages.NitrogenLeavesHole(least, seen);
    }
}
