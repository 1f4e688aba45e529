using System.Collections.Immutable;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;

namespace Commission.Checks.Charge;

/// <summary>
/// The readings on the running system, row by row, and how this system is charged at all. Of the rows that have settled, the last one
/// with the readings a check needs is judged: it shows the charge that was left. Earlier ones are drawn and listed.
/// </summary>
internal sealed class ChargeAnalysis : IAnalysis<ChargeAnalysis>
{
    private readonly CheckContext context;

    private ChargeAnalysis(CheckContext context)
    {
        this.context = context;
        Charging = context.Job.Charging;
        Rows = Charging is { } charging ? [.. charging.Readings.Select(r => new ChargeRow(context, charging, r))] : [];
        AsFound = context.Job.AsFound is { } found ? [.. found.Readings.Select(r => new ChargeRow(context, null, r))] : [];
        ByWeightOnly = WeightOnly(context.Job);
    }

    /// <summary>The charging; null when the job has none.</summary>
    public Charging? Charging { get; }

    /// <summary>The rows in the order of the job file.</summary>
    public ImmutableArray<ChargeRow> Rows { get; }

    /// <summary>Rows taken before any work.</summary>
    public ImmutableArray<ChargeRow> AsFound { get; }

    /// <summary>Why this system is charged by weight alone, as a sentence without a full stop; null when readings say something of its charge.</summary>
    public string? ByWeightOnly { get; }

    /// <summary>The metering device; null when the job does not say.</summary>
    public MeteringKind? Metering => context.Job.Equipment.Metering?.Kind.Value;

    /// <summary>Whether the metering device has no valve: superheat is the criterion.</summary>
    public bool HasFixedMetering => Metering is MeteringKind.FixedOrifice or MeteringKind.Capillary;

    /// <summary>Whether a valve holds the superheat: subcooling is the criterion.</summary>
    public bool HasValve => Metering is MeteringKind.TXV or MeteringKind.EEV;

    /// <summary>Whether the circuit has a receiver, which hides its charge from the subcooling.</summary>
    public bool HasReceiver => context.Job.Equipment.Receiver?.Value ?? false;

    /// <summary>Whether the circuit is for refrigeration and not for comfort.</summary>
    public bool IsRefrigeration => context.Job.Equipment.System.Value == SystemKind.Refrigeration
        || context.Job.Equipment.Application?.Value is Application.HighTemperature or Application.MediumTemperature or Application.LowTemperature or Application.Ice;

    /// <summary>Whether a factory-sealed unit in one housing was left sealed: nobody put a gauge on it, and nobody weighed anything in or out.</summary>
    public bool IsLeftSealed => context.Job.Equipment.System.Value == SystemKind.Packaged
        && Charging is { Scale.IsEmpty: true, Added: null, Removed: null, Events.IsEmpty: true }
        && Rows.All(r => r.Written is { VaporPressure: null, LiquidPressure: null, TrueSuctionPressure: null, DischargePressure: null });

    /// <inheritdoc/>
    public static ChargeAnalysis Create(CheckContext context) => new(context);

    /// <summary>The row a check judges: the last settled one that has what it needs.</summary>
    /// <param name="mode">Cooling or heating.</param>
    /// <param name="has">Whether a row has the readings.</param>
    /// <returns>The row; null when none has settled.</returns>
    public ChargeRow? Judged(OperatingMode mode, Func<ChargeRow, bool> has) =>
        Rows.LastOrDefault(r => r.Mode == mode && r.Settling.Block is null && has(r));

    /// <summary>The last row that has what a check needs, settled or not.</summary>
    /// <param name="mode">Cooling or heating.</param>
    /// <param name="has">Whether a row has the readings.</param>
    public ChargeRow? Last(OperatingMode mode, Func<ChargeRow, bool> has) => Rows.LastOrDefault(r => r.Mode == mode && has(r));

    /// <summary>The row a check speaks of: the judged one, else the last that has the readings, which then cannot be judged.</summary>
    /// <param name="mode">Cooling or heating.</param>
    /// <param name="has">Whether a row has the readings.</param>
    public ChargeRow? Spoken(OperatingMode mode, Func<ChargeRow, bool> has) => Judged(mode, has) ?? Last(mode, has);

    private static string? WeightOnly(Job job)
    {
        var limits = job.Limits;
        if (limits?.ChargeBy is { Value: ChargeMethod.Weight })
            return "the maker charges this system by weight";
        return job.Equipment.System.Value switch
        {
            SystemKind.MultiSplit => "a multi-split is charged by weight",
            SystemKind.VRF => "a variable-flow system is charged by weight",
            SystemKind.DuctlessSplit when !MakerReads(limits) => "a ductless split is charged by weight unless its maker says otherwise",
            _ => null,
        };
    }

    private static bool MakerReads(MakerLimits? limits) => limits is not null
        && (limits.ChargeBy is not null || limits.Superheat is not null || limits.Subcooling is not null
            || limits.Charts.Any(c => c.For.Value is ChartQuantity.Superheat or ChartQuantity.Subcooling));
}
