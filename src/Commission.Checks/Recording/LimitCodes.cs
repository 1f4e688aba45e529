using System.Collections.Immutable;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Recording;

/// <summary>
/// Gives each source of limits a short code that stands behind the limit in a table: a letter for whose it is and a number, in the order of the
/// pages. The sources stand once, in full, beside their codes.
/// </summary>
internal static class LimitCodes
{
    /// <summary>The record with codes in its findings and its list of limits, and the sources by code.</summary>
    public static CommissioningRecord Assign(CommissioningRecord record)
    {
        var codes = new Dictionary<(string, string, string), LimitSource>();
        var numbers = new Dictionary<char, int>();
        string Code(LimitStatement limit)
        {
            // Practice without a document has nothing to be looked up.
            if (limit is { Mark: "common practice", Basis: not ("maker" or LimitStatement.PackBasis or "job") })
                return "C";
            var key = (limit.Basis, limit.Pack, limit.Source);
            if (!codes.TryGetValue(key, out var source))
            {
                var letter = limit.Basis switch { "maker" => 'M', LimitStatement.PackBasis => 'P', "job" => 'J', _ => 'C' };
                var number = numbers[letter] = numbers.GetValueOrDefault(letter) + 1;
                codes.Add(key, source = new LimitSource(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{letter}{number}"), limit.Whose, limit.Source, limit.Mark));
            }

            return source.Code;
        }

        return record with
        {
            Findings = [.. record.Findings.Select(f => f.Limits.IsEmpty ? f : f with { Limits = [.. f.Limits.Select(l => l with { Code = Code(l) })] })],
            LimitsInForce = [.. record.LimitsInForce.Select(l => l with { Code = Code(l) })],
            LimitSources = [.. codes.Values],
        };
    }
}
