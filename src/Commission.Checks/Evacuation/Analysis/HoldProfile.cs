namespace Commission.Checks.EvacuationAnalysis;

/// <summary>
/// Profile intervals: every τ at which the residual sum of squares stays within t²·s² of the least is possible, and at each of
/// them a linear parameter may move as far as that budget allows. No linearisation in τ.
/// </summary>
internal static class HoldProfile
{
    private const int Points = 25;

    /// <summary>Range of τ within a budget, from a scan; ends are 0 or +∞ where the scan's end is still possible.</summary>
    internal static Interval Tau(HoldFit fit, HoldFit.AtTau[] scan, Func<HoldFit.AtTau, HoldFit.Fit> choose, HoldFit.Fit best, double budget)
    {
        var limit = best.Rss + budget;
        var low = 0.0;
        var high = double.PositiveInfinity;
        for (var i = scan.Length - 1; i >= 0; i--)
        {
            if (scan[i].Tau < best.Tau && choose(scan[i]).Rss > limit)
            {
                low = Cross(fit, choose, scan[i].Tau, i + 1 < scan.Length ? Math.Min(scan[i + 1].Tau, best.Tau) : best.Tau, limit);
                break;
            }
        }

        for (var i = 0; i < scan.Length; i++)
        {
            if (scan[i].Tau > best.Tau && choose(scan[i]).Rss > limit)
            {
                high = Cross(fit, choose, scan[i].Tau, i > 0 ? Math.Max(scan[i - 1].Tau, best.Tau) : best.Tau, limit);
                break;
            }
        }

        return new Interval(best.Tau, low, high);
    }

    /// <summary>Range of a linear parameter within a budget, over all τ of the scan that are possible.</summary>
    internal static Interval Parameter(
        HoldFit fit,
        HoldFit.AtTau[] scan,
        Func<HoldFit.AtTau, HoldFit.Fit> choose,
        HoldFit.Fit best,
        double budget,
        Func<HoldFit.Fit, (double Value, double Variance)> parameter)
    {
        var tau = Tau(fit, scan, choose, best, budget);
        var from = Math.Max(tau.Low, scan[0].Tau);
        var to = Math.Min(tau.High, scan[^1].Tau);
        var value = parameter(best).Value;
        double low = value;
        double high = value;
        for (var i = 0; i <= Points; i++)
        {
            var f = i == Points ? best : choose(fit.Solve(from * Math.Pow(to / from, (double)i / (Points - 1))));
            var room = best.Rss + budget - f.Rss;
            if (room < 0)
                continue;
            var (v, variance) = parameter(f);
            var reach = Math.Sqrt(room * variance);
            low = Math.Min(low, v - reach);
            high = Math.Max(high, v + reach);
        }

        return new Interval(value, low, high);
    }

    private static double Cross(HoldFit fit, Func<HoldFit.AtTau, HoldFit.Fit> choose, double outside, double inside, double limit)
    {
        for (var i = 0; i < 30 && Math.Abs(outside / inside - 1) > 1e-5; i++)
        {
            var middle = Math.Sqrt(outside * inside);
            if (choose(fit.Solve(middle)).Rss > limit)
                outside = middle;
            else
                inside = middle;
        }

        return inside;
    }
}
