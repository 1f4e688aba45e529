using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Fluids.Water;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Instruments;

/// <summary>How far each thermometer was off in ice water, as found.</summary>
internal sealed class IcePointCheck : ICheck
{
    public string Id => "instrument.ice-point";

    public string Phase => Phases.Instruments;

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
        var error = check.Read.Value.Si - ConversionFactors.CelsiusZero;
        var sign = error < 0 ? -1.0 : 1.0;
        var size = context.Scope.Reading(sign * error, sign * instrument.BathCause, sign * instrument.ZeroCause);
        var present = context.Present;
        finding.Step("e", "error in ice water, as found", "T_read − 0 °C", $"{check.Read.Text} − {present.Text(ConversionFactors.CelsiusZero, DisplayKind.Temperature)}", present.Text(error, DisplayKind.TemperatureDifference), "ice point of water, 0 °C");
        if (check.Adjusted is { } adjusted)
        {
            var left = adjusted.Value.Si - ConversionFactors.CelsiusZero;
            finding.Step("r", "residual after adjusting", "T_adjusted − 0 °C", adjusted.Text, present.Text(left, DisplayKind.TemperatureDifference), "taken off every reading of this instrument");
        }

        var replace = context.Limits.Require(LimitIds.InstrumentsIcePointReplace);
        finding.Judge(size, DisplayKind.TemperatureDifference, context.State(replace));
        var good = context.Limits.Find(LimitIds.InstrumentsIcePointGood);
        var off = present.Text(Math.Abs(error), DisplayKind.TemperatureDifference);
        var way = error > 0 ? "high" : "low";
        if (!finding.Passes)
        {
            finding.Say($"{instrument.Id} read {off} {way} in ice water: more than may be corrected.").Remark(instrument.FailedIcePoint is not null ? InstrumentsMessages.DeviationStays : null).Next("Repeat with fresh crushed ice and clean water; if it stays, replace the sensor.");
        }
        else if (good?.Upper is { } bound && Math.Abs(error) > bound.Si && check.Adjusted is null)
        {
            finding.Say($"{instrument.Id} read {off} {way} in ice water; the readings are corrected for it.").Next("Adjust the instrument as its maker says.");
        }
        else
        {
            finding.Say(check.Adjusted is { } a
                ? $"{instrument.Id} read {off} {way} in ice water and was adjusted; {present.Text(a.Value.Si - ConversionFactors.CelsiusZero, DisplayKind.TemperatureDifference)} is left and taken off its readings."
                : $"{instrument.Id} read {off} {way} in ice water; taken off its readings.");
        }

        if (error < -0.5)
            finding.Remark("A low reading can come from salt or dirt in the bath: about 0.06 °C for each gram of salt in a litre.");
        return finding.Build();
    }
}

/// <summary>How far a thermometer was off in a warm bath, beside a reference.</summary>
internal sealed class WarmPointCheck : ICheck
{
    public string Id => "instrument.warm-point";

    public string Phase => Phases.Instruments;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var instrument in context.Get<InstrumentKit>().All)
        {
            if (instrument.Described.Checks?.WarmPoint is { } check)
                yield return Judge(context, instrument, check);
        }
    }

    private Finding Judge(CheckContext context, UsedInstrument instrument, ReferenceCheck check)
    {
        var finding = context.Finding(this, instrument.Id);
        var error = ReferenceError.Of(context, finding, instrument, check, new ReferenceWords("reference thermometer", "bath temperature", "in the bath", $"stated with {check.Applied.Text}", DisplayKind.TemperatureDifference));
        finding.Step("e", "error in the warm bath", "T_read − T_reference", error.Difference, context.Present.Text(error.Si, DisplayKind.TemperatureDifference));
        if (context.Limits.Find(LimitIds.InstrumentsWarmPointRange) is { } range && range.ToTolerance() is var span
            && (check.Applied.Value.Si < span.Lower || check.Applied.Value.Si > span.Upper))
        {
            finding.Remark($"The bath was outside {context.State(range).Text}, where liquid lines run.");
        }

        var replace = context.Limits.Require(LimitIds.InstrumentsWarmPointReplace);
        finding.Judge(error.Size, DisplayKind.TemperatureDifference, context.State(replace));
        var off = context.Present.Text(Math.Abs(error.Si), DisplayKind.TemperatureDifference);
        if (check.Applied.Stated is null)
            finding.Reserve("the reference has no stated uncertainty").Next("State the uncertainty of the reference, 113 °F +/- 0.5.");
        return finding.Conclude(
            $"{instrument.Id} was {off} off at {check.Applied.Text}.",
            $"{instrument.Id} was {off} off at {check.Applied.Text}: more than may be corrected.",
            "Repeat the check; if it stays, replace the sensor.");
    }
}

/// <summary>How far a thermometer was off in boiling water, at the pressure of the site.</summary>
internal sealed class BoilingPointCheck : ICheck
{
    public string Id => "instrument.boiling-point";

