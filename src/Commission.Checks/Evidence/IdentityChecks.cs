using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;
using Commission.Source;

namespace Commission.Checks.Evidence;

/// <summary>Whether somebody stands for the record.</summary>
internal sealed class SignatureCheck : ICheck
{
    public string Id => "evidence.signature";

    public string Phase => Phases.Evidence;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var finding = context.Finding(this);
        foreach (var signature in context.Job.Signatures)
        {
            var name = signature.Name?.Value ?? signature.Role?.Value ?? "";
            finding.Use(EvidenceMessages.SignatureName, signature.Name).Use(EvidenceMessages.SignatureRole(new(name)), signature.Role).Use(EvidenceMessages.SignatureLicence(new(name)), signature.Licence)
                .Use(EvidenceMessages.SignatureStatement(new(name)), signature.Statement).Use(EvidenceMessages.SignatureDate(new(name)), signature.Date);
        }

        var named = context.Job.Signatures.Where(s => s.Name is not null).ToList();
        var names = named.Select(s => string.Join(", ", new[] { s.Name!.Value, s.Role?.Value }.OfType<string>())).ToList();
        // Who did the work stands for it, also where the file leaves the signing to the hand.
        if (names.Count == 0 && context.Job.Identity.People?.Technician is { } technician)
        {
            finding.Use(ReadingsMessages.Technician, technician);
            names.Add($"{technician.Value}, {context.Present.Text(CertificateMessages.RoleTechnician)}");
        }

        if (names.Count == 0)
        {
            yield return finding.NotEvaluated(EvidenceMessages.NobodyNamed, EvidenceMessages.NobodyNamedNext, "signatures: [{name: …, role: technician}]");
            yield break;
        }

        finding.Use(ReadingsMessages.DateOfJob, context.Job.Identity.Date);
        var early = named.Where(s => s.Date is { } date && date.Value < context.Job.Identity.Date.Value).Select(s => (MessageValue)new TextValue($"{s.Name!.Value}, {s.Date!.Text}")).ToList();
        yield return early.Count > 0
            ? finding.Decide(false).Say(EvidenceMessages.NamedTooEarly(new(context.Job.Identity.Date.Text), new ListValue([.. early], ListJoin.And))).Next(EvidenceMessages.NamedTooEarlyNext).Build()
            : finding.Decide(true).Say(EvidenceMessages.Named(new ListValue([.. names.Select(n => (MessageValue)new TextValue(n))], ListJoin.And))).Build();
    }
}

/// <summary>Whether every reading that was judged names the instrument it was read on.</summary>
internal sealed class InstrumentsIdentifiedCheck : IReviewCheck
{
    public string Id => "evidence.instruments-identified";

    public string Phase => Phases.Evidence;

    public IEnumerable<Finding> Review(CheckContext context, IReadOnlyList<Finding> findings)
    {
        var byPlace = new Dictionary<SourceLocation, HandReading>();
        foreach (var reading in context.Get<HandReadings>().All)
            byPlace.TryAdd(reading.At, reading);
        if (byPlace.Count == 0)
            yield break;
        var judged = new HashSet<SourceLocation>();
        var without = new SortedDictionary<SourceLocation, ReadingUse>();
        foreach (var finding in findings.Where(f => f.Verdict is not (Verdict.NotEvaluated or Verdict.Information) && f.Phase is not (Phases.Instruments or Phases.Evidence)))
        {
            foreach (var use in finding.Readings.Where(r => byPlace.ContainsKey(r.At)))
            {
                judged.Add(use.At);
                if (use.Instrument is null)
                    without.TryAdd(use.At, use);
            }
        }

        // The same place may be named with its instrument by one check and without by another.
        var named = findings.SelectMany(f => f.Readings).Where(r => r.Instrument is not null).Select(r => r.At).ToHashSet();
        foreach (var place in without.Keys.Where(named.Contains).ToList())
            without.Remove(place);
        var finished = context.Finding(this);
        foreach (var place in judged.Order())
            finished.Use(byPlace[place].Use(null));
        if (judged.Count == 0)
            yield break;
        var names = without.Keys.Select(p => byPlace[p].Series).Distinct(StringComparer.Ordinal).ToList();
        yield return without.Count == 0
            ? finished.Decide(true).Say(EvidenceMessages.AllNamed(judged.Count)).Build()
            : finished.Decide(true).Reserve(EvidenceMessages.NoInstrument(Listed(names))).Next(EvidenceMessages.NoInstrumentNext(Listed(names)), $"instruments: [{{id: …, kind: …, reads: [{string.Join(", ", without.Keys.Select(p => MemberWords.Of(byPlace[p].Reading.ToString())).Distinct(StringComparer.Ordinal))}]}}]")
                .Say(EvidenceMessages.SomeUnnamed(without.Count, judged.Count, new ListValue([.. names.Select(n => new TextValue(n))], ListJoin.Comma))).Build();
    }

    private static ListValue Listed(IEnumerable<string> names) => new([.. names.Select(n => new TextValue(n))]);
}
