using Commission.Checks.Charge;
using Commission.Checks.Functional;

namespace Commission.Checks.Recording;

/// <summary>Every kind of table, one line each, in the order of the record.</summary>
public static class TableCatalogue
{
    /// <summary>All sources of tables.</summary>
    public static IReadOnlyList<ITableSource> All { get; } =
    [
        new ChargeReadingsTable(),
        new FunctionalTable(),
    ];
}
