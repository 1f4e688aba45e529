using System.Globalization;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Functional;

/// <summary>The readings of one water side.</summary>
/// <param name="Side">As written.</param>
/// <param name="Name">Which, with a comma behind it for a subject; empty when there is one.</param>
/// <param name="In">Water entering; null when not written.</param>
/// <param name="Out">Water leaving; null when not written.</param>
internal sealed record WaterReadings(WaterSide Side, string Name, CorrectedReading? In, CorrectedReading? Out)
{
    /// <summary>What the water warms or cools by, K; null when an end is missing.</summary>
    public Uncertain? Difference => In is null || Out is null ? null : In.Value.Value >= Out.Value.Value ? In.Value - Out.Value : Out.Value - In.Value;

    /// <summary>Where it freezes, K; null when something is in it and nobody read where.</summary>
    public double? FreezesAt => Side.Glycol is { FreezesAt: { } read } ? read.Value.Si : Side.Glycol is null or { Kind.Value: GlycolKind.None } ? Plain : null;

    private const double Plain = 273.15;

    /// <summary>What is said of this water; with its name where there are several.</summary>
    /// <param name="what">The reading or subject.</param>
    public Message Named(Message what) => Named(Name, what);

    private static Message Named(string name, Message what) => name.Length == 0 ? what : FunctionalMessages.OfWater(new(name), what);

    /// <summary>The water sides of a job.</summary>
    public static IEnumerable<WaterReadings> All(CheckContext context)
    {
        for (var i = 0; i < context.Job.Water.Length; i++)
        {
            var side = context.Job.Water[i];
            var name = context.Job.Water.Length == 1 ? "" : side.Name?.Value ?? (i + 1).ToString(CultureInfo.InvariantCulture);
            yield return new WaterReadings(
                side,
                name,
                side.In is { } entering ? context.Readings.Temperature(context.Present.Text(Named(name, FunctionalMessages.ReadingWaterIn)), ReadingName.WaterTemperature, entering) : null,
                side.Out is { } leaving ? context.Readings.Temperature(context.Present.Text(Named(name, FunctionalMessages.ReadingWaterOut)), new SensorPlace(ReadingName.WaterTemperature, Part: 1), leaving) : null);
        }
    }
}

/// <summary>The water side against the maker's figures, and whether it can freeze.</summary>
internal sealed class WaterCheck : ICheck
{
    public string Id => "functional.water";

    public string Phase => Phases.Functional;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var water in WaterReadings.All(context))
        {
            foreach (var figure in Figures(context, water))
                yield return figure.Judge(context, this, this.WhenItFails());
            if (Freezing(context, water) is { } frozen)
                yield return frozen;
        }
    }

    private static IEnumerable<FigureOfMaker> Figures(CheckContext context, WaterReadings water)
    {
        var side = water.Side;
        string Named(Message what) => context.Present.Text(water.Named(what));
        if (side.Flow is { } flow)
            yield return new(Named(FunctionalMessages.SubjectFlow), Written.Reading(context, Named(FunctionalMessages.ReadingWaterFlow), flow, DisplayKind.WaterFlow), DisplayKind.WaterFlow, LimitIds.FunctionalWaterFlow);
        if (water.Difference is { } difference)
        {
            var reading = new CorrectedReading { Name = Named(FunctionalMessages.ReadingWaterDifference), Value = difference, AfterZero = difference.Value, Uses = [.. water.In!.Uses, .. water.Out!.Uses], AccuracyKnown = water.In.AccuracyKnown && water.Out.AccuracyKnown };
            yield return new(Named(FunctionalMessages.SubjectDifference), reading, DisplayKind.TemperatureDifference, LimitIds.FunctionalWaterDifference) { Found = context.Present.Text(difference, DisplayKind.TemperatureDifference) };
        }

        if (side.Volume is { } volume)
            yield return new(Named(FunctionalMessages.SubjectVolume), Written.Reading(context, Named(FunctionalMessages.ReadingWaterVolume), volume, DisplayKind.WaterVolume), DisplayKind.WaterVolume, LimitIds.FunctionalWaterVolume);
        if (side.Pressure is { } pressure)
            yield return new(Named(FunctionalMessages.SubjectPressure), context.Readings.Pressure(Named(FunctionalMessages.ReadingWaterPressure), ReadingName.WaterPressure, pressure), DisplayKind.Pressure, LimitIds.FunctionalWaterPressure);
        if (side.StrainerDrop is { } drop)
            yield return new(Named(FunctionalMessages.SubjectStrainerDrop), Written.Reading(context, Named(FunctionalMessages.SubjectStrainerDrop), drop, DisplayKind.PressureDifference), DisplayKind.PressureDifference, LimitIds.FunctionalWaterStrainerDrop);
        if (side.Glycol?.FreezesAt is { } freezes)
            yield return new(Named(FunctionalMessages.SubjectFreezingPoint), Written.Reading(context, Named(FunctionalMessages.SubjectFreezingPoint), freezes, DisplayKind.Temperature), DisplayKind.Temperature, LimitIds.FunctionalWaterFreezing);
    }

    private Finding? Freezing(CheckContext context, WaterReadings water)
    {
        if (new[] { water.In, water.Out }.OfType<CorrectedReading>().MinBy(r => r.Value.Value) is not { } coldest || water.FreezesAt is not { } point || coldest.Value.Value >= point)
            return null;
        var present = context.Present;
        return context.Finding(this, water.Named(FunctionalMessages.SubjectFreezing)).Use(coldest).Use(FunctionalMessages.ReadingGlycol, water.Side.Glycol?.Kind).Use(FunctionalMessages.ReadingFreezesAt, water.Side.Glycol?.FreezesAt).Decide(false)
            .Say(FunctionalMessages.WaterFreezes(present.InMessage(coldest.Value.Value, DisplayKind.Temperature), present.InMessage(point, DisplayKind.Temperature)))
            .Next(FunctionalMessages.WaterFreezesNext).Build();
    }
}

