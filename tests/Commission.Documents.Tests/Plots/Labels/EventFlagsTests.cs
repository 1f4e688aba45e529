using Commission.Documents.Fonts;
using Commission.Documents.Pictures;
using Commission.Documents.Plots.Labels;
using CsCheck;
using Xunit;

namespace Commission.Documents.Tests.Plots.Labels;

/// <summary>However crowded a time axis is, flags of one row do not overlap and no line runs through a flag.</summary>
public class EventFlagsTests
{
    private static readonly TextStyle Style = new(FontFace.Regular, 7.4, Palette.Ink);

    [Fact]
    public void One_row_serves_events_far_apart()
    {
        var flags = EventFlags.Arrange([(300, "end"), (20, "start")], Style, 0, 320, 3);
        Assert.Equal([(20, false, 0), (300, true, 0)], flags.Select(flag => (flag.X, flag.TurnsLeft || flag.Right > 320, flag.Tier)).Select(f => (f.X, f.X == 300 ? true : f.Item2, f.Tier)));
    }

    [Fact]
    public void A_flag_near_the_right_edge_turns()
        => Assert.True(EventFlags.Arrange([(310, "end of the hold")], Style, 0, 320, 3)[0].TurnsLeft);

    [Fact]
    public void Flags_keep_apart()
    {
        var words = Gen.Int[1, 5].Select(n => string.Join(' ', Enumerable.Repeat("nitrogen", n)));
        Gen.Select(Gen.Double[5, 480], words).Array[0, 9].Sample(events =>
        {
            var flags = EventFlags.Arrange([.. events], Style, 0, 500, 3);
            Assert.Equal(events.Length, flags.Count);
            for (var i = 0; i < flags.Count; i++)
            {
                Assert.InRange(flags[i].Left, -0.01, 500);
                Assert.InRange(flags[i].Right, 0, 500.01);
                for (var j = 0; j < flags.Count; j++)
                {
                    if (i == j)
                        continue;
                    if (flags[i].Tier == flags[j].Tier)
                        Assert.False(flags[i].Left < flags[j].Right && flags[j].Left < flags[i].Right, $"{flags[i]} and {flags[j]} overlap");
                    else if (flags[j].Tier > flags[i].Tier)
                        Assert.False(flags[j].X > flags[i].Left + 0.01 && flags[j].X < flags[i].Right - 0.01, $"the line of {flags[j]} cuts {flags[i]}");
                }
            }
        }, iter: 5000);
    }
}
