using Commission.Checks.Findings;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Air;

/// <summary>Electric power of the blower for each airflow.</summary>
internal sealed class FanPowerCheck : ICheck
{
    public string Id => "air.fan-power";

    public string Phase => Phases.Air;

    public string Title => "Blower power for its airflow";

    public CheckHelp Help { get; } = new(
        "How many watts does the blower spend on each cfm? Tight ducts and dirty filters show here.",
        "blower power / airflow",
        "The maker's figure; ANSI/RESNET/ACCA/ICC 310: 0.45 W/cfm grade I, 0.58 grade II (from memory) when that pack is named.",
        "Lower the resistance before the blower is changed: filter, coil, return duct, registers.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Air is not { BlowerPower: { } power } air)
            yield break;
        var reading = context.Readings.Plain("blower power", ReadingName.Electrical, power, DisplayKind.Power, air.With);
        var finding = context.Finding(this).Use(reading);
        if (context.Get<AirflowRoutes>().Chosen is not { } route)
        {
            yield return finding.NotEvaluated("the airflow is not known", "Measure the airflow, or write the maker's fan table and the static pressure.");
            yield break;
        }

        route.UseIn(finding);
        if (route.Value is not { Value: > 0 } flow)
        {
            yield return finding.NotEvaluated($"the airflow is not known: {route.WhyNot ?? "it is zero"}", route.Todo ?? "Read the airflow with the blower running.");
            yield break;
        }

        var present = context.Present;
        var per = reading.Value / flow;
        var text = present.Text(per, DisplayKind.FanPower);
        finding.Step("P/V̇", "blower power for each airflow", "P / V̇", $"{power.Text} / {present.Text(flow.Value, DisplayKind.AirFlow)}", text, "definition");
        if (context.Limits.Find("air.fan-power") is not { } limit)
        {
            yield return finding.Measure(per, DisplayKind.FanPower).RemarkUnknown([reading, .. route.Readings]).Information($"The blower takes {text}.", "neither the maker nor a pack in use sets a limit");
            yield break;
        }

        var state = context.State(limit);
        finding.Judge(per.On(state), DisplayKind.FanPower, state).Remark(limit.Remark(present.Units)).RemarkUnknown([reading, .. route.Readings]);
        if (route.Reservation is { } open && finding.Passes)
            finding.Reserve(open).Next("Write what is missing, or measure the airflow another way.");
        if (!finding.Passes && context.Limits.Find("air.fan-power.grade-two") is { Upper: { } second } grade && per.Value <= second.Si)
            finding.Show(context.State(grade)).Remark($"It is within the second grade ({second.Text}, {grade.Source}).");
        yield return finding.Passes
            ? finding.Say($"The blower takes {text}; {state.Text} allowed.").Build()
            : finding.Say($"The blower takes {text}, more than the {state.Text} allowed.").Next(Help.WhenItFails).Build();
    }
}
