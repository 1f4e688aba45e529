using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Messages;
using Commission.Records.Findings;
using Commission.Source;
using MathNet.Numerics.Distributions;

namespace Commission.Checks.Evidence;

/// <summary>Every number of a job that was read off an instrument and typed, in the order of the work. What a log holds is not among them, nor what a plate or a manual says.</summary>
internal sealed class HandReadings : IAnalysis<HandReadings>
{
    private readonly ImmutableArray<HandReading>.Builder _all = ImmutableArray.CreateBuilder<HandReading>();

    private readonly Presentation _present;

    private HandReadings(Job job, Presentation present)
    {
        _present = present;
        Nitrogen(job.PressureTest);
        if (job.Recovery is { } recovery)
        {
            Add(ReadingsMessages.PressureAfterRecovery, "", ReadingName.Recovery, recovery.To, recovery.With);
            Scale(ReadingsMessages.RecoveryCylinder, recovery.Scale, recovery.With);
        }

        foreach (var level in job.Evacuation?.Levels ?? [])
            Add(ReadingsMessages.Vacuum, level.At.Text, ReadingName.Evacuation, level.Pressure, job.Evacuation!.With);
        foreach (var (weighing, i) in (job.Charging?.Scale ?? []).Select((w, i) => (w, i)))
            Scale(job.Charging!.Scale.Length == 1 ? ReadingsMessages.Scale : ReadingsMessages.ScaleNumbered(i + 1), weighing, job.Charging.With);
        Rows = [.. (job.AsFound?.Readings ?? []).Select(r => Row(true, r)), .. (job.Charging?.Readings ?? []).Select(r => Row(false, r))];
        if (job.Charging?.StandingTest is { } standing)
        {
            Add(ReadingsMessages.StandingLiquidPressure, "", ReadingName.LiquidPressure, standing.LiquidPressure, []);
            Add(ReadingsMessages.StandingLiquidLine, "", ReadingName.LiquidLine, standing.LiquidLine, []);
            Add(ReadingsMessages.StandingOutdoorDryBulb, "", ReadingName.OutdoorAir, standing.OutdoorDryBulb, []);
        }

        Electrical(job.Electrical);
        if (job.Air is { Static: { } pressures } air)
        {
            Add(ReadingsMessages.ReturnStatic, "", ReadingName.StaticPressure, pressures.Return, air.With);
            Add(ReadingsMessages.SupplyStatic, "", ReadingName.StaticPressure, pressures.Supply, air.With);
            Add(ReadingsMessages.ExternalStatic, "", ReadingName.StaticPressure, pressures.External, air.With);
        }

        Add(ReadingsMessages.FilterDrop, "", ReadingName.StaticPressure, job.Air?.FilterDrop, job.Air?.With ?? []);
        Add(ReadingsMessages.CoilDrop, "", ReadingName.StaticPressure, job.Air?.CoilDrop, job.Air?.With ?? []);
        All = _all.ToImmutable();
    }

    /// <summary>The readings.</summary>
    public ImmutableArray<HandReading> All { get; }

    /// <summary>Those of the running system, row by row: as found, then as left.</summary>
    public ImmutableArray<HandRow> Rows { get; }

    /// <inheritdoc/>
    public static HandReadings Create(CheckContext context) => new(context.Job, context.Present);

    private void Nitrogen(Jobs.Model.PressureTest? test)
    {
        if (test is null)
            return;
        foreach (var stage in test.Stages.Append(test.Strength).OfType<TestStage>())
            Add(ReadingsMessages.StagePressure, stage.At?.Text ?? "", ReadingName.PressureTest, stage.Pressure, test.With);
        if (test.Tightness is not { } hold)
            return;
        foreach (var point in new[] { hold.From }.Concat(hold.Readings).Append(hold.To).OfType<HoldPoint>())
        {
            Add(ReadingsMessages.TestPressure, point.At.Text, ReadingName.PressureTest, point.Pressure, test.With);
            foreach (var (temperature, i) in point.Temperature.Select((t, i) => (t, i)))
                Add(point.Temperature.Length == 1 ? ReadingsMessages.TestTemperature : ReadingsMessages.TestTemperatureNumbered(i + 1), point.At.Text, ReadingName.PressureTestTemperature, temperature, test.With);
        }
    }

