using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.NitrogenAnalysis;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.PressureTest;

/// <summary>The nitrogen hold: what was lost after temperature is taken out, with everything that makes it doubtful.</summary>
internal sealed class NitrogenHoldCheck : ICheck
{
    private const string Span2000 = "real nitrogen: Span, Lemmon, Jacobsen, Wagner and Yokozeki, J. Phys. Chem. Ref. Data 29 (2000) 1361";

    public string Id => "pressure-test.hold";

    public string Phase => Phases.PressureTest;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PressureTest is not { } test)
            yield break;
        var run = context.Get<NitrogenRun>();
        var finding = context.Finding(this).Use("section under test", test.Section).Use("gas", test.Gas);
        if (run is not { Hold: { } hold, Rows: { } rows })
        {
            yield return finding.NotEvaluated("no hold is written", "Hold the nitrogen, and read pressure and pipe temperature at its start and its end.", "pressure test: {tightness: {from: {at: …, pressure: …, temperature: …}, to: {…}}}");
            yield break;
        }

        foreach (var reading in rows.Corrected)
            finding.Use(reading);
        foreach (var use in rows.Uses)
            finding.Use(use);
        foreach (var at in rows.At)
            finding.Use("time of a reading", at);
        finding.Use("settled", NitrogenRun.First(hold)?.Settled).Use("shaded", hold.Shaded).Use("oil in the circuit", test.OilInCircuit);
        if (test.Gas.Value is not (TestGas.DryNitrogen or TestGas.NitrogenWithTracer))
            yield return finding.NotEvaluated($"the hold is worked out for nitrogen, and {test.Gas.Text} was used", "Test with dry nitrogen.");
        else if (run.Loss is not { } loss)
            yield return finding.NotEvaluated(WithDrop(context, rows, run.WhyNot!), rows.Todo ?? "Check pressures and temperatures.", rows.InFile);
        else if (context.Limits.Find(LimitIds.PressureTestHoldLoss) is not { Upper: { } most } limit)
            yield return finding.Measure(loss.Loss, DisplayKind.Percentage).NotEvaluated(PressureTestMessages.HoldNoLimit(Drop(context, loss), context.Present.InMessage(loss.Loss, DisplayKind.Percentage)), "Name a limits pack.");
        else
            yield return Judge(context, run, Explained(context, finding, run, loss), loss, context.State(limit), most.Si);
    }

    private Finding Judge(CheckContext context, NitrogenRun run, FindingBuilder finding, NitrogenLoss loss, LimitStatement limit, double allowed)
    {
        var present = context.Present;
        var measured = present.Text(loss.Loss, DisplayKind.Percentage);
        var smallest = present.Text(loss.SmallestDetectable, DisplayKind.Percentage);
        var verdict = loss.Judge(allowed);
        if (verdict == NitrogenVerdict.TemperatureOrGauge)
        {
            return finding.Measure(loss.Loss, DisplayKind.Percentage).Show(limit).NotEvaluated(
                PressureTestMessages.HoldGrew(present.InMessage(-loss.Loss.Value, DisplayKind.Percentage), present.InMessage(-loss.CorrectedDrop, DisplayKind.PressureDifference)), PressureTestMessages.HoldGrewNext);
        }

        // What is lost beyond doubt fails however wide the doubt is; what is not cannot be told from what is allowed.
        if (verdict != NitrogenVerdict.Lost && loss.Loss.Expanded >= allowed)
        {
            return finding.Measure(loss.Loss, DisplayKind.Percentage).Show(limit).CannotDecide(
                PressureTestMessages.HoldCannotShow(Drop(context, loss), present.InMessage(loss.Loss, DisplayKind.Percentage), present.InMessage(allowed, DisplayKind.Percentage), new(loss.Loss.Budget[0].Cause.Name)),
                PressureTestMessages.HoldCannotShowNext);
        }

        finding.Judge(loss.Loss, DisplayKind.Percentage, limit);
        var reservations = Reservations(run).ToList();
        foreach (var reservation in reservations)
            finding.Reserve(reservation);
        finding.Remark(loss.LossShown && finding.Passes ? $"A loss is shown, within what is allowed: {present.Text(loss.CorrectedDrop, DisplayKind.PressureDifference)}." : null);
        finding.Remark(run.Course?.LooksLikeSettling == true ? "The loss fell in the first half of the hold alone: gas still cooling from filling, or taken up by oil, looks like this." : null);
        if (run.Test is { } test && (test.OilInCircuit?.Value ?? test.Section?.Value is CircuitSection.WholeSystem or CircuitSection.Outdoor or CircuitSection.HighSide))
            finding.Remark("Oil in the section takes up nitrogen: a small loss in the first hour may be that.");
        var length = EvacuationClock.Span(run.Rows!.Length);
        if (finding.Passes)
        {
            if (reservations.Count > 0)
                finding.Next("Write how long the gas had settled, where the temperature was read, and the accuracy of gauge and thermometer.");
            return finding.Say(loss.LossShown
                ? $"{measured} lost in {length} after temperature is taken out."
                : $"No loss shown in {length}: {measured} after temperature is taken out; the hold would have shown {smallest}.").Build();
        }

        return finding.Say(PressureTestMessages.HoldLost(Drop(context, loss), present.InMessage(loss.Loss, DisplayKind.Percentage), new(run.Rows!.Length))).Next(this.WhenItFails()).Build();
    }

    private static QuantityValue Drop(CheckContext context, NitrogenLoss loss) => context.Present.InMessage(loss.CorrectedDrop, DisplayKind.PressureDifference);

    // Without temperatures there is no loss, and still the crew reads what its gauge did.
    private static Message WithDrop(CheckContext context, NitrogenRows rows, string why)
    {
        if (rows.Pressures is not [var first, .., var last])
            return why;
        return PressureTestMessages.HoldRawDrop(why, context.Present.InMessage(first - last, DisplayKind.PressureDifference), context.Present.InMessage((first - last) / first, DisplayKind.Percentage));
    }

    private static FindingBuilder Explained(CheckContext context, FindingBuilder finding, NitrogenRun run, NitrogenLoss loss)
    {
        var present = context.Present;
        var (start, end) = (loss.Start, loss.End);
        foreach (var (index, reading) in new[] { (1, start), (2, end) })
        {
            finding.Step(
                index == 1 ? "ρ₁" : "ρ₂", index == 1 ? "density at the start" : "density at the end", "ρ(p, T)",
                $"{present.Text(reading.Absolute, DisplayKind.AbsolutePressure, 2)}, {present.Text(reading.Temperature, DisplayKind.Temperature)}",
                present.Text(NitrogenRun.Density(reading.Temperature, reading.Absolute) ?? double.NaN, DisplayKind.Density, 3), Span2000);
        }

        finding.Step("L", "loss", "1 − ρ₂/ρ₁", "", present.Text(loss.Loss, DisplayKind.Percentage));
        finding.Step("L_i", "the same by the ideal-gas law, for comparison", "1 − p₂·T₁/(p₁·T₂)", "", present.Text(loss.IdealLoss, DisplayKind.Percentage, 2));
        finding.Step(
            "p′₂", "pressure at the end, referred to the temperature at the start", "ρ(p′₂, T₁) = ρ(p₂, T₂)", $"{present.Text(end.Gauge, DisplayKind.Pressure)} at {present.Text(end.Temperature, DisplayKind.Temperature)}",
            present.Text(loss.ReferredPressure - start.Atmosphere, DisplayKind.Pressure), Span2000);
        finding.Step(
            "S", "what moves it", "∂p/∂T at constant density", $"at {present.Text(start.Gauge, DisplayKind.Pressure)}",
            $"{present.Text(-loss.PerKelvin / loss.PerPascal * context.Present.Units[DisplayKind.TemperatureDifference].Unit.Factor, DisplayKind.PressureDifference, 2)} per {present.Unit(DisplayKind.TemperatureDifference)}", Span2000);
        finding.Step("L_d", "smallest loss that this hold shows nineteen times in twenty", "3.29 · u", "", present.Text(loss.SmallestDetectable, DisplayKind.Percentage, 2), "ISO 11843-1 (from memory)");
        if (Refrigerant(context, run, loss) is { } leak)
        {
            foreach (var use in SectionVolume.Of(context, run.Test!.Section).Uses)
                finding.Use(use);
            finding.Use("refrigerant", context.Job.Equipment.Refrigerant).Step("ṁ_d", "as refrigerant vapour out of the same hole", "viscous, Q in proportion to (p² − p_atm²)/η", $"{present.Text(loss.SmallestDetectable, DisplayKind.Percentage, 2)} in {EvacuationClock.Span(run.Rows!.Length)}", leak, $"viscous flow, EN 1779 (from memory); {VaporViscosity.Source}");
        }

        if (context.Get<SiteAtmosphere>() is { } site && !run.Rows!.AreAbsolute)
        {
            foreach (var use in site.Uses)
                finding.Use(use);
        }

        return finding;
    }

    // Tells what no pressure gauge can: that the hold is no leak search.
    private static string? Refrigerant(CheckContext context, NitrogenRun run, NitrogenLoss loss)
    {
        const double room = ConversionFactors.CelsiusZero + 20;
        var refrigerant = context.Get<CircuitRefrigerant>();
        if (SectionVolume.Of(context, run.Test!.Section).Value is not { } volume || refrigerant is not { Fluid: { } fluid, Info: { } info } || !(run.Rows!.Length > 0)
            || VaporViscosity.Of(info) is not { } viscosity || fluid.DewAtTemperature(room) is not { Ok: true, Value: var dew })
        {
            return null;
        }

        var air = loss.Start.Atmosphere;
        var lost = loss.SmallestDetectable * loss.Start.Absolute * volume.Value / run.Rows.Length;
        var flow = lost * VaporViscosity.Nitrogen / viscosity * ((dew.Pressure * dew.Pressure) - (air * air)) / ((loss.Start.Absolute * loss.Start.Absolute) - (air * air));
        var perYear = LeakRate.MassFlow(flow, fluid.MolarMass, room) * ConversionFactors.Year;
        return perYear >= 1
            ? string.Create(CultureInfo.InvariantCulture, $"of the order of {(perYear < 10 ? Math.Round(perYear, 1) : Math.Round(perYear)):0.#} kg/yr")
            : string.Create(CultureInfo.InvariantCulture, $"of the order of {perYear * 1000:0} g/yr");
    }

    private static IEnumerable<string> Reservations(NitrogenRun run)
    {
        if (!run.Rows!.AccuracyKnown)
            yield return "the accuracy of the gauge or the thermometer is not written, so U is too small";
        if (NitrogenRun.First(run.Hold!)?.Settled is null && run.Test!.Started is null)
            yield return "how long the gas had settled after filling is not written";
        if (run.Hold!.Shaded?.Value == false)
            yield return "the temperature was read in the sun";
        if (run.Hold.TemperatureTaken?.Value == TemperaturePlace.Air)
            yield return "the temperature was read in the air and not on the pipe";
    }
}
