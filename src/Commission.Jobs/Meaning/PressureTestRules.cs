using Commission.Jobs.Model;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Meaning;

/// <summary>Pressures and temperatures of the nitrogen test that cannot be.</summary>
internal static class PressureTestRules
{
    public static void Check(RuleContext context)
    {
        if (context.Job.PressureTest is not { } test) return;
        foreach (var stage in test.Stages.Append(test.Strength)) AboveAtmosphere(context, stage?.Pressure);
        if (test.Tightness is not { } hold) return;
        if (hold.From is null != hold.To is null)
        {
            context.Problems.Add(hold.Origin, $"The hold has {(hold.From is null ? "an end and no start" : "a start and no end")}.", "", $"Write {(hold.From is null ? "from" : "to")}: with its time, pressure and temperature.", "missing-key");
        }
        else if (hold is { From: null, Series: null, Readings.Length: < 2 })
        {
            context.Problems.Add(hold.Origin, "The hold has no readings.", "", "Write from: and to:, or a series.", "missing-key");
        }

        foreach (var point in hold.Readings.Append(hold.From).Append(hold.To))
        {
            if (point is null) continue;
            AboveAtmosphere(context, point.Pressure);
            if (point.Temperature.Length > 2)
                context.Complain(point.Temperature[2], "More than two temperatures are written for one moment.", "", "Write one or two.", "too-many");
            foreach (var temperature in point.Temperature) ReadingRules.Within(context, temperature, -60, 90, "nitrogen in a circuit");
        }
    }

    private static void AboveAtmosphere(RuleContext context, Given<StatedPressure>? pressure)
    {
        if (pressure is null) return;
        var gauge = pressure.Value.ToGauge(context.Atmosphere).Si;
        if (gauge <= 0)
            context.Complain(pressure, $"A pressure test at {pressure.Text} is not above the atmosphere.", "", "Check the number and the unit.", "impossible");
        else
            ReadingRules.NotTooHigh(context, pressure);
    }
}
