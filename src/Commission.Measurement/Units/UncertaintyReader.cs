using System.Globalization;
using System.Text.RegularExpressions;
using Commission.Measurement.Quantities;

namespace Commission.Measurement.Units;

/// <summary>Reads what stands behind the ± sign of a reading: a number, perhaps a unit, perhaps <c>(k=1)</c>.</summary>
internal static partial class UncertaintyReader
{
    private const double UsualCoverageFactor = 2;

    public static ParseResult<WrittenUncertainty> Read(Excerpt excerpt, Dimension dimension)
    {
        var (number, fault) = NumberReader.Read(excerpt.Plain, excerpt.Start);
        if (fault is not null)
            return fault;
        if (number is not { } half)
            return FaultText.UncertaintyWithoutNumber(excerpt.Written, dimension, excerpt.Start);
        if (half.Text.StartsWith('-'))
            return FaultText.Uncertainty(excerpt.Written, "is an uncertainty below zero", "Write it without the minus sign.", excerpt.Start);

        var (k, end) = (UsualCoverageFactor, excerpt.End);
        if (Coverage().Match(excerpt.PlainPart) is { Success: true } coverage)
        {
            end = excerpt.Start + coverage.Index;
            k = double.Parse(coverage.Groups["k"].Value, CultureInfo.InvariantCulture);
            if (k is < 0.5 or > 10)
                return FaultText.Uncertainty(coverage.Value.Trim(), "is not a coverage factor", "Write (k=1) or (k=2); without it k = 2 is taken.", end);
        }

        var unit = excerpt.Part(half.End, Math.Max(half.End, end));
        if (unit.PlainPart is not ("" or "%") && !UnitTable.FindAny(unit.PlainPart).Any())
            return FaultText.Uncertainty(unit.Written, "is not a unit or a coverage factor", "Write it like +/- 1.0, or +/- 0.5 (k=1).", unit.Start);
        return new WrittenUncertainty(half, unit.PlainPart, k, excerpt);
    }

    [GeneratedRegex(@" *\(? *k *= *(?<k>\d{1,2}(?:\.\d{1,3})?) *\)?$", RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Coverage();
}
