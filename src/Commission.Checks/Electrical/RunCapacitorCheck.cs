using System.Globalization;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Run capacitors against their label, measured out of circuit or running.</summary>
internal sealed class RunCapacitorCheck : ICheck
{
    private const double MainsInNorthAmerica = 60;
    private const double MainsElsewhere = 50;

    public string Id => "electrical.run-capacitor";

    public string Phase => Phases.Electrical;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical is not { } electrical)
            yield break;
        foreach (var capacitor in electrical.RunCapacitor)
            yield return Judge(context, electrical, capacitor);
    }

    private Finding Judge(CheckContext context, Jobs.Model.Electrical electrical, Jobs.Model.RunCapacitor capacitor)
    {
        var finding = context.Finding(this, capacitor.For?.Value).Use("capacitor label", capacitor.Label).Use("tolerance on the label", capacitor.Tolerance);
        Uncertain value;
        if (capacitor.Read is { } read)
        {
            var reading = context.Readings.Plain("capacitance", ReadingName.Capacitance, read, DisplayKind.Capacitance, electrical.With);
            finding.Use(reading);
            value = reading.Value;
        }
        else if (capacitor is { RunningCurrent: { } current, RunningVoltage: { } voltage })
        {
            var amperes = context.Readings.Plain("capacitor current", ReadingName.Current, current, DisplayKind.Current, electrical.With);
            var volts = context.Readings.Plain("capacitor voltage", ReadingName.Voltage, voltage, DisplayKind.Voltage, electrical.With);
            var plate = context.Job.Equipment.Nameplate?.Frequency;
            var hertz = plate?.Value.Si ?? (context.Present.Preset == "us" ? MainsInNorthAmerica : MainsElsewhere);
            finding.Use(amperes).Use(volts).Use("mains frequency", plate);
            if (!(volts.Value.Value > 0))
                return finding.NotEvaluated("the voltage across it is zero", "Read current and voltage with the motor running.");
            value = Uncertain.Apply((i, v) => Formulas.RunCapacitor.Farads(i, v, hertz), amperes.Value, volts.Value);
            finding.Step("C", "capacitance while running", Formulas.RunCapacitor.Formula, string.Create(CultureInfo.InvariantCulture, $"{current.Text}, {voltage.Text}, {hertz:0} Hz"), context.Present.Text(value, DisplayKind.Capacitance), Formulas.RunCapacitor.Source);
        }
        else
        {
            return finding.NotEvaluated(ElectricalMessages.CapacitorNotRead, ElectricalMessages.CapacitorNotReadNext, "electrical: {run capacitor: {read: 44.1 uF}}");
        }

        var limit = context.Limits.Require(LimitIds.ElectricalRunCapacitorTolerance);
        var common = limit.Most;
        var share = capacitor.Tolerance?.Value.Si ?? common.Si;
        var label = capacitor.Label.Value.Si;
        var text = string.Create(CultureInfo.InvariantCulture, $"{capacitor.Label.Text} ± {100 * share:0.#} %");
        var statement = context.State(limit) with { Kind = LimitKind.Target, Text = text, LowerSi = label * (1 - share), UpperSi = label * (1 + share), TargetSi = label };
        if (capacitor.Tolerance is not null)
            statement = statement with { Basis = "maker", Pack = "", Source = "capacitor label", Mark = "job" };
        finding.Judge(value.On(statement), DisplayKind.Capacitance, statement);
        var now = context.Present.Text(value.Value, DisplayKind.Capacitance);
        return finding.Conclude(
            $"Run capacitor {now}, label {capacitor.Label.Text}.",
            $"Run capacitor {now}, label {capacitor.Label.Text}: outside its tolerance.",
            this.WhenItFails());
    }
}
