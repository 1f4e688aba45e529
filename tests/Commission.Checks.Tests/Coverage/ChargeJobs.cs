using System.Globalization;
using Commission.Checks.Circuit;

namespace Commission.Checks.Tests.Coverage;

/// <summary>
/// Charges by weight. True is what reached the circuit: what left the cylinder less what stayed in the hoses. A charging hose of 5 ft holds about an
/// ounce when it is full of liquid (0.19 in bore, computed), and anything down to nothing when it was emptied into the circuit.
/// </summary>
internal static class ChargeJobs
{
    public const string Charge = "charge by weight";

    public static JobOutcome Run(int seed, ErrorModel model, int job)
    {
        var draws = new Draws(seed, model, job);
        var us = draws.Chance(0.5);
        var kit = new FieldKit(draws, model, us);
        var display = us ? draws.Pick(new Display("oz", Display.Ounce, 0, 0.1), new Display("oz", Display.Ounce, 0, 0.5)) : draws.Pick(new Display("kg", 1, 0, 0.002), new Display("kg", 1, 0, 0.01));
        const double Span = 50;
        var scale = kit.Simple(
            "scale", "scale", "charge",
            us ? draws.Pick(("0.5 oz", 0, 0.5 * Display.Ounce), ("1 oz", 0, Display.Ounce), ("0.1 % of reading + 0.2 oz", 0.001, 0.2 * Display.Ounce)) : draws.Pick(("10 g", 0, 0.01), ("20 g", 0, 0.02), ("0.1 % of reading + 5 g", 0.001, 0.005)),
            display, Span);
        var cylinders = draws.Chance(0.25) ? 2 : 1;
        var hoses = draws.Whole(1, 2);
        var left = 0.0;
        for (var i = 0; i < hoses; i++)
            left += draws.Uniform(0, Display.Ounce);
        var parts = new List<string>();
        var drawn = 0.0;
        for (var i = 0; i < cylinders; i++)
        {
            var taken = draws.Uniform(0.3, 4) / cylinders;
            var before = draws.Uniform(taken + 4, 16);
            parts.Add(string.Create(CultureInfo.InvariantCulture, $"{{cylinder: C-{i + 1}, before: {scale.Of.Read("plate", before)}, after: {scale.Of.Read("plate", before - taken)}}}"));
            drawn += taken;
        }

        var kind = draws.Pick("not written", "not written", "written");
        var written = us ? new Display("oz", Display.Ounce, 0, 0.1) : new Display("g", 0.001, 0, 1);
        var doubt = us ? 0.4 : 10;
        var hose = kind == "not written"
            ? string.Create(CultureInfo.InvariantCulture, $"hoses: {hoses}")
            : string.Create(CultureInfo.InvariantCulture, $"left in hoses: {written.Text(Math.Max(0, left + doubt * written.Factor / 2 * draws.Normal()))} +/- {doubt}");
        var yaml = $$$"""
            commission: 1
            units: {{{(us ? "us" : "si")}}}
            job: {id: W-{{{job}}}, work: new installation, date: 2026-07-14, site: {name: 12 Reed Close, elevation: 0 m}}
            equipment: {system: split, compressor: fixed, refrigerant: R-410A, metering: TXV}
            instruments:
              - {{{scale.Line}}}
            charging:
              unit arrived: nitrogen
              as: liquid
              {{{hose}}}
              scale: [{{{string.Join(", ", parts)}}}]
            """;
        var put = JobText.Context(yaml).Get<WeighedCharge>().Put ?? throw new InvalidDataException(yaml);
        return new JobOutcome(
            [CircuitJobs.Of(Charge, drawn - left, put.Value, [("mass, kg", drawn), ("truly left in hoses, kg", left)], [("left in hoses", kind), ("hoses", hoses.ToString(CultureInfo.InvariantCulture)), ("cylinders", cylinders.ToString(CultureInfo.InvariantCulture)), ("scale is", scale.Accuracy)])],
            []);
    }
}
