using Commission.Checks.Findings;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Both sides together, before any hint to add or remove refrigerant.</summary>
internal sealed class PatternCheck : ICheck
{
    public string Id => "charge.pattern";

    public string Phase => Phases.Charge;

    public string Title => "Pattern of both sides";

    public CheckHelp Help { get; } = new(
        "What do superheat and subcooling say together? High superheat alone does not mean a low charge: adding refrigerant to a restricted system overfills it.",
        "superheat high and subcooling low: low charge; high and normal or high: restriction, low load, starved valve; low and high: overcharge; low and low or normal: overfeeding or low airflow; high subcooling with high condensing temperature: overcharge or non-condensables",
        "Common practice, no source. Subcooling without a figure of the maker is compared with what is usual, 5 to 20 °F (common practice, no source).",
        "Follow the next step of the pattern. Nothing is hinted while airflow, steady running or the running condition are not shown.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.ByWeightOnly is not null || analysis.HasReceiver || analysis.IsRefrigeration || !(analysis.HasValve || analysis.HasFixedMetering))
            yield break;
        if (analysis.Spoken(OperatingMode.Cooling, r => r.Written is { VaporPressure: not null, VaporLine: not null, LiquidPressure: not null, LiquidLine: not null }) is { } row)
            yield return Judge(context, analysis, row);
    }

    private Finding Judge(CheckContext context, ChargeAnalysis analysis, ChargeRow row)
    {
        var finding = context.Finding(this, row.Time).Use(row.Superheat).Use(row.Subcooling);
        if (row.Superheat.Value is not { } superheat)
            return finding.NotEvaluated(row.Superheat.WhyNot!, "Check the reading and the refrigerant's name.");
        if (row.Subcooling.Value is not { } subcooling)
            return finding.NotEvaluated(row.Subcooling.WhyNot!, "Check the reading and the refrigerant's name.");
        var gates = new ChargeGates(
            row.Settling,
            RunningCondition.Of(context, row),
            MethodValidity.Of(context, row, analysis.HasFixedMetering ? ChargeCriterion.Superheat : ChargeCriterion.Subcooling),
            ChargePrerequisites.Of(context, row));
        gates.NameIn(finding);
        if (gates.Blocked is var (why, todo))
            return finding.NotEvaluated(why, todo);

        if (Level(finding, superheat, SuperheatLimit(context, analysis, row, finding, out var noTarget)) is not { } high)
            return finding.NotEvaluated(noTarget!, "Write the maker's figure, or wait for conditions in which the method counts.");
        if (Level(finding, subcooling, SubcoolingLimit(context, row, finding)) is not { } low)
            return finding.NotEvaluated("nobody says what subcooling is usual", "Write the maker's subcooling.");
        var condensing = Condensing(context, row, finding);
        var pattern = ChargePattern.Of(high, low, condensing, analysis.HasValve);
        var present = context.Present;
        var sentence = $"Superheat {Word(high)} ({present.Text(superheat, DisplayKind.TemperatureDifference)}) with subcooling {Word(low)} ({present.Text(subcooling, DisplayKind.TemperatureDifference)})"
            + $"{(condensing is { } c ? $" and condensing over ambient {Word(c)}" : "")} looks like {pattern.Meaning}.";
        if (gates.Open is { } open)
            finding.Next($"No hint to add or remove anything: {open}.");
        else if (pattern.Next.Length > 0)
            finding.Next(pattern.Next);
        return finding.Information(sentence, "what both sides say together");
    }

    private static LimitStatement? SuperheatLimit(CheckContext context, ChargeAnalysis analysis, ChargeRow row, FindingBuilder finding, out string? whyNot)
    {
        whyNot = "nobody says what superheat is usual";
        if (analysis.HasValve)
            return MeteringSuperheatCheck.LimitOf(context) is { } range ? context.State(range) : null;
        var target = ChargeTarget.Superheat(context, row);
        foreach (var reading in target.Readings)
            finding.Use(reading);
        finding.Add(target.Steps);
        whyNot = target.WhyNot ?? whyNot;
        return target.Limit;
    }

    private static LimitStatement? SubcoolingLimit(CheckContext context, ChargeRow row, FindingBuilder finding)
    {
        var target = ChargeTarget.Subcooling(context, row);
        foreach (var reading in target.Readings)
            finding.Use(reading);
        finding.Add(target.Steps);
        return target.Limit ?? (context.Limits.Find("charge.pattern.subcooling") is { } usual ? context.State(usual) : null);
    }

    private static ChargeLevel? Condensing(CheckContext context, ChargeRow row, FindingBuilder finding)
    {
        if (row.CondensingOverAmbient is not { Value: { } value } number || context.Limits.Find("charge.condensing-over-ambient.range") is not { } range)
            return null;
        finding.Use(number);
        return Level(finding, value, context.State(range));
    }

    private static ChargeLevel? Level(FindingBuilder finding, Uncertain value, LimitStatement? limit)
    {
        if (limit is null)
            return null;
        finding.Show(limit);
        return value.Value < limit.LowerSi ? ChargeLevel.Low : value.Value > limit.UpperSi ? ChargeLevel.High : ChargeLevel.Normal;
    }

    private static string Word(ChargeLevel level) => level switch
    {
        ChargeLevel.Low => "low",
        ChargeLevel.High => "high",
        _ => "normal",
    };
}
