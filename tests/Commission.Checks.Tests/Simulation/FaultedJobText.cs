using System.Globalization;
using System.Text;

namespace Commission.Checks.Tests.Simulation;

/// <summary>
/// Writes the job of a crew that read a circuit with real instruments: each has one error for the day within its stated accuracy, clamps
/// lean towards the air around them, and two readings ten minutes apart scatter a little.
/// </summary>
internal sealed class FaultedJobText(Random random, DrawnCircuit circuit, CircuitDesign design, CircuitReadings readings, CircuitReadings rating)
{
    private const double Atmosphere = 101_325;
    private const double ClampAccuracy = 0.6;
    private const double AirAccuracy = 0.5;
    private const double CurrentAccuracy = 0.02;
    private const double DigitalGauge = 7_000;
    private const double LowFullScale = 35e5;
    private const double HighFullScale = 60e5;
    private const double AnalogShare = 0.01;

    /// <summary>Largest share by which an insulated clamp leans towards the air.</summary>
    private const double LargestCoupling = 0.02;

    private const double TemperatureScatter = 0.1;
    private const double PressureScatter = 0.001;

    /// <summary>Share of the running condenser's gas pressure that is left when the gas has the whole high side at rest (a guess).</summary>
    private const double RestingGas = 0.6;

    /// <summary>Current of the idle motor over that at the rating point; the two add as a right angle (induction motor).</summary>
    private const double IdleCurrent = 0.25;

    private const double SinglePhaseLargest = 12_000;
    private const double PsiPascals = 6894.757293168;

    private readonly bool _us = random.Next(2) == 0;
    private readonly bool _digital = random.Next(2) == 0;
    private readonly bool _drier = random.Next(2) == 0;
    private readonly bool _suctionLine = circuit.HeatPump && random.Next(2) == 0;
    private readonly double _ratedCurrentShare = 1.12 + 0.18 * random.NextDouble();
    private readonly Dictionary<string, (double Error, double Coupling)> _clamps = [];
    private readonly Dictionary<string, double> _errors = [];

    private bool IsValve => circuit.Task.Metering == MeteringDevice.Valve;

    private bool IsThreePhase => circuit.Task.Capacity > SinglePhaseLargest;

    private double ApparentVolts => IsThreePhase ? Math.Sqrt(3) * 400 * 0.85 : 230 * 0.95;

    /// <summary>The job file.</summary>
    /// <param name="id">Of the job.</param>
    public string Write(string id)
    {
        var text = new StringBuilder();
        Line(text, $"commission: 1");
        Line(text, $"units: {(_us ? "us" : "si")}");
        Line(text, $"job: {{id: {id}, work: seasonal check, date: 2026-07-14, site: {{name: 12 Reed Close, elevation: 0 m}}, people: {{technician: Oda Fenner}}}}");
        Equipment(text);
        if (IsValve)
            Line(text, $"limits: {{subcooling: {{target: {Target()}, tolerance: {(_us ? "3 °F" : "2 K")}, from: unit plate}}}}");
        Instruments(text);
        Line(text, $"charging:");
        Line(text, $"  compressor started: \"13:20\"");
        Line(text, $"  mode: cooling");
        Line(text, $"  running: full");
        Line(text, $"  read at: {{liquid pressure: liquid service valve, vapor pressure: service valve, vapor line: service valve, liquid line: liquid service valve}}");
        StandingTest(text);
        Line(text, $"  readings:");
        Reading(text, "13:45");
        Reading(text, "13:55");
        Line(text, $"air: {{filter: clean, coil: clean, panels on: yes, blower at cooling speed: yes}}");
        Line(text, $"signatures: [{{name: Oda Fenner, role: technician, date: 2026-07-14}}]");
        return text.ToString();
    }

    private void Equipment(StringBuilder text)
    {
        var voltage = IsThreePhase ? "voltage: 400 V, phases: 3" : "voltage: 230 V, phases: 1";
        var rated = Current(rating.Power) * _ratedCurrentShare;
        Line(text, $"equipment:");
        Line(text, $"  system: {(circuit.HeatPump ? "heat pump" : "split")}");
        Line(text, $"  compressor: fixed");
        Line(text, $"  refrigerant: {circuit.Task.Refrigerant}");
        Line(text, $"  metering: {(IsValve ? "TXV" : "fixed orifice")}");
        Line(text, $"  capacity: {circuit.Task.Capacity / 1000:0.0} kW");
        Line(text, $"  nameplate: {{factory charge: {design.Charge:0.00} kg, {voltage}, compressor RLA: {rated:0.0} A}}");
        if (_drier)
            Line(text, $"  drier: {{model: D-16, place: \"liquid line, outdoors\"}}");
    }

    private string Target() => _us ? Number($"{Math.Round(circuit.Task.Subcooling * 1.8):0} °F") : Number($"{Math.Round(circuit.Task.Subcooling):0} K");

