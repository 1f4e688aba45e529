using System.Globalization;
using Commission.Checks.AirReadings;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Decisions;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Air;

/// <summary>The airflow against the maker's figure, the design, and the least for its capacity; and one route against another.</summary>
internal sealed class AirflowCheck : ICheck
{
    public string Id => "air.airflow";

    public string Phase => Phases.Air;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var routes = context.Get<AirflowRoutes>();
        if (routes.Chosen is not { } route)
            yield break;
        if (route.Value is not { } flow)
        {
            yield return route.UseIn(context.Finding(this)).NotEvaluated($"airflow {route.Words}: {route.WhyNot}", route.Todo!, route.InFile);
            yield break;
        }

        var judged = false;
        foreach (var finding in new[] { Maker(context, route, flow), Design(context, route, flow), PerCapacity(context, route, flow) }.OfType<Finding>())
        {
            judged = true;
            yield return finding;
        }

        if (!judged)
            yield return route.UseIn(context.Finding(this)).Measure(flow, DisplayKind.AirFlow).RemarkUnknown(route.Readings).Information($"Airflow {context.Present.Text(flow, DisplayKind.AirFlow)} {route.Words}.", "neither the maker's figure nor a design airflow nor the capacity is written");
        foreach (var other in routes.Others)
            yield return Compare(context, route, flow, other);
    }

    private Finding? Maker(CheckContext context, AirflowRoute route, Uncertain flow)
    {
        if (context.Limits.Find(LimitIds.AirAirflow) is not { } limit || (limit.Lower is null && limit.Upper is null))
            return null;
        return Ended(context, Begin(context, route, "maker's figure"), route, new(flow, DisplayKind.AirFlow, route.Readings), context.State(limit), limit.Remark(context.Present.Units), "is what the maker asks for");
    }

    private Finding? Design(CheckContext context, AirflowRoute route, Uncertain flow)
    {
        // A maker's bare target is a design value too.
        var design = context.Job.Air!.DesignAirflow ?? (context.Limits.Find(LimitIds.AirAirflow) is { Lower: null, Upper: null } ? context.Job.Limits?.Airflow?.Target : null);
        if (design is null || !(design.Value.Si > 0))
            return null;
        var finding = Begin(context, route, "design").Use("design airflow", design);
        var present = context.Present;
        var share = (flow - design.Value.Si) / design.Value.Si;
        finding.Step("δ", "airflow against the design", "q_V/q_V_design − 1", $"{present.Text(flow.Value, DisplayKind.AirFlow)} / {design.Text} − 1", present.Text(share, DisplayKind.Percentage), "definition");
        if (context.Limits.Find(LimitIds.AirAirflowDesignTolerance) is not { Upper: { } tolerance } limit)
            return finding.Measure(share, DisplayKind.Percentage).Information($"Airflow {present.Text(flow, DisplayKind.AirFlow)} {route.Words}; the design asks for {design.Text}.", "no pack in use sets a tolerance around the design");
        var state = context.State(limit) with { Text = $"{design.Text} ± {tolerance.Text}" };
        finding.Judge(share.On(state), DisplayKind.Percentage, state).RemarkUnknown(route.Readings);
        Reserve(finding, route);
        var text = $"Airflow {present.Text(flow, DisplayKind.AirFlow)} {route.Words}, {present.Text(share.Value, DisplayKind.Percentage)} from the design of {design.Text}";
        if (finding.Passes)
            return finding.Say($"{text}.").Build();
        if (context.Limits.Find(LimitIds.AirAirflowGradeTwo) is { Upper: { } second } grade && share.Value < 0 && -share.Value <= second.Si)
            finding.Show(context.State(grade)).Remark($"It is within the second grade ({second.Text} short, {grade.Source}).");
        return finding.Say($"{text}: more than the {tolerance.Text} allowed.").Next(this.WhenItFails()).Build();
    }

    private Finding? PerCapacity(CheckContext context, AirflowRoute route, Uncertain flow)
    {
        var equipment = context.Job.Equipment;
        if (equipment.Capacity is not { } capacity || !(capacity.Value.Si > 0) || context.Get<ChargeAnalysis>().IsRefrigeration || context.Limits.Find(LimitIds.AirAirflowMinimum) is not { } limit)
            return null;
        var present = context.Present;
        var per = flow / Written.Rating(context, "capacity", capacity, DisplayKind.Capacity).Value;
        var finding = Begin(context, route, "for its capacity").Use("capacity", capacity)
            .Step("q_V/Q", "airflow for each capacity", "q_V / Q_rated", $"{present.Text(flow.Value, DisplayKind.AirFlow)} / {capacity.Text}", present.Text(per, DisplayKind.FlowPerCapacity), "definition");
        if (context.Limits.Find(LimitIds.AirAirflowNominal) is { Target: not null } nominal)
            finding.Remark($"Nominal is {context.State(nominal).Text}: {nominal.Source} ({nominal.Mark}).");
        return Ended(context, finding, route, new(per, DisplayKind.FlowPerCapacity, route.Readings), context.State(limit), limit.Remark(present.Units), "is asked for");
    }

    private Finding Compare(CheckContext context, AirflowRoute route, Uncertain flow, AirflowRoute other)
    {
        var present = context.Present;
        var finding = other.UseIn(Begin(context, route, $"{MemberWords.Of(route.Method.ToString())} against {MemberWords.Of(other.Method.ToString())}"));
        var agreement = Agreement.Of(flow, other.Value!);
        finding.Measure(agreement.Difference, DisplayKind.AirFlow)
            .Step("E_n", "agreement of the two routes", "|a − b| / U(a − b), shared causes taken out", $"{present.Text(flow.Value, DisplayKind.AirFlow)}, {present.Text(other.Value!.Value, DisplayKind.AirFlow)}, U {present.Text(agreement.Difference.Expanded, DisplayKind.AirFlow)}", agreement.NormalizedError.ToString("0.00", CultureInfo.InvariantCulture), "ISO 13528 and ISO/IEC 17043 (from memory)");
        return finding.Information(
            $"Airflow {present.Text(flow, DisplayKind.AirFlow)} {route.Words} and {present.Text(other.Value!, DisplayKind.AirFlow)} {other.Words}: the two {(agreement.Agrees ? "agree within their uncertainty" : "do not agree within their uncertainty")}.",
            "compares two routes to one number");
    }

    private Finding Ended(CheckContext context, FindingBuilder finding, AirflowRoute route, JudgedNumber number, LimitStatement state, string? remark, string asked)
    {
        var (y, kind, readings) = number;
        finding.Judge(y.On(state), kind, state).Remark(remark).RemarkUnknown(readings);
        Reserve(finding, route);
        if (y.On(state).Value < state.LowerSi)
            FanLawsTo(context, finding, state.LowerSi.Value / y.Value);
        var text = $"Airflow {context.Present.Text(y, kind)} {route.Words}; {state.Text} {asked}";
        return finding.Passes ? finding.Say($"{text}.").Build() : finding.Say($"{text}: {(y.Value < state.LowerSi ? "too little" : "too much")} air.").Next(this.WhenItFails()).Build();
    }

    // What more speed alone would cost in the ducts as they are: often the reason to mend the ducts first.
    private static void FanLawsTo(CheckContext context, FindingBuilder finding, double speed)
    {
        var present = context.Present;
        var air = context.Job.Air!;
        var costs = new List<string>();
        var reading = context.Get<StaticReading>();
        if (reading.External is { } external)
        {
            finding.UseAll(reading.Readings);
            foreach (var use in reading.Uses)
                finding.Use(use);
            costs.Add($"static pressure {present.Text(FanLaws.Pressure(external.Value, speed), DisplayKind.StaticPressure, present.Units[DisplayKind.StaticPressure].Decimals + 1)}");
        }

        if (air.BlowerPower is { } power)
        {
            finding.Use("blower power", power);
            costs.Add($"blower power {present.Text(FanLaws.Power(power.Value.Si, speed), DisplayKind.Power)}");
        }

        if (costs.Count == 0 || !double.IsFinite(speed))
            return;
        var factor = speed.ToString("0.00", CultureInfo.InvariantCulture);
        finding.Step("n", "blower speed that would do, in the ducts as they are", FanLaws.Formula, $"{factor} times the speed", string.Join(", ", costs), "fan laws")
            .Remark($"By the fan laws {factor} times the speed would bring it there, at {string.Join(" and ", costs)}.");
    }

    private static void Reserve(FindingBuilder finding, AirflowRoute route)
    {
        if (route.Reservation is { } why && finding.Passes)
            finding.Reserve(why).Next("Write what is missing, or measure the airflow another way.");
    }

    private FindingBuilder Begin(CheckContext context, AirflowRoute route, string subject) =>
        route.UseIn(context.Finding(this, subject)).Use("airflow method", context.Job.Air!.Airflow?.Method);
}

