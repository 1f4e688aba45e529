using Commission.Checks.Kernel;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>Whether the circuit is free of acid after the work, or somebody comes back to see.</summary>
internal sealed class AcidCheck : ICheck
{
    public string Id => "refrigerant.acid";

    public string Phase => Phases.Refrigerant;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Charging is not { } charging)
            yield break;
        var before = context.Job.AsFound?.AcidTest;
        var wasAcid = before is { Value: AcidResult.Bad or AcidResult.Marginal };
        var last = charging.AcidTest is [.., var test] && test.Result.Value != AcidResult.NotTested ? test : null;
        if (!wasAcid && last is null)
            yield break;
        var finding = context.Finding(this).Use(RefrigerantMessages.ReadingAcidBefore, before);
        foreach (var made in charging.AcidTest)
            finding.Use(RefrigerantMessages.ReadingAcidAfter, made.Result).Use(RefrigerantMessages.ReadingAcidAt, made.At).Use(RefrigerantMessages.ReadingAcidNext, made.Next);
        finding.Use(ReadingsMessages.DateOfJob, context.Job.Identity.Date).Decide(true);
        yield return last is null
            ? finding.Say(RefrigerantMessages.AcidNotTested).Reserve(RefrigerantMessages.AcidNotTestedWhy).Next(RefrigerantMessages.AcidNotTestedNext, "charging: {acid test: {result: …, at: …}}").Build()
            : Judge(context, finding, last);
    }

    private Finding Judge(CheckContext context, FindingBuilder finding, AcidTest last)
    {
        if (last.Result.Value == AcidResult.Good)
            return finding.Say(RefrigerantMessages.AcidGone).Build();
        var found = new TextValue(last.Result.Text);
        if (last.Next is { } next && next.Value >= context.Job.Identity.Date.Value)
            return finding.Say(RefrigerantMessages.AcidLeft(found)).Reserve(RefrigerantMessages.AcidAgainBy(next.Value)).Next(RefrigerantMessages.AcidAgainNext(next.Value)).Build();
        finding.Say(RefrigerantMessages.AcidNoDate(found)).Next(this.WhenItFails(), "charging: {acid test: {result: …, next: …}}");
        return last.Result.Value == AcidResult.Bad ? finding.Decide(false).Build() : finding.Reserve(RefrigerantMessages.AcidNoDateWhy).Build();
    }
}

/// <summary>Whether a suction drier that cleans up after a burnt compressor comes out again: it costs pressure where the compressor has least of it.</summary>
internal sealed class SuctionDrierCheck : ICheck
{
    public string Id => "refrigerant.suction-drier";

    public string Phase => Phases.Refrigerant;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var job = context.Job;
        var isCleanUp = job.Identity.Work.Value == WorkKind.CompressorReplacement || IsAcid(job.AsFound?.AcidTest) || (job.Charging?.AcidTest ?? []).Any(t => IsAcid(t.Result));
        var driers = job.Equipment.Drier.Where(d => d.Line?.Value == DrierLine.Suction && d.Replaced?.Value != false).ToList();
        foreach (var drier in driers)
        {
            if (!isCleanUp && drier.RemoveBy is null)
                continue;
            var finding = context.Finding(this, driers.Count > 1 ? drier.Model?.Value ?? drier.Place?.Value : null).Use(RefrigerantMessages.ReadingDrier, drier.Model).Use(RefrigerantMessages.ReadingDrierLine, drier.Line)
                .Use(RefrigerantMessages.ReadingDrierReplaced, drier.Replaced).Use(RefrigerantMessages.ReadingDrierRemove, drier.RemoveBy)
                .Use(ReadingsMessages.Work, job.Identity.Work).Use(RefrigerantMessages.ReadingAcid, job.AsFound?.AcidTest).Use(ReadingsMessages.DateOfJob, job.Identity.Date).Decide(true);
            yield return drier.RemoveBy is { } day && day.Value >= job.Identity.Date.Value
                ? finding.Say(RefrigerantMessages.SuctionDrierDated(day.Value)).LookAt(RefrigerantMessages.SuctionDrierOut(day.Value)).Build()
                : finding.Say(drier.RemoveBy is { } past ? RefrigerantMessages.SuctionDrierPast(past.Value) : RefrigerantMessages.SuctionDrierUndated)
                    .Reserve(RefrigerantMessages.SuctionDrierUndatedWhy).Next(this.WhenItFails(), "equipment: {drier: [{line: suction, remove by: …}]}").Build();
        }
    }

    private static bool IsAcid(Given<AcidResult>? result) => result is { Value: AcidResult.Bad or AcidResult.Marginal };
}
