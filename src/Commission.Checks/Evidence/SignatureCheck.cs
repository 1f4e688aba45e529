using Commission.Records.Findings;

namespace Commission.Checks.Evidence;

/// <summary>Whether somebody stands for the record.</summary>
internal sealed class SignatureCheck : ICheck
{
    public string Id => "evidence.signature";

    public string Phase => Phases.Evidence;

    public string Title => "Signature";

    public CheckHelp Help { get; } = new(
        "Who stands for this record, in what role, and since when?",
        "at least one name with a date that is not before the work",
        "Practice of start-up and log-book forms (common practice, no source); EN 378-4 and 40 CFR 82.157 ask for the person (from memory).",
        "Add signatures: name, role, date, licence number and what is declared: performed, or witnessed.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var signatures = context.Job.Signatures;
        var finding = context.Finding(this);
        foreach (var signature in signatures)
        {
            var name = signature.Name.Value;
            finding.Use("name", signature.Name).Use($"{name}: role", signature.Role).Use($"{name}: licence", signature.Licence).Use($"{name}: statement", signature.Statement).Use($"{name}: date", signature.Date);
        }

        if (signatures.IsEmpty)
        {
            yield return finding.NotEvaluated("nobody has signed", "Write signatures: [{name: …, role: technician, date: …}].");
            yield break;
        }

        finding.Use("date of the job", context.Job.Identity.Date);
        var early = signatures.Where(s => s.Date.Value < context.Job.Identity.Date.Value).Select(s => $"{s.Name.Value} on {s.Date.Text}").ToList();
        if (early.Count > 0)
        {
            yield return finding.Decide(false).Say($"Signed before the day of the work, {context.Job.Identity.Date.Text}: {string.Join(", ", early)}.").Next("Correct the date, or sign after the work.").Build();
            yield break;
        }

        yield return finding.Decide(true).Say($"Signed by {string.Join("; ", signatures.Select(s => string.Join(", ", new[] { s.Name.Value, s.Role?.Value, s.Licence is { } licence ? $"licence {licence.Value}" : null, s.Date.Text }.OfType<string>())))}.").Build();
    }
}
