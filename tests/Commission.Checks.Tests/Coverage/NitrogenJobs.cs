using System.Globalization;
using Commission.Checks.NitrogenAnalysis;
using Commission.Fluids;

namespace Commission.Checks.Tests.Coverage;

/// <summary>
/// Nitrogen holds with a true loss of 0 to 3 %. Gas and pipe drift by 0 to 10 K between the readings, either way. A clamp stands off the gas by what its
/// place is off (0.3 K in the shade), by the sun on the line (0 to 3 K where it is not shaded, at either reading), and after filling by the heat of
/// compression that is still in the gas: 2 to 6 K, gone with a time constant of 3 to 6 min. Assumed, no source.
/// </summary>
internal static class NitrogenJobs
{
    public const string Loss = "nitrogen loss";

    private const double IcePoint = 273.15;
    private const double Place = 0.3;
    private const double Sun = 3;

    public static JobOutcome Run(int seed, ErrorModel model, int job)
    {
        var draws = new Draws(seed, model, job);
        var us = draws.Chance(0.5);
        var kit = new FieldKit(draws, model, us);
        var (atmosphere, hours) = (101_325 + 1000 * draws.Normal(), draws.Pick(0.25, 0.5, 1, 4, 12, 24));
        var start = draws.Uniform(15e5, 40e5);
        var gauge = kit.Gauge("test gauge", "pressure test", us ? 800 * Display.Psi : 60 * Display.Bar, start);
        var clamps = draws.Whole(1, 3);
        var shaded = draws.Chance(0.6);
        var clamp = kit.Clamp("clamp", "pressure test temperature", insulated: true);
        var settled = draws.Pick(10, 15, 30, 60, 120);
        var change = draws.Pick(-1, 1) * draws.Uniform(0, 10);
        var loss = draws.Uniform(0, 0.03);
        var (heat, constant) = (draws.Uniform(2, 6), 60 * draws.Uniform(3, 6));
        double Heat(double seconds) => heat * Math.Exp(-seconds / constant);
        var pipe = IcePoint + draws.Uniform(10, 30);
        var (first, second) = (pipe + Heat(60 * settled), pipe + change + Heat(60 * settled + 3600 * hours));
        var density = Nitrogen.Density(first, start + atmosphere).Value;
        var end = Nitrogen.Pressure(second, density * (1 - loss)).Value;
        // The air's pressure wanders by up to 0.1 kPa an hour, as far as the weather goes (common practice, no source).
        var later = atmosphere + Math.Min(100 * hours, 1700) * draws.Either();
        string Temperatures(double kelvin)
        {
            var read = Enumerable.Range(1, clamps).Select(i => clamp.Of.Read(
                string.Create(CultureInfo.InvariantCulture, $"place {i}"), kelvin + Place * draws.Either() + (shaded || draws.Chance(0.5) ? 0 : draws.Uniform(0, Sun))));
            return $"[{string.Join(", ", read)}]";
        }

        var yaml = $$$"""
            commission: 1
            units: {{{(us ? "us" : "si")}}}
            job: {id: N-{{{job}}}, work: new installation, date: 2026-07-14, site: {name: 12 Reed Close, elevation: 0 m}}
            equipment: {system: split, compressor: fixed, refrigerant: R-410A, metering: TXV}
            instruments:
              - {{{gauge.Line}}}
              - {{{clamp.Line}}}
            pressure test:
              gas: dry nitrogen
              section: line set and indoor
              started: "06:00"
              tightness:
                shaded: {{{(shaded ? "yes" : "no")}}}
                from: {at: 0 min, pressure: {{{gauge.Of.Read("port", start)}}}, temperature: {{{Temperatures(pipe)}}}, settled: {{{settled}}} min}
                to: {at: {{{(hours * 60).ToString(CultureInfo.InvariantCulture)}}} min, pressure: {{{gauge.Of.Read("port", end - later)}}}, temperature: {{{Temperatures(pipe + change)}}}}
            """;
        var run = JobText.Context(yaml).Get<NitrogenRun>();
        var y = run.Loss?.Loss ?? throw new InvalidDataException($"{run.WhyNot}\n{yaml}");
        return new JobOutcome(
            [
                CircuitJobs.Of(
                    Loss, loss, y,
                    [("change of temperature either way, K", Math.Abs(change)), ("p / full scale", start / gauge.Of.Statement.Span), ("length of the hold, h", hours), ("settled, min", settled)],
                    [("shaded", shaded ? "yes" : "no"), ("clamps", clamps.ToString(CultureInfo.InvariantCulture)), ("gauge", gauge.Check), ("gauge is", gauge.Accuracy), ("clamp", clamp.Check), ("clamp is", clamp.Accuracy)]),
            ],
            []);
    }
}
