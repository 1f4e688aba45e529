using System.Collections.Immutable;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Decisions;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;

namespace Commission.Checks.Charge;

/// <summary>The charge readings as written, and what follows from them at both stages of correction.</summary>
internal sealed class ChargeReadingsTable : ITableSource
{
    private static readonly (Message Label, Func<Reading, string?> Text)[] Circuit =
    [
        (OperatingStateMessages.ColumnVaporPressure, r => r.VaporPressure?.Text),
        (OperatingStateMessages.ColumnLiquidPressure, r => r.LiquidPressure?.Text),
        (OperatingStateMessages.ColumnTrueSuctionPressure, r => r.TrueSuctionPressure?.Text),
        (OperatingStateMessages.ColumnDischargePressure, r => r.DischargePressure?.Text),
        (OperatingStateMessages.ColumnVaporLine, r => r.VaporLine?.Text),
        (OperatingStateMessages.ColumnLiquidLine, r => r.LiquidLine?.Text),
        (OperatingStateMessages.ColumnLiquidAfterDrier, r => r.LiquidAfterDrier?.Text),
        (OperatingStateMessages.ColumnEvaporatorOutlet, r => r.EvaporatorOutlet?.Text),
        (OperatingStateMessages.ColumnCompressorSuctionLine, r => r.CompressorSuctionLine?.Text),
        (OperatingStateMessages.ColumnDischargeLine, r => r.DischargeLine?.Text),
        (OperatingStateMessages.ColumnIndoorCoilOutlet, r => r.IndoorCoilOutlet?.Text),
        (OperatingStateMessages.ColumnSump, r => r.Sump?.Text),
        (OperatingStateMessages.ColumnCompressorCurrent, r => r.CompressorCurrent?.Text),
        (OperatingStateMessages.ColumnPower, r => r.Power?.Text),
        (OperatingStateMessages.ColumnSightGlass, r => r.SightGlass?.Text),
        (OperatingStateMessages.ColumnReceiverLevel, r => r.ReceiverLevel?.Text),
        (OperatingStateMessages.ColumnMode, r => r.Mode?.Text),
        (OperatingStateMessages.ColumnRunning, r => r.Running?.Text),
        (OperatingStateMessages.ColumnSpeed, r => r.Speed?.Text),
        (OperatingStateMessages.ColumnSinceDefrost, r => r.SinceDefrost?.Text),
        (OperatingStateMessages.ColumnAuxiliaryHeat, r => r.AuxiliaryHeat?.Text),
    ];

    private static readonly (Message Label, Func<Reading, string?> Text)[] Air =
    [
        (OperatingStateMessages.ColumnOutdoorDryBulb, r => r.OutdoorDryBulb?.Text),
        (OperatingStateMessages.ColumnOutdoorWetBulb, r => r.OutdoorWetBulb?.Text),
        (OperatingStateMessages.ColumnOutdoorHumidity, r => r.OutdoorHumidity?.Text),
        (OperatingStateMessages.ColumnReturnDryBulb, r => r.ReturnDryBulb?.Text),
        (OperatingStateMessages.ColumnReturnWetBulb, r => r.ReturnWetBulb?.Text),
        (OperatingStateMessages.ColumnReturnHumidity, r => r.ReturnHumidity?.Text),
        (OperatingStateMessages.ColumnSupplyDryBulb, r => r.SupplyDryBulb?.Text),
        (OperatingStateMessages.ColumnSupplyWetBulb, r => r.SupplyWetBulb?.Text),
        (OperatingStateMessages.ColumnSupplyHumidity, r => r.SupplyHumidity?.Text),
        (OperatingStateMessages.ColumnBoxTemperature, r => r.BoxTemperature?.Text),
    ];

    /// <inheritdoc/>
    public IEnumerable<RecordTable> Tables(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (!analysis.AsFound.IsEmpty)
        {
            yield return AsWritten(context, "as-found-circuit", OperatingStateMessages.TableAsFoundCircuit, analysis.AsFound, Circuit);
            if (AsWritten(context, "as-found-air", OperatingStateMessages.TableAsFoundAir, analysis.AsFound, Air) is { Columns.Length: > 1 } before)
                yield return before;
        }

        if (analysis.Rows.IsEmpty)
            yield break;
        yield return AsWritten(context, "charge-circuit", OperatingStateMessages.TableCircuit, analysis.Rows, Circuit);
        if (AsWritten(context, "charge-air", OperatingStateMessages.TableAir, analysis.Rows, Air) is { Columns.Length: > 1 } air)
            yield return air;
        if (analysis.Rows.Any(r => r.Superheat.Value is not null || r.Subcooling.Value is not null))
            yield return WorkedOut(context, analysis);
    }

