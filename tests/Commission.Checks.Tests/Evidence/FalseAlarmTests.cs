using System.Globalization;
using System.Text;
using Commission.Checks.Evidence;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Evidence;

/// <summary>On honest jobs no evidence check speaks up more than once in a hundred. Fixed seeds, so that a run is the same every time.</summary>
public sealed class FalseAlarmTests
{
    private const int Jobs = 300;
    private const int Allowed = Jobs / 100;

    [Fact]
    public void Honest_jobs_are_left_alone()
    {
        var alarms = new Dictionary<string, int>(StringComparer.Ordinal);
        var spoken = new Dictionary<string, int>(StringComparer.Ordinal);
        ICheck[] checks = [new ChronologyCheck(), new RepeatedCheck(), new ResolutionCheck(), new TerminalDigitsCheck(), new PhysicsCheck(), new AgreementCheck()];
        for (var seed = 1; seed <= Jobs; seed++)
        {
            var context = JobText.Context(new HonestJobs(seed).Whole());
            foreach (var check in checks)
            {
                var findings = check.Evaluate(context).ToList();
                spoken[check.Id] = spoken.GetValueOrDefault(check.Id) + (findings.Count > 0 ? 1 : 0);
                alarms[check.Id] = alarms.GetValueOrDefault(check.Id) + (findings.Any(IsAlarm) ? 1 : 0);
            }
        }

        Assert.All(checks, check => Assert.Equal(Jobs, spoken[check.Id]));
        Assert.All(alarms, a => Assert.True(a.Value <= Allowed, $"{a.Key}: {a.Value.ToString(CultureInfo.InvariantCulture)} of {Jobs.ToString(CultureInfo.InvariantCulture)} honest jobs."));
    }

    [Fact]
    public void Honest_last_digits_are_left_alone()
    {
        var alarms = 0;
        for (var seed = 1; seed <= Jobs; seed++)
        {
            var finding = Assert.Single(new TerminalDigitsCheck().Evaluate(JobText.Context(new HonestJobs(10_000 + seed).LongDay())));
            Assert.True(finding.Verdict is Verdict.Pass || finding.NextStep is not null, finding.Statement);
            alarms += IsAlarm(finding) ? 1 : 0;
        }

        Assert.True(alarms <= Allowed, alarms.ToString(CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Honest_logs_do_not_repeat()
    {
        // A pull-down with a break, a hold and a gauge of one micron with two in a thousand of scatter, a row every five seconds.
        var alarms = 0;
        for (var seed = 1; seed <= Jobs; seed++)
        {
#pragma warning disable CA5394 // a simulation, not a secret
            var random = new Random(seed);
            var values = new double[1200];
            for (var i = 0; i < values.Length; i++)
            {
                var level = i < 500 ? 300 + (20000 * Math.Exp(-i / 60.0)) : i < 520 ? 25000 : i < 900 ? 250 + (20000 * Math.Exp(-(i - 520) / 50.0)) : 250 + (80 * (1 - Math.Exp(-(i - 900) / 100.0)));
                values[i] = Math.Round(level * (1 + (0.004 * (random.NextDouble() - 0.5))));
            }
#pragma warning restore CA5394

            alarms += RepeatedStretch.Find(values) is null ? 0 : 1;
        }

        Assert.True(alarms <= Allowed, alarms.ToString(CultureInfo.InvariantCulture));
    }

    [Fact]
    public void What_was_made_up_is_seen()
    {
        // The same jobs with the last row copied from the one before: the check must see it where the display is fine enough.
        var seen = 0;
        var fine = 0;
        for (var seed = 1; seed <= 60; seed++)
        {
            var yaml = new HonestJobs(seed).Whole();
            if (!yaml.Contains("resolution: 0.1 psi", StringComparison.Ordinal))
                continue;
            fine++;
            var context = JobText.Context(CopyLastRow(yaml));
            seen += new RepeatedCheck().Evaluate(context).Any(IsAlarm) ? 1 : 0;
        }

        Assert.True(fine > 20);
        Assert.Equal(fine, seen);
    }

    private static bool IsAlarm(Finding finding) => finding.Verdict is Verdict.Fail or Verdict.Fail || (finding.Verdict == Verdict.Information && finding.NextStep is not null);

    private static string CopyLastRow(string yaml)
    {
        var lines = yaml.Split('\n').ToList();
        var last = lines.FindLastIndex(l => l.StartsWith("    - {at:", StringComparison.Ordinal));
        var text = new StringBuilder(lines[last - 1]);
        var (from, to) = (lines[last].IndexOf('"', StringComparison.Ordinal), lines[last].IndexOf('"', lines[last].IndexOf('"', StringComparison.Ordinal) + 1));
        text.Remove(from, to - from + 1).Insert(from, lines[last][from..(to + 1)]);
        lines[last] = text.ToString();
        return string.Join('\n', lines);
    }
}
