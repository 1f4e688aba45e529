using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
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
        return target.Limit ?? (context.Limits.Find(LimitIds.ChargePatternSubcooling) is { } usual ? context.State(usual) : null);
    }

    private static ChargeLevel? Condensing(CheckContext context, ChargeRow row, FindingBuilder finding)
    {
        if (row.CondensingOverAmbient is not { Value: { } value } number || context.Limits.Find(LimitIds.ChargeCondensingOverAmbientRange) is not { } range)
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

/// <summary>What superheat and subcooling say together.</summary>
/// <param name="Meaning">What it looks like, as part of a sentence.</param>
/// <param name="Next">What to do.</param>
internal sealed record ChargePattern(string Meaning, string Next)
{
    /// <summary>The pattern of both sides.</summary>
    /// <param name="superheat">Superheat against its target or range.</param>
    /// <param name="subcooling">Subcooling against its target or what is usual.</param>
    /// <param name="condensing">Condensing over ambient against its range; null when it is not known.</param>
    /// <param name="hasValve">Whether a valve holds the superheat.</param>
    public static ChargePattern Of(ChargeLevel superheat, ChargeLevel subcooling, ChargeLevel? condensing, bool hasValve) => (superheat, subcooling) switch
    {
        (_, ChargeLevel.High) when condensing == ChargeLevel.High => new(
            "too much refrigerant or something that does not condense",
            "Make the standing test for non-condensables and clean the condenser before anything is removed."),
        (ChargeLevel.High, ChargeLevel.Low) => new(
            "too little refrigerant",
            "Find out where it went, repair the leak, then add by weight in small steps, letting the system settle after each."),
        (ChargeLevel.High, _) => new(
            "a restriction, a starved valve or low load, not a low charge",
            "Do not add refrigerant. Check drier, strainer, distributor and the valve's bulb, then load and airflow."),
        (ChargeLevel.Low, ChargeLevel.High) => new(
            "too much refrigerant",
            "Recover by weight in small steps, letting the system settle after each."),
        (ChargeLevel.Low, _) => new(
            hasValve ? "a valve that overfeeds or low airflow, not a wrong charge" : "too large an orifice or low airflow, not a wrong charge",
            hasValve ? "Do not remove refrigerant. Check that the bulb is tight and insulated, then the airflow." : "Do not remove refrigerant. Check the airflow and the size of the orifice against the plate."),
        (ChargeLevel.Normal, ChargeLevel.High) => new(
            hasValve ? "too much refrigerant behind a valve that still holds its superheat" : "a condenser that holds more liquid than usual",
            "Make the standing test for non-condensables first; then recover by weight in small steps."),
        (ChargeLevel.Normal, ChargeLevel.Low) => new(
            hasValve ? "too little refrigerant that the valve still makes up for" : "little liquid in the condenser",
            "Look for a leak first; then add by weight in small steps, letting the system settle after each."),
        _ when condensing == ChargeLevel.High => new("a condenser that gets rid of its heat badly", "Clean the condenser, check its fan and that hot air does not come back."),
        _ => new("nothing wrong with the charge", ""),
    };
}

/// <summary>Where a number lies against what is usual for it.</summary>
internal enum ChargeLevel
{
    /// <summary>Below.</summary>
    Low,

    /// <summary>Inside.</summary>
    Normal,

    /// <summary>Above.</summary>
    High,
}
