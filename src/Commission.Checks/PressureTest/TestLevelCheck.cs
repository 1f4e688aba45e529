using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.NitrogenAnalysis;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

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
        (CorrectedReading Reading, Uncertain Value)[] stages = [.. test.Stages.Select((s, i) => Stage(context, test, string.Create(CultureInfo.InvariantCulture, $"stage {i + 1}, {s.Pressure.Text}"), s)).Select(Gauge)];
        (CorrectedReading Reading, Uncertain Value)[] strength = test.Strength is { } raised ? [Gauge(Stage(context, test, "strength test pressure", raised))] : [];
        if (hold.Length == 0 && strength.Length == 0 && test.Tightness?.Series is { Data.UnitIsGuessed: true } log)
        {
            // Whether 41 is bar or psi decides between a weak test and a danger: a guess decides nothing.
            yield return context.Finding(this).Use("pressure log", log.File).NotEvaluated(
                EvidenceMessages.UnitGuessed(new(log.Data.File), new(log.Data.Unit)), EvidenceMessages.UnitGuessedNext(new(log.Data.File), new(log.Data.Unit)));
            yield break;
        }

        if (hold.Length == 0 && strength.Length == 0)
        {
            yield return context.Finding(this).NotEvaluated("no test pressure is written", "Write the pressure at the start and the end of the hold.");
            yield break;
        }

        yield return Minimum(context, test, hold.Length > 0 ? hold : strength);

        (CorrectedReading Reading, Uncertain Value) Gauge(CorrectedReading reading) => (reading, reading.Value - atmosphere);

        // A pack that asks for a strength test above the design pressure bounds the hold by the design pressure, and the strength test by what the parts bear.
        var strengthApart = context.Limits.Find(LimitIds.PressureTestStrengthMinimumFactor) is not null && strength.Length > 0;
        (CorrectedReading Reading, Uncertain Value)[] bounded = [.. hold, .. stages, .. strengthApart ? [] : strength];
        if (bounded.Length > 0)
            yield return Maximum(context, test, "maximum", bounded, byDesignPressure: true);
        if (strengthApart)
            yield return Maximum(context, test, "strength test, maximum", strength, byDesignPressure: false);
    }

    private static IEnumerable<CorrectedReading> Hold(CheckContext context, Jobs.Model.PressureTest test) => test.Tightness is { } hold
        ? new[] { hold.From }.Concat(hold.Readings).Append(hold.To).OfType<HoldPoint>()
            .Select(point => context.Readings.Pressure($"test pressure, {point.At.Text}", ReadingName.PressureTest, point.Pressure, test.With))
            .Concat(NitrogenRows.Extremes(context, test, hold))
        : [];

    private static CorrectedReading Stage(CheckContext context, Jobs.Model.PressureTest test, string name, TestStage stage) =>
        context.Readings.Pressure(name, ReadingName.PressureTest, stage.Pressure, test.With);

    // Every reading of the test is named, since any of them could be the lowest or the highest; only the one that is carries its steps.
    private FindingBuilder Begin(CheckContext context, Jobs.Model.PressureTest test, string subject, CorrectedReading judged, (CorrectedReading Reading, Uncertain Value)[] all)
    {
        var finding = context.Finding(this, subject).Use(judged);
        foreach (var use in all.SelectMany(a => a.Reading.Uses))
            finding.Use(use);
        return finding.Use("section under test", test.Section);
    }

    private Finding Minimum(CheckContext context, Jobs.Model.PressureTest test, (CorrectedReading Reading, Uncertain Value)[] all)
    {
        var (reading, gauge) = all.MinBy(g => g.Value.Value);
        var finding = Begin(context, test, "minimum", reading, all);
        var present = context.Present;
        if (context.Limits.Find(LimitIds.PressureTestLevel) is { Lower: not null } makers)
        {
            var stated = context.State(makers);
            var least = makers.Lower!.Reference == PressureReference.Absolute ? stated.LowerSi!.Value - context.Get<SiteAtmosphere>().Value.Value : makers.Lower.Si;
            return Said(finding.Judge(gauge, DisplayKind.Pressure, stated with { LowerSi = least, UpperSi = null }), gauge, present.Text(least, DisplayKind.Pressure), present);
        }

        if (SectionDesignPressure.Of(context, test.Section) is not { } design)
            return finding.NotEvaluated("no design pressure is written for this section", "Write the nameplate's design pressure, low and high.");
        finding.Use(design.Name, design.Given);
        var limit = context.Limits.Require(LimitIds.PressureTestMinimumFactor);
        var factor = limit.Least;
        var minimum = factor.Si * design.Gauge;
        finding.Step("p_min", "least test pressure", "factor × design pressure", string.Create(CultureInfo.InvariantCulture, $"{factor.Si:0.###} × {design.Given.Text}"), present.Text(minimum, DisplayKind.Pressure), limit.Source);
        // Nobody is sent beyond what the weakest part bears.
        var bears = test.WeakestPart is { } weakest ? weakest.Rated.Value.ToGauge(context.Get<SiteAtmosphere>().Pressure).Si : double.PositiveInfinity;
        if (minimum > bears)
        {
            minimum = bears;
            finding.Use($"rating of {test.WeakestPart!.What.Value}", test.WeakestPart.Rated)
                .Step("p_min", "least test pressure, no more than the weakest part bears", "rating", test.WeakestPart.Rated.Text, present.Text(minimum, DisplayKind.Pressure));
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

        return Said(finding.Judge(gauge, DisplayKind.Pressure, statement), gauge, present.Text(minimum, DisplayKind.Pressure), present);
    }

    private static Finding Said(FindingBuilder finding, Uncertain gauge, string least, Presentation present) => finding.Conclude(
        $"Lowest test pressure {present.Text(gauge.Value, DisplayKind.Pressure)}, at least {least} asked.",
        $"Lowest test pressure {present.Text(gauge.Value, DisplayKind.Pressure)}, below the {least} asked.",
        "Raise the pressure in steps to the level asked and hold again.");

    private Finding Maximum(CheckContext context, Jobs.Model.PressureTest test, string subject, (CorrectedReading Reading, Uncertain Value)[] all, bool byDesignPressure)
    {
        var (reading, gauge) = all.MaxBy(g => g.Value.Value);
        var finding = Begin(context, test, subject, reading, all);
        var present = context.Present;
        LimitStatement? strictest = null;
        var rating = double.PositiveInfinity;
        if (test.WeakestPart is { } weakest && context.Limits.Find(LimitIds.PressureTestMaximumFactorWeakestPart) is { Upper: { } share } part)
        {
            var rated = weakest.Rated.Value.ToGauge(context.Get<SiteAtmosphere>().Pressure).Si;
            finding.Use($"rating of {weakest.What.Value}", weakest.Rated);
            rating = share.Si * rated;
            strictest = Bound(context, part, LimitKind.AtMost, null, rating);
            finding.Step("p_max", $"rating of the weakest part, {weakest.What.Value}", "factor × rating", string.Create(CultureInfo.InvariantCulture, $"{share.Si:0.###} × {weakest.Rated.Text}"), present.Text(share.Si * rated, DisplayKind.Pressure), part.Source);
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
            finding.Step("p_max", "ceiling on the design pressure", "factor × design pressure", string.Create(CultureInfo.InvariantCulture, $"{factor.Si:0.###} × {design.Given.Text}"), present.Text(most, DisplayKind.Pressure), ceiling.Source);
            if (strictest?.UpperSi is not { } other || most < other)
                strictest = Bound(context, ceiling, LimitKind.AtMost, null, most);
        }

        if (strictest is null)
            return finding.NotEvaluated("neither a design pressure nor the rating of the weakest part is written", "Write the weakest part of the section and what it is rated for.");
        // A limit above the low figure of the plate says whose it is, and why that figure does not bind.
        var plate = strictest.UpperSi >= rating ? SectionDesignPressure.Low(context) : null;
        if (plate is not null && (test.Section is null || SectionDesignPressure.IsShutOffFromUnit(test.Section)) && !(byDesignPressure && plate.Given == design?.Given))
            finding.Use(plate.Name, plate.Given);
        var low = plate?.Gauge < rating ? plate : null;
        if (low is not null && SectionDesignPressure.IsShutOffFromUnit(test.Section))
        {
            strictest = strictest with { Text = $"{strictest.Text}, the rating of {test.WeakestPart!.What.Value}" };
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
            $"Highest test pressure {present.Text(gauge.Value, DisplayKind.Pressure)}, within what the section may bear.",
            $"the section saw {present.Text(gauge.Value, DisplayKind.Pressure)}, above the {present.Text(strictest.UpperSi!.Value, DisplayKind.Pressure)} it may bear.",
            "Release the pressure, keep people away, and have the part judged by its maker before it goes into service.");
    }

    private static LimitStatement Bound(CheckContext context, Limit limit, LimitKind kind, double? lower, double? upper)
    {
        var text = $"{(kind == LimitKind.AtLeast ? "at least" : "at most")} {context.Present.Text((lower ?? upper)!.Value, DisplayKind.Pressure)}";
        return context.State(limit) with { Kind = kind, Text = text, LowerSi = lower, UpperSi = upper };
    }
}
