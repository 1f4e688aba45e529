namespace Commission.Measurement.Units;

/// <summary>A unit that was read and where it ended.</summary>
internal sealed record UnitPart(Unit Unit, int End);
