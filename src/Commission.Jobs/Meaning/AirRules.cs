using Commission.Jobs.Model.Words;

namespace Commission.Jobs.Meaning;

/// <summary>Fan tables rise, and an air flow comes with what its method needs.</summary>
internal static class AirRules
{
    public static void Check(RuleContext context)
    {
        if (context.Job.Air is not { } air) return;
        for (var i = 1; i < (air.FanTable?.Points.Length ?? 0); i++)
        {
            var (last, point) = (air.FanTable!.Points[i - 1], air.FanTable.Points[i]);
            if (point.Static is { } now && last.Static is { } before && now.Value.Si <= before.Value.Si)
                context.Complain(now, $"{now.Text} does not come after {before.Text}.", "The static pressures of a fan table rise.", "Sort the points.", "chart");
        }

        if (air.Airflow is not { Method: { } method } flow) return;
        var (missing, key) = method.Value switch
        {
            AirflowMethod.HeatRise when flow.HeatRise is null => (true, "heat rise: with its input, return and supply temperature"),
            AirflowMethod.Traverse when flow.Traverse is null && flow.Value is null => (true, "traverse: with its area and velocities"),
            AirflowMethod.Hood when flow.Hood.Length == 0 && flow.Value is null => (true, "hood: with its readings"),
            AirflowMethod.FanTable when air.FanTable is null => (true, "fan table: under air, with its points"),
            AirflowMethod.PressureDrop or AirflowMethod.UnitDisplay when flow.Value is null => (true, "value: and the air flow"),
            _ => (false, ""),
        };
        if (missing) context.Complain(method, $"The air flow by \"{method.Text}\" has no readings.", "", $"Write {key}.", "missing-key");
        if (flow.HeatRise is { } heat && heat is { Input: null, Output: null } && (heat.Volts is null || heat.Amps is null))
            context.Problems.Add(heat.Origin, "The heat of the heat-rise test is not known.", "", "Write input, or volts and amps, or output.", "missing-key");
    }
}
