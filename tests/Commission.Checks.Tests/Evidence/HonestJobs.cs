using System.Globalization;
using System.Text;
using Commission.Fluids;
using Commission.Fluids.Air;

namespace Commission.Checks.Tests.Evidence;

/// <summary>
/// Jobs of crews that write what they read: a state of the system that drifts and fluctuates, instruments with zero, slope and scatter
/// inside their stated accuracy, displays with a step. Drawn from a fixed seed.
/// </summary>
internal sealed class HonestJobs(int seed)
{
    private static readonly Refrigerant R410A = Refrigerant.Load("R-410A");

#pragma warning disable CA5394 // a simulation, not a secret
    private readonly Random _random = new(seed);

    /// <summary>A whole job: hold, evacuation by hand, four rows of readings, scale, events.</summary>
    public string Whole()
    {
        var fine = _random.Next(2) == 0;
        var (stepP, stepT) = fine ? (0.1, 0.1) : (1.0, _random.Next(2) == 0 ? 0.5 : 0.1);
        var text = new StringBuilder();
        text.AppendLine("instruments:");
        text.AppendLine(CultureInfo.InvariantCulture, $"  - {{id: low, kind: pressure gauge, accuracy: 2 psi, resolution: {stepP:0.0} psi, reads: [vapor pressure, pressure test]}}");
        text.AppendLine(CultureInfo.InvariantCulture, $"  - {{id: high, kind: pressure gauge, accuracy: 3 psi, resolution: {stepP:0.0} psi, reads: [liquid pressure]}}");
        text.AppendLine(CultureInfo.InvariantCulture, $"  - {{id: clamps, kind: pipe clamp, sensor: thermistor, insulated: yes, accuracy: 1.5 F, resolution: {stepT:0.0} F, reads: [vapor line, liquid line, discharge line, pressure test temperature]}}");
        text.AppendLine(CultureInfo.InvariantCulture, $"  - {{id: air, kind: psychrometer, accuracy: 1 F, humidity accuracy: 3 %, resolution: {stepT:0.0} F, reads: [outdoor air, return air, supply air]}}");
        text.AppendLine("  - {id: vacuum, kind: vacuum gauge, accuracy: 10 % of reading, resolution: 1 micron, reads: [evacuation]}");
        text.AppendLine("  - {id: scale, kind: scale, accuracy: 0.5 oz, resolution: 0.1 oz, reads: [charge]}");
        Nitrogen(text, stepP, stepT);
        Evacuation(text);
        Charging(text, stepP, stepT);
        return JobLines.Of(text.ToString(), equipment: ", metering: TXV, compressor: fixed, nameplate: {factory charge: 6 lb}");
    }

    /// <summary>A long day of readings in changing weather: many last digits.</summary>
    public string LongDay()
    {
        var text = new StringBuilder("instruments:\n  - {id: air, kind: psychrometer, accuracy: 1 F, resolution: 0.1 F, reads: [outdoor air, return air, supply air]}\ncharging:\n  compressor started: \"06:00\"\n  readings:\n");
        for (var i = 0; i < 22; i++)
        {
            var outdoor = 60 + (2.0 * i) + Gauss(2);
            text.AppendLine(CultureInfo.InvariantCulture, $"    - {{at: {15 * (i + 1)} min, outdoor dry bulb: {outdoor:0.0} F, return dry bulb: {74 + Gauss(2.5):0.0} F, return wet bulb: {56 + Gauss(1.5):0.0} F, supply dry bulb: {50 + Gauss(3):0.0} F}}");
        }

        return JobLines.Of(text.ToString(), "seasonal check");
    }

    private void Nitrogen(StringBuilder text, double stepP, double stepT)
    {
        var (p, t) = (380 + (70 * _random.NextDouble()), 50 + (35 * _random.NextDouble()));
        var change = Gauss(6);
        // The gas follows the clamp only in part.
        var gas = (1 - (0.25 * _random.NextDouble())) * change;
        var later = ((p + 14.696) * (1 + (gas / (t + 459.67)))) - 14.696;
        text.AppendLine(CultureInfo.InvariantCulture, $"pressure test: {{gas: dry nitrogen, tightness: {{from: {{at: \"08:10\", pressure: {Shown(p, stepP)} psig, temperature: {Shown(t, stepT)} F, settled: 12 min}}, to: {{at: \"09:15\", pressure: {Shown(later + Gauss(0.05), stepP)} psig, temperature: {Shown(t + change, stepT)} F}}}}}}");
    }

