using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Measurement.Quantities;
using Xunit;

namespace Commission.Checks.Tests.Limits;

/// <summary>
/// A limit is looser than another when it lets something pass that the other would not. Which is so follows from the figures alone; where they
/// cannot be compared nothing is said. The figures are invented.
/// </summary>
public sealed class LimitComparisonTests
{
    [Theory]
    [InlineData("evacuation.level", "at most: 501 micron", "at most: 500 micron", true)]
    [InlineData("evacuation.level", "at most: 500 micron", "at most: 500 micron", false)]
    [InlineData("evacuation.level", "at most: 499 micron", "at most: 500 micron", false)]
    // 1 mmHg is 1000 micron; in Pa to nine digits and a half it is the same, to seven it is more.
    [InlineData("evacuation.level", "at most: 133.3223684 Pa", "at most: 1000 micron", false)]
    [InlineData("evacuation.level", "at most: 133.32240 Pa", "at most: 1000 micron", true)]
    [InlineData("charge.superheat-floor", "at least: 3.9 °F", "at least: 4 °F", true)]
    [InlineData("charge.superheat-floor", "at least: 4 °F", "at least: 4 °F", false)]
    [InlineData("charge.superheat-floor", "at least: 4.1 °F", "at least: 4 °F", false)]
    [InlineData("charge.superheat-floor", "at least: -1 °F", "at least: 0 °F", true)]
    [InlineData("charge.superheat-floor", "at least: 0 °F", "at least: -1 °F", false)]
    [InlineData("charge.metering-superheat.range", "within: 4 to 26 °F", "within: 4 to 25 °F", true)]
    [InlineData("charge.metering-superheat.range", "within: 3 to 25 °F", "within: 4 to 25 °F", true)]
    [InlineData("charge.metering-superheat.range", "within: 5 to 20 °F", "within: 4 to 25 °F", false)]
    [InlineData("charge.metering-superheat.range", "within: 5 to 30 °F", "within: 4 to 25 °F", true)]
    [InlineData("charge.subcooling.tolerance", "tolerance: 4 °F", "tolerance: 3 °F", true)]
    [InlineData("charge.subcooling.tolerance", "tolerance: 2 °F", "tolerance: 3 °F", false)]
    [InlineData("evacuation.decay", "{at most: 1000 micron, with: {after: 9 min}", "{at most: 1000 micron, with: {after: 10 min}", true)]
    [InlineData("evacuation.decay", "{at most: 1000 micron, with: {after: 10 min}", "{at most: 1000 micron, with: {after: 10 min}", false)]
    [InlineData("evacuation.decay", "{at most: 1000 micron, with: {after: 11 min}", "{at most: 1000 micron, with: {after: 10 min}", false)]
    // Of a thermometer's accuracy the share of the reading makes it looser, too; here less is stricter.
    [InlineData("instruments.thermometer.accuracy", "{at most: 1 °F, with: {of reading: 1 %}", "{at most: 1 °F, with: {of reading: 0.5 %}", true)]
    [InlineData("instruments.thermometer.accuracy", "{at most: 1 °F, with: {of reading: 0.5 %}", "{at most: 1 °F, with: {of reading: 0.5 %}", false)]
    [InlineData("instruments.thermometer.accuracy", "{at most: 1 °F, with: {of reading: 0.4 %}", "{at most: 1 °F, with: {of reading: 0.5 %}", false)]
    [InlineData("pressure-test.gas", "statement: Anything", "statement: Dry nitrogen", false)]
    // A gauge reading and an absolute one differ by an atmosphere that a limit does not know.
    [InlineData("pressure-test.level", "within: 1 to 900 psia", "within: 400 to 450 psig", false)]
    [InlineData("pressure-test.level", "within: 390 to 450 psig", "within: 400 to 450 psig", true)]
    [InlineData("pressure-test.level", "within: 400 to 460 psig", "within: 400 to 450 psig", true)]
    public void A_limit_is_looser_when_it_lets_more_pass(string id, string limit, string other, bool looser) =>
        Assert.Equal(looser, LimitComparison.IsLooser(Limit(id, limit), Limit(id, other)));

    [Fact]
    public void An_open_side_is_looser_and_a_bound_where_the_other_has_none_is_not()
    {
        var range = Limit("charge.metering-superheat.range", "within: 4 to 25 °F");
        Assert.True(LimitComparison.IsLooser(range with { Lower = null }, range));
        Assert.True(LimitComparison.IsLooser(range with { Upper = null }, range));
        Assert.False(LimitComparison.IsLooser(range, range with { Lower = null }));
        Assert.False(LimitComparison.IsLooser(range, range with { Upper = null }));
        Assert.False(LimitComparison.IsLooser(range, range with { Lower = null, Upper = null }));
        var gauge = Limit("pressure-test.level", "within: 400 to 450 psig");
        Assert.True(LimitComparison.IsLooser(gauge with { Lower = null }, gauge));
        Assert.True(LimitComparison.IsLooser(gauge with { Upper = null }, gauge));
        Assert.False(LimitComparison.IsLooser(gauge, gauge with { Lower = null, Upper = null }));
    }

