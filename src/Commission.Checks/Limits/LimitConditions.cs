using System.Collections.Immutable;

namespace Commission.Checks.Limits;

/// <summary>When a case applies: every condition has to hold. No condition: always.</summary>
/// <param name="All">The conditions.</param>
internal sealed record LimitConditions(ImmutableArray<LimitCondition> All)
{
    /// <summary>Always.</summary>
    public static LimitConditions Always { get; } = new([]);

    /// <summary>Whether the case applies.</summary>
    /// <param name="situation">What is known of the job.</param>
    /// <returns>True when every condition holds; what is not known does not hold.</returns>
    public bool Hold(LimitSituation situation)
    {
        foreach (var condition in All)
        {
            if (!condition.Holds(situation)) return false;
        }

        return true;
    }
}
