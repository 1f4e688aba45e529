using System.Globalization;
using System.Text.Json;
using Commission.Fluids.Data;
using Commission.Fluids.Helmholtz;
using Xunit;

namespace Commission.Fluids.Tests;

/// <summary>The registry: every datum names its paper, every blend is whole, names are found, environmental numbers are the listed ones.</summary>
public sealed class CatalogueTests
{
    [Fact]
    public void There_are_58_pure_refrigerants_and_at_least_135_computable_blends()
    {
        Assert.True(RefrigerantCatalogue.All.Count(i => !i.IsBlend) >= 58);
        Assert.True(RefrigerantCatalogue.All.Count(i => i.IsBlend && i.IsComputable) >= 135);
    }

    [Fact]
    public void Every_fluid_file_names_its_paper_in_full()
    {
        foreach (var name in FluidFiles())
        {
            using var file = EmbeddedData.Open(name);
            var papers = PaperList.Read(file.RootElement.GetProperty("papers"));
            Assert.True(papers.Count > 0, name + " names no paper");
            foreach (var paper in papers)
                Whole(paper, name);
        }
    }

    [Theory]
    [InlineData("mixtures/pairs.json", "pairs")]
    [InlineData("mixtures/departures.json", "departures")]
    public void Every_pair_and_departure_names_its_paper_in_full(string resource, string list)
    {
        using var file = EmbeddedData.Open(resource);
        var papers = PaperList.Read(file.RootElement.GetProperty("papers")).ToDictionary(p => p.Key, StringComparer.Ordinal);
        foreach (var paper in papers.Values)
            Whole(paper, resource);
        HashSet<string> used = [];
        foreach (var entry in file.RootElement.GetProperty(list).EnumerateArray())
        {
            var key = entry.GetProperty("paper").GetString()!;
            Assert.True(papers.ContainsKey(key), $"{resource}: '{key}' is not cited");
            used.Add(key);
        }
        Assert.Equal(papers.Keys.Order(StringComparer.Ordinal), used.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_pair_names_fluids_that_exist_once_and_departures_that_exist()
    {
        HashSet<string> fluids = [.. RefrigerantCatalogue.All.Where(i => !i.IsBlend).Select(i => i.Designation)];
        using JsonDocument pairs = EmbeddedData.Open("mixtures/pairs.json"), departures = EmbeddedData.Open("mixtures/departures.json");
        HashSet<string> names = [.. departures.RootElement.GetProperty("departures").EnumerateArray().Select(d => d.GetProperty("name").GetString()!)];
        HashSet<string> seen = [];
        foreach (var pair in pairs.RootElement.GetProperty("pairs").EnumerateArray())
        {
            string a = pair.GetProperty("a").GetString()!, b = pair.GetProperty("b").GetString()!;
            Assert.Contains(a, fluids);
            Assert.Contains(b, fluids);
            Assert.True(seen.Add(string.CompareOrdinal(a, b) < 0 ? a + "+" + b : b + "+" + a), $"{a} + {b} stands twice");
            if (pair.TryGetProperty("departure", out var departure))
                Assert.Contains(departure.GetString()!, names);
        }
    }

    [Fact]
    public void Every_pure_refrigerant_of_the_index_has_its_file_and_every_file_its_entry()
    {
        List<string> expected = [.. RefrigerantCatalogue.All.Where(i => !i.IsBlend).Select(i => FluidFile.ResourceName(i.Designation)).Order(StringComparer.Ordinal)];
        Assert.Equal(expected, FluidFiles());
        foreach (var info in RefrigerantCatalogue.All.Where(i => !i.IsBlend))
        {
            var equation = FluidFile.Load(info.Designation);
            Assert.Equal(info.Designation, equation.Designation);
            Assert.Equal(info.ChemicalName, equation.ChemicalName);
            Assert.Equal(info.MolarMass!.Value, equation.MolarMass);
        }
    }

    [Fact]
    public void Every_blend_is_whole_and_computable_or_says_why_not()
    {
        HashSet<string> fluids = [.. RefrigerantCatalogue.All.Where(i => !i.IsBlend).Select(i => i.Designation)];
        foreach (var info in RefrigerantCatalogue.All.Where(i => i.IsBlend))
        {
            Assert.Equal(1, info.Composition.Sum(c => c.MassFraction), 1e-12);
            Assert.NotNull(info.CompositionSource);
            var known = info.Composition.All(c => fluids.Contains(c.Designation));
            Assert.True(known == info.IsComputable, info.Designation);
            if (!info.IsComputable)
                Assert.Contains(info.Composition.First(c => !fluids.Contains(c.Designation)).Designation, info.LacksEquationOf, StringComparison.Ordinal);
        }
        Assert.Equal(["R-412A"], RefrigerantCatalogue.All.Where(i => !i.IsComputable).Select(i => i.Designation));
    }

    [Theory]
    [InlineData("R410A", "R-410A")]
    [InlineData("R-410a", "R-410A")]
    [InlineData("r 410a", "R-410A")]
    [InlineData("410A", "R-410A")]
    [InlineData("HFC-32", "R-32")]
    [InlineData("propane", "R-290")]
    [InlineData("CO2", "R-744")]
    [InlineData("ammonia", "R-717")]
    [InlineData("R1234ze(E)", "R-1234ze(E)")]
    [InlineData("R-1234zeE", "R-1234ze(E)")]
    [InlineData("R-1234ze", "R-1234ze(E)")]
    [InlineData("HFO-1234yf", "R-1234yf")]
    [InlineData("RE170", "R-E170")]
    [InlineData("R-C318", "R-C318")]
    [InlineData("isobutane", "R-600a")]
    [InlineData("difluoromethane", "R-32")]
    [InlineData("R454B", "R-454B")]
    public void Names_as_people_write_them_are_found(string name, string designation) =>
        Assert.Equal(designation, RefrigerantCatalogue.Find(name)?.Designation);

    [Theory]
    [InlineData("R-999")]
    [InlineData("")]
    [InlineData("R")]
    [InlineData("water vapour")]
    public void Unknown_names_are_not(string name) => Assert.Null(RefrigerantCatalogue.Find(name));

    // Composition-weighted GWP on AR4 and AR5, to the digits of the table it was checked against (40 CFR 98 Table A-1 for the HFCs,
    // IPCC AR5 from memory). R-449A comes to 1397.047; the table's 1397.1 is a slip of its last digit.
    [Theory]
    [InlineData("R-22", 1810, 1760)]
    [InlineData("R-32", 675, 677)]
    [InlineData("R-134a", 1430, 1300)]
    [InlineData("R-404A", 3921.6, 3942.8)]
    [InlineData("R-407A", 2107.0, 1923.4)]
    [InlineData("R-407C", 1773.85, 1624.2)]
    [InlineData("R-407F", 1824.5, 1674.1)]
    [InlineData("R-410A", 2087.5, 1923.5)]
    [InlineData("R-438A", 2264.5, 2058.7)]
    [InlineData("R-448A", 1387.1, 1273.5)]
    [InlineData("R-449A", 1397.0, 1281.9)]
    [InlineData("R-452B", 698.3, 675.8)]
    [InlineData("R-454A", 238.9, 237.6)]
    [InlineData("R-454B", 466.3, 466.8)]
    [InlineData("R-454C", 148.3, 146.3)]
    [InlineData("R-455A", 148.2, 146.3)]
    [InlineData("R-466A", 733.4, 696.4)]
    [InlineData("R-513A", 631.4, 572.6)]
    [InlineData("R-515B", 293.0, 299.1)]
    public void Global_warming_potential(string designation, double ar4, double ar5)
    {
        var info = RefrigerantCatalogue.Find(designation)!;
        Assert.Equal(ar4, info.GwpAr4!.Value, 0.0501);
        Assert.Equal(ar5, info.GwpAr5!.Value, 0.0501);
    }

    // Safety groups of ANSI/ASHRAE 34, from memory.
    [Theory]
    [InlineData("R-22", "A1")]
    [InlineData("R-32", "A2L")]
    [InlineData("R-290", "A3")]
    [InlineData("R-410A", "A1")]
    [InlineData("R-454B", "A2L")]
    [InlineData("R-466A", "A1")]
    [InlineData("R-717", "B2L")]
    [InlineData("R-1234yf", "A2L")]
    public void Safety_group(string designation, string group)
    {
        var safety = RefrigerantCatalogue.Find(designation)!.SafetyGroup;
        Assert.Equal(group, safety?.Value);
        Assert.Equal("from memory", safety?.Mark);
    }

    [Fact]
    public void Concentration_limits_are_marked_unconfirmed()
    {
        var limit = RefrigerantCatalogue.Find("R-32")!.ConcentrationLimit!;
        Assert.Equal(0.077, limit.Value);
        Assert.Equal("from memory, unconfirmed", limit.Mark);
        Assert.Equal(0.307, RefrigerantCatalogue.Find("R-32")!.LowerFlammabilityLimit!.Value);
    }

    [Fact]
    public void The_catalogue_reads_no_equation()
    {
        // The index alone answers: names, shares, molar mass.
        var info = RefrigerantCatalogue.Find("R-454B")!;
        Assert.Equal("R-32/1234yf (68.9/31.1 % by mass)", info.CompositionText);
        Assert.Equal(62.6136, info.MolarMass!.Value * 1000, 0.00005);
    }

    [Fact]
    public void Loading_an_unknown_or_incomputable_refrigerant_is_a_fault_of_the_caller()
    {
        Assert.Throws<ArgumentException>(() => Refrigerant.Load("R-999"));
        Assert.Contains("R-143b", Assert.Throws<ArgumentException>(() => Refrigerant.Load("R-412A")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_blend_lists_each_paper_once_and_its_estimated_pairs()
    {
        var fluid = Fluids.Get("R-438A");
        Assert.Equal(
            ["R-32 + R-601a: parameters of R-32 + R-600a", "R-125 + R-601a: parameters of R-125 + R-600a", "R-134a + R-601a: parameters of R-134a + R-600a"],
            fluid.EstimatedPairs.ToArray());
        Assert.Equal(["R-125 + R-22: Lorentz–Berthelot"], Fluids.Get("R-402A").EstimatedPairs.ToArray());
        Assert.Equal(fluid.Papers.Length, fluid.Papers.Select(p => p.Key).Distinct(StringComparer.Ordinal).Count());
        Assert.Contains(fluid.Papers, p => p.Authors.Contains("Tillner-Roth", StringComparison.Ordinal));
        Assert.Contains(fluid.Papers, p => p.Authors.Contains("Bell", StringComparison.Ordinal));
        Assert.Empty(Fluids.Get("R-410A").EstimatedPairs);
    }

    private static string[] FluidFiles() =>
        [.. typeof(Refrigerant).Assembly.GetManifestResourceNames().Where(n => n.StartsWith("fluids/", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    private static void Whole(Paper paper, string where)
    {
        var what = string.Create(CultureInfo.InvariantCulture, $"{where}: {paper.Key}");
        Assert.True(paper.Authors.Length > 3, what + " has no authors");
        Assert.True(paper.Title.Length > 5, what + " has no title");
        Assert.True(paper.Year.Length >= 4 && char.IsAsciiDigit(paper.Year[0]), what + " has no year");
        Assert.True(paper.PublishedIn.Length > 0, what + " does not say where it appeared");
        Assert.DoesNotContain('{', paper.Citation);
        Assert.DoesNotContain('\\', paper.Citation);
    }
}
