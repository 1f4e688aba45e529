using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Insulation resistance of the compressor, and that it was never tested under vacuum.</summary>
internal sealed class InsulationCheck : ICheck
{
    public string Id => "electrical.insulation";

    public string Phase => Phases.Electrical;

    public string Title => "Insulation resistance";

    public CheckHelp Help { get; } = new(
        "Is the winding still insulated from the shell? Never test while the circuit is under vacuum: the terminals arc.",
        "resistance at 500 V DC, board and inverter leads off, ≥ the pack's minimum; not between pump start and the end of the evacuation",
        "1 MΩ least, 20 MΩ good: common practice, no source; IEC 60335-1 asks 2 MΩ (from memory). Maker's figure first.",
        "Below the minimum: do not start it. Between minimum and good: run the crankcase heater to drive refrigerant out of the oil, test again warm.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical is not { Insulation: { } test } electrical)
            yield break;
        var reading = context.Readings.Plain("insulation resistance", ReadingName.Insulation, test.Read, DisplayKind.Resistance, electrical.With);
        var finding = context.Finding(this).Use(reading).Use("test voltage", test.TestVoltage).Use("leads off", test.LeadsOff).Use("time of the test", test.At);
        var underVacuum = UnderVacuum(context, test, finding);
        if (underVacuum == true)
        {
            yield return finding.Fail("the circuit was under vacuum").Say("DANGER: insulation was tested while the circuit was under vacuum.").Next("Never do this: terminals arc in a vacuum. Have the compressor's terminals inspected, then test with the circuit charged.").Build();
            yield break;
        }

        if (context.Limits.Find("electrical.insulation.minimum") is not { } limit)
        {
            yield return finding.NotEvaluated("no pack sets a limit", "Name a limits pack.");
            yield break;
        }

        finding.Judge(reading.Value, DisplayKind.Resistance, context.State(limit));
        if (test.LeadsOff?.Value == false)
            finding.Reserve("board or inverter leads were on, which may have been tested, or damaged, with the motor").Next("Test with the board's leads off.");
        if (underVacuum is null)
            finding.Reserve("the end of the evacuation has no time, so it is not shown that the circuit was charged").Next("Write the event what: end with its time.");
        if (finding.Passes && context.Limits.Find("electrical.insulation.good") is { Lower: { } good } && reading.Value.Value < good.Si)
            finding.Remark($"Below the {good.Text} of dry, clean insulation: warm the oil and test again.");
        yield return finding.Passes
            ? finding.Say($"Insulation resistance {test.Read.Text}.").Build()
            : finding.Say($"Insulation resistance {test.Read.Text}: too low.").Next(Help.WhenItFails).Build();
    }

    // Null: the test came after the pump was started, and nothing says when the vacuum ended.
    private static bool? UnderVacuum(CheckContext context, Jobs.Model.InsulationTest test, Findings.FindingBuilder finding)
    {
        if (context.Job.Evacuation is not { Started: { } started } evacuation || test.At?.Value.Clock is not { } at || started.Value.Clock is not { } from)
            return false;
        var end = evacuation.Events.LastOrDefault(e => e.What.Value == EvacuationEventKind.End)?.At;
        var running = context.Job.Charging?.CompressorStarted;
        finding.Use("evacuation: started", started).Use("evacuation: end", end).Use("compressor started", running);
        if (at < from)
            return false;
        return (end?.Value.Clock ?? running?.Value.Clock) is { } until ? at <= until : null;
    }
}
