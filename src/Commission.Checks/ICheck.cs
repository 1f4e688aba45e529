using Commission.Records.Findings;

namespace Commission.Checks;

/// <summary>
/// One check: reads a job through its context and says what it found. A check never goes silent: what could not be
/// judged is a finding with the reason. It holds no state; the same context gives the same findings.
/// </summary>
public interface ICheck
{
    /// <summary>The id, phase and name: <c>charge.superheat</c>. Unique in <see cref="CheckCatalogue"/>.</summary>
    string Id { get; }

    /// <summary>The phase of the job the check belongs to: one of <see cref="Phases.All"/>.</summary>
    string Phase { get; }

    /// <summary>The title as the record prints it.</summary>
    string Title { get; }

    /// <summary>The page of help.</summary>
    CheckHelp Help { get; }

    /// <summary>
    /// Evaluates the check. An empty sequence means that the job gives the check no subject at all (no such part in the
    /// job, or not of this kind of system); the profile of required checks then decides whether something is missing.
    /// </summary>
    /// <param name="context">The job and everything derived from it.</param>
    IEnumerable<Finding> Evaluate(CheckContext context);
}
