using System.Text;

namespace Commission.Measurement.Units;

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
