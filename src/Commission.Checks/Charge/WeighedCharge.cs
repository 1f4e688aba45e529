using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Readings;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>
/// What the scale says went into the circuit, and what the circuit holds. Like is compared with like: a unit that came charged needs only
/// the adjustment for its lines, an empty one needs the whole charge.
/// </summary>
internal sealed class WeighedCharge : IAnalysis<WeighedCharge>
{
    private readonly CheckContext context;
    private readonly Charging? charging;

    private WeighedCharge(CheckContext context)
    {
        this.context = context;
        charging = context.Job.Charging;
        Put = charging is null ? null : MakePut(charging);
        Required = RequiredCharge.Of(context);
        (Total, WhyNoTotal) = MakeTotal();
    }

    /// <summary>Refrigerant put into the circuit: added less removed less left in hoses, kg; negative when more was taken out. Null when nothing says.</summary>
    public MassNumber? Put { get; }

    /// <summary>What the maker's figures ask for.</summary>
    public RequiredCharge Required { get; }

    /// <summary>What the circuit holds, kg; null when that cannot be known.</summary>
    public MassNumber? Total { get; }

    /// <summary>Why the total cannot be known, without a full stop; null when it is known.</summary>
    public string? WhyNoTotal { get; }

    /// <summary>Whether the scale saw the whole charge: the unit came empty or with nitrogen.</summary>
    public bool SawWholeCharge => charging?.UnitArrived?.Value is ArrivalCharge.NitrogenHoldingCharge or ArrivalCharge.RecoveredAndEvacuated;

    /// <summary>Whether the unit came with its factory charge.</summary>
    public bool CameCharged => charging?.UnitArrived?.Value == ArrivalCharge.Charged;

    /// <inheritdoc/>
    public static WeighedCharge Create(CheckContext context) => new(context);

    private MassNumber? MakePut(Charging job)
    {
        var parts = new MassSum(context);
        foreach (var (weighing, index) in job.Scale.Select((w, i) => (w, i)))
            parts.Weighing(weighing, job.Scale.Length == 1 ? "" : weighing.Cylinder?.Value ?? string.Create(CultureInfo.InvariantCulture, $"cylinder {index + 1}"), job.With);
        if (job.Scale.IsEmpty)
        {
            if (job.Added is { } added)
                parts.Add("refrigerant added", added, 1, job.With);
            else
                AddEvents(job, parts, e => e.Added, "refrigerant added", 1);
        }

        if (job.Removed is { } removed)
            parts.Add("refrigerant removed", removed, -1, job.With);
        else if (job.Scale.IsEmpty)
            AddEvents(job, parts, e => e.Removed, "refrigerant removed", -1);
        if (parts.IsEmpty)
            return null;
        parts.Hoses(job.LeftInHoses, job.Hoses);
        return parts.Sum("m_put", "refrigerant put into the circuit");
    }

    private static void AddEvents(Charging job, MassSum parts, Func<ChargeEvent, Given<Mass>?> mass, string name, int sign)
    {
        foreach (var change in job.Events)
        {
            if (mass(change) is { } given)
                parts.Add($"{name} at {change.At.Text}", given, sign, job.With);
        }
    }

    private (MassNumber? Total, string? WhyNot) MakeTotal()
    {
        if (charging is null)
            return (null, "nothing about the charging is written");
        if (charging.UnitArrived is not { } arrived)
            return (null, "it is not written how the unit arrived: charged, with nitrogen, or evacuated");
        if (arrived.Value == ArrivalCharge.Unknown)
            return (null, "nobody knows what the unit held when it arrived");
        if (SawWholeCharge)
            return Put is { } all ? (all with { Uses = [.. all.Uses, Use("unit arrived", arrived)] }, null) : (null, "no scale reading and no mass added is written");
        if (context.Job.Equipment.Nameplate?.FactoryCharge is not { } factory)
            return (null, "the factory charge is not written");
        var part = Uncertain.Exact(factory.Value.Si);
        var value = Put is { } put ? part + put.Value : part;
        var present = context.Present;
        var step = new TraceStep(
            "m_total", "total charge", "factory charge + put in",
            $"{factory.Text} + {(Put is null ? "nothing" : present.Text(Put.Value.Value, DisplayKind.Mass))}", present.Text(value, DisplayKind.Mass), "definition");
        return (new MassNumber(value, Put?.Readings ?? [], [.. Put?.Uses ?? [], Use("factory charge", factory), Use("unit arrived", arrived)], [.. Put?.Steps ?? [], step]), null);
    }

    private static ReadingUse Use<T>(string name, Given<T> given) => new(name, given.Text, given.At, null);
}
