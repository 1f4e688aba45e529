using System.Globalization;
using System.Text;
using Commission.Records.Json;
using CsCheck;
using Xunit;

namespace Commission.Records.Tests.Json;

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
            if (!double.IsFinite(value) || value == 0)
                return;
            Assert.Equal(value, double.Parse(Text(value), CultureInfo.InvariantCulture));
        }, iter: 20_000);
    }

    // Worked by hand: the tenth digit is rounded, zeros at the end go, and the layout is that of the standard.
    [Theory]
    [InlineData(Math.PI, "3.141592654")]
    [InlineData(1.0 / 3, "0.3333333333")]
    [InlineData(902345.678912345, "902345.6789")]
    [InlineData(99999999999.4, "100000000000")]
    [InlineData(6.02214076e23, "6.02214076e+23")]
    [InlineData(-1.380649e-23, "-1.380649e-23")]
    [InlineData(0.00000123456789012, "0.00000123456789")]
    [InlineData(1234567890, "1234567890")]
    [InlineData(-0.0, "0")]
    public void Computed_numbers_carry_ten_significant_digits(double value, string expected) => Assert.Equal(expected, Text(value, CanonicalNumber.TenDigits));

    [Fact]
    public void Ten_digits_say_the_same_as_rounding_first()
    {
        Gen.ULong.Sample(bits =>
        {
            var value = BitConverter.UInt64BitsToDouble(bits);
            if (!double.IsFinite(value) || Math.Abs(value) < 1e-300)
                return;
            Assert.Equal(Text(double.Parse(value.ToString("E9", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)), Text(value, CanonicalNumber.TenDigits));
        }, iter: 20_000);
    }

    private static string Text(double value, string digits = CanonicalNumber.Shortest)
    {
        Span<byte> text = stackalloc byte[CanonicalNumber.Longest];
        return Encoding.UTF8.GetString(text[..CanonicalNumber.Write(value, digits, text)]);
    }
}
