using Commission.Checks.Charge;

namespace Commission.Checks.Recording;

/// <summary>Every kind of table, one line each, in the order of the record.</summary>
public static class TableCatalogue
{
    /// <summary>All sources of tables.</summary>
    public static IReadOnlyList<ITableSource> All { get; } =
    [
        new ChargeReadingsTable(),
    ];
}
