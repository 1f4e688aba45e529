namespace Commission.Checks.Tests.Coverage;

/// <summary>What the program says of a quantity of one job, and what is true.</summary>
/// <param name="Quantity">Its name in the table.</param>
/// <param name="Truth">The true value, SI.</param>
/// <param name="Value">The estimate, SI.</param>
/// <param name="Expanded">Its U, SI.</param>
/// <param name="Drivers">What moves its doubt, for bins.</param>
/// <param name="Kinds">What was checked and how it was read, for bins.</param>
internal sealed record Outcome(string Quantity, double Truth, double Value, double Expanded, (string Name, double Value)[] Drivers, (string Name, string Kind)[] Kinds)
{
    public double Error => Value - Truth;

    public bool IsCovered => Math.Abs(Error) <= Expanded;
}

/// <summary>A printed probability of conformity, and whether the true value conforms.</summary>
/// <param name="Quantity">What is judged.</param>
/// <param name="Probability">As the finding has it.</param>
/// <param name="Conforms">The truth.</param>
internal sealed record Forecast(string Quantity, double Probability, bool Conforms);

/// <summary>What one job gave.</summary>
internal sealed record JobOutcome(IReadOnlyList<Outcome> Outcomes, IReadOnlyList<Forecast> Forecasts);
