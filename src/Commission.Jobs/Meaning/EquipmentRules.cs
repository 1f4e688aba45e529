using System.Globalization;
using Commission.Jobs.Model;
using Commission.Jobs.Problems;
using Commission.Measurement.Atmosphere;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Source;
using Named = Commission.Messages.RulesMessages.SameNameKind;

namespace Commission.Jobs.Meaning;

/// <summary>The site must give the atmosphere, and a barometer read there fits the height.</summary>
internal static class SiteRules
{
    // Weather moves a barometer by less; correcting it to sea level moves it by more from about 1,100 ft on.
    private const double MostByWeather = 0.04;

    public static void Check(RuleContext context)
    {
        if (context.Job.Identity?.Site is not { } site)
            return;
        if (!site.Says("elevation") && !site.Says("station pressure") && !site.Says("barometer"))
        {
            context.Problems.Add(site.Origin, RulesMessages.NoAtmosphere, RulesMessages.NoAtmosphereExpected, RulesMessages.NoAtmosphereNext(new(context.IsSi ? "elevation: 1610 m" : "elevation: 5280 ft")), "no-atmosphere");
            return;
        }

        if (site.StationPressure is not { } barometer)
            return;
        if (site.Elevation is not { } elevation)
            return;
        var standard = StandardAtmosphere.At(elevation.Value).Si;
        if (Math.Abs(barometer.Value.Si - standard) <= MostByWeather * standard)
            return;
        var expected = RulesMessages.BarometerExpected(new(elevation.Text), Shown(barometer.Number!.Unit, standard));
        if (Math.Abs(barometer.Value.Si - 101_325) <= MostByWeather * 101_325)
            context.Complain(barometer, RulesMessages.SeaLevel(new(barometer.Text)), expected, RulesMessages.SeaLevelNext, "sea-level-pressure");
        else
            context.Complain(barometer, RulesMessages.Barometer(new(barometer.Text)), expected, RulesMessages.BarometerNext, "sea-level-pressure");
    }

    // In the unit that was written, so that the two can be compared at a glance.
    private static SymbolsValue Shown(Unit unit, double pascals)
    {
        var value = unit.FromSi(pascals);
        var decimals = value < 50 ? 2 : value < 200 ? 1 : 0;
        return new($"{value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)} {unit.Symbol}");
    }
}

/// <summary>The nameplate and the lines.</summary>
internal static class EquipmentRules
{
    public static void Check(RuleContext context)
    {
        if (context.Job.Equipment is not { } equipment)
            return;
        if (equipment.Nameplate is { } plate)
        {
            if (plate.Phases is { } phases && phases.Value is not (1 or 3))
                context.Complain(phases, RulesMessages.Phases(phases.Value), null, RulesMessages.PhasesNext, "impossible");
            if (plate.DesignPressure is { Low: { } low, High: { } high } && low.Value.Reference == high.Value.Reference && low.Value.Pascals > high.Value.Pascals)
                context.Complain(low, RulesMessages.DesignPressures(new(low.Text), new(high.Text)), null, RulesMessages.SwappedNext, "impossible");
        }

        foreach (var tube in equipment.Piping.SelectMany(run => new[] { run.Liquid, run.Vapor }))
        {
            if (tube is { Length: { } full, Rise: { } rise } && Math.Abs(rise.Value.Si) > full.Value.Si)
                context.Complain(rise, RulesMessages.LineRise(new(rise.Text), new(full.Text)), null, RulesMessages.BothFiguresNext, "impossible");
        }
    }
}

/// <summary>Instruments: their names, their calibration dates, the cylinder they were checked on.</summary>
internal static class InstrumentRules
{
    public static void Check(RuleContext context)
    {
        foreach (var instrument in context.Job.Instruments)
        {
            if (instrument.Calibrated is { } calibrated && context.Job.Identity?.Date is { } date && calibrated.Value > date.Value)
                context.Complain(calibrated, RulesMessages.Calibration(calibrated.Value, date.Value), null, RulesMessages.CalibrationNext, "date");

            if (instrument.Checks?.CheckWeight is { Applied.Value.Si: <= 0 } weight)
                context.Complain(weight.Applied, RulesMessages.WeightWithoutMass(new(weight.Applied.Text)), null, RulesMessages.WeightWithoutMassNext, "impossible");
            foreach (var ofOneKind in instrument.Resolution.Where(s => s.Step is not null).GroupBy(s => s.Step.Value.Dimension))
                StepsFollow(context, [.. ofOneKind]);
        }

        Twice(context, context.Job.Instruments.Select(i => i.Id), Named.Instrument);
        Twice(context, context.Job.Equipment?.Indoor.Select(i => i.Id) ?? [], Named.IndoorUnit);
        Twice(context, context.Job.Equipment?.BranchBoxes.Select(b => b.Id) ?? [], Named.BranchBox);
        Twice(context, context.Job.Cylinders.Select(c => c.Id), Named.Cylinder);
    }

