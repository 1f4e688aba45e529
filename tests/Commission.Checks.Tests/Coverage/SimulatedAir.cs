using System.Globalization;
using Commission.Checks.Air;
using Commission.Checks.AirReadings;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;

namespace Commission.Checks.Tests.Coverage;

/// <summary>
/// The air side of a job as a crew reads it: split, capacity, and the airflow by every route the program knows (fan table, heat rise, traverse, hood).
/// Dry and wet bulb are two sensors with everything of their own; return and supply are two places of one probe, or two probes.
/// </summary>
internal sealed class SimulatedAir
{
    public const string Split = "air split";
    public const string SplitLessTarget = "air split − target";
    public const string Capacity = "air-side capacity";
    public const string FlowBy = "airflow by ";

    private const string Dry = "dry";
    private const string Wet = "wet";

    private readonly AirWorld _world;
    private readonly string _method;
    private readonly string _accuracy;

    private SimulatedAir(AirWorld world, string method, string accuracy) => (_world, _method, _accuracy) = (world, method, accuracy);

    /// <summary>Entries under instruments.</summary>
    public string Instruments { get; private init; } = "";

    /// <summary>The readings of the running system.</summary>
    public string Readings { get; private init; } = "";

    /// <summary>What stands under air.</summary>
    public string AirSide { get; private init; } = "";

    public static SimulatedAir Draw(Draws draws, ErrorModel model, FieldKit kit, bool us, AirWorld world)
    {
        var probe = kit.Simple(
            "air probe", "psychrometer", "outdoor air, return air, supply air",
            us ? draws.Pick(("0.5 °F", 0, 0.5 / 1.8), ("0.9 °F", 0, 0.5), ("1.5 °F", 0, 1.5 / 1.8)) : draws.Pick(("0.3 K", 0, 0.3), ("0.5 K", 0, 0.5), ("0.8 K", 0.0, 0.8)),
            us ? Display.Fahrenheit(0.1) : Display.Celsius(0.1), 0);
        string Air(string place, double kelvin, string bulb = Dry) => probe.Of.Read(place, kelvin, model == ErrorModel.TwoProbes ? $"{bulb}, {place}" : bulb);
        var method = draws.Pick("fan table", "traverse", "hood", "heat rise");
        var (fan, manometer) = FanTable(draws, kit, us, world);
        var (heat, meters) = HeatRise(draws, kit, world, Air);
        var (traverse, vane) = Traverse(draws, kit, us, world);
        var (hood, cone) = Hood(draws, kit, us, world);
        return new SimulatedAir(world, method, probe.Accuracy)
        {
            Instruments = string.Concat(new[] { probe.Line, manometer, vane, cone }.Concat(meters).Select(l => $"  - {l}\n")).TrimEnd('\n'),
            Readings = $"outdoor dry bulb: {Air("outdoor", world.Outdoor)}, return dry bulb: {Air("return", world.Return)}, return wet bulb: {Air("return", world.ReturnWet, Wet)}, {Supply(probe.Of, world, model)}",
            AirSide = $"{fan}, {heat.Beside}airflow: {{method: {method}, heat rise: {heat.Test}, traverse: {traverse}, hood: [{hood}]}}",
        };
    }

    /// <summary>Holds split, capacity and every airflow against the truth.</summary>
    public void Judge(CheckContext context, ChargeRow row, List<Outcome> outcomes, List<Forecast> forecasts)
    {
        (string, double)[] drivers = [("true split, K", _world.Split), ("return wet bulb, °C", _world.ReturnWet - 273.15)];
        (string, string)[] kinds = [("air probe is", _accuracy)];
        var split = row.ReturnDryBulb!.Value - row.SupplyDryBulb!.Value;
        outcomes.Add(CircuitJobs.Of(Split, _world.Split, split, drivers, kinds));
        if (SplitTarget.Of(context, row).Target is { } moving)
        {
            outcomes.Add(CircuitJobs.Of(SplitLessTarget, _world.Split - _world.SplitTarget, split - moving, drivers, kinds));
            CircuitJobs.AddForecast(context, "air.temperature-split", SplitLessTarget, _world.Split - _world.SplitTarget, forecasts);
        }

        if (context.Get<AirCapacity>().Total is { } total)
            outcomes.Add(CircuitJobs.Of(Capacity, _world.Capacity, total, [("true capacity, W", _world.Capacity), .. drivers], [("airflow by", _method), .. kinds]));
        var routes = context.Get<AirflowRoutes>();
        foreach (var route in routes.Others.Prepend(routes.Chosen!))
        {
            if (route.Value is { } flow)
                outcomes.Add(CircuitJobs.Of(FlowBy + Word(route.Method), route.Method == AirflowMethod.Hood ? _world.SupplyFlow : _world.Flow, flow, [("true airflow, m³/s", _world.Flow)], kinds));
        }
    }

