namespace Commission.Checks.Tests.Coverage;

/// <summary>All outcomes of drawn jobs under one error model.</summary>
internal sealed class CoverageStudy
{
    /// <summary>Two cores are enough for a test, and leave the others to whoever works beside it.</summary>
    private const int Threads = 2;

    private CoverageStudy(ErrorModel model, IEnumerable<JobOutcome> jobs)
    {
        var all = jobs.ToArray();
        Model = model;
        Outcomes = all.SelectMany(j => j.Outcomes).ToLookup(o => o.Quantity, StringComparer.Ordinal);
        Forecasts = all.SelectMany(j => j.Forecasts).ToLookup(f => f.Quantity, StringComparer.Ordinal);
    }

    /// <summary>Every quantity that is held against the truth, in the order of the table.</summary>
    public static IReadOnlyList<string> Quantities { get; } =
    [
        CircuitJobs.Superheat, CircuitJobs.SuperheatLessTarget, CircuitJobs.Subcooling,
        SimulatedAir.Split, SimulatedAir.SplitLessTarget,
        SimulatedAir.FlowBy + "heat rise", SimulatedAir.FlowBy + "traverse", SimulatedAir.FlowBy + "fan table", SimulatedAir.FlowBy + "hood",
        SimulatedAir.Capacity, ChargeJobs.Charge, NitrogenJobs.Loss, VacuumJobs.Slope,
    ];

    /// <summary>The corrected readings behind them: no target of their own, but they show which correction is wrong.</summary>
    public static IReadOnlyList<string> Readings { get; } = [CircuitJobs.GaugeReading, CircuitJobs.ClampReading];

    /// <summary>Those with a printed probability of conformity.</summary>
    public static IReadOnlyList<string> Judged { get; } = [CircuitJobs.SuperheatLessTarget, CircuitJobs.Subcooling, SimulatedAir.SplitLessTarget];

    public ErrorModel Model { get; }

    public ILookup<string, Outcome> Outcomes { get; }

    public ILookup<string, Forecast> Forecasts { get; }

    /// <summary>Draws and evaluates jobs of every kind.</summary>
    /// <param name="seed">Of the study; each job has its own numbers from it.</param>
    /// <param name="model">The error model.</param>
    /// <param name="count">Outcomes wanted of each quantity: a circuit has a fixed orifice in half of the jobs, and a vacuum hold tells a slope in about half.</param>
    public static CoverageStudy Run(int seed, ErrorModel model, int count)
    {
        (Func<int, ErrorModel, int, JobOutcome> Run, double Jobs)[] kinds = [(CircuitJobs.Run, 2), (ChargeJobs.Run, 1), (NitrogenJobs.Run, 1), (VacuumJobs.Run, 2)];
        var outcomes = new List<JobOutcome>();
        for (var kind = 0; kind < kinds.Length; kind++)
        {
            var (run, share) = kinds[kind];
            var results = new JobOutcome[(int)Math.Ceiling(share * count)];
            var own = seed + kind;
            Parallel.For(0, results.Length, new ParallelOptions { MaxDegreeOfParallelism = Threads }, i => results[i] = run(own, model, i));
            outcomes.AddRange(results);
        }

        return new CoverageStudy(model, outcomes);
    }
}

/// <summary>What a set of outcomes says: how often the truth lies within U, and how wide U is.</summary>
/// <param name="Count">Number of outcomes.</param>
/// <param name="Coverage">Share of them with the truth within U.</param>
/// <param name="Width">Mean U over twice the root mean square error.</param>
/// <param name="Bias">Mean error over the root mean square error.</param>
internal sealed record CoverageFigures(int Count, double Coverage, double Width, double Bias)
{
    /// <summary>What every quantity has to reach.</summary>
    public const double Target = 0.93;

    /// <summary>Mean U over 2 rms at most, in the two-probe model.</summary>
    public const double Widest = 1.3;

    /// <summary>Least number of outcomes in a bin.</summary>
    public const int Bin = 200;

    private const int MostBins = 8;

    /// <summary>Three standard errors of a share near the target.</summary>
    public double ThreeErrors => 3 * Math.Sqrt(Target * (1 - Target) / Count);

    public bool IsMissed => Coverage < Target - ThreeErrors;

    public static CoverageFigures Of(IReadOnlyCollection<Outcome> outcomes)
    {
        var rms = Math.Sqrt(outcomes.Average(o => o.Error * o.Error));
        return new CoverageFigures(outcomes.Count, outcomes.Average(o => o.IsCovered ? 1.0 : 0), outcomes.Average(o => o.Expanded) / (2 * rms), outcomes.Average(o => o.Error) / rms);
    }

    /// <summary>Outcomes in bins of each driving quantity, all of the same number, and by what was checked and used where there are enough.</summary>
    public static IEnumerable<(string Where, CoverageFigures Figures)> Bins(IReadOnlyCollection<Outcome> outcomes)
    {
        var first = outcomes.First();
        for (var d = 0; d < first.Drivers.Length; d++)
        {
            var at = d;
            var sorted = outcomes.OrderBy(o => o.Drivers[at].Value).ToArray();
            var bins = Math.Min(MostBins, sorted.Length / Bin);
            for (var b = 0; b < bins; b++)
            {
                var part = sorted[(b * sorted.Length / bins)..((b + 1) * sorted.Length / bins)];
                yield return (FormattableString.Invariant($"{first.Drivers[d].Name} {part[0].Drivers[d].Value:G3} to {part[^1].Drivers[d].Value:G3}"), Of(part));
            }
        }

        foreach (var group in outcomes.SelectMany(o => o.Kinds.Select(k => (k, o))).GroupBy(x => x.k, x => x.o).Where(g => g.Count() >= Bin))
            yield return ($"{group.Key.Name}: {group.Key.Kind}", Of([.. group]));
    }
}

/// <summary>Printed probabilities of one bin, and the share of truths that conform.</summary>
/// <param name="Count">Cases.</param>
/// <param name="Printed">Mean printed probability.</param>
/// <param name="True">Share that conforms.</param>
internal sealed record CalibrationBin(int Count, double Printed, double True)
{
    /// <summary>How far a printed probability may be from the truth.</summary>
    public const double Allowed = 0.07;

    private const double Clear = 0.05;
    private const int MostBins = 4;

    public double Difference => Printed - True;

    /// <summary>Three standard errors of the share.</summary>
    public double ThreeErrors => 3 * Math.Sqrt(Math.Max(Printed * (1 - Printed), 0.25 / Count) / Count);

    /// <summary>
    /// Bins of printed probability: what is called clear (below 5 and above 95 %), and what lies between on either side of one half, so that a U too
    /// small on both sides cannot cancel; those in bins of the same number, at least so many where there are as many.
    /// </summary>
    public static IEnumerable<CalibrationBin> Of(IReadOnlyCollection<Forecast> forecasts, int least = CoverageFigures.Bin)
    {
        foreach (var part in forecasts.GroupBy(f => f.Probability < Clear ? 0 : f.Probability < 0.5 ? 1 : f.Probability <= 1 - Clear ? 2 : 3).OrderBy(g => g.Key))
        {
            var sorted = part.OrderBy(f => f.Probability).ToArray();
            var bins = part.Key is 0 or 3 ? 1 : Math.Clamp(sorted.Length / least, 1, MostBins);
            for (var b = 0; b < bins; b++)
            {
                var bin = sorted[(b * sorted.Length / bins)..((b + 1) * sorted.Length / bins)];
                yield return new CalibrationBin(bin.Length, bin.Average(f => f.Probability), bin.Average(f => f.Conforms ? 1.0 : 0));
            }
        }
    }
}
