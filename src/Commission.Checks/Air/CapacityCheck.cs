using System.Globalization;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Air;

/// <summary>Total, sensible and latent capacity on the air side. Information: a rating holds at its own temperatures.</summary>
internal sealed class CapacityCheck : ICheck
{
    public string Id => "air.capacity";

    public string Phase => Phases.Air;

    public string Title => "Capacity on the air side";

    public CheckHelp Help { get; } = new(
        "How much heat does the system take out of the air, and how much of it is drying? U is wide: a few per cent of airflow and a degree of wet bulb are a tenth of the capacity.",
        "Q = (V̇/v)·(h_return − h_supply); sensible = (V̇/v)·(1.006 + 1.86·W)·(t_return − t_supply); latent = total − sensible. The field factors 4.5, 1.08 and 0.68 are made for standard air and do not close by about 2 %",
        "ASHRAE Handbook — Fundamentals, chapter 1, SI form (from memory).",
        "Nothing fails here: the rated capacity holds at rated temperatures. A capacity far below it, beyond U, asks for airflow, charge and compressor.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var capacity = context.Get<AirCapacity>();
        if (!capacity.HasSubject)
            yield break;
        var finding = capacity.UseIn(context, context.Finding(this, capacity.Row?.Time));
        if (capacity.Total is not { } total)
        {
            yield return finding.NotEvaluated(capacity.WhyNot!, capacity.Todo!);
            yield break;
        }

        var present = context.Present;
        var latent = total - capacity.Sensible;
        var ratio = capacity.Sensible / total;
        var rated = context.Job.Equipment.Capacity;
        finding.Use("rated capacity", rated).Measure(total, DisplayKind.Capacity)
            .Step("Q_l", "latent capacity", "Q − Q_s", $"{present.Text(total.Value, DisplayKind.Capacity)} − {present.Text(capacity.Sensible.Value, DisplayKind.Capacity)}", present.Text(latent, DisplayKind.Capacity), "definition")
            .Step("SHR", "sensible heat ratio", "Q_s / Q", $"{present.Text(capacity.Sensible.Value, DisplayKind.Capacity)} / {present.Text(total.Value, DisplayKind.Capacity)}", present.Text(ratio, DisplayKind.Number), "definition");
        if (capacity.Row!.Settling.Block is { } early)
            finding.Remark($"The system had not settled: {early}.");
        if (latent.Value + latent.Expanded < 0)
            finding.Remark("More sensible than total heat cannot be: a wet bulb reads wrong.");
        var against = rated is { } plate && plate.Value.Si > 0
            ? string.Create(CultureInfo.InvariantCulture, $" The plate rates {plate.Text} at its own temperatures; this is {100 * total.Value / plate.Value.Si:0} % of it.")
            : "";
        yield return finding.Information(
            $"The air gave up {present.Text(total, DisplayKind.Capacity)} at {capacity.Row.Time}, {present.Text(capacity.Sensible, DisplayKind.Capacity)} of it sensible.{against}",
            "measured capacity, not judged: it holds for the temperatures of this day");
    }
}
