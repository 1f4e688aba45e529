using System.Collections.Concurrent;
using System.Globalization;
using Commission.Checks.Charge;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Recording;
using Commission.Fluids;
using Commission.Measurement.Atmosphere;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Records.Findings;

namespace Commission.Checks.Tests.Coverage;

/// <summary>
/// Jobs on a running circuit in cooling: superheat, subcooling, superheat less its target, with the air beside them. The true state is drawn, never
/// solved: what counts is how readings of it go wrong. Superheat and subcooling are drawn evenly around their targets, much wider than any U, so
/// that a printed probability of conformity can be held against the share of true states that conform.
/// </summary>
internal static class CircuitJobs
{
    public const string Superheat = "superheat";
    public const string Subcooling = "subcooling";
    public const string SuperheatLessTarget = "superheat − target";

    /// <summary>The corrected readings themselves, on which all of these rest.</summary>
    public const string GaugeReading = "reading of a gauge";

    public const string ClampReading = "reading of a clamp";

    private const double IcePoint = 273.15;

    /// <summary>Air pressure about the standard atmosphere of the elevation, Pa, standard deviation: weather (common practice, no source).</summary>
    private const double Weather = 1000;

    private const double LeastTarget = 6.5;
    private const double LeastSuperheat = 0.3;

    /// <summary>
    /// Standard deviation of the true saturation pressure about the equations, as a share: the papers give 0.1 % for pure fluids and 0.5 % for the bubble
    /// and dew pressures of these blends, read as k = 2.
    /// </summary>
    private const double PureEquation = 0.0005;

    private const double BlendEquation = 0.0025;

    private static readonly string[] Refrigerants = ["R-410A", "R-32", "R-454B", "R-407C", "R-290", "R-22"];
    private static readonly ConcurrentDictionary<string, Refrigerant> Fluids = new(StringComparer.Ordinal);
    private static readonly Lazy<(double Bare, double Insulated)> ClampRanges = new(ReadClampRanges);

    /// <summary>Draws a job, has it judged and holds it against the truth.</summary>
    public static JobOutcome Run(int seed, ErrorModel model, int job)
    {
        var draws = new Draws(seed, model, job);
        var us = draws.Chance(0.5);
        var kit = new FieldKit(draws, model, us);
        var world = World.Draw(draws);
        var (low, high) = (kit.Gauge("low", "vapor pressure", us ? 500 * Display.Psi : 35 * Display.Bar, world.VaporGauge), kit.Gauge("high", "liquid pressure", us ? 800 * Display.Psi : 60 * Display.Bar, world.LiquidGauge));
        var (vaporInsulated, liquidInsulated) = (draws.Chance(0.6), draws.Chance(0.6));
        var vapor = kit.Clamp("vapor clamp", "vapor line", vaporInsulated);
        var liquid = kit.Clamp("liquid clamp", "liquid line", liquidInsulated);
        var air = SimulatedAir.Draw(draws, model, kit, us, world.Air);
        var orifice = draws.Chance(0.5);
        string Line(KitPiece clamp, string place, double pipe, bool insulated)
        {
            // Between nothing and all of the pack's range, evenly.
            var pull = draws.Uniform(0, insulated ? ClampRanges.Value.Insulated : ClampRanges.Value.Bare);
            return clamp.Of.Read(place, pipe + pull * (world.Air.Outdoor - pipe));
        }

        var target = world.SubcoolingTarget(us);
        var limits = orifice ? "" : $"limits: {{subcooling: {{target: {target.Text}, tolerance: {(us ? "3 °F" : "1.7 K")}, from: unit plate}}}}";
        var yaml = $$$"""
            commission: 1
            units: {{{(us ? "us" : "si")}}}
            job: {id: C-{{{job}}}, work: seasonal check, date: 2026-07-14, site: {name: 12 Reed Close, {{{world.Site(draws)}}}}}
            equipment: {system: split, compressor: fixed, refrigerant: {{{world.Refrigerant}}}, metering: {{{(orifice ? "fixed orifice" : "TXV")}}}}
            {{{limits}}}
            instruments:
              - {{{low.Line}}}
              - {{{high.Line}}}
              - {{{vapor.Line}}}
              - {{{liquid.Line}}}
            {{{air.Instruments}}}
            charging:
              compressor started: "13:00"
              mode: cooling
              running: full
              read at: {liquid pressure: liquid service valve, vapor pressure: service valve, vapor line: service valve, liquid line: liquid service valve}
              readings:
                - {at: "13:40", vapor pressure: {{{low.Of.Read("port", world.VaporGauge)}}}, liquid pressure: {{{high.Of.Read("port", world.LiquidGauge)}}}, vapor line: {{{Line(vapor, "vapor line", world.VaporLine, vaporInsulated)}}}, liquid line: {{{Line(liquid, "liquid line", world.LiquidLine, liquidInsulated)}}}, {{{air.Readings}}}}
            air: {filter: clean, coil: clean, panels on: yes, blower at cooling speed: yes, {{{air.AirSide}}}}
            """;
        var context = JobText.Context(yaml);
        return Judge(context, world, air, new(low, vapor, high, liquid), orifice, target.Kelvins, yaml);
    }