    // A wet bulb above the dry bulb is refused by the reader, and a crew that saw it would not write it: that job then has no capacity.
    private static string Supply(SimulatedInstrument probe, AirWorld world, ErrorModel model)
    {
        string Sensor(string bulb) => model == ErrorModel.TwoProbes ? $"{bulb}, supply" : bulb;
        var (dry, wet) = (probe.Raw("supply", world.Supply, Sensor(Dry)), probe.Raw("supply", world.SupplyWet, Sensor(Wet)));
        var display = probe.Display;
        var text = $"supply dry bulb: {display.Text(dry)}";
        return display.Rounded(wet) <= display.Rounded(dry) ? $"{text}, supply wet bulb: {display.Text(wet)}" : text;
    }

    private static string Word(AirflowMethod method) => method switch
    {
        AirflowMethod.FanTable => "fan table",
        AirflowMethod.HeatRise => "heat rise",
        AirflowMethod.Traverse => "traverse",
        _ => "hood",
    };

    /// <summary>The blower keeps to its maker's table within what the pack assumes of one blower; the table is printed to 10 cfm or 10 m³/h.</summary>
    private static (string Text, string Instrument) FanTable(Draws draws, FieldKit kit, bool us, AirWorld world)
    {
        var inch = new Display("inwc", Display.InchOfWater, 0, draws.Pick(0.01, 0.001));
        var pascal = new Display("Pa", 1, 0, draws.Pick(0.1, 1));
        var display = us ? inch : pascal;
        var manometer = kit.Simple("manometer", "manometer", "static pressure", us ? ("0.01 inwc", 0, 0.01 * Display.InchOfWater) : ("1 % of reading + 2 Pa", 0.01, 2), display, 2 * Display.InchOfWater);

        // A falling curve through the true point, as a forward-curved blower's: about − 10 % of flow for 50 Pa (typical of tables, from memory).
        var total = draws.Uniform(70, 170);
        var onReturn = total * draws.Uniform(0.35, 0.6);
        var own = 1 + BlowerSpread.Value * draws.Either();
        var fall = draws.Uniform(0.0012, 0.003);
        double Table(double pa) => world.Flow / own * (1 - fall * (pa - total) - 4e-6 * (pa * pa - total * total));
        var flow = us ? new Display("cfm", Display.CubicFootPerMinute, 0, 10) : new Display("m³/h", 1.0 / 3600, 0, 10);
        var step = us ? 0.1 * Display.InchOfWater : 25;
        var printed = us ? inch with { Step = 0.1 } : pascal with { Step = 1 };
        var points = Enumerable.Range(1, us ? 10 : 9).Select(i => i * step).Select(pa => $"{{static: {printed.Text(pa)}, airflow: {flow.Text(Table(pa))}}}");
        return ($"static: {{return: {manometer.Of.Read("return tap", -onReturn)}, supply: {manometer.Of.Read("supply tap", total - onReturn)}}}, fan table: {{from: manual p. 8, points: [{string.Join(", ", points)}]}}", manometer.Line);
    }

    private static readonly Lazy<double> BlowerSpread = new(() => JobText.Context(JobLines.Of()).Assume(LimitIds.AssumptionAirflowFanTable));

