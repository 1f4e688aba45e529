using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Limits;

public sealed class LimitTextTests
{
    private static readonly LimitSituation Situation = new() { System = "split", Work = "new installation", Application = "AC", Mode = "cooling", Metering = "TXV", Refrigerant = "R-410A", RefrigerantClass = "A2L" };

    // Conversions worked by hand from the exact factors.
    [Theory]
    [InlineData("evacuation.level", "at most 500 micron", "at most 67 Pa (500 micron)")]
    [InlineData("evacuation.decay", "at most 1000 micron after 10 min", "at most 133 Pa (1000 micron) after 10 min")]
    [InlineData("evacuation.break.to", "0 to 5 psig", "0.00 to 0.34 bar(g) (0 to 5 psig)")]
    [InlineData("evacuation.ambient", "at least 35 °F", "at least 1.7 °C (35 °F)")]
    [InlineData("charge.validity.outdoor", "55 to 115 °F", "12.8 to 46.1 °C (55 to 115 °F)")]
    [InlineData("charge.subcooling.tolerance", "± 3 °F", "± 1.7 K (3 °F)")]
    [InlineData("charge.metering-superheat.range", "4 to 25 °F", "2.2 to 13.9 K (4 to 25 °F)")]
    [InlineData("instruments.scale", "at most 1 oz", "at most 0.028 kg (1 oz)")]
    [InlineData("instruments.calibration.interval", "at most 12 months", "at most 12 months")]
    [InlineData("pressure-test.minimum-factor", "at least 95 %", "at least 95 %")]
    [InlineData("pressure-test.hold.time", "at least 60 min", "at least 60 min")]
    [InlineData("pressure-test.joint-leak-check.sensitivity", "at most 5 g/yr", "at most 5 g/yr")]
    [InlineData("air.airflow.minimum", "at least 300 cfm/ton", "at least 145 m³/h/kW (300 cfm/ton)")]
    [InlineData("air.static.external-maximum", "at most 0.5 inwc", "at most 125 Pa (0.5 inwc)")]
    [InlineData("electrical.insulation.minimum", "at least 1 MΩ", "at least 1 MΩ")]
    [InlineData("electrical.run-capacitor.tolerance", "± 6 %", "± 6 %")]
    [InlineData("instruments.adequacy.good", "at least 4", "at least 4")]
    [InlineData("safety.high-pressure-switch.setting", "610 to 650 psig", "42.06 to 44.82 bar(g) (610 to 650 psig)")]
    [InlineData("safety.flammable.ignition-distance", "at least 9.8 ft (3 m)", "at least 3 m")]
    [InlineData("charge.carbon-dioxide.vapor-first", "at least 75.4 psia (5.2 bar(a))", "at least 5.2 bar(a)")]
    [InlineData("assumption.nitrogen.temperature", "0.9 °F (0.5 K) and 0.9 K at one place, 0.3 K at rest, 0.25 K at three places, 0.45 K in the shade, 30 % of change, 5 % of change at three places, 20 % of change in the shade, 10 % of change on both lines and 0.3 K on both lines", "0.5 K and 0.9 K at one place, 0.3 K at rest, 0.25 K at three places, 0.45 K in the shade, 30 % of change, 5 % of change at three places, 20 % of change in the shade, 10 % of change on both lines and 0.3 K on both lines")]
    [InlineData("air.airflow.nominal", "400 cfm/ton", "193 m³/h/kW (400 cfm/ton)")]
    [InlineData("evacuation.place", "Read at the system, beyond the isolation valve, with a vacuum gauge in micron or Pa", "Read at the system, beyond the isolation valve, with a vacuum gauge in micron or Pa")]
    public void A_limit_in_the_units_of_the_job(string id, string us, string si)
    {
        var limit = Resolver().Find(id)!;
        Assert.Equal(us, LimitWords.Text(limit, UnitSystem.Us));
        Assert.Equal(si, LimitWords.Text(limit, UnitSystem.Si));
    }

    [Fact]
    public void A_single_unit_can_be_chosen()
    {
        var units = UnitSystem.Us.With("vacuum", "Pa").Value!;
        Assert.Equal("at most 67 Pa (500 micron)", LimitWords.Text(Resolver().Find("evacuation.level")!, units));
        Assert.Equal("55 to 115 °F", LimitWords.Text(Resolver().Find("charge.validity.outdoor")!, units));
    }

