using Commission.Checks.Charge;

namespace Commission.Checks.Refrigerants;

/// <summary>Refrigerant that went into the circuit or came out of it.</summary>
/// <param name="Name">What it was: <c>charged</c>, <c>recovered</c>.</param>
/// <param name="Sign">Plus one into the circuit, minus one out of it.</param>
/// <param name="Cylinder">The cylinder it came from or went to; null when the job does not say.</param>
/// <param name="Mass">How much, kg, never negative by itself; null when it was not weighed.</param>
/// <param name="Before">What the scale showed before, as written; empty when there is none.</param>
/// <param name="After">What it showed after.</param>
/// <param name="Time">When, as written; empty when the job does not say.</param>
internal sealed record Movement(string Name, int Sign, string? Cylinder, MassNumber? Mass, string Before = "", string After = "", string Time = "");
