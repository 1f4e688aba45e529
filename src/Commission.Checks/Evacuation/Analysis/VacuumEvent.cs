namespace Commission.Checks.EvacuationAnalysis;

/// <summary>One event written beside a vacuum log.</summary>
/// <param name="Time">On the clock of the log, s.</param>
/// <param name="Kind">What happened.</param>
public readonly record struct VacuumEvent(double Time, VacuumEventKind Kind);
