using System.Collections.Immutable;

namespace Commission.Checks.PressureTest.Analysis;

/// <summary>A nitrogen hold that was logged.</summary>
/// <param name="Loss">From the mean of the first rows to the mean of the last.</param>
/// <param name="Times">Times of the rows, s.</param>
/// <param name="Referred">Absolute pressure of each row referred to the first temperature, Pa: flat for a tight system.</param>
/// <param name="FirstHalf">Loss over the first half of the time, share of the charge.</param>
/// <param name="SecondHalf">Loss over the second half, share of the charge.</param>
/// <param name="RowsAtEachEnd">Rows averaged at each end.</param>
public sealed record NitrogenSeriesResult(
    NitrogenLoss Loss,
    ImmutableArray<double> Times,
    ImmutableArray<double> Referred,
    double FirstHalf,
    double SecondHalf,
    int RowsAtEachEnd)
{
    /// <summary>True when the first half shows a loss and the second at most a quarter of it: gas that was still cooling from
    /// filling, or oil taking up nitrogen, rather than a leak.</summary>
    public bool LooksLikeSettling => FirstHalf > Loss.DecisionThreshold && SecondHalf < FirstHalf / 4;
}
