using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Source;
using Xunit;

namespace Commission.Checks.Tests.Limits;

public sealed class LimitLibraryTests
{
    private const string Own = "pack: aldermoor\ntitle: Aldermoor OC-36\npublished by: Aldermoor\nedition: 2026\ndefaults: {basis: maker, mark: published}\nlimits:\n  evacuation.level: {at most: 400 micron, source: manual p. 12}\n";

    [Fact]
    public void A_pack_of_a_job_is_found_by_its_name_and_by_its_file()
    {
        var library = With(Own, out var problems);
        Assert.Empty(problems);
        Assert.Equal("Aldermoor OC-36", LimitWords.In(library.Find("aldermoor")!.Title));
        Assert.Same(library.Find("aldermoor"), library.Find("packs/aldermoor.yaml"));
        Assert.True(library.Contains("aldermoor"));
        Assert.Null(LimitLibrary.Embedded.Find("aldermoor"));
        Assert.Contains("aldermoor", library.AllNames());
        Assert.Contains("ashrae-15", library.AllNames());
    }

    [Fact]
    public void A_pack_of_a_job_may_not_take_the_name_of_another()
    {
        var library = With(Own.Replace("pack: aldermoor", "pack: ashrae-15", StringComparison.Ordinal), out var problems);
        Assert.Equal(["packs/aldermoor.yaml: The name \"ashrae-15\" is taken by another pack. Give this pack a name of its own."], problems);
        Assert.Same(LimitLibrary.Embedded, library);
    }

    [Fact]
    public void A_pack_may_only_build_on_packs_that_are_there()
    {
        With("builds on: [ashrae-51]\n" + Own, out var problems);
        Assert.Equal(["packs/aldermoor.yaml:1:13: There is no limit pack \"ashrae-51\" to build on. Did you mean \"ashrae-15\"?"], problems);
        With("builds on: [nothing like it]\n" + Own, out problems);
        Assert.StartsWith("packs/aldermoor.yaml:1:13: There is no limit pack \"nothing like it\" to build on. The packs are acca-quality-installation, ", Assert.Single(problems), StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_in_a_pack_file_are_placed_in_that_file()
    {
        With(Own.Replace("400 micron", "400", StringComparison.Ordinal), out var problems);
        Assert.StartsWith("packs/aldermoor.yaml:7:31:", Assert.Single(problems), StringComparison.Ordinal);
    }

    internal static LimitLibrary With(string yaml, out IReadOnlyList<string> problems)
    {
        var list = new ProblemList();
        var library = LimitLibrary.Embedded.With(PackText.Source(yaml, "packs/aldermoor.yaml"), list, out _);
        problems = [.. list.Sorted().Select(problem => problem.ToString())];
        return library;
    }
}
