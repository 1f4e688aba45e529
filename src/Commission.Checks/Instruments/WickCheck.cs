using Commission.Checks.Readings;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Instruments;

/// <summary>Whether the wick of a wet bulb could show a wet bulb at all.</summary>
internal sealed class WickCheck : ICheck
{
    public string Id => "instrument.wick";

    public string Phase => Phases.Instruments;

    public string Title => "Wick of the wet bulb";

    public CheckHelp Help { get; } = new(
        "Was the wick clean and wet, and did air move over it fast enough? A dry, dirty or still wick reads too warm, and a target superheat or temperature split taken from it is wrong.",
        "wick clean and wetted with clean water; air velocity over it ≥ the pack's minimum",
        "700 ft/min: common practice, no source.",
        "Fit a clean wick, wet it with distilled water at about room temperature, hold it in moving air until the reading stops falling.");

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
        var finding = context.Finding(this, instrument.Id).Use($"{instrument.Id}: wick clean", wick.Clean, instrument.Id).Use($"{instrument.Id}: wick wetted", wick.Wetted, instrument.Id);
        if (wick is { Clean: null, Wetted: null, AirSpeed: null })
            return finding.NotEvaluated("nothing is written of the wick", "Write wick: {clean: yes, wetted: yes, air speed: 800 fpm}.");
        if (wick.Clean?.Value == false || wick.Wetted?.Value == false)
            return finding.Decide(false).Say($"The wick of {instrument.Id} was {(wick.Clean?.Value == false ? "not clean" : "dry")}: its wet bulb reads too warm.").Next(Help.WhenItFails).Build();
        if (wick.AirSpeed is { } speed && context.Limits.Find("air.wet-bulb.velocity") is { } limit)
        {
            var reading = context.Readings.Plain($"{instrument.Id}: air over the wick", ReadingName.AirVelocity, speed, DisplayKind.Velocity);
            finding.Use(reading).Judge(reading.Value, DisplayKind.Velocity, context.State(limit));
            if (!finding.Passes)
                return finding.Say($"Air moved over the wick of {instrument.Id} at {speed.Text} only: its wet bulb reads too warm.").Next(Help.WhenItFails).Build();
        }
        else
        {
            finding.Decide(true).Reserve("the velocity of the air over the wick is not written").Next("Write air speed: 800 fpm.");
        }

        if (wick.Clean is null || wick.Wetted is null)
            finding.Reserve("it is not written that the wick was clean and wet").Next("Write clean: yes, wetted: yes.");
        return finding.Say($"The wick of {instrument.Id} could show a wet bulb.").Build();
    }
}
