using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Recording;
using Xunit;

namespace Commission.Checks.Tests.Charge;

public sealed class ChargeCatalogueTests
{
    [Fact]
    public void The_checks_of_a_charge() => Assert.Equal(
        [
            "charge.approach", "charge.as-found", "charge.by-weight", "charge.condensing-over-ambient", "charge.cycle", "charge.diagnosis", "charge.drier-drop",
            "charge.evaporator-difference", "charge.heating-mode", "charge.maker-chart", "charge.match", "charge.metering-superheat", "charge.method-validity",
            "charge.non-condensables", "charge.phase", "charge.prerequisites", "charge.receiver", "charge.return-visit",
            "charge.running-condition", "charge.saturation", "charge.stabilised", "charge.subcooling", "charge.superheat", "charge.superheat-floor", "charge.total",
        ],
        CheckCatalogue.All.Where(c => c.Phase == Phases.Charge).Select(c => c.Id).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_charge_check_a_pack_requires_exists()
    {
        var required = LimitLibrary.EmbeddedNames.SelectMany(name => LimitLibrary.Embedded.Find(name)!.Required).SelectMany(p => p.Checks).SelectMany(c => c.OneOf)
            .Where(id => id.StartsWith("charge.", StringComparison.Ordinal)).Distinct(StringComparer.Ordinal).ToList();
        Assert.Contains("charge.by-weight", required);
        Assert.All(required, id => Assert.NotNull(CheckCatalogue.Find(id)));
    }

    [Fact]
    public void A_job_without_charging_has_no_word_on_charge()
    {
        var yaml = ChargeJobs.FenRow[..ChargeJobs.FenRow.IndexOf("charging:", StringComparison.Ordinal)];
        Assert.Empty(JobText.Evaluate(yaml).Where(f => f.Phase == Phases.Charge));
    }

    [Fact]
    public void The_same_job_gives_the_same_findings() =>
        Assert.Equal(JobText.Evaluate(ChargeJobs.TarnLane).Select(f => f.Statement), JobText.Evaluate(ChargeJobs.TarnLane).Select(f => f.Statement));
}
