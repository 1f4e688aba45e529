using Commission.Documents.Pictures;

namespace Commission.Documents.Plots.Sheets;

/// <summary>
/// Leaves out points that no eye could find: a column of one pixel keeps its first, lowest, highest and last point, and a run that is
/// straight to a fraction of a pixel keeps its ends. A spike is never lost, and ten thousand readings cost a few kilobytes.
/// </summary>
internal static class Thinning
{
    private const double Column = 0.5;
    private const double Straight = 0.06;

    /// <summary>Thins a line whose points follow each other from left to right; any other line is only relieved of straight runs.</summary>
    /// <param name="points">The line, pt.</param>
    /// <returns>The points to draw, in order.</returns>
    public static IReadOnlyList<Point> Reduce(IReadOnlyList<Point> points)
    {
        if (points.Count < 3)
            return points;
        return DropStraight(IsRightwards(points) && points.Count > 64 ? ByColumn(points) : points);
    }

    private static bool IsRightwards(IReadOnlyList<Point> points)
    {
        for (var i = 1; i < points.Count; i++)
        {
            if (points[i].X < points[i - 1].X)
                return false;
        }

        return true;
    }

    private static List<Point> ByColumn(IReadOnlyList<Point> points)
    {
        var kept = new List<Point>();
        var start = 0;
        while (start < points.Count)
        {
            var column = Math.Floor(points[start].X / Column);
            int end = start, low = start, high = start;
            while (end + 1 < points.Count && Math.Floor(points[end + 1].X / Column) <= column)
            {
                end++;
                if (points[end].Y < points[low].Y)
                    low = end;
                if (points[end].Y > points[high].Y)
                    high = end;
            }

            ReadOnlySpan<int> order = [start, Math.Min(low, high), Math.Max(low, high), end];
            var last = -1;
            foreach (var index in order)
            {
                if (index > last)
                    kept.Add(points[index]);
                last = Math.Max(last, index);
            }

            start = end + 1;
        }

        return kept;
    }

    // Douglas and Peucker, with an explicit stack: a saw-toothed line must not exhaust the call stack.
    private static List<Point> DropStraight(IReadOnlyList<Point> points)
    {
        var keep = new bool[points.Count];
        keep[0] = keep[^1] = true;
        var spans = new Stack<(int From, int To)>();
        spans.Push((0, points.Count - 1));
        while (spans.Count > 0)
        {
            var (from, to) = spans.Pop();
            var worst = Straight;
            var at = -1;
            for (var i = from + 1; i < to; i++)
            {
                var distance = Distance(points[i], points[from], points[to]);
                if (distance > worst)
                    (worst, at) = (distance, i);
            }

            if (at < 0)
                continue;
            keep[at] = true;
            spans.Push((from, at));
            spans.Push((at, to));
        }

        var kept = new List<Point>();
        for (var i = 0; i < points.Count; i++)
        {
            if (keep[i])
                kept.Add(points[i]);
        }

        return kept;
    }

    private static double Distance(Point p, Point a, Point b)
    {
        double dx = b.X - a.X, dy = b.Y - a.Y;
        var length = dx * dx + dy * dy;
        var along = length == 0 ? 0 : Math.Clamp(((p.X - a.X) * dx + (p.Y - a.Y) * dy) / length, 0, 1);
        return Math.Sqrt(Math.Pow(p.X - a.X - along * dx, 2) + Math.Pow(p.Y - a.Y - along * dy, 2));
    }
}
