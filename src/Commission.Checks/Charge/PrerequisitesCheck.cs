using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Air before charge: enough airflow, clean filter and coil, panels on, blower at cooling speed.</summary>
internal sealed class PrerequisitesCheck : ICheck
{
    public string Id => "charge.prerequisites";

    public string Phase => Phases.Charge;

    public string Title => "Air before charge";

    public CheckHelp Help { get; } = new(
        "Was the air side right before the charge was judged: enough airflow, filter and coil clean, panels on, blower at its cooling speed?",
        "airflow for each capacity at least the limit; at least the maker's where the job gives a range; without a measured airflow, temperature split not above its target by more than the tolerance",
        "California Residential Appendix RA3.2 (published, p. RA3-15 and RA3-16): 300 cfm/ton or the temperature split; target split from table RA3.2-3 (from memory). Clean filter, coil and panels: common practice.",
        "Low airflow looks like a wrong charge on both gauges. Clean or replace the filter, open registers and dampers, set the blower, then let the system settle and read again. What was not written down makes a pass of the charge conditional.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.Charging is null || analysis.ByWeightOnly is not null)
            yield break;
        var row = analysis.Spoken(OperatingMode.Cooling, r => r.Written is { ReturnDryBulb: not null, SupplyDryBulb: not null }) ?? analysis.Spoken(OperatingMode.Cooling, _ => true);
        if (ChargePrerequisites.Of(context, row) is not { } gate)
            yield break;
        var finding = context.Finding(this, row?.Time);
        gate.NameIn(finding);
        if (gate.Airflow is { } airflow)
        {
            foreach (var reading in airflow.Readings)
                finding.Use(reading);
            finding.Add(airflow.Steps).Judge(airflow.Value, airflow.Kind, airflow.Limit);
        }
        else if (gate.All.All(p => p.Shown is null))
        {
            yield return finding.NotEvaluated("nothing of the air side is written", "Write filter, coil, panels and blower, and measure the airflow or the temperature split.");
            yield break;
        }
        else
        {
            finding.Decide(true);
        }

        if (gate.Block is { } low)
        {
            yield return finding.Fail(low).Say($"The charge is not judged: {low}.").Next(gate.Todo!).Build();
            yield break;
        }

        if (gate.Reservation is { } missing)
            finding.Reserve(missing);
        if (ChargeFindings.Unknown(gate.Airflow?.Readings ?? []) is { } unknown)
            finding.Reserve(unknown);
        yield return finding.Say(Sentence(context, gate)).Build();
    }

    private static string Sentence(CheckContext context, ChargePrerequisites gate)
    {
        var shown = gate.Airflow is not { } airflow ? gate.NeedsAirflow ? "airflow not shown; " : ""
            : airflow.Kind == DisplayKind.TemperatureDifference ? $"temperature split {context.Present.Text(airflow.Value, airflow.Kind)}, {airflow.Limit.Text} is allowed; "
            : $"airflow {context.Present.Text(airflow.Value, airflow.Kind)}, {airflow.Limit.Text} is asked for; ";
        return gate.Reservation is { } missing ? $"Air side: {shown}{missing}." : $"Air side: {shown}filter, coil, panels and blower are as they should be.";
    }
}
