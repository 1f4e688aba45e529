using Commission.Checks.Tests.Charge;
using Commission.Records;
using Xunit;

namespace Commission.Checks.Tests.Recording;

/// <summary>Head, instruments and sources of a record, as a reader finds them: what the job says comes out under the right name, and nothing else.</summary>
public sealed class RecordPartsTests
{
    private static readonly Lazy<CommissioningRecord> TarnLane = new(() => JobLines.Record(ChargeJobs.TarnLane));

    [Theory]
    [InlineData("low", "zero offset taken off")]
    [InlineData("high", "zero offset taken off|along the line through the known pressure")]
    [InlineData("vapor clamp", "ice-point residual taken off|bias toward ambient taken off")]
    [InlineData("liquid clamp", "ice-point residual taken off|bias toward ambient taken off")]
    [InlineData("air probe", "")]
    [InlineData("scale", "")]
    public void Each_instrument_has_the_corrections_that_its_checks_allow(string id, string corrections) =>
        Assert.Equal(corrections, string.Join('|', Row(id).Corrections));

    [Fact]
    public void Each_instrument_has_what_is_known_of_it()
    {
        var low = Row("low");
        Assert.Equal(("pressure gauge", "0.5 % of full scale", "0.1 psi", "2026-02-11", ""), (low.Kind, low.Accuracy, low.Resolution, low.Calibrated, low.Serial));
        Assert.Equal(["vapor pressure"], low.Reads);
        Assert.Equal("thermocouple K class 2", Row("vapor clamp").Accuracy);
        Assert.Contains(low.FieldChecks, c => c.Contains("0.2 psi", StringComparison.Ordinal));
        Assert.Contains(Row("high").FieldChecks, c => c.Contains("-0.3 psi", StringComparison.Ordinal) || c.Contains("−0.3 psi", StringComparison.Ordinal));
        Assert.DoesNotContain(low.FieldChecks, c => c.Contains("0.3 psi", StringComparison.Ordinal));
    }

    [Fact]
    public void Each_instrument_names_what_its_readings_decide()
    {
        Assert.Contains("Subcooling", Row("high").Judges);
        Assert.DoesNotContain("Subcooling", Row("scale").Judges);
        Assert.Contains("Charge by weight", Row("scale").Judges);
        Assert.DoesNotContain("Charge by weight", Row("high").Judges);
        Assert.Equal(Row("high").Judges.Distinct(), Row("high").Judges);
    }

    [Fact]
    public void An_interval_stands_beside_its_date()
    {
        var record = JobLines.Record(JobLines.Of("instruments:\n  - {id: a, kind: pressure gauge, calibrated: 2026-01-10, interval: 24 months, serial: G-7}\n  - {id: b, kind: pressure gauge, interval: 24 months}", work: "seasonal check"));
        Assert.Equal(["2026-01-10, every 24 months", ""], record.Instruments.Select(i => i.Calibrated));
        Assert.Equal(["G-7", ""], record.Instruments.Select(i => i.Serial));
    }

    // What stands in for unpublished pairs is told by the models themselves (Lemmon and Jacobsen 2004; Kunz and Wagner 2012; Bell and Lemmon 2016).
    [Theory]
    [InlineData("R-438A", "no published parameters for these pairs: the published parameters of the related pairs that are named; the uncertainty is widened")]
    [InlineData("R-409B", "no published parameters for these pairs: Lorentz–Berthelot combination; the uncertainty is widened")]
    [InlineData("R-414A", "no published parameters for these pairs: Lorentz–Berthelot combination and the published parameters of the related pairs that are named; the uncertainty is widened")]
    public void A_source_names_the_rule_that_was_used_for_estimated_pairs(string refrigerant, string source)
    {
        var record = JobLines.Record(ChargeJobs.FenRow.With("refrigerant: R-410A", $"refrigerant: {refrigerant}"));
        Assert.Equal(source, Assert.Single(record.Sources, n => n.Text.StartsWith("estimated pairs", StringComparison.Ordinal)).Citation);
    }

