using System.Globalization;

namespace Commission.Cli.Console;

/// <summary>The moment a record speaks for: the option, else SOURCE_DATE_EPOCH, else none, and then the job's own day counts. The machine's clock is never asked.</summary>
internal static class RunClock
{
    public static DateTimeOffset? AsOf(DateTimeOffset? option, string? sourceDateEpoch)
    {
        if (option is not null)
            return option;
        return long.TryParse(sourceDateEpoch, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var seconds)
            && seconds is >= -62_135_596_800 and <= 253_402_300_799
            ? DateTimeOffset.FromUnixTimeSeconds(seconds)
            : null;
    }
}
