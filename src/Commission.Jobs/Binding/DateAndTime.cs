using System.Globalization;
using System.Text.RegularExpressions;
using Commission.Jobs.Model;
using Commission.Jobs.Problems;
using Commission.Jobs.Times;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Source.Yaml;

namespace Commission.Jobs.Binding;

/// <summary>Dates, times and calendar periods as people write them.</summary>
internal static partial class DateAndTime
{
    // No phase of a job lasts longer than a year.
    private static readonly PlausibleRange Elapsed = new(Dimension.Duration, "0 h", "8784 h");

    public static Given<DateOnly>? Date(BindingContext context, SourceScalar scalar)
    {
        var text = scalar.Text.Trim();
        if (!DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
        {
            context.Complain(scalar, DateShape().IsMatch(text) ? JobMessages.NoSuchDate(ValueText.Short(text)) : JobMessages.NotADate(ValueText.Short(text)), null, JobMessages.DateNext, "date");
            return null;
        }

        return IsOfOurTime(context, scalar, date) ? new Given<DateOnly>(date, scalar.Location, Keep(context, scalar, text)) : null;
    }

    public static Given<JobTime>? Time(BindingContext context, SourceScalar scalar, TimeRole role)
    {
        var text = scalar.Text.Trim();
        if (PointTime().IsMatch(text))
        {
            context.Complain(scalar, JobMessages.NotATime(ValueText.Short(text)), null, JobMessages.ColonNext(new(text.Replace('.', ':'))), "time");
            return null;
        }

        var match = ClockShape().Match(text);
        if (match.Success)
            return Clock(context, scalar, text, match, role);
        if (!Digits.AreRead(context, scalar, "time"))
            return null;
        if (text.Length > 0 && char.IsAsciiDigit(text[0]) && QuantityParser.Parse(text, Dimension.Duration) is { } elapsed)
        {
            if (elapsed.Ok)
            {
                var canonical = Keep(context, scalar, elapsed.Value.Canonical);
                if (!Elapsed.Holds(elapsed.Value.Si, null))
                {
                    context.Complain(scalar, JobMessages.ElapsedCannotBe(new(canonical)), Elapsed.InWords(elapsed.Value.Unit), QuantityMessages.NumberAndUnit, "range");
                    return null;
                }

                return new Given<JobTime>(context.Timeline.Resolve(scalar, canonical, new WrittenTime(null, default, Duration.FromSi(elapsed.Value.Si)), role), scalar.Location, canonical);
            }

            if (elapsed.Fault.Kind == FaultKind.UnitMissing)
            {
                context.Complain(scalar, JobMessages.NotATime(ValueText.Short(text)), null, JobMessages.BareTimeNext(new($"{text} min")), "time");
                return null;
            }
        }

        context.Complain(scalar, JobMessages.NotATime(ValueText.Short(text)), null, JobMessages.NotATimeNext, "time");
        return null;
    }

    public static Given<CalendarPeriod>? Period(BindingContext context, SourceScalar scalar)
    {
        var text = scalar.Text.Trim();
        var match = PeriodShape().Match(text);
        if (match.Success && int.TryParse(match.Groups["n"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n is > 0 and <= 10_000)
        {
            var (months, days, word) = char.ToLowerInvariant(match.Groups["unit"].Value[0]) switch
            {
                'y' => (12 * n, 0, "year"),
                'm' => (n, 0, "month"),
                'w' => (0, 7 * n, "week"),
                _ => (0, n, "day"),
            };
            if (months <= 1200)
            {
                var canonical = string.Create(CultureInfo.InvariantCulture, $"{n} {word}{(n == 1 ? "" : "s")}");
                return new Given<CalendarPeriod>(new CalendarPeriod(months, days), scalar.Location, Keep(context, scalar, canonical));
            }
        }

        context.Complain(scalar, JobMessages.NotAPeriod(ValueText.Short(text)), null, JobMessages.NotAPeriodNext, "period");
        return null;
    }

    private static Given<JobTime>? Clock(BindingContext context, SourceScalar scalar, string text, Match match, TimeRole role)
    {
        int Part(string name) => match.Groups[name].Success ? int.Parse(match.Groups[name].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture) : 0;
        var (hour, minute, second) = (Part("h"), Part("m"), Part("s"));
        DateOnly? date = null;
        if (match.Groups["date"].Success)
        {
            if (!DateOnly.TryParseExact(match.Groups["date"].Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
            {
                context.Complain(scalar, JobMessages.NoSuchDate(new(match.Groups["date"].Value)), null, JobMessages.DateNext, "date");
                return null;
            }

            if (!IsOfOurTime(context, scalar, day))
                return null;
            date = day;
        }

        if (match.Groups["half"] is { Success: true } half)
        {
            if (hour is 0 or > 12)
            {
                context.Complain(scalar, JobMessages.NotATimeOfDay(ValueText.Short(text)), JobMessages.TwelveHoursExpected,
                    JobMessages.TwelveHoursNext(new(text[..half.Index].TrimEnd()), new(half.Value)), "time");
                return null;
            }

            // 12 AM is midnight, 12 PM noon.
            hour = (hour % 12) + (half.ValueSpan[0] is 'p' or 'P' ? 12 : 0);
        }

        if (hour > 23 || minute > 59 || second > 59)
        {
            context.Complain(scalar, JobMessages.NotATimeOfDay(ValueText.Short(text)), JobMessages.HoursExpected,
                hour == 24 ? JobMessages.MidnightNext : JobMessages.ElapsedNext, "time");
            return null;
        }

        var time = new TimeOnly(hour, minute, second);
        var canonical = (date is { } d ? d.ToString("yyyy-MM-dd ", CultureInfo.InvariantCulture) : "")
            + time.ToString(match.Groups["s"].Success ? "HH:mm:ss" : "HH:mm", CultureInfo.InvariantCulture);
        return new Given<JobTime>(context.Timeline.Resolve(scalar, canonical, new WrittenTime(date, time, null), role), scalar.Location, Keep(context, scalar, canonical));
    }

    private static bool IsOfOurTime(BindingContext context, SourceScalar scalar, DateOnly date)
    {
        if (date.Year is >= 1950 and <= 2200)
            return true;
        context.Complain(scalar, JobMessages.Year(new(date.Year.ToString(CultureInfo.InvariantCulture))), null, JobMessages.YearNext, "date");
        return false;
    }

    private static string Keep(BindingContext context, SourceScalar scalar, string canonical) => context.Canonical[scalar] = canonical;

    [GeneratedRegex(@"^(?:(?<date>[0-9]{4}-[0-9]{2}-[0-9]{2})[ T]+)?(?<h>[0-9]{1,2})(?::(?<m>[0-9]{2})(?::(?<s>[0-9]{2}))?(?: ?(?<half>[aApP]\.?[mM]\.?))?| ?(?<half>[aApP]\.?[mM]\.?))$", RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex ClockShape();

    [GeneratedRegex(@"^([01]?[0-9]|2[0-3])\.[0-5][0-9]$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex PointTime();

    [GeneratedRegex(@"^(?<n>[0-9]{1,5}) ?(?<unit>years?|yrs?|y|months?|mo|weeks?|wk|days?|d)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, 10_000)]
    private static partial Regex PeriodShape();

    [GeneratedRegex(@"^[0-9]{4}-[0-9]{2}-[0-9]{2}$", RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex DateShape();
}
