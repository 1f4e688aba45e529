using Commission.Measurement.Thermocouples;
using Commission.Measurement.Uncertainty;

namespace Commission.Measurement.Corrections;

/// <summary>A sensor put in ice water. What it showed too much is taken off every reading; what remains is the bath at that point and, for a thermocouple, a part of the distance from it. Made once for a sensor.</summary>
public sealed class IcePointCheck
{
    /// <summary>Temperature of an ice bath, K. Altitude moves it by less than 0.005 K.</summary>
    public const double IcePoint = 273.15;

    /// <summary>How far a field bath may be from it, K, rectangular.</summary>
    public const double BathHalfWidth = 0.05;

    /// <summary>How much a cold junction follows the instrument's own temperature, K for each K, rectangular. Common practice and memory.</summary>
    public const double ColdJunctionDrift = 0.03;

    private readonly string name;
    private readonly Uncertain residual;
    private readonly RootCause? wire;
    private readonly RootCause? coldJunction;

    /// <summary>An ice point check.</summary>
    /// <param name="name">The sensor, for the budget.</param>
    /// <param name="shown">What it shows in the bath as it is now used, K: after an adjustment the adjusted reading, else the reading.</param>
    /// <param name="resolution">One step of its indication, K; nothing when unknown.</param>
    /// <param name="thermocouple">Class of a type K thermocouple; nothing for another sensor, whose own accuracy stays with its readings.</param>
    public IcePointCheck(string name, double shown, double? resolution, ToleranceClass? thermocouple)
    {
        this.name = name;
        var bath = RootCause.FromHalfWidth($"{name}: ice bath", "field bath ±0.05 K", BathHalfWidth);
        residual = resolution is { } step
            ? Uncertain.From(shown - IcePoint, bath, RootCause.FromResolution($"{name}: reading in ice", "smallest step of the indication", step))
            : Uncertain.From(shown - IcePoint, bath);
        if (thermocouple is not { } toleranceClass)
            return;
        wire = RootCause.FromHalfWidth($"{name}: wire away from the ice point", "tolerance class, as a part of the distance", TypeKTolerance.Slope(toleranceClass), kind: CauseKind.ShareOfDistance);
        coldJunction = RootCause.FromHalfWidth($"{name}: cold junction", "0.03 K for each K of the instrument, common practice", ColdJunctionDrift, kind: CauseKind.ColdJunction);
    }

    /// <summary>What the sensor shows too much at the ice point, K.</summary>
    public double Residual => residual.Value;

    /// <summary>Corrects a reading.</summary>
    /// <param name="scope">The scope of the computation.</param>
    /// <param name="reading">The reading, K, with its resolution and, unless it is a thermocouple, its accuracy.</param>
    /// <param name="print">How numbers are written.</param>
    /// <param name="instrumentWarming">Change of the instrument's own temperature since the check, K; zero when it stayed in place.</param>
    public Corrected Correct(IUncertaintyScope scope, Uncertain reading, CorrectionPrinter print, double instrumentWarming = 0)
    {
        var after = reading - scope.Input(residual);
        if (wire is not null)
            after += scope.Reading(0, wire) * (reading.Value - residual.Value - IcePoint);
        if (coldJunction is not null)
            after += scope.Reading(0, coldJunction) * instrumentWarming;
        return Corrected.Of(reading, after, CorrectionKind.IcePoint, $"{name} showed {print.Difference(Residual)} too much in ice: {print.Value(reading.Value)} becomes {print.Value(after.Value)}.");
    }
}
