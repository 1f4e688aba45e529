using Commission.Checks.Readings;
using Commission.Jobs.Model;
using Commission.Measurement.Decisions;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Instruments;

/// <summary>How far each thermometer was off in ice water, as found.</summary>
internal sealed class IcePointCheck : ICheck
{
    private const double IcePoint = 273.15;

    public string Id => "instrument.ice-point";

    public string Phase => Phases.Instruments;

    public string Title => "Ice point";

    public CheckHelp Help { get; } = new(
        "How far was the thermometer off in a cup of crushed ice filled with water? Ice water is 0 °C (32 °F) at any altitude a crew works at, so it is the best reference on a tailgate.",
        "error = reading in ice water − 0 °C; the error as found is judged, the error or the residual left after adjusting is taken off every reading",
        "California Residential Appendix RA3.2, p. RA3-12 (published): within 1 °F good, to 2 °F correct it, beyond 2 °F replace the sensor. Effect of altitude below 0.005 °C (computed).",
        "Use crushed ice to the bottom of an insulated cup, then water, and stir. Low readings with good sensors come from salt or dirt in the water. A sensor that stays more than 2 °F off is replaced.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var instrument in context.Get<InstrumentKit>().All)
        {
            if (instrument.Described.Checks?.IcePoint is { } check)
                yield return Judge(context, instrument, check);
        }
    }

    private Finding Judge(CheckContext context, UsedInstrument instrument, PointCheck check)
    {
        var finding = context.Finding(this, instrument.Id).Use($"{instrument.Id}: in ice water", check.Read, instrument.Id).Use($"{instrument.Id}: after adjusting", check.Adjusted, instrument.Id);
        var error = check.Read.Value.Si - IcePoint;
        var sign = error < 0 ? -1.0 : 1.0;
        var size = context.Scope.Reading(sign * error, sign * instrument.BathCause, sign * instrument.ZeroCause);
        var present = context.Present;
        finding.Step("e", "error in ice water, as found", "T_read − 0 °C", $"{check.Read.Text} − {present.Text(IcePoint, DisplayKind.Temperature)}", present.Text(error, DisplayKind.TemperatureDifference), "ice point of water, 0 °C");
        if (check.Adjusted is { } adjusted)
        {
            var left = adjusted.Value.Si - IcePoint;
            finding.Step("r", "residual after adjusting", "T_adjusted − 0 °C", adjusted.Text, present.Text(left, DisplayKind.TemperatureDifference), "taken off every reading of this instrument");
        }

        if (context.Limits.Find("instruments.ice-point.replace") is not { } replace)
            return finding.NotEvaluated("no pack sets a limit", "Name a limits pack.");
        finding.Judge(size, DisplayKind.TemperatureDifference, context.State(replace));
        var good = context.Limits.Find("instruments.ice-point.good");
        var off = present.Text(Math.Abs(error), DisplayKind.TemperatureDifference);
        var way = error > 0 ? "high" : "low";
        if (!finding.Passes)
        {
            finding.Say($"{instrument.Id} read {off} {way} in ice water: more than may be corrected.").Next("Repeat with fresh crushed ice and clean water; if it stays, replace the sensor.");
        }
        else if (good?.Upper is { } bound && Math.Abs(error) > bound.Si && check.Adjusted is null)
        {
            finding.Say($"{instrument.Id} read {off} {way} in ice water; the readings are corrected for it.").Next("Adjust the instrument as its maker says.");
        }
        else
        {
            finding.Say(check.Adjusted is { } a
                ? $"{instrument.Id} read {off} {way} in ice water and was adjusted; {present.Text(a.Value.Si - IcePoint, DisplayKind.TemperatureDifference)} is left and taken off its readings."
                : $"{instrument.Id} read {off} {way} in ice water; taken off its readings.");
        }

        if (error < -0.5)
            finding.Remark("A low reading can come from salt or dirt in the bath: about 0.06 °C for each gram of salt in a litre.");
        return finding.Build();
    }
}
