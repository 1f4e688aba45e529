using System.Collections.Immutable;
using Commission.Checks.Evidence;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.VacuumAnalysis;
using Commission.Checks.Wording;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Recording;

/// <summary>
/// What a record of this kind of work and system has to show and does not, as a foreman would tell it: what has one cause is told once, and a visit
/// that stopped at a failed step owes nothing of the later ones, which are still to do.
/// </summary>
internal static class MissingWork
{
    /// <summary>What a part is called that is photos and no check.</summary>
    public const string Photos = "photos";

    /// <summary>The parts that are missing, in the order of the work.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="required">What the packs ask for.</param>
    /// <param name="findings">What the checks found.</param>
    public static ImmutableArray<MissingPart> Of(CheckContext context, RequiredEvidence required, IReadOnlyList<Finding> findings)
    {
        var open = required.Checks.Where(r => !IsJudged(r, findings)).Select(r => OpenRequirement.Of(context, r, findings)).ToList();
        open.AddRange(findings.Where(f => f.IsTakenBack && !open.Any(o => o.Checks.Contains(f.Check, StringComparer.Ordinal))).DistinctBy(f => f.Check).Select(OpenRequirement.Of).ToList());
        var asked = AskedKeys.Of(context, required, findings);
        var parts = new List<MissingPart>();
        if (StoppedAt(context, findings) is { } stop)
        {
            var later = open.Where(o => o.Step > WorkOrder.Of(stop.Phase) && o.Step <= WorkStep.Handover).ToList();
            open.RemoveAll(later.Contains);
            if (later.Count > 0)
            {
                var titles = Titles(later);
                parts.Add(Part(context, later, asked, RecordMessages.StoppedAt(new(InSentence(stop.Title)), titles), RecordMessages.StillToDo(titles), next: null));
            }
        }

        // One reason told once, whatever the number of checks that wait for it.
        foreach (var group in open.GroupBy(o => o.Cause))
        {
            var members = group.ToList();
            var first = members[0];
            var why = first.Finding?.Messages?.Reason ?? (first.Finding?.Reason is { } said ? CommonMessages.AsWritten(new(said)) : RecordMessages.NothingWritten);
            var titles = Titles(members);
            var brief = RecordMessages.MissingShort(titles, why);
            var sentence = members.FirstOrDefault(m => m.Because is not null) is { Because: { } because } named ? RecordMessages.Missing(titles, why, because, new(named.Pack)) : brief;
            parts.Add(Part(context, members, asked, sentence, brief, NextOf(context, members)) with { InFile = members.Select(m => m.Finding?.InFile).FirstOrDefault(i => i is not null) ?? (first.Finding is null && KeysOf(members, asked) is { Length: > 0 } keys ? string.Join(", ", keys) : null) });
        }

        var proof = context.Get<PhotoProof>();
        var shown = context.Job.Photos.Where(proof.Counts).Select(p => p.Shows.Value).Concat(context.Job.PhotosToFollow.Select(p => p.Shows.Value)).ToHashSet();
        var absent = required.Photos.Where(p => !shown.Contains(p.Shows)).ToList();
        if (absent.Count > 0)
        {
            var names = new ListValue([.. absent.Select(p => (MessageValue)SchemaWords.Of(p.Shows))], ListJoin.And);
            parts.Add(new MissingPart([Photos], context.Present.Text(RecordMessages.PhotosMissing(names, absent[0].Because, new(absent[0].Pack))), context.Present.Text(RecordMessages.PhotosMissingShort(names)))
            {
                Names = [context.Present.Text(CertificateMessages.Photos)],
                // A photo may be there and prove nothing: the finding says which, and what to do about it.
                NextStep = proof.Faults.IsEmpty ? null : context.Present.Text(EvidenceMessages.PhotosNext),
            });
        }

        return [.. parts.OrderBy(p => WorkOrder.OfCheck(p.Checks[0]))];
    }

    // A visit stops at the first failed proof of tightness or dryness when nothing was charged or read after it.
    private static Finding? StoppedAt(CheckContext context, IReadOnlyList<Finding> findings) =>
        context.Job.Charging is not null
            ? null
            : findings.FirstOrDefault(f => f is { Verdict: Verdict.Fail, Phase: Phases.PressureTest } && context.Job.Evacuation is null)
              ?? findings.FirstOrDefault(f => f is { Verdict: Verdict.Fail, Phase: Phases.Evacuation });

    /// <summary>Whether the check, or one of its choice, was judged.</summary>
    public static bool IsJudged(RequiredCheck required, IReadOnlyList<Finding> findings) =>
        findings.Any(f => f.Verdict is not (Verdict.NotEvaluated or Verdict.CannotDecide) && required.Names(f.Check));

