using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.VacuumAnalysis;
using Commission.Checks.Wording;
using Commission.Jobs.Model.Words;
using Commission.Messages;
using Commission.Records.Findings;
using MathNet.Numerics;

namespace Commission.Checks.Evidence;

/// <summary>Whether the last digits of hand-typed readings are spread as those of an instrument are.</summary>
internal sealed class TerminalDigitsCheck : ICheck
{
    private const int Digits = 10;

    // A reading of the same thing counts again once it has moved by a whole round of last digits.
    private const double StepsApart = 10;
    private const double SameStep = 0.01;

    // Far from what chance does with so many values (binomial, one in five: seven in ten of twenty-five lie six deviations away). One that only hops between two neighbours ends so every other time.
    private const int FewestOfLog = 25;
    private const double MostRound = 0.7;
    private const int HalfRound = 5;
    private const double OffStep = 0.02;

    public string Id => "evidence.terminal-digits";

    public string Phase => Phases.Evidence;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not null && Log(context) is { } log)
            yield return log;
        var candidates = Candidates(context);
        if (candidates.Count == 0)
            yield break;
        var finding = context.Finding(this);
        foreach (var (reading, instrument, _) in candidates)
            finding.Use(reading.Use(instrument));
        var readings = Thinned(candidates);
        var least = context.Limits.Find(LimitIds.EvidenceTerminalDigitsCount)?.Lower?.Si ?? double.PositiveInfinity;
        if (readings.Count < least)
        {
            yield return finding.Information(EvidenceMessages.DigitsTooFew(readings.Count, new(least, 0)), EvidenceMessages.DigitsTooFewKind);
            yield break;
        }

        var counts = new int[Digits];
        foreach (var (_, _, digit) in readings)
            counts[digit]++;
        var expected = readings.Count / (double)Digits;
        var chi = counts.Sum(c => (c - expected) * (c - expected) / expected);
        var probability = SpecialFunctions.GammaUpperRegularized((Digits - 1) / 2.0, chi / 2);
        var list = string.Join(", ", counts.Select((c, digit) => string.Create(CultureInfo.InvariantCulture, $"{digit}: {c}")));
        finding.Step("χ²", EvidenceMessages.DigitsSpread, "Σ (count − n/10)² / (n/10)", $"n = {readings.Count.ToString(CultureInfo.InvariantCulture)}; {list}", string.Create(CultureInfo.InvariantCulture, $"{chi:0.0}, p = {probability:0.0000}"), Cited.FromMemory("Pearson 1900"));
        var bound = context.Limits.Find(LimitIds.EvidenceTerminalDigitsProbability)?.Lower?.Si ?? 0;
        yield return probability >= bound
            ? finding.Decide(true).Say(EvidenceMessages.DigitsEven(readings.Count, new(chi, 1))).Build()
            : finding.LookAt(this.WhenItFails()).Information(
                EvidenceMessages.DigitsUneven(readings.Count, new(list), new(Math.Floor(1 / bound), 0)), EvidenceMessages.DigitsUnevenKind);
    }

    // A display counts through all its digits: of the values that a log runs through, one in five ends in 0 or 5.
    private Finding? Log(CheckContext context)
    {
        var run = context.Get<EvacuationRun>();
        if (run.Rows.Log is null)
            return null;
        var series = run.Rows.Series;
        var pressures = new List<double>(series.Count);
        for (var i = 0; i < series.Count; i++)
        {
            if (!series.OverRange[i])
                pressures.Add(series.Pressures[i]);
        }

        // A display may be coarser higher up, never finer: up to the highest value that is no round one its steps are the fine ones.
        if (pressures.Count == 0 || run.Gauge.ResolutionAt(pressures.Min()) is not (> 0 and var step) || pressures.Exists(p => Math.Abs((p / step) - Math.Round(p / step)) > OffStep))
            return null;
        bool IsRound(double pascals) => (long)Math.Round(pascals / step) % HalfRound == 0;
        // All tens and no fives: the logger writes fewer digits than the display shows.
        if (pressures.TrueForAll(IsRound) && !pressures.Exists(p => !IsRound(p / 2)))
            return null;
        var fine = pressures.Where(p => !IsRound(p)).DefaultIfEmpty(double.PositiveInfinity).Max();
        var (count, round) = (0, 0);
        for (var i = 1; i < pressures.Count; i++)
        {
            if (pressures[i].Equals(pressures[i - 1]) || pressures[i] > fine || run.Gauge.ResolutionAt(pressures[i]) > step * (1 + OffStep))
                continue;
            count++;
            round += IsRound(pressures[i]) ? 1 : 0;
        }

        return count < FewestOfLog || round <= MostRound * count ? null : context.Finding(this, EvidenceMessages.SubjectVacuumLog).Use(ReadingsMessages.EvacuationLog, run.Evacuation.Series?.File, run.Gauge.Id)
            .LookAt(EvidenceMessages.LogDigitsNext).Information(EvidenceMessages.LogDigits(round, count), EvidenceMessages.LogDigitsKind);
    }

    private static List<(HandReading Reading, string Instrument, int Digit)> Candidates(CheckContext context)
    {
        var kit = context.Get<InstrumentKit>();
        var found = new List<(HandReading, string, int)>();
        foreach (var reading in context.Get<HandReadings>().All)
        {
            // A vacuum gauge has another step in every range; a number written coarser or finer than the display is no reading of its last digit.
            if (reading.Reading != ReadingName.Evacuation && reading.Step is { } step && kit.For(reading.Reading, reading.With) is { } instrument && instrument.ResolutionAt(reading.Si) is { } resolution
                && Math.Abs(step - resolution) <= SameStep * resolution && LastDigit(reading.Text) is { } digit)
            {
                found.Add((reading, instrument.Id, digit));
            }
        }

        return found;
    }

    private static List<(HandReading Reading, string Instrument, int Digit)> Thinned(List<(HandReading Reading, string Instrument, int Digit)> candidates)
    {
        var last = new Dictionary<string, double>(StringComparer.Ordinal);
        var kept = new List<(HandReading, string, int)>();
        foreach (var (reading, instrument, digit) in candidates)
        {
            if (last.TryGetValue(reading.Series, out var before) && Math.Abs(reading.Si - before) < StepsApart * reading.Step!.Value * (1 - SameStep))
                continue;
            last[reading.Series] = reading.Si;
            kept.Add((reading, instrument, digit));
        }

        return kept;
    }

    private static int? LastDigit(string text)
    {
        int? digit = null;
        foreach (var c in text)
        {
            if (char.IsAsciiDigit(c))
                digit = c - '0';
            else if (c is not ('.' or ',' or '-' or '−'))
                break;
        }

        return digit;
    }
}
