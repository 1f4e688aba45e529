using System.Globalization;
using System.Text.RegularExpressions;
using Commission.Source;
using NodaTime;

namespace Commission.Jobs.Times;

/// <summary>A time zone by name or as an offset. The names come with the program: a machine without zone data reads the same file alike.</summary>
internal sealed partial class JobZone
{
    private readonly DateTimeZone? _zone;
    private readonly TimeSpan _offset;

    private JobZone(string name, DateTimeZone? zone, TimeSpan offset)
    {
        Name = name;
        _zone = zone;
        _offset = offset;
    }

    /// <summary>The zone of a job that names none: its clock times carry no offset.</summary>
    public static JobZone Unnamed { get; } = new("", null, TimeSpan.Zero);

    public string Name { get; }

    public static JobZone? Find(string text)
    {
        if (text is "UTC" or "Z" or "GMT")
            return new JobZone("UTC", null, TimeSpan.Zero);
        if (OffsetShape().Match(text) is { Success: true } match)
        {
            var hours = int.Parse(match.Groups["h"].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);
            var minutes = match.Groups["m"].Success ? int.Parse(match.Groups["m"].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture) : 0;
            if (hours > 14 || minutes > 59)
                return null;
            var negative = match.Groups["sign"].Value is "-" or "−";
            var offset = new TimeSpan(hours, minutes, 0) * (negative ? -1 : 1);
            return new JobZone(string.Create(CultureInfo.InvariantCulture, $"{(negative ? '-' : '+')}{hours:00}:{minutes:00}"), null, offset);
        }

        return DateTimeZoneProviders.Tzdb.GetZoneOrNull(text) is { } zone ? new JobZone(zone.Id, zone, TimeSpan.Zero) : null;
    }

    public static string? Nearest(string text)
    {
        var ids = DateTimeZoneProviders.Tzdb.Ids;
        if (NearestName.Of(text, ids) is { } nearest)
            return nearest;
        var city = text.Trim().Replace(' ', '_');
        return city.Length < 3 ? null : ids.FirstOrDefault(id => id.EndsWith("/" + city, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>The moment of a clock on the wall; null when the clock was put forward over it. Of two such moments the earlier.</summary>
    public DateTimeOffset? At(DateOnly date, TimeOnly time)
    {
        if (_zone is null)
            return new DateTimeOffset(date.ToDateTime(time), _offset);
        var local = new LocalDateTime(date.Year, date.Month, date.Day, time.Hour, time.Minute, time.Second);
        var map = _zone.MapLocal(local);
        return map.Count == 0 ? null : map.First().ToDateTimeOffset();
    }

    /// <summary>What the clock on the wall shows at a moment.</summary>
    public DateTimeOffset Of(DateTimeOffset moment) => _zone is null ? moment.ToOffset(_offset) : Instant.FromDateTimeOffset(moment).InZone(_zone).ToDateTimeOffset();

    [GeneratedRegex(@"^(?:UTC|GMT)?(?<sign>[+\-−])(?<h>[0-9]{1,2})(?::?(?<m>[0-9]{2}))?$", RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex OffsetShape();
}
