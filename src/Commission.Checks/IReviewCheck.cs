using Commission.Records.Findings;

namespace Commission.Checks;

/// <summary>
/// A check that looks at what the others found: whether the instruments were good enough, whether the record covers what
/// it must. It speaks after all the others and never sees its own kind.
/// </summary>
public interface IReviewCheck : ICheck
{
    /// <summary>Evaluates the check.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="findings">What the other checks found.</param>
    IEnumerable<Finding> Review(CheckContext context, IReadOnlyList<Finding> findings);

    /// <inheritdoc/>
    IEnumerable<Finding> ICheck.Evaluate(CheckContext context) => [];
}