    /// <summary>Strip heat and, in the air with it, all the power of the blower: 0.3 to 0.5 W for each cfm (published default 0.365 W/cfm of furnace test methods, from memory), written in half of the jobs.</summary>
    private static ((string Test, string Beside) Heat, string[] Instruments) HeatRise(Draws draws, FieldKit kit, AirWorld world, Func<string, double, string, string> air)
    {
        var blower = draws.Uniform(0.3, 0.5) * world.Flow / Display.CubicFootPerMinute;
        var heater = Math.Round(draws.Uniform(14, 26) * world.Flow / 0.5) * 500;
        var entering = 273.15 + draws.Uniform(17, 23);
        var leaving = entering + world.Rise(heater + blower, entering, draws.Uniform(0.25, 0.5));
        var beside = draws.Chance(0.5) ? $"blower power: {new Display("W", 1, 0, 10).Text(blower)}, " : "";
        var temperatures = $"return: {air("return", entering, Dry)}, supply: {air("supply", leaving, Dry)}";
        if (draws.Chance(0.5))
        {
            var meter = kit.Simple("power meter", "clamp meter", "electrical", draws.Pick(("2 % of reading", 0.02, 0.0), ("3 % of reading", 0.03, 0)), new Display("W", 1, 0, 10), 40_000);
            return (($"{{input: {meter.Of.Read("heater", heater)}, {temperatures}}}", beside), [meter.Line.Replace("resolution: 10 W, ", "", StringComparison.Ordinal)]);
        }

        var volts = draws.Uniform(225, 245);
        var voltmeter = kit.Simple("voltmeter", "multimeter", "voltage", ("1 % of reading", 0.01, 0), new Display("V", 1, 0, 0.1), 600);
        var ammeter = kit.Simple("ammeter", "clamp meter", "current", ("2 % of reading", 0.02, 0), new Display("A", 1, 0, 0.1), 200);
        return (($"{{volts: {voltmeter.Of.Read("heater", volts)}, amps: {ammeter.Of.Read("heater", heater / volts)}, {temperatures}}}", beside), [voltmeter.Line, ammeter.Line]);
    }

    /// <summary>
    /// Equal-area points in a rectangular duct: the 1/7-power law from each wall (Prandtl, from memory) leaning to one side, and 3 % of turbulence left in a
    /// reading of some seconds (assumed). The true mean of the profile is 49/64 of its peak, because the lean is odd.
    /// </summary>
    private static (string Text, string Instrument) Traverse(Draws draws, FieldKit kit, bool us, AirWorld world)
    {
        const double Law = 1.0 / 7, Turbulence = 0.03, MeanOfPeak = 49.0 / 64;
        var display = us ? new Display("fpm", Display.FootPerMinute, 0, draws.Pick(1.0, 10)) : new Display("m/s", 1, 0, 0.01);
        var vane = kit.Simple("vane", "anemometer", "air velocity", us ? draws.Pick(("3 % of reading", 0.03, 0), ("2 % of reading + 10 fpm", 0.02, 10 * Display.FootPerMinute)) : ("3 % of reading + 0.05 m/s", 0.03, 0.05), display, 15);
        var area = us ? new Display("ft2", Display.SquareFoot, 0, 0.01) : new Display("m2", 1, 0, 0.001);
        var mean = draws.Uniform(2.5, 6);
        var size = world.Flow / mean;
        var peak = mean / MeanOfPeak;
        var (columns, rows) = (draws.Whole(3, 5), draws.Whole(3, 5));
        var (leanX, leanY) = (0.3 * draws.Either(), 0.3 * draws.Either());
        var points = new List<string>();
        for (var i = 0; i < columns; i++)
        {
            for (var j = 0; j < rows; j++)
            {
                var (x, y) = ((2.0 * i + 1) / columns - 1, (2.0 * j + 1) / rows - 1);
                var here = peak * Math.Pow((1 - Math.Abs(x)) * (1 - Math.Abs(y)), Law) * (1 + leanX * x) * (1 + leanY * y);
                points.Add(vane.Of.Read("duct", here * (1 + Turbulence * draws.Normal())));
            }
        }

        return ($"{{area: {area.Text(size)}, velocities: [{string.Join(", ", points)}]}}", vane.Line);
    }

    private static (string Text, string Instrument) Hood(Draws draws, FieldKit kit, bool us, AirWorld world)
    {
        var display = us ? new Display("cfm", Display.CubicFootPerMinute, 0, 1) : new Display("m³/h", 1.0 / 3600, 0, 1);
        var hood = kit.Simple("hood", "flow hood", "airflow", us ? draws.Pick(("3 % of reading", 0.03, 0), ("3 % of reading + 7 cfm", 0.03, 7 * Display.CubicFootPerMinute)) : ("3 % of reading + 12 m³/h", 0.03, 12.0 / 3600), display, 0.9);
        var weights = Enumerable.Range(0, draws.Whole(4, 9)).Select(_ => draws.Uniform(0.5, 1.5)).ToArray();
        var sum = weights.Sum();
        return (string.Join(", ", weights.Select((w, i) => hood.Of.Read(string.Create(CultureInfo.InvariantCulture, $"grille {i + 1}"), world.SupplyFlow * w / sum))), hood.Line);
    }
}
