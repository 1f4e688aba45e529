using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Air;
using Commission.Checks.Charge;
using Commission.Checks.Evacuation;
using Commission.Checks.Functional;
using Commission.Checks.Instruments;
using Commission.Checks.Kernel;
using Commission.Checks.Piping;
using Commission.Checks.PressureTest;
using Commission.Checks.Refrigerants;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Commission.Records.Series;

namespace Commission.Checks.Recording;

/// <summary>Every kind of figure, one line each, in the order of the record.</summary>
internal static class FigureCatalogue
{
    /// <summary>All sources of figures.</summary>
    public static IReadOnlyList<IFigureSource> All { get; } =
    [
        new InstrumentResidualsFigure(),
        new NitrogenFigure(),
        new PullDownFigure(),
        new HoldFigure(),
        new ChargeTimeFigure(),
        new PressureEnthalpyFigure(),
        new PsychrometricFigure(),
    ];
}

/// <summary>Every kind of table, one line each, in the order of the record.</summary>
internal static class TableCatalogue
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
