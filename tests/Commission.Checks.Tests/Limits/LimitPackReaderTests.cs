using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Decisions;
using Xunit;
using DecisionRule = Commission.Measurement.Decisions.DecisionRule;

namespace Commission.Checks.Tests.Limits;

public sealed class LimitPackReaderTests
{
    private const string Head = "pack: aldermoor-oc-36\ntitle: Aldermoor OC-36\npublished by: Aldermoor\nedition: 2026\ndefaults: {basis: maker, mark: published}\n";

    [Fact]
    public void A_whole_pack()
    {
        var pack = PackText.Read(Head + """
            about: For the fixed orifice version.
            builds on: [california-title-24]
            limits:
              charge.subcooling: {target: 9 °F, tolerance: 3 °F, source: unit plate}
              evacuation.decay:
                at most: 1500 micron
                with: {after: 20 min}
                rule: guarded
                basis: installation manual
                mark: from memory
                source: manual p. 12
                note: second edition only
              evacuation.level:
                cases:
                  - when: {system: [split, heat pump], capacity: {more than: 5 ton, at most: 20 ton}, receiver: no}
                    at most: 400 micron
                    source: manual p. 13
                  - at most: 300 micron
                    source: manual p. 12
            required:
              - when: {work: new installation, phases: 3}
                checks: [evacuation.hold, {one of: [charge.superheat, charge.return-visit]}]
                photos: [gauge at end]
                because: the maker asks for them
            """);
        Assert.Equal(("aldermoor-oc-36", "Aldermoor OC-36", "Aldermoor", "2026", "For the fixed orifice version."), (pack.Name, LimitWords.In(pack.Title), LimitWords.In(pack.PublishedBy), LimitWords.In(pack.Edition), LimitWords.In(pack.About!)));
        Assert.Equal("california-title-24", Assert.Single(pack.BuildsOn).Name);

        var subcooling = Assert.Single(pack.Limits["charge.subcooling"]);
        Assert.Equal(LimitShape.Target, subcooling.Shape);
        Assert.Equal(9 / 1.8, subcooling.Target!.Si, 12);
        Assert.Equal(6 / 1.8, subcooling.Lower!.Si, 12);
        Assert.Equal(12 / 1.8, subcooling.Upper!.Si, 12);
        Assert.Equal((DecisionRule.Simple, "maker", "unit plate", "published"), (subcooling.Rule, subcooling.Basis, subcooling.Source, subcooling.Mark));
        Assert.Equal("pack.yaml:9:22", subcooling.At.ToString());

        var decay = Assert.Single(pack.Limits["evacuation.decay"]);
        Assert.Equal((DecisionRule.Guarded, "installation manual", "from memory", "second edition only"), (decay.Rule, decay.Basis, decay.Mark, LimitWords.In(decay.Note!)));
        Assert.Equal(1200, decay.With["after"].Si, 9);

        var split = new LimitSituation { System = "Split", Receiver = false, Capacity = 10 * 3516.85 };
        Assert.Equal("400 micron", pack.Find("evacuation.level", split)!.Upper!.Text);
        Assert.Equal("300 micron", pack.Find("evacuation.level", split with { Capacity = 30 * 3516.85 })!.Upper!.Text);
        Assert.Equal("300 micron", pack.Find("evacuation.level", split with { Receiver = null })!.Upper!.Text);
        Assert.Null(pack.Find("charge.superheat", split));

        var profile = Assert.Single(pack.Required);
        Assert.Equal(["evacuation.hold"], profile.Checks[0].OneOf);
        Assert.Equal(["charge.superheat", "charge.return-visit"], profile.Checks[1].OneOf);
        Assert.Equal([PhotoSubject.GaugeAtEnd], profile.Photos);
        Assert.True(profile.When.Hold(new LimitSituation { Work = "NewInstallation", Phases = 3 }));
        Assert.False(profile.When.Hold(new LimitSituation { Work = "NewInstallation", Phases = 1 }));
    }

