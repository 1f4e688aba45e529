using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Fluids.Air;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Circuit;

/// <summary>A wet bulb as it was read, or worked out from relative humidity, dry bulb and the site's pressure.</summary>
internal static class WetBulbReading
{
    /// <summary>The wet bulb.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="name">What it is, with its time.</param>
    /// <param name="reading">Which air it is.</param>
    /// <param name="wetBulb">The wet bulb, where it was read.</param>
    /// <param name="humidity">The relative humidity, where it was read.</param>
    /// <param name="dryBulb">The dry bulb beside it.</param>
    /// <returns>The wet bulb; null when neither was read, or the air they describe does not exist.</returns>
    public static CorrectedReading? Of(
        CheckContext context, string name, ReadingName reading, Given<Temperature>? wetBulb, Given<Ratio>? humidity, CorrectedReading? dryBulb)
    {
        if (wetBulb is not null)
            return context.Readings.Temperature(name, new SensorPlace(reading, IsWet: true), wetBulb);
        if (humidity is null || dryBulb is null)
            return null;
        var atmosphere = context.Get<SiteAtmosphere>();
        var moisture = Humidity(context, context.Present.Text(CircuitMessages.HumidityFor(new(name))), reading, humidity);
        static double WetBulb(double t, double rh, double p) =>
            MoistAir.FromRelativeHumidity(t, rh, p) is { Ok: true, Value: var air } ? air.WetBulb : double.NaN;
        var value = Uncertain.Apply(WetBulb, dryBulb.Value, moisture.Value, atmosphere.Value);
        if (!double.IsFinite(value.Value) || !double.IsFinite(value.StandardUncertainty))
            return null;
        var present = context.Present;
        return new CorrectedReading
        {
            Name = name,
            Value = value,
            AfterZero = WetBulb(dryBulb.AfterZero, moisture.AfterZero, atmosphere.Value.Value),
            Uses = [.. dryBulb.Uses, .. moisture.Uses, .. atmosphere.Uses],
            Steps =
            [
                .. dryBulb.Steps,
                atmosphere.Step,
                new TraceStep(
                    "T_wb", name, present.Text(CircuitMessages.WetBulbFormula),
                    $"{present.Text(dryBulb.Value.Value, DisplayKind.Temperature)}, {present.Text(moisture.Value.Value, DisplayKind.Percentage)}, {present.Text(atmosphere.Value.Value, DisplayKind.AbsolutePressure)}",
                    present.Text(value, DisplayKind.Temperature), present.Text(CircuitMessages.WetBulbSource)),
            ],
            Instrument = moisture.Instrument,
            AccuracyKnown = dryBulb.AccuracyKnown && moisture.AccuracyKnown,
        };
    }

    private static CorrectedReading Humidity(CheckContext context, string name, ReadingName reading, Given<Ratio> given)
    {
        var instrument = context.Get<InstrumentKit>().For(reading, []);
        var terms = new List<RootTerm>();
        var known = true;
        if (given.Stated is { } stated)
        {
            terms.Add(context.Causes.Enter(
                Written.AsStated(name, stated),
                DisplayKind.Percentage));
        }
        else
        {
            if (instrument?.HumidityAccuracy(given.Value.Si, reading) is { } accuracy)
                terms.AddRange(accuracy);
            else
                known = false;
            if (given.Step is { } step and > 0)
                terms.Add(context.Causes.Enter(RootCause.FromResolution(KernelMessages.Resolution(new(name)), CorrectionsMessages.SmallestStep, step), DisplayKind.Percentage));
        }

        return new CorrectedReading
        {
            Name = name,
            Value = context.Scope.Reading(given.Value.Si, [.. terms]),
            AfterZero = given.Value.Si,
            Uses = [given.Use(name, instrument?.Id)],
            Instrument = instrument?.Id,
            AccuracyKnown = known,
        };
    }
}
