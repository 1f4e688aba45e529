using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Recording;

/// <summary>
/// What to do is said in the trade's words, and how it is written in the file stands beside it: the keys are those of <c>schemas/job.schema.json</c>.
/// </summary>
public sealed class InFileTests
{
    private const string Hold = """tightness: {from: {at: "09:10", pressure: 300 psig, temperature: 70 °F}, to: {at: "11:10", pressure: 300 psig, temperature: 70 °F}}""";
    private const string Rise = """levels: [{at: "10:25", pressure: 300 micron, isolated: yes}, {at: "10:40", pressure: 420 micron}]""";

    [Theory]
    [InlineData("safety.devices", "safety: {devices: [{kind: discharge thermostat}]}", "safety.device-not-tried-next", "safety: {devices: [{tripped at: …, tested: ok}]}")]
    [InlineData("safety.leak-sensor", "safety: {leak sensor: {fitted: yes}}", "safety.room-sensor-not-written-next", "safety: {leak sensor: {test run: yes}}")]
    [InlineData("functional.pressure-controls", "functional: {low-pressure control: {cut in: 40 psig, cut out: 20 psig}}", "functional.control-not-tried-next", "functional: {low-pressure control: {tested: ok}}")]
    [InlineData("functional.pressure-controls", "functional: {high-pressure control: {cut out: 400 psig}}", "functional.control-not-tried-next", "functional: {high-pressure control: {tested: ok}}")]
    [InlineData("electrical.proved-dead", "electrical: {proved dead: {locked out: yes}}", "electrical.dead-not-told-next", "electrical: {proved dead: {live-dead-live: yes, locked out: yes}}")]
    [InlineData("electrical.ground", "electrical: {supply: {equipment ground: not checked}}", "electrical.ground-not-checked-next", "electrical: {supply: {equipment ground: continuous}}")]
    [InlineData("electrical.conductor", "electrical: {supply: {wire: 10 AWG Cu}}", "electrical.ampacity-not-written-next", "electrical: {supply: {ampacity: 30 A}}")]
    [InlineData("pressure-test.settled", "pressure test: {gas: dry nitrogen, " + Hold + "}", "pressure-test.settled-not-written-next", "pressure test: {tightness: {from: {settled: 12 min}}}")]
    [InlineData("pressure-test.section", "pressure test: {gas: dry nitrogen, " + Hold + "}", "common.section-not-written-next", "pressure test: {section: line set and indoor}")]
    [InlineData("evacuation.rig", "evacuation: {started: \"09:25\", rig check: {rise: 20 micron}}", "evacuation.rig-time-not-written-next", "evacuation: {rig check: {rise: 20 micron, after: 5 min}}")]
    [InlineData("evacuation.humidity", "evacuation: {gauge: at the system, " + Rise + "}", "evacuation.coldest-not-read-next", "evacuation: {coldest part: 66 °F}")]
    [InlineData("charge.phase", "charging: {unit arrived: recovered and evacuated, scale: [{before: 20 lb, after: 15 lb}]}", "charge.phase-not-written-next", "charging: {as: liquid}")]
    [InlineData("air.static", "air: {static: {return: 0.2 inwc, supply: 0.3 inwc}}", "air.return-above-room-next", "air: {static: {return: -0.2 inwc}}")]
    [InlineData("piping.flare-torque", "piping checks: {flares: [{place: indoor liquid, od: 3/8 in}]}", "piping.flare-not-told-next", "piping checks: {flares: [{torque: 28 lbf·ft}]}")]
    public void What_is_missing_is_asked_for_in_the_trades_words_and_shown_as_the_file_has_it(string check, string lines, string next, string inFile)
    {
        var found = JobLines.Finding(JobLines.Of(lines), check, subject: JobLines.Findings(JobLines.Of(lines), check)[0].Subject);
        Assert.True(found.Verdict is Verdict.NotEvaluated or Verdict.Conditional, $"{found.Verdict}");
        Assert.Equal((next, inFile), (found.Messages!.NextStep!.Id, found.InFile));
        Assert.Null(SchemaKeys.Unknown(inFile));
    }

    // The hints of every corpus job are looked up in the same way.
    [Theory]
    [InlineData("equipment: {nameplate: {MCA: 22.0 A}}", null)]
    [InlineData("pressure test: {tightness: {from: {at: …, pressure: …}, to: {psi: 300}}}", ".pressure test.tightness.to.psi")]
    [InlineData("instruments: [{checks: {zero: 0.0 psig}}]", null)]
    [InlineData("nameplate: {MCA: 22.0 A}", ".nameplate")]
    [InlineData("instruments: [{zero: 0.0 psig}]", ".instruments[].zero")]
    public void A_hint_that_no_job_file_has_is_found(string hint, string? way) => Assert.Equal(way, SchemaKeys.Unknown(hint));

    [Theory]
    [InlineData("electrical.phase-rotation", "electrical: {total: 12 A}", ", nameplate: {phases: 3}", "electrical.rotation-not-read-next", "electrical: {phase rotation: correct}")]
    [InlineData("air.airflow", "air: {airflow: {method: heat rise, heat rise: {return: 70 °F, supply: 95 °F, volts: 400 V, amps: 14 A}}}", ", nameplate: {phases: 3}", "air.heater-power-next", "air: {airflow: {heat rise: {input: 9.6 kW}}}")]
    [InlineData("piping.reused-lines", "", ", piping: {liquid: {od: 3/8 in, length: 20 ft}, reused: yes}", "piping.flushed-not-written-next", "equipment: {piping: {flushed: yes}}")]
    [InlineData("refrigerant.identity", "charging: {unit arrived: recovered and evacuated, scale: [{before: 20 lb, after: 15 lb}]}", ", nameplate: {refrigerant: R-32}", "refrigerant.identity-differs-next", "refrigerant change: {from: …, to: …}")]
    public void So_is_what_depends_on_the_unit(string check, string lines, string equipment, string next, string inFile)
    {
        var found = JobLines.Findings(JobLines.Of(lines, equipment: equipment), check)[0];
        Assert.Equal((next, inFile), (found.Messages!.NextStep!.Id, found.InFile));
    }

    [Theory]
    [InlineData("air.airflow", "")]
    [InlineData("air.fan-power", ", blower power: 400 W")]
    public void Who_leans_on_the_static_pressure_hands_on_what_it_asks_for(string check, string more)
    {
        var job = JobLines.Of($"air: {{static: {{return: 0.2 inwc, supply: 0.3 inwc}}, fan table: {{points: [{{static: 0.3 inwc, airflow: 1300 cfm}}, {{static: 0.6 inwc, airflow: 1100 cfm}}], from: p. 9}}, airflow: {{method: fan table}}{more}}}");
        var found = JobLines.Finding(job, check);
        Assert.Equal(("air.return-above-room-next", "air: {static: {return: -0.2 inwc}}"), (found.Messages!.NextStep!.Id, found.InFile));
    }
}
