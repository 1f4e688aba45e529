using System.Collections.Immutable;
using Commission.Checks.Recording;
using Commission.Measurement.Units;
using Commission.Records;

namespace Commission.Checks.Air;

/// <summary>The air side as written: static pressures, drops, how the airflow was found.</summary>
internal sealed class AirTable : ITableSource
{
    /// <inheritdoc/>
    public IEnumerable<RecordTable> Tables(CheckContext context)
    {
        if (context.Job.Air is not { } air)
            yield break;
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        void Add(string what, string? text, string? note = null)
        {
            if (text is not null)
                rows.Add([what, text, note ?? ""]);
        }

        Add("Filter", air.Filter?.Text);
        Add("Indoor coil", air.Coil?.Text, air.WetCoil is { } wet ? (wet.Value ? "wet" : "dry") : null);
        Add("Outdoor coil", air.OutdoorCoil?.Text);
        Add("Panels on", air.PanelsOn?.Text);
        Add("Blower at cooling speed", air.BlowerAtCoolingSpeed?.Text);
        Add("Blower setting", air.BlowerSetting?.Text);
        Add("Static pressure, return", air.Static?.Return?.Text, air.Static?.ReturnTap?.Text);
        Add("Static pressure, supply", air.Static?.Supply?.Text, air.Static?.SupplyTap?.Text);
        Add("External static pressure as read", air.Static?.External?.Text);
        Add("Filter drop", air.FilterDrop?.Text);
        Add("Coil drop", air.CoilDrop?.Text);
        foreach (var point in air.FanTable?.Points ?? [])
            Add($"Fan table at {point.Static.Text}", point.Airflow.Text, air.FanTable!.From.Value);
        var routes = context.Get<AirflowRoutes>();
        foreach (var route in routes.Chosen is { Value: not null } chosen ? routes.Others.Insert(0, chosen) : routes.Others)
            Add($"Airflow {route.Words}", context.Present.Text(route.Value!, DisplayKind.AirFlow), ReferenceEquals(route, routes.Chosen) ? "counts" : "compared");
        Add("Design airflow", air.DesignAirflow?.Text);
        Add("Blower power", air.BlowerPower?.Text);
        if (rows.Count > 0)
        {
            yield return new RecordTable
            {
                Id = "air-side",
                Phase = Phases.Air,
                Title = "Air side",
                Columns = [new TableColumn("What"), new TableColumn("As written or worked out"), new TableColumn("Place or source")],
                Rows = rows.ToImmutable(),
            };
        }
    }
}
