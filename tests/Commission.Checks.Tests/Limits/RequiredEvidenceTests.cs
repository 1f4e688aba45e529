using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Xunit;

namespace Commission.Checks.Tests.Limits;

/// <summary>
/// What a record is asked for follows the work done: no photo but where a pack asks for it, no ampacity, no wire size, no defrost on a warm
/// day. These are decisions of this program from common practice, no source.
/// </summary>
public sealed class RequiredEvidenceTests
{
    private const string SomeCharge = "charge.by-weight|charge.receiver|charge.subcooling|charge.superheat";

    private static readonly LimitSituation NewSplit = new()
    {
        Work = "new installation",
        System = "split",
        Metering = "TXV",
        Compressor = "fixed",
        Application = "AC",
        RefrigerantClass = "A1",
        Receiver = false,
        Phases = 1,
    };

    [Fact]
    public void A_new_split()
    {
        var required = Required(NewSplit);
        Assert.Equal(
            [
                "instrument.calibration-current", "evidence.signature", "instrument.zero-pressure", "pressure-test.gas",
                "pressure-test.level", "pressure-test.hold", "pressure-test.joint-leak-check", "evacuation.level", "evacuation.hold",
                SomeCharge, "refrigerant.label", "charge.prerequisites", "charge.subcooling|charge.heating-mode|charge.maker-chart|charge.return-visit",
            ],
            Ids(required));
        Assert.Empty(required.Photos);
    }

    [Fact]
    public void Photos_are_asked_by_the_pack_that_is_named_for_them_alone()
    {
        var required = Required(NewSplit, "photo-proof");
        Assert.Equal(Ids(Required(NewSplit)), Ids(required));
        Assert.Equal([PhotoSubject.OutdoorNameplate, PhotoSubject.PressureTestEnd, PhotoSubject.GaugeAtIsolation, PhotoSubject.GaugeAtEnd, PhotoSubject.Label], required.Photos.Select(photo => photo.Shows));
        Assert.All(required.Photos, photo => Assert.Equal("photo-proof", photo.Pack));
        Assert.Equal(
            [PhotoSubject.PressureTestEnd, PhotoSubject.GaugeAtIsolation, PhotoSubject.GaugeAtEnd, PhotoSubject.Label],
            Required(NewSplit with { Work = "leak repair" }, "photo-proof").Photos.Select(photo => photo.Shows));
        Assert.Empty(Required(NewSplit with { Work = "seasonal check" }, "photo-proof").Photos);
        Assert.Empty(Required(NewSplit, "eu-f-gas").Photos);
    }

    [Fact]
    public void A_flammable_refrigerant_adds_its_steps_and_the_room()
    {
        var added = Ids(Required(NewSplit with { RefrigerantClass = "A2L" })).Except(Ids(Required(NewSplit)), StringComparer.Ordinal);
        Assert.Equal(["safety.flammable-steps", "safety.flammable-charge"], added);
    }

    [Fact]
    public void A_packaged_unit_is_not_asked_for_pressure_test_and_evacuation()
    {
        var ids = Ids(Required(NewSplit with { System = "packaged" }));
        Assert.DoesNotContain(ids, id => id.StartsWith("pressure-test", StringComparison.Ordinal) || id.StartsWith("evacuation", StringComparison.Ordinal));
        Assert.DoesNotContain(ids, id => id.Contains("charge.by-weight", StringComparison.Ordinal));
        Assert.DoesNotContain("charge.prerequisites", ids);
        Assert.Empty(Required(NewSplit with { System = "packaged" }, "photo-proof").Photos);
    }

    [Theory]
    [InlineData("multi-split")]
    [InlineData("VRF")]
    [InlineData("ductless split")]
    public void Systems_charged_by_weight_are_not_asked_for_readings(string system)
    {
        var ids = Ids(Required(NewSplit with { System = system, Metering = "EEV", Compressor = "variable speed" }));
        Assert.Contains(SomeCharge, ids); // the weight alone answers it
        Assert.DoesNotContain(ids.Where(id => id != SomeCharge), id => id.Contains("charge.subcooling", StringComparison.Ordinal) || id.Contains("charge.superheat", StringComparison.Ordinal));
        Assert.DoesNotContain("charge.prerequisites", ids);
        Assert.Equal(system is not "ductless split", ids.Contains("pressure-test.section", StringComparer.Ordinal));
    }

