using System.Globalization;
using Commission.Jobs.Model;
using Commission.Jobs.Problems;
using Commission.Jobs.Times;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Jobs.Binding;

/// <summary>Text, names, yes and no, words of a fixed list, plain numbers.</summary>
internal static class WordBinder
{
    private const int LongestText = 4_000;
    private const int LongestId = 64;

    private static readonly Unit PureNumber = UnitTable.Find("1", Dimension.Ratio)!;

    // No count and no factor is so small without being nothing.
    private const double NextToNothing = 1e-9;

    public static Given<bool>? YesNo(BindingContext context, SourceScalar scalar)
    {
        var yes = scalar.Text is "yes" or "true" or "True" or "TRUE";
        return Give(context, scalar, yes, yes ? "yes" : "no");
    }

    public static Given<int>? Whole(BindingContext context, SourceScalar scalar, string key, int least, int most) =>
        Within(context, scalar, key, least, most) is { } number ? Give(context, scalar, (int)number, ((int)number).ToString(CultureInfo.InvariantCulture)) : null;

    public static Given<double>? Number(BindingContext context, SourceScalar scalar, string key, double least, double most) =>
        Within(context, scalar, key, least, most) is { } number
            ? Give(context, scalar, number, scalar.Text) with { Number = new WrittenNumber(number, PureNumber, QuantityParser.Parse(scalar.Text, Dimension.Ratio, PureNumber).Value?.Decimals ?? 0) }
            : null;

    public static Given<T> Give<T>(BindingContext context, SourceScalar scalar, T value, string canonical)
    {
        context.Canonical[scalar] = canonical;
        return new Given<T>(value, scalar.Location, canonical);
    }

    public static Given<string>? Text(BindingContext context, SourceScalar scalar, string key)
    {
        var text = scalar.Text.Trim();
        if (text.Length == 0)
        {
            context.Complain(scalar, JobMessages.EmptyText(new(key)), null, JobMessages.NoValueNext, "no-value");
            return null;
        }

        if (text.Length > LongestText)
        {
            context.Complain(scalar, JobMessages.LongText(new(key), text.Length), JobMessages.LongTextExpected(LongestText), JobMessages.LongTextNext, "too-long");
            return null;
        }

        foreach (var c in text)
        {
            if (char.IsControl(c) && c is not ('\n' or '\t') || c is '\uFFFE' or '\uFFFF' || (char.IsSurrogate(c) && HasLoneSurrogate(text)))
            {
                context.Complain(scalar, JobMessages.Unprintable(new(key), CodePoint(c)), null, JobMessages.UnprintableNext, "control-character");
                return null;
            }
        }

        if (text.FirstOrDefault(HiddenCharacters.TurnsDirection) is not '\0' and var turning)
        {
            context.Complain(scalar, JobMessages.Turning(new(key), CodePoint(turning)), null, JobMessages.TurningNext, "hidden-character");
            return null;
        }

        if (HiddenCharacters.CanBeSeen(text))
            return Give(context, scalar, text, text);
        context.Complain(scalar, JobMessages.Shapeless(new(key)), null, JobMessages.ShapelessNext, "hidden-character");
        return null;
    }

    /// <summary>A short name that files, pages and codes carry: on one line, without what cannot be seen and without the sign that separates the parts of a record's code.</summary>
    public static Given<string>? Id(BindingContext context, SourceScalar scalar, string key)
    {
        if (Text(context, scalar, key) is not { Value: var id } given)
            return null;
        if (id.Length > LongestId)
        {
            context.Complain(scalar, JobMessages.LongText(new(key), id.Length), JobMessages.LongNameExpected(LongestId), JobMessages.LongNameNext, "too-long");
            return null;
        }

        if (UnfitSign(id) is not { } sign)
            return given;
        context.Complain(scalar, JobMessages.UnfitName(new(key), ValueText.Short(id), sign), JobMessages.UnfitNameExpected, JobMessages.UnfitNameNext, "unfit-id");
        return null;
    }

    private static NameValue CodePoint(char sign) => new(string.Create(CultureInfo.InvariantCulture, $"U+{(int)sign:X4}"));

    private static JobMessages.UnfitNameSign? UnfitSign(string id)
    {
        if (id.AsSpan().IndexOfAny("\n\r\u0085\u2028\u2029") >= 0)
            return JobMessages.UnfitNameSign.LineBreak;
        if (id.Contains('\t', StringComparison.Ordinal))
            return JobMessages.UnfitNameSign.Tab;
        if (id.Contains('|', StringComparison.Ordinal))
            return JobMessages.UnfitNameSign.Bar;
        return HiddenCharacters.HasShapeless(id) ? JobMessages.UnfitNameSign.Unseen : null;
    }

    private static bool HasLoneSurrogate(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
                i++;
            else if (char.IsSurrogate(text[i]))
                return true;
        }

