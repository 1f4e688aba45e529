using System.Globalization;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>
/// Holds of a split against 1000 micron after 10 min (common practice, no source), as logs and as levels by hand, and their findings in short
/// words: the name of each message with its values.
/// </summary>
internal static class HoldJobs
{
    /// <summary>A job with a log that starts with the pump, the valve closed at 20 min unless said otherwise.</summary>
    /// <param name="closed">When the valve was closed.</param>
    /// <param name="end">When the hold was ended; null when nobody wrote it.</param>
    /// <param name="placed">What is written of gauge and valve.</param>
    /// <param name="more">More lines under evacuation.</param>
    public static string Logged(string closed = "20 min", string? end = null, string placed = EvacuationJobs.Placed, string more = "") =>
        $"{placed}\nseries: {{file: log.csv}}\n{more}events:\n  - {{at: {closed}, what: isolated}}{(end is null ? "" : $"\n  - {{at: {end}, what: end}}")}";

    /// <summary>A log with a row at each of these times.</summary>
    /// <param name="rows">Time, s, and level, micron; NaN writes OL.</param>
    public static string Rows(params ReadOnlySpan<(double Time, double Micron)> rows)
    {
        var text = "time (s),vacuum (micron)\n";
        foreach (var (time, micron) in rows)
            text += string.Create(CultureInfo.InvariantCulture, $"{time},{(double.IsNaN(micron) ? "OL" : micron.ToString(CultureInfo.InvariantCulture))}\n");
        return text;
    }

    /// <summary>A log with a row every 5 s, pumped down to 300 micron by 20 min.</summary>
    /// <param name="last">Time of the last row, s.</param>
    /// <param name="micron">Level at a time after 20 min, micron.</param>
    /// <param name="skip">Rows the logger missed.</param>
    public static string Every5Seconds(int last, Func<double, double> micron, Func<double, bool>? skip = null) =>
        EvacuationJobs.Log(5, last, t => t <= 1200 ? (20_000 * Math.Exp(-t / 120)) + 299 : micron(t), skip);

    /// <summary>Levels written by hand, the valve closed at the first.</summary>
    /// <param name="levels">Time of day, and level, micron.</param>
    public static string Levels(params ReadOnlySpan<(string At, double Micron)> levels)
    {
        var text = $"{EvacuationJobs.Placed}\nlevels:";
        foreach (var (at, micron) in levels)
            text += string.Create(CultureInfo.InvariantCulture, $"\n  - {{at: \"{at}\", pressure: {micron} micron{(at == levels[0].At ? ", isolated: yes" : "")}}}");
        return text;
    }

    /// <summary>What the hold of an evacuation is found to be.</summary>
    /// <param name="evacuation">Lines under evacuation.</param>
    /// <param name="log">The log.</param>
    public static Finding Hold(string evacuation, string? log = null) => EvacuationJobs.One("evacuation.hold", EvacuationJobs.Job(evacuation), log);

    /// <summary>Statement and remarks in short words.</summary>
    public static string[] Said(Finding finding) => [.. finding.Messages!.Statement.Select(Short)];

    /// <summary>Reservations in short words.</summary>
    public static string[] Reserved(Finding finding) => [.. finding.Messages!.Reservation.Select(Short)];

    /// <summary>Why nothing was judged, in short words.</summary>
    public static string? Why(Finding finding) => finding.Messages!.Reason is { } reason ? Short(reason) : null;

    /// <summary>The next step in short words; null when nothing is to be done.</summary>
    public static string? Next(Finding finding) => finding.Messages!.NextStep is { } next ? Short(next) : null;

    // A message by its name and its values: hold-gap-bridged(later 60 s).
    private static string Short(Message message) =>
        message.Values.IsEmpty ? message.Name : $"{message.Name}({string.Join(", ", message.Values.Select(v => $"{v.Name} {Short(v.Value)}"))})";

    private static string Short(MessageValue value) => value switch
    {
        QuantityValue quantity => QuantityWriter.Instance.Write(quantity, Language.English),
        DurationValue duration => MessageWriter.Span(duration.Seconds),
        ChoiceValue choice => choice.Option,
        NameValue name => name.Name,
        CountValue count => count.Count.ToString(System.Globalization.CultureInfo.InvariantCulture),
        Message message => Short(message),
        _ => throw new NotSupportedException(value.Kind.ToString()),
    };
}