    [Fact]
    public void A_variable_speed_split_is_not_asked_for_subcooling() =>
        Assert.DoesNotContain(Ids(Required(NewSplit with { Compressor = "variable speed" })).Where(id => id != SomeCharge), id => id.Contains("charge.subcooling", StringComparison.Ordinal));

    [Theory]
    [InlineData("charge adjustment")]
    [InlineData("seasonal check")]
    public void A_variable_speed_split_that_was_only_read_shows_one_reading_that_says_something(string work) =>
        Assert.Contains("charge.diagnosis|charge.heating-mode|charge.maker-chart|charge.return-visit", Ids(Required(NewSplit with { Work = work, Compressor = "variable speed", Readings = true })));

    [Fact]
    public void An_opened_circuit_shows_its_charge_by_one_of_the_ways() =>
        Assert.Contains($"{SomeCharge}|charge.diagnosis", Ids(Required(NewSplit with { Work = "leak repair" })));

    [Fact]
    public void A_receiver_asks_for_the_sight_glass_and_not_for_subcooling()
    {
        var ids = Ids(Required(NewSplit with { System = "refrigeration", Application = "medium temperature", Receiver = true }));
        Assert.Contains("charge.receiver", ids);
        Assert.DoesNotContain(ids.Where(id => id != SomeCharge), id => id.Contains("charge.subcooling", StringComparison.Ordinal));
    }

    [Fact]
    public void A_fixed_orifice_is_asked_for_superheat() =>
        Assert.Contains("charge.superheat|charge.heating-mode|charge.maker-chart|charge.return-visit", Ids(Required(NewSplit with { Metering = "fixed orifice" })));

    [Fact]
    public void An_opened_circuit_is_asked_for_recovery_whatever_the_system() =>
        Assert.All(["split", "packaged", "refrigeration"], system =>
        {
            var ids = Ids(Required(NewSplit with { Work = "opened circuit", System = system }));
            Assert.Contains("refrigerant.recovery-level", ids);
            Assert.Contains("pressure-test.hold", ids);
            Assert.Contains("evacuation.hold", ids);
        });

    [Fact]
    public void A_charge_adjustment_is_shown_as_found_and_as_left()
    {
        var ids = Ids(Required(NewSplit with { Work = "charge adjustment" }));
        Assert.Contains("charge.as-found", ids);
        Assert.DoesNotContain(ids, id => id.StartsWith("pressure-test", StringComparison.Ordinal) || id.StartsWith("electrical", StringComparison.Ordinal));
    }

    [Fact]
    public void Decommissioning_asks_for_the_refrigerant_alone() =>
        Assert.Equal(["instrument.calibration-current", "evidence.signature", "refrigerant.recovery-level", "refrigerant.ledger"], Ids(Required(NewSplit with { Work = "decommissioning" })));

    [Fact]
    public void A_seasonal_check_on_which_gauges_were_put_on_shows_what_they_say()
    {
        Assert.Equal(["instrument.calibration-current", "evidence.signature", "charge.subcooling|charge.heating-mode|charge.maker-chart|charge.return-visit"], Ids(Required(NewSplit with { Work = "seasonal check", Readings = true })));
        Assert.Equal(["instrument.calibration-current", "evidence.signature"], Ids(Required(NewSplit with { Work = "seasonal check", Readings = false })));
    }