    private void Electrical(Jobs.Model.Electrical? electrical)
    {
        if (electrical is null)
            return;
        foreach (var (voltage, i) in electrical.LineToLine.Select((v, i) => (v, i)))
            Add(ReadingsMessages.LineToLineNumbered(i + 1), "", ReadingName.Voltage, voltage, electrical.With);
        foreach (var (current, i) in electrical.Compressor.Select((a, i) => (a, i)))
            Add(ReadingsMessages.CompressorCurrentNumbered(i + 1), "", ReadingName.Current, current, electrical.With);
        Add(ReadingsMessages.OutdoorFanCurrent, "", ReadingName.Current, electrical.OutdoorFan, electrical.With);
        Add(ReadingsMessages.IndoorFanCurrent, "", ReadingName.Current, electrical.IndoorFan, electrical.With);
        Add(ReadingsMessages.TotalCurrent, "", ReadingName.Current, electrical.Total, electrical.With);
        Add(ReadingsMessages.AuxiliaryHeatCurrent, "", ReadingName.Current, electrical.AuxiliaryHeat, electrical.With);
        foreach (var (capacitor, i) in electrical.RunCapacitor.Select((c, i) => (c, i)))
            Add(ReadingsMessages.RunCapacitorNumbered(i + 1), "", ReadingName.Capacitance, capacitor.Read, electrical.With);
        Add(ReadingsMessages.VoltageBeforeStart, "", ReadingName.Voltage, electrical.VoltageDropAtStart?.Before, electrical.With);
        Add(ReadingsMessages.LowestVoltageAtStart, "", ReadingName.Voltage, electrical.VoltageDropAtStart?.Lowest, electrical.With);
        Add(ReadingsMessages.ControlVoltage, "", ReadingName.Voltage, electrical.ControlVoltage, electrical.With);
        Add(ReadingsMessages.InsulationResistance, "", ReadingName.Insulation, electrical.Insulation?.Read, electrical.With);
    }

    private void Scale(Message name, ScaleReading? weighing, ImmutableArray<Given<string>> with)
    {
        Add(ReadingsMessages.Before(name), "", ReadingName.Charge, weighing?.Before, with);
        Add(ReadingsMessages.After(name), "", ReadingName.Charge, weighing?.After, with);
    }

    private HandRow Row(bool isAsFound, Reading r)
    {
        var first = _all.Count;
        var time = isAsFound ? _present.Text(ReadingsMessages.AsFound(new(r.At.Text))) : r.At.Text;
        Add(ReadingsMessages.VaporPressure, time, ReadingName.VaporPressure, r.VaporPressure, []);
        Add(ReadingsMessages.LiquidPressure, time, ReadingName.LiquidPressure, r.LiquidPressure, []);
        Add(ReadingsMessages.TrueSuctionPressure, time, ReadingName.TrueSuctionPressure, r.TrueSuctionPressure, []);
        Add(ReadingsMessages.DischargePressure, time, ReadingName.DischargePressure, r.DischargePressure, []);
        Add(ReadingsMessages.VaporLine, time, ReadingName.VaporLine, r.VaporLine, []);
        Add(ReadingsMessages.LiquidLine, time, ReadingName.LiquidLine, r.LiquidLine, []);
        Add(ReadingsMessages.SuctionLineAtTheCompressor, time, ReadingName.CompressorSuctionLine, r.CompressorSuctionLine, []);
        Add(ReadingsMessages.DischargeLine, time, ReadingName.DischargeLine, r.DischargeLine, []);
        Add(ReadingsMessages.LiquidAfterTheDrier, time, ReadingName.LiquidAfterDrier, r.LiquidAfterDrier, []);
        Add(ReadingsMessages.EvaporatorOutlet, time, ReadingName.EvaporatorOutlet, r.EvaporatorOutlet, []);
        Add(ReadingsMessages.IndoorCoilOutlet, time, ReadingName.IndoorCoilOutlet, r.IndoorCoilOutlet, []);
        Add(ReadingsMessages.Sump, time, ReadingName.Sump, r.Sump, []);
        Add(ReadingsMessages.OutdoorDryBulb, time, ReadingName.OutdoorAir, r.OutdoorDryBulb, []);
        Add(ReadingsMessages.OutdoorWetBulb, time, ReadingName.OutdoorAir, r.OutdoorWetBulb, []);
        Add(ReadingsMessages.OutdoorHumidity, time, ReadingName.OutdoorAir, r.OutdoorHumidity, []);
        Add(ReadingsMessages.ReturnDryBulb, time, ReadingName.ReturnAir, r.ReturnDryBulb, []);
        Add(ReadingsMessages.ReturnWetBulb, time, ReadingName.ReturnAir, r.ReturnWetBulb, []);
        Add(ReadingsMessages.ReturnHumidity, time, ReadingName.ReturnAir, r.ReturnHumidity, []);
        Add(ReadingsMessages.SupplyDryBulb, time, ReadingName.SupplyAir, r.SupplyDryBulb, []);
        Add(ReadingsMessages.SupplyWetBulb, time, ReadingName.SupplyAir, r.SupplyWetBulb, []);
        Add(ReadingsMessages.SupplyHumidity, time, ReadingName.SupplyAir, r.SupplyHumidity, []);
        Add(ReadingsMessages.BoxTemperature, time, ReadingName.BoxTemperature, r.BoxTemperature, []);
        Add(ReadingsMessages.CompressorCurrent, time, ReadingName.Current, r.CompressorCurrent, []);
        return new HandRow(time, r.At.At.Line, r.At, [.. _all.Skip(first)]);
    }

