using Commission.Checks.Formulas;
using Commission.Messages;
using Commission.Records;
using Xunit;

namespace Commission.Checks.Tests.Formulas;

public sealed class LeakRuleTests
{
    // Regulation (EU) 2024/573, articles 5(1) and 5(6) [published].
    [Theory]
    [InlineData(4.99, 0, false, false, null)]
    [InlineData(5, 0, false, false, 12)]
    [InlineData(9.99, 0, true, false, null)]
    [InlineData(10, 0, true, false, 12)]
    [InlineData(49.9, 0, false, false, 12)]
    [InlineData(50, 0, false, false, 6)]
    [InlineData(50, 0, false, true, 12)]
    [InlineData(500, 0, false, false, 3)]
    [InlineData(500, 0, false, true, 6)]
    [InlineData(5, 0, false, true, 24)]
    [InlineData(0, 0.99, false, false, null)]
    [InlineData(0, 1, false, false, 12)]
    [InlineData(0, 1.5, true, false, null)]
    [InlineData(0, 2, true, false, 12)]
    [InlineData(0, 10, false, false, 6)]
    [InlineData(0, 100, false, false, 3)]
    [InlineData(6, 12, false, false, 6)]
    [InlineData(60, 2, false, false, 6)]
    public void Intervals_of_2024_573(double tonnes, double kilograms, bool hermetic, bool detection, int? months) =>
        Assert.Equal(months, Plan(tonnes, kilograms, hermetic, detection, FluorinatedGasEdition.Regulation573Of2024).Months);

    // Article 5(1), third subparagraph [published]: less than 3 kg, sealed and labelled, in a residential building.
    [Theory]
    [InlineData(2.99, true, true, FluorinatedGasEdition.Regulation573Of2024, true)]
    [InlineData(3, true, true, FluorinatedGasEdition.Regulation573Of2024, false)]
    [InlineData(2.99, false, true, FluorinatedGasEdition.Regulation573Of2024, false)]
    [InlineData(2.99, true, false, FluorinatedGasEdition.Regulation573Of2024, false)]
    [InlineData(2.99, true, true, FluorinatedGasEdition.Regulation517Of2014, false)]
    internal void A_small_sealed_unit_in_a_residence_is_free(double kilograms, bool hermetic, bool residential, FluorinatedGasEdition edition, bool free) =>
        Assert.Equal(free, FluorinatedGasLeakChecks.IsFreeInResidence(kilograms, hermetic, residential, edition));

    [Fact]
    public void The_older_regulation_knows_tonnes_only()
    {
        Assert.Null(Plan(4, 50, false, false, FluorinatedGasEdition.Regulation517Of2014).Months);
        Assert.Equal(12, Plan(5, 0, false, false, FluorinatedGasEdition.Regulation517Of2014).Months);
        Assert.Equal("4.00 t CO2e is below 5 t", Because(Plan(4, 50, false, false, FluorinatedGasEdition.Regulation517Of2014)));
    }

    [Fact]
    public void The_trigger_that_governs_is_named()
    {
        Assert.Equal("6.00 t CO2e reaches 5 t", Because(Plan(6, 0.5, false, false, FluorinatedGasEdition.Regulation573Of2024)));
        Assert.Equal("12.00 kg of Annex II gas reaches 10 kg", Because(Plan(6, 12, false, false, FluorinatedGasEdition.Regulation573Of2024)));
        Assert.Equal("4.00 t CO2e is below 10 t, and 1.50 kg of Annex II gas is below 2 kg", Because(Plan(4, 1.5, true, false, FluorinatedGasEdition.Regulation573Of2024)));
    }

    [Fact]
    public void Detection_is_obligatory_from_500_tonnes_or_100_kilograms()
    {
        Assert.False(Plan(499, 0, false, false, FluorinatedGasEdition.Regulation573Of2024).DetectionObligatory);
        Assert.True(Plan(500, 0, false, false, FluorinatedGasEdition.Regulation573Of2024).DetectionObligatory);
        Assert.True(Plan(0, 100, false, false, FluorinatedGasEdition.Regulation573Of2024).DetectionObligatory);
    }

    [Theory]
    [InlineData(2087.5, 2.395)]
    [InlineData(675, 7.407)]
    [InlineData(1430, 3.497)]
    [InlineData(3921.6, 1.275)]
    [InlineData(466.3, 10.72)]
    [InlineData(1810, 2.762)]
    public void Charge_of_five_tonnes(double warmingPotential, double kilograms)
    {
        // Worked with the AR4 values; a manual prints 2.39 kg for R-410A [published].
        Assert.Equal(5, CarbonDioxideEquivalent.Tonnes(kilograms, warmingPotential), 0.003);
    }

    [Fact]
    public void Four_pounds_in_150_days_into_60_pounds_is_a_leak_of_16_percent_a_year() =>
        Assert.Equal(0.162, LeakRepair.AnnualisedRate(4, 60, 150), 0.0005);

    [Fact]
    public void A_span_longer_than_a_year_counts_as_one() =>
        Assert.Equal(0.1, LeakRepair.AnnualisedRate(5, 50, 800), 12);

    [Theory]
    [InlineData(22.7, true, 1810, "2026-06-18", true, LeakRepairRule.Section82157)]
    [InlineData(22.6, true, 1810, "2026-06-18", false, LeakRepairRule.None)]
    [InlineData(6.9, false, 1430, "2026-01-01", false, LeakRepairRule.Section84106)]
    [InlineData(6.9, false, 1430, "2025-12-31", false, LeakRepairRule.None)]
    [InlineData(6.7, false, 1430, "2026-06-18", false, LeakRepairRule.None)]
    [InlineData(6.9, false, 53, "2026-06-18", false, LeakRepairRule.None)]
    [InlineData(6.9, false, 1430, "2026-06-18", true, LeakRepairRule.None)]
    internal void Which_United_States_rule_applies(double kilograms, bool ozoneDepleting, double warmingPotential, string date, bool residential, LeakRepairRule rule)
    {
        // 50 lb is 22.68 kg, 15 lb is 6.804 kg.
        Assert.Equal(rule, LeakRepair.RuleFor(kilograms, ozoneDepleting, warmingPotential, DateOnly.Parse(date, System.Globalization.CultureInfo.InvariantCulture), residential));
    }

    private static string Because(LeakCheckPlan plan) => RecordWords.Text(plan.Because, Language.English);

    private static LeakCheckPlan Plan(double tonnes, double kilograms, bool hermetic, bool detection, FluorinatedGasEdition edition) =>
        FluorinatedGasLeakChecks.For(tonnes, kilograms, hermetic, detection, edition);
}
