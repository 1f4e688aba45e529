using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Refrigerants;

/// <summary>
/// Regulation (EU) 2024/573, articles 8(6), 12(7) and 13(3) to (5) (published). GWP by its annexes: R-404A 3921.6, R-422D 2729, R-410A 2087.5, R-449A 1396,
/// R-454C 145.5, R-134a 1430.
/// </summary>
public sealed class UseCheckTests
{
    private const string Check = "refrigerant.use";

    // Day before and day of each date, the gas on each side of the potential.
    [Theory]
    [InlineData("refrigeration", "R-404A", "virgin", "2024-12-31", Verdict.Pass)]
    [InlineData("refrigeration", "R-404A", "virgin", "2025-01-01", Verdict.Fail)]
    [InlineData("refrigeration", "R-449A", "virgin", "2026-06-18", Verdict.Pass)]
    [InlineData("refrigeration", "R-404A", "reclaimed", "2029-12-31", Verdict.Pass)]
    [InlineData("refrigeration", "R-404A", "reclaimed", "2030-01-01", Verdict.Fail)]
    [InlineData("refrigeration", "R-404A", "recycled", "2026-06-18", Verdict.Pass)]
    [InlineData("refrigeration", "R-404A", "recycled", "2030-01-01", Verdict.Fail)]
    [InlineData("split", "R-422D", "virgin", "2025-12-31", Verdict.Pass)]
    [InlineData("split", "R-422D", "virgin", "2026-01-01", Verdict.Fail)]
    [InlineData("heat pump", "R-422D", "reclaimed", "2031-12-31", Verdict.Pass)]
    [InlineData("heat pump", "R-422D", "reclaimed", "2032-01-01", Verdict.Fail)]
    [InlineData("VRF", "R-410A", "virgin", "2026-06-18", Verdict.Pass)]
    [InlineData("refrigeration", "R-134a", "virgin", "2031-12-31", Verdict.Pass)]
    [InlineData("refrigeration", "R-134a", "virgin", "2032-01-01", Verdict.Fail)]
    [InlineData("refrigeration", "R-134a", "reclaimed", "2040-01-01", Verdict.Pass)]
    [InlineData("refrigeration", "R-454C", "virgin", "2032-01-01", Verdict.Pass)]
    [InlineData("split", "R-410A", "virgin", "2032-01-01", Verdict.Pass)]
    public void Dates_and_potentials(string system, string gas, string contents, string day, Verdict verdict) => Assert.Equal(verdict, JobLines.Finding(Job(system, gas, contents, day), Check).Verdict);

    // 11 kg of R-404A are 43 t, 10 kg 39 t: large refrigeration was under the ban before 2025.
    [Theory]
    [InlineData("11", Verdict.Fail)]
    [InlineData("10", Verdict.Pass)]
    public void Refrigeration_of_forty_tonnes_came_first(string kilograms, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(Job("refrigeration", "R-404A", "virgin", "2024-06-18", kilograms: kilograms), Check).Verdict);

    [Theory]
    [InlineData("refrigeration", "R-404A", "use exemption: military", Verdict.Pass)]
    [InlineData("refrigeration", "R-404A", "use exemption: authorized", Verdict.Pass)]
    [InlineData("refrigeration", "R-404A", "use exemption: nuclear", Verdict.Fail)]
    [InlineData("refrigeration", "R-404A", "use exemption: chiller", Verdict.Fail)]
    [InlineData("refrigeration", "R-404A", "box temperature: -51 °C", Verdict.Pass)]
    [InlineData("refrigeration", "R-404A", "box temperature: -50 °C", Verdict.Fail)]
    [InlineData("split", "R-422D", "use exemption: military", Verdict.Fail)] // 13(4) knows no such exception
    [InlineData("split", "R-422D", "use exemption: authorized", Verdict.Pass)]
    public void Who_is_exempt(string system, string gas, string equipment, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(Job(system, gas, "virgin", "2026-06-18", ", " + equipment), Check).Verdict);

