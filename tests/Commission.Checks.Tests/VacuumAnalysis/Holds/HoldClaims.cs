using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Checks.VacuumAnalysis;
using Commission.Measurement.Decisions;
using Commission.Measurement.Uncertainty;
using Commission.Records.Findings;

namespace Commission.Checks.Tests.VacuumAnalysis.Holds;

/// <summary>A confident sentence that a job may carry about its hold.</summary>
internal enum HoldClaim
{
    /// <summary>"Held", with its bound.</summary>
    Held,

    /// <summary>An inflow of air as only or first cause.</summary>
    Leak,

    /// <summary>A steady rise, no slowing seen.</summary>
    Steady,

    /// <summary>A rise that slows down and nothing else: water, oil, outgassing.</summary>
    Wet,

    /// <summary>A steady part beneath a source.</summary>
    Both,

    /// <summary>The hold passes its decay limit.</summary>
    Passed,

    /// <summary>The level passes.</summary>
    LevelPassed,

    /// <summary>An upper bound of the inflow, in words or as a printed number, below nine tenths of the true one.</summary>
    BoundTooLow,

    /// <summary>A plateau whose upper bound lies below where the pressure went.</summary>
    PlateauTooLow,

    /// <summary>The hold passes, and no finding of evidence speaks of the log.</summary>
    Unsuspected,
}

/// <summary>What a job says of its hold.</summary>
/// <param name="Hold">The analysis; null without a hold.</param>
/// <param name="Inflow">The rise, Pa/s, behind the printed inflow: of the steady part, else the mean; null without one.</param>
/// <param name="Findings">Findings of the evacuation and of evidence; empty where the job was refused with a reason.</param>
/// <param name="Refused">The problems for which the job was refused; null when it was read.</param>
internal sealed record HoldTold(HoldResult? Hold, Uncertain? Inflow, ImmutableArray<Finding> Findings, string? Refused)
{
    private static readonly string[] Asked =
        ["evacuation.hold", "evacuation.level", "evacuation.cause", "evacuation.leak-rate", .. Evidence];

    /// <summary>The checks that may suspect a log.</summary>
    public static IReadOnlyList<string> Evidence => ["evidence.repeated", "evidence.resolution", "evidence.physics", "evidence.terminal-digits"];

    public static HoldTold Of(string yaml, params (string Name, string Text)[] files)
    {
        CheckContext context;
        try
        {
            context = JobText.Context(yaml, files);
        }
        catch (InvalidDataException refused)
        {
            return new HoldTold(null, null, [], refused.Message);
        }

        var run = context.Get<EvacuationRun>();
        return new HoldTold(run.Hold, run.Slope ?? run.MeanRise, [.. Asked.SelectMany(id => CheckCatalogue.Find(id)!.Evaluate(context))], null);
    }

    /// <summary>Whether it makes a claim.</summary>
    /// <param name="claim">The claim.</param>
    /// <param name="inflow">True inflow, Pa/s, that a bound has to hold.</param>
    /// <param name="level">Where the pressure went, Pa.</param>
    public bool Makes(HoldClaim claim, double inflow, double level) => claim switch
    {
        HoldClaim.Held => Concludes(HoldConclusion.Held),
        HoldClaim.Leak => Explained && Hold is { } hold && NamesLeakFirst(hold),
        HoldClaim.Steady => Concludes(HoldConclusion.SteadyRise),
        HoldClaim.Wet => Concludes(HoldConclusion.Source),
        HoldClaim.Both => Concludes(HoldConclusion.SteadyRiseAndSource),
        HoldClaim.Passed => Passes("evacuation.hold"),
        HoldClaim.LevelPassed => Passes("evacuation.level"),
        HoldClaim.BoundTooLow => Bounds.Any(b => b < 0.9 * inflow),
        HoldClaim.PlateauTooLow => Explained && Hold is { Conclusion: HoldConclusion.Source, Plateau.High: var high } && high < level,
        _ => !Suspects(null) && Passes("evacuation.hold"),
    };

    /// <summary>Whether a leak is the only or the first cause that a result is explained by. Today the sentences of a steady part begin with air coming in.</summary>
    /// <param name="hold">The result.</param>
    public static bool NamesLeakFirst(HoldResult hold) => hold is { Conclusion: HoldConclusion.SteadyRise, ExcludesOutgassing: true };

    /// <summary>Whether a check of evidence, or any of them, says more than that it found nothing.</summary>
    /// <param name="check">The check; null for any.</param>
    public bool Suspects(string? check) => Findings.Any(f => (check is null ? Evidence.Contains(f.Check, StringComparer.Ordinal) : f.Check == check) && IsAlarm(f));

    private static bool IsAlarm(Finding finding) => finding.Verdict == Verdict.Fail || (finding.Verdict == Verdict.Information && finding.NextStep is not null);

    public override string ToString() => Refused is not null ? "refused" : Hold is null ? "no hold" : string.Create(
        CultureInfo.InvariantCulture,
        $"{Hold.Conclusion}{(Hold.Reason is { } reason ? $" ({reason})" : "")}{(Hold.Slope is { } s ? $", {Rate(s.Value)} [{Rate(s.Low)}, {Rate(s.High)}] micron/min" : "")}; hold {Marked("evacuation.hold")}");

    private static string Rate(double slope) => (slope / SimulatedGauge.Micron * 60).ToString("0.0", CultureInfo.InvariantCulture);

    private bool Explained => Finding("evacuation.cause") is { Verdict: Verdict.Information };

    // What the record prints as most: of the explanation where it concludes without a steady part, of the inflow wherever it is told.
    private IEnumerable<double> Bounds
    {
        get
        {
            // "Held" names a rise that is seen and what counts; one that is not seen has the bound of the slope.
            if (Explained && Hold is { Conclusion: HoldConclusion.Held } held)
                yield return held.Slope is { } flat && held.RiseSeen < 2 * held.Resolution ? Math.Max(flat.High, 0) : held.CountingRise / held.Length;
            if (Explained && Hold is { Conclusion: HoldConclusion.Source, Slope: { } beneath })
                yield return Math.Max(beneath.High, 0);
            if (Finding("evacuation.leak-rate") is { Verdict: Verdict.Information } && Inflow is { } told)
                yield return Math.Max(0, Math.Max(Hold?.Slope?.High ?? 0, told.Value + told.Expanded));
        }
    }

    private bool Concludes(HoldConclusion conclusion) => Explained && Hold?.Conclusion == conclusion;

    private bool Passes(string check) => Finding(check)?.Verdict is Verdict.Pass or Verdict.PassWithinUncertainty;

    private string Marked(string check) => Finding(check)?.Verdict.ToString() ?? "silent";

    private Finding? Finding(string check) => Findings.FirstOrDefault(f => f.Check == check);
}
