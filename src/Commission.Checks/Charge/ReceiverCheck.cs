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
                    $"evaporator superheat, {bulb.Time}"));
        }

        if (analysis.Spoken(OperatingMode.Cooling, r => r.Written.CompressorSuctionLine is not null && (r.Written.TrueSuctionPressure ?? r.Written.VaporPressure) is not null) is { } inlet)
        {
            yield return RowDifference.Judge(
                context, this, inlet, inlet.CompressorSuperheat, context.Limits.Find(LimitIds.ChargeCompressorSuperheatRange), new ChargeGates(inlet.Settling, LogDrift.Of(context)),
                new(
                    ChargeMessages.CompressorSuperheat,
                    ChargeMessages.CompressorSuperheatHighNext,
                    ChargeMessages.CompressorSuperheatLowNext,
                    $"compressor superheat, {inlet.Time}"));
        }
    }

    private Finding Glass(CheckContext context, Charging charging, ChargeRow? row)
    {
        var seen = charging.SightGlass ?? row?.Written.SightGlass;
        var finding = context.Finding(this, "sight glass").Use("sight glass", seen).Use("running", row?.Running).Use("head pressure control", context.Job.Equipment.HeadPressureControl);
        if (seen is null)
            return finding.NotEvaluated("what the sight glass showed is not written", "Look at full load and write it.");
        if (seen.Value == SightGlass.None)
            return finding.NotEvaluated("the circuit has no sight glass", "Weigh the charge in, with the winter charge of a flooded condenser where there is one.");
        finding.Decide(seen.Value == SightGlass.Clear);
        if (!finding.Passes)
        {
            finding.Say($"The sight glass showed {(seen.Value == SightGlass.Empty ? "no liquid" : "bubbles")}.").Next("Check the drop across the drier first; then look for a leak before refrigerant is added.");
            if (context.Get<CircuitSaturation>().IsBlend)
                finding.Remark("A blend with glide may show some bubbles although its charge is right.");
            return finding.Build();
        }

        if (row?.Running?.Value is not (RunningState.Full or RunningState.HighStage))
            finding.Reserve("it is not written that the circuit ran at full load when the glass was clear");
        if (context.Job.Equipment.HeadPressureControl?.Value == HeadPressureControl.Flooding && charging.Extra.IsEmpty)
            finding.Remark("The winter charge for the flooded condenser is not written among the extras: a clear glass in summer does not show it.");
        return finding.Say("The sight glass was clear.").Build();
    }

    private Finding Level(CheckContext context, Given<Ratio> level) => context.Finding(this, "receiver level").Use("receiver level", level)
        .Measure(Uncertain.Exact(level.Value.Si), DisplayKind.Percentage)
        .Information($"The receiver was {level.Text} full.", "the maker's level for this load and season decides");
}
