using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Records.Findings;

namespace Commission.Checks.Safety;

/// <summary>Whether the unit's own leak sensor was connected and tried.</summary>
internal sealed class LeakSensorCheck : ICheck
{
    public string Id => "safety.leak-sensor";

    public string Phase => Phases.Safety;

    public string Title => "Leak sensor";

    public CheckHelp Help { get; } = new(
        "Is the unit's leak sensor connected, and does it act: blower on, compressor off?",
        "connected, the maker's test run, blower came on, compressor stopped",
        "IEC/UL 60335-2-40, leak detection as a measure (from memory); the test is the maker's.",
        "Do not leave the unit running. Check plug, place and board setting of the sensor, run the maker's test again; a sensor past its life is replaced.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var safety = context.Job.Safety;
        var relies = safety?.Mitigation?.Value == Mitigation.LeakSensorWithFan;
        if (safety?.LeakSensor is not { } sensor)
        {
            if (relies)
                yield return context.Finding(this).Use("mitigation", safety!.Mitigation).NotEvaluated("the room relies on the leak sensor, and its test is not written", "Run the maker's test of the sensor and write it under safety, leak sensor.");
            yield break;
        }

        yield return Judge(context, sensor, relies ? safety.Mitigation : null);
    }

    private Finding Judge(CheckContext context, LeakSensorTest sensor, Given<Mitigation>? mitigation)
    {
        var finding = context.Finding(this).Use("leak sensor fitted", sensor.Fitted).Use("mitigation", mitigation);
        if (!sensor.Fitted.Value)
        {
            return mitigation is null
                ? finding.Information("The unit has no leak sensor.", "there is nothing to try")
                : finding.Decide(false).Say("The room relies on a leak sensor, and the unit has none.").Next("Fit the maker's sensor, or take another measure.").Build();
        }

        List<string> works = [], fails = [], open = [];
        foreach (var (name, given) in new[] { ("connected", sensor.Connected), ("maker's test run", sensor.TestRun), ("blower on", sensor.FanOn), ("compressor off", sensor.CompressorOff) })
        {
            finding.Use(name, given);
            (given is null ? open : given.Value ? works : fails).Add(name);
        }

        finding.Use("responded in", sensor.RespondedIn);
        var time = sensor.RespondedIn is { } responded ? $" It responded in {responded.Text}." : "";
        if (sensor.TestRun?.Value == false && fails.Count == 1)
            return finding.NotEvaluated("the maker's test was not run", "Run the maker's test of the sensor: blower on, compressor off.");
        if (fails.Count > 0)
            return finding.Decide(false).Say($"The leak sensor: not {string.Join(", not ", fails)}.{time}").Next(Help.WhenItFails).Build();
        if (sensor.TestRun is null)
            return finding.NotEvaluated("it is not written that the maker's test was run", "Run the maker's test of the sensor and write test run: yes.");
        finding.Decide(true).Say($"The leak sensor: {string.Join(", ", works)}.{time}");
        foreach (var name in open)
            finding.Reserve($"not written: {name}").Next("Try the sensor again and write what it did.");
        return finding.Build();
    }
}