    private void Instruments(StringBuilder text)
    {
        var (low, high) = (Gauge(LowFullScale), Gauge(HighFullScale));
        var clamps = "vapor line, liquid line, discharge line" + (_drier ? ", liquid after drier" : "") + (_suctionLine ? ", compressor suction line" : "");
        Line(text, $"instruments:");
        Line(text, $"  - {{id: low, kind: pressure gauge, serial: G-1, calibrated: 2026-02-02, {low}, reads: [vapor pressure]}}");
        Line(text, $"  - {{id: high, kind: pressure gauge, serial: G-2, calibrated: 2026-02-02, {high}, reads: [liquid pressure]}}");
        Line(text, $"  - {{id: clamps, kind: pipe clamp, sensor: thermistor, accuracy: {Kelvins(ClampAccuracy)}, insulated: yes, reads: [{clamps}]}}");
        Line(text, $"  - {{id: air, kind: psychrometer, serial: P-1, calibrated: 2026-02-02, accuracy: {Kelvins(AirAccuracy)}, reads: [outdoor air, return air, supply air]}}");
        Line(text, $"  - {{id: meter, kind: clamp meter, serial: M-1, calibrated: 2026-02-02, accuracy: 2 % of reading, reads: [electrical, current]}}");
    }

    private string Gauge(double fullScale)
    {
        var scale = _us ? Number($"{10 * Math.Round(fullScale / PsiPascals / 10):0} psig") : Number($"{fullScale / 1e5:0} bar(g)");
        return _digital ? $"accuracy: 7 kPa, full scale: {scale}" : $"accuracy: 1 % of full scale, full scale: {scale}";
    }

    private void StandingTest(StringBuilder text)
    {
        const double cleanTests = 0.1;
        var gas = circuit.Fault.Of(FaultKind.NonCondensables);
        if (random.NextDouble() >= (gas > 0 ? 0.5 : cleanTests))
            return;
        var line = circuit.Weather.Outdoor + 0.3 * random.NextDouble();
        var pressure = design.Fluid.BubblePressure(line) + RestingGas * gas * design.CondensingPressure;
        Line(text, $"  standing test: {{off for: 20 min, condenser fan on: yes, liquid pressure: {Pressure("liquid pressure", pressure)}, liquid line: {Clamp("liquid line", line)}, outdoor dry bulb: {Air("outdoor dry bulb", circuit.Weather.Outdoor)}}}");
    }

    private void Reading(StringBuilder text, string at)
    {
        var weather = circuit.Weather;
        var parts = new List<string>
        {
            $"vapor pressure: {Pressure("vapor pressure", readings.VaporPressure)}",
            $"liquid pressure: {Pressure("liquid pressure", readings.LiquidPressure)}",
            $"vapor line: {Clamp("vapor line", readings.VaporLine)}",
            $"liquid line: {Clamp("liquid line", readings.LiquidLine)}",
            $"discharge line: {Clamp("discharge line", readings.DischargeLine)}",
        };
        if (_drier)
            parts.Add($"liquid after drier: {Clamp("liquid after drier", readings.LiquidAfterDrier)}");
        if (_suctionLine)
            parts.Add($"compressor suction line: {Clamp("compressor suction line", readings.CompressorSuctionLine)}");
        parts.Add($"outdoor dry bulb: {Air("outdoor dry bulb", weather.Outdoor)}");
        parts.Add($"return dry bulb: {Air("return dry bulb", weather.Return)}");
        parts.Add($"return wet bulb: {Air("return wet bulb", weather.ReturnWetBulb)}");
        parts.Add($"supply dry bulb: {Air("supply dry bulb", readings.Supply)}");
        parts.Add(Number($"compressor current: {Current(readings.Power) * (1 + Error("compressor current", CurrentAccuracy)):0.0}"));
        Line(text, $"    - {{at: \"{at}\", {string.Join(", ", parts)}}}");
    }

    private double Current(double watts)
    {
        var rated = rating.Power / ApparentVolts;
        return Math.Sqrt(Math.Pow(watts / ApparentVolts, 2) + Math.Pow(IdleCurrent * rated, 2));
    }

    private string Pressure(string name, double absolute)
    {
        var fullScale = name == "vapor pressure" ? LowFullScale : HighFullScale;
        var shown = absolute * (1 + PressureScatter * Normal()) - Atmosphere + Error(name, _digital ? DigitalGauge : AnalogShare * fullScale);
        return _us ? Number($"{shown / PsiPascals:0.0}") : Number($"{shown / 1e5:0.00}");
    }

    private string Clamp(string name, double kelvin)
    {
        if (!_clamps.TryGetValue(name, out var clamp))
            _clamps[name] = clamp = (Uniform(ClampAccuracy), LargestCoupling * random.NextDouble());
        return Temperature(kelvin + clamp.Error + clamp.Coupling * (circuit.Weather.Outdoor - kelvin));
    }

    private string Air(string name, double kelvin) => Temperature(kelvin + Error(name, AirAccuracy));

    private string Temperature(double kelvin)
    {
        var celsius = kelvin - 273.15 + TemperatureScatter * Normal();
        return Number($"{(_us ? celsius * 1.8 + 32 : celsius):0.0}");
    }

    private string Kelvins(double kelvins) => _us ? Number($"{kelvins * 1.8:0.0} °F") : Number($"{kelvins:0.0} K");

    /// <summary>The error of an instrument on one place: the same all day.</summary>
    private double Error(string name, double accuracy)
    {
        if (!_errors.TryGetValue(name, out var error))
            _errors[name] = error = Uniform(accuracy);
        return error;
    }

    private double Uniform(double half) => half * (2 * random.NextDouble() - 1);

    /// <summary>Standard normal by Box and Muller.</summary>
    private double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private static string Number(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static void Line(StringBuilder text, FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
}
