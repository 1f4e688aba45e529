using System.Collections.Immutable;
using Commission.Source;

namespace Commission.Records;

/// <summary>What job this is: the head of page 1.</summary>
public sealed record JobHeader
{
    /// <summary>The job's own identifier.</summary>
    public required string Id { get; init; }

    /// <summary>Kind of work, for example <c>new installation</c>.</summary>
    public required string Work { get; init; }

    /// <summary>Date of the work as printed.</summary>
    public required string Date { get; init; }

    /// <summary>Name of the site.</summary>
    public required string Site { get; init; }

    /// <summary>One line that names the system, for example <c>Split system, R-454B, 3 ton</c>.</summary>
    public string System { get; init; } = "";

    /// <summary>The crew's own notes; empty for none.</summary>
    public string Notes { get; init; } = "";

    /// <summary>Site, people, equipment and nameplate as label and value.</summary>
    public ImmutableArray<HeaderGroup> Groups { get => field.IsDefault ? [] : field; init; }
}

/// <summary>A titled group of header lines, for example the outdoor unit.</summary>
/// <param name="Title">Title of the group.</param>
/// <param name="Rows">Its lines in order.</param>
public sealed record HeaderGroup(string Title, ImmutableArray<LabelValue> Rows)
{
    /// <summary>Its lines in order.</summary>
    public ImmutableArray<LabelValue> Rows { get => field.IsDefault ? [] : field; init; } = Rows;
}

/// <summary>A line of the header: a label and what was written for it.</summary>
/// <param name="Label">Label in the trade's words.</param>
/// <param name="Value">Value as printed.</param>
/// <param name="At">Where it was written; null when it was worked out.</param>
public sealed record LabelValue(string Label, string Value, SourceLocation? At = null);
