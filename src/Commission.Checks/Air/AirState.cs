using System.Collections.Immutable;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Fluids.Air;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;

namespace Commission.Checks.Air;

/// <summary>
/// Moist air from dry and wet bulb at the site's pressure, by the SI relations of the ASHRAE Handbook, chapter 1, with the doubt of the
/// readings, of the barometer and of the perfect-gas form itself. Extensive numbers are for each kilogram of dry air.
/// </summary>
internal sealed record AirState
{
    /// <summary>Where the relations come from, as a trace cites them.</summary>
    public static Message Source => AirMessages.StateSource;

    private AirState()
    {
    }

    /// <summary>Which air: return or supply.</summary>
    public required Message Name { get; init; }

    /// <summary>Why the state is not known, without a full stop; null when it is.</summary>
    public Message? WhyNot { get; private init; }

    /// <summary>What would make it known; null when it is.</summary>
    public Message? Todo { get; private init; }

    /// <summary>Dry and wet bulb.</summary>
    public ImmutableArray<CorrectedReading> Readings { get; private init; } = [];

    /// <summary>Dry bulb, K.</summary>
    public Uncertain DryBulb { get; private init; } = Uncertain.Exact(0);

    /// <summary>Wet bulb, K; where it was read a little above the dry bulb, the dry bulb.</summary>
    public Uncertain WetBulb { get; private init; } = Uncertain.Exact(0);

    /// <summary>Humidity ratio, kg/kg.</summary>
    public Uncertain HumidityRatio { get; private init; } = Uncertain.Exact(0);

    /// <summary>Enthalpy, J/kg, zero for dry air at 0 °C.</summary>
    public Uncertain Enthalpy { get; private init; } = Uncertain.Exact(0);

    /// <summary>Relative humidity, 0 to 1.</summary>
    public Uncertain RelativeHumidity { get; private init; } = Uncertain.Exact(0);

    /// <summary>Dew point, K; null for dry air.</summary>
    public Uncertain? DewPoint { get; private init; }

    /// <summary>Volume, m³/kg.</summary>
    public Uncertain Volume { get; private init; } = Uncertain.Exact(0);

    /// <summary>Whether the wet bulb was read above the dry bulb, by no more than U: the air is taken as saturated.</summary>
    public bool IsTakenAsSaturated { get; private init; }

    /// <summary>The state.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="name">Which air: return or supply.</param>
    /// <param name="dry">Dry bulb; null when it was not read.</param>
    /// <param name="wet">Wet bulb, read or worked out from the humidity; null when there is none.</param>
    public static AirState Of(CheckContext context, Message name, CorrectedReading? dry, CorrectedReading? wet)
    {
        if (dry is null || wet is null)
        {
            return new AirState
            {
                Name = name,
                WhyNot = dry is null ? AirMessages.StateNoDryBulb(name) : AirMessages.StateNoWetBulb(name),
                Todo = AirMessages.StateNotReadNext,
                Readings = dry is null ? [] : [dry],
            };
        }

        var atmosphere = context.Get<SiteAtmosphere>().Value;

        // Two bulbs are two sensors: what the instrument states for each does not cancel between them.
        var above = wet.Value.Value - dry.Value.Value;
        if (above > Math.Sqrt((wet.Value.Expanded * wet.Value.Expanded) + (dry.Value.Expanded * dry.Value.Expanded)))
            return None(name, dry, wet, AirMessages.StateWetAboveDry(name), AirMessages.StateWetAboveDryNext);
        var saturated = above > 0;
        var state = MoistAir.FromWetBulb(dry.Value.Value, Math.Min(wet.Value.Value, dry.Value.Value), atmosphere.Value);
        if (!state.Ok)
            return None(name, dry, wet, state.Reason, AirMessages.StateImpossibleNext);
        Uncertain[] inputs = [dry.Value, wet.Value, atmosphere];
        Uncertain From(Func<MoistAirState, double> property) => Uncertain.Apply(
            x => MoistAir.FromWetBulb(x[0], Math.Min(x[1], x[0]), x[2]) is { Ok: true, Value: var air } ? property(air) : double.NaN, inputs);

        // Enthalpy and volume are linear in W, so the form's share of W passes straight into them.
        var form = context.Get<MoistAirForm>();
        var now = state.Value;
        var withoutWater = MoistAir.FromHumidityRatio(now.DryBulb, 0, now.Pressure).Value;
        var ratio = From(air => air.HumidityRatio);
        return new AirState
        {
            Name = name,
            Readings = [dry, wet],
            DryBulb = dry.Value,
            WetBulb = saturated ? dry.Value : wet.Value,
            HumidityRatio = ratio + (form.HumidityRatio * now.HumidityRatio),
            Enthalpy = From(air => air.Enthalpy) + (form.HumidityRatio * (now.Enthalpy - withoutWater.Enthalpy)) + form.Enthalpy,
            RelativeHumidity = From(air => air.RelativeHumidity) + (form.HumidityRatio * now.RelativeHumidity),
            DewPoint = now.DewPoint is null ? null : From(air => air.DewPoint ?? double.NaN) + DewPointForm(now, form.HumidityRatio),
            Volume = From(air => air.SpecificVolume) + (form.HumidityRatio * (now.SpecificVolume - withoutWater.SpecificVolume)),
            IsTakenAsSaturated = saturated,
        };
    }

