namespace Commission.Measurement.Uncertainty;

/// <summary>Propagation of distributions by Monte Carlo (JCGM 101): the same computation, run with drawn errors.</summary>
public static class MonteCarlo
{
    /// <summary>Runs a computation many times.</summary>
    /// <param name="model">The computation; takes every reading and input from the scope it is given.</param>
    /// <param name="random">Where randomness comes from; the same seed gives the same result.</param>
    /// <param name="trials">How many times, two or more; 1,000,000 give two digits of a 95 % interval as a rule (JCGM 101, 7.2).</param>
    public static MonteCarloResult Run(Func<IUncertaintyScope, Uncertain> model, Random random, int trials)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(trials, 2);
        var scope = new SamplingScope(random);
        var values = new double[trials];
        for (var i = 0; i < trials; i++)
        {
            scope.NextTrial();
            values[i] = model(scope).Value;
        }

        return new MonteCarloResult(values);
    }
}
