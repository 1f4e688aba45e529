using System.Collections.Immutable;
using Commission.Checks.Recording;
using Commission.Jobs.Model;
using Commission.Measurement.Units;
using Commission.Records;

namespace Commission.Checks.Refrigerants;

/// <summary>Every movement of refrigerant, cylinder by cylinder.</summary>
internal sealed class RefrigerantLedgerTable : ITableSource
{
    public IEnumerable<RecordTable> Tables(CheckContext context)
    {
        var ledger = context.Get<RefrigerantLedger>();
        if (ledger.Movements.IsEmpty)
            yield break;
        var present = context.Present;
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        foreach (var movement in ledger.Movements)
        {
            var cylinder = ledger.CylinderOf(movement);
            var mass = movement.Mass is { } m ? present.Text(m.Value, DisplayKind.Mass) : "not weighed";
            rows.Add([movement.Time, movement.Name, movement.Cylinder ?? cylinder?.Id.Value ?? "", Contents(cylinder), movement.Before, movement.After, movement.Sign > 0 ? mass : "", movement.Sign < 0 ? mass : ""]);
        }

        yield return new RecordTable
        {
            Id = "refrigerant-ledger",
            Phase = Phases.Refrigerant,
            Title = "Refrigerant in and out",
            Note = ledger.Net is { } net ? $"Net into the circuit: {present.Text(net, DisplayKind.Mass)}." : "",
            Columns =
            [
                new TableColumn("Time"),
                new TableColumn("What"),
                new TableColumn("Cylinder"),
                new TableColumn("Contents"),
                new TableColumn("Before", "", ColumnAlign.Right),
                new TableColumn("After", "", ColumnAlign.Right),
                new TableColumn("In", "", ColumnAlign.Right),
                new TableColumn("Out", "", ColumnAlign.Right),
            ],
            Rows = rows.ToImmutable(),
        };
    }

    private static string Contents(Cylinder? cylinder) => cylinder is null ? "" : string.Join(", ", new[] { cylinder.Refrigerant?.Value, cylinder.Contents?.Text, cylinder.Batch?.Value }.OfType<string>());
}
