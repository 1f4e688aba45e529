using System.Text.Json;
using Commission.Fluids.Helmholtz;

namespace Commission.Fluids.Data;

/// <summary>Reads an equation of state from its data file.</summary>
internal static class FluidFile
{
    /// <summary>The built-in equation of a pure refrigerant, e.g. "R-1234ze(E)".</summary>
    public static EquationOfState Load(string designation)
    {
        using var document = EmbeddedData.Open(ResourceName(designation));
        return Read(document.RootElement);
    }

    /// <summary>The data file of a designation: R-1234ze(E) → fluids/r-1234zee.json.</summary>
    public static string ResourceName(string designation) =>
        "fluids/" + designation.ToLowerInvariant().Replace("(", string.Empty, StringComparison.Ordinal).Replace(")", string.Empty, StringComparison.Ordinal) + ".json";

    public static EquationOfState Read(JsonElement file)
    {
        var critical = file.GetProperty("critical point");
        var reducing = file.GetProperty("reducing state");
        var auxiliary = file.GetProperty("ancillaries, starting guesses only");
        var reducingTemperature = reducing.Number("temperature K");
        var pseudoPure = auxiliary.TryGetProperty("bubble pressure", out var pressure);
        if (!pseudoPure)
            pressure = auxiliary.GetProperty("vapor pressure");

        List<IdealTerms> ideal = [];
        foreach (var term in file.GetProperty("ideal gas").EnumerateArray())
            ideal.Add(ReadIdeal(term, reducingTemperature));

        return new EquationOfState
        {
            Designation = file.Text("designation"),
            ChemicalName = file.Text("chemical name"),
            Papers = PaperList.Read(file.GetProperty("papers")),
            GasConstant = file.Number("gas constant J/(mol K)"),
            MolarMass = file.Number("molar mass kg/mol"),
            LowestTemperature = file.Number("lowest temperature K"),
            HighestTemperature = file.Number("highest temperature K"),
            HighestPressure = file.Number("highest pressure Pa"),
            CriticalTemperature = critical.Number("temperature K"),
            CriticalPressure = critical.Number("pressure Pa"),
            CriticalDensity = critical.Number("density mol/m3"),
            ReducingTemperature = reducingTemperature,
            ReducingDensity = reducing.Number("density mol/m3"),
            AcentricFactor = file.Number("acentric factor"),
            Ideal = [.. ideal],
            Residual = new HelmholtzFunction(ReadResidual(file.GetProperty("residual"))),
            VaporPressure = ReadAncillary(pressure, "reducing value Pa"),
            DewPressure = pseudoPure ? ReadAncillary(auxiliary.GetProperty("dew pressure"), "reducing value Pa") : null,
            LiquidDensity = ReadAncillary(auxiliary.GetProperty("liquid density"), "reducing value mol/m3"),
            VaporDensity = ReadAncillary(auxiliary.GetProperty("vapor density"), "reducing value mol/m3"),
        };
    }

    private static ResidualTerms[] ReadResidual(JsonElement list)
    {
        var kinds = new ResidualTerms[list.GetArrayLength()];
        var i = 0;
        foreach (var term in list.EnumerateArray())
            kinds[i++] = ReadResidualKind(term);
        return kinds;
    }

    private static ResidualTerms ReadResidualKind(JsonElement term)
    {
        var n = term.Doubles("n");
        var kind = term.Text("kind");
        return kind switch
        {
            "Power" => new PowerTerms(n, term.Doubles("t"), term.Integers("d"), term.Integers("l")),
            "Exponential" => new ExponentialTerms(n, term.Doubles("t"), term.Integers("d"), term.Integers("l"), term.Doubles("g")),
            "Gaussian" => new GaussianTerms(n, term.Doubles("t"), term.Integers("d"), term.Doubles("eta"), term.Doubles("epsilon"), term.Doubles("beta"), term.Doubles("gamma")),
            "GaoB" => new GaoBTerms(n, term.Doubles("t"), term.Integers("d"), term.Doubles("eta"), term.Doubles("epsilon"), term.Doubles("beta"), term.Doubles("gamma"), term.Doubles("b")),
            "Lemmon2005" => new Lemmon2005Terms(n, term.Doubles("t"), term.Integers("d"), term.Integers("l"), term.Doubles("m")),
            "NonAnalytic" => new NonAnalyticTerms(n, term.Doubles("a"), term.Doubles("b"), term.Doubles("beta"), term.Doubles("A"), term.Doubles("B"), term.Doubles("C"), term.Doubles("D")),
            _ => throw new InvalidOperationException($"The data file has a residual term of the unknown kind '{kind}'."),
        };
    }