    /// <summary>The dry-bulb and humidity ratio on a saturation or humidity line, for figures.</summary>
    /// <param name="kelvin">Dry bulb, K.</param>
    /// <param name="relativeHumidity">0 to 1.</param>
    /// <param name="pascals">Pressure of the site.</param>
    /// <returns>kg/kg; null where the air does not exist.</returns>
    public static double? RatioAt(double kelvin, double relativeHumidity, double pascals) =>
        MoistAir.FromRelativeHumidity(kelvin, relativeHumidity, pascals) is { Ok: true, Value: var air } ? air.HumidityRatio : null;

    // A little less water stays below saturation, where the dew point exists.
    private static Uncertain DewPointForm(MoistAirState now, Uncertain form)
    {
        const double Less = 1e-4;
        var less = MoistAir.FromHumidityRatio(now.DryBulb, now.HumidityRatio * (1 - Less), now.Pressure);
        var slope = less.Ok && less.Value.DewPoint is { } dew && now.DewPoint is { } here ? (here - dew) / Less : 0;
        return form * slope;
    }

    private static AirState None(Message name, CorrectedReading dry, CorrectedReading wet, Message why, Message todo) =>
        new() { Name = name, WhyNot = why, Todo = todo, Readings = [dry, wet] };
}

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
            : AirState.Of(context, AirMessages.AirReturn, best.ReturnDryBulb, best.ReturnWetBulb);
        var leaving = written is { SupplyDryBulb: null, SupplyWetBulb: null, SupplyHumidity: null }
            ? null
            : AirState.Of(
                context, AirMessages.AirSupply, best.SupplyDryBulb,
                WetBulbReading.Of(context, context.Present.Text(AirMessages.ReadingSupplyWetBulb(new(best.Time))), ReadingName.SupplyAir, written.SupplyWetBulb, written.SupplyHumidity, best.SupplyDryBulb));
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

/// <summary>
/// How far the perfect-gas relations of moist air may be from real moist air. One cause for the humidity ratio and one for the enthalpy,
/// shared by every state of the job: between two states of like humidity most of it cancels, as it does in nature.
/// </summary>
internal sealed class MoistAirForm : IAnalysis<MoistAirForm>
{
    private MoistAirForm(Uncertain humidityRatio, Uncertain enthalpy)
    {
        HumidityRatio = humidityRatio;
        Enthalpy = enthalpy;
    }

    /// <summary>Error of a humidity ratio as a share of it; zero with its doubt.</summary>
    public Uncertain HumidityRatio { get; }

    /// <summary>Error of an enthalpy, J for each kilogram of dry air; zero with its doubt.</summary>
    public Uncertain Enthalpy { get; }

    /// <inheritdoc/>
    public static MoistAirForm Create(CheckContext context)
    {
        var source = AirMessages.FormSource;
        var ratio = RootCause.FromHalfWidth(AirMessages.FormRatio, source, context.Assume(LimitIds.AssumptionMoistAirHumidityRatio));
        var enthalpy = RootCause.FromHalfWidth(AirMessages.FormEnthalpy, source, context.Assume(LimitIds.AssumptionMoistAirEnthalpy));
        return new MoistAirForm(
            context.Scope.Reading(0, 1.0 * context.Causes.Enter(ratio, DisplayKind.Percentage)),
            context.Scope.Reading(0, 1.0 * context.Causes.Enter(enthalpy, DisplayKind.Enthalpy)));
    }
}
