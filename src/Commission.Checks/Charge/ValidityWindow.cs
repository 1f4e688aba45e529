using Commission.Checks.Limits;
using Commission.Checks.Readings;

namespace Commission.Checks.Charge;

/// <summary>One condition under which a charging method counts.</summary>
/// <param name="What">What is looked at: <c>outdoor dry bulb</c>.</param>
/// <param name="Reading">The reading; null when it was not taken.</param>
/// <param name="Limit">The range asked for.</param>
/// <param name="Remark">Why a reading outside the usual range is taken as inside; null when it needs no word.</param>
internal sealed record ValidityWindow(string What, CorrectedReading? Reading, Limit Limit, string? Remark = null)
{
    /// <summary>Whether the reading lies inside; null without a reading.</summary>
    public bool? Inside => Reading is { Value.Value: var kelvin }
        ? kelvin >= (Limit.Lower?.Si ?? double.NegativeInfinity) && kelvin <= (Limit.Upper?.Si ?? double.PositiveInfinity)
        : null;

    /// <summary>Whether the reading lies below the range.</summary>
    public bool IsBelow => Reading is { Value.Value: var kelvin } && kelvin < Limit.Lower?.Si;
}
