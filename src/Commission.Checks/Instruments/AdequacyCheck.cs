using System.Globalization;
using Commission.Records.Findings;

namespace Commission.Checks.Instruments;

/// <summary>Whether the instruments were good enough for the limits they were judged by, and which would have to be better.</summary>
internal sealed class AdequacyCheck : IReviewCheck
{
    public string Id => "instrument.adequacy";

    public string Phase => Phases.Instruments;

    public string Title => "Instruments against their limits";

    public CheckHelp Help { get; } = new(
        "Were the instruments fine enough to tell in from out? Where they were not, which one would have to be better, and how much?",
        "adequacy = half the tolerance / U of the judged number (one-sided limit: distance to the limit / U)",
        "4 good, 2 to 4 usable in the field, 1 to 2 weak, below 1 no verdict (the four-to-one ratio is the old rule of calibration; common practice, no source).",
        "Use the better instrument named, check the one in use at a point near the reading, or insulate the clamp; then read again.");

    public IEnumerable<Finding> Review(CheckContext context, IReadOnlyList<Finding> findings)
    {
        var judged = findings.Where(f => f is { Adequacy: not null, Measured: not null }).ToList();
        if (judged.Count == 0)
            yield break;
        var usable = context.Limits.Find("instruments.adequacy.usable")?.Lower?.Si ?? 2;
        // A one-sided limit that is missed or met by little has a small distance whatever the instrument: only a band says how fine an instrument has to be.
        var weak = judged.Where(f => f.Adequacy < usable && f.Limits[0] is { LowerSi: not null, UpperSi: not null }).ToList();
        foreach (var f in weak)
            yield return Weak(context, f, usable);
        if (weak.Count == 0)
        {
            yield return context.Finding(this).Information(
                string.Create(CultureInfo.InvariantCulture, $"All {judged.Count} judged numbers with a tolerance band were read finely enough: tolerance over U is {usable:0} or more."),
                "compares each tolerance with the U of its number");
        }
    }

    private Finding Weak(CheckContext context, Finding f, double usable)
    {
        var finding = context.Finding(this, f.Subject is null ? f.Title : $"{f.Title}, {f.Subject}");
        foreach (var use in f.Readings)
            finding.Use(use);
        var grade = f.Adequacy < 1 ? "no verdict possible" : "weak";
        var ratio = f.Adequacy!.Value.ToString("0.0", CultureInfo.InvariantCulture);
        var sentence = $"{f.Title}: tolerance over U is {ratio}, {grade}.";
        if (f.Budget.IsEmpty)
            return finding.Information(sentence, "compares the tolerance with U");
        var first = f.Budget[0];
        var k = f.Measured!.CoverageFactor ?? 2;
        var half = (f.Limits[0].UpperSi!.Value - f.Limits[0].LowerSi!.Value) / 2;
        var allowed = Math.Pow(half / (usable * k), 2);
        var rest = f.Budget.Skip(1).Sum(b => b.ContributionSi * b.ContributionSi);
        finding.Step("a", "adequacy", "half the tolerance / U", f.Limits[0].Text, ratio, "common practice, no source");
        finding.Next(allowed > rest
            ? string.Create(CultureInfo.InvariantCulture, $"Largest cause: {first.Cause} ({first.ShareText}). With it cut to {100 * Math.Sqrt((allowed - rest) / (first.ContributionSi * first.ContributionSi)):0} % of what it is, the ratio would be {usable:0}.")
            : string.Create(CultureInfo.InvariantCulture, $"Largest cause: {first.Cause} ({first.ShareText}); no single instrument would do, the others have to be better too."));
        return finding.Information(sentence, "compares the tolerance with U");
    }
}
