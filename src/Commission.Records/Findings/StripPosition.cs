namespace Commission.Records.Findings;

/// <summary>Where a value and its uncertainty lie on the scale of their own limit: 0 is the lower limit, 1 the upper.</summary>
/// <param name="Value">Position of the value.</param>
/// <param name="Low">Position of value − U; null without an uncertainty.</param>
/// <param name="High">Position of value + U; null without an uncertainty.</param>
/// <param name="LowerIsLimit">False when nothing is limited at 0 (the limit is "at most").</param>
/// <param name="UpperIsLimit">False when nothing is limited at 1 (the limit is "at least").</param>
public sealed record StripPosition(double Value, double? Low, double? High, bool LowerIsLimit, bool UpperIsLimit);
