using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Refrigerants;
using Commission.Fluids;
using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Refrigerants;

/// <summary>
/// GWP AR4 by mass shares (40 CFR 98 table A-1, published): R-410A 2087.5, R-454B 466.3. Regulation (EU) 2024/573, annexes I, II and VI (published):
/// R-454B 0.689 · 675 + 0.311 · 0.501 = 465.2, R-454C 145.5; checks from 5 t CO2e (10 t hermetic) or 1 kg of Annex II gas.
/// </summary>
public sealed class CarbonDioxideCheckTests
{
    private const string Check = "refrigerant.co2e";

    [Theory]
    [InlineData("R-410A", "2.395 kg", "5.00 t CO2e")]
    [InlineData("R-454B", "3.33 kg", "1.55 t CO2e")] // 3.33 × 466.3 = 1552.8 kg
    [InlineData("R-404A", "1.275 kg", "5.00 t CO2e")]
    [InlineData("R-290", "0.338 kg", "1 kg CO2e")]
    public void Tonnes_of_a_charge(string refrigerant, string charge, string printed)
    {
        var finding = JobLines.Finding(Job(refrigerant, charge), Check);
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.StartsWith($"{charge.Replace(" kg", "", StringComparison.Ordinal)}", finding.Statement, StringComparison.Ordinal);
        Assert.Contains($"equal {printed}", finding.Statement, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("R-454B", 465.2)]
    [InlineData("R-454C", 145.5)]
    [InlineData("R-410A", 2087.5)]
    [InlineData("R-508B", 13504)] // 0.46 × 14800 + 0.54 × 12400: perfluorocarbons by AR6
    [InlineData("R-413A", 2094.5)] // 0.09 × 9290 + 0.88 × 1430 + 0.03 × 0: isobutane by annex VI
    [InlineData("R-290", 0.02)]
    [InlineData("R-744", 1)]
    public void The_European_Union_counts_unsaturated_gases_by_AR6(string refrigerant, double printed) =>
        Assert.Equal(printed, EuropeanWarming.Of(RefrigerantCatalogue.Find(refrigerant)!)!.Potential, 0.05);

    [Theory]
    [InlineData("R-410A", "2.39 kg", "No regular leak check")]
    [InlineData("R-410A", "2.40 kg", "every 12 months")]
    [InlineData("R-410A", "24 kg", "every 6 months")] // 50.1 t
    [InlineData("R-410A", "240 kg", "every 3 months")] // 501 t
    [InlineData("R-454B", "3.2 kg", "No regular leak check")] // 1.49 t; 0.311 · 3.2 = 0.995 kg of R-1234yf
    [InlineData("R-454B", "3.3 kg", "every 12 months")] // 1.026 kg of R-1234yf
    [InlineData("R-1234yf", "10 kg", "every 6 months")]
    [InlineData("R-290", "5 kg", "No regular leak check")]
    public void Both_triggers_are_looked_at(string refrigerant, string charge, string said)
    {
        var finding = JobLines.Finding(Job(refrigerant, charge, "limits: {packs: [eu-f-gas]}\n"), Check, "leak checks");
        Assert.Contains(said, finding.Statement, StringComparison.Ordinal);
        Assert.Contains(finding.Trace, s => s.Symbol == "t_I");
        Assert.Contains(finding.Trace, s => s.Symbol == "m_II");
    }

    [Fact]
    public void Sealed_units_and_detection_change_the_interval()
    {
        Assert.StartsWith("No regular", JobLines.Finding(Job("R-410A", "4 kg", "limits: {packs: [eu-f-gas]}\n", ", hermetically sealed: yes"), Check, "leak checks").Statement, StringComparison.Ordinal);
        Assert.Contains("every 24 months, with leakage detection", JobLines.Finding(Job("R-410A", "4 kg", "limits: {packs: [eu-f-gas]}\n", ", leak detection system: yes"), Check, "leak checks").Statement, StringComparison.Ordinal);
        Assert.Contains("prescribed", JobLines.Finding(Job("R-410A", "240 kg", "limits: {packs: [eu-f-gas]}\n"), Check, "leak checks").Statement, StringComparison.Ordinal);
    }

    // 2.9 kg of R-404A are 11.4 t: sealed, and in a residence below 3 kg.
    [Fact]
    public void A_sealed_unit_in_a_residence_is_not_checked_below_three_kilograms()
    {
        string Of(string equipment) => Job("R-404A", "2.9 kg", "limits: {packs: [eu-f-gas]}\n", equipment);
        Assert.Contains("every 12 months", JobLines.Finding(Of(", hermetically sealed: yes"), Check, "leak checks").Statement, StringComparison.Ordinal);
        Assert.StartsWith("No regular", JobLines.Finding(Of(", hermetically sealed: yes, residential building: yes"), Check, "leak checks").Statement, StringComparison.Ordinal);
    }

    // The annexes name neither trifluoroethene nor 3,3,3-trifluoropropene [published].
    [Theory]
    [InlineData("R-1123", false)]
    [InlineData("R-1243zf", false)]
    [InlineData("R-1234yf", true)]
    [InlineData("R-218", true)]
    [InlineData("R-22", false)]
    public void Which_gases_the_annexes_name(string gas, bool named) => Assert.Equal(named, GasFamilies.IsFluorinated(RefrigerantCatalogue.Find(gas)!));

    [Fact]
    public void Without_a_charge_or_a_potential_nothing_is_evaluated()
    {
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(JobLines.Of("charging: {unit arrived: unknown}"), Check).Verdict);
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(Job("R-1224yd(Z)", "1 kg"), Check).Verdict);
        Assert.Empty(JobLines.Findings(JobLines.Of(), Check));
    }

    private static string Job(string refrigerant, string charge, string before = "", string equipment = "") =>
        JobLines.Of($"{before}charging: {{unit arrived: recovered and evacuated, added: {charge} +/- 0.0001, left in hoses: 0 kg +/- 0.0001}}", refrigerant: refrigerant, equipment: equipment, units: "si");
}
