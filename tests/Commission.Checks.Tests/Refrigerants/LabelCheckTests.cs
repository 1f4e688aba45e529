using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Refrigerants;

/// <summary>What is written on the unit against what the scale says.</summary>
public sealed class LabelCheckTests
{
    private const string Check = "refrigerant.label";
    private const string Weighed = "charging: {unit arrived: charged, scale: {before: 24.86 lb, after: 23.84 lb}, left in hoses: 0 oz +/- 0.5}\n";

    [Theory]
    [InlineData("factory: 6 lb 8 oz, added: 1 lb 0.3 oz", Verdict.Pass)] // 24.86 − 23.84 = 1.02 lb = 16.3 oz
    [InlineData("factory: 6 lb 8 oz, added: 1 lb 3 oz", Verdict.Fail)]
    [InlineData("factory: 6 lb 8 oz, added: 1 lb 0.3 oz, total: 7 lb 8.3 oz", Verdict.Pass)]
    [InlineData("total: 7 lb 8.3 oz", Verdict.Pass)]
    [InlineData("total: 6 lb 8 oz", Verdict.Fail)]
    [InlineData("factory: 7 lb 8 oz, added: 1 lb 0.3 oz", Verdict.Fail)]
    [InlineData("refrigerant: R-32, total: 7 lb 8.3 oz", Verdict.Fail)]
    [InlineData("total: 7 lb 8.3 oz, on unit: no", Verdict.Fail)]
    [InlineData("total: 7 lb 8.3 oz, GWP: 2088", Verdict.Pass)]
    [InlineData("total: 7 lb 8.3 oz, GWP: 466", Verdict.Fail)]
    [InlineData("date: 2026-06-18", Verdict.NotEvaluated)]
    public void The_label_fits(string label, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(JobLines.Of($"{Weighed}label: {{{label}}}", equipment: ", nameplate: {factory charge: 6 lb 8 oz}"), Check).Verdict);

    [Theory]
    [InlineData("R-438A", Verdict.Pass)]
    [InlineData("R-22", Verdict.Fail)] // the unit was not labelled anew
    public void After_a_change_the_old_plates_charge_is_nothing_to_compare_with(string labelled, Verdict verdict) => Assert.Equal(verdict, JobLines.Finding(
        JobLines.Of(
            $"refrigerant change: {{from: R-22, to: R-438A}}\ncharging: {{unit arrived: recovered and evacuated, added: 7 lb, left in hoses: 0 oz}}\nlabel: {{refrigerant: {labelled}, factory: 7 lb, total: 7 lb}}",
            "refrigerant change", refrigerant: "R-438A", equipment: ", nameplate: {refrigerant: R-22, factory charge: 7 lb 8 oz}"), Check).Verdict);

    [Theory]
    [InlineData("factory: 6 lb 8 oz, added: 1 lb 0.3 oz, total: 7 lb 8.3 oz", Verdict.Pass)]
    [InlineData("added: 7 lb 8.3 oz, total: 7 lb 8.3 oz", Verdict.Pass)]
    [InlineData("factory: 6 lb 8 oz, added: 7 lb 8.3 oz, total: 7 lb 8.3 oz", Verdict.Fail)]
    public void Where_the_whole_charge_was_weighed_in_added_means_beyond_the_factory_charge_on_the_label(string label, Verdict verdict)
    {
        // 27.04 − 19.52 = 7.52 lb = 7 lb 8.3 oz.
        const string whole = "charging: {unit arrived: recovered and evacuated, scale: {before: 27.04 lb, after: 19.52 lb}, left in hoses: 0 oz +/- 0.5}\n";
        Assert.Equal(verdict, JobLines.Finding(JobLines.Of($"{whole}label: {{{label}}}", work: "leak repair", equipment: ", nameplate: {factory charge: 6 lb 8 oz}"), Check).Verdict);
    }

    [Fact]
    public void Tonnes_follow_from_the_labels_own_numbers()
    {
        // 7 lb 8.3 oz is 3.411 kg; × 2088 / 1000 = 7.12 t.
        string Of(string tonnes) => JobLines.Of($"{Weighed}label: {{total: 7 lb 8.3 oz, GWP: 2088, CO2 equivalent: {tonnes}}}", equipment: ", nameplate: {factory charge: 6 lb 8 oz}");
        Assert.Equal(Verdict.Pass, JobLines.Finding(Of("7120 kg"), Check).Verdict);
        Assert.Equal(Verdict.Fail, JobLines.Finding(Of("6900 kg"), Check).Verdict);
    }

