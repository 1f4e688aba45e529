using Commission.Checks.Charge;
using Commission.Jobs.Model.Words;

namespace Commission.Checks.Air;

/// <summary>Return and supply air of one row of readings, the one that says most: settled before not, both states before one, late before early.</summary>
internal sealed class AirStates : IAnalysis<AirStates>
{
    private AirStates(ChargeRow? row, AirState? entering, AirState? leaving)
    {
        Row = row;
        Return = entering;
        Supply = leaving;
    }

    /// <summary>The row; null when no air was read.</summary>
    public ChargeRow? Row { get; }

    /// <summary>Return air; null when nothing of it was read.</summary>
    public AirState? Return { get; }

    /// <summary>Supply air; null when nothing of it was read.</summary>
    public AirState? Supply { get; }

    /// <summary>Whether both states are known.</summary>
    public bool AreKnown => Return is { WhyNot: null } && Supply is { WhyNot: null };

    /// <inheritdoc/>
    public static AirStates Create(CheckContext context)
    {
        var rows = context.Get<ChargeAnalysis>().Rows;
        var best = rows.Where(Has).Select((r, i) => (Row: r, Score: Score(r), Index: i)).OrderByDescending(x => x.Score).ThenByDescending(x => x.Index).Select(x => x.Row).FirstOrDefault();
        if (best is null)
            return new AirStates(null, null, null);
        var written = best.Written;
        var entering = written is { ReturnDryBulb: null, ReturnWetBulb: null, ReturnHumidity: null }
            ? null
            : AirState.Of(context, "return air", best.ReturnDryBulb, best.ReturnWetBulb);
        var leaving = written is { SupplyDryBulb: null, SupplyWetBulb: null, SupplyHumidity: null }
            ? null
            : AirState.Of(
                context, "supply air", best.SupplyDryBulb,
                WetBulbReading.Of(context, $"supply wet bulb, {best.Time}", ReadingName.SupplyAir, written.SupplyWetBulb, written.SupplyHumidity, best.SupplyDryBulb));
        return new AirStates(best, entering, leaving);
    }

    private static bool Has(ChargeRow row) => row.Written is { ReturnDryBulb: not null } or { SupplyDryBulb: not null } or { ReturnWetBulb: not null } or { SupplyWetBulb: not null };

    private static int Score(ChargeRow row)
    {
        var written = row.Written;
        var entering = written.ReturnDryBulb is not null && (written.ReturnWetBulb is not null || written.ReturnHumidity is not null);
        var leaving = written.SupplyDryBulb is not null && (written.SupplyWetBulb is not null || written.SupplyHumidity is not null);
        return (row.Settling.Block is null ? 4 : 0) + (entering ? 2 : 0) + (leaving ? 1 : 0);
    }
}
