using System.Collections.Immutable;
using Commission.Checks.Readings;
using Commission.Fluids;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;

namespace Commission.Checks.Charge;

/// <summary>The cycle through the measured states of a row: suction, compression, liquid, and what the throttle leaves.</summary>
internal sealed record ChargeCycle
{
    private ChargeCycle()
    {
    }

    /// <summary>Why the states cannot be worked out, without a full stop; null when they can.</summary>
    public string? WhyNot { get; private init; }

    /// <summary>Vapor at the service valve.</summary>
    public FluidState Suction { get; private init; }

    /// <summary>End of an ideal compression to the high pressure.</summary>
    public FluidState Isentropic { get; private init; }

    /// <summary>Measured discharge; null when the line was not read.</summary>
    public FluidState? Discharge { get; private init; }

    /// <summary>Liquid at the service valve.</summary>
    public FluidState Liquid { get; private init; }

    /// <summary>After the throttle, at the vapor pressure with the enthalpy of the liquid.</summary>
    public FluidState Throttled { get; private init; }

    /// <summary>Heat taken up by each kilogram, J/kg, with the doubt of the four readings.</summary>
    public Uncertain Capacity { get; private init; } = Uncertain.Exact(0);

    /// <summary>High over low pressure, both absolute.</summary>
    public Uncertain Ratio { get; private init; } = Uncertain.Exact(0);

    /// <summary>Readings it rests on.</summary>
    public ImmutableArray<CorrectedReading> Readings { get; private init; } = [];

    /// <summary>Whether a row has what a cycle needs.</summary>
    /// <param name="row">The row.</param>
    public static bool Has(ChargeRow row) => row.Written is { VaporPressure: not null, VaporLine: not null, LiquidPressure: not null, LiquidLine: not null };

    /// <summary>Works the states out.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="row">A row that <see cref="Has"/> what is needed.</param>
    public static ChargeCycle Of(CheckContext context, ChargeRow row)
    {
        if (row.Mode == OperatingMode.Heating || row is not { VaporPressure: { } low, VaporLine: { } vapor, LiquidPressure: { } high, LiquidLine: { } liquid })
            return None("vapor and liquid side were not both read in cooling", []);
        var circuit = context.Get<CircuitRefrigerant>();
        var readings = ImmutableArray.Create(low, vapor, high, liquid);
        if (circuit.Fluid is not { } fluid)
            return None($"{circuit.Designation} cannot be computed: {circuit.WhyNot}", readings);
        if (!(row.Superheat.Value?.Value > 0))
            return None(row.Superheat.WhyNot ?? "the vapor is not superheated, so its state is not known from pressure and temperature", readings);
        if (row.LiquidBubble?.Value is { Value: var bubble } && liquid.Value.Value >= bubble)
            return None("the liquid is not subcooled, so its state is not known from pressure and temperature", readings);
        var top = row.DischargePressure ?? high;
        if (row.DischargePressure is { } discharge)
            readings = readings.Add(discharge);
        var suction = fluid.At(vapor.Value.Value, low.Value.Value, Phase.Vapor);
        var condensed = fluid.At(liquid.Value.Value, high.Value.Value, Phase.Liquid);
        if (!suction.Ok || !condensed.Ok)
            return None((suction.Reason ?? condensed.Reason)!.TrimEnd('.'), readings);
        var ideal = fluid.AtPressureEntropy(top.Value.Value, suction.Value.Entropy);
        var throttled = fluid.AtPressureEnthalpy(low.Value.Value, condensed.Value.Enthalpy);
        if (!ideal.Ok || !throttled.Ok)
            return None((ideal.Reason ?? throttled.Reason)!.TrimEnd('.'), readings);
        FluidState? hot = null;
        if (row.DischargeLine is { } line && fluid.At(line.Value.Value, top.Value.Value, Phase.Vapor) is { Ok: true, Value: var measured } && measured.Enthalpy > suction.Value.Enthalpy)
        {
            hot = measured;
            readings = readings.Add(line);
        }

        double Capacity(double[] x) =>
            fluid.At(x[1], x[0], Phase.Vapor) is { Ok: true, Value: var a } && fluid.At(x[3], x[2], Phase.Liquid) is { Ok: true, Value: var b } ? a.Enthalpy - b.Enthalpy : double.NaN;
        return new ChargeCycle
        {
            Suction = suction.Value,
            Isentropic = ideal.Value,
            Discharge = hot,
            Liquid = condensed.Value,
            Throttled = throttled.Value,
            Capacity = Uncertain.Apply(Capacity, [low.Value, vapor.Value, high.Value, liquid.Value]),
            Ratio = top.Value / low.Value,
            Readings = readings,
        };
    }

    private static ChargeCycle None(string why, ImmutableArray<CorrectedReading> readings) => new() { WhyNot = why, Readings = readings };
}