/// <summary>Supply over return dry bulb in heating against the maker's range.</summary>
internal sealed class HeatRiseCheck : ICheck
{
    public string Id => "air.heat-rise";

    public string Phase => Phases.Air;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Get<ChargeAnalysis>().Spoken(OperatingMode.Heating, r => r.Written is { ReturnDryBulb: not null, SupplyDryBulb: not null }) is { } row)
            yield return Judge(context, row.Time, row.ReturnDryBulb!, row.SupplyDryBulb!, new ChargeGates(row.Settling));
        else if (context.Get<AirflowRoutes>().HeatRiseAir is var (entering, leaving))
            yield return Judge(context, "heat-rise test", entering, leaving, new ChargeGates());
    }

    private Finding Judge(CheckContext context, string subject, CorrectedReading entering, CorrectedReading leaving, ChargeGates gates)
    {
        var present = context.Present;
        var rise = leaving.Value - entering.Value;
        var text = present.Text(rise, DisplayKind.TemperatureDifference);
        var finding = context.Finding(this, subject).Use(entering).Use(leaving)
            .Step("ΔT", "temperature rise", "T_supply − T_return", $"{present.Text(leaving.Value.Value, DisplayKind.Temperature)} − {present.Text(entering.Value.Value, DisplayKind.Temperature)}", text)
            .Measure(rise, DisplayKind.TemperatureDifference);
        gates.NameIn(finding);
        if (gates.Blocked is var (why, todo))
            return finding.Say($"The air warmed by {text}; this is not judged: {why}.").NotEvaluated(why, todo);
        if (context.Limits.Find(LimitIds.AirHeatRise) is not { } limit || (limit.Lower is null && limit.Upper is null))
            return finding.Information($"The air warmed by {text}.", "the maker's range is not written");
        var state = context.State(limit);
        return finding.Remark(limit.Remark(present.Units)).JudgeCharge(
            context, new(rise.On(state), DisplayKind.TemperatureDifference, [entering, leaving]), state, gates, $"The air warmed by {text}; {state.Text} is asked for.", this.WhenItFails());
    }
}
