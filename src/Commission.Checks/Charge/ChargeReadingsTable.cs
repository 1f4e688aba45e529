using System.Collections.Immutable;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Decisions;
using Commission.Measurement.Units;
using Commission.Records;

namespace Commission.Checks.Charge;

/// <summary>The charge readings as written, and what follows from them at both stages of correction.</summary>
internal sealed class ChargeReadingsTable : ITableSource
{
    private static readonly (string Label, Func<Reading, string?> Text)[] Circuit =
    [
        ("Vapor pressure", r => r.VaporPressure?.Text),
        ("Liquid pressure", r => r.LiquidPressure?.Text),
        ("True suction pressure", r => r.TrueSuctionPressure?.Text),
        ("Discharge pressure", r => r.DischargePressure?.Text),
        ("Vapor line", r => r.VaporLine?.Text),
        ("Liquid line", r => r.LiquidLine?.Text),
        ("Liquid after drier", r => r.LiquidAfterDrier?.Text),
        ("Evaporator outlet", r => r.EvaporatorOutlet?.Text),
        ("Compressor suction line", r => r.CompressorSuctionLine?.Text),
        ("Discharge line", r => r.DischargeLine?.Text),
        ("Indoor coil outlet", r => r.IndoorCoilOutlet?.Text),
        ("Sump", r => r.Sump?.Text),
        ("Compressor current", r => r.CompressorCurrent?.Text),
        ("Power", r => r.Power?.Text),
        ("Sight glass", r => r.SightGlass?.Text),
        ("Receiver level", r => r.ReceiverLevel?.Text),
        ("Mode", r => r.Mode?.Text),
        ("Running", r => r.Running?.Text),
        ("Speed", r => r.Speed?.Text),
        ("Since defrost", r => r.SinceDefrost?.Text),
        ("Auxiliary heat", r => r.AuxiliaryHeat?.Text),
    ];

    private static readonly (string Label, Func<Reading, string?> Text)[] Air =
    [
        ("Outdoor dry bulb", r => r.OutdoorDryBulb?.Text),
        ("Outdoor wet bulb", r => r.OutdoorWetBulb?.Text),
        ("Outdoor humidity", r => r.OutdoorHumidity?.Text),
        ("Return dry bulb", r => r.ReturnDryBulb?.Text),
        ("Return wet bulb", r => r.ReturnWetBulb?.Text),
        ("Return humidity", r => r.ReturnHumidity?.Text),
        ("Supply dry bulb", r => r.SupplyDryBulb?.Text),
        ("Supply wet bulb", r => r.SupplyWetBulb?.Text),
        ("Supply humidity", r => r.SupplyHumidity?.Text),
        ("Box temperature", r => r.BoxTemperature?.Text),
    ];

    /// <inheritdoc/>
    public IEnumerable<RecordTable> Tables(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (!analysis.AsFound.IsEmpty)
        {
            yield return AsWritten("as-found-circuit", "As found: circuit readings as written", analysis.AsFound, Circuit);
            if (AsWritten("as-found-air", "As found: air readings as written", analysis.AsFound, Air) is { Columns.Length: > 1 } before)
                yield return before;
        }

        if (analysis.Rows.IsEmpty)
            yield break;
        yield return AsWritten("charge-circuit", "Circuit readings as written", analysis.Rows, Circuit);
        if (AsWritten("charge-air", "Air readings as written", analysis.Rows, Air) is { Columns.Length: > 1 } air)
            yield return air;
        if (analysis.Rows.Any(r => r.Superheat.Value is not null || r.Subcooling.Value is not null))
            yield return WorkedOut(context, analysis);
    }

    private static RecordTable AsWritten(string id, string title, ImmutableArray<ChargeRow> rows, (string Label, Func<Reading, string?> Text)[] quantities)
    {
        var columns = ImmutableArray.CreateBuilder<TableColumn>();
        columns.Add(new TableColumn("Time"));
        var cells = rows.Select(r => new List<string> { r.Time }).ToList();
        foreach (var (label, text) in quantities)
        {
            var texts = rows.Select(r => text(r.Written) ?? "").ToArray();
            if (Array.TrueForAll(texts, t => t.Length == 0))
                continue;
            var unit = CommonUnit(texts);
            columns.Add(new TableColumn(label, unit, unit.Length > 0 ? ColumnAlign.Decimal : ColumnAlign.Left));
            for (var i = 0; i < texts.Length; i++)
                cells[i].Add(unit.Length > 0 && texts[i].Length > 0 ? texts[i][..^(unit.Length + 1)] : texts[i]);
        }

        return new RecordTable { Id = id, Phase = Phases.Charge, Title = title, Columns = columns.ToImmutable(), Rows = [.. cells.Select(c => c.ToImmutableArray())] };
    }

