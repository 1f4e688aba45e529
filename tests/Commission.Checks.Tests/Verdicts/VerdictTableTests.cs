using Commission.Checks.Recording;
using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Verdicts;

/// <summary>That the tables leave nothing out: each check right and wrong, each limit at, just inside and just outside its figure.</summary>
public sealed class VerdictTableTests
{
    /// <summary>Checks that only ever inform: a table names one job of which they speak and one of which they cannot.</summary>
    private static readonly HashSet<string> Informing = new(StringComparer.Ordinal)
    {
        "instrument.adequacy", "evacuation.series", "evacuation.humidity", "evacuation.leak-rate", "evacuation.tightness-not-proved",
        "charge.saturation", "charge.heating-mode", "charge.cycle", "charge.as-found", "charge.return-visit", "air.psychrometrics", "air.capacity", "air.energy-balance",
        "refrigerant.co2e", "refrigerant.thresholds", "refrigerant.records", "functional.box-pull-down", "functional.water-capacity",
    };

    /// <summary>Checks without a middle: what misses their limit is told, or stands as a condition, and does not fail.</summary>
    private static readonly HashSet<string> Telling = new(StringComparer.Ordinal)
    {
        "evidence.coverage", "evidence.instruments-identified", "evidence.photos", "evidence.repeated", "evidence.resolution", "evidence.terminal-digits", "charge.stabilised", "charge.running-condition", "charge.method-validity",
        "evacuation.conditions", "safety.concentration-limit", "refrigerant.suction-drier",
    };

    /// <summary>Checks that only speak of a log, which no table holds: RiseCauseCheckTests and PumpDownCheckTests show them.</summary>
    private static readonly HashSet<string> OfLogs = new(StringComparer.Ordinal) { "evacuation.cause", "evacuation.pump-down" };

    [Fact]
    public void Every_check_is_shown_right_and_wrong()
    {
        var rows = VerdictTable.Rows.ToLookup(r => r.Check, StringComparer.Ordinal);
        var missing = new List<string>();
        foreach (var check in CheckCatalogue.All.Where(c => !OfLogs.Contains(c.Id)))
        {
            var verdicts = rows[check.Id].Select(r => r.Expected).ToHashSet();
            if (Informing.Contains(check.Id) ? !verdicts.Contains(Verdict.Information) : !verdicts.Overlaps([Verdict.Pass, Verdict.PassWithinUncertainty, Verdict.Conditional]))
                missing.Add($"{check.Id}: no row where it {(Informing.Contains(check.Id) ? "informs" : "passes")}");
            var wrong = Informing.Contains(check.Id) || Telling.Contains(check.Id)
                ? verdicts.Contains(Verdict.NotEvaluated) || verdicts.Contains(Verdict.Information) || verdicts.Contains(Verdict.Conditional)
                : verdicts.Contains(Verdict.Fail);
            if (!wrong)
                missing.Add($"{check.Id}: no row where it does not pass");
        }

        Assert.Empty(missing);
        Assert.DoesNotContain(rows, r => CheckCatalogue.Find(r.Key) is null);
    }

    // The rows of a limit: the last two stand on its two sides, and the one at the figure itself is on the inner side (JCGM 106, 3.3.5: the limit
    // is a permissible value).
    [Fact]
    public void Every_limit_of_the_tables_is_tried_on_both_sides()
    {
        var byLimit = VerdictTable.Rows.Where(r => r.Limit is not null).GroupBy(r => r.Limit!, StringComparer.Ordinal).ToList();
        Assert.All(byLimit, rows => Assert.True(rows.Count() >= 3 && rows.Select(r => (r.Expected, r.IsReserved, r.Subject)).Distinct().Count() >= 2, $"{rows.Key} is not tried on both sides."));
        Assert.True(byLimit.Count >= 60, $"{byLimit.Count} limits are tried.");
    }

    [Fact]
    public void Every_row_says_why() => Assert.All(VerdictTable.Rows, r => Assert.True(r.Because?.Length > 15, $"{r.Place} says no reason."));
}
