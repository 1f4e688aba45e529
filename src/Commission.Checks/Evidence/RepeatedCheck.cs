using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.VacuumAnalysis;
using Commission.Jobs.Model.Words;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Evidence;

/// <summary>Rows of readings that say the same to the last digit, and stretches of a log that come twice.</summary>
internal sealed class RepeatedCheck : ICheck
{
    private const double LeastTimeApart = 60;

    public string Id => "evidence.repeated";

    public string Phase => Phases.Evidence;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var rows = context.Get<HandReadings>().Rows;
        if (rows.Length > 1)
            yield return Rows(context, rows);
        if (context.Job.Evacuation is { Series.Data: { } log })
            yield return Log(context, log);
    }

    private Finding Rows(CheckContext context, IReadOnlyList<HandRow> rows)
    {
        var finding = context.Finding(this);
        foreach (var reading in rows.SelectMany(r => r.Readings))
            finding.Use(reading.Use(null));
        var bound = context.Limits.Find(LimitIds.EvidenceRepeatedProbability)?.Lower?.Si ?? 0;
        var first = new Dictionary<string, HandRow>(StringComparer.Ordinal);
        var sentences = new List<Message>();
        foreach (var row in rows.Where(r => r.Readings.Length > 1))
        {
            if (first.TryAdd(string.Join('|', row.Readings.Select(r => $"{r.Series}={r.Text}")), row))
                continue;
            var earlier = first[string.Join('|', row.Readings.Select(r => $"{r.Series}={r.Text}"))];
            if (Apart(earlier, row) < LeastTimeApart || Probability(context, row) is not { } probability || probability >= bound)
                continue;
            var line = new ListValue([.. row.Readings.Select(r => new TextValue($"{r.Series} {r.Text}"))], ListJoin.Comma);
            finding.Step(
                "P", EvidenceMessages.RowsByChance(new(earlier.Name), new(row.Name)), EvidenceMessages.RowsByChanceFormula,
                EvidenceMessages.RowsAlike(Line(earlier), Line(row), line), EvidenceMessages.OnceIn(Small(probability)), CommonMessages.CommonPracticeNoSource);
            sentences.Add(EvidenceMessages.RowsRepeated(new(earlier.Name), Line(earlier), new(row.Name), Line(row), row.Readings.Length));
        }

        if (sentences.Count == 0)
            return finding.Decide(true).Say(EvidenceMessages.RowsDiffer(rows.Count)).Build();
        foreach (var further in sentences.Skip(1))
            finding.Remark(further);
        return finding.LookAt(EvidenceMessages.RowsRepeatedNext).Information(sentences[0], EvidenceMessages.RowsRepeatedKind);
    }

    private Finding Log(CheckContext context, Jobs.Model.ReadSeries log)
    {
        var finding = context.Finding(this, EvidenceMessages.SubjectVacuumLog).Use(ReadingsMessages.EvacuationLog, context.Job.Evacuation!.Series!.File, context.Get<EvacuationRun>().Gauge.Id);
        if (RepeatedStretch.Find(log.Values, log.Times) is not { } found)
            return finding.Decide(true).Say(EvidenceMessages.LogNoStretch).Build();
        return finding.LookAt(EvidenceMessages.LogStretchNext).Information(
            EvidenceMessages.LogStretch(found.Length, Row(log.Rows[found.First]), new(log.File), Row(log.Rows[found.Second])), EvidenceMessages.LogStretchKind);
    }

    // Only what is known to move on a running system counts: pressures and temperatures with a step.
    private static double? Probability(CheckContext context, HandRow row)
    {
        double product = 1;
        var counted = 0;
        foreach (var reading in row.Readings)
        {
            if (reading.Step is not { } step || step <= 0 || Scatter(context, reading) is not { } scatter)
                continue;
            product *= Coincidence.OfEqualDigits(step, scatter);
            counted++;
        }

        return counted == 0 ? null : product;
    }

    private static double? Scatter(CheckContext context, HandReading reading) => reading.Reading switch
    {
        ReadingName.VaporPressure or ReadingName.LiquidPressure or ReadingName.TrueSuctionPressure or ReadingName.DischargePressure => Math.Abs(reading.Si) * context.Assume(LimitIds.AssumptionRunningPressure),
        _ when reading.IsRatio || reading.Reading == ReadingName.Current => null,
        _ => context.Assume(LimitIds.AssumptionRunningTemperature),
    };

    private static double Apart(HandRow a, HandRow b) => a.At.Value.Clock is { } x && b.At.Value.Clock is { } y ? Math.Abs((y - x).TotalSeconds)
        : a.At.Value.Elapsed is { } p && b.At.Value.Elapsed is { } q ? Math.Abs(q.Si - p.Si)
        : double.PositiveInfinity;

    private static NameValue Row(int row) => new(row.ToString(CultureInfo.InvariantCulture));

    private static NameValue Line(HandRow row) => new(row.Line.ToString(CultureInfo.InvariantCulture));

    private static SymbolsValue Small(double probability) => new(probability >= 1e-3
        ? string.Create(CultureInfo.InvariantCulture, $"{1 / probability:0}")
        : $"10{string.Concat(((int)-Math.Floor(Math.Log10(probability)) - 1).ToString(CultureInfo.InvariantCulture).Select(d => "⁰¹²³⁴⁵⁶⁷⁸⁹"[d - '0']))}");
}
