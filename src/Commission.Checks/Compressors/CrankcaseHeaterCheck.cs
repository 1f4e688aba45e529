using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Compressors;

/// <summary>How long the crankcase heater was on before the first start.</summary>
internal sealed class CrankcaseHeaterCheck : ICheck
{
    public string Id => "compressor.crankcase-heater";

    public string Phase => Phases.Compressor;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var heater = context.Job.Equipment.Accessories.FirstOrDefault(a => a.Value == Accessory.CrankcaseHeater);
        var charging = context.Job.Charging;
        var on = charging?.CrankcaseHeaterOnSince;

        // A system that is only looked at has been started long ago.
        var firstStart = context.Job.Identity.Work.Value is not (WorkKind.SeasonalCheck or WorkKind.ChargeAdjustment or WorkKind.Decommissioning);
        if (charging is null || (on is null && (heater is null || !firstStart)))
            yield break;
        var finding = context.Finding(this).Use("crankcase heater", heater).Use("crankcase heater on since", on).Use("compressor started", charging.CompressorStarted).Use("work", context.Job.Identity.Work);
        if (on is null)
        {
            yield return finding.NotEvaluated(CompressorMessages.HeaterSinceNotWritten, CompressorMessages.HeaterSinceNotWrittenNext, "charging: {crankcase heater on since: \"2026-06-17 18:00\"}");
            yield break;
        }

        if (charging.CompressorStarted is not { } started)
        {
            yield return finding.NotEvaluated(CompressorMessages.StartNotWritten, CompressorMessages.StartNotWrittenNext, "charging: {compressor started: \"11:00\"}");
            yield break;
        }

        if ((started.Value.Clock, on.Value.Clock) is not ({ } start, { } since))
        {
            yield return finding.NotEvaluated("the two times are not both clock times", "Write both with date and time of day.");
            yield break;
        }

        var seconds = (start - since).TotalSeconds;
        if (seconds < 0)
        {
            yield return finding.NotEvaluated("the heater was switched on after the start", "Check the two times and their dates.");
            yield break;
        }

        var y = Uncertain.Exact(seconds);
        var hours = FormattableString.Invariant($"{seconds / 3600:0.#} h");
        finding.Step("t", "time the heater was on", "start − heater on", $"{started.Text} − {on.Text}", hours, "definition").Measure(y, DisplayKind.Duration);
        if (context.Limits.Find(LimitIds.CompressorCrankcaseHeaterTime) is not { Lower: not null } limit)
        {
            yield return finding.Information($"The crankcase heater was on for {hours} before the start.", "nobody sets a time");
            yield break;
        }

        yield return finding.JudgeOrDoubt(
            context, new(y, DisplayKind.Duration, []), limit, $"The crankcase heater was on for {hours} before the start",
            "a start with cold oil may have foamed it", this.WhenItFails());
    }
}
