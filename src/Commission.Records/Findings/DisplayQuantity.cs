namespace Commission.Records.Findings;

/// <summary>A single quantity as it is kept and as it is printed. Pages print <see cref="Text"/> and compute nothing.</summary>
/// <param name="Si">Value in the coherent SI unit of its dimension (temperatures in kelvin, pressures absolute in pascal).</param>
/// <param name="Dimension">Name of the dimension, for example <c>temperature difference</c>.</param>
/// <param name="Unit">Symbol of the unit used for display, for example <c>°F</c>.</param>
/// <param name="Value">Value in <paramref name="Unit"/>, rounded as printed.</param>
/// <param name="Decimals">Digits after the decimal point as printed; 0 or more.</param>
/// <param name="Text">The printed form with its unit, for example <c>13.1 °F</c>.</param>
public sealed record DisplayQuantity(double Si, string Dimension, string Unit, double Value, int Decimals, string Text);
