using System.Globalization;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
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
        var finding = context.Finding(this, capacitor.For?.Value).Use(ElectricalMessages.ReadingCapacitorLabel, capacitor.Label).Use(ElectricalMessages.ReadingCapacitorTolerance, capacitor.Tolerance);
        Uncertain value;
        if (capacitor.Read is { } read)
        {
            var reading = context.Readings.Plain(context.Present.Text(ElectricalMessages.ReadingCapacitance), ReadingName.Capacitance, read, DisplayKind.Capacitance, electrical.With);
            finding.Use(reading);
            value = reading.Value;
        }
        else if (capacitor is { RunningCurrent: { } current, RunningVoltage: { } voltage })
        {
            var amperes = context.Readings.Plain(context.Present.Text(ElectricalMessages.ReadingCapacitorCurrent), ReadingName.Current, current, DisplayKind.Current, electrical.With);
            var volts = context.Readings.Plain(context.Present.Text(ElectricalMessages.ReadingCapacitorVoltage), ReadingName.Voltage, voltage, DisplayKind.Voltage, electrical.With);
            var plate = context.Job.Equipment.Nameplate?.Frequency;
            var hertz = plate?.Value.Si ?? (context.Present.Preset == "us" ? MainsInNorthAmerica : MainsElsewhere);
            finding.Use(amperes).Use(volts).Use(ElectricalMessages.ReadingFrequency, plate);
            if (!(volts.Value.Value > 0))
                return finding.NotEvaluated(ElectricalMessages.CapacitorNoVoltage, ElectricalMessages.CapacitorNoVoltageNext);
            value = Uncertain.Apply((i, v) => Formulas.RunCapacitor.Farads(i, v, hertz), amperes.Value, volts.Value);
            finding.Step("C", ElectricalMessages.CapacitorRunning, Formulas.RunCapacitor.Formula, string.Create(CultureInfo.InvariantCulture, $"{current.Text}, {voltage.Text}, {hertz:0} Hz"), context.Present.Text(value, DisplayKind.Capacitance), Formulas.RunCapacitor.Source);
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
            statement = statement with { Basis = "maker", Pack = "", Source = context.Present.Text(ElectricalMessages.ReadingCapacitorLabel), Mark = "job" };
        finding.Judge(value.On(statement), DisplayKind.Capacitance, statement);
        var now = context.Present.InMessage(value.Value, DisplayKind.Capacitance);
        return finding.Conclude(
            ElectricalMessages.CapacitorWithin(now, new(capacitor.Label.Text)),
            ElectricalMessages.CapacitorOutside(now, new(capacitor.Label.Text)),
            this.WhenItFails());
    }
}
