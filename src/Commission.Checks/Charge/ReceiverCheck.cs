using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>A circuit with a receiver: clear sight glass at full load, level, and the two superheats of refrigeration.</summary>
internal sealed class ReceiverCheck : ICheck
{
    public string Id => "charge.receiver";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.Charging is not { } charging || !(analysis.HasReceiver || analysis.IsRefrigeration))
            yield break;
        var row = analysis.Spoken(OperatingMode.Cooling, _ => true);
        if (Hunting.In(context) is { } swing)
        {
            yield return swing.Unsettled(context, context.Finding(this, row?.Time));
            yield break;
        }

        if (analysis.HasReceiver)
        {
            yield return Glass(context, charging, analysis.Spoken(OperatingMode.Cooling, r => r.Written.SightGlass is not null) ?? row);
            var level = charging.ReceiverLevel ?? analysis.Spoken(OperatingMode.Cooling, r => r.Written.ReceiverLevel is not null)?.Written.ReceiverLevel;
            if (level is not null)
                yield return Level(context, level);
        }

        if (analysis.Spoken(OperatingMode.Cooling, r => r.Written is { EvaporatorOutlet: not null, VaporPressure: not null }) is { } bulb)
        {
            yield return RowDifference.Judge(
                context, this, bulb, bulb.EvaporatorSuperheat, context.Limits.Find(LimitIds.ChargeEvaporatorSuperheatRange), new ChargeGates(bulb.Settling, LogDrift.Of(context)),
                new(
                    ChargeMessages.EvaporatorSuperheat,
                    ChargeMessages.EvaporatorSuperheatHighNext,
                    ChargeMessages.EvaporatorSuperheatLowNext,
                    context.Present.Text(OperatingStateMessages.EvaporatorSuperheatAt(new(bulb.Time)))));
        }

        if (analysis.Spoken(OperatingMode.Cooling, r => r.Written.CompressorSuctionLine is not null && (r.Written.TrueSuctionPressure ?? r.Written.VaporPressure) is not null) is { } inlet)
        {
            yield return RowDifference.Judge(
                context, this, inlet, inlet.CompressorSuperheat, context.Limits.Find(LimitIds.ChargeCompressorSuperheatRange), new ChargeGates(inlet.Settling, LogDrift.Of(context)),
                new(
                    ChargeMessages.CompressorSuperheat,
                    ChargeMessages.CompressorSuperheatHighNext,
                    ChargeMessages.CompressorSuperheatLowNext,
                    context.Present.Text(OperatingStateMessages.CompressorSuperheatAt(new(inlet.Time)))));
        }
    }

    private Finding Glass(CheckContext context, Charging charging, ChargeRow? row)
    {
        var seen = charging.SightGlass ?? row?.Written.SightGlass;
        var finding = context.Finding(this, OperatingStateMessages.Glass).Use(OperatingStateMessages.Glass, seen).Use(OperatingStateMessages.ReadingRunning, row?.Running).Use(OperatingStateMessages.ReadingHeadPressure, context.Job.Equipment.HeadPressureControl);
        if (seen is null)
            return finding.NotEvaluated(OperatingStateMessages.GlassNotTold, OperatingStateMessages.GlassNotToldNext);
        if (seen.Value == SightGlass.None)
            return finding.NotEvaluated(OperatingStateMessages.GlassNone, OperatingStateMessages.GlassNoneNext);
        finding.Decide(seen.Value == SightGlass.Clear);
        if (!finding.Passes)
        {
            finding.Say(OperatingStateMessages.GlassNotClear(seen.Value == SightGlass.Empty ? OperatingStateMessages.GlassNotClearSeen.Empty : OperatingStateMessages.GlassNotClearSeen.Bubbles)).Next(OperatingStateMessages.GlassNotClearNext);
            if (context.Get<CircuitSaturation>().IsBlend)
                finding.Remark(OperatingStateMessages.GlassBlend);
            return finding.Build();
        }

        if (row?.Running?.Value is not (RunningState.Full or RunningState.HighStage))
            finding.Reserve(OperatingStateMessages.GlassLoadNotTold);
        if (context.Job.Equipment.HeadPressureControl?.Value == HeadPressureControl.Flooding && charging.Extra.IsEmpty)
            finding.Remark(OperatingStateMessages.GlassWinter);
        return finding.Say(OperatingStateMessages.GlassClear).Build();
    }

    private Finding Level(CheckContext context, Given<Ratio> level) => context.Finding(this, OperatingStateMessages.ReceiverLevel).Use(OperatingStateMessages.ReceiverLevel, level)
        .Measure(Uncertain.Exact(level.Value.Si), DisplayKind.Percentage)
        .Information(OperatingStateMessages.ReceiverWas(new(level.Text)), OperatingStateMessages.ReceiverNotJudged);
}
