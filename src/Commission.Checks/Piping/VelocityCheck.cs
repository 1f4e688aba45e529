using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Piping;

/// <summary>Velocities in the lines: enough at the lowest stage to bring oil back, not so much at full load as to be loud; liquid not too fast.</summary>
internal sealed class VelocityCheck : ICheck
{
    public string Id => "piping.velocity";

    public string Phase => Phases.Piping;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var flow = context.Get<CircuitFlow>();
        var runs = context.Job.Equipment.Piping;
        if (runs.IsEmpty || !flow.HasReadings)
            yield break;
        if (flow.WhyNot is { } why)
        {
            yield return flow.UseIn(context.Finding(this)).NotEvaluated(why, flow.Todo!);
            yield break;
        }

        foreach (var run in runs)
        {
            foreach (var finding in OfRun(context, flow, run, runs.Length == 1))
                yield return finding;
        }
    }

    private IEnumerable<Finding> OfRun(CheckContext context, CircuitFlow flow, PipingRun run, bool only)
    {
        var equipment = context.Job.Equipment;
        var end = only ? null : run.To?.Value ?? context.Present.Text(PipingMessages.VelocityRun);
        var full = only ? equipment.Capacity : equipment.Indoor.FirstOrDefault(i => i.Id is not null && i.Id.Value == run.To?.Value)?.Capacity;
        if (full is null || !(full.Value.Si > 0))
        {
            yield return flow.UseIn(context.Finding(this, only ? null : run.To?.Value)).NotEvaluated(only ? PipingMessages.VelocityNoCapacity : PipingMessages.VelocityNoCapacityOfUnit, PipingMessages.VelocityNoCapacityNext);
            yield break;
        }

        if (run.Vapor is { } vapor)
        {
            foreach (var finding in Vapor(context, flow, run, vapor, full, end))
                yield return finding;
        }

        if (run.Liquid is { } liquid)
            yield return Judge(context, flow, OfRun(end, PipingMessages.LineLiquid, PipingMessages.VelocityLiquidStarts), new(PipingMessages.LineLiquid, liquid, flow.Liquid), new(full, PipingMessages.CapacityFull), LimitIds.PipingVelocityLiquid);
    }

    private IEnumerable<Finding> Vapor(CheckContext context, CircuitFlow flow, PipingRun run, Tube vapor, Given<Power> full, string? end)
    {
        var equipment = context.Job.Equipment;
        var kind = equipment.Compressor?.Kind;
        var line = new Line(PipingMessages.LineVapor, vapor, flow.Vapor);
        var least = end is not null ? null : kind?.Value == CompressorKind.Fixed ? full : equipment.MinimumCapacity;
        if (least is null)
        {
            yield return flow.UseIn(context.Finding(this, context.Present.Text(OfRun(end, PipingMessages.VelocityOilReturn, PipingMessages.VelocityOilReturn).Name))).Use(ReadingsMessages.Compressor, kind).NotEvaluated(
                end is not null ? PipingMessages.VelocityLowestNotKnown : PipingMessages.VelocityLowestNotWritten,
                PipingMessages.VelocityNoLowestNext,
                "equipment: {minimum capacity: 12 kBtu/h}");
        }
        else
        {
            yield return Judge(context, flow, OfRun(end, PipingMessages.VelocityHorizontal, PipingMessages.VelocityHorizontalStarts), line, new(least, PipingMessages.CapacityMinimum), LimitIds.PipingVelocityHorizontal);

            // In cooling the vapor flows to the outdoor unit: up when that stands higher.
            var rise = vapor.Rise ?? run.Liquid?.Rise;
            if (rise is { Value.Si: < 0 })
                yield return Judge(context, flow, OfRun(end, PipingMessages.VelocityRiser, PipingMessages.VelocityRiserStarts), line, new(least, PipingMessages.CapacityMinimum), LimitIds.PipingVelocityRiser, rise);
        }

        yield return Judge(context, flow, OfRun(end, PipingMessages.VelocityFullLoad, PipingMessages.VelocityFullLoadStarts), line, new(full, PipingMessages.CapacityFull), LimitIds.PipingVelocityMaximum);
    }

    // A tube and the density of what flows in it, kg/m³.
    private sealed record Line(Message Name, Tube Tube, Uncertain Density);

    // The capacity at which it flows, and that in words.
    private sealed record Load(Given<Power> Capacity, Message Words);

    // What is judged, as a subject and at the start of a sentence.
    private sealed record Judged(Message Name, Message Starts);

    private static Judged OfRun(string? end, Message name, Message starts) =>
        end is null ? new(name, starts) : new(PipingMessages.VelocityOfRun(new(end), name), PipingMessages.VelocityOfRun(new(end), name));

    private Finding Judge(
        CheckContext context, CircuitFlow flow, Judged subject, Line line, Load load, string limitId, Given<Length>? rise = null)
    {
        var (name, tube, density) = line;
        var (capacity, what) = load;
        var present = context.Present;
        var kind = context.Job.Equipment.Compressor?.Kind;
        var finding = flow.UseIn(context.Finding(this, present.Text(subject.Name))).Use(ReadingsMessages.Capacity, capacity).Use(ReadingsMessages.Compressor, kind).Use(PipingMessages.ReadingRise, rise);
        var bore = LineBore.Of(context, name, tube);
        foreach (var use in bore.Uses)
            finding.Use(use);
        if (bore.Metres is not { } d)
            return finding.NotEvaluated(PipingMessages.VelocityNoWall(new(tube.Od.Text)), PipingMessages.VelocityNoWallNext);
        var area = Math.PI / 4 * d * d;
        var velocity = flow.At(capacity) / (density * area);
        var text = present.Text(velocity, DisplayKind.Velocity);
        var found = present.InMessage(velocity, DisplayKind.Velocity);
        finding.Add(flow.Steps(capacity, what))
            .Step("d", PipingMessages.StepBore, PipingMessages.StepBoreFormula, tube.Od.Text, present.Text(d, DisplayKind.TubeDiameter), bore.Source)
            .Step("v", PipingMessages.StepVelocity, LineVelocity.Formula, $"{present.Text(flow.At(capacity).Value, DisplayKind.MassFlow)}, {present.Text(density.Value, DisplayKind.Density)}, {present.Text(d, DisplayKind.TubeDiameter)}", text, PipingMessages.Definition)
            .Measure(velocity, DisplayKind.Velocity);
        if (context.Limits.Find(limitId) is not { } limit)
            return finding.Information(PipingMessages.VelocityRead(subject.Starts, found, what), PipingMessages.VelocityKind);
        var state = context.State(limit);
        var within = velocity.Value >= (state.LowerSi ?? double.NegativeInfinity) && velocity.Value <= (state.UpperSi ?? double.PositiveInfinity);

        // The guides are written for lines that the installer sizes; a comfort system's maker prints its own, and an inverter brings its oil back by running up.
        var guides = limit.Tier == Limits.LimitTier.CommonPractice && !context.Get<ChargeAnalysis>().IsRefrigeration;
        var variable = kind?.Value is CompressorKind.VariableSpeed or CompressorKind.Digital;
        if (guides && (!within || (variable && state.LowerSi is not null)))
        {
            finding.Show(state);
            if (!within)
                finding.Next(this.WhenItFails());
            return finding.Information(
                PipingMessages.VelocityGuides(subject.Starts, found, what, new(state.Text)),
                variable && state.LowerSi is not null ? PipingMessages.VelocityVariable : PipingMessages.VelocityMakersTable);
        }

        finding.Judge(velocity.On(state), DisplayKind.Velocity, state);
        return finding.Conclude(
            PipingMessages.VelocityMet(subject.Starts, found, what, new(state.Text)),
            PipingMessages.VelocityMissed(subject.Starts, found, what, new(state.Text)),
            this.WhenItFails());
    }
}
