using System.Collections.Immutable;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Atmosphere;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Kernel;

/// <summary>
/// Atmospheric pressure at the site: a barometer read there, else the standard atmosphere at the elevation. The same root
/// cause enters every gauge reading, so differences of two gauges know that the weather is common to them.
/// </summary>
internal sealed class SiteAtmosphere : IAnalysis<SiteAtmosphere>
{
    private SiteAtmosphere(Uncertain value, ImmutableArray<ReadingUse> uses, TraceStep step, bool stated)
    {
        Value = value;
        Uses = uses;
        Step = step;
        IsStated = stated;
    }

    /// <summary>The pressure, Pa absolute.</summary>
    public Uncertain Value { get; }

    /// <summary>As a pressure without its uncertainty.</summary>
    public Pressure Pressure => Pressure.FromPascals(Value.Value);

    /// <summary>What the job says: barometer or elevation. Empty when it says neither and sea level is taken.</summary>
    public ImmutableArray<ReadingUse> Uses { get; }

    /// <summary>How the pressure was found.</summary>
    public TraceStep Step { get; }

    /// <summary>Whether the job states elevation or station pressure.</summary>
    public bool IsStated { get; }

    /// <inheritdoc/>
    public static SiteAtmosphere Create(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        var site = context.Job.Identity.Site;
        var present = context.Present;
        if (site.StationPressure is { } barometer)
        {
            var kit = context.Get<InstrumentKit>();
            var instrument = kit.For(ReadingName.StationPressure, []);
            var terms = new List<RootTerm>();
            if (barometer.Stated is { } stated)
            {
                terms.Add(1.0 * context.Causes.Enter(
                    RootCause.FromExpanded(KernelMessages.Barometer, Written.Behind(stated, KernelMessages.StatedBehindWhat.Reading), stated.HalfWidthSi, stated.CoverageFactor),
                    DisplayKind.PressureDifference));
            }
            else if (instrument?.HalfWidth(barometer.Value.Si) is { } half)
            {
                terms.AddRange(instrument.Accuracy(half, ReadingName.StationPressure));
            }
            else
            {
                // A barometer of unknown make still beats the standard atmosphere; half a hectopascal of its last digit is not all of it.
                terms.Add(1.0 * context.Causes.Enter(
                    RootCause.FromHalfWidth(KernelMessages.Barometer, KernelMessages.BarometerUnknown, context.Assume(LimitIds.AssumptionAtmosphereWeather) / 2),
                    DisplayKind.PressureDifference));
            }

            return new SiteAtmosphere(
                context.Scope.Reading(barometer.Value.Si, [.. terms]),
                [barometer.Use(present.Text(ReadingsMessages.StationPressure), instrument?.Id)],
                new TraceStep("p_atm", present.Text(KernelMessages.SiteAtmosphere), present.Text(KernelMessages.AsRead), barometer.Text, present.Text(barometer.Value.Si, DisplayKind.AbsolutePressure), present.Text(KernelMessages.AtTheSite)),
                stated: true);
        }

        var elevation = site.Elevation?.Value ?? Length.FromMeters(0);
        var pressure = StandardAtmosphere.At(elevation);
        var weather = context.Causes.Enter(
            new RootCause(KernelMessages.Weather, KernelMessages.WeatherSource, context.Assume(LimitIds.AssumptionAtmosphereWeather)),
            DisplayKind.PressureDifference);
        return new SiteAtmosphere(
            context.Scope.Reading(pressure.Si, 1.0 * weather),
            site.Elevation is { } e ? [e.Use(present.Text(KernelMessages.ElevationName))] : [],
            new TraceStep(
                "p_atm",
                present.Text(KernelMessages.SiteAtmosphere),
                present.Text(KernelMessages.InMetres(new("101 325 Pa · (1 − 2.25577·10⁻⁵ · h)^5.25588"))),
                present.Text(site.Elevation is null ? KernelMessages.SeaLevel : KernelMessages.Elevation(present.InMessage(elevation.Si, DisplayKind.Elevation))),
                present.Text(pressure.Si, DisplayKind.AbsolutePressure, 3),
                present.Text(KernelMessages.StandardAtmosphereSource)),
            stated: site.Elevation is not null);
    }
}
