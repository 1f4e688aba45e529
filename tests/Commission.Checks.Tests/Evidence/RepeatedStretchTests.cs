using Commission.Checks.Evidence;
using Commission.Checks.Tests.Coverage;
using Xunit;

namespace Commission.Checks.Tests.Evidence;

/// <summary>Copied stretches that are short or of few values: only what chance does not do is told. Drawn readings, fixed seeds.</summary>
public sealed class RepeatedStretchTests
{
    [Theory]
    [InlineData(40, true)]
    [InlineData(8, false)]
    public void A_stretch_of_a_flickering_gauge_copied_on(int length, bool found)
    {
        var values = Flicker(1, 300);
        List<double> copied = [.. values, .. values.GetRange(250, length), .. Flicker(2, 50)];
        // A row before the copy may be alike by chance.
        var stretch = RepeatedStretch.Find(copied);
        Assert.Equal(found, stretch is { First: 249 or 250, Second: 299 or 300 } && stretch.Value.Length - length is 0 or 1);
        Assert.Equal(found, stretch is not null);
    }

    [Fact]
    public void A_flickering_gauge_repeats_nothing_by_itself()
    {
        for (var seed = 0; seed < 20; seed++)
            Assert.Null(RepeatedStretch.Find(Flicker(seed, 2000)));
    }

    [Fact]
    public void Another_pace_is_no_copy()
    {
        var values = Enumerable.Range(0, 40).Select(i => 1000.0 - (7 * i)).ToList();
        List<double> twice = [.. values, .. values];
        Assert.NotNull(RepeatedStretch.Find(twice, [.. Enumerable.Range(0, 80).Select(i => 10.0 * i)]));
        Assert.Null(RepeatedStretch.Find(twice, [.. Enumerable.Range(0, 80).Select(i => i < 40 ? 10.0 * i : 400 + (7.0 * i))]));
    }

    // Eight rows pasted again and again, of five and more different values; two that take turns are a display between two digits.
    [Theory]
    [InlineData(new double[] { 551, 549, 552, 550, 547, 551, 549, 548 }, 3, true)]
    [InlineData(new double[] { 551, 549, 552, 550, 547, 551, 549, 548 }, 2, false)]
    [InlineData(new double[] { 551, 550, 551, 550, 551, 550, 549, 550 }, 6, false)]
    public void A_few_rows_round_and_round(double[] round, int times, bool found)
    {
        List<double> values = [.. Flicker(3, 60).Select(v => v - 100), .. Enumerable.Repeat(round, times).SelectMany(r => r), .. Flicker(4, 60).Select(v => v + 400)];
        Assert.Equal(found ? (60, 68, 8) : null, RepeatedStretch.Find(values));
    }

    // A level with noise of 1.5 of its steps.
    private static List<double> Flicker(int seed, int count)
    {
        var draws = new Draws(seed, ErrorModel.Offset, 0);
        return [.. Enumerable.Range(0, count).Select(_ => Math.Round(480 + (1.5 * draws.Normal())))];
    }
}
