using Xunit;

namespace Commission.Source.Tests;

public sealed class NearestNameTests
{
    private static readonly string[] Keys = ["vapor pressure", "liquid pressure", "vapor line", "liquid line", "return wet bulb", "return dry bulb", "work", "zone", "od"];

    [Theory]
    [InlineData("vapour pressure", "vapor pressure")]
    [InlineData("vapor presure", "vapor pressure")]
    [InlineData("Vapor_Pressure", "vapor pressure")]
    [InlineData("wet bulb return", "return wet bulb")]
    [InlineData("wrk", "work")]
    [InlineData("wokr", "work")]
    [InlineData("banana", null)]
    [InlineData("", null)]
    [InlineData("do", null)]
    public void Finds_what_was_meant(string word, string? expected) => Assert.Equal(expected, NearestName.Of(word, Keys));

    [Fact]
    public void A_very_long_word_is_near_nothing() => Assert.Null(NearestName.Of(new string('a', 1_000_000), Keys));
}