    // A display changes its step where one range ends and the next begins: no gap, no overlap, upwards.
    private static void StepsFollow(RuleContext context, IReadOnlyList<ResolutionStep> steps)
    {
        for (var i = 0; i + 1 < steps.Count; i++)
        {
            var (now, next) = (steps[i], steps[i + 1]);
            if ((now.UpTo ?? next.Above) is not { } end)
            {
                if (now.Says("up to") || next.Says("above"))
                    return;
                context.Complain(now.Step, RulesMessages.StepsWithoutRange(new(now.Step.Text), new(next.Step.Text)), RulesMessages.StepsWithoutRangeExpected,
                    QuantityMessages.Like(new($"{{up to: {(context.IsSi ? "7 bar(g)" : "100 psig")}, step: {now.Step.Text}}}")), "resolution-range");
                return;
            }

            if (now.UpTo is { } upTo && next.Above is { } above && !SameReading(upTo.Value.Si, above.Value.Si))
            {
                context.Complain(above, RulesMessages.StepsApart(new(next.Step.Text), new(above.Text), new(upTo.Text)), RulesMessages.StepsApartExpected, QuantityMessages.WriteThis(new($"above: {upTo.Text}")), "resolution-range");
                return;
            }

            if ((now.Above ?? (i > 0 ? steps[i - 1].UpTo : null)) is { } begin && !(end.Value.Si > begin.Value.Si))
            {
                context.Complain(end, RulesMessages.StepsBackward(new(now.Step.Text), new(begin.Text), new(end.Text)), RulesMessages.StepsBackwardExpected, RulesMessages.StepsBackwardNext, "resolution-range");
                return;
            }
        }
    }

    // 100 psig and 6.895 bar(g) are one end.
    private static bool SameReading(double a, double b) => Math.Abs(a - b) <= 1e-3 * Math.Max(Math.Abs(a), Math.Abs(b));

    private static void Twice(RuleContext context, IEnumerable<Given<string>?> ids, Named kind)
    {
        var seen = new Dictionary<string, Given<string>>(StringComparer.OrdinalIgnoreCase);
        foreach (var id in ids)
        {
            if (id is null || seen.TryAdd(id.Value, id))
                continue;
            context.Complain(id, RulesMessages.SameName(kind, new(id.Value), Where(seen[id.Value], id)), null, RulesMessages.SameNameNext, "duplicate-id");
        }
    }

    private static Message Where(Given<string> first, Given<string> second) =>
        first.At.File == second.At.File ? RulesMessages.InLine(first.At.Line) : RulesMessages.InFile(new(first.At.ToString()));
}

/// <summary>Short names that refer to something must find it.</summary>
internal static class NameRules
{
    public static void Check(RuleContext context)
    {
        var job = context.Job;
        var instruments = job.Instruments.Select(i => i.Id?.Value).OfType<string>().ToArray();
        foreach (var name in InstrumentNames(job))
            Known(context, name, instruments, RulesMessages.UnknownNameKind.Instrument, "instruments");
        if (job.Cylinders.Length > 0)
        {
            var cylinders = job.Cylinders.Select(c => c.Id?.Value).OfType<string>().ToArray();
            foreach (var name in (Given<string>?[])[job.Recovery?.Cylinder, job.Recovery?.Scale?.Cylinder, .. job.Charging?.Scale.Select(s => s.Cylinder) ?? []])
                Known(context, name, cylinders, RulesMessages.UnknownNameKind.Cylinder, "cylinders");
        }

        if (job.Equipment is not { } equipment)
            return;
        var units = equipment.Indoor.Select(i => i.Id?.Value).Concat(equipment.BranchBoxes.Select(b => b.Id?.Value)).OfType<string>().Append("outdoor").ToArray();
        if (units.Length == 1)
            return;
        foreach (var run in equipment.Piping)
        {
            Known(context, run.To, units, RulesMessages.UnknownNameKind.Unit, "equipment");
            Known(context, run.From, units, RulesMessages.UnknownNameKind.Unit, "equipment");
        }
    }

