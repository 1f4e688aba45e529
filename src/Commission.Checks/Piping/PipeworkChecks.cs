using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
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
            .Use("vapor line insulated", checks.VaporLineInsulated)
            .Use("liquid line insulated", checks.LiquidLineInsulated)
            .Use("thickness", checks.InsulationThickness)
            .Use("joints sealed", checks.InsulationJointsSealed)
            .Use("weatherproof", checks.InsulationWeatherproof);
        var faults = new[]
        {
            Fault(checks.VaporLineInsulated, "the vapor line is not insulated all the way"),
            Fault(checks.InsulationJointsSealed, "its joints are not sealed"),
            Fault(checks.InsulationWeatherproof, "it is not protected outdoors"),
        }.OfType<string>().ToArray();
        finding.Decide(faults.Length == 0);
        if (checks.InsulationThickness is { } thickness)
            finding.Remark($"Thickness {thickness.Text}.");
        if (checks.LiquidLineInsulated is { } liquid)
            finding.Remark(liquid.Value ? "The liquid line is insulated." : "The liquid line is not insulated.");
        if (faults.Length > 0)
        {
            yield return finding.Say($"Insulation: {string.Join("; ", faults)}.").Next(this.WhenItFails()).Build();
            yield break;
        }

        if (checks.VaporLineInsulated is null)
            finding.Reserve(PipingMessages.InsulationNotSeen).Next(PipingMessages.InsulationNotSeenNext, "piping checks: {vapor line insulated: yes}");
        yield return finding.Say(checks.VaporLineInsulated is null ? "Insulation as far as it is written." : "The vapor line is insulated all the way.").Build();
    }

    private static string? Fault(Given<bool>? answer, string fault) => answer is { Value: false } ? fault : null;
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
        var finding = context.Finding(this).Use("penetrations sealed", closed).Decide(closed.Value);
        yield return closed.Value
            ? finding.Say("The openings the lines pass through are sealed.").Build()
            : finding.Say("An opening the lines pass through is not sealed.").Next(this.WhenItFails()).Build();
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
        var finding = context.Finding(this).Use("pipe rated for refrigerant", rated).Use("refrigerant", refrigerant).Decide(rated.Value);
        yield return rated.Value
            ? finding.Say($"The tube is rated for {refrigerant.Value}.").Build()
            : finding.Fail("the tube may burst").Say($"The tube is not rated for {refrigerant.Value}.").Next(this.WhenItFails()).Build();
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
                yield return Judge(context, runs[i], runs.Length == 1 ? null : runs[i].To?.Value ?? string.Create(CultureInfo.InvariantCulture, $"run {i + 1}"));
        }
    }

    private Finding Judge(CheckContext context, PipingRun run, string? subject)
    {
        var finding = context.Finding(this, subject).Use("lines used again", run.Reused).Use("flushed", run.Flushed);
        if (run.Flushed is not { } flushed)
            return finding.NotEvaluated(PipingMessages.FlushedNotWritten, PipingMessages.FlushedNotWrittenNext, "equipment: {piping: {flushed: yes}}");
        finding.Decide(flushed.Value);
        return flushed.Value
            ? finding.Say("The reused lines were flushed.").Build()
            : finding.Say("The reused lines were not flushed.").Next(this.WhenItFails()).Build();
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
        var distance = Written.Reading(context, "distance of supports", every, DisplayKind.Length);
        var finding = context.Finding(this).Use(distance);
        var limit = context.Limits.Require(LimitIds.PipingSupports);
        var state = context.State(limit);
        finding.Judge(distance.Value.On(state), DisplayKind.Length, state);
        yield return finding.Conclude(
            $"Supports every {every.Text}; {state.Text} is asked for.",
            $"Supports every {every.Text}: too far apart, {state.Text} is asked for.",
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
            var finding = context.Finding(this, "traps").Use("riser traps", written);
            foreach (var traps in inLines)
                finding.Use("traps of the vapor line", traps);
            var count = written?.Value ?? (inLines.Length > 0 ? inLines.Sum(t => t!.Value) : (int?)null);
            yield return Count(context, finding, count, limit);
        }

        if (checks?.VaporLineSlopesToCompressor is { } slope)
        {
            var finding = context.Finding(this, "fall").Use("vapor line slopes to compressor", slope);
            yield return slope.Value
                ? finding.Decide(true).Say("The vapor line falls toward the compressor.").Build()
                : finding.Next("Let it fall where that is possible; oil lies in low places and comes back in slugs.").Information("The vapor line does not fall toward the compressor.", "as written; the maker's manual says where it matters");
        }
    }

    private Finding Count(CheckContext context, FindingBuilder finding, int? count, Limit? limit)
    {
        if (count is not { } traps)
            return finding.NotEvaluated(PipingMessages.TrapsNotCounted, PipingMessages.TrapsNotCountedNext, "piping checks: {riser traps: 2}");
        var words = traps == 1 ? "one oil trap" : FormattableString.Invariant($"{traps} oil traps");
        if (limit is null || (limit.Lower is null && limit.Upper is null))
            return finding.Information($"The vapor line has {words}.", "as written; the maker's number is not");
        var state = context.State(limit);
        finding.Judge(Uncertain.Exact(traps), DisplayKind.Number, state);
        return finding.Conclude(
            $"The vapor line has {words}; {state.Text} asked for.",
            $"The vapor line has {words}; the maker asks for {state.Text}.",
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
            yield return context.Finding(this).Use("branch joints placed", placed).Decide(placed.Value).Conclude(PipingMessages.BranchJointsPlaced, PipingMessages.BranchJointsNotPlaced, this.WhenItFails());
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
            yield return new FigureOfMaker("total index", Written.Reading(context, "total index", index, DisplayKind.Percentage), DisplayKind.Percentage, LimitIds.PipingTotalIndex).Judge(context, this, this.WhenItFails());
    }
}