    [Fact]
    public void Pressures_of_another_reference_are_not_compared_on_either_side()
    {
        var gauge = Limit("pressure-test.level", "within: 400 to 450 psig");
        var absolute = Limit("pressure-test.level", "within: 390 to 460 psia");
        Assert.False(LimitComparison.IsLooser(gauge with { Lower = absolute.Lower, Upper = null }, gauge with { Upper = null }));
        Assert.False(LimitComparison.IsLooser(gauge with { Upper = absolute.Upper, Lower = null }, gauge with { Lower = null }));
        Assert.False(LimitComparison.IsLooser(gauge with { Lower = absolute.Lower }, gauge));
        Assert.False(LimitComparison.IsLooser(gauge with { Upper = absolute.Upper }, gauge));
    }

    [Fact]
    public void A_statement_is_not_compared_with_a_figure()
    {
        var figure = Limit("evacuation.level", "at most: 500 micron");
        var words = figure with { Shape = LimitShape.Statement, Upper = null };
        Assert.False(LimitComparison.IsLooser(words, figure));
        Assert.False(LimitComparison.IsLooser(figure with { Upper = null }, words with { Upper = figure.Upper }));
    }

    [Fact]
    public void A_figure_without_its_time_is_compared_by_its_level_alone()
    {
        var timed = Limit("evacuation.decay", "{at most: 1000 micron, with: {after: 10 min}");
        var bare = timed with { With = ImmutableSortedDictionary<string, LimitFigure>.Empty };
        Assert.False(LimitComparison.IsLooser(bare, timed));
        Assert.False(LimitComparison.IsLooser(timed, bare));
        Assert.Null(bare.Companion("after"));
        Assert.Equal(600, timed.Companion("after"));
    }

    [Fact]
    public void A_bound_that_a_form_does_not_have_is_a_fault_where_it_is_asked_for()
    {
        var most = Limit("evacuation.level", "at most: 500 micron");
        Assert.Equal("500 micron", most.Most.Text);
        Assert.Throws<InvalidOperationException>(() => most.Least);
        var least = Limit("charge.superheat-floor", "at least: 4 °F");
        Assert.Equal("4 °F", least.Least.Text);
        Assert.Throws<InvalidOperationException>(() => least.Most);
    }

    // A gauge pressure is counted from the atmosphere, an absolute one is not: 1 psi is 6894.757293168 Pa (NIST SP 811, B.8).
    [Fact]
    public void A_tolerance_is_open_where_there_is_no_bound()
    {
        var atmosphere = Pressure.FromPascals(100_000);
        var gauge = Limit("pressure-test.level", "within: 400 to 450 psig");
        Assert.Equal(100_000 + (400 * 6894.757293168), gauge.ToTolerance(atmosphere).Lower!.Value, 1e-3);
        Assert.Equal((null, null), ((gauge with { Lower = null }).ToTolerance(atmosphere).Lower, (gauge with { Upper = null }).ToTolerance(atmosphere).Upper));
        var range = Limit("charge.metering-superheat.range", "within: 4 to 25 °F");
        Assert.Equal(4 / 1.8, range.ToTolerance().Lower!.Value, 1e-9);
        Assert.Equal(25 / 1.8, range.ToTolerance().Upper!.Value, 1e-9);
        Assert.Equal((null, null), ((range with { Lower = null }).ToTolerance().Lower, (range with { Upper = null }).ToTolerance().Upper));
    }

    private static Limit Limit(string id, string text)
    {
        var inner = text.TrimStart('{');
        var entry = PackText.Read($"pack: a\ntitle: A\npublished by: B\nedition: 1\ndefaults: {{basis: maker, mark: published}}\nlimits:\n  {id}: {{{inner}, source: p. 1}}\n").Limits[id][0];
        return new Limit
        {
            Definition = LimitDefinitions.Get(id),
            Shape = entry.Shape,
            Tier = LimitTier.Pack,
            Pack = "a",
            Basis = entry.Basis,
            Source = entry.SourceText(LimitWords.In),
            Mark = entry.Mark,
            Rule = entry.Rule,
            At = entry.At,
            Lower = entry.Lower,
            Upper = entry.Upper,
            Statement = entry.Statement,
            With = entry.With,
        };
    }
}
