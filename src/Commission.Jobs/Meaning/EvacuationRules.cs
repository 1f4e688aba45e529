using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Meaning;

/// <summary>Levels that are no vacuum, and events that miss what they need.</summary>
internal static class EvacuationRules
{
    public static void Check(RuleContext context)
    {
        foreach (var given in Levels(context.Job))
        {
            if (given is not null && given.Value.Si > context.Atmosphere.Si * 1.05)
                context.Complain(given, $"{given.Text} is above the atmosphere.", "A vacuum level is absolute pressure below it.", "Check the number and the unit.", "impossible");
        }

        if (context.Job.Evacuation is not { } evacuation) return;
        foreach (var happened in evacuation.Events)
        {
            if (happened.To is { } to && happened.What is { Value: not EvacuationEventKind.NitrogenBreak } what)
                context.Complain(to, $"\"to\" is the pressure of a nitrogen break, and this is \"{what.Text}\".", "", "Delete it, or write what: nitrogen break.", "impossible");
        }

        var isolated = evacuation.Events.Where(e => e.What?.Value == EvacuationEventKind.Isolated).ToArray();
        if (isolated.Length > 1 && evacuation.Events.All(e => e.What?.Value is not (EvacuationEventKind.PumpOn or EvacuationEventKind.NitrogenBreak or EvacuationEventKind.Opened)))
        {
            context.Complain(isolated[1].What, "The circuit is isolated twice, and the pump was not started again in between.", "", "Keep one, or write the event pump on between them.", "impossible");
        }
    }

    private static IEnumerable<Given<Pressure>?> Levels(Job job) =>
    [
        job.Limits?.DecayLimit?.Level,
        job.Limits?.Vacuum?.Target,
        job.Limits?.Vacuum?.Maximum,
        job.Evacuation?.Target,
        job.Evacuation?.DecayLimit?.Level,
        job.Evacuation?.RigCheck?.PumpAlone,
        job.Evacuation?.RigCheck?.BlankedOff,
        .. job.Evacuation?.Levels.Select(l => l.Pressure) ?? [],
    ];
}
