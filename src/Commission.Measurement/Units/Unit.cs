using System.Text;
using Commission.Measurement.Quantities;

namespace Commission.Measurement.Units;

/// <summary>A unit: how it is written and what one of it is in SI, SI = (value + offset) × factor.</summary>
public sealed class Unit
{
    internal Unit(string symbol, Dimension dimension, double factor, double offset, PressureReference? reference, IReadOnlyList<string> aliases, bool isVacuum = false)
    {
        Symbol = symbol;
        Dimension = dimension;
        Factor = factor;
        Offset = offset;
        Reference = reference;
        Aliases = aliases;
        IsVacuum = isVacuum;
    }

    /// <summary>Canonical spelling, as the record prints it. The unit of a pure number is written <c>1</c> and not printed.</summary>
    public string Symbol { get; }

    /// <summary>Other spellings that are understood.</summary>
    public IReadOnlyList<string> Aliases { get; }

    /// <summary>What it measures.</summary>
    public Dimension Dimension { get; }

    /// <summary>SI units in one of it.</summary>
    public double Factor { get; }

    /// <summary>Added to the value before the factor; zero except for temperatures.</summary>
    public double Offset { get; }

    /// <summary>What a pressure in this unit is counted from; nothing for anything else, and for pressure differences.</summary>
    public PressureReference? Reference { get; }

    /// <summary>Whether vacuum gauges read in it, so that it needs no word about gauge or absolute.</summary>
    public bool IsVacuum { get; }

    /// <summary>Whether it is a unit of inch, pound and °F, which a file in SI is not told to write.</summary>
    public bool IsCustomary => UnitTable.IsCustomary(Symbol);

    /// <summary>SI value of a number in this unit. A depth below atmosphere stays a positive depth in Pa.</summary>
    /// <param name="value">Number in this unit.</param>
    public double ToSi(double value) => (value + Offset) * Factor;

    /// <summary>Number in this unit of an SI value.</summary>
    /// <param name="si">SI value.</param>
    public double FromSi(double si) => (si / Factor) - Offset;

    /// <inheritdoc/>
    public override string ToString() => Symbol;
}

/// <summary>Folds the ways people type a unit into one key.</summary>
internal static class UnitSpelling
{
    /// <summary>Keeps case.</summary>
    public static string Fold(string spelling)
    {
        var key = new StringBuilder(spelling.Length);
        foreach (var c in spelling)
        {
            switch (c)
            {
                // Everything a keyboard offers between the parts of a unit, and the degree sign, which a phone lacks.
                case ' ' or '.' or '·' or '⋅' or '*' or '-' or '^' or '°' or 'º' or '(' or ')' or '\u00A0' or '\u2009' or '\u202F':
                    break;
                case '\u00B5' or '\u03BC':
                    key.Append('u');
                    break;
                case '²':
                    key.Append('2');
                    break;
                case '³':
                    key.Append('3');
                    break;
                case '\u2126':
                    key.Append('Ω');
                    break;
                case '\u2032' or '\u2019':
                    key.Append('\'');
                    break;
                case '\u2033' or '\u201D':
                    key.Append('"');
                    break;
                default:
                    key.Append(c);
                    break;
            }
        }

        return key.ToString();
    }

    /// <summary>Drops case.</summary>
    public static string FoldCase(string spelling) => Fold(spelling).ToLowerInvariant();

    /// <summary>Whether a text that differs from a known spelling by case alone may be taken for it: not when the case of an m would turn milli into mega.</summary>
    public static bool PrefixAgrees(string written, string known)
    {
        string ours = Fold(written), theirs = Fold(known);
        if (theirs.Length is < 2 or > 5 || char.ToLowerInvariant(theirs[0]) != 'm' || theirs[0] == ours[0])
            return true;
        return theirs.StartsWith("mi", StringComparison.OrdinalIgnoreCase);
    }
}

/// <summary>The unit somebody probably meant.</summary>
internal static class NearestUnit
{
    /// <summary>The first unit whose spelling is one slip away (two for a longer word): a letter more, less, wrong, or two swapped.</summary>
    public static Unit? Of(string spelling, IEnumerable<Unit> units)
    {
        var written = UnitSpelling.FoldCase(spelling);
        Unit? nearest = null;
        var allowed = written.Length <= 3 ? 1 : 2;
        var best = allowed + 1;
        foreach (var unit in units)
        {
            foreach (var known in unit.Aliases.Prepend(unit.Symbol))
            {
                var key = UnitSpelling.FoldCase(known);

                // One letter for another one-letter unit is no slip.
                if (key.Length < 2 && written.Length < 2)
                    continue;
                var distance = Distance(written, key);
                if (distance < best && distance < Math.Max(written.Length, key.Length))
                    (nearest, best) = (unit, distance);
            }
        }

        return nearest;
    }

    // Optimal string alignment: Levenshtein with neighbouring letters swapped as one step.
    private static int Distance(string a, string b)
    {
        int[] before = new int[b.Length + 1], last = new int[b.Length + 1], now = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++)
            last[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            now[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var cost = a[i - 1] == b[j - 1] ? 0 : 1;
                now[j] = Math.Min(Math.Min(now[j - 1] + 1, last[j] + 1), last[j - 1] + cost);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    now[j] = Math.Min(now[j], before[j - 2] + 1);
            }

            (before, last, now) = (last, now, before);
        }

        return last[b.Length];
    }
}