    private static RecordTable AsWritten(CheckContext context, string id, Message title, ImmutableArray<ChargeRow> rows, (Message Label, Func<Reading, string?> Text)[] quantities)
    {
        var columns = ImmutableArray.CreateBuilder<TableColumn>();
        columns.Add(new TableColumn(context.Present.Text(OperatingStateMessages.ColumnTime)));
        var cells = rows.Select(r => new List<string> { r.Time }).ToList();
        foreach (var (label, text) in quantities)
        {
            var texts = rows.Select(r => text(r.Written) ?? "").ToArray();
            if (Array.TrueForAll(texts, t => t.Length == 0))
                continue;
            var unit = CommonUnit(texts);
            columns.Add(new TableColumn(context.Present.Text(label), unit, unit.Length > 0 ? ColumnAlign.Decimal : ColumnAlign.Left));
            for (var i = 0; i < texts.Length; i++)
                cells[i].Add(unit.Length > 0 && texts[i].Length > 0 ? texts[i][..^(unit.Length + 1)] : texts[i]);
        }

        return new RecordTable { Id = id, Phase = Phases.Charge, Title = context.Present.Text(title), Columns = columns.ToImmutable(), Rows = [.. cells.Select(c => c.ToImmutableArray())] };
    }

    // "118.9 psig" in every row puts psig in the head; a column of mixed units keeps them in its cells, as they were written.
    private static string CommonUnit(string[] texts)
    {
        var units = texts.Where(t => t.Length > 0).Select(t => t.Split(' ', 2) is [var number, var unit] && number.Length > 0 && char.IsAsciiDigit(number[^1]) && !unit.Contains(' ', StringComparison.Ordinal) ? unit : "").Distinct(StringComparer.Ordinal).ToArray();
        return units is [var only] ? only : "";
    }

    private static RecordTable WorkedOut(CheckContext context, ChargeAnalysis analysis)
    {
        var present = context.Present;
        var difference = present.Unit(DisplayKind.TemperatureDifference);
        var temperature = present.Unit(DisplayKind.Temperature);
        var superheat = Judged(context, new SuperheatCheck(), new SuperheatFloorCheck(), new MeteringSuperheatCheck());
        var subcooling = Judged(context, new SubcoolingCheck());
        return new RecordTable
        {
            Id = "charge-worked-out",
            Phase = Phases.Charge,
            Title = present.Text(OperatingStateMessages.TableWorkedOut),
            Note = present.Text(OperatingStateMessages.TableWorkedOutNote),
            Columns =
            [
                new TableColumn(present.Text(OperatingStateMessages.ColumnTime)),
                new TableColumn(present.Text(OperatingStateMessages.ColumnDewPoint), temperature, ColumnAlign.Decimal),
                new TableColumn(present.Text(OperatingStateMessages.ColumnSuperheatZero), difference, ColumnAlign.Decimal),
                new TableColumn(present.Text(OperatingStateMessages.ColumnSuperheatFull), "", ColumnAlign.Right),
                new TableColumn(present.Text(OperatingStateMessages.ColumnBubblePoint), temperature, ColumnAlign.Decimal),
                new TableColumn(present.Text(OperatingStateMessages.ColumnSubcoolingZero), difference, ColumnAlign.Decimal),
                new TableColumn(present.Text(OperatingStateMessages.ColumnSubcoolingFull), "", ColumnAlign.Right),
                new TableColumn(present.Text(OperatingStateMessages.ColumnUsed)),
            ],
            Rows = [.. analysis.Rows.Select(r => Row(context, r, UsedFor(r, superheat.Contains(r.Time), subcooling.Contains(r.Time))))],
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

    private static Message UsedFor(ChargeRow row, bool superheat, bool subcooling) => (superheat, subcooling) switch
    {
        (true, false) when row.Subcooling.Value is not null => OperatingStateMessages.UsedForSuperheat,
        (false, true) when row.Superheat.Value is not null => OperatingStateMessages.UsedForSubcooling,
        (false, false) => OperatingStateMessages.UsedForNothing,
        _ => OperatingStateMessages.UsedForBoth,
    };

    private static ImmutableArray<string> Row(CheckContext context, ChargeRow row, Message usedFor)
    {
        var present = context.Present;
        string First(RowNumber n) => double.IsFinite(n.AfterZero) ? Two(n.AfterZero, DisplayKind.TemperatureDifference) : "";
        string Second(RowNumber n) => n.Value is { } v ? present.Text(v, DisplayKind.TemperatureDifference) : "";
        string Point(SaturationTemperature? t) => t is { Value: not null } && double.IsFinite(t.AfterZero) ? Two(t.AfterZero, DisplayKind.Temperature) : "";
        string Two(double si, DisplayKind kind) => QuantityFormat.Number(present.Value(si, kind), 2);
        return
        [
            row.Time, Point(row.VaporDew), First(row.Superheat), Second(row.Superheat), Point(row.LiquidBubble), First(row.Subcooling), Second(row.Subcooling),
            present.Text(usedFor),
        ];
    }
}
