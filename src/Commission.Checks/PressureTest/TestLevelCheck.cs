using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.NitrogenAnalysis;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;
using QuantityValue = Commission.Messages.QuantityValue;

namespace Commission.Checks.PressureTest;

/// <summary>Whether the test pressure was high enough for the section and not above what its weakest part may bear.</summary>
internal sealed class TestLevelCheck : ICheck
{
    public string Id => "pressure-test.level";

    public string Phase => Phases.PressureTest;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PressureTest is not { } test)
            yield break;
        // Absolute pressures share the atmosphere, so the difference to it is the gauge pressure with its own uncertainty.
        var atmosphere = context.Get<SiteAtmosphere>().Value;
        (CorrectedReading Reading, Uncertain Value)[] hold = [.. Hold(context, test).Select(Gauge)];
        (CorrectedReading Reading, Uncertain Value)[] stages = [.. test.Stages.Select((s, i) => Stage(context, test, context.Present.Text(PressureTestMessages.ReadingStage(new(i + 1, 0), new(s.Pressure.Text))), s)).Select(Gauge)];
        (CorrectedReading Reading, Uncertain Value)[] strength = test.Strength is { } raised ? [Gauge(Stage(context, test, context.Present.Text(PressureTestMessages.ReadingStrength), raised))] : [];
        if (hold.Length == 0 && strength.Length == 0 && test.Tightness?.Series is { Data.UnitIsGuessed: true } log)
        {
            // Whether 41 is bar or psi decides between a weak test and a danger: a guess decides nothing.
            yield return context.Finding(this).Use(PressureTestMessages.ReadingLog, log.File).NotEvaluated(
                EvidenceMessages.UnitGuessed(new(log.Data.File), new(log.Data.Unit)), EvidenceMessages.UnitGuessedNext(new(log.Data.File), new(log.Data.Unit)));
            yield break;
        }

        if (hold.Length == 0 && strength.Length == 0)
        {
            yield return context.Finding(this).NotEvaluated(PressureTestMessages.LevelNotWritten, PressureTestMessages.LevelNotWrittenNext);
            yield break;
        }

        yield return Minimum(context, test, hold.Length > 0 ? hold : strength);

        (CorrectedReading Reading, Uncertain Value) Gauge(CorrectedReading reading) => (reading, reading.Value - atmosphere);

        // A pack that asks for a strength test above the design pressure bounds the hold by the design pressure, and the strength test by what the parts bear.
        var strengthApart = context.Limits.Find(LimitIds.PressureTestStrengthMinimumFactor) is not null && strength.Length > 0;
        (CorrectedReading Reading, Uncertain Value)[] bounded = [.. hold, .. stages, .. strengthApart ? [] : strength];
        if (bounded.Length > 0)
            yield return Maximum(context, test, PressureTestMessages.SubjectMaximum, bounded, byDesignPressure: true);
        if (strengthApart)
            yield return Maximum(context, test, PressureTestMessages.SubjectStrengthMaximum, strength, byDesignPressure: false);
    }

    private static IEnumerable<CorrectedReading> Hold(CheckContext context, Jobs.Model.PressureTest test) => test.Tightness is { } hold
        ? new[] { hold.From }.Concat(hold.Readings).Append(hold.To).OfType<HoldPoint>()
            .Select(point => context.Readings.Pressure(context.Present.Text(PressureTestMessages.ReadingLevel(new(point.At.Text))), ReadingName.PressureTest, point.Pressure, test.With))
            .Concat(NitrogenRows.Extremes(context, test, hold))
        : [];

    private static CorrectedReading Stage(CheckContext context, Jobs.Model.PressureTest test, string name, TestStage stage) =>
        context.Readings.Pressure(name, ReadingName.PressureTest, stage.Pressure, test.With);

    // Every reading of the test is named, since any of them could be the lowest or the highest; only the one that is carries its steps.
    private FindingBuilder Begin(CheckContext context, Jobs.Model.PressureTest test, Message subject, CorrectedReading judged, (CorrectedReading Reading, Uncertain Value)[] all)
    {
        var finding = context.Finding(this, context.Present.Text(subject)).Use(judged);
        foreach (var use in all.SelectMany(a => a.Reading.Uses))
            finding.Use(use);
        return finding.Use(PressureTestMessages.ReadingSection, test.Section);
    }

    private Finding Minimum(CheckContext context, Jobs.Model.PressureTest test, (CorrectedReading Reading, Uncertain Value)[] all)
    {
        var (reading, gauge) = all.MinBy(g => g.Value.Value);
        var finding = Begin(context, test, PressureTestMessages.SubjectMinimum, reading, all);
        var present = context.Present;
        if (context.Limits.Find(LimitIds.PressureTestLevel) is { Lower: not null } makers)
        {
            var stated = context.State(makers);
            var least = makers.Lower!.Reference == PressureReference.Absolute ? stated.LowerSi!.Value - context.Get<SiteAtmosphere>().Value.Value : makers.Lower.Si;
            return Said(finding.Judge(gauge, DisplayKind.Pressure, stated with { LowerSi = least, UpperSi = null }), gauge, present.InMessage(least, DisplayKind.Pressure), present);
        }

        if (SectionDesignPressure.Of(context, test.Section) is not { } design)
            return finding.NotEvaluated(PressureTestMessages.LevelNoDesign, PressureTestMessages.LevelNoDesignNext);
        finding.Use(design.Name, design.Given);
        var limit = context.Limits.Require(LimitIds.PressureTestMinimumFactor);
        var factor = limit.Least;
        var minimum = factor.Si * design.Gauge;
        finding.Step("p_min", PressureTestMessages.StepLevelLeast, PressureTestMessages.StepFactorTimesDesign, string.Create(CultureInfo.InvariantCulture, $"{factor.Si:0.###} × {design.Given.Text}"), present.Text(minimum, DisplayKind.Pressure), limit.Source);
        // Nobody is sent beyond what the weakest part bears.
        var bears = test.WeakestPart is { } weakest ? weakest.Rated.Value.ToGauge(context.Get<SiteAtmosphere>().Pressure).Si : double.PositiveInfinity;
        if (minimum > bears)
        {
            minimum = bears;
            finding.Use(PressureTestMessages.ReadingRating(new(test.WeakestPart!.What.Value)), test.WeakestPart.Rated)
                .Step("p_min", PressureTestMessages.StepLevelLeastBorne, PressureTestMessages.StepRating, test.WeakestPart.Rated.Text, present.Text(minimum, DisplayKind.Pressure));
        }

        var statement = Bound(context, limit, LimitKind.AtLeast, minimum, null);
        if (limit.Tier is not (LimitTier.Maker or LimitTier.Pack) && !finding.Judge(gauge, DisplayKind.Pressure, statement).Passes)
        {
            // So far below, the joints were never near the pressure that they will carry: nobody fails it, and nobody signs it without a word.
            if (context.Limits.Find(LimitIds.PressureTestMinimumFactorCondition) is { } counts && gauge.Value < counts.Least.Si * Math.Min(design.Gauge, bears))
            {
                return finding.Decide(true).Reserve(PressureTestMessages.LevelFarBelow(present.InMessage(gauge.Value, DisplayKind.Pressure), present.InMessage(design.Gauge, DisplayKind.Pressure)))
                    .Next(PressureTestMessages.LevelBelowUsualNext)
                    .Say(PressureTestMessages.LevelBelowUsual(present.InMessage(gauge.Value, DisplayKind.Pressure), present.InMessage(minimum, DisplayKind.Pressure))).Build();
            }

            return finding.Next(PressureTestMessages.LevelBelowUsualNext).Information(
                PressureTestMessages.LevelBelowUsual(present.InMessage(gauge.Value, DisplayKind.Pressure), present.InMessage(minimum, DisplayKind.Pressure)), PressureTestMessages.LevelBelowUsualKind);
        }

        return Said(finding.Judge(gauge, DisplayKind.Pressure, statement), gauge, present.InMessage(minimum, DisplayKind.Pressure), present);
    }

    private static Finding Said(FindingBuilder finding, Uncertain gauge, QuantityValue least, Presentation present) => finding.Conclude(
        PressureTestMessages.LevelMet(present.InMessage(gauge.Value, DisplayKind.Pressure), least),
        PressureTestMessages.LevelMissed(present.InMessage(gauge.Value, DisplayKind.Pressure), least),
        PressureTestMessages.LevelMissedNext);

    private Finding Maximum(CheckContext context, Jobs.Model.PressureTest test, Message subject, (CorrectedReading Reading, Uncertain Value)[] all, bool byDesignPressure)
    {
        var (reading, gauge) = all.MaxBy(g => g.Value.Value);
        var finding = Begin(context, test, subject, reading, all);
        var present = context.Present;
        LimitStatement? strictest = null;
        var rating = double.PositiveInfinity;
        if (test.WeakestPart is { } weakest && context.Limits.Find(LimitIds.PressureTestMaximumFactorWeakestPart) is { Upper: { } share } part)
        {
            var rated = weakest.Rated.Value.ToGauge(context.Get<SiteAtmosphere>().Pressure).Si;
            finding.Use(PressureTestMessages.ReadingRating(new(weakest.What.Value)), weakest.Rated);
            rating = share.Si * rated;
            strictest = Bound(context, part, LimitKind.AtMost, null, rating);
            finding.Step("p_max", PressureTestMessages.StepWeakest(new(weakest.What.Value)), PressureTestMessages.StepFactorTimesRating, string.Create(CultureInfo.InvariantCulture, $"{share.Si:0.###} × {weakest.Rated.Text}"), present.Text(share.Si * rated, DisplayKind.Pressure), part.Source);
        }

        // A factor above one stands for what parts bear beyond the design pressure of their side: the weakest part's own rating knows that better, and leaves
        // only what nothing in the circuit bears. So it does for lines and coil, of which one is the high side's. What holds the low side of the unit itself is bounded
        // by its plate, whatever another part bears. Else a factor of at most one is the design pressure itself.
        var limited = context.Limits.Find(LimitIds.PressureTestMaximumFactor);
        var isPartsOwn = strictest is not null && (SectionDesignPressure.HasBothSides(test.Section) || (limited?.Upper?.Si > 1 && !SectionDesignPressure.HoldsLowSideOfUnit(test.Section)));
        var design = isPartsOwn ? SectionDesignPressure.Highest(context) : SectionDesignPressure.Of(context, test.Section);
        if (byDesignPressure && design is not null && limited is { Upper: { } factor } ceiling)
        {
            finding.Use(design.Name, design.Given);
            var most = factor.Si * design.Gauge;
            finding.Step("p_max", PressureTestMessages.StepCeiling, PressureTestMessages.StepFactorTimesDesign, string.Create(CultureInfo.InvariantCulture, $"{factor.Si:0.###} × {design.Given.Text}"), present.Text(most, DisplayKind.Pressure), ceiling.Source);
            if (strictest?.UpperSi is not { } other || most < other)
                strictest = Bound(context, ceiling, LimitKind.AtMost, null, most);
        }

        if (strictest is null)
            return finding.NotEvaluated(PressureTestMessages.LevelNoBound, PressureTestMessages.LevelNoBoundNext);
        // A limit above the low figure of the plate says whose it is, and why that figure does not bind.
        var plate = strictest.UpperSi >= rating ? SectionDesignPressure.Low(context) : null;
        if (plate is not null && (test.Section is null || SectionDesignPressure.IsShutOffFromUnit(test.Section)) && !(byDesignPressure && plate.Given == design?.Given))
            finding.Use(plate.Name, plate.Given);
        var low = plate?.Gauge < rating ? plate : null;
        if (low is not null && SectionDesignPressure.IsShutOffFromUnit(test.Section))
        {
            strictest = strictest with { Text = present.Text(PressureTestMessages.LimitOfWeakest(new(strictest.Text), new(test.WeakestPart!.What.Value))) };
            finding.Remark(PressureTestMessages.LevelPartsOwn(new(test.WeakestPart.What.Value), present.InMessage(rating, DisplayKind.Pressure), present.InMessage(low.Gauge, DisplayKind.Pressure)));
        }

        finding.Judge(gauge, DisplayKind.Pressure, strictest);
        if (low is not null && test.Section is null && gauge.Value > low.Gauge && finding.Passes)
        {
            finding.Reserve(PressureTestMessages.LevelSectionNotWritten(present.InMessage(low.Gauge, DisplayKind.Pressure)))
                .Next(PressureTestMessages.LevelSectionNotWrittenNext);
        }

        if (test.WeakestPart is null && design is not null && gauge.Value > design.Gauge && finding.Passes)
            finding.Reserve(PressureTestMessages.LevelWeakestNotWritten).Next(PressureTestMessages.LevelWeakestNotWrittenNext);
        return finding.ConcludeOrDanger(
            PressureTestMessages.LevelBorne(present.InMessage(gauge.Value, DisplayKind.Pressure)),
            PressureTestMessages.LevelTooHigh(present.InMessage(gauge.Value, DisplayKind.Pressure), present.InMessage(strictest.UpperSi!.Value, DisplayKind.Pressure)),
            PressureTestMessages.LevelTooHighNext);
    }

    private static LimitStatement Bound(CheckContext context, Limit limit, LimitKind kind, double? lower, double? upper)
    {
        var pressure = context.Present.InMessage((lower ?? upper)!.Value, DisplayKind.Pressure);
        var text = context.Present.Text(kind == LimitKind.AtLeast ? PressureTestMessages.LimitAtLeast(pressure) : PressureTestMessages.LimitAtMost(pressure));
        return context.State(limit) with { Kind = kind, Text = text, LowerSi = lower, UpperSi = upper };
    }
}
