using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Functional;

/// <summary>Whether condensate runs off.</summary>
internal sealed class CondensateCheck : ICheck
{
    public string Id => "functional.condensate";

    public string Phase => Phases.Functional;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        var begun = context.Finding(this);
        if (functional.DrainSlope is not null && context.Limits.Find(LimitIds.FunctionalCondensateSlope) is { } limit)
            begun.Show(context.State(limit));
        var finding = Trials.Judge(
            begun,
            functional.Witnessed,
            this.WhenItFails(),
            new Trial(FunctionalMessages.TrialCondensateDrains, functional.CondensateDrains, true),
            new Trial(FunctionalMessages.TrialCondensateTrap, functional.CondensateTrap),
            new Trial(FunctionalMessages.TrialDrainSlope, functional.DrainSlope),
            new Trial(FunctionalMessages.TrialSecondaryDrain, functional.SecondaryDrain));
        if (finding is not null)
            yield return finding;
    }
}

/// <summary>Whether the float switch stops the cooling.</summary>
internal sealed class FloatSwitchCheck : ICheck
{
    public string Id => "functional.float-switch";

    public string Phase => Phases.Functional;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        if (Trials.Judge(context.Finding(this), functional.Witnessed, this.WhenItFails(), new Trial(FunctionalMessages.TrialFloatSwitch, functional.FloatSwitch)) is { } finding)
            yield return finding;
    }
}

/// <summary>Oil level and oil pressure of a compressor that shows them.</summary>
internal sealed class OilCheck : ICheck
{
    public string Id => "functional.oil";

    public string Phase => Phases.Functional;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional || (functional.OilLevel is null && functional.OilPressureDifference is null))
            yield break;
        var finding = context.Finding(this).Use(FunctionalMessages.ReadingOilLevel, functional.OilLevel).Use(FunctionalMessages.ReadingOilPressure, functional.OilPressureDifference);
        var pressure = functional.OilPressureDifference is { } net ? FunctionalMessages.OilPressure(new(net.Text)) : null;
        yield return functional.OilLevel?.Value switch
        {
            null => finding.Information(pressure!, FunctionalMessages.OilLevelNotWritten),
            OilLevel.NoGlass => finding.Remark(pressure).Information(FunctionalMessages.OilNoGlass, FunctionalMessages.OilCannotBeSeen),
            OilLevel.InTheGlass => finding.Decide(true).Say(FunctionalMessages.OilInTheGlass).Remark(pressure).Build(),
            _ => finding.Decide(false).Say(FunctionalMessages.OilLevel(new(functional.OilLevel.Text))).Remark(pressure).Next(this.WhenItFails()).Build(),
        };
    }
}

/// <summary>How fast the cold room was pulled down, and the setting of its pressure regulator.</summary>
internal sealed class BoxPullDownCheck : ICheck
{
    private const double SecondsAnHour = 3600;

    public string Id => "functional.box-pull-down";

    public string Phase => Phases.Functional;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional || (functional.BoxPullDown is null && functional.EPRSetting is null))
            yield break;
        var finding = context.Finding(this).Use(FunctionalMessages.ReadingRegulator, functional.EPRSetting);
        var regulator = functional.EPRSetting is { } set ? FunctionalMessages.RegulatorSet(new(set.Text)) : null;
        if (functional.BoxPullDown is not { } down)
        {
            yield return finding.Information(regulator!, FunctionalMessages.RegulatorKind);
            yield break;
        }

        finding.Use(FunctionalMessages.ReadingBoxFrom, down.From).Use(FunctionalMessages.ReadingBoxTo, down.To).Use(FunctionalMessages.ReadingBoxIn, down.In);
        var fall = down.From.Value.Si - down.To.Value.Si;
        var hours = down.In.Value.Si / SecondsAnHour;
        if (hours <= 0)
        {
            yield return finding.NotEvaluated(FunctionalMessages.PullDownNoTime, FunctionalMessages.PullDownNoTimeNext);
            yield break;
        }

        var present = context.Present;
        var rate = present.InMessage(fall / hours, DisplayKind.TemperatureDifference);
        finding.Step(
            "r", FunctionalMessages.PullDownRate, FunctionalMessages.PullDownFormula, FunctionalMessages.PullDownNumbers(new(down.From.Text), new(down.To.Text), new(down.In.Value.Si)), FunctionalMessages.PerHour(rate));
        yield return finding.Remark(regulator).Information(FunctionalMessages.PullDown(new(down.From.Text), new(down.To.Text), new(down.In.Text), rate), FunctionalMessages.PullDownKind);
    }
}

/// <summary>Low- and high-pressure controls: settings that make sense, and tried.</summary>
internal sealed class PressureControlsCheck : ICheck
{
    public string Id => "functional.pressure-controls";

