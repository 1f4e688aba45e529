using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Charge;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>Every movement of refrigerant a job tells of, and what its cylinders say of the same.</summary>
internal sealed class RefrigerantLedger : IAnalysis<RefrigerantLedger>
{
    private readonly CheckContext context;

    private RefrigerantLedger(CheckContext context)
    {
        this.context = context;
        Movements = [.. Charged(), .. Recovered()];
    }

    /// <summary>The movements: charged, taken off again, recovered.</summary>
    public ImmutableArray<Movement> Movements { get; }

    /// <summary>What went in less what came out, kg; null when a movement was not weighed or there is none.</summary>
    public Uncertain? Net => Movements.IsEmpty || Movements.Any(m => m.Mass is null)
        ? null
        : Movements.Select(m => m.Sign * m.Mass!.Value).Aggregate((a, b) => a + b);

    /// <inheritdoc/>
    public static RefrigerantLedger Create(CheckContext context) => new(context);

    /// <summary>The described cylinder a movement used: by its name, or the only one there is.</summary>
    /// <param name="movement">The movement.</param>
    public Cylinder? CylinderOf(Movement movement) => movement.Cylinder is { } id
        ? context.Job.Cylinders.FirstOrDefault(c => string.Equals(c.Id.Value, id, StringComparison.Ordinal))
        : context.Job.Cylinders.Length == 1 && Movements.Length == 1 ? context.Job.Cylinders[0] : null;

    /// <summary>What left a cylinder by its own gross masses, kg; null when they are not written.</summary>
    /// <param name="cylinder">The cylinder.</param>
    public MassNumber? LeftBy(Cylinder cylinder)
    {
        if (cylinder is not { Before: { } before, After: { } after })
            return null;
        var name = cylinder.Id.Value;
        var first = context.Readings.Plain($"{name}: before", ReadingName.Charge, before, DisplayKind.Mass);
        var second = context.Readings.Plain($"{name}: after", ReadingName.Charge, after, DisplayKind.Mass);
        var value = first.Value - second.Value;
        return new MassNumber(value, [first, second], [], [new TraceStep("Δm", $"out of {name}", "before − after", $"{before.Text} − {after.Text}", context.Present.Text(value, DisplayKind.Mass), "definition")]);
    }

    private IEnumerable<Movement> Charged()
    {
        if (context.Job.Charging is not { } charging)
            yield break;
        for (var i = 0; i < charging.Scale.Length; i++)
        {
            var weighing = charging.Scale[i];
            var sum = new MassSum(context);
            sum.Weighing(weighing, charging.Scale.Length == 1 ? "" : weighing.Cylinder?.Value ?? string.Create(CultureInfo.InvariantCulture, $"cylinder {i + 1}"), charging.With);
            yield return new Movement("charged", 1, weighing.Cylinder?.Value, sum.Sum("m", "charged"), weighing.Before.Text, weighing.After.Text, weighing.At?.Text ?? "");
        }

        if (charging.Scale.IsEmpty && charging.Added is { } added)
            yield return new Movement("charged", 1, null, Written("refrigerant added", added, charging.With));
        if (charging.Removed is { } removed)
            yield return new Movement("taken off", -1, null, Written("refrigerant removed", removed, charging.With));
        foreach (var change in charging.Events)
        {
            if (change.Added is { } more && charging.Scale.IsEmpty && charging.Added is null)
                yield return new Movement("charged", 1, null, Written($"refrigerant added at {change.At.Text}", more, charging.With), Time: change.At.Text);
            if (change.Removed is { } less && charging.Scale.IsEmpty && charging.Removed is null)
                yield return new Movement("taken off", -1, null, Written($"refrigerant removed at {change.At.Text}", less, charging.With), Time: change.At.Text);
        }
    }

    private IEnumerable<Movement> Recovered()
    {
        if (context.Job.Recovery is not { } recovery)
        {
            if (context.Job.AsFound?.ChargeRecovered is { } found)
                yield return new Movement("recovered", -1, null, Written("charge recovered", found, []));
            yield break;
        }

        var cylinder = recovery.Cylinder?.Value ?? recovery.Scale?.Cylinder?.Value;
        var time = recovery.At?.Text ?? "";
        if (recovery.Scale is { } scale)
        {
            var before = context.Readings.Plain("recovery cylinder before", ReadingName.Charge, scale.Before, DisplayKind.Mass, recovery.With);
            var after = context.Readings.Plain("recovery cylinder after", ReadingName.Charge, scale.After, DisplayKind.Mass, recovery.With);
            var value = after.Value - before.Value;
            var step = new TraceStep("m_rec", "recovered", "after − before", $"{scale.After.Text} − {scale.Before.Text}", context.Present.Text(value, DisplayKind.Mass), "definition");
            yield return new Movement("recovered", -1, cylinder, new MassNumber(value, [before, after], [], [step]), scale.Before.Text, scale.After.Text, time);
        }
        else if ((recovery.Mass ?? context.Job.AsFound?.ChargeRecovered) is { } mass)
        {
            yield return new Movement("recovered", -1, cylinder, Written("mass recovered", mass, recovery.With), Time: time);
        }
        else
        {
            yield return new Movement("recovered", -1, cylinder, null, Time: time);
        }
    }

    private MassNumber Written(string name, Given<Measurement.Quantities.Mass> given, ImmutableArray<Given<string>> with)
    {
        var reading = context.Readings.Plain(name, ReadingName.Charge, given, DisplayKind.Mass, with);
        return new MassNumber(reading.Value, [reading], [], []);
    }
}
