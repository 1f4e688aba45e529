using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>Whether the oil that went in goes with the refrigerant, and how much of the old one was left.</summary>
internal sealed class OilChangeCheck : ICheck
{
    public string Id => "refrigerant.oil-change";

    public string Phase => Phases.Refrigerant;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.OilChange is not { } change)
            yield break;
        var gas = context.Get<CircuitRefrigerant>();
        var isOfOldKind = change.Kind is { Value: OilKind.Mineral or OilKind.Alkylbenzene };
        if (change.Kind is { } kind)
        {
            var finding = context.Finding(this, context.Present.Text(RefrigerantMessages.SubjectOilKind)).Use(RefrigerantMessages.ReadingOil, change.Type).Use(RefrigerantMessages.ReadingOilKind, kind)
                .Use(RefrigerantMessages.ReadingOilAmount, change.Amount).Use(ReadingsMessages.Refrigerant, context.Job.Equipment.Refrigerant);
            var (oil, name) = (new TextValue(kind.Text), new NameValue(gas.Designation));
            // An HFC or HFO carries no mineral oil back to the compressor; the service blends that hold a hydrocarbon do, and their makers say how far.
            yield return isOfOldKind && ReturnsOnlySynthetic(gas)
                ? finding.Decide(false).Say(RefrigerantMessages.OilWrong(oil, name)).Next(this.WhenItFails()).Build()
                : finding.Decide(true).Say(RefrigerantMessages.OilGoes(oil, name)).Build();
        }

        if (change.Residual is not { } residual)
            yield break;
        var limit = context.Limits.Require(LimitIds.RefrigerantResidualOil);
        var read = Written.Reading(context, context.Present.Text(RefrigerantMessages.ReadingOilLeft), residual, DisplayKind.Percentage);
        yield return context.Finding(this, context.Present.Text(RefrigerantMessages.SubjectOilLeft)).Use(read).Judge(read.Value, DisplayKind.Percentage, context.State(limit))
            .Conclude(RefrigerantMessages.OilLeft(new(residual.Text)), RefrigerantMessages.OilLeftTooMuch(new(residual.Text), new(context.State(limit).Text)), RefrigerantMessages.OilLeftNext);
    }

    private static bool ReturnsOnlySynthetic(CircuitRefrigerant gas) =>
        gas.Info is { } info && !Soluble.Contains(info.Designation) && !info.Composition.Any(c => Soluble.Contains(c.Designation));

    // What carries mineral oil: chlorinated refrigerants, hydrocarbons, and ammonia, which leaves it behind and is drained (ASHRAE Handbook Refrigeration, lubricants, from memory).
    private static readonly HashSet<string> Soluble = new(StringComparer.Ordinal)
    {
        "R-11", "R-12", "R-22", "R-123", "R-124", "R-142b", "R-290", "R-600", "R-600a", "R-601", "R-601a", "R-1270", "R-170", "R-717",
    };
}

/// <summary>Sealant or dye that was found in the circuit: it clogs instruments and recovery machines, and the next one who opens the circuit has to know.</summary>
internal sealed class AdditivesCheck : ICheck
{
    public string Id => "refrigerant.additives";

    public string Phase => Phases.Refrigerant;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.AsFound is not { } found || (found.Sealant is null && found.Dye is null))
            yield break;
        var finding = context.Finding(this).Use(RefrigerantMessages.ReadingSealant, found.Sealant).Use(RefrigerantMessages.ReadingDye, found.Dye);
        if (found.Sealant?.Value == true && RefrigerantIdentityCheck.Charged(context.Job).FirstOrDefault(c => RefrigerantIdentityCheck.WentBack(context.Job, c)) is { } back)
        {
            yield return finding.Use(RefrigerantMessages.ReadingCylinderContents(new(back.Id.Value)), back.Contents).Decide(false).Say(RefrigerantMessages.SealantBack(new TextValue(back.Id.Value))).Next(RefrigerantMessages.IdentityBackAcidNext).Build();
            yield break;
        }

        yield return (found.Sealant?.Value == true, found.Dye?.Value == true) switch
        {
            (true, _) => finding.LookAt(this.WhenItFails()).Information(RefrigerantMessages.SealantFound, RefrigerantMessages.AdditivesKind),
            (_, true) => finding.Information(RefrigerantMessages.DyeFound, RefrigerantMessages.AdditivesKind),
            _ => finding.Decide(true).Say(RefrigerantMessages.AdditivesNone).Build(),
        };
    }
}
