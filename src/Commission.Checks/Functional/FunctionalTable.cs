using System.Collections.Immutable;
using Commission.Checks.Recording;
using Commission.Records;

namespace Commission.Checks.Functional;

/// <summary>Everything that was tried, item by item.</summary>
internal sealed class FunctionalTable : ITableSource
{
    public IEnumerable<RecordTable> Tables(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        var tried = Trials.All(functional).Where(t => t.Result is not null).ToList();
        if (tried.Count == 0)
            yield break;
        yield return new RecordTable
        {
            Id = "functional",
            Phase = Phases.Functional,
            Title = "What was tried",
            Note = functional.Witnessed is { } witness ? $"Witnessed by {witness.By.Value}{(witness.Role is { } role ? ", " + role.Value : "")}." : "",
            Columns = [new TableColumn("Trial"), new TableColumn("Result")],
            Rows = [.. tried.Select(t => ImmutableArray.Create(t.What, t.Result!.Text))],
        };
    }
}
