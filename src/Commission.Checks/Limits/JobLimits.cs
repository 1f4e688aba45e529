using Commission.Checks.Readings;
using Commission.Checks.Refrigerants;

namespace Commission.Checks.Limits;

/// <summary>The limits of a job: the maker's figures it gives, the packs it names, common practice behind them.</summary>
internal sealed class JobLimits : IAnalysis<JobLimits>
{
    private JobLimits(LimitResolver resolver) => Resolver = resolver;

    /// <summary>Finds limits.</summary>
    public LimitResolver Resolver { get; }

    /// <inheritdoc/>
    public static JobLimits Create(CheckContext context)
    {
        var job = context.Job;
        var refrigerant = context.Get<CircuitRefrigerant>();
        var situation = LimitSituation.Of(job) with
        {
            Refrigerant = refrigerant.Designation,
            RefrigerantClass = refrigerant.Info?.SafetyGroup?.Value,
            OzoneDepleting = refrigerant.Info is { } info ? GasFamilies.DepletesOzone(info) : null,
            Ambient = job.Evacuation?.Ambient?.Value.Si,
        };
        var packs = job.Limits is { } limits ? limits.Packs.Select(p => p.Value) : [];
        return new JobLimits(new LimitResolver(context.Settings.Library, packs, MakerFigures.Of(job), situation, new DecisionRuleChoice(job.Limits?.DecisionRule)));
    }
}