    [Fact]
    public void Three_phases_ask_for_rotation_and_a_heat_pump_for_both_modes()
    {
        Assert.Contains("electrical.phase-rotation", Ids(Required(NewSplit with { Phases = 3, Driven = false })));
        Assert.DoesNotContain("electrical.phase-rotation", Ids(Required(NewSplit with { Phases = 3, Driven = true })));
        Assert.DoesNotContain("electrical.phase-rotation", Ids(Required(NewSplit with { Phases = null, Driven = false })));
        Assert.Contains("functional.reversing-valve", Ids(Required(NewSplit with { System = "heat pump" })));
        Assert.Contains("safety.leak-sensor", Ids(Required(NewSplit with { LeakSensor = true })));
    }

    [Fact]
    public void A_named_pack_adds_and_nothing_is_asked_twice()
    {
        var plain = Ids(Required(NewSplit));
        var european = Ids(Required(NewSplit with { Fluorinated = true }, "eu-f-gas", "en-378"));
        Assert.Equal(european.Count, european.Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(
            ["pressure-test.strength", "refrigerant.co2e", "refrigerant.leak-check", "refrigerant.ledger", "safety.devices"],
            european.Except(plain, StringComparer.Ordinal).Order(StringComparer.Ordinal));
        Assert.True(Required(NewSplit with { Fluorinated = true }, "eu-f-gas").Names("refrigerant.co2e"));
        Assert.False(Required(NewSplit with { Fluorinated = false }, "eu-f-gas").Names("refrigerant.co2e")); // propane: (EU) 2024/573, article 2 [published]
        Assert.True(Required(NewSplit).Names("charge.return-visit"));
        Assert.False(Required(NewSplit).Names("refrigerant.co2e"));
        Assert.Equal("eu-f-gas", Required(NewSplit with { Fluorinated = true }, "eu-f-gas").Checks.First(check => check.Names("refrigerant.label")).Pack);
    }

    [Fact]
    public void What_two_packs_ask_for_is_asked_once_in_the_name_of_the_first()
    {
        static LimitPack Pack(string name, string required) =>
            PackText.Read($"pack: {name}\ntitle: T\npublished by: P\nedition: 1\nrequired:\n  - when: {{work: [leak repair]}}\n    {required}\n    because: {name} asks\n");
        var packs = new[] { Pack("one", "photos: [label]\n    checks: [evacuation.level]"), Pack("two", "photos: [label, outdoor nameplate]\n    checks: [evacuation.level, evacuation.hold]") };
        var required = RequiredEvidence.Of(packs, new LimitSituation { Work = "leak repair" });
        Assert.Equal([(PhotoSubject.Label, "one", "one asks"), (PhotoSubject.OutdoorNameplate, "two", "two asks")], required.Photos.Select(p => (p.Shows, p.Pack, LimitWords.In(p.Because))));
        Assert.Equal([("evacuation.level", "one"), ("evacuation.hold", "two")], required.Checks.Select(c => (string.Join('|', c.Choice.OneOf), c.Pack)));
        var other = RequiredEvidence.Of(packs, new LimitSituation { Work = "seasonal check" });
        Assert.Empty(other.Photos);
        Assert.Empty(other.Checks);
    }

    [Fact]
    public void Every_kind_of_work_on_every_system_asks_for_something_sensible()
    {
        // Whatever is not known, nothing throws, and no check is asked for twice, alone and again alone.
        foreach (var work in LimitSubject.All.Single(subject => subject.Key == "work").Words)
        {
            foreach (var system in LimitSubject.All.Single(subject => subject.Key == "system").Words)
            {
                var ids = Ids(Required(new LimitSituation { Work = work, System = system }));
                Assert.Contains("evidence.signature", ids);
                Assert.Equal(ids.Count, ids.Distinct(StringComparer.Ordinal).Count());
            }
        }
    }

    private static RequiredEvidence Required(LimitSituation situation, params string[] packs) =>
        new LimitResolver(LimitLibrary.Embedded, packs, ImmutableDictionary<string, MakerFigure>.Empty, situation, new DecisionRuleChoice(null)).Required();

    private static List<string> Ids(RequiredEvidence required) => [.. required.Checks.Select(check => string.Join('|', check.Choice.OneOf))];
}
