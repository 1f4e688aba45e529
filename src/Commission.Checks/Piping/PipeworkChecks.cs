using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Piping;

/// <summary>Insulation of the lines, as written.</summary>
internal sealed class LineInsulationCheck : ICheck
{
    public string Id => "piping.insulation";

    public string Phase => Phases.Piping;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PipingChecks is not { } checks
            || checks is { VaporLineInsulated: null, LiquidLineInsulated: null, InsulationThickness: null, InsulationJointsSealed: null, InsulationWeatherproof: null })
        {
            yield break;
        }

        var finding = context.Finding(this)
            .Use(PipingMessages.ReadingVaporInsulated, checks.VaporLineInsulated)
            .Use(PipingMessages.ReadingLiquidInsulated, checks.LiquidLineInsulated)
            .Use(PipingMessages.ReadingThickness, checks.InsulationThickness)
            .Use(PipingMessages.ReadingJointsSealed, checks.InsulationJointsSealed)
            .Use(PipingMessages.ReadingWeatherproof, checks.InsulationWeatherproof);
        var faults = new[]
        {
            Fault(checks.VaporLineInsulated, PipingMessages.InsulationVaporBare),
            Fault(checks.InsulationJointsSealed, PipingMessages.InsulationJointsOpen),
            Fault(checks.InsulationWeatherproof, PipingMessages.InsulationNotProtected),
        }.OfType<Message>().ToArray();
        finding.Decide(faults.Length == 0);
        if (checks.InsulationThickness is { } thickness)
            finding.Remark(PipingMessages.InsulationThickness(new(thickness.Text)));
        if (checks.LiquidLineInsulated is { } liquid)
            finding.Remark(liquid.Value ? PipingMessages.InsulationLiquid : PipingMessages.InsulationLiquidBare);
        if (faults.Length > 0)
        {
            yield return finding.Say(PipingMessages.InsulationFaults(new ListValue([.. faults], ListJoin.And))).Next(this.WhenItFails()).Build();
            yield break;
        }

        if (checks.VaporLineInsulated is null)
            finding.Reserve(PipingMessages.InsulationNotSeen).Next(PipingMessages.InsulationNotSeenNext, "piping checks: {vapor line insulated: yes}");
        yield return finding.Say(checks.VaporLineInsulated is null ? PipingMessages.InsulationAsWritten : PipingMessages.InsulationVapor).Build();
    }

    private static Message? Fault(Given<bool>? answer, Message fault) => answer is { Value: false } ? fault : null;
}

/// <summary>Whether the openings the lines pass through were closed.</summary>
internal sealed class PenetrationsCheck : ICheck
{
    public string Id => "piping.penetrations";

    public string Phase => Phases.Piping;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PipingChecks?.PenetrationsSealed is not { } closed)
            yield break;
        var finding = context.Finding(this).Use(PipingMessages.ReadingPenetrations, closed).Decide(closed.Value);
        yield return closed.Value
            ? finding.Say(PipingMessages.PenetrationsSealed).Build()
            : finding.Say(PipingMessages.PenetrationsOpen).Next(this.WhenItFails()).Build();
    }
}

/// <summary>Whether the tube is made for the pressure of this refrigerant.</summary>
internal sealed class PipeRatingCheck : ICheck
{
    public string Id => "piping.pipe-rating";

    public string Phase => Phases.Piping;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PipingChecks?.PipeRatedForRefrigerant is not { } rated)
            yield break;
        var refrigerant = context.Job.Equipment.Refrigerant;
        var finding = context.Finding(this).Use(PipingMessages.ReadingPipeRated, rated).Use(ReadingsMessages.Refrigerant, refrigerant).Decide(rated.Value);
        yield return rated.Value
            ? finding.Say(PipingMessages.PipeRated(new(refrigerant.Value))).Build()
            : finding.Fail(PipingMessages.PipeMayBurst).Say(PipingMessages.PipeNotRated(new(refrigerant.Value))).Next(this.WhenItFails()).Build();
    }
}

/// <summary>Whether old lines that were used again were flushed.</summary>
internal sealed class ReusedLinesCheck : ICheck
{
    public string Id => "piping.reused-lines";

    public string Phase => Phases.Piping;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var runs = context.Job.Equipment.Piping;
        for (var i = 0; i < runs.Length; i++)
        {
            if (runs[i].Reused is { Value: true })
                yield return Judge(context, runs[i], runs.Length == 1 ? null : runs[i].To?.Value ?? context.Present.Text(PipingMessages.SubjectRun(new(i + 1, 0))));
        }
    }

    private Finding Judge(CheckContext context, PipingRun run, string? subject)
    {
        var finding = context.Finding(this, subject).Use(PipingMessages.ReadingReused, run.Reused).Use(PipingMessages.ReadingFlushed, run.Flushed);
        if (run.Flushed is not { } flushed)
            return finding.NotEvaluated(PipingMessages.FlushedNotWritten, PipingMessages.FlushedNotWrittenNext, "equipment: {piping: {flushed: yes}}");
        finding.Decide(flushed.Value);
        return flushed.Value
            ? finding.Say(PipingMessages.ReusedFlushed).Build()
            : finding.Say(PipingMessages.ReusedNotFlushed).Next(this.WhenItFails()).Build();
    }
}

