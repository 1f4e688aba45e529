using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Instruments;

/// <summary>What the two sides of a check against a reference are called.</summary>
/// <param name="Reference">The reference, in the budget.</param>
/// <param name="Applied">What was applied.</param>
/// <param name="Read">What was read.</param>
/// <param name="Stated">Where the reference's uncertainty is from.</param>
/// <param name="Kind">How the error is displayed.</param>
internal sealed record ReferenceWords(string Reference, string Applied, string Read, string Stated, DisplayKind Kind);

/// <summary>How far an instrument was off at a reference.</summary>
/// <param name="Si">Reading less reference, SI.</param>
/// <param name="Size">Its absolute value with the doubt of indication and reference.</param>
/// <param name="Difference">The two numbers as written.</param>
internal sealed record ReferenceError(double Si, Uncertain Size, string Difference)
{
    /// <summary>The error, its two numbers named in the finding.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="finding">The finding.</param>
    /// <param name="instrument">The instrument.</param>
    /// <param name="check">The check against a reference.</param>
    /// <param name="words">What its sides are called.</param>
    public static ReferenceError Of(CheckContext context, FindingBuilder finding, UsedInstrument instrument, ReferenceCheck check, ReferenceWords words)
    {
        var shown = check.Adjusted ?? check.Read;
        var error = shown.Value.Si - check.Applied.Value.Si;
        var sign = error < 0 ? -1.0 : 1.0;
        var terms = new List<RootTerm> { sign * instrument.ZeroCause };
        if (check.Applied.Stated is { } stated)
            terms.Add(-sign * context.Causes.Enter(RootCause.FromExpanded($"{instrument.Id}: {words.Reference}", words.Stated, stated.HalfWidthSi, stated.CoverageFactor), words.Kind));
        finding.Use($"{instrument.Id}: {words.Applied}", check.Applied, instrument.Id).Use($"{instrument.Id}: {words.Read}", shown, instrument.Id);
        return new ReferenceError(error, context.Scope.Reading(Math.Abs(error), [.. terms]), $"{shown.Text} − {check.Applied.Text}");
    }
}

/// <summary>What the scale shows under a known weight.</summary>
internal sealed class ScaleCheck : ICheck
{
    public string Id => "instrument.scale";

    public string Phase => Phases.Instruments;

    public string Title => "Scale at a check weight";

    public CheckHelp Help { get; } = new(
        "Does the scale show a known weight? A charge by weight is as good as its scale.",
        "error = reading − check weight",
        "± 1 oz asked of charging scales in generic installation manuals (published).",
        "Level the scale on a firm floor out of the wind, tare it, repeat. If the error stays, have it calibrated.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var instrument in context.Get<InstrumentKit>().All)
        {
            if (instrument.Described.Checks?.CheckWeight is { } check)
                yield return Judge(context, instrument, check);
        }
    }

    private Finding Judge(CheckContext context, UsedInstrument instrument, ReferenceCheck check)
    {
        var present = context.Present;
        var finding = context.Finding(this, instrument.Id);
        var error = ReferenceError.Of(context, finding, instrument, check, new ReferenceWords("check weight", "check weight", "read", "stated with the weight", DisplayKind.Mass));
        finding.Step("e", "error at the check weight", "m_read − m_applied", error.Difference, present.Text(error.Si, DisplayKind.Mass));
        var limit = context.Limits.Require(LimitIds.InstrumentsScale);
        finding.Judge(error.Size, DisplayKind.Mass, context.State(limit));
        return finding.Conclude(
            $"{instrument.Id} is off by {present.Text(error.Si, DisplayKind.Mass)} at {check.Applied.Text}.",
            $"{instrument.Id} is off by {present.Text(error.Si, DisplayKind.Mass)} at {check.Applied.Text}: too much for a charge by weight.",
            "Level and tare the scale and repeat; else have it calibrated.");
    }
}
