using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.NitrogenAnalysis;
using Commission.Checks.Wording;
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
        var finding = context.Finding(this).Use(PressureTestMessages.ReadingSection, test.Section).Use(PressureTestMessages.ReadingHoldGas, test.Gas);
        if (run is not { Hold: { } hold, Rows: { } rows })
        {
            yield return finding.NotEvaluated(PressureTestMessages.HoldNotWritten, PressureTestMessages.HoldNotWrittenNext, "pressure test: {tightness: {from: {at: …, pressure: …, temperature: …}, to: {…}}}");
            yield break;
        }

        foreach (var reading in rows.Corrected)
            finding.Use(reading);
        foreach (var use in rows.Uses)
            finding.Use(use);
        foreach (var at in rows.At)
            finding.Use(PressureTestMessages.ReadingTime, at);
        finding.Use(PressureTestMessages.ReadingSettled, NitrogenRun.First(hold)?.Settled).Use(PressureTestMessages.ReadingShaded, hold.Shaded).Use(PressureTestMessages.ReadingOil, test.OilInCircuit);
        if (test.Gas.Value is not (TestGas.DryNitrogen or TestGas.NitrogenWithTracer))
            yield return finding.NotEvaluated(PressureTestMessages.HoldOtherGas(new(test.Gas.Text)), PressureTestMessages.HoldOtherGasNext);
        else if (run.Loss is not { } loss)
            yield return finding.NotEvaluated(WithDrop(context, rows, run.WhyNot!), rows.Todo ?? PressureTestMessages.HoldNoLossNext, rows.InFile);
        else if (context.Limits.Find(LimitIds.PressureTestHoldLoss) is not { Upper: { } most } limit)
            yield return finding.Measure(loss.Loss, DisplayKind.Percentage).NotEvaluated(PressureTestMessages.HoldNoLimit(Drop(context, loss), context.Present.InMessage(loss.Loss, DisplayKind.Percentage)), CommonMessages.NameAPackNext);
        else
            yield return Judge(context, run, Explained(context, finding, run, loss), loss, context.State(limit), most.Si);
    }

    private Finding Judge(CheckContext context, NitrogenRun run, FindingBuilder finding, NitrogenLoss loss, LimitStatement limit, double allowed)
    {
        var present = context.Present;
        var measured = present.InMessage(loss.Loss, DisplayKind.Percentage);
        var smallest = present.InMessage(loss.SmallestDetectable, DisplayKind.Percentage);
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
                PressureTestMessages.HoldCannotShow(Drop(context, loss), present.InMessage(loss.Loss, DisplayKind.Percentage), present.InMessage(allowed, DisplayKind.Percentage), loss.Loss.Budget[0].Cause.Name),
                PressureTestMessages.HoldCannotShowNext);
        }

        finding.Judge(loss.Loss, DisplayKind.Percentage, limit);
        var reservations = Reservations(run).ToList();
        foreach (var reservation in reservations)
            finding.Reserve(reservation);
        finding.Remark(loss.LossShown && finding.Passes ? PressureTestMessages.HoldLossShown(Drop(context, loss)) : null);
        finding.Remark(run.Course?.LooksLikeSettling == true ? PressureTestMessages.HoldLooksLikeSettling : null);
        if (run.Test is { } test && (test.OilInCircuit?.Value ?? test.Section?.Value is CircuitSection.WholeSystem or CircuitSection.Outdoor or CircuitSection.HighSide))
            finding.Remark(PressureTestMessages.HoldOilTakesUp);
        var length = new DurationValue(run.Rows!.Length);
        if (finding.Passes)
        {
            if (reservations.Count > 0)
                finding.Next(PressureTestMessages.HoldReservedNext);
            return finding.Say(loss.LossShown
                ? PressureTestMessages.HoldWithin(measured, length)
                : PressureTestMessages.HoldNoLoss(length, measured, smallest)).Build();
        }

        return finding.Say(PressureTestMessages.HoldLost(Drop(context, loss), present.InMessage(loss.Loss, DisplayKind.Percentage), new(run.Rows!.Length))).Next(this.WhenItFails()).Build();
    }

    private static QuantityValue Drop(CheckContext context, NitrogenLoss loss) => context.Present.InMessage(loss.CorrectedDrop, DisplayKind.PressureDifference);

    // Without temperatures there is no loss, and still the crew reads what its gauge did.
    private static Message WithDrop(CheckContext context, NitrogenRows rows, Message why)
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
                index == 1 ? "ρ₁" : "ρ₂", index == 1 ? PressureTestMessages.StepDensityStart : PressureTestMessages.StepDensityEnd, "ρ(p, T)",
                $"{present.Text(reading.Absolute, DisplayKind.AbsolutePressure, 2)}, {present.Text(reading.Temperature, DisplayKind.Temperature)}",
                present.Text(NitrogenRun.Density(reading.Temperature, reading.Absolute) ?? double.NaN, DisplayKind.Density, 3), Span2000);
        }

        finding.Step("L", PressureTestMessages.StepLoss, "1 − ρ₂/ρ₁", "", present.Text(loss.Loss, DisplayKind.Percentage));
        finding.Step("L_i", PressureTestMessages.StepIdealLoss, "1 − p₂·T₁/(p₁·T₂)", "", present.Text(loss.IdealLoss, DisplayKind.Percentage, 2));
        finding.Step(
            "p′₂", PressureTestMessages.StepReferred, "ρ(p′₂, T₁) = ρ(p₂, T₂)", PressureTestMessages.StepReferredNumbers(present.InMessage(end.Gauge, DisplayKind.Pressure), present.InMessage(end.Temperature, DisplayKind.Temperature)),
            present.Text(loss.ReferredPressure - start.Atmosphere, DisplayKind.Pressure), Span2000);
        finding.Step(
            "S", PressureTestMessages.StepPerDegree, PressureTestMessages.StepPerDegreeFormula, PressureTestMessages.StepPerDegreeNumbers(present.InMessage(start.Gauge, DisplayKind.Pressure)),
            PressureTestMessages.StepPerDegreeResult(present.Value(-loss.PerKelvin / loss.PerPascal * context.Present.Units[DisplayKind.TemperatureDifference].Unit.Factor, DisplayKind.PressureDifference, 2), new(present.Unit(DisplayKind.TemperatureDifference))), Span2000);
        finding.Step("L_d", PressureTestMessages.StepSmallest, "3.29 · u", "", present.Text(loss.SmallestDetectable, DisplayKind.Percentage, 2), Cited.FromMemory("ISO 11843-1"));
        if (Refrigerant(context, run, loss) is { } leak)
        {
            foreach (var use in SectionVolume.Of(context, run.Test!.Section).Uses)
                finding.Use(use);
            finding.Use(ReadingsMessages.Refrigerant, context.Job.Equipment.Refrigerant).Step("ṁ_d", PressureTestMessages.StepRefrigerant, PressureTestMessages.StepRefrigerantFormula, PressureTestMessages.StepRefrigerantNumbers(present.Value(loss.SmallestDetectable, DisplayKind.Percentage, 2), new(run.Rows!.Length)), leak, PressureTestMessages.StepRefrigerantSource(Cited.FromMemory("EN 1779"), VaporViscosity.Source));
        }

        if (context.Get<SiteAtmosphere>() is { } site && !run.Rows!.AreAbsolute)
        {
            foreach (var use in site.Uses)
                finding.Use(use);
        }

        return finding;
    }

    // Tells what no pressure gauge can: that the hold is no leak search.
    private static Message? Refrigerant(CheckContext context, NitrogenRun run, NitrogenLoss loss)
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
            ? PressureTestMessages.LeakOfOrderKilograms(new(perYear < 10 ? Math.Round(perYear, 1) : Math.Round(perYear), perYear < 10 && Math.Round(perYear, 1) % 1 != 0 ? 1 : 0))
            : PressureTestMessages.LeakOfOrderGrams(new(perYear * 1000, 0));
    }

    private static IEnumerable<Message> Reservations(NitrogenRun run)
    {
        if (!run.Rows!.AccuracyKnown)
            yield return PressureTestMessages.HoldAccuracyNotWritten;
        if (NitrogenRun.First(run.Hold!)?.Settled is null && run.Test!.Started is null)
            yield return PressureTestMessages.HoldSettledNotWritten;
        if (run.Hold!.Shaded?.Value == false)
            yield return PressureTestMessages.HoldInTheSun;
        if (run.Hold.TemperatureTaken?.Value == TemperaturePlace.Air)
            yield return PressureTestMessages.HoldInTheAir;
    }
}
