using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Source;
using Commission.Source.Problems;
using Xunit;

namespace Commission.Checks.Tests.Limits;

public sealed class PackSelectionTests
{
    private const string Own = "pack: aldermoor\ntitle: Aldermoor OC-36\npublished by: Aldermoor\nedition: 2026\ndefaults: {basis: maker, mark: published}\nlimits:\n  evacuation.level: {at most: 400 micron, source: manual p. 12}\n";

    [Fact]
    public void Names_and_files_in_the_order_written_each_once()
    {
        var selection = Select(out var problems, Own, "ashrae-15", "aldermoor.yaml", "ashrae-15");
        Assert.Empty(problems);
        Assert.Equal(["ashrae-15", "aldermoor"], selection.Names);
        Assert.Equal("Aldermoor OC-36", selection.Library.Find("aldermoor")!.Title);
    }

    [Fact]
    public void A_misspelt_name_gets_the_nearest()
    {
        var selection = Select(out var problems, Own, "ashrea-15", "refrigeration");
        Assert.Equal(["job.yaml:20:10: There is no limit pack \"ashrea-15\". Did you mean \"ashrae-15\"?"], problems);
        Assert.Equal(["refrigeration"], selection.Names);
    }

    [Fact]
    public void A_name_near_nothing_gets_the_list()
    {
        Select(out var problems, Own, "whatever-the-boss-says");
        Assert.StartsWith("job.yaml:20:10: There is no limit pack \"whatever-the-boss-says\". The packs are acca-quality-installation, air-to-water-heat-pump, ", Assert.Single(problems), StringComparison.Ordinal);
        Assert.EndsWith("us-guide-spec-15730; a pack of your own is named by its file.", Assert.Single(problems), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_cannot_be_opened_is_left_to_whoever_opens_it()
    {
        var selection = PackSelection.Of([new Given<string>("gone.yml", new SourceLocation("job.yaml", 20, 10), "gone.yml")], _ => null, new ProblemList());
        Assert.Empty(selection.Names);
    }

    [Fact]
    public void A_pack_of_a_job_may_not_take_the_name_of_another()
    {
        var selection = Select(out var problems, Own.Replace("pack: aldermoor", "pack: ashrae-15", StringComparison.Ordinal), "aldermoor.yaml");
        Assert.Equal(["aldermoor.yaml: The name \"ashrae-15\" is taken by another pack. Give this pack a name of its own."], problems);
        Assert.Empty(selection.Names);
    }

    [Fact]
    public void A_pack_may_only_build_on_packs_that_are_there()
    {
        Select(out var problems, "builds on: [ashrae-51]\n" + Own, "aldermoor.yaml");
        Assert.Equal(["aldermoor.yaml:1:13: There is no limit pack \"ashrae-51\" to build on. Did you mean \"ashrae-15\"?"], problems);
    }

    [Fact]
    public void Faults_in_a_pack_file_are_placed_in_that_file()
    {
        Select(out var problems, Own.Replace("400 micron", "400", StringComparison.Ordinal), "aldermoor.yaml");
        Assert.StartsWith("aldermoor.yaml:7:31:", Assert.Single(problems), StringComparison.Ordinal);
    }

    private static PackSelection Select(out IReadOnlyList<string> problems, string file, params string[] names)
    {
        var list = new ProblemList();
        var selection = PackSelection.Of(
            names.Select(name => new Given<string>(name, new SourceLocation("job.yaml", 20, 10), name)),
            given => PackText.Source(file, given.Value),
            list);
        problems = [.. list.Sorted().Select(problem => problem.ToString())];
        return selection;
    }
}
