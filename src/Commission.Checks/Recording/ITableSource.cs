using Commission.Records;

namespace Commission.Checks.Recording;

/// <summary>Makes tables of readings or facts for one phase, every cell as printed.</summary>
public interface ITableSource
{
    /// <summary>The tables for the job; none when the job has nothing to list.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    IEnumerable<RecordTable> Tables(CheckContext context);
}
