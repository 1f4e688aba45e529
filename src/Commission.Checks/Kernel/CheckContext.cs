using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Measurement.Uncertainty;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Kernel;

/// <summary>
/// A job and everything derived from it that more than one check needs. Everything is worked out on first use, so a job
/// without an evacuation costs no evacuation analysis and a job with one refrigerant reads one fluid's data.
/// </summary>
public sealed class CheckContext
{
    private readonly Dictionary<Type, object> _analyses = [];

    /// <summary>Opens a context.</summary>
    /// <param name="job">The job.</param>
    /// <param name="settings">What does not stand in the job.</param>
    public CheckContext(Job job, CheckSettings settings)
    {
        Job = job;
        Settings = settings;
        Present = Presentation.For(job, settings.Language);
        Readings = new ReadingCorrector(this);
    }

    /// <summary>The job as read.</summary>
    public Job Job { get; }

    /// <summary>The date the record speaks for, the uncertainty scope, further limit packs.</summary>
    public CheckSettings Settings { get; }

    /// <summary>How readings get their uncertainty: linear, or one draw of a Monte Carlo run.</summary>
    public IUncertaintyScope Scope => Settings.Scope;

    /// <summary>How numbers are printed for this job.</summary>
    internal Presentation Present { get; }

    /// <summary>Readings with their corrections and root causes.</summary>
    internal ReadingCorrector Readings { get; }

    /// <summary>The limits in force: the maker's figures, named packs, common practice.</summary>
    internal LimitResolver Limits => Get<JobLimits>().Resolver;

    /// <summary>Units of root causes, for budgets.</summary>
    internal CauseBook Causes { get; } = new();

    /// <summary>An analysis shared by the checks, figures and tables of a phase; worked out once.</summary>
    /// <typeparam name="T">The analysis.</typeparam>
    internal T Get<T>()
        where T : class, IAnalysis<T>
    {
        if (_analyses.TryGetValue(typeof(T), out var known))
            return (T)known;
        var made = T.Create(this);
        _analyses.Add(typeof(T), made);
        return made;
    }

    /// <summary>A figure the computation assumes, from the packs: the share by which a clamp reads toward ambient, the weather's pull on the barometer.</summary>
    /// <param name="id">Id of the assumption.</param>
    /// <returns>Its value in SI.</returns>
    /// <exception cref="InvalidOperationException">No pack states it: a fault of this program.</exception>
    internal double Assume(string id) =>
        (Limits.Find(id)?.Target ?? throw new InvalidOperationException($"No pack states {id}.")).Si;

    /// <summary>The statement of a limit in the job's units; gauge pressures become absolute with the site's atmosphere.</summary>
    internal LimitStatement State(Limit limit) => limit.ToStatement(Present, Get<SiteAtmosphere>().Pressure);

    /// <summary>The statement of a tolerance around a target that comes from elsewhere.</summary>
    /// <param name="limit">The tolerance.</param>
    /// <param name="targetSi">The target, SI.</param>
    internal LimitStatement State(Limit limit, double targetSi) => limit.ToStatement(Present, targetSi);

    /// <summary>Starts a finding of a check.</summary>
    /// <param name="check">The check that speaks.</param>
    /// <param name="subject">What it is about when the check speaks more than once; null when it speaks once.</param>
    internal FindingBuilder Finding(ICheck check, string? subject = null) => new(this, check, subject);

    /// <summary>Starts a finding of a check that speaks more than once.</summary>
    /// <param name="check">The check that speaks.</param>
    /// <param name="subject">What it is about.</param>
    internal FindingBuilder Finding(ICheck check, Message subject) => new(this, check, Present.Text(subject));
}

/// <summary>What an evaluation needs beyond the job.</summary>
/// <param name="AsOf">The day the record speaks for: calibrations and due dates are judged at it.</param>
public sealed record CheckSettings(DateOnly AsOf)
{
    /// <summary>How readings get their uncertainty: propagated, unless a Monte Carlo run draws them.</summary>
    public IUncertaintyScope Scope { get; init; } = LinearScope.Instance;

    /// <summary>The language of the record.</summary>
    public Language Language { get; init; } = Language.English;

    /// <summary>The packs a job may name.</summary>
    internal LimitLibrary Library { get; init; } = LimitLibrary.Embedded;
}

/// <summary>
/// Something several checks, figures and tables of a phase need and that is worked out once per job: the charge readings
/// with their saturation temperatures, the segmented evacuation log. Asked for through <see cref="CheckContext.Get{T}"/>.
/// </summary>
/// <typeparam name="TSelf">The analysis itself.</typeparam>
internal interface IAnalysis<TSelf>
    where TSelf : class, IAnalysis<TSelf>
{
    /// <summary>Works the analysis out. Called at most once per context.</summary>
    static abstract TSelf Create(CheckContext context);
}

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
            Fluorinated = refrigerant.Info is { } gas ? GasFamilies.IsFluorinated(gas) : null,
            Ambient = job.Evacuation?.Ambient?.Value.Si,
        };
        var packs = job.Limits is { } limits ? limits.Packs.Select(p => p.Value) : [];
        return new JobLimits(new LimitResolver(context.Settings.Library, packs, MakerFigures.Of(job, context.Present.Text), situation, new DecisionRuleChoice(job.Limits?.DecisionRule), context.Present.Text));
    }
}