    // "118.9 psig" in every row puts psig in the head; a column of mixed units keeps them in its cells, as they were written.
    private static string CommonUnit(string[] texts)
    {
        var units = texts.Where(t => t.Length > 0).Select(t => t.Split(' ', 2) is [var number, var unit] && number.Length > 0 && char.IsAsciiDigit(number[^1]) && !unit.Contains(' ', StringComparison.Ordinal) ? unit : "").Distinct(StringComparer.Ordinal).ToArray();
        return units is [var only] ? only : "";
    }

    private static RecordTable WorkedOut(CheckContext context, ChargeAnalysis analysis)
    {
        var difference = context.Present.Unit(DisplayKind.TemperatureDifference);
        var temperature = context.Present.Unit(DisplayKind.Temperature);
        var superheat = Judged(context, new SuperheatCheck(), new SuperheatFloorCheck(), new MeteringSuperheatCheck());
        var subcooling = Judged(context, new SubcoolingCheck());
        return new RecordTable
        {
            Id = "charge-worked-out",
            Phase = Phases.Charge,
            Title = "Worked out from the readings",
            Note = "First stage: zero offsets and ice-point residuals taken off. Second stage: all corrections, with U.",
            Columns =
            [
                new TableColumn("Time"),
                new TableColumn("Dew point", temperature, ColumnAlign.Decimal),
                new TableColumn("Superheat, first stage", difference, ColumnAlign.Decimal),
                new TableColumn("Superheat, second stage", "", ColumnAlign.Right),
                new TableColumn("Bubble point", temperature, ColumnAlign.Decimal),
                new TableColumn("Subcooling, first stage", difference, ColumnAlign.Decimal),
                new TableColumn("Subcooling, second stage", "", ColumnAlign.Right),
                new TableColumn("Counts"),
            ],
            Rows = [.. analysis.Rows.Select(r => Row(context, r, Counts(r, superheat.Contains(r.Time), subcooling.Contains(r.Time))))],
        };
    }

    // The times of the readings that a check came to a verdict on: what is told or could not be judged sets nothing.
    private static HashSet<string> Judged(CheckContext context, params ReadOnlySpan<ICheck> checks)
    {
        var times = new HashSet<string>(StringComparer.Ordinal);
        foreach (var check in checks)
        {
            foreach (var finding in check.Evaluate(context))
            {
                if (finding is { Subject: { } time, Verdict: not (Verdict.Information or Verdict.NotEvaluated) })
                    times.Add(time);
            }
        }

        return times;
    }

    private static string Counts(ChargeRow row, bool superheat, bool subcooling) => (superheat, subcooling) switch
    {
        (true, false) when row.Subcooling.Value is not null => "superheat judged",
        (false, true) when row.Superheat.Value is not null => "subcooling judged",
        (false, false) => "not judged",
        _ => "judged",
    };

    private static ImmutableArray<string> Row(CheckContext context, ChargeRow row, string counts)
    {
        var present = context.Present;
        string First(RowNumber n) => double.IsFinite(n.AfterZero) ? Two(n.AfterZero, DisplayKind.TemperatureDifference) : "";
        string Second(RowNumber n) => n.Value is { } v ? present.Text(v, DisplayKind.TemperatureDifference) : "";
        string Point(SaturationTemperature? t) => t is { Value: not null } && double.IsFinite(t.AfterZero) ? Two(t.AfterZero, DisplayKind.Temperature) : "";
        string Two(double si, DisplayKind kind) => QuantityFormat.Number(present.Value(si, kind), 2);
        return
        [
            row.Time, Point(row.VaporDew), First(row.Superheat), Second(row.Superheat), Point(row.LiquidBubble), First(row.Subcooling), Second(row.Subcooling),
            counts,
        ];
    }
}
