namespace Commission.Checks;

/// <summary>
/// Something several checks, figures and tables of a phase need and that is worked out once per job: the charge readings
/// with their saturation temperatures, the segmented evacuation log. Asked for through <see cref="CheckContext.Get{T}"/>.
/// </summary>
/// <typeparam name="TSelf">The analysis itself.</typeparam>
public interface IAnalysis<TSelf>
    where TSelf : class, IAnalysis<TSelf>
{
    /// <summary>Works the analysis out. Called at most once per context.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    static abstract TSelf Create(CheckContext context);
}