    private static Message? NextOf(CheckContext context, List<OpenRequirement> members)
    {
        // Under a charge nobody pulls down again: whatever the single check asks for, the charge comes out first.
        var isCharged = context.Job.Charging is not null;
        if (isCharged && members[0] is { Step: WorkStep.Dryness, Finding.IsTakenBack: false, Checks: ["evacuation.level" or "evacuation.hold", ..] })
            return context.Get<EvacuationRun>().Obstacle is null ? RecordMessages.NextDrynessCharged : RecordMessages.NextDrynessVoidCharged;
        if (members.Select(m => m.Finding).FirstOrDefault(f => f?.NextStep is not null) is { } told)
            return told.Messages?.NextStep ?? CommonMessages.AsWritten(new(told.NextStep!));
        return members[0].Step switch
        {
            WorkStep.Tightness => isCharged ? RecordMessages.NextTightnessCharged : RecordMessages.NextTightness,
            WorkStep.Dryness => isCharged ? RecordMessages.NextDrynessCharged : RecordMessages.NextDryness,
            _ => null,
        };
    }

    private static MissingPart Part(CheckContext context, List<OpenRequirement> members, ImmutableArray<AskedKey> asked, Message sentence, Message brief, Message? next) =>
        new([.. members.SelectMany(m => m.Checks)], context.Present.Text(sentence), context.Present.Text(brief))
        {
            Names = [.. members.Select(m => m.Title)],
            Keys = KeysOf(members, asked),
            NextStep = next is null ? null : context.Present.Text(next),
        };

    private static ImmutableArray<string> KeysOf(List<OpenRequirement> members, ImmutableArray<AskedKey> asked) =>
        [.. asked.Where(k => members.Exists(m => m.Checks.Contains(k.Check, StringComparer.Ordinal))).Select(k => k.Path)];

    private static ListValue Titles(List<OpenRequirement> members) =>
        new([.. members.Select((m, i) => (MessageValue)new NameValue(i == 0 ? m.Title : InSentence(m.Title)))], ListJoin.And);

    /// <summary>A title inside a sentence: its first letter small, where it is no abbreviation.</summary>
    public static string InSentence(string title) => title is [_, var second, ..] && (char.IsLower(second) || second == ' ') ? char.ToLowerInvariant(title[0]) + title[1..] : title;

    // Something asked for that is open: a check that was required, or one whose verdict was taken back, which no record is complete without.
    private sealed record OpenRequirement(IReadOnlyList<string> Checks, string Title, Finding? Finding, Message? Because, string Pack)
    {
        public WorkStep Step { get; } = WorkOrder.OfCheck(Checks[0]);

        // Nothing written in one step of the work is one cause; so is one reason, in whichever steps it stands.
        public (string? Reason, WorkStep? Step) Cause => Finding is null ? (null, Step) : (Finding.Reason, null);

        public static OpenRequirement Of(CheckContext context, RequiredCheck check, IReadOnlyList<Finding> findings) => new(
            check.Choice.OneOf,
            check.Choice.Called is { } called ? First(context.Present.Text(called)) : string.Join(" or ", check.Choice.OneOf.Select(id => CheckCatalogue.Find(id) is { } one ? context.Present.Text(one.Title()) : id)),
            findings.FirstOrDefault(f => check.Names(f.Check)),
            check.Because,
            check.Pack);

        public static OpenRequirement Of(Finding takenBack) => new([takenBack.Check], takenBack.Title, takenBack, null, "");

        private static string First(string name) => char.ToUpperInvariant(name[0]) + name[1..];
    }
}

/// <summary>The steps of a visit in the order in which they are done; what comes later rests on what came before.</summary>
internal enum WorkStep
{
    /// <summary>Instruments that failed their check.</summary>
    Instruments,

    /// <summary>Proof that the circuit is tight: the pressure test.</summary>
    Tightness,

    /// <summary>Proof that it is dry and empty: the evacuation.</summary>
    Dryness,

    /// <summary>Charge, air side, machine and electricity: the start-up.</summary>
    StartUp,

    /// <summary>Label, ledger and function: the handover.</summary>
    Handover,

    /// <summary>What makes the record worth relying on.</summary>
    Proof,
}

/// <summary>Where a phase stands in the order of the work.</summary>
internal static class WorkOrder
{
    /// <summary>The step of a phase.</summary>
    public static WorkStep Of(string phase) => phase switch
    {
        Phases.Instruments => WorkStep.Instruments,
        Phases.PressureTest => WorkStep.Tightness,
        Phases.Evacuation => WorkStep.Dryness,
        Phases.Refrigerant or Phases.Functional => WorkStep.Handover,
        Phases.Evidence => WorkStep.Proof,
        _ => WorkStep.StartUp,
    };

    /// <summary>The step of a check that is missing, or of photos: an instrument whose check nobody wrote does not come before the work.</summary>
    public static WorkStep OfCheck(string check) =>
        CheckCatalogue.Find(check) is { Phase: var phase } && phase != Phases.Instruments ? Of(phase) : WorkStep.Proof;
}
