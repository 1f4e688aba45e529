using Commission.Checks.Readings;
using Commission.Fluids.Water;
using Commission.Jobs.Model;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Instruments;

/// <summary>How far a thermometer was off in boiling water, at the pressure of the site.</summary>
internal sealed class BoilingPointCheck : ICheck
{
    public string Id => "instrument.boiling-point";

    public string Phase => Phases.Instruments;

    public string Title => "Boiling point";

    public CheckHelp Help { get; } = new(
        "How far was the thermometer off in boiling water? Water boils at the temperature that belongs to the site's pressure, not at 100 °C (212 °F).",
        "error = reading in boiling water − T_sat(p_atm)",
        "Saturation of water: IAPWS-95, Wagner and Pruß 2002 (published). Bounds of the ice point, used here (common practice, no source).",
        "Boil clean water hard, keep the sensor off the pot's wall. State elevation or station pressure, or the reference is wrong by about 1 °C for each 300 m.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var instrument in context.Get<InstrumentKit>().All)
        {
            if (instrument.Described.Checks?.BoilingPoint is { } check)
                yield return Judge(context, instrument, check);
        }
    }

    private Finding Judge(CheckContext context, UsedInstrument instrument, PointCheck check)
    {
        var shown = check.Adjusted ?? check.Read;
        var atmosphere = context.Get<SiteAtmosphere>();
        var finding = context.Finding(this, instrument.Id).Use($"{instrument.Id}: in boiling water", shown, instrument.Id);
        foreach (var use in atmosphere.Uses)
            finding.Use(use);
        if (!atmosphere.IsStated)
            return finding.NotEvaluated("the site's pressure is not known", "Write the site's elevation or station pressure.");
        var boiling = Uncertain.Apply(p => WaterSaturation.Temperature(p) is { Ok: true, Value: var t } ? t : double.NaN, atmosphere.Value);
        if (!double.IsFinite(boiling.Value))
            return finding.NotEvaluated("water does not boil at this pressure", "Check the station pressure.");
        var error = context.Scope.Reading(shown.Value.Si, 1.0 * instrument.ZeroCause) - boiling;
        var size = Uncertain.Abs(error);
        finding
            .Step(atmosphere.Step)
            .Step("T_b", "boiling point of water at the site", "T_sat(p_atm)", context.Present.Text(atmosphere.Value.Value, DisplayKind.AbsolutePressure), context.Present.Text(boiling, DisplayKind.Temperature), "IAPWS-95, Wagner and Pruß 2002")
            .Step("e", "error in boiling water", "T_read − T_b", $"{shown.Text} − {context.Present.Text(boiling.Value, DisplayKind.Temperature)}", context.Present.Text(error.Value, DisplayKind.TemperatureDifference));
        if (context.Limits.Find("instruments.boiling-point.replace") is not { } replace)
            return finding.NotEvaluated("no pack sets a limit", "Name a limits pack.");
        finding.Judge(size, DisplayKind.TemperatureDifference, context.State(replace));
        var off = context.Present.Text(size.Value, DisplayKind.TemperatureDifference);
        return finding.Passes
            ? finding.Say($"{instrument.Id} was {off} off in boiling water.").Build()
            : finding.Say($"{instrument.Id} was {off} off in boiling water: more than may be corrected.").Next("Repeat the check with a rolling boil; if it stays, replace the sensor.").Build();
    }
}
