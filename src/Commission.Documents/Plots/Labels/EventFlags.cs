using Commission.Documents.Pictures;

namespace Commission.Documents.Plots.Labels;

/// <summary>
/// Stacks the labels of events above a panel like flags: each hangs on its own vertical line and no line cuts a flag. A flag flies to the
/// right; near the right edge, or facing one that had to turn, it flies to the left.
/// </summary>
internal static class EventFlags
{
    private const double Gap = 2.5;
    private static readonly double[] WidestFlag = [400, 130, 90, 60];

    /// <summary>Arranges flags.</summary>
    /// <param name="events">Position of each line, pt, and its label; any order.</param>
    /// <param name="style">How labels are set.</param>
    /// <param name="left">Leftmost position a flag may reach.</param>
    /// <param name="right">Rightmost position.</param>
    /// <param name="tiersWanted">Most tiers before labels are shortened.</param>
    /// <returns>The flags from left to right.</returns>
    public static IReadOnlyList<Flag> Arrange(IReadOnlyList<(double X, string Label)> events, TextStyle style, double left, double right, int tiersWanted)
    {
        Flag[] flags = [];
        foreach (var widest in WidestFlag)
        {
            flags = Stack(events, style, left, right, Math.Min(widest, right - left));
            if (flags.Length == 0 || flags.Max(flag => flag.Tier) < tiersWanted)
                break;
        }

        return flags;
    }

    private static Flag[] Stack(IReadOnlyList<(double X, string Label)> events, TextStyle style, double left, double right, double widest)
    {
        var flags = events.OrderBy(e => e.X).Select(e =>
        {
            var text = style.Fit(e.Label, Math.Min(widest, Math.Max(e.X - left, right - e.X) - Gap));
            return new Flag(e.X, text, style.Width(text) + Gap, TurnsLeft: false, Tier: 0);
        }).ToArray();

        for (var i = flags.Length - 1; i >= 0; i--)
        {
            var flag = flags[i];
            var turns = flag.X + flag.Width > right;
            for (var j = i + 1; j < flags.Length && !turns; j++)
                turns = flags[j].TurnsLeft && flags[j].Left < flag.X + Gap && flag.X + flag.Width + Gap > flags[j].X;
            if (turns && flag.X - flag.Width < left)
            {
                var text = style.Fit(flag.Text, flag.X - left - Gap);
                flag = flag with { Text = text, Width = style.Width(text) + Gap };
            }

            flags[i] = flag with { TurnsLeft = turns };
        }

        // A flag flies above every line it covers; those lines end below it.
        var settled = new bool[flags.Length];
        for (var done = 0; done < flags.Length; done++)
        {
            var next = Enumerable.Range(0, flags.Length).Reverse().Where(i => !settled[i]).OrderByDescending(i => Below(i).All(j => settled[j])).First();
            var tier = Below(next).Where(j => settled[j]).Select(j => flags[j].Tier + 1).DefaultIfEmpty(0).Max();
            while (Enumerable.Range(0, flags.Length).Any(j => settled[j] && flags[j].Tier == tier && flags[j].Left < flags[next].Right + Gap && flags[next].Left < flags[j].Right + Gap))
                tier++;
            flags[next] = flags[next] with { Tier = tier };
            settled[next] = true;
        }

        return flags;

        IEnumerable<int> Below(int i) => Enumerable.Range(0, flags.Length)
            .Where(j => j != i && flags[j].X > flags[i].Left - Gap && flags[j].X < flags[i].Right + Gap && (flags[i].TurnsLeft ? j < i : j > i));
    }
}

/// <summary>The label of one event, hanging on a vertical line.</summary>
/// <param name="X">Position of the line, pt.</param>
/// <param name="Text">The label.</param>
/// <param name="Width">Width of the label and its gap to the line, pt.</param>
/// <param name="TurnsLeft">True when the label stands to the left of the line.</param>
/// <param name="Tier">Row counted upwards from the panel, from 0.</param>
internal readonly record struct Flag(double X, string Text, double Width, bool TurnsLeft, int Tier)
{
    /// <summary>Left end, pt.</summary>
    public double Left => TurnsLeft ? X - Width : X;

    /// <summary>Right end, pt.</summary>
    public double Right => TurnsLeft ? X : X + Width;
}
