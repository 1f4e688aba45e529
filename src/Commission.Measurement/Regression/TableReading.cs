using Commission.Measurement.Uncertainty;

namespace Commission.Measurement.Regression;

/// <summary>What a table says at a place.</summary>
/// <param name="Value">The value with the uncertainty of where it was read; nothing when the table says nothing there.</param>
/// <param name="Miss">Why there is no value.</param>
public sealed record TableReading(Uncertain? Value, TableMiss Miss)
{
    internal static TableReading Missing(TableMiss miss) => new(null, miss);
}
