using System.Globalization;

namespace Commission.Checks.Tests.Coverage;

/// <summary>An instrument of a job: what it does, and its line in the job file.</summary>
/// <param name="Of">The instrument.</param>
/// <param name="Line">Its entry under instruments.</param>
/// <param name="Accuracy">Its statement in a word, for bins.</param>
/// <param name="Check">Which field check it had, for bins.</param>
internal sealed record KitPiece(SimulatedInstrument Of, string Line, string Accuracy, string Check)
{
    /// <summary>The known pressure put on it, Pa; zero where there was none.</summary>
    public double Known { get; init; }
}

/// <summary>Draws the instruments of a crew, with their field checks read on the same errors as everything else.</summary>
internal sealed class FieldKit(Draws draws, ErrorModel model, bool us)
{
    /// <summary>The ice bath of a crew lies within this of 0 °C, K, rectangular.</summary>
    private const double Bath = 0.05;

    private const double IcePoint = 273.15;

    /// <summary>Over this distance from the ice point gain and bow of a thermometer are spread (common practice, no source).</summary>
    private const double ThermometerSpan = 50;

    /// <summary>A gauge on the circuit or on the nitrogen.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="reads">What it reads.</param>
    /// <param name="fullScale">Its scale, Pa.</param>
    /// <param name="working">The pressure it will read, Pa above the air's: a known pressure is put on near it.</param>
    public KitPiece Gauge(string id, string reads, double fullScale, double working)
    {
        var display = us ? Display.PsiGauge(draws.Pick(0.1, 0.1, 0.5, 1)) : Display.BarGauge(draws.Pick(0.01, 0.01, 0.05, 0.1));
        var scale = us ? Display.PsiGauge(1).Rounded(fullScale) : Display.BarGauge(0.1).Rounded(fullScale);
        var (words, half) = draws.Whole(0, 4) switch
        {
            0 => ("0.5 % of full scale", p => 0.005 * scale),
            1 => ("1 % of full scale", p => 0.01 * scale),
            // Not on the largest scale, where its zero could stand below a vacuum.
            2 when fullScale < 40e5 => ("1.6 % of full scale", p => 0.016 * scale),
            2 or 3 => us ? ("1 psi", _ => Display.Psi) : ("0.07 bar", (Func<double, double>)(_ => 0.07 * Display.Bar)),
            _ => us ? ("0.5 % of reading + 1 psi", p => 0.005 * Math.Abs(p) + Display.Psi) : ("0.5 % of reading + 0.07 bar", p => 0.005 * Math.Abs(p) + 0.07 * Display.Bar),
        };
        var text = $"accuracy: {words}, full scale: {(us ? Display.PsiGauge(1) : Display.BarGauge(0.1)).Text(scale)}, resolution: {Step(display, us ? "psi" : "bar")}";
        var instrument = new SimulatedInstrument(draws, model, new Statement(text, half, 0, scale), display);
        var (checks, check, known) = GaugeChecks(instrument, working, scale);
        return new KitPiece(instrument, $"{{id: {id}, kind: pressure gauge, serial: G-{id}, calibrated: 2026-02-02, {text}, reads: [{reads}]{checks}}}", words, check) { Known = known };
    }

    /// <summary>A clamp on a pipe, with its own sensor.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="reads">What it reads.</param>
    /// <param name="insulated">Whether it is wrapped.</param>
    public KitPiece Clamp(string id, string reads, bool insulated)
    {
        var display = us ? Display.Fahrenheit(draws.Pick(0.1, 0.1, 1)) : Display.Celsius(draws.Pick(0.1, 0.1, 0.5));
        var (statement, words) = Thermometer();
        var text = $"{statement.Text}, resolution: {Step(display, us ? "°F" : "K")}";
        var instrument = new SimulatedInstrument(draws, model, statement, display);
        var check = draws.Pick("none", "none", "none", "ice", "ice, adjusted");
        var checks = "";
        if (check != "none")
        {
            var bath = IcePoint + Bath * draws.Either();
            var place = reads.Split(',')[0];
            var read = instrument.Read(place, bath, inBath: true);
            if (check == "ice")
            {
                checks = $", checks: {{ice point: {read}}}";
            }
            else
            {
                instrument.Adjust(place, bath, inBath: true);
                checks = $", checks: {{ice point: {{read: {read}, adjusted: {instrument.Read(place, bath, inBath: true)}}}}}";
            }
        }

        return new KitPiece(instrument, $"{{id: {id}, kind: pipe clamp, calibrated: 2026-02-02, {text}, insulated: {(insulated ? "yes" : "no")}, reads: [{reads}]{checks}}}", words, check);
    }

