using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Charge;
using Commission.Checks.Findings;
using Commission.Checks.Readings;
using Commission.Checks.Tables;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Air;

/// <summary>
/// Heat the air gives up in cooling, from its mass flow and the enthalpies of return and supply air. Sensible heat counts what cooling at the
/// return's moisture would take; the rest is latent, so that the two close exactly. The heat the condensate carries away stays in the total.
/// </summary>
internal sealed class AirCapacity : IAnalysis<AirCapacity>
{
    private const double BtuPerHour = 1055.05585262 / 3600;
    private const double BtuPerPound = 2326;
    private const double CubicFootPerMinute = 0.028316846592 / 60;

    private AirCapacity()
    {
    }

    /// <summary>Whether the job has anything a capacity could be made of: an airflow, or both states of the air.</summary>
    public bool HasSubject { get; private init; }

    /// <summary>Why there is no capacity, without a full stop; null when there is one.</summary>
    public string? WhyNot { get; private init; }

    /// <summary>What would help; null when there is one.</summary>
    public string? Todo { get; private init; }

    /// <summary>Total heat, W; null when it is not known.</summary>
    public Uncertain? Total { get; private init; }

    /// <summary>Sensible heat, W.</summary>
    public Uncertain Sensible { get; private init; } = Uncertain.Exact(0);

    /// <summary>The row of readings; null when there is none.</summary>
    public ChargeRow? Row { get; private init; }

    private AirflowRoute? Route { get; init; }

    private ImmutableArray<CorrectedReading> Readings { get; init; } = [];

    private ImmutableArray<TraceStep> Steps { get; init; } = [];

    /// <inheritdoc/>
    public static AirCapacity Create(CheckContext context)
    {
        var states = context.Get<AirStates>();
        var route = context.Get<AirflowRoutes>().Chosen;
        if (states.Row is null || states.Row.Mode == OperatingMode.Heating || (route is null && !states.AreKnown))
            return new AirCapacity();
        var readings = new[] { states.Return, states.Supply }.OfType<AirState>().SelectMany(s => s.Readings).ToImmutableArray();
        AirCapacity Not(string why, string todo) => new() { HasSubject = true, WhyNot = why, Todo = todo, Row = states.Row, Route = route, Readings = readings };
        if (route is null)
            return Not("the airflow is not known", "Measure the airflow, or write the maker's fan table and the static pressure.");
        if (route.Value is not { } flow)
            return Not($"the airflow is not known: {route.WhyNot}", route.Todo!);
        if (states.Return is not { WhyNot: null } entering)
            return Not(states.Return?.WhyNot ?? "the return air was not read", states.Return?.Todo ?? "Read dry and wet bulb of the return air.");
        if (states.Supply is not { WhyNot: null } leaving)
            return Not(states.Supply?.WhyNot ?? "the supply air was not read", states.Supply?.Todo ?? "Read dry and wet bulb of the supply air.");

        // A hood at the supply grilles counts supply air; every other route counts what the blower draws in.
        var counted = route.Method == AirflowMethod.Hood ? leaving : entering;
        var mass = flow / counted.Volume;
        var total = mass * (entering.Enthalpy - leaving.Enthalpy);
        var heatCapacity = (entering.HumidityRatio * 1860) + 1006;
        var sensible = mass * heatCapacity * (entering.DryBulb - leaving.DryBulb);
        return new AirCapacity
        {
            HasSubject = true,
            Total = total,
            Sensible = sensible,
            Row = states.Row,
            Route = route,
            Readings = readings,
            Steps = MakeSteps(context, flow, counted, mass, entering, leaving, total, sensible),
        };
    }

    /// <summary>Names in a finding what the capacity rests on, and adds how it came about.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="finding">The finding.</param>
    public FindingBuilder UseIn(CheckContext context, FindingBuilder finding)
    {
        Route?.UseIn(finding);
        finding.UseAll(Readings);
        foreach (var use in context.Get<SiteAtmosphere>().Uses)
            finding.Use(use);
        return finding.Add(Steps);
    }

    private static ImmutableArray<TraceStep> MakeSteps(
        CheckContext context, Uncertain flow, AirState counted, Uncertain mass, AirState entering, AirState leaving, Uncertain total, Uncertain sensible)
    {
        var present = context.Present;
        var atmosphere = context.Get<SiteAtmosphere>();
        var difference = entering.Enthalpy - leaving.Enthalpy;
        var density = AirFactors.DensityRatio(atmosphere.Value.Value, null);
        var field = AirFactors.Total(density) * (flow.Value / CubicFootPerMinute) * (difference.Value / BtuPerPound) * BtuPerHour;
        string H(AirState air) => present.Text(AirText.Enthalpy(present, air.Enthalpy).Value, DisplayKind.Enthalpy);
        return
        [
            atmosphere.Step,
            new TraceStep("ṁ", "mass flow of dry air", "V̇ / v", $"{present.Text(flow.Value, DisplayKind.AirFlow)} at the {counted.Name}", present.Text(mass.Value, DisplayKind.MassFlow), AirState.Source),
            new TraceStep("Δh", "enthalpy given up", "h_return − h_supply", $"{H(entering)} − {H(leaving)}", present.Text(difference, DisplayKind.Enthalpy), AirState.Source),
            new TraceStep("Q", "total capacity", "ṁ · Δh", $"{present.Text(mass.Value, DisplayKind.MassFlow)} · {present.Text(difference.Value, DisplayKind.Enthalpy)}", present.Text(total, DisplayKind.Capacity), "definition; the condensate's heat is not taken off"),
            new TraceStep(
                "Q_field", "the same by the field factor, for comparison", "4.5·(p_atm/14.696 psia)·cfm·Δh",
                string.Create(CultureInfo.InvariantCulture, $"{AirFactors.Total(density):0.000} · {flow.Value / CubicFootPerMinute:0} cfm · {difference.Value / BtuPerPound:0.000} Btu/lb"),
                present.Text(field, DisplayKind.Capacity), AirFactors.Source),
            new TraceStep(
                "Q_s", "sensible capacity", "ṁ · (1.006 + 1.86·W_return) · (t_return − t_supply)",
                $"{present.Text(entering.DryBulb.Value, DisplayKind.Temperature)} − {present.Text(leaving.DryBulb.Value, DisplayKind.Temperature)}", present.Text(sensible, DisplayKind.Capacity), AirState.Source),
        ];
    }
}