/// <summary>What protects the water side: flow switch, strainer, air let out.</summary>
internal sealed class WaterControlsCheck : ICheck
{
    public string Id => "functional.water-controls";

    public string Phase => Phases.Functional;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var water in WaterReadings.All(context))
        {
            var name = water.Name;
            if (Trials.Judge(context.Finding(this, name.Length == 0 ? null : name), null, this.WhenItFails(), new Trial(FunctionalMessages.TrialFlowSwitch, water.Side.FlowSwitch), new Trial(FunctionalMessages.TrialAirLetOut, water.Side.Purged)) is { } tried)
                yield return tried;
            if (water.Side.Strainer is { } strainer)
                yield return Strainer(context, water, strainer);
        }
    }

    private Finding Strainer(CheckContext context, WaterReadings water, Given<Cleanliness> strainer)
    {
        var finding = context.Finding(this, water.Named(FunctionalMessages.SubjectStrainer)).Use(FunctionalMessages.SubjectStrainer, strainer);
        return strainer.Value switch
        {
            Cleanliness.Clean or Cleanliness.New => finding.Decide(true).Say(FunctionalMessages.StrainerClean).Build(),
            Cleanliness.Dirty => finding.Decide(false).Say(FunctionalMessages.StrainerDirty).Next(FunctionalMessages.StrainerDirtyNext).Build(),
            Cleanliness.None => finding.Information(FunctionalMessages.StrainerNone, FunctionalMessages.StrainerNoneKind),
            _ => finding.NotEvaluated(FunctionalMessages.StrainerNotSeen, FunctionalMessages.StrainerNotSeenNext),
        };
    }
}

/// <summary>The heat that the water carries, for information: ratings hold at conditions that a site has seldom.</summary>
internal sealed class WaterCapacityCheck : ICheck
{
    public string Id => "functional.water-capacity";

    public string Phase => Phases.Functional;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var water in WaterReadings.All(context))
        {
            if (water is { Side.Flow: { } flow, Difference: { } difference })
                yield return Carried(context, water, flow, difference);
        }
    }

    private Finding Carried(CheckContext context, WaterReadings water, Given<Measurement.Quantities.VolumeFlow> flow, Uncertain difference)
    {
        var name = water.Name;
        var present = context.Present;
        var reading = Written.Reading(context, present.Text(water.Named(FunctionalMessages.ReadingWaterFlow)), flow, DisplayKind.WaterFlow);
        var finding = context.Finding(this, name.Length == 0 ? null : name).Use(reading).Use(water.In!).Use(water.Out!).Use(FunctionalMessages.ReadingGlycol, water.Side.Glycol?.Kind);
        if (water.Side.Glycol is { Kind.Value: not GlycolKind.None })
            return finding.NotEvaluated(FunctionalMessages.WaterMixture, FunctionalMessages.WaterMixtureNext);
        var perVolume = WaterHeat.PerVolume((water.In!.Value.Value + water.Out!.Value.Value) / 2);
        var heat = perVolume * (reading.Value * difference);
        return finding.Step("Q", FunctionalMessages.StepWaterHeat, WaterHeat.Formula, string.Create(CultureInfo.InvariantCulture, $"{flow.Text} · {perVolume / 1e6:0.000} MJ/(m³·K) · {present.Text(difference.Value, DisplayKind.TemperatureDifference)}"), present.Text(heat, DisplayKind.Capacity), WaterHeat.Source)
            .Measure(heat, DisplayKind.Capacity)
            .Information(FunctionalMessages.WaterCarries(present.InMessage(heat, DisplayKind.Capacity)), FunctionalMessages.WaterCarriesKind);
    }
}
