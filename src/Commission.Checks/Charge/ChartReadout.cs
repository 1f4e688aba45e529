using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Readings;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Interpolation;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>What a maker's chart says at a row of readings: bilinear between its places, nothing beyond them, nothing at a dash.</summary>
internal sealed record ChartReadout
{
    private ChartReadout()
    {
    }

    /// <summary>The figure, SI, with the doubt of the readings it was entered with; null when the chart says nothing.</summary>
    public Uncertain? Value { get; private init; }

    /// <summary>Why it says nothing; null when it says something.</summary>
    public string? WhyNot { get; private init; }

    /// <summary>The readings it was entered with.</summary>
    public ImmutableArray<CorrectedReading> Readings { get; private init; } = [];

    /// <summary>How the figure was read; null without one.</summary>
    public TraceStep? Step { get; private init; }

    /// <summary>Reads a chart.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="chart">The chart.</param>
    /// <param name="row">The readings.</param>
    public static ChartReadout Read(CheckContext context, MakerChart chart, ChargeRow row)
    {
        var used = ImmutableArray.CreateBuilder<CorrectedReading>();
        if (Enter(context, chart.Across, row, used) is not { } across)
            return None($"{chart.Across.Reading.Text} was not read, and the maker's chart is entered with it", used);
        var down = chart.Down is null ? null : Enter(context, chart.Down, row, used);
        if (chart.Down is not null && down is null)
            return None($"{chart.Down.Reading.Text} was not read, and the maker's chart is entered with it", used);
        if (Shape(chart) is { } fault)
            return None(fault, used);

        var columns = Places(chart.Across);
        var reading = down is null
            ? new InterpolationTable(columns, chart.Values[0]).Read(across)
            : new InterpolationGrid(Places(chart.Down!), columns, Cells(chart.Values)).Read(down, across);
        if (reading.Value is { } value)
        {
            var kind = KindOf(chart.For.Value);
            return new ChartReadout
            {
                Value = value,
                Readings = used.ToImmutable(),
                Step = new TraceStep(
                    "target", $"{chart.For.Text} by the maker's chart", "linear between the places of the chart",
                    string.Join(", ", used.Select(u => $"{u.Name}: {Entered(context, u)}")), context.Present.Text(value, kind), chart.From.Value),
            };
        }

        var outside = reading.Miss switch
        {
            TableMiss.Blank => "the maker's chart has a dash there",
            TableMiss.OutsideFirst when down is not null => $"{chart.Down!.Reading.Text} lies outside the maker's chart",
            _ => $"{chart.Across.Reading.Text} lies outside the maker's chart",
        };
        return None(outside, used);
    }

    /// <summary>How a chart's figure is printed. Pressures of a chart are gauge pressures.</summary>
    /// <param name="quantity">What the chart gives.</param>
    public static DisplayKind KindOf(ChartQuantity quantity) => quantity switch
    {
        ChartQuantity.Superheat or ChartQuantity.Subcooling or ChartQuantity.TemperatureSplit => DisplayKind.TemperatureDifference,
        ChartQuantity.DischargeLine or ChartQuantity.VaporLine or ChartQuantity.LiquidLine => DisplayKind.Temperature,
        _ => DisplayKind.Pressure,
    };

    private static ChartReadout None(string why, ImmutableArray<CorrectedReading>.Builder used) => new() { WhyNot = why, Readings = used.ToImmutable() };

    private static Uncertain? Enter(CheckContext context, ChartAxis axis, ChargeRow row, ImmutableArray<CorrectedReading>.Builder used)
    {
        var reading = axis.Reading.Value switch
        {
            ChartReading.OutdoorDryBulb => row.OutdoorDryBulb,
            ChartReading.OutdoorWetBulb => row.OutdoorWetBulb,
            ChartReading.ReturnDryBulb => row.ReturnDryBulb,
            ChartReading.ReturnWetBulb => row.ReturnWetBulb,
            ChartReading.LiquidPressure => row.LiquidPressure,
            ChartReading.VaporPressure => row.VaporPressure,
            _ => row.BoxTemperature,
        };
        if (reading is null)
            return null;
        used.Add(reading);

        // A chart in gauge pressure is entered with what the gauge shows: the atmosphere, which was added, goes again with its doubt.
        return axis.At.Length > 0 && axis.At[0].Value is { Dimension: Dimension.Pressure, Reference: PressureReference.Gauge }
            ? reading.Value - context.Get<SiteAtmosphere>().Value
            : reading.Value;
    }

    private static string Entered(CheckContext context, CorrectedReading reading) =>
        context.Present.Text(reading.Value.Value, reading.Value.Value > 1000 ? DisplayKind.AbsolutePressure : DisplayKind.Temperature);

    private static IEnumerable<double> Places(ChartAxis axis) => axis.At.Select(a => a.Value.Si);

    private static double?[,] Cells(ImmutableArray<ImmutableArray<double?>> rows)
    {
        var cells = new double?[rows.Length, rows[0].Length];
        for (var r = 0; r < rows.Length; r++)
        {
            for (var c = 0; c < rows[r].Length; c++)
                cells[r, c] = rows[r][c];
        }

        return cells;
    }

    private static string? Shape(MakerChart chart)
    {
        var rows = chart.Down?.At.Length ?? 1;
        var columns = chart.Across.At.Length;
        if (chart.Values.Length != rows || chart.Values.Any(r => r.Length != columns))
            return string.Create(CultureInfo.InvariantCulture, $"the maker's chart does not have {columns} figures in each of {rows} rows");
        if (columns < 2 || rows == 1 && chart.Down is not null)
            return "the maker's chart has a single place along one side, so nothing lies between";
        return Ascends(chart.Across) && (chart.Down is null || Ascends(chart.Down)) ? null : "the places of the maker's chart do not rise";
    }

    private static bool Ascends(ChartAxis axis) => axis.At.Zip(axis.At.Skip(1)).All(pair => pair.Second.Value.Si > pair.First.Value.Si);
}
