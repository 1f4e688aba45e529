using Commission.Checks.Charge;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>
/// The refrigerant in the circuit, for whatever follows from its mass: by weight where the job weighed it, else what the unit's label or
/// plate says. Rooms, carbon-dioxide equivalent, leak-check duties and the level of recovery all ask here.
/// </summary>
internal sealed class CircuitCharge : IAnalysis<CircuitCharge>
{
    private CircuitCharge(MassNumber? total, string? whyNot, bool isWeighed, MassNumber? full)
    {
        Total = total;
        WhyNot = whyNot;
        IsWeighed = isWeighed;
        Full = full;
    }

    /// <summary>What the circuit holds after the work, kg; null when that cannot be known.</summary>
    public MassNumber? Total { get; }

    /// <summary>Why the total cannot be known, without a full stop; null when it is known.</summary>
    public string? WhyNot { get; }

    /// <summary>Whether the total follows from scales, and is not only written on the unit.</summary>
    public bool IsWeighed { get; }

    /// <summary>The normal full charge of the circuit, kg: by the label, else by weight, else the nameplate's factory charge, else what was recovered. Null when nothing says.</summary>
    public MassNumber? Full { get; }

    /// <inheritdoc/>
    public static CircuitCharge Create(CheckContext context)
    {
        var job = context.Job;
        var weighed = context.Get<WeighedCharge>();
        var labelled = job.Label?.Total is { } label ? AsWritten(context, "total on the label", label) : null;
        var factory = job.Equipment.Nameplate?.FactoryCharge is { } plate ? AsWritten(context, "factory charge", plate) : null;
        var recovered = job.Recovery?.Mass is { } mass ? AsWritten(context, "mass recovered", mass)
            : job.AsFound?.ChargeRecovered is { } found ? AsWritten(context, "charge recovered", found) : null;
        var full = labelled ?? weighed.Total ?? factory ?? recovered;
        if (job.Identity.Work.Value == WorkKind.Decommissioning)
            return new CircuitCharge(null, "the circuit was emptied", isWeighed: false, full);
        if (weighed.Total is { } total)
            return new CircuitCharge(total, null, isWeighed: true, full);
        if (labelled is not null)
            return new CircuitCharge(labelled, null, isWeighed: false, full);

        // Where nothing was opened and nothing weighed in, the unit holds what its maker put in.
        var untouched = weighed.Put is null && job.Charging?.UnitArrived is null
            && (job.Identity.Work.Value == WorkKind.SeasonalCheck || (job.Identity.Work.Value == WorkKind.NewInstallation && job.Equipment.System.Value == SystemKind.Packaged));
        return untouched && factory is not null
            ? new CircuitCharge(factory, null, isWeighed: false, full)
            : new CircuitCharge(null, weighed.WhyNoTotal ?? "the total charge is not written", isWeighed: false, full);
    }

    private static MassNumber AsWritten(CheckContext context, string name, Given<Mass> given) => new(
        WrittenNumber.Of(context, name, given, DisplayKind.Mass),
        [],
        [new ReadingUse(name, given.Text, given.At, null)],
        [new TraceStep("m", name, "as written", given.Text, given.Text, "")]);
}