    [Fact]
    public void A_target_with_its_own_tolerance()
    {
        var pack = PackText.Read("pack: a\ntitle: A\npublished by: B\nedition: 1\ndefaults: {basis: maker, mark: published}\nlimits:\n  charge.subcooling: {target: 9 °F, tolerance: 3 °F, source: unit plate}\n  compressor.ratio.range: {within: 2.5 to 3.5, source: p. 1}\n");
        var limit = Of(pack, "charge.subcooling");
        Assert.Equal("9 ± 3 °F", LimitWords.Text(limit, UnitSystem.Us));
        Assert.Equal("5.0 ± 1.7 K", LimitWords.Text(limit, UnitSystem.Si));
        Assert.Equal("2.5 to 3.5", LimitWords.Text(Of(pack, "compressor.ratio.range"), UnitSystem.Us));
        var statement = limit.ToStatement(LimitWords.Us);
        Assert.Equal((LimitKind.Target, "maker", "a", "unit plate", "published"), (statement.Kind, statement.Basis, statement.Pack, statement.Source, statement.Mark));
        Assert.Equal(9 / 1.8, statement.TargetSi!.Value, 12);
        Assert.Equal(6 / 1.8, statement.LowerSi!.Value, 12);
        Assert.Equal(12 / 1.8, statement.UpperSi!.Value, 12);
    }

    [Fact]
    public void A_tolerance_around_a_target_of_a_table()
    {
        var limit = Resolver().Find("charge.superheat.tolerance")!;
        var statement = limit.ToStatement(LimitWords.Us, 12.04 / 1.8);
        Assert.Equal((LimitKind.Target, "12.0 ± 5 °F", "common practice", "common-practice"), (statement.Kind, statement.Text, statement.Basis, statement.Pack));
        Assert.Equal(7.04 / 1.8, statement.LowerSi!.Value, 12);
        Assert.Equal(17.04 / 1.8, statement.UpperSi!.Value, 12);
        Assert.Equal("6.7 ± 2.8 K", limit.ToStatement(LimitWords.Si, 12.04 / 1.8).Text);
    }

    [Theory]
    [InlineData("evacuation.level", LimitKind.AtMost)]
    [InlineData("pressure-test.hold.time", LimitKind.AtLeast)]
    [InlineData("charge.validity.outdoor", LimitKind.Within)]
    [InlineData("charge.subcooling.tolerance", LimitKind.Within)]
    [InlineData("air.airflow.nominal", LimitKind.Target)]
    [InlineData("pressure-test.gas", LimitKind.Statement)]
    public void Its_kind_in_the_record(string id, LimitKind kind)
    {
        var statement = Resolver().Find(id)!.ToStatement(LimitWords.Us);
        Assert.Equal(kind, statement.Kind);
        Assert.Equal(LimitWords.In(LimitDefinitions.Get(id).Means), statement.Quantity);
    }

    [Fact]
    public void A_gauge_pressure_becomes_absolute_with_the_atmosphere_of_the_site()
    {
        var limit = Resolver().Find("safety.high-pressure-switch.setting")!;
        var atmosphere = Pressure.FromPascals(83427.6);
        var statement = limit.ToStatement(LimitWords.Us, atmosphere);
        Assert.Equal(83427.6 + (610 * 6894.757293168), statement.LowerSi!.Value, 1e-3);
        Assert.Equal(83427.6 + (650 * 6894.757293168), limit.ToTolerance(atmosphere).Upper!.Value, 1e-3);
    }

    [Fact]
    public void Every_limit_of_every_pack_has_a_text_in_both_systems()
    {
        foreach (var pack in LimitLibrary.EmbeddedNames.Select(name => LimitLibrary.Embedded.Find(name)!))
        {
            foreach (var id in pack.Limits.Keys)
            {
                foreach (var entry in pack.Limits[id])
                {
                    var limit = Of(pack, id, entry);
                    foreach (var text in new[] { LimitWords.Text(limit, UnitSystem.Us), LimitWords.Text(limit, UnitSystem.Si) })
                    {
                        Assert.NotEmpty(text);
                        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
                    }
                }
            }
        }
    }

    private static LimitResolver Resolver() => new(LimitLibrary.Embedded, [], ImmutableDictionary<string, MakerFigure>.Empty, Situation, new DecisionRuleChoice(null));

    private static Limit Of(LimitPack pack, string id, LimitEntry? entry = null)
    {
        entry ??= pack.Limits[id][0];
        return new Limit
        {
            Definition = LimitDefinitions.Get(id),
            Shape = entry.Shape,
            Tier = LimitTier.Maker,
            Pack = pack.Name,
            Basis = entry.Basis,
            Source = entry.SourceText(LimitWords.In),
            Mark = entry.Mark,
            Rule = entry.Rule,
            At = entry.At,
            Lower = entry.Lower,
            Upper = entry.Upper,
            Target = entry.Target,
            Statement = entry.Statement,
            With = entry.With,
        };
    }
}
