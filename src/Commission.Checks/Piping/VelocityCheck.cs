using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
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
        var prefix = only ? "" : $"{run.To?.Value ?? "run"}: ";
        var full = only ? equipment.Capacity : equipment.Indoor.FirstOrDefault(i => i.Id is not null && i.Id.Value == run.To?.Value)?.Capacity;
        if (full is null || !(full.Value.Si > 0))
        {
            yield return flow.UseIn(context.Finding(this, only ? null : run.To?.Value)).NotEvaluated(only ? "the capacity is not written" : "the capacity of the unit at the end of this run is not written", "Write the rated capacity.");
            yield break;
        }

        if (run.Vapor is { } vapor)
        {
            foreach (var finding in Vapor(context, flow, run, vapor, full, prefix))
                yield return finding;
        }

        if (run.Liquid is { } liquid)
            yield return Judge(context, flow, $"{prefix}liquid line", new("liquid line", liquid, flow.Liquid), new(full, "full capacity"), LimitIds.PipingVelocityLiquid);
    }

    private IEnumerable<Finding> Vapor(CheckContext context, CircuitFlow flow, PipingRun run, Tube vapor, Given<Power> full, string prefix)
    {
        var equipment = context.Job.Equipment;
        var kind = equipment.Compressor?.Kind;
        var line = new Line("vapor line", vapor, flow.Vapor);
        var least = prefix.Length > 0 ? null : kind?.Value == CompressorKind.Fixed ? full : equipment.MinimumCapacity;
        if (least is null)
        {
            yield return flow.UseIn(context.Finding(this, $"{prefix}vapor line, oil return")).Use("compressor", kind).NotEvaluated(
                prefix.Length > 0 ? "the lowest flow of one run of several is not known" : "the capacity at the lowest stage is not written, and oil has to come back at that",
                PipingMessages.VelocityNoLowestNext,
                "equipment: {minimum capacity: 12 kBtu/h}");
        }
        else
        {
            yield return Judge(context, flow, $"{prefix}vapor line, horizontal", line, new(least, "minimum capacity"), LimitIds.PipingVelocityHorizontal);

            // In cooling the vapor flows to the outdoor unit: up when that stands higher.
            var rise = vapor.Rise ?? run.Liquid?.Rise;
            if (rise is { Value.Si: < 0 })
                yield return Judge(context, flow, $"{prefix}vapor riser", line, new(least, "minimum capacity"), LimitIds.PipingVelocityRiser, rise);
        }

        yield return Judge(context, flow, $"{prefix}vapor line, full load", line, new(full, "full capacity"), LimitIds.PipingVelocityMaximum);
    }

    // A tube and the density of what flows in it, kg/m³.
    private sealed record Line(string Name, Tube Tube, Uncertain Density);

    // The capacity at which it flows, and that in words.
    private sealed record Load(Given<Power> Capacity, string Words);

    private Finding Judge(
        CheckContext context, CircuitFlow flow, string subject, Line line, Load load, string limitId, Given<Length>? rise = null)
    {
        var (name, tube, density) = line;
        var (capacity, what) = load;
        var present = context.Present;
        var kind = context.Job.Equipment.Compressor?.Kind;
        var finding = flow.UseIn(context.Finding(this, subject)).Use("capacity", capacity).Use("compressor", kind).Use("rise", rise);
        var bore = LineBore.Of(name, tube);
        foreach (var use in bore.Uses)
            finding.Use(use);
        if (bore.Metres is not { } d)
            return finding.NotEvaluated($"the wall of a tube of {tube.Od.Text} is not in the list", "Write the wall of the tube.");
        var area = Math.PI / 4 * d * d;
        var velocity = flow.At(capacity) / (density * area);
        var text = present.Text(velocity, DisplayKind.Velocity);
        finding.Add(flow.Steps(capacity, what))
            .Step("d", "bore", "diameter − 2 · wall", tube.Od.Text, present.Text(d, DisplayKind.TubeDiameter), bore.Source)
            .Step("v", "mean velocity", LineVelocity.Formula, $"{present.Text(flow.At(capacity).Value, DisplayKind.MassFlow)}, {present.Text(density.Value, DisplayKind.Density)}, {present.Text(d, DisplayKind.TubeDiameter)}", text, "definition")
            .Measure(velocity, DisplayKind.Velocity);
        if (context.Limits.Find(limitId) is not { } limit)
            return finding.Information($"{Capital(subject)}: {text} at {what}.", "nobody sets a limit");
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
                $"{Capital(subject)}: {text} at {what}; piping guides ask for {state.Text}.",
                variable && state.LowerSi is not null ? "a variable-speed compressor runs up to bring its oil back; the maker's line table decides" : "the maker's line table decides; piping guides are for lines that the installer sizes");
        }

        finding.Judge(velocity.On(state), DisplayKind.Velocity, state);
        return finding.Conclude(
            $"{Capital(subject)}: {text} at {what}; {state.Text} is asked for.",
            $"{Capital(subject)}: {text} at {what}, outside what is asked for: {state.Text}.",
            this.WhenItFails());
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
