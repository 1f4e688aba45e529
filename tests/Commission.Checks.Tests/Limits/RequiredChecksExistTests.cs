using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Recording;
using Xunit;

namespace Commission.Checks.Tests.Limits;

/// <summary>A pack may only ask for what some check can answer.</summary>
public sealed class RequiredChecksExistTests
{
    [Fact]
    public void Every_check_that_an_embedded_pack_requires_is_in_the_catalogue()
    {
        var asked = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var name in LimitLibrary.EmbeddedNames)
        {
            foreach (var id in LimitLibrary.Embedded.Find(name)!.Required.SelectMany(profile => profile.Checks).SelectMany(choice => choice.OneOf))
                asked.Add(id);
        }

        Assert.True(asked.Count > 20);
        Assert.All(asked, id => Assert.NotNull(CheckCatalogue.Find(id)));
    }

    [Fact]
    public void A_unit_in_the_attic_is_asked_for_its_water_and_a_heat_pump_for_both_modes()
    {
        var attic = Ids(new LimitSituation { Work = "new installation", System = "split", Place = "Attic" });
        Assert.Contains("functional.condensate", attic);
        Assert.Contains("functional.float-switch", attic);
        Assert.DoesNotContain("functional.condensate", Ids(new LimitSituation { Work = "new installation", System = "split", Place = "Basement" }));
        Assert.DoesNotContain("functional.condensate", Ids(new LimitSituation { Work = "seasonal check", System = "split", Place = "Attic" }));
        var pump = Ids(new LimitSituation { Work = "new installation", System = "heat pump" });
        Assert.All(["functional.thermostat-calls", "functional.reversing-valve"], id => Assert.Contains(id, pump));

        // A defrost cannot be called up on a warm day, and many have no auxiliary heat (common practice, no source).
        Assert.All(["functional.defrost", "functional.auxiliary-heat"], id => Assert.DoesNotContain(id, pump));
    }

    [Fact]
    public void The_attic_counts_when_one_of_several_units_stands_there()
    {
        string? Place(string indoor) => LimitSituation.Of(JobText.Read(JobLines.Of(equipment: $", indoor: {indoor}"))).Place;
        Assert.Equal("Attic", Place("[{id: A, place: attic}, {id: B, place: room}]"));
        Assert.Equal("Room", Place("[{id: A, place: room}, {id: B, place: room}]"));
        Assert.Null(Place("[{id: A, place: closet}, {id: B, place: room}]"));
        Assert.Null(Place("{maker: Aldermoor}"));
    }

    private static List<string> Ids(LimitSituation situation) =>
        [.. new LimitResolver(LimitLibrary.Embedded, [], ImmutableDictionary<string, MakerFigure>.Empty, situation, new DecisionRuleChoice(null)).Required().Checks.SelectMany(check => check.Choice.OneOf)];
}
