using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.VacuumAnalysis;
using Commission.Checks.Wording;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Evacuation;

/// <summary>The inflow behind the steady part of the rise, and what the same hole would let out of refrigerant, as a band. Information: no vacuum hold shows what a leak search has to show.</summary>
internal sealed class LeakRateCheck : ICheck
{
    private const double Hour = 3600;
    private const double RoomTemperature = ConversionFactors.CelsiusZero + 20;

    public string Id => "evacuation.leak-rate";

    public string Phase => Phases.Evacuation;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation)
            yield break;
        var run = context.Get<EvacuationRun>();
        var finding = run.Temperatures.NameIn(run.Name(context.Finding(this))).Use(VacuumHoldMessages.ReadingGaugePlace, evacuation.Gauge).Use(VacuumHoldMessages.ReadingIsolatedAt, evacuation.IsolatedAt).Use(VacuumHoldMessages.ReadingTarget, evacuation.Target)
            .Use(VacuumHoldMessages.ReadingDecayLimit, evacuation.DecayLimit?.Level);
        foreach (var level in evacuation.Levels)
            finding.Use(VacuumHoldMessages.ReadingIsolated(new(level.At.Text)), level.Isolated);
        if (run.Obstacle is { } block)
        {
            yield return finding.NotEvaluated(block.Why, block.Next);
            yield break;
        }

        // The mean rise stands for levels by hand, too few for a curve, not for a log whose curve gives none.
        if ((run.Slope ?? (run.Rows.Log is null ? run.MeanRise : null)) is not { } slope || run is not { AtIsolation: { } vacuum, Hold: { } hold, Parts: { Isolation: { } isolation, HoldEnd: { } end } })
        {
            yield return finding.NotEvaluated(EvacuationMessages.LeakRateNone, (run.Hold is { Blocks: > 0 } shown ? RiseCauseCheck.Wording(context, run).NextStep(shown) : null) ?? EvacuationMessages.LeakRateNoneNext);
            yield break;
        }

        run.Name(finding, isolation, end);
        var volume = SectionVolume.Of(context, evacuation.Section);
        if (volume.Value is not { } v)
        {
            yield return finding.Use(VacuumHoldMessages.ReadingSection, evacuation.Section).NotEvaluated(volume.WhyNot!, EvacuationMessages.LeakRateVolumeNext);
            yield break;
        }

        foreach (var use in volume.Uses)
            finding.Use(use);
        foreach (var step in volume.Steps)
            finding.Step(step);
        yield return Told(context, finding, run, slope, v, volume, vacuum.Value);
    }

    private static Finding Told(CheckContext context, FindingBuilder finding, EvacuationRun run, Uncertain slope, Uncertain volume, SectionVolume section, double vacuum)
    {
        var hold = run.Hold!;
        var present = context.Present;
        var inflow = LeakRate.Throughput(volume, slope);
        finding.Step(
            "Q", VacuumHoldMessages.LeakInflow, hold.Slope is null ? VacuumHoldMessages.LeakMeanFormula : "V · dp/dt", $"{present.Text(volume, DisplayKind.Volume)} · {present.Text(slope, DisplayKind.VacuumRise)}",
            $"{Throughput(context, inflow.Value)} (U {Throughput(context, inflow.Expanded)})", VacuumHoldMessages.LeakSource);
        finding.Measure(inflow, DisplayKind.Throughput);
        var steady = hold.Conclusion is HoldConclusion.SteadyRise or HoldConclusion.SteadyRiseAndSource;
        // A rise that is not shown bounds the inflow; its best estimate means nothing.
        var most = hold.Slope is { High: var high } && double.IsFinite(high) ? Math.Max(high * volume.Value, inflow.Value + inflow.Expanded) : inflow.Value + inflow.Expanded;
        var volumeIs = section.IsEstimated ? EvacuationMessages.LeakRateVolume.Estimated : EvacuationMessages.LeakRateVolume.Written;
        var words = EvacuationMessages.LeakRate(most > 0 ? steady ? EvacuationMessages.LeakRateSeen.Steady : EvacuationMessages.LeakRateSeen.Bound : EvacuationMessages.LeakRateSeen.Nothing, new(Throughput(context, most)), volumeIs);
        // A hole is given a loss of refrigerant only where a steady inflow is seen and the nitrogen does not speak against a hole.
        var witness = NitrogenWitness.Of(context, run, hold);
        if (witness is { SpeaksAgainstHole: true })
        {
            witness.NameIn(finding);
            finding.Remark(EvacuationMessages.LeakRateWitness);
        }

        var band = steady && most > 0 && witness is not { SpeaksAgainstHole: true } ? Band(context, finding, most, vacuum) : null;
        var smallest = Smallest(context, volume.Value, vacuum);
        if (smallest is { } least)
            NameGas(context, finding).Remark(least);
        return finding.Information(band is null ? words : EvacuationMessages.LeakRateAsRefrigerant(words, new(band)), EvacuationMessages.LeakRateKind);
    }

    private static string? Band(CheckContext context, FindingBuilder finding, double air, double vacuum)
    {
        if (Leak(context, air, vacuum) is not { } leak)
            return null;
        var refrigerant = context.Get<CircuitRefrigerant>();
        var text = leak.High - leak.Low < 0.1 * leak.High ? $"about {Rate(leak.High)}" : $"{Rate(leak.Low)} to {Rate(leak.High)}";
        NameGas(context, finding).Step(
            "ṁ_r", VacuumHoldMessages.LeakSameHole(new(refrigerant.Designation!)), leak.Flow switch
            {
                LeakFlow.Viscous => VacuumHoldMessages.LeakViscous,
                LeakFlow.Molecular => VacuumHoldMessages.LeakMolecular,
                _ => VacuumHoldMessages.LeakBetween,
            }, $"Q_a = {Throughput(context, air)}", text, CommonMessages.Several(new([Cited.FromMemory("EN 1779"), VaporViscosity.Source], ListJoin.Semicolons)));
        return text;
    }

    private static FindingBuilder NameGas(CheckContext context, FindingBuilder finding)
    {
        finding.Use(VacuumHoldMessages.ReadingRefrigerant, context.Job.Equipment.Refrigerant);
        foreach (var use in context.Get<SiteAtmosphere>().Uses)
            finding.Use(use);
        return finding;
    }

    // What the leak search is asked to see, as a rise in this volume: the reason why a vacuum proves no tightness.
    private static Message? Smallest(CheckContext context, double volume, double vacuum)
    {
        if (context.Limits.Find(LimitIds.PressureTestJointLeakCheckSensitivity)?.Upper is not { } asked || Leak(context, 1e-6, vacuum) is not { ViscousMassFlow: > 0 } unit)
            return null;
        var rise = asked.Si / unit.ViscousMassFlow * 1e-6 / volume;
        return EvacuationMessages.LeakRateSmallest(new(asked.Text), VacuumText.Value(context.Present, rise * Hour));
    }

    private static RefrigerantLeak? Leak(CheckContext context, double air, double vacuum)
    {
        var refrigerant = context.Get<CircuitRefrigerant>();
        if (refrigerant is not { Fluid: { } fluid, Info: { } info } || VaporViscosity.Of(info) is not { } viscosity || fluid.DewAtTemperature(RoomTemperature) is not { Ok: true, Value: var dew })
            return null;
        return RefrigerantLeak.From(air, context.Get<SiteAtmosphere>().Value.Value, vacuum, new(dew.Pressure, fluid.MolarMass, viscosity), RoomTemperature);
    }

    // Inflows span decades: two digits that count, and a power of ten where the point would stand far off.
    private static string Throughput(CheckContext context, double q)
    {
        var unit = context.Present.Units[DisplayKind.Throughput].Unit;
        var value = unit.FromSi(q);
        var power = value == 0 ? 0 : (int)Math.Floor(Math.Log10(Math.Abs(value)));
        return power is >= -3 and <= 2
            ? string.Create(CultureInfo.InvariantCulture, $"{value.ToString($"F{Math.Max(0, 1 - power)}", CultureInfo.InvariantCulture)} {unit.Symbol}")
            : string.Create(CultureInfo.InvariantCulture, $"{value / Math.Pow(10, power):0.0}·10{Superscript(power)} {unit.Symbol}");
    }

    private static string Superscript(int power) => string.Concat(power.ToString(CultureInfo.InvariantCulture).Select(c => c == '-' ? '⁻' : "⁰¹²³⁴⁵⁶⁷⁸⁹"[c - '0']));

    private static string Rate(double kilogramsPerSecond)
    {
        var grams = kilogramsPerSecond * 1000 * ConversionFactors.Year;
        return grams >= 1000
            ? string.Create(CultureInfo.InvariantCulture, $"{Two(grams / 1000)} kg/yr")
            : string.Create(CultureInfo.InvariantCulture, $"{Two(grams)} g/yr");
    }

    private static string Two(double value)
    {
        if (!(value > 0))
            return "0";
        var decimals = Math.Max(0, 1 - (int)Math.Floor(Math.Log10(value)));
        var scale = Math.Pow(10, 1 - Math.Floor(Math.Log10(value)));
        return (Math.Round(value * scale) / scale).ToString($"F{Math.Min(decimals, 9)}", CultureInfo.InvariantCulture);
    }
}
