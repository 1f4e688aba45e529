using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.NitrogenAnalysis;
using Commission.Checks.VacuumAnalysis;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Evidence;

/// <summary>Numbers finer than their instrument shows, a test pressure that stood still while the temperature moved it, and a vacuum log steadier than its gauge.</summary>
internal sealed class ResolutionCheck : ICheck
{
    // Half a step is lost to rounding on either side; a whole one more leaves room for a gauge that sticks.
    private const double StepsThatShow = 2;

    public string Id => "evidence.resolution";

    public string Phase => Phases.Evidence;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (Finer(context) is { } finer)
            yield return finer;
        if (context.Job.PressureTest is { Tightness: { From: { } from, To: { } to } } test && StoodStill(context, test, from, to) is { } still)
            yield return still;
        if (context.Job.Evacuation is not null && context.Get<EvacuationRun>() is var run && TooSteady.Of(run) is { } steady)
        {
            yield return context.Finding(this, EvidenceMessages.SubjectVacuumLog).Use(ReadingsMessages.EvacuationLog, run.Evacuation.Series?.File, run.Gauge.Id).LookAt(EvidenceMessages.LogDigitsNext)
                .Information(EvidenceMessages.LogSteady(steady.Rows, VacuumText.Value(context.Present, steady.Scatter)), EvidenceMessages.LogSteadyKind);
        }
    }

    private Finding? Finer(CheckContext context)
    {
        var kit = context.Get<InstrumentKit>();
        var compared = new List<(HandReading Reading, UsedInstrument Instrument, Given<Jobs.Model.QuantityValue> Step, bool IsFiner)>();
        foreach (var reading in context.Get<HandReadings>().All)
        {
            if (reading.Step is not null && kit.For(reading.Reading, reading.With) is { } instrument && instrument.ResolutionGiven(reading.Si) is { } resolution && SameUnit(reading.Text, resolution.Value.Unit)
                && Number(reading.Text) is { } number && Number(resolution.Text) is { } shown and > 0)
            {
                compared.Add((reading, instrument, resolution, !IsMultiple(number / shown)));
            }
        }

        if (compared.Count == 0)
            return null;
        var finding = context.Finding(this);
        foreach (var (reading, instrument, _, _) in compared)
            finding.Use(reading.Use(instrument.Id));
        foreach (var (instrument, step) in compared.Select(c => (c.Instrument, c.Step)).Distinct())
            finding.Use(EvidenceMessages.InstrumentResolution(new(instrument.Id)), step, instrument.Id);
        var fine = compared.Where(c => c.IsFiner).ToList();
        return fine.Count == 0
            ? finding.Decide(true).Say(EvidenceMessages.FinerNone(compared.Count)).Build()
            : finding.LookAt(this.WhenItFails()).Information(
                EvidenceMessages.Finer(new ListValue([.. fine.Select(c => EvidenceMessages.FinerOne(new(c.Reading.Name), new(c.Reading.Text), new(c.Instrument.Id), new(c.Step.Text)))], ListJoin.Semicolons)),
                EvidenceMessages.FinerKind);
    }

    private Finding? StoodStill(CheckContext context, Jobs.Model.PressureTest test, Jobs.Model.HoldPoint from, Jobs.Model.HoldPoint to)
    {
        var gauge = context.Get<InstrumentKit>().For(ReadingName.PressureTest, test.With);
        if (from.Temperature.IsEmpty || to.Temperature.IsEmpty || (gauge?.ResolutionAt(from.Pressure.Value.Pascals) ?? from.Pressure.Step) is not { } step || step <= 0)
            return null;
        double Mean(Jobs.Model.HoldPoint point) => point.Temperature.Average(t => t.Value.Si);
        var (cold, warm) = (Mean(from), Mean(to));
        var pressure = from.Pressure.Value.ToAbsolute(context.Get<SiteAtmosphere>().Pressure).Si;
        var expected = pressure * ((warm / cold) - 1);

        // The gas need not have followed the clamp: the doubt of its temperature at both ends, as in the hold itself.
        var gas = GasBesideClamp.Of(context, test, test.Tightness!, context.Get<NitrogenRun>().Rows?.Length ?? 0, warm - cold);
        var doubt = 2 * pressure / cold * Math.Sqrt(((gas.AtStart * gas.AtStart) + (gas.AtEnd * gas.AtEnd) + (gas.OfChange * gas.OfChange)) / 3);
        if (Math.Abs(expected) - doubt <= StepsThatShow * step)
            return null;
        var present = context.Present;
        var finding = context.Finding(this, EvidenceMessages.SubjectNitrogenHold).Use(EvidenceMessages.PressureAtStart, from.Pressure, gauge?.Id).Use(EvidenceMessages.PressureAtEnd, to.Pressure, gauge?.Id);
        foreach (var temperature in from.Temperature.Concat(to.Temperature))
            finding.Use(ReadingsMessages.TestTemperature, temperature);
        finding.Step(
            "Δp", EvidenceMessages.TemperatureAlone, "p·(T2/T1 − 1)", EvidenceMessages.FromTo(present.InMessage(cold, DisplayKind.Temperature), present.InMessage(warm, DisplayKind.Temperature)),
            $"{present.Text(expected, DisplayKind.PressureDifference)} ± {present.Text(doubt, DisplayKind.PressureDifference)}", EvidenceMessages.IdealGas);
        var moved = to.Pressure.Value.ToAbsolute(context.Get<SiteAtmosphere>().Pressure).Si - pressure;
        return Math.Abs(moved) >= step / 2
            ? finding.Decide(true).Say(EvidenceMessages.PressureMoved(present.InMessage(moved, DisplayKind.PressureDifference), present.InMessage(cold, DisplayKind.Temperature), present.InMessage(warm, DisplayKind.Temperature))).Build()
            : finding.LookAt(this.WhenItFails()).Information(
                EvidenceMessages.PressureStood(new(from.Pressure.Text), present.InMessage(cold, DisplayKind.Temperature), present.InMessage(warm, DisplayKind.Temperature), present.InMessage(expected, DisplayKind.PressureDifference)),
                EvidenceMessages.PressureStoodKind);
    }

    // A display with steps of 0.5 shows 57.5 with a digit that never is a 1.
    private static bool IsMultiple(double ratio) => Math.Abs(ratio - Math.Round(ratio)) < 0.02;

    private static double? Number(string text)
    {
        var end = text.IndexOf(' ', StringComparison.Ordinal);
        return end > 0 && double.TryParse(text[..end], NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : null;
    }

    private static bool SameUnit(string text, string unit)
    {
        var space = text.IndexOf(' ', StringComparison.Ordinal);
        return space > 0 && unit.Length > 0 && text[(space + 1)..].StartsWith(unit, StringComparison.Ordinal);
    }
}
