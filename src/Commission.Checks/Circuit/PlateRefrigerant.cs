using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Fluids;
using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Circuit;

/// <summary>The refrigerant a unit is built for: what its plate says, else what it was changed from. Its factory charge belongs to that refrigerant.</summary>
internal sealed class PlateRefrigerant : IAnalysis<PlateRefrigerant>
{
    private PlateRefrigerant(CheckContext context)
    {
        var plate = context.Job.Equipment.Nameplate;
        var written = plate?.Refrigerant ?? context.Job.RefrigerantChange?.From;
        Info = written is null ? null : RefrigerantCatalogue.Find(written.Value);
        Designation = Info?.Designation ?? written?.Value;
        SafetyClass = plate?.SafetyClass?.Value.ToString() ?? Info?.SafetyGroup?.Value;
        IsAnother = Designation is not null && Designation != context.Get<CircuitRefrigerant>().Designation;
        FactoryCharge = IsAnother ? null : plate?.FactoryCharge;
        Guide = IsAnother ? plate?.FactoryCharge : null;
        var uses = ImmutableArray.CreateBuilder<ReadingUse>();
        if (plate?.Refrigerant is { } named)
            uses.Add(named.Use(context.Present.Text(CircuitMessages.PlateRefrigerant)));
        if (plate?.SafetyClass is { } group)
            uses.Add(group.Use(context.Present.Text(CircuitMessages.PlateSafetyClass)));
        if (context.Job.RefrigerantChange is { } change)
        {
            uses.Add(change.From.Use(context.Present.Text(CircuitMessages.ChangedFrom)));
            uses.Add(change.To.Use(context.Present.Text(CircuitMessages.ChangedTo)));
        }

        Uses = uses.ToImmutable();
    }

    /// <summary>What is published about it; null when it is not written or not known.</summary>
    public RefrigerantInfo? Info { get; }

    /// <summary>Its designation; null when it is not written.</summary>
    public string? Designation { get; }

    /// <summary>Safety class the unit is built for, <c>A1</c>: the plate's, else its refrigerant's; null when neither is known.</summary>
    public string? SafetyClass { get; }

    /// <summary>Whether the circuit holds another refrigerant than the unit is built for.</summary>
    public bool IsAnother { get; }

    /// <summary>The plate's charge where it is one of the circuit's refrigerant.</summary>
    public Given<Mass>? FactoryCharge { get; }

    /// <summary>The plate's charge where it is one of another refrigerant: a guide value.</summary>
    public Given<Mass>? Guide { get; }

    /// <summary>Where the job says so.</summary>
    public ImmutableArray<ReadingUse> Uses { get; }

    /// <inheritdoc/>
    public static PlateRefrigerant Create(CheckContext context) => new(context);
}

/// <summary>The refrigerant that was recovered: the one changed from, else the one found, else the circuit's.</summary>
internal sealed class RecoveredRefrigerant : IAnalysis<RecoveredRefrigerant>
{
    private readonly Lazy<Refrigerant?> _fluid;

    private RecoveredRefrigerant(Job job)
    {
        var written = (job.RefrigerantChange?.From ?? job.AsFound?.Refrigerant ?? job.Equipment.Refrigerant).Value;
        var info = RefrigerantCatalogue.Find(written);
        Designation = info?.Designation ?? written;
        _fluid = new Lazy<Refrigerant?>(() => info is { IsComputable: true } ? Refrigerant.Load(info.Designation) : null);
    }

    /// <summary>Its designation, or its name as written.</summary>
    public string Designation { get; }

    /// <summary>Its equations; null when it cannot be computed.</summary>
    public Refrigerant? Fluid => _fluid.Value;

    /// <inheritdoc/>
    public static RecoveredRefrigerant Create(CheckContext context) => new(context.Job);
}
