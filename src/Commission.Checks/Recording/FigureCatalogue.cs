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

/// <summary>The strip chart of page 1: every judged number on the scale of its own limit.</summary>
internal static class StripFigure
{
    // A value far outside its limit is drawn at the edge of the strip; the text beside it tells how far.
    private const double Edge = 2;

    // What fits on a Letter page below its head, with the caption.
    private const int MostRows = 44;

    public static IEnumerable<FigureData> Make(IReadOnlyList<Finding> findings)
    {
        var rows = findings.Where(f => f is { Strip: not null, Measured: not null } && f.Phase != Phases.Evidence).Select(Row).ToImmutableArray();
        // Parts of like length: a last one with two rows would look like a mistake.
        var parts = (rows.Length + MostRows - 1) / MostRows;
        for (var i = 0; i < parts; i++)
            yield return Part([.. rows[(i * rows.Length / parts)..((i + 1) * rows.Length / parts)]], i + 1, parts);
    }

    private static FigureData Part(ImmutableArray<FigureBar> rows, int part, int parts)
    {
        var fails = rows.Count(r => r.Verdict == Verdict.Fail);
        return new FigureData
        {
            Id = part == 1 ? "strip" : string.Create(CultureInfo.InvariantCulture, $"strip-{part}"),
            Plot = "strip",
            Phase = "summary",
            Title = parts == 1 ? "All judged numbers" : string.Create(CultureInfo.InvariantCulture, $"All judged numbers, {part} of {parts}"),
            Caption = "Each value with its U on the scale of its own limit: the shaded part is what the limit allows.",
            AltText = string.Create(CultureInfo.InvariantCulture, $"Strip chart of {rows.Length} judged numbers, {fails} of them outside their limit."),
            X = new FigureAxis("position within the limit", "", AxisScale.Linear, -Edge / 2, 1 + (Edge / 2)),
            Y = new FigureAxis("", "", AxisScale.Linear),
            Rows = rows,
        };
    }

    private static FigureBar Row(Finding f)
    {
        var strip = f.Strip!;
        var label = f.Subject is null ? f.Title : $"{f.Title}, {f.Subject}";
        return new FigureBar(label, Clamp(strip.Value), Clamp(strip.Low), Clamp(strip.High), f.Verdict, $"{f.Measured!.Text}; {f.Limits[0].Text}", strip.LowerIsLimit, strip.UpperIsLimit);
    }

    private static double Clamp(double x) => Math.Clamp(x, -Edge, 1 + Edge);

    private static double? Clamp(double? x) => x is { } value ? Clamp(value) : null;
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