        return false;
    }

    public static Given<string>? Refrigerant(BindingContext context, SourceScalar scalar)
    {
        var wanted = FoldRefrigerant(scalar.Text);
        foreach (var (name, designation) in context.Refrigerants)
        {
            if (string.Equals(FoldRefrigerant(name), wanted, StringComparison.Ordinal))
                return Give(context, scalar, designation, designation);
        }

        var near = NearRefrigerants(wanted, [.. context.Refrigerants.Keys]);
        context.Complain(scalar, JobMessages.UnknownRefrigerant(ValueText.Short(scalar.Text)), null,
            near.Count == 0 ? JobMessages.UnknownRefrigerantNext : JobMessages.DidYouMean(ValueText.Values(near)), "unknown-refrigerant");
        return null;
    }

    // R-454B, r454b, R 454B and 454B are one.
    private static string FoldRefrigerant(string text)
    {
        var folded = string.Concat(text.Where(c => !char.IsWhiteSpace(c) && c is not ('-' or '‑'))).ToUpperInvariant();
        return folded.Length > 1 && folded[0] == 'R' && char.IsAsciiDigit(folded[1]) ? folded[1..] : folded;
    }

    private static List<string> NearRefrigerants(string wanted, IReadOnlyCollection<string> names)
    {
        if (wanted.Length is 0 or > 20)
            return [];
        var near = new List<string>();
        if (NearestName.Of(wanted, names.Select(FoldRefrigerant)) is { } nearest)
            near.Add(names.First(n => FoldRefrigerant(n) == nearest));
        var digits = string.Concat(wanted.TakeWhile(char.IsAsciiDigit));
        if (digits.Length >= 2)
        {
            near.AddRange(names.Where(n => string.Concat(FoldRefrigerant(n).TakeWhile(char.IsAsciiDigit)) == digits && !near.Contains(n))
                .Order(StringComparer.Ordinal).Take(4));
        }

        return near;
    }

    /// <summary>A unit of <c>units</c>, where the key says what is written in it.</summary>
    public static Given<string>? DisplayUnitName(BindingContext context, SourceScalar scalar, string key)
    {
        var tried = (context.UnitsAt(scalar).IsSi ? UnitSystem.Si : UnitSystem.Us).With(key, scalar.Text);
        if (!tried.Ok)
        {
            QuantityBinder.Report(context, scalar, tried.Fault);
            return null;
        }

        var kind = Enum.GetValues<DisplayKind>().First(k => UnitSystem.KeyOf(k) == key);
        var symbol = tried.Value[kind].Unit.Symbol;
        return Give(context, scalar, symbol, symbol);
    }

    public static Given<string>? UnitName(BindingContext context, SourceScalar scalar)
    {
        // A log's unit is held against what it logs when the log is read.
        if (UnitTable.FindAny(scalar.Text).FirstOrDefault() is { } known)
            return Give(context, scalar, known.Symbol, known.Symbol);
        var si = context.UnitsAt(scalar).IsSi;
        string[] customary = si ? [] : ["psig", "°F"];
        var nearest = NearestName.Of(scalar.Text, [.. UnitTable.Vacuum.Select(u => u.Symbol), "Pa", "mbar", "kPag", "bar(g)", "°C", .. customary]);
        context.Complain(scalar, JobMessages.NotAUnit(ValueText.Short(scalar.Text)), null,
            nearest is null ? JobMessages.NotAUnitNext(ValueText.Values(si ? ["micron", "Pa", "bar(g)", "°C"] : ["micron", "Pa", "psig", "°F"])) : JobMessages.DidYouMean(ValueText.Values([nearest])), "unknown-unit");
        return null;
    }

    public static Given<string>? Zone(BindingContext context, SourceScalar scalar)
    {
        if (JobZone.Find(scalar.Text.Trim()) is { } zone)
            return Give(context, scalar, zone.Name, zone.Name);
        var nearest = JobZone.Nearest(scalar.Text);
        context.Complain(scalar, JobMessages.NotAZone(ValueText.Short(scalar.Text)), null,
            nearest is null ? JobMessages.NotAZoneNext : JobMessages.DidYouMean(ValueText.Values([nearest])), "unknown-zone");
        return null;
    }

    private static double? Within(BindingContext context, SourceScalar scalar, string key, double least, double most)
    {
        if (!Digits.AreRead(context, scalar, key))
            return null;
        if (double.TryParse(scalar.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most && (number == 0 || Math.Abs(number) > NextToNothing))
            return number;
        context.Complain(scalar, JobMessages.CannotBe(new(key), new(scalar.Text)),
            JobMessages.Between(new(least.ToString(CultureInfo.InvariantCulture)), new(most.ToString(CultureInfo.InvariantCulture))), JobMessages.NumberNext, "range");
        return null;
    }
}