    public string Phase => Phases.Instruments;

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
        var replace = context.Limits.Require(LimitIds.InstrumentsBoilingPointReplace);
        finding.Judge(size, DisplayKind.TemperatureDifference, context.State(replace));
        var off = context.Present.Text(size.Value, DisplayKind.TemperatureDifference);
        return finding.Conclude(
            $"{instrument.Id} was {off} off in boiling water.",
            $"{instrument.Id} was {off} off in boiling water: more than may be corrected.",
            "Repeat the check with a rolling boil; if it stays, replace the sensor.");
    }
}

/// <summary>Two instruments at one place: thermometers on one pipe, gauges on one port.</summary>
internal sealed class PairAgreementCheck : ICheck
{
    public string Id => "instrument.pair-agreement";

    public string Phase => Phases.Instruments;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var instrument in context.Get<InstrumentKit>().All)
        {
            if (instrument.Described.Checks?.Pair is { } pair && instrument.Dimension == Measurement.Quantities.Dimension.TemperatureDifference)
                yield return Judge(context, instrument, pair);
        }
    }

    private Finding Judge(CheckContext context, UsedInstrument instrument, PairCheck pair)
    {
        var finding = context.Finding(this, instrument.Id).Use($"{instrument.Id}", pair.Read, instrument.Id).Use(pair.With.Value, pair.Other, pair.With.Value);
        var other = context.Get<InstrumentKit>().Find(pair.With.Value);
        var difference = pair.Read.Value.Si - pair.Other.Value.Si;
        var sign = difference < 0 ? -1.0 : 1.0;
        var terms = new List<RootTerm> { sign * instrument.ZeroCause };
        if (other is not null)
            terms.Add(-sign * other.ZeroCause);
        finding.Step("d", "difference of the pair", "T_a − T_b", $"{pair.Read.Text} − {pair.Other.Text}", context.Present.Text(difference, DisplayKind.TemperatureDifference));
        var limit = context.Limits.Require(LimitIds.InstrumentsPairAgreement);
        finding.Judge(context.Scope.Reading(Math.Abs(difference), [.. terms]), DisplayKind.TemperatureDifference, context.State(limit));
        var text = context.Present.Text(Math.Abs(difference), DisplayKind.TemperatureDifference);
        return finding.Conclude(
            $"{instrument.Id} and {pair.With.Value} differ by {text} at one place.",
            $"{instrument.Id} and {pair.With.Value} differ by {text} at one place.",
            "Swap them and read again; check the one that is off in ice water.");
    }
}

/// <summary>Whether the wick of a wet bulb could show a wet bulb at all.</summary>
internal sealed class WickCheck : ICheck
{
    public string Id => "instrument.wick";

    public string Phase => Phases.Instruments;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var instrument in context.Get<InstrumentKit>().All)
        {
            if (instrument.Described.Checks?.Wick is { } wick)
                yield return Judge(context, instrument, wick);
        }
    }

    private Finding Judge(CheckContext context, UsedInstrument instrument, Jobs.Model.WickCheck wick)
    {
        var finding = context.Finding(this, instrument.Id).Use($"{instrument.Id}: wick clean", wick.Clean, instrument.Id).Use($"{instrument.Id}: wick wetted", wick.Wetted, instrument.Id);
        if (wick is { Clean: null, Wetted: null, AirSpeed: null })
            return finding.NotEvaluated(InstrumentsMessages.WickNotTold, InstrumentsMessages.WickNotToldNext, "instruments: [{checks: {wick: {clean: yes, wetted: yes, air speed: 800 fpm}}}]");
        if (wick.Clean?.Value == false || wick.Wetted?.Value == false)
            return finding.Decide(false).Say($"The wick of {instrument.Id} was {(wick.Clean?.Value == false ? "not clean" : "dry")}: its wet bulb reads too warm.").Next(this.WhenItFails()).Build();
        if (wick.AirSpeed is { } speed && context.Limits.Find(LimitIds.AirWetBulbVelocity) is { } limit)
        {
            var reading = context.Readings.Plain($"{instrument.Id}: air over the wick", ReadingName.AirVelocity, speed, DisplayKind.Velocity);
            finding.Use(reading).Judge(reading.Value, DisplayKind.Velocity, context.State(limit));
            if (!finding.Passes)
                return finding.Say($"Air moved over the wick of {instrument.Id} at {speed.Text} only: its wet bulb reads too warm.").Next(this.WhenItFails()).Build();
        }
        else
        {
            finding.Decide(true).Reserve(InstrumentsMessages.WickAirNotRead).Next(InstrumentsMessages.WickAirNotReadNext, "instruments: [{checks: {wick: {air speed: 800 fpm}}}]");
        }

        if (wick.Clean is null || wick.Wetted is null)
            finding.Reserve(InstrumentsMessages.WickNotSeen).Next(InstrumentsMessages.WickNotSeenNext, "instruments: [{checks: {wick: {clean: yes, wetted: yes}}}]");
        return finding.Say($"The wick of {instrument.Id} could show a wet bulb.").Build();
    }
}
