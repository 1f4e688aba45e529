using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Piping;

/// <summary>Pressure the liquid loses on its way up and by friction, and the subcooling that is left before the metering device.</summary>
internal sealed class LiquidLossCheck : ICheck
{
    private const double WideMargin = 5;

    public string Id => "piping.liquid-loss";

    public string Phase => Phases.Piping;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var flow = context.Get<CircuitFlow>();
        var runs = context.Job.Equipment.Piping.Where(r => r.Liquid is not null).ToArray();
        if (runs.Length == 0 || !flow.HasReadings)
            yield break;
        if (flow.WhyNot is { } why)
        {
            yield return flow.UseIn(context.Finding(this)).NotEvaluated(why, flow.Todo!);
            yield break;
        }

        foreach (var run in runs)
            yield return Judge(context, flow, run, run.Liquid!, runs.Length == 1 && context.Job.Equipment.Piping.Length == 1);
    }

    private Finding Judge(CheckContext context, CircuitFlow flow, PipingRun run, Tube tube, bool only)
    {
        var present = context.Present;
        var row = flow.Row!;
        var equipment = context.Job.Equipment;
        var port = LiquidPort.Of(context);
        var finding = flow.UseIn(context.Finding(this, only ? null : run.To?.Value)).Use(PipingMessages.ReadingLiquidLength, tube.Length).Use(PipingMessages.ReadingLiquidRise, tube.Rise).Use(PipingMessages.ReadingLiquidElbows, tube.Elbows);
        port.NameIn(finding);
        var saturation = context.Get<CircuitSaturation>();

        var rise = tube.Rise is { } written ? Written.Reading(context, context.Present.Text(PipingMessages.ReadingRiseOfLiquid), written, DisplayKind.Length).Value : Uncertain.Exact(0);
        var head = Uncertain.Apply(LiquidHead.Loss, flow.Liquid, rise);
        finding.Step(
            "Δp_h", PipingMessages.StepRise, LiquidHead.Formula,
            $"{present.Text(flow.Liquid.Value, DisplayKind.Density)}, {tube.Rise?.Text ?? present.Text(PipingMessages.StepNoRise)}", present.Text(head, DisplayKind.PressureDifference), saturation.Source);
        var capacity = only ? equipment.Capacity : equipment.Indoor.FirstOrDefault(i => i.Id is not null && i.Id.Value == run.To?.Value)?.Capacity;
        var friction = Friction(context, finding, flow, tube, capacity);
        var loss = friction is null ? head : head + friction;
        var pressure = row.LiquidPressure! with { Value = row.LiquidPressure!.Value - loss, AfterZero = row.LiquidPressure!.AfterZero - loss.Value };
        if (saturation.Bubble(pressure).Value is not { } bubble)
            return finding.NotEvaluated(PipingMessages.LossNoLiquid, PipingMessages.LossNoLiquidNext);
        var left = bubble - row.LiquidLine!.Value;
        var text = present.Text(left, DisplayKind.TemperatureDifference);
        var (taken, kept) = (present.InMessage(loss.Value, DisplayKind.PressureDifference), present.InMessage(left, DisplayKind.TemperatureDifference));
        finding
            .Step("T_b", PipingMessages.StepBubble, "T_bubble(p_liquid − Δp)", $"{present.Text(row.LiquidPressure!.Value.Value, DisplayKind.AbsolutePressure)} − {present.Text(loss.Value, DisplayKind.PressureDifference)}", present.Text(bubble, DisplayKind.Temperature), saturation.Source)
            .Step("SC_left", PipingMessages.StepLeft, PipingMessages.StepLeftFormula, $"{present.Text(bubble.Value, DisplayKind.Temperature)} − {present.Text(row.LiquidLine!.Value.Value, DisplayKind.Temperature)}", text, PipingMessages.StepLeftSource);
        var limit = context.Limits.Require(LimitIds.PipingSubcoolingLeft);
        var state = context.State(limit);
        finding.Judge(left.On(state), DisplayKind.TemperatureDifference, state);
        if (friction is not null && context.Limits.Find(LimitIds.PipingLossLiquid) is { Upper: { } design } guide && row.LiquidBubble?.Value is { } before)
        {
            var cost = friction.Value * saturation.Bubble(row.LiquidPressure!).Slope;
            finding.Show(context.State(guide));
            if (cost > design.Si)
                finding.Remark(PipingMessages.LossFriction(present.InMessage(cost, DisplayKind.TemperatureDifference), present.InMessage(before.Value, DisplayKind.Temperature), new(context.State(guide).Text)));
        }

        if (tube.Rise is null)
            finding.Remark(PipingMessages.LossNoRise);
        // No liquid line worth its name loses so much to friction (common practice: 1 to 2 °F by design).
        if (finding.Passes && friction is null && left.Value < WideMargin)
            finding.Reserve(PipingMessages.LossNoFriction).Next(PipingMessages.LossNoFrictionNext);
        if (finding.Passes && port.Reservation is { } place)
            finding.Reserve(place).Next(PipingMessages.LossPortNext);
        finding.RemarkUnknown([row.LiquidPressure!, row.LiquidLine!]);
        return finding.Conclude(
            PipingMessages.LossMet(taken, kept, new(row.Time)),
            PipingMessages.LossMissed(taken, kept, new(row.Time)),
            this.WhenItFails());
    }

    private static Uncertain? Friction(CheckContext context, FindingBuilder finding, CircuitFlow flow, Tube tube, Given<Power>? capacity)
    {
        var bore = LineBore.Of(context, PipingMessages.LineLiquid, tube);
        foreach (var use in bore.Uses)
            finding.Use(use);
        if (capacity is null || !(capacity.Value.Si > 0) || bore.Metres is not { } d
            || context.Limits.Find(LimitIds.AssumptionLineFrictionFactor) is not { Target: { } factor } assumed || assumed.Companion("within") is not { } within)
        {
            return null;
        }

        var present = context.Present;
        finding.Use(ReadingsMessages.Capacity, capacity).Add(flow.Steps(capacity, PipingMessages.CapacityFull));
        var f = context.Scope.Reading(factor.Si, 1.0 * context.Causes.Enter(RootCause.FromHalfWidth(PipingMessages.CauseFriction, CommonMessages.AsWritten(new(assumed.Source)), within), DisplayKind.Number));
        var length = Written.Reading(context, context.Present.Text(PipingMessages.ReadingLengthOfLiquid), tube.Length, DisplayKind.Length).Value + ((tube.Elbows?.Value ?? 0) * context.Assume(LimitIds.AssumptionLineElbow) * d);
        var velocity = flow.At(capacity) / (flow.Liquid * (Math.PI / 4 * d * d));
        var friction = f * length * (flow.Liquid * velocity * velocity) / (2 * d);
        finding
            .Step("v", PipingMessages.StepLiquidVelocity, LineVelocity.Formula, $"{present.Text(flow.At(capacity).Value, DisplayKind.MassFlow)}, {present.Text(flow.Liquid.Value, DisplayKind.Density)}, {present.Text(d, DisplayKind.TubeDiameter)}", present.Text(velocity, DisplayKind.Velocity), bore.Source)
            .Step(
                "Δp_f", PipingMessages.StepFriction, "f·L/d·ρ·v²/2",
                tube.Elbows is { } elbows
                    ? PipingMessages.StepFrictionElbows(new(factor.Si, 3), present.InMessage(length.Value, DisplayKind.Length), elbows.Value, present.InMessage(velocity.Value, DisplayKind.Velocity))
                    : PipingMessages.StepFrictionNumbers(new(factor.Si, 3), present.InMessage(length.Value, DisplayKind.Length), present.InMessage(velocity.Value, DisplayKind.Velocity)),
                present.Text(friction, DisplayKind.PressureDifference), $"Darcy–Weisbach; {assumed.Source}");
        return friction;
    }
}
