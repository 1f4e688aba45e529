using Commission.Checks.Air;
using Commission.Checks.Charge;
using Commission.Checks.Evacuation;
using Commission.Checks.Functional;
using Commission.Checks.Piping;
using Commission.Checks.PressureTest;
using Commission.Checks.Refrigerants;

namespace Commission.Checks.Recording;

/// <summary>Every kind of table, one line each, in the order of the record.</summary>
public static class TableCatalogue
{
    /// <summary>All sources of tables.</summary>
    public static IReadOnlyList<ITableSource> All { get; } =
    [
        new PressureTestTable(),
        new EvacuationPartsTable(),
        new ChargeReadingsTable(),
        new AirTable(),
        new PipingTable(),
        new RefrigerantLedgerTable(),
        new FunctionalTable(),
    ];
}
