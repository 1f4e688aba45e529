using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
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
        var finding = flow.UseIn(context.Finding(this, only ? null : run.To?.Value)).Use("liquid line: length", tube.Length).Use("liquid line: rise", tube.Rise).Use("liquid line: elbows", tube.Elbows);
        port.NameIn(finding);
        var saturation = context.Get<CircuitSaturation>();

        var rise = tube.Rise is { } written ? Written.Reading(context, "rise of the liquid line", written, DisplayKind.Length).Value : Uncertain.Exact(0);
        var head = Uncertain.Apply(LiquidHead.Loss, flow.Liquid, rise);
        finding.Step(
            "Δp_h", "pressure taken by the rise", LiquidHead.Formula,
            $"{present.Text(flow.Liquid.Value, DisplayKind.Density)}, {tube.Rise?.Text ?? "no rise written"}", present.Text(head, DisplayKind.PressureDifference), saturation.Source);
        var capacity = only ? equipment.Capacity : equipment.Indoor.FirstOrDefault(i => i.Id is not null && i.Id.Value == run.To?.Value)?.Capacity;
        var friction = Friction(context, finding, flow, tube, capacity);
        var loss = friction is null ? head : head + friction;
        var pressure = row.LiquidPressure! with { Value = row.LiquidPressure!.Value - loss, AfterZero = row.LiquidPressure!.AfterZero - loss.Value };
        if (saturation.Bubble(pressure).Value is not { } bubble)
            return finding.NotEvaluated("the pressure left at the metering device is no liquid's", "Check rise, length and diameter of the liquid line.");
        var left = bubble - row.LiquidLine!.Value;
        var text = present.Text(left, DisplayKind.TemperatureDifference);
        finding
            .Step("T_b", "bubble point at the metering device", "T_bubble(p_liquid − Δp)", $"{present.Text(row.LiquidPressure!.Value.Value, DisplayKind.AbsolutePressure)} − {present.Text(loss.Value, DisplayKind.PressureDifference)}", present.Text(bubble, DisplayKind.Temperature), saturation.Source)
            .Step("SC_left", "subcooling left", "T_b − T_liquid line", $"{present.Text(bubble.Value, DisplayKind.Temperature)} − {present.Text(row.LiquidLine!.Value.Value, DisplayKind.Temperature)}", text, "definition; heat taken up on the way is not in it");
        var limit = context.Limits.Require(LimitIds.PipingSubcoolingLeft);
        var state = context.State(limit);
        finding.Judge(left.On(state), DisplayKind.TemperatureDifference, state);
        if (friction is not null && context.Limits.Find(LimitIds.PipingLossLiquid) is { Upper: { } design } guide && row.LiquidBubble?.Value is { } before)
        {
            var cost = friction.Value * saturation.Bubble(row.LiquidPressure!).Slope;
            finding.Show(context.State(guide));
            if (cost > design.Si)
                finding.Remark($"Friction takes {present.Text(cost, DisplayKind.TemperatureDifference)} of saturation from {present.Text(before.Value, DisplayKind.Temperature)}, and piping guides design for {context.State(guide).Text}.");
        }

        if (tube.Rise is null)
            finding.Remark("No rise is written: the line counts as level.");
        // No liquid line worth its name loses so much to friction (common practice: 1 to 2 °F by design).
        if (finding.Passes && friction is null && left.Value < WideMargin)
            finding.Reserve("the friction is not in it: capacity or bore of the line is not known").Next("Write the capacity and the diameter or wall of the liquid line.");
        if (finding.Passes && port.Reservation is { } place)
            finding.Reserve(place).Next("Read the pressure at the liquid service valve.");
        finding.RemarkUnknown([row.LiquidPressure!, row.LiquidLine!]);
        return finding.Conclude(
            $"After rise and friction of {present.Text(loss.Value, DisplayKind.PressureDifference)} there are {text} of subcooling left at {row.Time}.",
            $"Rise and friction take {present.Text(loss.Value, DisplayKind.PressureDifference)}: {text} of subcooling left at {row.Time}, so the liquid flashes before the metering device.",
            this.WhenItFails());
    }

    private static Uncertain? Friction(CheckContext context, FindingBuilder finding, CircuitFlow flow, Tube tube, Given<Power>? capacity)
    {
        var bore = LineBore.Of("liquid line", tube);
        foreach (var use in bore.Uses)
            finding.Use(use);
        if (capacity is null || !(capacity.Value.Si > 0) || bore.Metres is not { } d
            || context.Limits.Find(LimitIds.AssumptionLineFrictionFactor) is not { Target: { } factor } assumed || assumed.Companion("within") is not { } within)
        {
            return null;
        }

        var present = context.Present;
        finding.Use("capacity", capacity).Add(flow.Steps(capacity, "full capacity"));
        var f = context.Scope.Reading(factor.Si, 1.0 * context.Causes.Enter(RootCause.FromHalfWidth("friction factor", assumed.Source, within), DisplayKind.Number));
        var length = Written.Reading(context, "length of the liquid line", tube.Length, DisplayKind.Length).Value + ((tube.Elbows?.Value ?? 0) * context.Assume(LimitIds.AssumptionLineElbow) * d);
        var velocity = flow.At(capacity) / (flow.Liquid * (Math.PI / 4 * d * d));
        var friction = f * length * (flow.Liquid * velocity * velocity) / (2 * d);
        finding
            .Step("v", "velocity of the liquid", LineVelocity.Formula, $"{present.Text(flow.At(capacity).Value, DisplayKind.MassFlow)}, {present.Text(flow.Liquid.Value, DisplayKind.Density)}, {present.Text(d, DisplayKind.TubeDiameter)}", present.Text(velocity, DisplayKind.Velocity), bore.Source)
            .Step(
                "Δp_f", "pressure taken by friction", "f·L/d·ρ·v²/2",
                string.Create(CultureInfo.InvariantCulture, $"f = {factor.Si:0.000}, L = {present.Text(length.Value, DisplayKind.Length)}{(tube.Elbows is { } elbows ? $" with {elbows.Value} elbows" : "")}, {present.Text(velocity.Value, DisplayKind.Velocity)}"),
                present.Text(friction, DisplayKind.PressureDifference), $"Darcy–Weisbach; {assumed.Source}");
        return friction;
    }
}