    [Theory]
    [InlineData("chiller", Verdict.Pass)]
    [InlineData("nuclear", Verdict.Pass)]
    [InlineData("military", Verdict.Pass)]
    public void From_2032_chillers_and_nuclear_stations_are_spared(string exemption, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(Job("refrigeration", "R-134a", "virgin", "2032-01-01", $", use exemption: {exemption}"), Check).Verdict);

    [Fact]
    public void Reclaimed_gas_names_its_batch_and_its_facility()
    {
        var job = Job("refrigeration", "R-404A", "reclaimed", "2026-06-18");
        Assert.Equal(Verdict.Conditional, JobLines.Finding(job.Replace(", batch: 26-1", "", StringComparison.Ordinal), Check).Verdict);
        Assert.Equal(Verdict.Conditional, JobLines.Finding(job.Replace(", supplier: Ostby Reclaim", "", StringComparison.Ordinal), Check).Verdict);
    }

    [Fact]
    public void Recycled_gas_that_was_bought_is_doubted() => Assert.Equal(
        Verdict.Conditional, JobLines.Finding(Job("refrigeration", "R-404A", "recycled", "2026-06-18").Replace("contents: recycled", "contents: recycled, supplier: Ostby Reclaim", StringComparison.Ordinal), Check).Verdict);

    [Theory]
    [InlineData("R-410A", Verdict.Conditional)]
    [InlineData("R-290", null)] // no fluorinated gas
    public void Recovered_gas_goes_back_cleaned(string gas, Verdict? verdict) => Assert.Equal(verdict, JobLines.Findings(Job("split", gas, "recovered", "2026-06-18"), Check).SingleOrDefault()?.Verdict);

    [Fact]
    public void What_kind_of_gas_it_was_has_to_be_known_where_a_ban_reaches_it()
    {
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(Job("refrigeration", "R-404A", "virgin", "2026-06-18").Replace(", contents: virgin", "", StringComparison.Ordinal), Check).Verdict);
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(JobLines.Of("limits: {packs: [eu-f-gas]}\ncharging: {unit arrived: charged, added: 1 kg}", "charge adjustment", "refrigeration", "R-404A"), Check).Verdict);
    }

    [Theory]
    [InlineData("new installation", "eu-f-gas")] // article 3 point 18: the first charge is no service
    [InlineData("decommissioning", "eu-f-gas")]
    [InlineData("leak repair", "us-epa-608")]
    public void Elsewhere_it_is_silent(string work, string pack) =>
        Assert.Empty(JobLines.Findings(Job("refrigeration", "R-404A", "virgin", "2026-06-18").Replace("leak repair", work, StringComparison.Ordinal).Replace("eu-f-gas", pack, StringComparison.Ordinal), Check));

    [Fact]
    public void Where_nothing_went_in_it_is_silent() =>
        Assert.Empty(JobLines.Findings(JobLines.Of("limits: {packs: [eu-f-gas]}\ncharging: {unit arrived: charged, removed: 1 kg}", "charge adjustment", "refrigeration", "R-404A"), Check));

    private static string Job(string system, string gas, string contents, string day, string equipment = "", string kilograms = "3") =>
        JobLines.Of(
            $"limits: {{packs: [eu-f-gas]}}\ncylinders: [{{id: C1, refrigerant: {gas}, contents: {contents}{(contents == "reclaimed" ? ", supplier: Ostby Reclaim, batch: 26-1" : "")}, before: 30 kg, after: {30 - double.Parse(kilograms, System.Globalization.CultureInfo.InvariantCulture)} kg}}]\ncharging: {{unit arrived: recovered and evacuated, scale: {{cylinder: C1, before: 30 kg, after: {30 - double.Parse(kilograms, System.Globalization.CultureInfo.InvariantCulture)} kg}}, left in hoses: 0 kg}}",
            "leak repair", system, gas, equipment, units: "si").Replace("2026-06-18", day, StringComparison.Ordinal);
}
