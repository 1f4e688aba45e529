using System.Collections.Immutable;
using Commission.Checks.Air;
using Commission.Checks.Charge;
using Commission.Checks.Findings;
using Commission.Checks.Readings;
using Commission.Fluids;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Piping;

/// <summary>
/// What flows in the lines: heat taken up per mass and densities from the judged readings in cooling, and with a capacity the mass flow. A rated
/// capacity holds at rated temperatures, which is the largest doubt in it.
/// </summary>
internal sealed class CircuitFlow : IAnalysis<CircuitFlow>
{
    private readonly CheckContext context;
    private readonly Lazy<Uncertain> capacityDoubt;

    private CircuitFlow(CheckContext context)
    {
        this.context = context;
        capacityDoubt = new(() => context.Scope.Reading(
            0, 1.0 * context.Causes.Enter(RootCause.FromHalfWidth("capacity in these conditions", "rated capacity, common practice", context.Assume("assumption.capacity.rated")), DisplayKind.Percentage)));
        var analysis = context.Get<ChargeAnalysis>();
        HasReadings = analysis.Rows.Any(r => r.Mode == OperatingMode.Cooling && r.Written is { VaporPressure: not null, LiquidPressure: not null });
        Row = analysis.Judged(OperatingMode.Cooling, ChargeCycle.Has);
        if (Row is null)
        {
            var last = analysis.Last(OperatingMode.Cooling, ChargeCycle.Has);
            (WhyNot, Todo) = last?.Settling.Block is { } early
                ? (early, last.Settling.Todo!)
                : ("no reading in cooling has pressure and line temperature of both sides", "Read vapor and liquid side together.");
            return;
        }

        Cycle = ChargeCycle.Of(context, Row);
        if (Cycle.WhyNot is { } why)
        {
            (WhyNot, Todo) = (why, "Check the readings; the states have to be known on both sides.");
            return;
        }

        var fluid = context.Get<CircuitRefrigerant>().Fluid!;
        double Density(double p, double t, Fluids.Phase phase) => fluid.At(t, p, phase) is { Ok: true, Value: var state } ? state.Density : double.NaN;
        Vapor = Uncertain.Apply((p, t) => Density(p, t, Fluids.Phase.Vapor), Row.VaporPressure!.Value, Row.VaporLine!.Value);
        Liquid = Uncertain.Apply((p, t) => Density(p, t, Fluids.Phase.Liquid), Row.LiquidPressure!.Value, Row.LiquidLine!.Value);
    }

    /// <summary>Whether both sides were read in cooling; a system without a liquid port, or started in winter, has nothing to work a flow out of.</summary>
    public bool HasReadings { get; }

    /// <summary>The row; null when none could be judged.</summary>
    public ChargeRow? Row { get; }

    /// <summary>Why the states are not known, without a full stop; null when they are.</summary>
    public string? WhyNot { get; }

    /// <summary>What would help; null when they are known.</summary>
    public string? Todo { get; }

    /// <summary>Density of the vapor at the service valve, kg/m³.</summary>
    public Uncertain Vapor { get; } = Uncertain.Exact(0);

    /// <summary>Density of the liquid at the service valve, kg/m³.</summary>
    public Uncertain Liquid { get; } = Uncertain.Exact(0);

    private ChargeCycle? Cycle { get; }

    /// <inheritdoc/>
    public static CircuitFlow Create(CheckContext context) => new(context);

    /// <summary>Mass flow at a capacity, kg/s.</summary>
    /// <param name="capacity">The capacity.</param>
    public Uncertain At(Given<Power> capacity) =>
        WrittenFigure.Of(context, "capacity", capacity, DisplayKind.Capacity).Value * (1.0 + (capacity.Stated is null ? capacityDoubt.Value : Uncertain.Exact(0))) / Cycle!.Capacity;

    /// <summary>Names in a finding what the states rest on.</summary>
    /// <param name="finding">The finding.</param>
    public FindingBuilder UseIn(FindingBuilder finding)
    {
        if (Row is null)
            return finding;
        Row.Settling.NameIn(finding);
        return finding.UseAll(new[] { Row.VaporPressure, Row.VaporLine, Row.LiquidPressure, Row.LiquidLine }.OfType<CorrectedReading>());
    }

    /// <summary>The steps to a mass flow.</summary>
    /// <param name="capacity">The capacity.</param>
    /// <param name="what">Which capacity it is.</param>
    public ImmutableArray<TraceStep> Steps(Given<Power> capacity, string what)
    {
        var present = context.Present;
        return
        [
            new TraceStep("q", "heat taken up per mass", "h(vapor line) − h(liquid line)", $"{present.Text(Cycle!.Suction.Enthalpy, DisplayKind.Enthalpy)} − {present.Text(Cycle.Liquid.Enthalpy, DisplayKind.Enthalpy)}", present.Text(Cycle.Capacity, DisplayKind.Enthalpy), context.Get<CircuitSaturation>().Source),
            new TraceStep("ṁ", $"mass flow at {what}", "Q / q", $"{capacity.Text} / {present.Text(Cycle.Capacity.Value, DisplayKind.Enthalpy)}", present.Text(At(capacity), DisplayKind.MassFlow), "definition"),
        ];
    }
}