    private sealed record Four(KitPiece Low, KitPiece Vapor, KitPiece High, KitPiece Liquid);

    private static JobOutcome Judge(CheckContext context, World world, SimulatedAir air, Four kit, bool orifice, double target, string yaml)
    {
        var outcomes = new List<Outcome>();
        var forecasts = new List<Forecast>();
        var row = context.Get<ChargeAnalysis>().Rows[0];
        var superheat = row.Superheat.Value ?? throw new InvalidDataException($"{row.Superheat.WhyNot}\n{yaml}");
        var subcooling = row.Subcooling.Value ?? throw new InvalidDataException($"{row.Subcooling.WhyNot}\n{yaml}");
        (string, double)[] vaporDrivers = [("vapor line from 0 °C, K", Math.Abs(world.VaporLine - IcePoint)), ("vapor p / full scale", world.VaporGauge / kit.Low.Of.Statement.Span), ("air over vapor line, K", world.Air.Outdoor - world.VaporLine)];
        (string, string)[] vaporKinds = [("low gauge", kit.Low.Check), ("low gauge is", kit.Low.Accuracy), ("vapor clamp", kit.Vapor.Check), ("vapor clamp is", kit.Vapor.Accuracy), ("refrigerant", world.Refrigerant)];
        outcomes.Add(Of(Superheat, world.Superheat, superheat, vaporDrivers, vaporKinds));
        outcomes.Add(Of(
            Subcooling, world.Subcooling, subcooling,
            [("liquid line from 0 °C, K", Math.Abs(world.LiquidLine - IcePoint)), ("liquid p / full scale", world.LiquidGauge / kit.High.Of.Statement.Span)],
            [("high gauge", kit.High.Check), ("high gauge is", kit.High.Accuracy), ("liquid clamp", kit.Liquid.Check), ("liquid clamp is", kit.Liquid.Accuracy), ("refrigerant", world.Refrigerant)]));
        if (orifice && ChargeTarget.Superheat(context, row).Target is { } moving)
        {
            outcomes.Add(Of(SuperheatLessTarget, world.Superheat - world.SuperheatTarget, superheat - moving, [.. vaporDrivers, ("outdoor dry bulb, °C", world.Air.Outdoor - IcePoint), ("return wet bulb, °C", world.Air.ReturnWet - IcePoint)], vaporKinds));
            Forecasts("superheat", SuperheatLessTarget, world.Superheat - world.SuperheatTarget);
        }
        else if (!orifice)
        {
            Forecasts("subcooling", Subcooling, world.Subcooling - target);
        }

        outcomes.Add(Pressure(world.VaporGauge + world.Atmosphere, row.VaporPressure!.Value, kit.Low));
        outcomes.Add(Pressure(world.LiquidGauge + world.Atmosphere, row.LiquidPressure!.Value, kit.High));
        outcomes.Add(Line(world.VaporLine, row.VaporLine!.Value, kit.Vapor));
        outcomes.Add(Line(world.LiquidLine, row.LiquidLine!.Value, kit.Liquid));
        air.Judge(context, row, outcomes, forecasts);
        return new JobOutcome(outcomes, forecasts);

        Outcome Pressure(double truth, Uncertain y, KitPiece gauge) => Of(
            GaugeReading, truth, y,
            [("p / full scale", (truth - world.Atmosphere) / gauge.Of.Statement.Span), ("p / known pressure", gauge.Known > 0 ? (truth - world.Atmosphere) / gauge.Known : 0)],
            [("gauge", gauge.Check), ("gauge is", gauge.Accuracy), ("known pressure", KnownAt((truth - world.Atmosphere) / gauge.Known, gauge.Check))]);

        Outcome Line(double truth, Uncertain y, KitPiece clamp) => Of(
            ClampReading, truth, y,
            [("line from 0 °C, K", Math.Abs(truth - IcePoint)), ("line from the air, K", Math.Abs(world.Air.Outdoor - truth))],
            [("clamp", clamp.Check), ("clamp is", clamp.Accuracy), ("sensor, check", $"{(clamp.Accuracy.StartsWith("thermistor", StringComparison.Ordinal) ? "stated" : "class")}, {clamp.Check}")]);

        void Forecasts(string check, string quantity, double distance) => AddForecast(context, $"charge.{check}", quantity, distance, forecasts);
    }

