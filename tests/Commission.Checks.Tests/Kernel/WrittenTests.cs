using Commission.Checks.Kernel;
using Commission.Measurement.Units;
using Xunit;

namespace Commission.Checks.Tests.Kernel;

/// <summary>
/// Numbers that no instrument of the job read. A last digit d is a step: u = d/√12; a stated ± U is two standard uncertainties (JCGM 100, F.2.2.1
/// and 4.3.4). One foot is 0.3048 m.
/// </summary>
public sealed class WrittenTests
{
    [Fact]
    public void A_number_is_as_sure_as_its_last_digit()
    {
        var context = Of("42.0 ft");
        var length = context.Job.Equipment.Piping[0].Liquid!.Length!;
        var value = Written.Value(context, "line", length, DisplayKind.Length);
        Assert.Equal(42 * 0.3048, value.Value, 1e-9);
        Assert.Equal(0.1 * 0.3048 / Math.Sqrt(12), value.StandardUncertainty, 1e-9);
        Assert.Equal("line: last digit", Assert.Single(value.Budget).Cause.ToString());
        Assert.Equal(DisplayKind.Length, context.Causes.KindOf(value.Budget[0].Cause));

        // The same number under the same name is one cause: the difference of two uses is sure. Under another name it is another.
        Assert.Equal(0, (value - Written.Value(context, "line", length, DisplayKind.Length)).StandardUncertainty);
        Assert.True((value - Written.Value(context, "other", length, DisplayKind.Length)).StandardUncertainty > 0);
    }

    [Fact]
    public void What_is_written_behind_a_number_comes_before_its_last_digit()
    {
        var context = Of("42.0 ft +/- 1 ft");
        var reading = Written.Reading(context, "line", context.Job.Equipment.Piping[0].Liquid!.Length!, DisplayKind.Length);
        Assert.Equal(0.3048 / 2, reading.Value.StandardUncertainty, 1e-9);
        Assert.Equal("line: as stated", Assert.Single(reading.Value.Budget).Cause.ToString());
        Assert.Equal((42 * 0.3048, "line", true, null), (Math.Round(reading.AfterZero, 9), Assert.Single(reading.Uses).Name, reading.AccuracyKnown, reading.Instrument));
    }

    [Fact]
    public void A_rating_is_a_name_and_exact_unless_something_is_written_behind_it()
    {
        var plain = Of("42.0 ft");
        Assert.Equal(0, Written.Rating(plain, "line", plain.Job.Equipment.Piping[0].Liquid!.Length!, DisplayKind.Length).Value.StandardUncertainty);
        var stated = Of("42.0 ft +/- 1 ft");
        Assert.Equal(0.3048 / 2, Written.Rating(stated, "line", stated.Job.Equipment.Piping[0].Liquid!.Length!, DisplayKind.Length).Value.StandardUncertainty, 1e-9);
    }

    private static CheckContext Of(string length) => JobText.Context(JobLines.Of(equipment: $", piping: {{liquid: {{od: 3/8 in, length: {length}}}, vapor: {{od: 3/4 in, length: 10 ft}}}}"));
}