    private void Add<T>(Message series, string time, ReadingName reading, Given<T>? given, ImmutableArray<Given<string>> with)
        where T : struct, IQuantity<T> => Add(series, time, reading, given, given?.Value.Si ?? 0, with);

    private void Add(Message series, string time, ReadingName reading, Given<StatedPressure>? given, ImmutableArray<Given<string>> with) =>
        Add(series, time, reading, given, given?.Value.Pascals ?? 0, with);

    private void Add<T>(Message series, string time, ReadingName reading, Given<T>? given, double si, ImmutableArray<Given<string>> with)
    {
        if (given is null)
            return;
        var name = _present.Text(time.Length == 0 ? series : ReadingsMessages.AtTime(series, new(time)));
        _all.Add(new HandReading(_present.Text(series), name, reading, with, given.At, given.Text, si, given.Step) { IsRatio = given is Given<Ratio> });
    }
}

/// <summary>A number that somebody read off an instrument and typed.</summary>
/// <param name="Series">What it is without its time: <c>vapor line</c>. Readings of one series follow each other in time.</param>
/// <param name="Name">What it is, with its time.</param>
/// <param name="Reading">Which reading, to find its instrument.</param>
/// <param name="With">Instruments the phase names.</param>
/// <param name="At">Where it is written.</param>
/// <param name="Text">How it is written.</param>
/// <param name="Si">The number in SI.</param>
/// <param name="Step">The smallest step the number shows, SI; null for a fraction or a compound.</param>
internal sealed record HandReading(
    string Series, string Name, ReadingName Reading, ImmutableArray<Given<string>> With, SourceLocation At, string Text, double Si, double? Step)
{
    /// <summary>Whether it is a ratio, as a relative humidity is.</summary>
    public bool IsRatio { get; init; }

    /// <summary>The reading as a finding names it.</summary>
    /// <param name="instrument">The instrument; null when the job names none.</param>
    public ReadingUse Use(string? instrument) => new(Name, Text, At, instrument);
}

/// <summary>Readings typed side by side at one time.</summary>
/// <param name="Name">When, in words.</param>
/// <param name="Line">Line of the job file.</param>
/// <param name="At">The time.</param>
/// <param name="Readings">The readings.</param>
internal sealed record HandRow(string Name, int Line, Given<JobTime> At, ImmutableArray<HandReading> Readings);

/// <summary>How probable it is that two readings of something that moves show the same digits.</summary>
internal static class Coincidence
{
    /// <summary>
    /// Probability that two readings are written alike: the difference of two normal values of standard deviation σ each, read with a step
    /// s whose position is random, P = ∫ (1 − |d|/s)⁺ φ(d; √2·σ) dd = 2·Φ(a) − 1 − 2·(φ(0) − φ(a))/a with a = s/(√2·σ).
    /// </summary>
    /// <param name="step">Smallest step of the number as written.</param>
    /// <param name="scatter">Standard deviation of the quantity from reading to reading, in the same unit.</param>
    /// <returns>Between 0 and 1; 1 when nothing moves.</returns>
    public static double OfEqualDigits(double step, double scatter)
    {
        if (!(scatter > 0))
            return 1;
        var a = step / (Math.Sqrt(2) * scatter);
        return (2 * Normal.CDF(0, 1, a)) - 1 - (2 * (Normal.PDF(0, 1, 0) - Normal.PDF(0, 1, a)) / a);
    }
}