    public string Phase => Phases.Functional;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        if (functional.LowPressureControl is { } low)
            yield return Judge(context, FunctionalMessages.ControlLow, "low-pressure control", low, isHigh: false);
        if (functional.HighPressureControl is { } high)
            yield return Judge(context, FunctionalMessages.ControlHigh, "high-pressure control", high, isHigh: true);
    }

    private Finding Judge(CheckContext context, Message name, string key, ControlSetting control, bool isHigh)
    {
        var atmosphere = context.Get<SiteAtmosphere>().Pressure;
        var finding = context.Finding(this, context.Present.Text(name)).Use(FunctionalMessages.ReadingCutIn(name), control.CutIn).Use(FunctionalMessages.ReadingCutOut(name), control.CutOut).Use(FunctionalMessages.ReadingTested(name), control.Tested);
        var settings = new[] { control.CutIn is { } i ? FunctionalMessages.ControlCutIn(new(i.Text)) : null, control.CutOut is { } o ? FunctionalMessages.ControlCutOut(new(o.Text)) : null }.OfType<Message>().ToList();
        var said = settings.Count == 0 ? name : FunctionalMessages.ControlWithSettings(name, Trials.Listed(settings));
        if (control.Tested?.Value == TestResult.Failed)
            return finding.Decide(false).Say(FunctionalMessages.ControlFailed(said)).Next(this.WhenItFails()).Build();
        if (control.Tested?.Value == TestResult.NotFitted)
            return finding.Information(FunctionalMessages.ControlNotFitted(name), FunctionalMessages.TrialsNothingToTry);
        if (control is { CutIn: { } cutIn, CutOut: { } cutOut } && IsTheWrongWayRound(cutIn, cutOut, atmosphere, isHigh))
            return finding.Decide(false).Say(FunctionalMessages.ControlWrongWay(said)).Next(this.WhenItFails()).Build();
        if (isHigh && control.CutOut is { } stop && IsTooHigh(context, finding, stop, atmosphere))
            return finding.Say(FunctionalMessages.ControlTooHigh(said)).Next(this.WhenItFails()).Build();
        if (control.Tested?.Value != TestResult.Ok)
            return finding.NotEvaluated(FunctionalMessages.ControlNotTried, FunctionalMessages.ControlNotTriedNext, $"functional: {{{key}: {{tested: ok}}}}");
        return (finding.Passes ? finding : finding.Decide(true)).Say(FunctionalMessages.ControlWorks(said)).Build();
    }

    private static bool IsTheWrongWayRound(Given<StatedPressure> cutIn, Given<StatedPressure> cutOut, Pressure atmosphere, bool isHigh)
    {
        var difference = cutIn.Value.ToAbsolute(atmosphere).Si - cutOut.Value.ToAbsolute(atmosphere).Si;
        return isHigh ? difference >= 0 : difference <= 0;
    }

    private static bool IsTooHigh(CheckContext context, FindingBuilder finding, Given<StatedPressure> stop, Pressure atmosphere)
    {
        if (context.Job.Equipment.Nameplate?.DesignPressure?.High is not { } design || context.Limits.Find(LimitIds.SafetyHighPressureSwitchFactor) is not { Upper: { } factor } limit)
            return false;
        var most = factor.Si * design.Value.ToGauge(atmosphere).Si;
        // What a scale is set to is no measurement: where it stops is for the test to show.
        var set = Uncertain.Exact(stop.Value.ToGauge(atmosphere).Si);
        finding.Use(CommonMessages.ReadingDesignHigh, design)
            .Judge(set, DisplayKind.Pressure, context.State(limit) with { Kind = LimitKind.AtMost, Text = context.Present.Text(CommonMessages.LimitAtMost(new(context.Present.Text(most, DisplayKind.Pressure)))), LowerSi = null, UpperSi = most });
        return !finding.Passes;
    }
}

/// <summary>What a controller shows against a thermometer beside its sensor: everything it switches hangs on that number.</summary>
internal sealed class SensorCheck : ICheck
{
    public string Id => "functional.sensor";

    public string Phase => Phases.Functional;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var limit = context.Limits.Require(LimitIds.FunctionalSensor);
        foreach (var sensor in context.Job.Functional?.Sensors ?? [])
        {
            var what = new TextValue(sensor.What.Value);
            var read = context.Readings.Temperature(context.Present.Text(FunctionalMessages.ReadingBeside(what)), ReadingName.BoxTemperature, sensor.Reads);
            var shown = Written.Reading(context, context.Present.Text(FunctionalMessages.ReadingDisplay(what)), sensor.Shows, DisplayKind.Temperature);
            var off = shown.Value - read.Value;
            var by = off.Value < 0 ? -off : off;
            yield return context.Finding(this, sensor.What.Value).Use(read).Use(shown).Judge(by, DisplayKind.TemperatureDifference, context.State(limit))
                .Conclude(FunctionalMessages.SensorAgrees(what, context.Present.InMessage(by, DisplayKind.TemperatureDifference)), FunctionalMessages.SensorOff(what, context.Present.InMessage(by, DisplayKind.TemperatureDifference)), this.WhenItFails());
        }
    }
}
