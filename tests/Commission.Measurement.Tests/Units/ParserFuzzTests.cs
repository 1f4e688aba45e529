using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using CsCheck;

namespace Commission.Measurement.Tests.Units;

/// <summary>Whatever is typed, the parser answers: a quantity that prints and reads back the same, or a fault that lies inside the text.</summary>
public sealed class ParserFuzzTests
{
    private static readonly string[] Pieces =
    [
        "1", "12", "118.4", "0.5", ".5", "3/8", "1 1/8", "½", "-", "+", "±", "+/-", "(k=1)", "(", ")", ",", ".", "/", " ", "\u00A0", "to", "–", "e5", "E", "1e9",
        "psig", "psi", "°F", "F", "in", "ft", "lb", "oz", "h", "min", "micron", "um Hg", "%", "V", "kPa", "bar(g)", "inHg vac", "µ", "μ", "°", "ten", "NaN", "∞", "\"", "'", "\0", "\u202E", "😀",
    ];

    private static readonly Gen<string> Text = Gen.Int[0, Pieces.Length - 1].Array[0, 9].Select(indexes => string.Concat(indexes.Select(i => Pieces[i])));
    private static readonly Gen<Dimension> AnyDimension = Gen.Int[0, Enum.GetValues<Dimension>().Length - 1].Select(i => Enum.GetValues<Dimension>()[i]);

    // Texts that are nearly right: a number, a unit of the field or an alias, perhaps a second part, a range, an uncertainty.
    private static readonly Gen<string> Number = Gen.Int[0, 7].Select(i => Pieces[i]);

    private static Gen<string> Likely(Dimension dimension)
    {
        var spellings = UnitTable.For(dimension).SelectMany(u => u.Aliases.Prepend(u.Symbol)).Where(s => s != "1").ToArray();
        var unit = Gen.Int[0, spellings.Length - 1].Select(i => spellings[i]);
        var joint = Gen.OneOf(Gen.Const(""), Gen.Const(" "), Gen.Const(" to "), Gen.Const("-"), Gen.Const(" ± "), Gen.Const("+/-"), Gen.Const(" + "));
        return Gen.Select(Number, unit, joint, Number, unit, Gen.Bool).Select((n, u, j, m, v, both) => both ? $"{n} {u}{j}{m} {v}" : $"{n}{u}");
    }

    [Fact]
    public void Nearly_right_texts_print_and_read_back() => AnyDimension.SelectMany(d => Likely(d).Select(t => (Dimension: d, Text: t))).Sample(sample =>
    {
        if (QuantityParser.Parse(sample.Text, sample.Dimension).Value is { } quantity)
            Assert.Equal(quantity.Canonical, QuantityParser.Parse(quantity.Canonical, sample.Dimension).Value?.Canonical);
        if (QuantityParser.ParseRange(sample.Text, sample.Dimension).Value is { } range)
            Assert.Equal(range.Canonical, QuantityParser.ParseRange(range.Canonical, sample.Dimension).Value?.Canonical);
        if (AccuracyStatement.Parse(sample.Text, sample.Dimension).Value is { } accuracy)
            Assert.Equal(accuracy.Canonical, AccuracyStatement.Parse(accuracy.Canonical, sample.Dimension).Value?.Canonical);
    }, iter: 20_000);

    [Fact]
    public void Quantities() => Text.Select(AnyDimension).Sample((text, dimension) =>
    {
        var result = QuantityParser.Parse(text, dimension);
        if (!result.Ok)
        {
            AssertInside(result.Fault, text);
            return;
        }

        Assert.True(double.IsFinite(result.Value.Si));
        var again = QuantityParser.Parse(result.Value.Canonical, dimension);
        Assert.True(again.Ok, $"{text} -> {result.Value.Canonical}: {again.Fault?.Text(Language.English)}");
        Assert.Equal(result.Value.Si, again.Value.Si, Math.Abs(result.Value.Si) * 1e-14);
        Assert.Equal(result.Value.Canonical, again.Value.Canonical);
        Assert.Equal(result.Value.Uncertainty, again.Value.Uncertainty);
    }, iter: 20_000);

    [Fact]
    public void Ranges() => Text.Select(AnyDimension).Sample((text, dimension) =>
    {
        var result = QuantityParser.ParseRange(text, dimension);
        if (!result.Ok)
        {
            AssertInside(result.Fault, text);
            return;
        }

        Assert.True(result.Value.Lower.Si <= result.Value.Upper.Si);
        var again = QuantityParser.ParseRange(result.Value.Canonical, dimension);
        Assert.True(again.Ok, $"{text} -> {result.Value.Canonical}: {again.Fault?.Text(Language.English)}");
        Assert.Equal(result.Value.Upper.Si, again.Value.Upper.Si, Math.Abs(result.Value.Upper.Si) * 1e-14);
    }, iter: 20_000);

    [Fact]
    public void Accuracies() => Text.Select(AnyDimension).Sample((text, dimension) =>
    {
        var result = AccuracyStatement.Parse(text, dimension);
        if (!result.Ok)
        {
            AssertInside(result.Fault, text);
            return;
        }

        var again = AccuracyStatement.Parse(result.Value.Canonical, dimension);
        Assert.True(again.Ok, $"{text} -> {result.Value.Canonical}: {again.Fault?.Text(Language.English)}");
        Assert.Equal(result.Value.Canonical, again.Value.Canonical);
    }, iter: 20_000);

    [Fact]
    public void Random_characters() => Gen.String.Select(AnyDimension).Sample((text, dimension) =>
    {
        if (QuantityParser.Parse(text, dimension).Fault is { } fault)
            AssertInside(fault, text);
        if (QuantityParser.ParseRange(text, dimension).Fault is { } range)
            AssertInside(range, text);
        if (AccuracyStatement.Parse(text, dimension).Fault is { } accuracy)
            AssertInside(accuracy, text);
    }, iter: 10_000);

    private static void AssertInside(ParseFault fault, string text)
    {
        Assert.InRange(fault.Offset, 0, text.Length);
        Assert.True(fault.Length >= 0);
        Assert.True(fault.Offset + fault.Length <= Math.Max(text.Length, fault.Offset + 1), $"{fault} lies outside \"{text}\"");
        Assert.NotEmpty(MessageWriter.Words.Format(fault.Found, Language.English));
        Assert.NotEqual("  ", fault.Text(Language.English));
    }
}
