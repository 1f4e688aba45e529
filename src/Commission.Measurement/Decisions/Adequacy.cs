using Commission.Measurement.Uncertainty;

namespace Commission.Measurement.Decisions;

/// <summary>How fine a measurement is against its limit: tolerance over U for two sides, distance from the limit over U for one.</summary>
/// <param name="Ratio">The ratio; nothing for a result without uncertainty.</param>
/// <param name="Grade">The word for it.</param>
public sealed record Adequacy(double? Ratio, AdequacyGrade Grade)
{
    /// <summary>The grade as a page says it.</summary>
    public string Words => Grade switch
    {
        AdequacyGrade.Good => "good",
        AdequacyGrade.UsableInTheField => "usable in the field",
        AdequacyGrade.Weak => "weak",
        _ => "no verdict",
    };

    /// <summary>Of a result against a tolerance.</summary>
    /// <param name="y">The result.</param>
    /// <param name="tolerance">The tolerance, in the unit of the result.</param>
    public static Adequacy Of(Uncertain y, Tolerance tolerance)
    {
        if (y.Expanded == 0)
            return new Adequacy(null, AdequacyGrade.Good);
        var distance = tolerance.HalfWidth ?? Math.Abs(y.Value - (tolerance.Upper ?? tolerance.Lower ?? throw new ArgumentException("A tolerance has at least one side.", nameof(tolerance))));
        var ratio = distance / y.Expanded;
        return new Adequacy(ratio, GradeOf(ratio));
    }

    /// <summary>The word for a ratio: good from 4, usable from 2, weak from 1.</summary>
    /// <param name="ratio">Tolerance or distance over U.</param>
    public static AdequacyGrade GradeOf(double ratio) => ratio switch
    {
        >= 4 => AdequacyGrade.Good,
        >= 2 => AdequacyGrade.UsableInTheField,
        >= 1 => AdequacyGrade.Weak,
        _ => AdequacyGrade.NoVerdict,
    };
}
