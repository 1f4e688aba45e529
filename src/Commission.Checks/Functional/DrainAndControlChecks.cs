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
            new Trial("condensate drains", functional.CondensateDrains, true),
            new Trial("condensate trap", functional.CondensateTrap),
            new Trial("drain slope", functional.DrainSlope),
            new Trial("secondary drain", functional.SecondaryDrain));
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
        if (Trials.Judge(context.Finding(this), functional.Witnessed, this.WhenItFails(), new Trial("float switch", functional.FloatSwitch)) is { } finding)
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
        var finding = context.Finding(this).Use("oil level", functional.OilLevel).Use("oil pressure difference", functional.OilPressureDifference);
        var pressure = functional.OilPressureDifference is { } net ? $" Net oil pressure {net.Text}." : "";
        yield return functional.OilLevel?.Value switch
        {
            null => finding.Information(pressure.Trim(), "no oil level is written, and nothing sets a limit on the pressure"),
            OilLevel.NoGlass => finding.Information($"The compressor has no oil glass.{pressure}", "the level cannot be seen"),
            OilLevel.InTheGlass => finding.Decide(true).Say($"The oil stands in the glass.{pressure}").Build(),
            _ => finding.Decide(false).Say($"The oil level is {functional.OilLevel.Text}.{pressure}").Next(this.WhenItFails()).Build(),
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
        var finding = context.Finding(this).Use("evaporator pressure regulator", functional.EPRSetting);
        var regulator = functional.EPRSetting is { } set ? $"The evaporator pressure regulator is set to {set.Text}." : "";
        if (functional.BoxPullDown is not { } down)
        {
            yield return finding.Information(regulator, "a setting, without a limit");
            yield break;
        }

        finding.Use("box, from", down.From).Use("box, to", down.To).Use("box, in", down.In);
        var fall = down.From.Value.Si - down.To.Value.Si;
        var hours = down.In.Value.Si / SecondsAnHour;
        if (hours <= 0)
        {
            yield return finding.NotEvaluated("the pull-down took no time", "Write the time the pull-down took.");
            yield break;
        }

        var rate = context.Present.Text(fall / hours, DisplayKind.TemperatureDifference);
        finding.Step("r", "pull-down rate", "(T_from − T_to) / time", string.Create(CultureInfo.InvariantCulture, $"({down.From.Text} − {down.To.Text}) / {hours:0.##} h"), $"{rate} per hour");
        yield return finding.Information($"The box went from {down.From.Text} to {down.To.Text} in {down.In.Text}, {rate} per hour. {regulator}".TrimEnd(), "nothing sets a limit");
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
            yield return Judge(context, "low-pressure control", low, isHigh: false);
        if (functional.HighPressureControl is { } high)
            yield return Judge(context, "high-pressure control", high, isHigh: true);
    }

    private Finding Judge(CheckContext context, string name, ControlSetting control, bool isHigh)
    {
        var atmosphere = context.Get<SiteAtmosphere>().Pressure;
        var finding = context.Finding(this, name).Use($"{name}: cut-in", control.CutIn).Use($"{name}: cut-out", control.CutOut).Use($"{name}: tested", control.Tested);
        var settings = string.Join(", ", new[] { control.CutIn is { } i ? $"cut-in {i.Text}" : null, control.CutOut is { } o ? $"cut-out {o.Text}" : null }.OfType<string>());
        var said = settings.Length == 0 ? $"The {name}" : $"The {name}, {settings},";
        if (control.Tested?.Value == TestResult.Failed)
            return finding.Decide(false).Say($"{said} failed its test.").Next(this.WhenItFails()).Build();
        if (control.Tested?.Value == TestResult.NotFitted)
            return finding.Information($"No {name} is fitted.", "there is nothing of the kind to try");
        if (control is { CutIn: { } cutIn, CutOut: { } cutOut } && IsTheWrongWayRound(cutIn, cutOut, atmosphere, isHigh))
            return finding.Decide(false).Say($"{said} is set the wrong way round.").Next(this.WhenItFails()).Build();
        if (isHigh && control.CutOut is { } stop && IsTooHigh(context, finding, stop, atmosphere))
            return finding.Say($"{said} stops the compressor only above what the high side may bear.").Next(this.WhenItFails()).Build();
        if (control.Tested?.Value != TestResult.Ok)
            return finding.NotEvaluated(FunctionalMessages.ControlNotTried, FunctionalMessages.ControlNotTriedNext, $"functional: {{{name}: {{tested: ok}}}}");
        return (finding.Passes ? finding : finding.Decide(true)).Say($"{said} works.").Build();
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
        finding.Use("design pressure, high side", design)
            .Judge(set, DisplayKind.Pressure, context.State(limit) with { Kind = LimitKind.AtMost, Text = $"at most {context.Present.Text(most, DisplayKind.Pressure)}", LowerSi = null, UpperSi = most });
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
            var read = context.Readings.Temperature($"thermometer beside {sensor.What.Value}", ReadingName.BoxTemperature, sensor.Reads);
            var shown = Written.Reading(context, $"display of {sensor.What.Value}", sensor.Shows, DisplayKind.Temperature);
            var off = shown.Value - read.Value;
            var by = off.Value < 0 ? -off : off;
            yield return context.Finding(this, sensor.What.Value).Use(read).Use(shown).Judge(by, DisplayKind.TemperatureDifference, context.State(limit))
                .Conclude(FunctionalMessages.SensorAgrees(what, context.Present.InMessage(by, DisplayKind.TemperatureDifference)), FunctionalMessages.SensorOff(what, context.Present.InMessage(by, DisplayKind.TemperatureDifference)), this.WhenItFails());
        }
    }
}
