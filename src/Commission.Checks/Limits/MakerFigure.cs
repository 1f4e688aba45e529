namespace Commission.Checks.Limits;

/// <summary>A figure a job gives for a limit.</summary>
/// <param name="Limit">The figure as a limit; its decision rule is set by the resolver.</param>
/// <param name="HasSource">Whether the job says where it is printed. A figure without a source is the crew's own target: it may ask more than the published limit, not less.</param>
internal sealed record MakerFigure(Limit Limit, bool HasSource);