    /// <summary>The printed probability of a finding around a target, against the true distance from the true target.</summary>
    public static void AddForecast(CheckContext context, string check, string quantity, double distance, List<Forecast> forecasts)
    {
        foreach (var finding in CheckCatalogue.Find(check)!.Evaluate(context))
        {
            if (finding is { ProbabilityOfConformity: { } probability, Limits: [{ TargetSi: { } middle } limit, ..] })
            {
                forecasts.Add(new Forecast(
                    quantity, probability,
                    distance >= (limit.LowerSi - middle ?? double.NegativeInfinity) && distance <= (limit.UpperSi - middle ?? double.PositiveInfinity)));
            }
        }
    }

    // Where a reading lies against the known pressure: a known point alone speaks for what is near it.
    private static string KnownAt(double ratio, string check) => check switch
    {
        "known" => ratio is > 0.8 and < 1.2 ? "alone, within 20 %" : "alone, further",
        "zero and known" => ratio <= 1.25 ? "with zero, up to 1.25 times" : "with zero, beyond",
        _ => "none",
    };

    public static Outcome Of(string quantity, double truth, Uncertain y, (string, double)[] drivers, (string, string)[] kinds) => new(quantity, truth, y.Value, y.Expanded, drivers, kinds);

    private static Refrigerant Fluid(string name) => Fluids.GetOrAdd(name, Refrigerant.Load);

    private static (double Bare, double Insulated) ReadClampRanges()
    {
        var context = JobText.Context(JobLines.Of());
        return (context.Assume(LimitIds.AssumptionClampBare), context.Assume(LimitIds.AssumptionClampInsulated));
    }

    /// <summary>What is true. K, Pa.</summary>
    private sealed class World
    {
        private double _elevation;
        private double _atmosphere;
        private double _target;

        public double Atmosphere => _atmosphere;

        public string Refrigerant { get; private set; } = "";

        public AirWorld Air { get; private set; } = null!;

        public double Superheat { get; private set; }

        public double SuperheatTarget { get; private set; }

        public double Subcooling { get; private set; }

        public double VaporGauge { get; private set; }

        public double LiquidGauge { get; private set; }

        public double VaporLine { get; private set; }

        public double LiquidLine { get; private set; }

        public static World Draw(Draws draws)
        {
            var world = new World { Refrigerant = draws.Pick<string>(Refrigerants), _elevation = Math.Round(draws.Uniform(0, 1600)) };
            var standard = StandardAtmosphere.At(Length.FromMeters(world._elevation)).Si;
            world._atmosphere = standard + Weather * draws.Normal();
            TableTarget table;
            do
            {
                world.Air = AirWorld.Draw(draws, world._atmosphere);
                table = CaliforniaSuperheatTable.At(Temperature.FromSi(world.Air.Outdoor), Temperature.FromSi(world.Air.ReturnWet));
            }
            while (!table.HasValue || table.Value.Si < LeastTarget);
            world.SuperheatTarget = table.Value.Si;
            do
                world.Superheat = world.SuperheatTarget + 7 * draws.Either();
            while (world.Superheat < LeastSuperheat);
            world._target = Math.Round(draws.Uniform(4, 8) * 1.8) / 1.8;
            do
                world.Subcooling = world._target + 4.5 * draws.Either();
            while (world.Subcooling < LeastSuperheat);
            var fluid = Fluid(world.Refrigerant);
            var equation = fluid.IsBlend ? BlendEquation : PureEquation;
            var evaporating = IcePoint + draws.Uniform(-2, 12);
            var condensing = world.Air.Outdoor + draws.Uniform(8, 18);
            world.VaporGauge = fluid.DewAtTemperature(evaporating).Value.Pressure * (1 + equation * draws.Normal()) - world._atmosphere;
            world.LiquidGauge = fluid.BubbleAtTemperature(condensing).Value.Pressure * (1 + equation * draws.Normal()) - world._atmosphere;
            (world.VaporLine, world.LiquidLine) = (evaporating + world.Superheat, condensing - world.Subcooling);
            return world;
        }

        /// <summary>Elevation alone, or a barometer with what stands behind it (normal, k = 2).</summary>
        public string Site(Draws draws)
        {
            if (draws.Chance(0.6))
                return string.Create(CultureInfo.InvariantCulture, $"elevation: {_elevation:0} m");
            const double expanded = 200;
            return string.Create(CultureInfo.InvariantCulture, $"station pressure: {(_atmosphere + expanded / 2 * draws.Normal()) / 100:0.0} hPa +/- {expanded / 100:0.0}");
        }

        /// <summary>The maker's subcooling, as the plate prints it.</summary>
        public (string Text, double Kelvins) SubcoolingTarget(bool us) => us
            ? (string.Create(CultureInfo.InvariantCulture, $"{_target * 1.8:0} °F"), _target)
            : (string.Create(CultureInfo.InvariantCulture, $"{_target:0.00} K"), Math.Round(_target, 2));
    }
}
