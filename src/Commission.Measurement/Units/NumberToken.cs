namespace Commission.Measurement.Units;

/// <summary>A number as written.</summary>
/// <param name="Value">Its value.</param>
/// <param name="Decimals">Decimals written; zero for a fraction.</param>
/// <param name="Step">One step of its last digit; nothing for a fraction.</param>
/// <param name="Text">Canonical digits.</param>
/// <param name="Start">Where it starts.</param>
/// <param name="End">First character after it.</param>
internal readonly record struct NumberToken(double Value, int Decimals, double? Step, string Text, int Start, int End)
{
    public bool IsWhole => Step == 1;
}