    /// <summary>An instrument with an accuracy that is one amount, or a share of the reading with an amount.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="reads">What it reads.</param>
    /// <param name="accuracy">Its accuracy in words, as a share of the reading and as an amount, SI.</param>
    /// <param name="display">Its display.</param>
    /// <param name="span">Where its scale ends, SI from zero.</param>
    public KitPiece Simple(string id, string kind, string reads, (string Words, double Share, double Amount) accuracy, Display display, double span)
    {
        var text = $"accuracy: {accuracy.Words}, resolution: {Step(display, display.Unit)}";
        var isThermometer = kind is "psychrometer" or "thermometer";
        var statement = new Statement(text, x => accuracy.Share * Math.Abs(x) + accuracy.Amount, isThermometer ? IcePoint : 0, isThermometer ? ThermometerSpan : span) { IsPlaced = true };
        // A key of the job file says that one probe read return and supply, once the schema has it.
        var probes = HasProbesKey && kind == "psychrometer" && model == ErrorModel.OneProbe ? ", probes: 1" : "";
        return new KitPiece(
            new SimulatedInstrument(draws, model, statement, display),
            $"{{id: {id}, kind: {kind}, serial: S-{id}, calibrated: 2026-02-02, {text}{probes}, reads: [{reads}]}}", accuracy.Words, "none");
    }

    /// <summary>Whether the schema has the key <c>probes</c> of an instrument.</summary>
    private static bool HasProbesKey => true;

    /// <summary>A step with a unit of differences.</summary>
    public static string Step(Display display, string unit) => string.Create(CultureInfo.InvariantCulture, $"{display.Step} {(unit is "°C" ? "K" : unit)}");

    private (Statement Statement, string Words) Thermometer()
    {
        (Statement, string) Class(string sensor, double flat, double slope) => (
            new Statement($"sensor: {sensor}", t => Math.Max(flat, slope * Math.Abs(t - IcePoint)), IcePoint, ThermometerSpan) { Slope = slope }, sensor);
        (Statement, string) Resistance(string sensor, double flat, double slope) => (
            new Statement($"sensor: {sensor}", t => flat + slope * Math.Abs(t - IcePoint), IcePoint, ThermometerSpan) { Slope = slope }, sensor);
        (Statement, string) Stated(double kelvins)
        {
            var shown = us ? string.Create(CultureInfo.InvariantCulture, $"{kelvins * 1.8:0.0} °F") : string.Create(CultureInfo.InvariantCulture, $"{kelvins:0.0} K");
            var exact = us ? Math.Round(kelvins * 1.8, 1) / 1.8 : kelvins;
            return (new Statement($"sensor: thermistor, accuracy: {shown}", _ => exact, IcePoint, ThermometerSpan) { IsPlaced = true }, string.Create(CultureInfo.InvariantCulture, $"thermistor, {kelvins} K"));
        }

        return draws.Whole(0, 9) switch
        {
            0 => Class("thermocouple K class 1", 1.5, 0.004),
            1 => Class("thermocouple K class 2", 2.5, 0.0075),
            2 => Class("thermocouple T class 1", 0.5, 0.004),
            3 => Resistance("RTD class A", 0.15, 0.002),
            4 => Resistance("RTD class B", 0.3, 0.005),
            5 or 6 => Stated(0.5),
            7 or 8 => Stated(0.6),
            _ => Stated(1.0),
        };
    }

    private (string Checks, string Kind, double Known) GaugeChecks(SimulatedInstrument gauge, double working, double scale)
    {
        var kind = draws.Whole(0, 19) switch
        {
            < 5 => "none",
            < 10 => "zero",
            < 14 => "zeroed",
            < 16 => "known",
            _ => "zero and known",
        };
        const string Place = "port";
        var parts = new List<string>();
        var known = 0.0;
        if (kind is "zero" or "zero and known")
        {
            parts.Add($"zero: {gauge.Read(Place, 0)}");
        }
        else if (kind == "zeroed")
        {
            var before = gauge.Read(Place, 0);
            gauge.Adjust(Place, 0);
            parts.Add($"zero: {{read: {before}, adjusted: {gauge.Read(Place, 0)}}}");
        }

        if (kind is "known" or "zero and known")
        {
            var fine = us ? Display.PsiGauge(0.1) : Display.BarGauge(0.01);
            var applied = fine.Rounded(Math.Min(working * draws.Uniform(0.6, 2.2), 0.95 * scale));
            known = applied;
            var expanded = (fine with { Step = fine.Step / 10 }).Rounded(applied * draws.Uniform(0.001, 0.004));
            // The reference's U is of a normal distribution with k = 2 (GUM 4.3.3).
            var truth = applied + expanded / 2 * draws.Normal();
            parts.Add($"known pressure: {{applied: {fine.Text(applied)} +/- {(fine with { Step = fine.Step / 10 }).Number(expanded / fine.Factor)}, read: {gauge.Read(Place, truth)}, reference: nitrogen against a test gauge}}");
        }

        return (parts.Count == 0 ? "" : $", checks: {{{string.Join(", ", parts)}}}", kind, known);
    }
}