    // What was written, and the one problem it gets. The schema refuses the first group as well.
    [Theory]
    [InlineData("limits:\n  evacuation.levle: {at most: 1 micron, source: p. 1}", "pack.yaml:7:3: \"evacuation.levle\" is not a limit this program knows. Did you mean \"evacuation.level\"?")]
    [InlineData("limits:\n  evacuation.level: {at mots: 1 micron, source: p. 1}", "pack.yaml:7:22: \"at mots\" is not a key of a limit. Did you mean \"at most\"?")]
    [InlineData("limits:\n  evacuation.level: {at most: 1 micron}", "pack.yaml:7:21: A limit has no \"source\". Add \"source:\" and its value.")]
    [InlineData("limits:\n  evacuation.level: {at least: 1 micron, source: p. 1}", "pack.yaml:7:32: \"evacuation.level\" is not written as \"at least\". It means: Pressure in the circuit at isolation, read at the system. Write \"at most\".")]
    [InlineData("limits:\n  evacuation.level: {source: p. 1}", "pack.yaml:7:21: \"evacuation.level\" has no figure. Write \"at most\".")]
    [InlineData("limits:\n  evacuation.level: {at most: 1 micron, source: p. 1, mark: surely}", "pack.yaml:7:61: \"surely\" is not a word for \"mark\". The words are published, from memory, common practice.")]
    [InlineData("limits:\n  evacuation.level: {at most: 1 micron, source: p. 1, when: {system: [slpit]}}", "pack.yaml:7:71: \"slpit\" is not a word for \"system\". Did you mean \"split\"?")]
    [InlineData("limits:\n  evacuation.level: {at most: 1 micron, source: p. 1, when: {sytem: [split]}}", "pack.yaml:7:62: \"sytem\" is not a key of a condition. Did you mean \"system\"?")]
    [InlineData("limits:\n  evacuation.level: {at most: 1 micron, source: p. 1, when: {system: []}}", "pack.yaml:7:70: \"system\" is an empty list. It would never apply. Name at least one word, or leave the key out.")]
    [InlineData("limits:\n  evacuation.level: {at most: 1 micron, source: p. 1, when: {capacity: {}}}", "pack.yaml:7:72: The condition on capacity has no bound. Write {at least: …}, {more than: …}, {at most: …} or {less than: …}.")]
    [InlineData("limits:\n  evacuation.level: 500 micron", "pack.yaml:7:21: Here stands \"500 micron\". A limit is a list of keys and values. Write each key on its own line, followed by a colon and its value.")]
    [InlineData("limits: [evacuation.level]", "pack.yaml:6:9: \"limits\" holds a list. A list of limits by id was expected.")]
    [InlineData("limts: {}", "pack.yaml:6:1: \"limts\" is not a key of a pack. Did you mean \"limits\"?")]
    [InlineData("required:\n  - {checks: [hold], because: why not}", "pack.yaml:7:15: \"hold\" is not the id of a check. Write it as phase.name, for example pressure-test.hold.")]
    [InlineData("required:\n  - {checks: [{one of: [charge.superheat]}], because: why not}", "pack.yaml:7:15: A choice needs at least two checks. Write {one of: [first, second]}.")]
    [InlineData("required:\n  - {photos: [gauge at ned], because: why not}", "pack.yaml:7:15: No photo shows \"gauge at ned\". Did you mean \"gauge at end\"?")]
    [InlineData("required:\n  - {checks: [evacuation.hold]}", "pack.yaml:7:5: A profile has no \"because\". Add \"because:\" and its value.")]
    public void What_schema_and_loader_both_refuse(string body, string problem)
    {
        var yaml = Head + body;
        Assert.Null(PackText.Read(yaml, out var problems));
        Assert.Equal([problem], problems);
        Assert.False(PackText.SchemaAccepts(yaml));
    }

