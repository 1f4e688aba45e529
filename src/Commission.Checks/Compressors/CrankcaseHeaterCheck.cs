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
        var finding = context.Finding(this).Use(CompressorMessages.ReadingHeater, heater).Use(CompressorMessages.ReadingHeaterSince, on).Use(ReadingsMessages.CompressorStarted, charging.CompressorStarted).Use(ReadingsMessages.Work, context.Job.Identity.Work);
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
            yield return finding.NotEvaluated(CompressorMessages.HeaterNoClock, CompressorMessages.HeaterNoClockNext);
            yield break;
        }

        var seconds = (start - since).TotalSeconds;
        if (seconds < 0)
        {
            yield return finding.NotEvaluated(CompressorMessages.HeaterAfterStart, CompressorMessages.HeaterAfterStartNext);
            yield break;
        }

        var y = Uncertain.Exact(seconds);
        var hours = FormattableString.Invariant($"{seconds / 3600:0.#} h");
        finding.Step("t", CompressorMessages.StepHeaterTime, CompressorMessages.StepHeaterTimeFormula, $"{started.Text} − {on.Text}", hours, CompressorMessages.StepDefinition).Measure(y, DisplayKind.Duration);
        var was = CompressorMessages.HeaterWasOn(new(hours));
        if (context.Limits.Find(LimitIds.CompressorCrankcaseHeaterTime) is not { Lower: not null } limit)
        {
            yield return finding.Information(CompressorMessages.FigureOnly(was), CompressorMessages.HeaterNoLimit);
            yield break;
        }

        yield return finding.JudgeOrDoubt(
            context, new(y, DisplayKind.Duration, []), limit, was,
            CompressorMessages.HeaterSuspicion, this.WhenItFails());
    }
}
