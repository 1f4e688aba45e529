using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Xunit;

namespace Commission.Checks.Tests.Limits;

public sealed class EmbeddedPackTests
{
    public static TheoryData<string> Names => [.. LimitLibrary.EmbeddedNames];

    [Fact]
    public void The_packs_of_this_program() => Assert.Equal(
        [
            "acca-quality-installation", "air-to-water-heat-pump", "ansi-z21-47", "ashrae-15", "california-title-24", "california-title-24-rater",
            "common-practice", "en-378", "eu-f-gas", "half-torr", "hold-at-level", "iec-60335-2-40", "iec-60335-2-89", "photo-proof", "refrigeration", "resnet-310",
            "temperature-dependent-vacuum", "triple-evacuation", "us-epa-608", "us-guide-spec", "us-guide-spec-15730",
        ],
        LimitLibrary.EmbeddedNames);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_pack_carries_its_own_name_and_meets_the_schema(string name)
    {
        Assert.Equal(name, LimitLibrary.Embedded.Find(name)!.Name);
        Assert.True(PackText.SchemaAccepts(Repository.Read("src", "Commission.Checks", "Limits", "Packs", name + ".yaml")));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_limit_says_what_it_rests_on_where_it_is_printed_and_how_sure_it_is(string name)
    {
        var pack = LimitLibrary.Embedded.Find(name)!;
        Assert.True(pack.Limits.Count > 0 || !pack.Required.IsEmpty, "A pack that sets no limit asks for something.");
        Assert.All(pack.Required, profile => Assert.True(LimitWords.In(profile.Because).Length > 4));
        foreach (var entry in pack.Limits.SelectMany(limit => limit.Value))
        {
            Assert.Contains(entry.Mark, new[] { "published", "from memory", "common practice" });
            Assert.NotEmpty(entry.Basis);
            Assert.True(entry.SourceText(LimitWords.In).Length > 4, entry.At.ToString());

            // What rests on common practice alone has no published source, and what has none rests on it.
            Assert.Equal(string.Equals(entry.Mark, "common practice", StringComparison.Ordinal), string.Equals(entry.Basis, "common practice", StringComparison.Ordinal));
        }
    }

    // Who reads what a pack follows has to see which of it was read.
    [Fact]
    public void The_packs_of_laws_list_their_clauses_with_what_was_read()
    {
        foreach (var name in new[] { "eu-f-gas", "us-epa-608" })
        {
            var pack = LimitLibrary.Embedded.Find(name)!;
            Assert.All(pack.Clauses, c => Assert.Contains(c.Mark, PackClause.Marks));
            var sheet = Commission.Checks.Sheets.LimitSheets.One(name, Measurement.Units.UnitSystem.Si, Messages.Language.English)!;
            var shown = sheet.Parts.Single(p => p.Title == "What was read");
            Assert.Equal(pack.Clauses.Select(c => (c.Clause, LimitWords.In(c.Says), c.Mark)), shown.Rows.Select(r => (r[0], r[1], r[2])));
            Assert.Contains(sheet.Parts[0].Rows, r => r[0].Contains(LimitWords.In(pack.Edition), StringComparison.Ordinal));
        }

        // The articles that a limit of the pack or a check cites stand in the list.
        var european = string.Join(" ", LimitLibrary.Embedded.Find("eu-f-gas")!.Clauses.Select(c => c.Clause));
        foreach (var article in new[] { "4(5)", "5(1)", "5(6)", "6(1)", "7(1)", "7(2)", "8(6)", "11(5)", "12(3)", "12(7)", "13(3)", "13(4)", "13(5)", "2024/2215", "2024/2174", "1516/2007" })
            Assert.Contains(article, european, StringComparison.Ordinal);
        Assert.Contains(LimitLibrary.Embedded.Find("eu-f-gas")!.Clauses, c => c is { Clause: "(EU) 2026/1444", Mark: "not read" });
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_figure_is_a_number_and_no_range_is_empty(string name)
    {
        var pack = LimitLibrary.Embedded.Find(name)!;
        foreach (var (id, cases) in pack.Limits)
        {
            Assert.NotEmpty(cases);
            foreach (var entry in cases)
            {
                Assert.True(entry.Statement is not null || entry.Lower is not null || entry.Upper is not null || entry.Target is not null, id);
                foreach (var figure in new[] { entry.Lower, entry.Upper, entry.Target }.OfType<LimitFigure>().Concat(entry.With.Values))
                    Assert.True(double.IsFinite(figure.Si), id);
                if (entry is { Lower: { } lower, Upper: { } upper })
                    Assert.True(lower.Si < upper.Si, id);
                Assert.Equal(LimitDefinitions.Get(id).Companions.Select(companion => companion.Name).Order(StringComparer.Ordinal), entry.With.Keys);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_pack_it_builds_on_is_there(string name) =>
        Assert.All(LimitLibrary.Embedded.Find(name)!.BuildsOn, below => Assert.True(LimitLibrary.Embedded.Contains(below.Name)));

    [Fact]
    public void Every_limit_of_the_definitions_is_set_by_a_pack_or_waits_for_the_maker()
    {
        string[] makersOnly =
        [
            "air.airflow", "air.coil-drop", "air.filter-drop",
            "air.gas-heat.carbon-dioxide", "air.gas-heat.draft", "air.gas-heat.flame-signal", "air.gas-heat.flue-temperature", "air.gas-heat.inlet-pressure", "air.gas-heat.input", "air.gas-heat.manifold-pressure", "air.gas-heat.oxygen",
            "air.heat-rise", "air.outside-air.airflow", "air.outside-air.position", "air.temperature-split",
            "charge.approach", "charge.gas-cooler.outlet", "charge.gas-cooler.pressure", "charge.liquid-pressure", "charge.receiver-pressure", "charge.subcooling", "charge.superheat", "charge.total", "charge.vapor-pressure", "charge.weight.tolerance-mass",
            "electrical.compressor-current", "electrical.terminal-torque", "electrical.voltage",
            "functional.water.difference", "functional.water.flow", "functional.water.freezing", "functional.water.pressure", "functional.water.strainer-drop", "functional.water.volume",
            "piping.first-branch", "piping.height-difference", "piping.longest-run", "piping.total-index", "piping.total-length", "piping.traps",
            "pressure-test.level", "safety.room-area",
        ];
        var set = LimitLibrary.EmbeddedNames.SelectMany(name => LimitLibrary.Embedded.Find(name)!.Limits.Keys).ToHashSet(StringComparer.Ordinal);
        Assert.Equal(makersOnly, LimitDefinitions.All.Select(definition => definition.Id).Where(id => !set.Contains(id)));
    }

    [Fact]
    public void Safety_and_legal_maxima_of_common_practice_are_guarded()
    {
        string[] guarded =
        [
            "charge.carbon-dioxide.vapor-first", "electrical.conductor.factor", "electrical.insulation.minimum", "electrical.overcurrent.factor",
            "electrical.protective-earth", "electrical.voltage-unbalance.stop", "pressure-test.gas", "pressure-test.hold.loss",
            "pressure-test.joint-leak-check.sensitivity", "pressure-test.maximum-factor", "pressure-test.maximum-factor.weakest-part",
            "pressure-test.tracer.maximum", "refrigerant.cylinder.fill", "refrigerant.cylinder.filling-ratio", "safety.flammable.ignition-distance", "safety.high-pressure-switch.factor", "safety.relief-valve.factor",
        ];
        var pack = LimitLibrary.Embedded.Find(LimitPack.CommonPractice)!;
        Assert.Equal(guarded, pack.Limits.Where(limit => limit.Value.Any(entry => entry.Rule == Measurement.Decisions.DecisionRule.Guarded)).Select(limit => limit.Key).Order(StringComparer.Ordinal));
    }

    // A pack inside the program names its texts, so a name without a text would be printed; and a text that nothing names is read by nobody.
    [Fact]
    public void Every_text_of_the_packs_and_every_name_of_a_limit_stands_in_the_catalogue_and_no_other()
    {
        var packs = LimitLibrary.EmbeddedNames.Select(name => LimitLibrary.Embedded.Find(name)!).ToArray();
        var asked = LimitDefinitions.All.Select(definition => (Messages.Message?)definition.Means)
            .Concat(packs.SelectMany(pack => new[] { pack.Title, pack.PublishedBy, pack.Edition, pack.About }.Concat(pack.Clauses.Select(clause => clause.Says))))
            .Concat(packs.SelectMany(pack => pack.Limits.Values.SelectMany(cases => cases.SelectMany(entry => new[] { entry.Statement, entry.Note, entry.SourceInWords }))))
            .Concat(packs.SelectMany(pack => pack.Required.SelectMany(profile => profile.Checks.Select(choice => choice.Called).Append(profile.Because))))
            .OfType<Messages.Message>().ToArray();
        Assert.All(asked, message => Assert.Equal(LimitNotes.Catalogue, message.Phase));
        Assert.All(asked, message => Assert.True(Messages.MessageCatalogue.BuiltIn.Has(Messages.Language.English, message.Phase, message.Name), message.Name));
        var written = Messages.MessageCatalogue.Embedded($"en/{LimitNotes.Catalogue}.ftl")!.Split('\n').Where(line => line.Contains(" = ", StringComparison.Ordinal) && char.IsAsciiLetterLower(line[0])).Select(line => line[..line.IndexOf(' ', StringComparison.Ordinal)]);
        Assert.Equal(asked.Select(message => message.Name).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal), written.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_pack_that_is_not_there_is_not_found() => Assert.Null(LimitLibrary.Embedded.Find("no-such-pack"));
}
