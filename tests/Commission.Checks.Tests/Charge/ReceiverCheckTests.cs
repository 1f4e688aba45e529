using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Charge;

public sealed class ReceiverCheckTests
{
    // R-404A: dew point 32 °F at 72.37 psig at sea level (equation of state, computed by a program of its own).
    private const string Cooler = """
        commission: 1
        units: us
        job: {id: C-1, work: opened circuit, date: 2026-05-20, site: {name: "Orchard store", station pressure: 14.696 psia +/- 0.005}}
        equipment: {system: refrigeration, application: medium temperature, compressor: fixed, refrigerant: R-404A, metering: TXV, receiver: yes}
        instruments:
          - {id: gauge, kind: pressure gauge, accuracy: 0.3 psi, resolution: 0.01 psi, reads: [vapor pressure, true suction pressure]}
          - {id: probe, kind: thermometer, accuracy: 0.2 °F, resolution: 0.1 °F, reads: [evaporator outlet, compressor suction line, box temperature]}
        charging:
          unit arrived: recovered and evacuated
          as: liquid
          added: 9 lb
          compressor started: "13:00"
          sight glass: clear
          receiver level: 60 %
          readings:
            - {at: "13:40", running: full, vapor pressure: 72.37, evaporator outlet: 39.0, compressor suction line: 57.0, box temperature: 42.0}
        """;

    private static Finding One(string yaml, string subject) => JobText.Evaluate(yaml, "charge.receiver").Single(f => f.Subject == subject);

    [Fact]
    public void A_clear_glass_at_full_load_passes() => Assert.Equal(Verdict.Pass, One(Cooler, "sight glass").Verdict);

    [Fact]
    public void A_clear_glass_at_an_unknown_load_is_a_reservation() =>
        Assert.Equal(Verdict.Conditional, One(Cooler.With("running: full, ", ""), "sight glass").Verdict);

    [Fact]
    public void A_flooded_condenser_is_reminded_of_its_winter_charge()
    {
        // Crews write one weight for all of it: a remark, and no condition (common practice, no source).
        var finding = One(Cooler.With("receiver: yes", "receiver: yes, head pressure control: flooding"), "sight glass");
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Contains("winter charge", finding.Statement, StringComparison.Ordinal);
        Assert.DoesNotContain("winter", One(Cooler, "sight glass").Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Bubbles_fail_and_a_blend_is_excused_in_words()
    {
        var finding = One(Cooler.With("sight glass: clear", "sight glass: bubbles"), "sight glass");
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Contains("blend with glide", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_seen_is_not_evaluated() => Assert.Equal(Verdict.NotEvaluated, One(Cooler.With("  sight glass: clear\n", ""), "sight glass").Verdict);

    [Fact]
    public void The_level_is_information() => Assert.Equal("The receiver was 60 % full.", One(Cooler, "receiver level").Statement);

    // Dew point 32.0 °F: 39.0 − 32.0 = 7.0 °F at the bulb (6 to 8 °F in a cooler), 57.0 − 32.0 = 25.0 °F at the compressor (20 to 40 °F).
    // A band of ± 1 °F is finer than U once the listed dew point of R-404A is counted: no verdict either way (practice: below 1, none).
    [Theory]
    [InlineData("evaporator outlet: 39.0", "evaporator outlet: 39.0", "evaporator superheat, 13:40", Verdict.CannotDecide, 7.0)]
    [InlineData("evaporator outlet: 39.0", "evaporator outlet: 44.0", "evaporator superheat, 13:40", Verdict.CannotDecide, 12.0)]
    [InlineData("suction line: 57.0", "suction line: 57.0", "compressor superheat, 13:40", Verdict.Pass, 25.0)]
    [InlineData("suction line: 57.0", "suction line: 47.0", "compressor superheat, 13:40", Verdict.Fail, 15.0)]
    public void Two_superheats(string from, string to, string subject, Verdict verdict, double superheat)
    {
        var finding = One(Cooler.With(from, to), subject);
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(superheat, finding.Measured!.Value.Si * 1.8, 0.05);
    }

    [Fact]
    public void Superheats_need_a_settled_reading() =>
        Assert.Equal(Verdict.NotEvaluated, One(Cooler.With("compressor started: \"13:00\"", "compressor started: \"13:35\""), "evaporator superheat, 13:40").Verdict);

    [Fact]
    public void True_suction_pressure_is_used_at_the_compressor()
    {
        // 70.0 psig of true suction are 1.52 °F below 32 °F at 1.56 psi/°F: superheat 26.5 °F.
        var finding = One(Cooler.With("vapor pressure: 72.37", "vapor pressure: 72.37, true suction pressure: 70.0"), "compressor superheat, 13:40");
        Assert.Equal(26.5, finding.Measured!.Value.Si * 1.8, 0.1);
    }

    [Fact]
    public void Comfort_cooling_without_a_receiver_has_no_such_word() => Assert.Empty(JobText.Evaluate(ChargeJobs.FenRow, "charge.receiver"));
}
