using Commission.Measurement.Decisions;

namespace Commission.Records.Series;

/// <summary>One row of the strip chart: a value and its uncertainty on the scale of its own limit (0 lower, 1 upper).</summary>
/// <param name="Label">Title of the check.</param>
/// <param name="Value">Position of the value.</param>
/// <param name="Low">Position of value − U; null without an uncertainty.</param>
/// <param name="High">Position of value + U; null without an uncertainty.</param>
/// <param name="Verdict">The verdict.</param>
/// <param name="Text">Value, U and limit as printed beside the row.</param>
/// <param name="LowerIsLimit">False when nothing is limited at 0.</param>
/// <param name="UpperIsLimit">False when nothing is limited at 1.</param>
public sealed record FigureBar(
    string Label,
    double Value,
    double? Low,
    double? High,
    Verdict Verdict,
    string Text,
    bool LowerIsLimit = true,
    bool UpperIsLimit = true);
