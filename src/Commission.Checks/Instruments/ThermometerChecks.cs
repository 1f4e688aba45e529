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
        var finding = context.Finding(this, instrument.Id).Use(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.InIceWater), check.Read, instrument.Id).Use(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.AfterAdjusting), check.Adjusted, instrument.Id);
        var error = check.Read.Value.Si - ConversionFactors.CelsiusZero;
        var sign = error < 0 ? -1.0 : 1.0;
        var size = context.Scope.Reading(sign * error, sign * instrument.BathCause, sign * instrument.ZeroCause);
        var present = context.Present;
        finding.Step("e", InstrumentsMessages.ErrorInIce, "T_read − 0 °C", $"{check.Read.Text} − {present.Text(ConversionFactors.CelsiusZero, DisplayKind.Temperature)}", present.Text(error, DisplayKind.TemperatureDifference), InstrumentsMessages.IcePointOfWater);
        if (check.Adjusted is { } adjusted)
        {
            var left = adjusted.Value.Si - ConversionFactors.CelsiusZero;
            finding.Step("r", InstrumentsMessages.LeftAfterAdjusting, "T_adjusted − 0 °C", adjusted.Text, present.Text(left, DisplayKind.TemperatureDifference), InstrumentsMessages.TakenOffInstrument);
        }

        var replace = context.Limits.Require(LimitIds.InstrumentsIcePointReplace);
        finding.Judge(size, DisplayKind.TemperatureDifference, context.State(replace));
        var good = context.Limits.Find(LimitIds.InstrumentsIcePointGood);
        var off = present.InMessage(Math.Abs(error), DisplayKind.TemperatureDifference);
        var way = off.Value == 0 ? InstrumentsMessages.IceOffWay.Right : error > 0 ? InstrumentsMessages.IceOffWay.High : InstrumentsMessages.IceOffWay.Low;
        var read = InstrumentsMessages.IceOff(new(instrument.Id), off, way);
        if (!finding.Passes)
        {
            finding.Say(InstrumentsMessages.IceTooFarOff(read)).Remark(instrument.FailedIcePoint is not null ? InstrumentsMessages.DeviationStays : null).Next(InstrumentsMessages.IceTooFarOffNext);
        }
        else if (good?.Upper is { } bound && Math.Abs(error) > bound.Si && check.Adjusted is null)
        {
            finding.Say(InstrumentsMessages.IceCorrected(read)).Next(InstrumentsMessages.IceCorrectedNext);
        }
        else
        {
            finding.Say(check.Adjusted is { } a
                ? InstrumentsMessages.IceAdjusted(read, present.InMessage(a.Value.Si - ConversionFactors.CelsiusZero, DisplayKind.TemperatureDifference))
                : off.Value == 0 ? InstrumentsMessages.IceRight(read) : InstrumentsMessages.IceTakenOff(read));
        }

        if (error < -0.5)
            finding.Remark(InstrumentsMessages.SaltInBath);
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
        var error = ReferenceError.Of(context, finding, instrument, check, new ReferenceWords(InstrumentsMessages.ReferenceThermometer, InstrumentsMessages.BathTemperature, InstrumentsMessages.InTheBath, InstrumentsMessages.StatedWith(new(check.Applied.Text)), DisplayKind.TemperatureDifference));
        finding.Step("e", InstrumentsMessages.ErrorInBath, "T_read − T_reference", error.Difference, context.Present.Text(error.Si, DisplayKind.TemperatureDifference));
        if (context.Limits.Find(LimitIds.InstrumentsWarmPointRange) is { } range && range.ToTolerance() is var span
            && (check.Applied.Value.Si < span.Lower || check.Applied.Value.Si > span.Upper))
        {
            finding.Remark(InstrumentsMessages.BathOutside(new(context.State(range).Text)));
        }

        var replace = context.Limits.Require(LimitIds.InstrumentsWarmPointReplace);
        finding.Judge(error.Size, DisplayKind.TemperatureDifference, context.State(replace));
        var off = context.Present.InMessage(Math.Abs(error.Si), DisplayKind.TemperatureDifference);
        if (check.Applied.Stated is null)
            finding.Reserve(InstrumentsMessages.ReferenceUnknown).Next(InstrumentsMessages.ReferenceUnknownNext);
        return finding.Conclude(
            InstrumentsMessages.BathOff(new(instrument.Id), off, new(check.Applied.Text)), InstrumentsMessages.BathTooFarOff(new(instrument.Id), off, new(check.Applied.Text)), InstrumentsMessages.BathTooFarOffNext);
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
        var finding = context.Finding(this, instrument.Id).Use(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.InBoilingWater), shown, instrument.Id);
        foreach (var use in atmosphere.Uses)
            finding.Use(use);
        if (!atmosphere.IsStated)
            return finding.NotEvaluated(InstrumentsMessages.SitePressureUnknown, InstrumentsMessages.SitePressureUnknownNext);
        var boiling = Uncertain.Apply(p => WaterSaturation.Temperature(p) is { Ok: true, Value: var t } ? t : double.NaN, atmosphere.Value);
        if (!double.IsFinite(boiling.Value))
            return finding.NotEvaluated(InstrumentsMessages.DoesNotBoil, InstrumentsMessages.DoesNotBoilNext);
        var error = context.Scope.Reading(shown.Value.Si, 1.0 * instrument.ZeroCause) - boiling;
        var size = Uncertain.Abs(error);
        finding
            .Step(atmosphere.Step)
            .Step("T_b", InstrumentsMessages.BoilingPoint, "T_sat(p_atm)", context.Present.Text(atmosphere.Value.Value, DisplayKind.AbsolutePressure), context.Present.Text(boiling, DisplayKind.Temperature), "IAPWS-95, Wagner and Pruß 2002")
            .Step("e", InstrumentsMessages.ErrorInBoilingWater, "T_read − T_b", $"{shown.Text} − {context.Present.Text(boiling.Value, DisplayKind.Temperature)}", context.Present.Text(error.Value, DisplayKind.TemperatureDifference));
        var replace = context.Limits.Require(LimitIds.InstrumentsBoilingPointReplace);
        finding.Judge(size, DisplayKind.TemperatureDifference, context.State(replace));
        var off = context.Present.InMessage(size.Value, DisplayKind.TemperatureDifference);
        return finding.Conclude(InstrumentsMessages.BoilingOff(new(instrument.Id), off), InstrumentsMessages.BoilingTooFarOff(new(instrument.Id), off), InstrumentsMessages.BoilingTooFarOffNext);
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
        var finding = context.Finding(this, instrument.Id).Use(InstrumentsMessages.Named(new(instrument.Id)), pair.Read, instrument.Id).Use(InstrumentsMessages.Named(new(pair.With.Value)), pair.Other, pair.With.Value);
        var other = context.Get<InstrumentKit>().Find(pair.With.Value);
        var difference = pair.Read.Value.Si - pair.Other.Value.Si;
        var sign = difference < 0 ? -1.0 : 1.0;
        var terms = new List<RootTerm> { sign * instrument.ZeroCause };
        if (other is not null)
            terms.Add(-sign * other.ZeroCause);
        finding.Step("d", InstrumentsMessages.DifferenceOfPair, "T_a − T_b", $"{pair.Read.Text} − {pair.Other.Text}", context.Present.Text(difference, DisplayKind.TemperatureDifference));
        var limit = context.Limits.Require(LimitIds.InstrumentsPairAgreement);
        finding.Judge(context.Scope.Reading(Math.Abs(difference), [.. terms]), DisplayKind.TemperatureDifference, context.State(limit));
        var by = context.Present.InMessage(Math.Abs(difference), DisplayKind.TemperatureDifference);
        var sentence = InstrumentsMessages.DifferAtOnePlace(new(instrument.Id), new(pair.With.Value), by);
        return finding.Conclude(sentence, sentence, InstrumentsMessages.DifferAtOnePlaceNext);
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
        var finding = context.Finding(this, instrument.Id).Use(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.WickClean), wick.Clean, instrument.Id).Use(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.WickWetted), wick.Wetted, instrument.Id);
        if (wick is { Clean: null, Wetted: null, AirSpeed: null })
            return finding.NotEvaluated(InstrumentsMessages.WickNotTold, InstrumentsMessages.WickNotToldNext, "instruments: [{checks: {wick: {clean: yes, wetted: yes, air speed: 800 fpm}}}]");
        if (wick.Clean?.Value == false || wick.Wetted?.Value == false)
            return finding.Decide(false).Say(InstrumentsMessages.WickBad(new(instrument.Id), wick.Clean?.Value == false ? InstrumentsMessages.WickBadFault.NotClean : InstrumentsMessages.WickBadFault.Dry)).Next(this.WhenItFails()).Build();
        if (wick.AirSpeed is { } speed && context.Limits.Find(LimitIds.AirWetBulbVelocity) is { } limit)
        {
            var reading = context.Readings.Plain(context.Present.Text(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.AirOverWick)), ReadingName.AirVelocity, speed, DisplayKind.Velocity);
            finding.Use(reading).Judge(reading.Value, DisplayKind.Velocity, context.State(limit));
            if (!finding.Passes)
                return finding.Say(InstrumentsMessages.WickAirSlow(new(instrument.Id), new(speed.Text))).Next(this.WhenItFails()).Build();
        }
        else
        {
            finding.Decide(true).Reserve(InstrumentsMessages.WickAirNotRead).Next(InstrumentsMessages.WickAirNotReadNext, "instruments: [{checks: {wick: {air speed: 800 fpm}}}]");
        }

        if (wick.Clean is null || wick.Wetted is null)
            finding.Reserve(InstrumentsMessages.WickNotSeen).Next(InstrumentsMessages.WickNotSeenNext, "instruments: [{checks: {wick: {clean: yes, wetted: yes}}}]");
        return finding.Say(InstrumentsMessages.WickGood(new(instrument.Id))).Build();
    }
}
