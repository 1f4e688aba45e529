using System.Globalization;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Functional;

/// <summary>How fast the cold room was pulled down, and the setting of its pressure regulator.</summary>
internal sealed class BoxPullDownCheck : ICheck
{
    private const double SecondsAnHour = 3600;

    public string Id => "functional.box-pull-down";

    public string Phase => Phases.Functional;

    public string Title => "Box pull-down";

    public CheckHelp Help { get; } = new(
        "How fast did the box come down to its temperature, and what is the evaporator pressure regulator set to?",
        "rate = (T_from − T_to) / time",
        "Definition. No limit is known: the load decides.",
        "A slow pull-down points to the door, the load, a starved or iced coil or a low charge: compare with the readings of the circuit.");

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
