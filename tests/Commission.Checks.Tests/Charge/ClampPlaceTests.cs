using Commission.Checks.Charge;
using Commission.Checks.Circuit;
using Xunit;

namespace Commission.Checks.Tests.Charge;

/// <summary>
/// A clamp reads toward the air that is around it, by a share f of 0 to 3 % when bare (common practice, no source): T = T_read − f̄·(T_air − T_read)
/// with f̄ = 1.5 %. 50 °F read indoors at 76 °F is 50 − 0.015·26 = 48.70 °F, outdoors at 92 °F 50 − 0.015·42 = 47.90 °F.
/// </summary>
public sealed class ClampPlaceTests
{
    private const string Rows = """
        instruments:
          - {id: clamp, kind: pipe clamp, accuracy: 0.5 °F, reads: [vapor line, liquid line, evaporator outlet, indoor coil outlet]}
        charging:
          running: full
          PLACES
          readings:
            - {at: "10:30", vapor line: 50 °F, liquid line: 50 °F, evaporator outlet: 50 °F, indoor coil outlet: 50 °F, outdoor dry bulb: 92 °F, return dry bulb: 76 °F BOX}
        """;

    [Fact]
    public void Clamps_outdoors_are_corrected_toward_the_outdoor_air_and_clamps_indoors_toward_the_rooms()
    {
        var row = Row();
        Assert.Equal(47.90, Fahrenheit(row.VaporLine!), 5e-4);
        Assert.Equal(47.90, Fahrenheit(row.LiquidLine!), 5e-4);
        Assert.Equal(48.70, Fahrenheit(row.EvaporatorOutlet!), 5e-4);
        Assert.Equal(48.70, Fahrenheit(row.IndoorCoilOutlet!), 5e-4);
    }

    [Fact]
    public void A_line_read_at_the_indoor_unit_is_an_indoor_one()
    {
        var row = Row("read at: {vapor line: evaporator outlet, liquid line: metering device}");
        Assert.Equal(48.70, Fahrenheit(row.VaporLine!), 5e-4);
        Assert.Equal(48.70, Fahrenheit(row.LiquidLine!), 5e-4);
    }

    [Fact]
    public void In_a_cold_room_the_air_of_the_room_counts() =>
        // 50 − 0.05·(38 − 50) = 50.60 °F.
        Assert.Equal(50.60, Fahrenheit(Row(box: ", box temperature: 38 °F").EvaporatorOutlet!), 5e-4);

    private static ChargeRow Row(string places = "mode: cooling", string box = "")
    {
        var context = JobText.Context(JobLines.Of(Rows.Replace("PLACES", places, StringComparison.Ordinal).Replace(" BOX", box, StringComparison.Ordinal), work: "seasonal check"));
        return new ChargeRow(context, context.Job.Charging, Assert.Single(context.Job.Charging!.Readings));
    }

    private static double Fahrenheit(Checks.Kernel.CorrectedReading reading) => ((reading.Value.Value - 273.15) * 1.8) + 32;
}
