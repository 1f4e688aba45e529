using Commission.Checks.Findings;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Functional;

/// <summary>Low- and high-pressure controls: settings that make sense, and tried.</summary>
internal sealed class PressureControlsCheck : ICheck
{
    public string Id => "functional.pressure-controls";

    public string Phase => Phases.Functional;

    public string Title => "Pressure controls";

    public CheckHelp Help { get; } = new(
        "Do the low- and the high-pressure control stop and start the compressor, and do their settings make sense?",
        "tried and works; low side: cut-out below cut-in; high side: cut-out above cut-in, and at most the pack's share of the high side's design pressure",
        "EN 378-2 (from memory) and common practice: the high side is stopped before its design pressure.",
        "Set the control by the maker's table, then try it: throttle the suction for the low side, hold back condenser air for the high side, and write where it stopped.");

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
        var atmosphere = context.Get<Readings.SiteAtmosphere>().Pressure;
        var finding = context.Finding(this, name).Use($"{name}: cut-in", control.CutIn).Use($"{name}: cut-out", control.CutOut).Use($"{name}: tested", control.Tested);
        var settings = string.Join(", ", new[] { control.CutIn is { } i ? $"cut-in {i.Text}" : null, control.CutOut is { } o ? $"cut-out {o.Text}" : null }.OfType<string>());
        var said = settings.Length == 0 ? $"The {name}" : $"The {name}, {settings},";
        if (control.Tested?.Value == TestResult.Failed)
            return finding.Decide(false).Say($"{said} failed its test.").Next(Help.WhenItFails).Build();
        if (control.Tested?.Value == TestResult.NotFitted)
            return finding.Information($"No {name} is fitted.", "there is nothing of the kind to try");
        if (control is { CutIn: { } cutIn, CutOut: { } cutOut } && IsTheWrongWayRound(cutIn, cutOut, atmosphere, isHigh))
            return finding.Decide(false).Say($"{said} is set the wrong way round.").Next(Help.WhenItFails).Build();
        if (isHigh && control.CutOut is { } stop && IsTooHigh(context, finding, stop, atmosphere))
            return finding.Say($"{said} stops the compressor only above what the high side may bear.").Next(Help.WhenItFails).Build();
        if (control.Tested?.Value != TestResult.Ok)
            return finding.NotEvaluated("the control was not tested", "Try it and write tested: ok.");
        return (finding.Passes ? finding : finding.Decide(true)).Say($"{said} works.").Build();
    }

    private static bool IsTheWrongWayRound(Given<StatedPressure> cutIn, Given<StatedPressure> cutOut, Pressure atmosphere, bool isHigh)
    {
        var difference = cutIn.Value.ToAbsolute(atmosphere).Si - cutOut.Value.ToAbsolute(atmosphere).Si;
        return isHigh ? difference >= 0 : difference <= 0;
    }

    private static bool IsTooHigh(CheckContext context, FindingBuilder finding, Given<StatedPressure> stop, Pressure atmosphere)
    {
        if (context.Job.Equipment.Nameplate?.DesignPressure?.High is not { } design || context.Limits.Find("safety.high-pressure-switch.factor") is not { Upper: { } factor } limit)
            return false;
        var most = factor.Si * design.Value.ToGauge(atmosphere).Si;
        // What a scale is set to is no measurement: where it stops is for the test to show.
        var set = Uncertain.Exact(stop.Value.ToGauge(atmosphere).Si);
        finding.Use("design pressure, high side", design)
            .Judge(set, DisplayKind.Pressure, context.State(limit) with { Kind = LimitKind.AtMost, Text = $"at most {context.Present.Text(most, DisplayKind.Pressure)}", LowerSi = null, UpperSi = most });
        return !finding.Passes;
    }
}
