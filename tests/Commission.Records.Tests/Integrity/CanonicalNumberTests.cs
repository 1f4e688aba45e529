using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Commission.Records.Integrity;
using CsCheck;
using Xunit;

namespace Commission.Records.Tests.Integrity;

public sealed class CanonicalNumberTests
{
    // RFC 8785, appendix B, "Number Serialization Samples": bits of the double and its text (from memory).
    [Theory]
    [InlineData("0000000000000000", "0")]
    [InlineData("8000000000000000", "0")]
    [InlineData("0000000000000001", "5e-324")]
    [InlineData("8000000000000001", "-5e-324")]
    [InlineData("7fefffffffffffff", "1.7976931348623157e+308")]
    [InlineData("ffefffffffffffff", "-1.7976931348623157e+308")]
    [InlineData("4340000000000000", "9007199254740992")]
    [InlineData("c340000000000000", "-9007199254740992")]
    [InlineData("4430000000000000", "295147905179352830000")]
    [InlineData("44b52d02c7e14af5", "9.999999999999997e+22")]
    [InlineData("44b52d02c7e14af6", "1e+23")]
    [InlineData("44b52d02c7e14af7", "1.0000000000000001e+23")]
    [InlineData("444b1ae4d6e2ef4e", "999999999999999700000")]
    [InlineData("444b1ae4d6e2ef4f", "999999999999999900000")]
    [InlineData("444b1ae4d6e2ef50", "1e+21")]
    [InlineData("3eb0c6f7a0b5ed8c", "9.999999999999997e-7")]
    [InlineData("3eb0c6f7a0b5ed8d", "0.000001")]
    [InlineData("41b3de4355555553", "333333333.3333332")]
    [InlineData("41b3de4355555554", "333333333.33333325")]
    [InlineData("41b3de4355555555", "333333333.3333333")]
    [InlineData("41b3de4355555556", "333333333.3333334")]
    [InlineData("41b3de4355555557", "333333333.33333343")]
    [InlineData("becbf647612f3696", "-0.0000033333333333333333")]
    [InlineData("43143ff3c1cb0959", "1424953923781206.2")]
    public void A_number_is_written_as_the_standard_shows(string bits, string expected)
    {
        var value = BitConverter.UInt64BitsToDouble(ulong.Parse(bits, NumberStyles.HexNumber, CultureInfo.InvariantCulture));
        Assert.Equal(expected, Text(value));
    }

    // The two remaining rows of the same appendix: NaN and infinity are errors.
    [Theory]
    [InlineData("7fffffffffffffff")]
    [InlineData("7ff0000000000000")]
    public void What_is_not_a_finite_number_is_refused(string bits)
    {
        var value = BitConverter.UInt64BitsToDouble(ulong.Parse(bits, NumberStyles.HexNumber, CultureInfo.InvariantCulture));
        Assert.Throws<FormatException>(() => Text(value));
    }

    [Fact]
    public void Every_number_reads_back_to_the_same_bits()
    {
        Gen.ULong.Sample(bits =>
        {
            var value = BitConverter.UInt64BitsToDouble(bits);
            if (!double.IsFinite(value) || value == 0) return;
            Assert.Equal(value, double.Parse(Text(value), CultureInfo.InvariantCulture));
        }, iter: 20_000);
    }

    [Fact]
    public void A_number_too_large_for_a_double_is_refused() =>
        Assert.Throws<FormatException>(() => CanonicalJson.Write(JsonNode.Parse("[1e999]")));

    private static string Text(double value)
    {
        var text = new StringBuilder();
        CanonicalNumber.Append(text, value);
        return text.ToString();
    }
}
