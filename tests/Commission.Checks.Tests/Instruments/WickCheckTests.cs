using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Instruments;

/// <summary>A wick needs water, cleanliness and at least 700 ft/min of air (common practice).</summary>
public sealed class WickCheckTests
{
    [Theory]
    [InlineData("clean: yes, wetted: yes, air speed: 800 fpm", Verdict.Pass)]
    [InlineData("clean: yes, wetted: yes", Verdict.Conditional)]
    [InlineData("air speed: 800 fpm", Verdict.Conditional)]
    [InlineData("clean: yes, wetted: yes, air speed: 300 fpm", Verdict.Fail)]
    [InlineData("clean: no, wetted: yes, air speed: 800 fpm", Verdict.Fail)]
    [InlineData("clean: yes, wetted: no", Verdict.Fail)]
    public void Wick(string wick, Verdict verdict)
    {
        var f = InstrumentJob.One("instrument.wick", $"{{id: air probe, kind: psychrometer, checks: {{wick: {{{wick}}}}}}}");
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal(verdict == Verdict.Pass, f.NextStep is null);
    }

    [Fact]
    public void An_empty_wick_is_not_evaluated() =>
        Assert.Equal(Verdict.NotEvaluated, InstrumentJob.One("instrument.wick", "{id: air probe, kind: psychrometer, checks: {wick: {}}}").Verdict);
}