    private static IEnumerable<Given<string>?> InstrumentNames(Job job) =>
    [
        .. job.PressureTest?.With ?? [],
        .. job.PressureTest?.Joints.SelectMany(j => j.With) ?? [],
        .. job.Recovery?.With ?? [],
        .. job.Evacuation?.With ?? [],
        .. job.Charging?.With ?? [],
        .. job.Air?.With ?? [],
        .. job.Air?.Airflow?.With ?? [],
        .. job.Electrical?.With ?? [],
        .. job.PipingChecks?.Flares.SelectMany(f => f.With) ?? [],
        .. job.Safety?.Flammable?.AreaCheckedWith ?? [],
        .. job.LeakCheck?.With ?? [],
        .. job.Instruments.Select(i => i.Checks?.Pair?.With),
        .. job.Instruments.Select(i => i.Checks?.AgainstSecondGauge?.With),
    ];

    private static void Known(RuleContext context, Given<string>? name, string[] known, RulesMessages.UnknownNameKind kind, string key)
    {
        if (name is null || known.Contains(name.Value, StringComparer.Ordinal))
            return;
        var nearest = NearestName.Of(name.Value, known);
        var advice = (known.Length, nearest) switch
        {
            (0, _) => RulesMessages.UnknownNameNext(new(key)),
            (_, null) => RulesMessages.NamesThere(new(key), ValueText.AnyOf(known)),
            _ => ValueText.DidYouMean(nearest),
        };
        context.Complain(name, RulesMessages.UnknownName(kind, new(name.Value)), null, advice, "unknown-name");
    }
}

/// <summary>The maker's figures: each says something, none is turned round, charts are complete.</summary>
internal static class LimitRules
{
    public static void Check(RuleContext context)
    {
        if (context.Job.Limits is not { } limits)
            return;
        foreach (var part in limits.Children())
        {
            if (part is not ILimitFigure figure)
                continue;
            if (!figure.HasFigure)
                context.Problems.Add(part.Origin, RulesMessages.NoFigure, null, RulesMessages.NoFigureNext, "no-figure");
            else if (figure.IsBackward)
                context.Problems.Add(part.Origin, RulesMessages.BackwardLimit, null, RulesMessages.SwappedNext, "impossible");
        }

        foreach (var torque in limits.FlareTorque)
        {
            if (torque is { Minimum: { } low, Maximum: { } high } && low.Value.Si > high.Value.Si)
                context.Complain(low, RulesMessages.BackwardTorque(new(low.Text), new(high.Text)), null, RulesMessages.SwappedNext, "impossible");
        }

        foreach (var chart in limits.Charts)
            Check(context, chart);
    }

    private static void Check(RuleContext context, MakerChart chart)
    {
        if (chart.Across is not { } across)
            return;
        Rising(context, across);
        if (chart.Down is { } down)
            Rising(context, down);
        var rows = chart.Down?.At.Length ?? 1;
        if (chart.Values.Length != rows)
        {
            context.Problems.Add(chart.Origin, RulesMessages.ChartRows(chart.Values.Length),
                chart.Down is null ? RulesMessages.ChartRowsExpectedOne : RulesMessages.ChartRowsExpected(rows), RulesMessages.ChartRowsNext, "chart");
        }

        for (var row = 0; row < chart.Values.Length; row++)
        {
            if (chart.Values[row].Length == across.At.Length)
                continue;
            context.Problems.Add(chart.Origin, RulesMessages.ChartValues(row + 1, chart.Values[row].Length),
                RulesMessages.ChartValuesExpected(across.At.Length), RulesMessages.ChartValuesNext, "chart");
        }
    }

    private static void Rising(RuleContext context, ChartAxis axis)
    {
        for (var i = 1; i < axis.At.Length; i++)
        {
            if (axis.At[i].Value.Si <= axis.At[i - 1].Value.Si)
                context.Complain(axis.At[i], RulesMessages.NotAfter(new(axis.At[i].Text), new(axis.At[i - 1].Text)), RulesMessages.AxisExpected, RulesMessages.AxisNext, "chart");
        }
    }
}
