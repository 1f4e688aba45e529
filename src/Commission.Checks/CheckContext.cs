using Commission.Checks.Findings;
using Commission.Checks.Limits;
using Commission.Checks.Readings;
using Commission.Jobs.Model;
using Commission.Measurement.Uncertainty;
using Commission.Records.Findings;

namespace Commission.Checks;

/// <summary>
/// A job and everything derived from it that more than one check needs. Everything is worked out on first use, so a job
/// without an evacuation costs no evacuation analysis and a job with one refrigerant reads one fluid's data.
/// </summary>
public sealed class CheckContext
{
    private readonly Dictionary<Type, object> analyses = [];

    /// <summary>Opens a context.</summary>
    /// <param name="job">The job.</param>
    /// <param name="settings">What does not stand in the job.</param>
    public CheckContext(Job job, CheckSettings settings)
    {
        Job = job;
        Settings = settings;
        Present = Presentation.For(job);
        Readings = new ReadingCorrector(this);
    }

    /// <summary>The job as read.</summary>
    public Job Job { get; }

    /// <summary>The date the record speaks for, the uncertainty scope, further limit packs.</summary>
    public CheckSettings Settings { get; }

    /// <summary>How readings get their uncertainty: linear, or one draw of a Monte Carlo run.</summary>
    public IUncertaintyScope Scope => Settings.Scope;

    /// <summary>How numbers are printed for this job.</summary>
    public Presentation Present { get; }

    /// <summary>Readings with their corrections and root causes.</summary>
    public ReadingCorrector Readings { get; }

    /// <summary>The limits in force: the maker's figures, named packs, common practice.</summary>
    internal LimitResolver Limits => Get<JobLimits>().Resolver;

    /// <summary>Units of root causes, for budgets.</summary>
    public CauseBook Causes { get; } = new();

    /// <summary>An analysis shared by the checks, figures and tables of a phase; worked out once.</summary>
    /// <typeparam name="T">The analysis.</typeparam>
    public T Get<T>()
        where T : class, IAnalysis<T>
    {
        if (analyses.TryGetValue(typeof(T), out var known))
            return (T)known;
        var made = T.Create(this);
        analyses.Add(typeof(T), made);
        return made;
    }

    /// <summary>A figure the computation assumes, from the packs: the share by which a clamp reads toward ambient, the weather's pull on the barometer.</summary>
    /// <param name="id">Id of the assumption.</param>
    /// <returns>Its value in SI.</returns>
    /// <exception cref="InvalidOperationException">No pack states it: a fault of this program.</exception>
    internal double Assume(string id) =>
        (Limits.Find(id)?.Target ?? throw new InvalidOperationException($"No pack states {id}.")).Si;

    /// <summary>The statement of a limit in the job's units; gauge pressures become absolute with the site's atmosphere.</summary>
    /// <param name="limit">The limit.</param>
    internal LimitStatement State(Limit limit) => limit.ToStatement(Present.Units, Get<SiteAtmosphere>().Pressure);

    /// <summary>The statement of a tolerance around a target that comes from elsewhere.</summary>
    /// <param name="limit">The tolerance.</param>
    /// <param name="targetSi">The target, SI.</param>
    internal LimitStatement State(Limit limit, double targetSi) => limit.ToStatement(Present.Units, targetSi);

    /// <summary>Starts a finding of a check.</summary>
    /// <param name="check">The check that speaks.</param>
    /// <param name="subject">What it is about when the check speaks more than once; null when it speaks once.</param>
    public FindingBuilder Finding(ICheck check, string? subject = null) => new(this, check, subject);
}