    [Fact]
    public void In_Europe_the_label_holds_five_things()
    {
        string Of(string label) => JobLines.Of($"limits: {{packs: [eu-f-gas]}}\n{Weighed}label: {{{label}}}", equipment: ", nameplate: {factory charge: 6 lb 8 oz}");
        var partly = JobLines.Finding(Of("factory: 6 lb 8 oz, added: 1 lb 0.3 oz, total: 7 lb 8.3 oz"), Check);
        Assert.Equal(Verdict.Conditional, partly.Verdict);
        Assert.Equal("GWP is not on the label; t CO2e is not on the label", partly.Reservation);
        Assert.Equal(Verdict.Pass, JobLines.Finding(Of("factory: 6 lb 8 oz, added: 1 lb 0.3 oz, total: 7 lb 8.3 oz, GWP: 2088, CO2 equivalent: 7120 kg"), Check).Verdict);
    }

    // (EU) 2024/573, article 12(3): quantity, GWP and tonnes; (EU) 2024/2174, article 1(5): factory charge and charge added where gas was added on site [published].
    [Theory]
    [InlineData("charged, added: 0 kg", "total: 3.10 kg", Verdict.Pass)]
    [InlineData("charged", "factory: 3.10 kg", Verdict.Pass)]
    [InlineData("charged, added: 0.40 kg", "total: 3.50 kg", Verdict.Conditional)]
    [InlineData("charged, added: 0.40 kg", "factory: 3.10 kg, added: 0.40 kg, total: 3.50 kg", Verdict.Pass)]
    [InlineData("recovered and evacuated, added: 3.10 kg", "total: 3.10 kg", Verdict.Pass)]
    [InlineData("recovered and evacuated, added: 3.10 kg", "factory: 3.10 kg, total: 3.10 kg", Verdict.Pass)]
    [InlineData("nitrogen holding charge, added: 3.10 kg", "total: 3.10 kg", Verdict.Pass)]
    public void What_was_added_stands_on_the_label_where_something_was(string arrived, string masses, Verdict verdict)
    {
        var total = arrived.Contains("0.40", StringComparison.Ordinal) ? "7.31 t" : "6.47 t"; // 3.50 and 3.10 kg × 2088
        Assert.Equal(verdict, JobLines.Finding(
            JobLines.Of($"limits: {{packs: [eu-f-gas]}}\ncharging: {{unit arrived: {arrived}, left in hoses: 0 kg}}\nlabel: {{{masses}, GWP: 2088, CO2 equivalent: {total}}}", "leak repair", equipment: ", nameplate: {factory charge: 3.10 kg}", units: "si"), Check).Verdict);
    }

    [Fact]
    public void Of_propane_the_law_asks_nothing() => Assert.Equal(Verdict.Pass, JobLines.Finding(
        JobLines.Of("limits: {packs: [eu-f-gas]}\ncharging: {unit arrived: charged, added: 0.1 kg +/- 0.01}\nlabel: {total: 1.10 kg}", "leak repair", refrigerant: "R-290", equipment: ", nameplate: {factory charge: 1.00 kg}", units: "si"), Check).Verdict);

    [Fact]
    public void Added_is_what_lies_beyond_the_factory_charge_when_all_of_it_went_in_anew()
    {
        // 3.24 kg weighed into an empty circuit whose plate says 3.10 kg: 0.14 kg added.
        string Of(string added) => JobLines.Of($"charging: {{unit arrived: recovered and evacuated, added: 3.24 kg +/- 0.01, left in hoses: 0 kg +/- 0.01}}\nlabel: {{factory: 3.10 kg, added: {added}, total: 3.24 kg}}", "leak repair", equipment: ", nameplate: {factory charge: 3.10 kg}", units: "si");
        Assert.Equal(Verdict.Pass, JobLines.Finding(Of("0.14 kg"), Check).Verdict);
        Assert.Equal(Verdict.Fail, JobLines.Finding(Of("3.24 kg"), Check).Verdict);
        Assert.Equal(Verdict.Pass, JobLines.Finding(Of("3.24 kg").Replace("factory: 3.10 kg, ", "", StringComparison.Ordinal), Check).Verdict);
    }

    [Fact]
    public void Nothing_to_compare_with_is_said()
    {
        var finding = JobLines.Finding(JobLines.Of("charging: {unit arrived: unknown}\nlabel: {total: 3 kg}"), Check);
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Empty(JobLines.Findings(JobLines.Of(Weighed), Check));
        Assert.Contains(JobLines.Record(JobLines.Of(Weighed)).Missing, m => m.Checks.Contains("refrigerant.label"));
    }
}