    private void Evacuation(StringBuilder text)
    {
        var level = 200 + (250 * _random.NextDouble());
        var rise = 120 * _random.NextDouble() * _random.NextDouble();
        double At(double minutes) => Math.Round((level + (rise * (1 - Math.Exp(-minutes / 8)))) * (1 + Gauss(0.012)));
        text.AppendLine(CultureInfo.InvariantCulture, $"evacuation: {{started: \"09:25\", gauge: at the system, levels: [{{at: \"10:00\", pressure: 1500 micron}}, {{at: \"10:40\", pressure: {At(0)} micron, isolated: yes}}, {{at: \"10:45\", pressure: {At(5)} micron}}, {{at: \"10:50\", pressure: {At(10)} micron}}, {{at: \"11:00\", pressure: {At(20)} micron}}]}}");
    }

    private void Charging(StringBuilder text, double stepP, double stepT)
    {
        var scatter = 0.05 + (0.4 * _random.NextDouble());
        var evaporating = 276 + (5 * _random.NextDouble());
        var outdoor = 298 + (13 * _random.NextDouble());
        var (superheat, subcooling, split) = (2 + (8 * _random.NextDouble()), 3 + (5 * _random.NextDouble()), 6 + (8 * _random.NextDouble()));
        // No condenser cools its liquid below the air that cools it: a kelvin stays between the two.
        subcooling = Math.Min(subcooling, split - 1);
        var condensing = outdoor + split;
        var room = 296 + (2 * _random.NextDouble());
        // What the instruments are off by stays the same from row to row.
        double[] off = [.. Enumerable.Range(0, 8).Select(_ => (2 * _random.NextDouble()) - 1)];
        var before = Math.Round((20 + _random.NextDouble()) * 160) / 160;
        var ounces = Math.Round(60 + (60 * _random.NextDouble())) / 10;
        text.AppendLine("charging:");
        text.AppendLine(CultureInfo.InvariantCulture, $"  unit arrived: charged\n  compressor started: \"11:10\"\n  running: full\n  scale: {{before: {before * 16:0.0} oz, after: {(before * 16) - ounces + Gauss(0.1):0.0} oz}}\n  events: [{{at: \"11:12\", added: {ounces:0.0} oz}}]\n  readings:");
        for (var i = 0; i < 4; i++)
        {
            double Moved(double kelvin) => kelvin + Gauss(scatter);
            var (te, tc, to, tr) = (Moved(evaporating), Moved(condensing), Moved(outdoor + (0.2 * i)), Moved(room));
            var wet = MoistAir.FromRelativeHumidity(tr, 0.5, 101325).Value.WetBulb;
            var low = Psig(R410A.DewAtTemperature(te).Value.Pressure) + (1.5 * off[0]);
            var high = Psig(R410A.BubbleAtTemperature(tc).Value.Pressure) + (2.5 * off[1]);
            text.AppendLine(
                CultureInfo.InvariantCulture,
                $"    - {{at: \"{11 + ((30 + (15 * i)) / 60):00}:{(30 + (15 * i)) % 60:00}\", vapor pressure: {Shown(low, stepP)} psig, liquid pressure: {Shown(high, stepP)} psig, vapor line: {Shown(Fahrenheit(Moved(te + superheat)) + off[2], stepT)} F, liquid line: {Shown(Fahrenheit(Moved(tc - subcooling)) + off[3], stepT)} F, discharge line: {Shown(Fahrenheit(Moved(tc + 25)), stepT)} F, outdoor dry bulb: {Shown(Fahrenheit(to) + (0.8 * off[4]), stepT)} F, return dry bulb: {Shown(Fahrenheit(tr) + (0.8 * off[5]), stepT)} F, return wet bulb: {Shown(Fahrenheit(wet) + (0.8 * off[6]), stepT)} F, return humidity: {50 + (2.5 * off[7]):0} %, supply dry bulb: {Shown(Fahrenheit(Moved(room - 10.5)), stepT)} F}}");
        }
    }

    private static double Psig(double pascals) => (pascals - 101325) / 6894.757293168;

    private static double Fahrenheit(double kelvin) => (kelvin * 1.8) - 459.67;

    private static string Shown(double value, double step)
    {
        var shown = Math.Round(value / step) * step;
        return shown.ToString(step >= 1 ? "0" : "0.0", CultureInfo.InvariantCulture);
    }

    private double Gauss(double sigma) => sigma * Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble())) * Math.Cos(2 * Math.PI * _random.NextDouble());
#pragma warning restore CA5394
}