    [Fact]
    public void The_head_says_which_job_it_is()
    {
        var head = TarnLane.Value.Header;
        Assert.Equal(("TL-2026-061", "new installation", "2026-06-18", "Tarn Lane flats, unit 14", "Split, R-454B, 3 ton"), (head.Id, head.Work, head.Date, head.Site, head.System));
        Assert.Equal(["Site", "Circuit", "Nameplate"], head.Groups.Select(g => g.Title));
        Assert.Equal(
            ["Refrigerant: R-454B", "Compressor: fixed", "Metering: TXV", "Capacity: 3 ton", "Lines: liquid 3/8 in × 42 ft, vapor 3/4 in × 42 ft", "Covered by factory charge: 15 ft"],
            head.Groups[1].Rows.Select(r => $"{r.Label}: {r.Value}"));
        Assert.Equal(["Factory charge: 6 lb 8 oz"], head.Groups[2].Rows.Select(r => $"{r.Label}: {r.Value}"));
    }

    [Fact]
    public void The_head_counts_runs_and_names_units_and_people()
    {
        var head = JobLines.Record(JobLines.Of(
            work: "seasonal check",
            system: "multi-split",
            equipment: ", circuit: B, outdoor: {maker: Ostrel, model: O-9, serial: S-1}, indoor: [{id: hall, model: I-2, room: hall}, {id: loft, model: I-3}], metering: {kind: fixed orifice, size: 0.067 in}, "
                + "piping: [{to: hall, liquid: {od: 1/4 in, length: 20 ft}, covered by factory charge: 15 ft}, {to: loft, liquid: {od: 1/4 in, length: 30 ft}, covered by factory charge: 20 ft}]",
            job: ", people: {technician: Mira Solend, owner: P. Okwell}")).Header;
        Assert.Equal("Multi-split, R-410A, circuit B", head.System);
        Assert.Equal(["Site", "People", "Outdoor unit", "Indoor unit hall", "Indoor unit loft", "Circuit"], head.Groups.Select(g => g.Title));
        Assert.Equal(["Technician: Mira Solend", "Owner: P. Okwell"], head.Groups[1].Rows.Select(r => $"{r.Label}: {r.Value}"));
        Assert.Equal(["Refrigerant: R-410A", "Metering: fixed orifice, 0.067 in", "Lines: 2 runs"], head.Groups[5].Rows.Select(r => $"{r.Label}: {r.Value}"));
    }

    [Fact]
    public void A_site_without_a_name_goes_by_its_address() =>
        Assert.Equal("4 Mill Lane", JobLines.Record(JobLines.Of(work: "seasonal check").Replace("name: Tarn Lane", "address: 4 Mill Lane", StringComparison.Ordinal)).Header.Site);

    [Fact]
    public void Each_source_of_a_formula_stands_once_with_its_mark()
    {
        var record = TarnLane.Value;
        var used = record.Findings.SelectMany(f => f.Trace).Select(s => s.Source).Where(s => s.Length > 0).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);
        var told = record.Sources.Where(s => s.Kind == "formula").Select(s => s.Citation).ToList();
        Assert.Equal(used, told);
        Assert.Equal("from memory", Assert.Single(record.Sources, s => s.Citation.StartsWith("US Standard Atmosphere", StringComparison.Ordinal)).Mark);
        Assert.Equal("common practice", Assert.Single(record.Sources, s => s.Citation.StartsWith("mean of the range of f", StringComparison.Ordinal)).Mark);
        Assert.All(record.Sources, s => Assert.NotEqual("", s.Citation));
        Assert.Equal(["uncertainty", "statements of conformity"], record.Sources.Where(s => s.Kind == "standard").Select(s => s.Subject));
        Assert.Contains(record.Sources, s => s.Kind == "equation of state" && s.Subject == "R-454B");
        Assert.Contains(record.Sources, s => s.Kind == "constant" && s.Text.EndsWith("J/(mol·K)", StringComparison.Ordinal));
    }

    private static InstrumentRow Row(string id) => Assert.Single(TarnLane.Value.Instruments, i => i.Id == id);
}
