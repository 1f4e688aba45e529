using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Fluids;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;

namespace Commission.Checks.PressureTest;

/// <summary>Whether an electronic detector could have met anything it reacts to: what stood in the circuit against what it is made for.</summary>
internal sealed class TracerSearch
{
    private const string Hydrogen = "hydrogen";
    private const string Helium = "helium";

    private TracerSearch(ImmutableArray<string> gases, bool isUnnamed)
    {
        Gases = gases;
        IsUnnamed = isUnnamed;
    }

    /// <summary>What a detector may react to: a tracer, or the test gas itself where it is none of the air's. Designations, <c>hydrogen</c>, <c>helium</c>.</summary>
    public ImmutableArray<string> Gases { get; }

    /// <summary>Whether there was a tracer, and nothing says which.</summary>
    public bool IsUnnamed { get; }

    /// <summary>Whether a detector had nothing to react to: nitrogen is four fifths of the air.</summary>
    public bool IsPlain => Gases.IsEmpty && !IsUnnamed;

    /// <summary>What stood in the circuit during a test.</summary>
    public static TracerSearch Of(CheckContext context, Jobs.Model.PressureTest test)
    {
        // Hydrogen, acetylene, oxygen and air are judged with the test gas.
        var gas = test.Gas.Value switch
        {
            TestGas.Helium => (string?)Helium,
            TestGas.CarbonDioxide => "R-744",
            TestGas.Refrigerant => context.Get<CircuitRefrigerant>().Designation,
            _ => null,
        };
        var tracer = test.Tracer is { } written ? Named(written.Gas.Value) : null;
        return new TracerSearch([.. new[] { gas, tracer }.OfType<string>()], tracer is null && (test.Tracer is not null || test.Gas.Value == TestGas.NitrogenWithTracer));
    }

    /// <summary>Whether a detector is made for something that stood in the circuit.</summary>
    /// <param name="detects">What the detector is made for, as written; not empty.</param>
    public bool IsMetBy(IEnumerable<string> detects) => detects.Any(d => Gases.Any(gas => IsOne(d, gas)));

    /// <summary>Whether a detector is made for a gas that is a tracer and nothing else.</summary>
    /// <param name="detects">What the detector is made for, as written.</param>
    public static bool IsForTracer(IEnumerable<string> detects) => detects.Any(d => Named(d) is Hydrogen or Helium);

    // A detector may be named by gas, by safety group or by a part of a blend.
    private static bool IsOne(string written, string gas) =>
        string.Equals(Named(written), gas, StringComparison.Ordinal)
        || (RefrigerantCatalogue.Find(gas) is { } info
            && (string.Equals(written, info.SafetyGroup?.Value, StringComparison.OrdinalIgnoreCase) || info.Composition.Any(c => string.Equals(c.Designation, Named(written), StringComparison.Ordinal))));

    // "5 % hydrogen" and "H2" are hydrogen; forming gas is hydrogen in nitrogen.
    private static string? Named(string written)
    {
        if (RefrigerantCatalogue.Find(written) is { } refrigerant)
            return refrigerant.Designation;
        foreach (var word in written.Split([' ', ',', '/', '%', '(', ')'], StringSplitOptions.RemoveEmptyEntries))
        {
            switch (word.ToUpperInvariant())
            {
                case "HYDROGEN" or "H2" or "FORMING":
                    return Hydrogen;
                case "HELIUM" or "HE":
                    return Helium;
            }

            if (RefrigerantCatalogue.Find(word) is { } named)
                return named.Designation;
        }

        return null;
    }
}