    // These need units, ids or the rest of the pack: the loader knows them, a schema does not.
    [Theory]
    [InlineData("limits:\n  evacuation.level: {at most: 500 psi, source: p. 1}", "pack.yaml:7:31: \"500 psi\" does not say gauge or absolute.")]
    [InlineData("limits:\n  evacuation.level: {at most: 500, source: p. 1}", "pack.yaml:7:31:")]
    [InlineData("limits:\n  evacuation.level: {at most: \"5 micron +/- 1\", source: p. 1}", "pack.yaml:7:31: \"5 micron +/- 1\" carries an uncertainty. A limit is an exact number. Write the number alone, or \"tolerance:\" for a band.")]
    [InlineData("limits:\n  evacuation.decay: {at most: 500 micron, source: p. 1}", "pack.yaml:7:21: \"evacuation.decay\" needs \"after\" beside its figure. Add \"with: {after: …}\".")]
    [InlineData("limits:\n  evacuation.level: {at most: 500 micron, with: {after: 5 min}, source: p. 1}", "pack.yaml:7:49: \"evacuation.level\" has nothing beside its figure. Leave \"with\" out.")]
    [InlineData("limits:\n  charge.validity.outdoor: {within: 70 to 70 °F, source: p. 1}", "pack.yaml:7:37: Nothing lies within \"70 to 70 °F\". The first number has to be below the second, and both of the same kind.")]
    [InlineData("limits:\n  charge.subcooling.tolerance: {tolerance: 0 °F, source: p. 1}", "pack.yaml:7:44: A tolerance of \"0 °F\" leaves nothing. It is half a width, above zero.")]
    [InlineData("limits:\n  charge.subcooling: {target: 9 °F, within: 6 to 12 °F, source: p. 1}", "pack.yaml:7:22: \"charge.subcooling\" is written as \"within\" and \"target\". One form was expected. Write \"at least\", \"at most\", \"within\" or \"target\".")]
    [InlineData("limits:\n  instruments.calibration.interval: {at most: 12 min, source: p. 1}", "pack.yaml:7:47: \"12 min\" is not a span of the calendar. Write for example 12 months or 1 year.")]
    [InlineData("limits:\n  evacuation.level: {at most: 5 micron, source: p. 1, when: {capacity: {more than: 5 ton, less than: 2 ton}}}", "pack.yaml:7:72: Nothing meets the condition on capacity. The lower bound has to be below the upper one.")]
    [InlineData("limits:\n  evacuation.level: {at most: 5 micron, source: p. 1, when: {capacity: {more than: 5 ton, at least: 2 ton}}}", "pack.yaml:7:72: The condition on capacity has two bounds on one side. Keep one of them.")]
    [InlineData("limits:\n  evacuation.level:\n    cases:\n      - {at most: 5 micron, source: p. 1}\n      - {at most: 6 micron, source: p. 2, when: {system: split}}", "pack.yaml:10:9: This case is never reached. The case before it applies always. Put the case without \"when\" last.")]
    public void What_only_the_loader_can_refuse(string body, string problem)
    {
        Assert.Null(PackText.Read(Head + body, out var problems));
        Assert.StartsWith(problem, Assert.Single(problems), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_defaults_every_limit_has_to_say_what_it_rests_on()
    {
        Assert.Null(PackText.Read("pack: a\ntitle: A\npublished by: B\nedition: 1\nlimits:\n  evacuation.level: {at most: 1 micron, source: p. 1}\n", out var problems));
        Assert.Equal(
            [
                "pack.yaml:6:21: \"evacuation.level\" does not say what kind of document it rests on. Add \"basis:\" here or under \"defaults\".",
                "pack.yaml:6:21: \"evacuation.level\" does not say how sure the figure is. Add \"mark:\" here or under \"defaults\".",
            ],
            problems);
    }

    [Fact]
    public void All_faults_of_a_pack_come_at_once()
    {
        Assert.Null(PackText.Read("pack: Not A Name\ntitle: A\nlimits:\n  evacuation.level: {at most: 5 apples, source: p. 1}\n  air.airflow.minimun: {at least: 1, source: p. 1}\n", out var problems));
        Assert.Equal(7, problems.Count);
        Assert.Equal("pack.yaml:1:1: A pack has no \"published by\". Add \"published by:\" and its value.", problems[0]);
        Assert.Equal("pack.yaml:1:1: A pack has no \"edition\". Add \"edition:\" and its value.", problems[1]);
        Assert.Equal("pack.yaml:1:7: \"Not A Name\" is not a name for a pack. Lower-case letters, digits and hyphens were expected. Write for example aldermoor-oc-36.", problems[2]);
        Assert.Equal("pack.yaml:4:21: \"evacuation.level\" does not say what kind of document it rests on. Add \"basis:\" here or under \"defaults\".", problems[3]);
        Assert.Equal("pack.yaml:4:21: \"evacuation.level\" does not say how sure the figure is. Add \"mark:\" here or under \"defaults\".", problems[4]);
        Assert.StartsWith("pack.yaml:4:33:", problems[5], StringComparison.Ordinal);
        Assert.Equal("pack.yaml:5:3: \"air.airflow.minimun\" is not a limit this program knows. Did you mean \"air.airflow.minimum\"?", problems[6]);
    }

    [Fact]
    public void The_fault_of_a_quantity_is_placed_inside_it()
    {
        PackText.Read(Head + "limits:\n  evacuation.level:\n    at most: \"500 apples\"\n    source: p. 1\n", out var problems);
        Assert.StartsWith("pack.yaml:8:19:", Assert.Single(problems), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_not_YAML_has_its_first_fault_reported()
    {
        Assert.Null(PackText.Read("pack: {unfinished", out var problems));
        Assert.Single(problems);
    }

    [Fact]
    public void A_minimum_alone_serves_where_a_range_is_meant()
    {
        var pack = PackText.Read(Head + "limits:\n  charge.validity.outdoor: {at least: 60 °F, source: p. 1}\n");
        var entry = Assert.Single(pack.Limits["charge.validity.outdoor"]);
        Assert.Equal((LimitShape.AtLeast, null), (entry.Shape, entry.Upper));
    }
}