    private static IdealTerms ReadIdeal(JsonElement term, double reducingTemperature)
    {
        var kind = term.Text("kind");
        switch (kind)
        {
            case "Lead":
            case "EnthalpyEntropyOffset":
                return new LeadTerm(term.Number("a1"), term.Number("a2"));
            case "LogTau":
                return new LogTauTerm(term.Number("a"));
            case "Power":
                return new IdealPowerTerms(term.Doubles("n"), term.Doubles("t"));
            case "PlanckEinstein":
                return PlanckEinsteinTerms.Usual(term.Doubles("n"), term.Doubles("theta / reducing temperature"));
            case "PlanckEinsteinGeneralized":
                return new PlanckEinsteinTerms(term.Doubles("n"), term.Doubles("theta / reducing temperature"), term.Doubles("c"), term.Doubles("d"));
            case "PlanckEinsteinFunctionT":
                var theta = term.Doubles("theta K");
                for (var k = 0; k < theta.Length; k++)
                    theta[k] /= reducingTemperature;
                return PlanckEinsteinTerms.Usual(term.Doubles("n"), theta);
            case "CP0Constant":
                return new HeatCapacityPolynomialTerms([term.Number("cp0/R")], [0], term.Number("T0 K"), reducingTemperature);
            case "CP0PolyT":
                return new HeatCapacityPolynomialTerms(term.Doubles("c"), term.Doubles("t"), term.Number("T0 K"), reducingTemperature);
            default:
                throw new InvalidOperationException($"The data file has an ideal-gas term of the unknown kind '{kind}'.");
        }
    }

    private static Ancillary ReadAncillary(JsonElement a, string value) => new(
        a.Text("form") switch
        {
            "exp(T_r/T*sum)" => AncillaryForm.ExponentialOfReduced,
            "exp(sum)" => AncillaryForm.Exponential,
            _ => AncillaryForm.Linear,
        },
        a.Number("reducing temperature K"),
        a.Number(value),
        a.Doubles("n"),
        a.Doubles("t"));
}

/// <summary>Opens the data files that are built into the assembly.</summary>
internal static class EmbeddedData
{
    /// <summary>Parses the file of this name, e.g. <c>fluids/r-32.json</c>. A missing file is a fault of the build and throws.</summary>
    public static JsonDocument Open(string name)
    {
        using var stream = typeof(EmbeddedData).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The data file '{name}' is not built into the assembly.");
        return JsonDocument.Parse(stream);
    }

    /// <summary>An array of numbers as doubles.</summary>
    public static double[] Doubles(this JsonElement parent, string property)
    {
        var array = parent.GetProperty(property);
        var values = new double[array.GetArrayLength()];
        var i = 0;
        foreach (var item in array.EnumerateArray())
            values[i++] = item.GetDouble();
        return values;
    }

    /// <summary>An array of whole numbers.</summary>
    public static int[] Integers(this JsonElement parent, string property)
    {
        var array = parent.GetProperty(property);
        var values = new int[array.GetArrayLength()];
        var i = 0;
        foreach (var item in array.EnumerateArray())
            values[i++] = item.GetInt32();
        return values;
    }

    public static double Number(this JsonElement parent, string property) => parent.GetProperty(property).GetDouble();

    public static string Text(this JsonElement parent, string property) => parent.GetProperty(property).GetString()!;

    public static string? OptionalText(this JsonElement parent, string property) =>
        parent.TryGetProperty(property, out var value) ? value.GetString() : null;
}

/// <summary>Reads the list of papers of a data file.</summary>
internal static class PaperList
{
    public static IReadOnlyList<Paper> Read(JsonElement list)
    {
        List<Paper> papers = new(list.GetArrayLength());
        foreach (var p in list.EnumerateArray())
        {
            papers.Add(new Paper(
                p.Text("key"),
                p.Text("authors"),
                p.Text("title"),
                p.Text("year"),
                p.Text("published in"),
                p.OptionalText("volume"),
                p.OptionalText("pages"),
                p.OptionalText("doi")));
        }
        return papers;
    }
}
