using System.Globalization;

namespace Commission.Source;

/// <summary>Where something was written: a file, a line and a column.</summary>
/// <param name="File">The file as the user named it, or relative to the job's folder.</param>
/// <param name="Line">Line, counted from 1; 0 when the whole file is meant.</param>
/// <param name="Column">Column in UTF-16 units, counted from 1; 0 when the whole line is meant.</param>
public readonly record struct SourceLocation(string File, int Line, int Column) : IComparable<SourceLocation>
{
    /// <summary>The place of a whole file, for a fault that no line can be blamed for.</summary>
    /// <param name="file">The file as the user named it.</param>
    /// <returns>A location without line and column.</returns>
    public static SourceLocation WholeFile(string file) => new(file, 0, 0);

    /// <summary>Orders by file (ordinal), then line, then column.</summary>
    /// <param name="other">The location to compare with.</param>
    /// <returns>Negative, zero or positive as this place comes before, at or after the other.</returns>
    public int CompareTo(SourceLocation other)
    {
        var byFile = string.CompareOrdinal(File, other.File);
        if (byFile != 0)
            return byFile;
        var byLine = Line.CompareTo(other.Line);
        return byLine != 0 ? byLine : Column.CompareTo(other.Column);
    }

    /// <summary>Compiler style: <c>job.yaml:52:31</c>; <c>job.yaml:52</c> without a column, <c>job.yaml</c> without a line.</summary>
    /// <returns>The place as text.</returns>
    public override string ToString() => (Line, Column) switch
    {
        ( <= 0, _) => File,
        (_, <= 0) => string.Create(CultureInfo.InvariantCulture, $"{File}:{Line}"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{File}:{Line}:{Column}"),
    };
}
