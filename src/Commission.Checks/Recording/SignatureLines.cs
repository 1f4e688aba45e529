using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Jobs.Model;
using Commission.Messages;
using Commission.Records;

namespace Commission.Checks.Recording;

/// <summary>The lines to sign: technician, witness, owner and inspector whether named or not, then whoever else the job names.</summary>
internal static class SignatureLines
{
    /// <summary>The lines, in order.</summary>
    public static ImmutableArray<SignatureLine> Make(CheckContext context)
    {
        var people = context.Job.Identity.People;
        var written = context.Job.Signatures.ToList();
        var lines = ImmutableArray.CreateBuilder<SignatureLine>();
        foreach (var (role, attests, name) in new (Message Role, Message Attests, string? Name)[]
        {
            (CertificateMessages.RoleTechnician, CertificateMessages.AttestTechnician, people?.Technician?.Value),
            (CertificateMessages.RoleWitness, CertificateMessages.AttestWitness, people?.Witness?.Value),
            (CertificateMessages.RoleOwner, CertificateMessages.AttestOwner, people?.Owner?.Value),
            (CertificateMessages.RoleInspector, CertificateMessages.AttestInspector, null),
        })
        {
            var word = context.Present.Text(role);
            // Who is named in the role signs once, whatever he is called beside it.
            var own = written.FirstOrDefault(s => string.Equals(s.Role?.Value, word, StringComparison.OrdinalIgnoreCase))
                ?? written.FirstOrDefault(s => name is not null && string.Equals(s.Name?.Value, name, StringComparison.OrdinalIgnoreCase));
            if (own is not null)
                written.Remove(own);
            lines.Add(own is null ? new SignatureLine(name ?? "", word, context.Present.Text(attests), "", "") : Line(own, own.Role?.Value is { } called && !string.Equals(called, word, StringComparison.OrdinalIgnoreCase) ? $"{word}, {called}" : word, context.Present.Text(attests), name));
        }

        lines.AddRange(written.Select(s => Line(s, s.Role?.Value ?? "", "", null)));
        return lines.ToImmutable();
    }

    private static SignatureLine Line(Signature signature, string role, string attests, string? name) =>
        new(signature.Name?.Value ?? name ?? "", role, signature.Statement?.Value ?? attests, signature.Licence?.Value ?? "", signature.Date?.Text ?? "");
}
