using System.Collections.Frozen;
using System.Collections.Immutable;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;

namespace Commission.Checks.Readings;

/// <summary>Which instrument read what, by the <c>reads</c> of each instrument and the <c>with</c> of a phase.</summary>
public sealed class InstrumentKit : IAnalysis<InstrumentKit>
{
    private readonly FrozenDictionary<string, UsedInstrument> byId;
    private readonly Dictionary<ReadingName, UsedInstrument> byReading = [];

    private InstrumentKit(IEnumerable<UsedInstrument> instruments)
    {
        All = [.. instruments];
        byId = All.ToFrozenDictionary(i => i.Id, StringComparer.Ordinal);
        foreach (var instrument in All)
        {
            foreach (var reading in instrument.Described.Reads)
                byReading.TryAdd(reading.Value, instrument);
        }
    }

    /// <summary>The instruments in the order of the job file.</summary>
    public ImmutableArray<UsedInstrument> All { get; }

    /// <inheritdoc/>
    public static InstrumentKit Create(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return new InstrumentKit(context.Job.Instruments.DistinctBy(i => i.Id.Value).Select(i => new UsedInstrument(i, context)));
    }

    /// <summary>The instrument of a name.</summary>
    /// <param name="id">Its id in the job.</param>
    public UsedInstrument? Find(string id) => byId.GetValueOrDefault(id);

    /// <summary>The instrument a reading was taken on: the phase's <c>with</c>, else the one whose <c>reads</c> names it.</summary>
    /// <param name="reading">What was read.</param>
    /// <param name="with">The instruments the phase names; the first that exists is taken.</param>
    public UsedInstrument? For(ReadingName reading, ImmutableArray<Given<string>> with)
    {
        if (!with.IsDefaultOrEmpty)
        {
            foreach (var named in with)
            {
                if (byId.TryGetValue(named.Value, out var chosen) && chosen.CanRead(reading))
                    return chosen;
            }
        }

        if (byReading.TryGetValue(reading, out var known))
            return known;
        return Wider(reading) is { } wider ? byReading.GetValueOrDefault(wider) : null;
    }

    private static ReadingName? Wider(ReadingName reading) => reading switch
    {
        ReadingName.Voltage or ReadingName.Current or ReadingName.Capacitance or ReadingName.PhaseRotation => ReadingName.Electrical,
        ReadingName.TrueSuctionPressure => ReadingName.VaporPressure,
        ReadingName.DischargePressure => ReadingName.LiquidPressure,
        _ => null,
    };
}
