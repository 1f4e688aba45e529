using System.Globalization;

namespace Commission.Records.Findings;

/// <summary>Prints probabilities without ever rounding an uncertain one to 0 or 100 per cent.</summary>
internal static class ProbabilityText
{
    public static string? Of(double? probability) => probability switch
    {
        null => null,
        < 0.001 => "< 0.1 %",
        > 0.999 => "> 99.9 %",
        < 0.095 or > 0.905 => string.Create(CultureInfo.InvariantCulture, $"{100 * probability:0.0} %"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{100 * probability:0} %"),
    };

    public static string? Ratio(double? ratio) => ratio switch
    {
        null => null,
        >= 99.5 => "> 99",
        >= 9.95 => string.Create(CultureInfo.InvariantCulture, $"{ratio:0}"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{ratio:0.0}"),
    };
}
