using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Whether it was neither too cold nor too hot for judging a charge by readings.</summary>
internal sealed class MethodValidityCheck : ICheck
{
    public string Id => "charge.method-validity";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.ByWeightOnly is not null || analysis.HasReceiver || analysis.Spoken(OperatingMode.Cooling, r => r.HasCircuitReading) is not { } row)
            yield break;
        var isSuperheat = analysis.HasFixedMetering;
        var makersChart = isSuperheat ? ChargeTarget.Superheat(context, row).IsMakersChart : ChargeTarget.Subcooling(context, row).IsMakersChart;
        var validity = MethodValidity.Of(context, row, isSuperheat ? ChargeCriterion.Superheat : ChargeCriterion.Subcooling, makersChart);
        foreach (var window in validity.Windows)
            yield return Judge(context, row, validity, window);
    }

    private Finding Judge(CheckContext context, ChargeRow row, MethodValidity validity, ValidityWindow window)
    {
        var finding = context.Finding(this, ReadingsMessages.AtTime(ValidityWindow.Name(window.What), new(row.Time)));
        finding.Use(CircuitMessages.HeadPressureRaised, context.Job.Charging?.HeadPressureRaised);
        var limit = context.State(window.Limit);
        if (window.Reading is not { } reading)
            return finding.Show(limit).NotEvaluated(CircuitMessages.NotRead(new([ValidityWindow.Name(window.What)]), 1), ChargeMessages.ConditionNotReadNext);
        finding.Use(reading).Judge(reading.Value, DisplayKind.Temperature, limit);
        return window.Inside == true
            ? finding.Remark(window.Remark).Remark(reading.AccuracyKnown ? null : ChargeMessages.AccuracyNotWritten(new([new TextValue(reading.Name)]))).Say(ChargeMessages.ConditionInside(
                ValidityWindow.Name(window.What), context.Present.InMessage(reading.Value, DisplayKind.Temperature), new(row.Time), new(limit.Text))).Build()
            : finding.NotEvaluated(validity.Words(window), MethodValidity.Advice(window));
    }
}

/// <summary>Whether orifice and units belong together as the maker lists them.</summary>
internal sealed class EquipmentMatchCheck : ICheck
{
    public string Id => "charge.match";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var match = EquipmentMatch.Of(context);
        if (!match.IsShown)
            yield break;
        var finding = context.Finding(this).Use(ChargeMessages.RatingReference, context.Job.Equipment.RatingReference);
        match.NameIn(finding);
        finding.Decide(match.Reservation is null);
        yield return finding.Passes
            ? finding.Say(ChargeMessages.MatchGood).Build()
            : finding.Say(match.Sentence!).Next(match.Todo ?? ChargeMessages.MatchNotListedNext).Build();
    }
}
