using System.Collections.Immutable;
using Commission.Checks.Findings;
using Commission.Checks.Limits;
using Commission.Measurement.Units;

namespace Commission.Checks.Charge;

/// <summary>Whether it was neither too cold nor too hot, outdoors and indoors, for the charging method.</summary>
internal sealed class MethodValidity : IChargeGate
{
    private readonly CheckContext context;

    private MethodValidity(CheckContext context, ImmutableArray<ValidityWindow> windows)
    {
        this.context = context;
        Windows = windows;
    }

    /// <summary>The conditions.</summary>
    public ImmutableArray<ValidityWindow> Windows { get; }

    /// <inheritdoc/>
    public string? Block => Outside is { } window ? Words(window) : null;

    /// <inheritdoc/>
    public string? Todo => Outside is { } window ? Advice(window) : null;

    /// <inheritdoc/>
    public string? Reservation
    {
        get
        {
            var missing = Windows.Where(w => w.Reading is null).Select(w => w.What).ToArray();
            return missing.Length == 0 ? null : $"{string.Join(" and ", missing)} {(missing.Length == 1 ? "was" : "were")} not read";
        }
    }

    private ValidityWindow? Outside => Windows.FirstOrDefault(w => w.Inside == false);

    /// <summary>Looks at a row of readings.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="row">The readings.</param>
    /// <param name="criterion">What is to be judged.</param>
    /// <param name="makersChart">Whether a chart of the maker judges it, which is its own range unless the maker states another.</param>
    public static MethodValidity Of(CheckContext context, ChargeRow row, ChargeCriterion criterion, bool makersChart = false)
    {
        var windows = ImmutableArray.CreateBuilder<ValidityWindow>();
        if (Find(context, "charge.validity.outdoor", makersChart) is { } outdoor)
            windows.Add(Winter(context, row, criterion, new ValidityWindow("outdoor dry bulb", row.OutdoorDryBulb, outdoor)));
        if (Find(context, "charge.validity.return-dry-bulb", makersChart) is { } indoor)
            windows.Add(new ValidityWindow("return dry bulb", row.ReturnDryBulb, indoor));
        if (Find(context, "charge.validity.return-wet-bulb", makersChart) is { } wet && (wet.Tier == LimitTier.Maker || UsesTable(context, criterion)))
            windows.Add(new ValidityWindow("return wet bulb", row.ReturnWetBulb, wet));
        return new MethodValidity(context, windows.ToImmutable());
    }

    /// <summary>One condition in words, when it does not hold.</summary>
    /// <param name="window">The condition.</param>
    public string Words(ValidityWindow window) =>
        $"{window.What} at {context.Present.Text(window.Reading!.Value.Value, DisplayKind.Temperature)} lies outside the range of the method, {LimitText.Of(window.Limit, context.Present.Units)}";

    /// <summary>What to do when a condition does not hold.</summary>
    /// <param name="window">The condition.</param>
    public static string Advice(ValidityWindow window) => (window.What, window.IsBelow) switch
    {
        ("outdoor dry bulb", true) => "Weigh the charge in and come back in warmer weather; write the return visit.",
        ("outdoor dry bulb", false) => "Come back when it is cooler, or weigh the charge in.",
        (_, true) => "Warm the room and read again, or weigh the charge in.",
        _ => "Let the system bring the room down and read again.",
    };

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding)
    {
        foreach (var reading in Windows.Select(w => w.Reading).OfType<Readings.CorrectedReading>())
        {
            foreach (var use in reading.Uses)
                finding.Use(use);
        }

        finding.Use("head pressure raised", context.Job.Charging?.HeadPressureRaised);
    }

    // The published windows are those of comfort cooling; a cold room has a window only where its maker gives one.
    private static Limit? Find(CheckContext context, string id, bool makerOnly) =>
        context.Limits.Find(id) is { } limit && (limit.Tier == LimitTier.Maker || (!makerOnly && !context.Get<ChargeAnalysis>().IsRefrigeration)) ? limit : null;

    // Only the table of target superheat asks for the wet bulb.
    private static bool UsesTable(CheckContext context, ChargeCriterion criterion) =>
        criterion == ChargeCriterion.Superheat && context.Get<ChargeAnalysis>() is { HasFixedMetering: true, IsRefrigeration: false } && context.Limits.Find("charge.superheat") is null;

    // Holding the condenser back makes subcooling readable in the cold, where a document allows it; superheat never.
    private static ValidityWindow Winter(CheckContext context, ChargeRow row, ChargeCriterion criterion, ValidityWindow usual)
    {
        if (criterion != ChargeCriterion.Subcooling || !usual.IsBelow || context.Job.Charging?.HeadPressureRaised is not { Value: true })
            return usual;
        if (context.Limits.Find("charge.validity.outdoor.winter-method") is not { } winter)
            return usual;
        var held = new ValidityWindow(usual.What, row.OutdoorDryBulb, winter, $"Read with the head pressure raised: {winter.Source}.");
        return held.Inside == true ? held : usual;
    }
}