/// <summary>Distance between the supports of the lines.</summary>
internal sealed class SupportsCheck : ICheck
{
    public string Id => "piping.supports";

    public string Phase => Phases.Piping;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PipingChecks?.SupportsEvery is not { } every)
            yield break;
        var distance = Written.Reading(context, context.Present.Text(PipingMessages.ReadingSupports), every, DisplayKind.Length);
        var finding = context.Finding(this).Use(distance);
        var limit = context.Limits.Require(LimitIds.PipingSupports);
        var state = context.State(limit);
        finding.Judge(distance.Value.On(state), DisplayKind.Length, state);
        yield return finding.Conclude(
            PipingMessages.SupportsMet(new(every.Text), new(state.Text)),
            PipingMessages.SupportsMissed(new(every.Text), new(state.Text)),
            this.WhenItFails());
    }
}

/// <summary>Oil traps in risers, and the fall of the vapor line, as written.</summary>
internal sealed class TrapsCheck : ICheck
{
    public string Id => "piping.traps";

    public string Phase => Phases.Piping;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var checks = context.Job.PipingChecks;
        var written = checks?.RiserTraps;
        var inLines = context.Job.Equipment.Piping.Select(r => r.Vapor?.Traps).Where(t => t is not null).ToArray();
        var limit = context.Limits.Find(LimitIds.PipingTraps);
        if (written is not null || inLines.Length > 0 || limit is { Lower: not null })
        {
            var finding = context.Finding(this, context.Present.Text(PipingMessages.SubjectTraps)).Use(PipingMessages.ReadingRiserTraps, written);
            foreach (var traps in inLines)
                finding.Use(PipingMessages.ReadingVaporTraps, traps);
            var count = written?.Value ?? (inLines.Length > 0 ? inLines.Sum(t => t!.Value) : (int?)null);
            yield return Count(context, finding, count, limit);
        }

        if (checks?.VaporLineSlopesToCompressor is { } slope)
        {
            var finding = context.Finding(this, context.Present.Text(PipingMessages.SubjectFall)).Use(PipingMessages.ReadingSlope, slope);
            yield return slope.Value
                ? finding.Decide(true).Say(PipingMessages.FallMet).Build()
                : finding.Next(PipingMessages.FallNext).Information(PipingMessages.FallMissed, PipingMessages.FallKind);
        }
    }

    private Finding Count(CheckContext context, FindingBuilder finding, int? count, Limit? limit)
    {
        if (count is not { } traps)
            return finding.NotEvaluated(PipingMessages.TrapsNotCounted, PipingMessages.TrapsNotCountedNext, "piping checks: {riser traps: 2}");
        if (limit is null || (limit.Lower is null && limit.Upper is null))
            return finding.Information(PipingMessages.TrapsRead(traps), PipingMessages.TrapsKind);
        var state = context.State(limit);
        finding.Judge(Uncertain.Exact(traps), DisplayKind.Number, state);
        return finding.Conclude(
            PipingMessages.TrapsMet(traps, new(state.Text)),
            PipingMessages.TrapsMissed(traps, new(state.Text)),
            this.WhenItFails());
    }
}

/// <summary>Whether the branch joints of a tree of lines stand as their maker asks: a tilted one sends the liquid to one side.</summary>
internal sealed class BranchJointsCheck : ICheck
{
    public string Id => "piping.branch-joints";

    public string Phase => Phases.Piping;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PipingChecks?.BranchJointsPlaced is { } placed)
            yield return context.Finding(this).Use(PipingMessages.ReadingBranchJoints, placed).Decide(placed.Value).Conclude(PipingMessages.BranchJointsPlaced, PipingMessages.BranchJointsNotPlaced, this.WhenItFails());
    }
}

/// <summary>Capacity of all indoor units together over that of the outdoor unit, against what the maker allows.</summary>
internal sealed class TotalIndexCheck : ICheck
{
    public string Id => "piping.total-index";

    public string Phase => Phases.Piping;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Equipment.TotalIndex is { } index)
            yield return new FigureOfMaker(context.Present.Text(PipingMessages.ReadingTotalIndex), Written.Reading(context, context.Present.Text(PipingMessages.ReadingTotalIndex), index, DisplayKind.Percentage), DisplayKind.Percentage, LimitIds.PipingTotalIndex).Judge(context, this, this.WhenItFails());
    }
}
