using System.Globalization;
using Commission.Checks.AirReadings;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Decisions;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
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
            yield return route.UseIn(context.Finding(this)).NotEvaluated(AirMessages.AirflowNone(route.Words, route.WhyNot!), route.Todo!, route.InFile);
            yield break;
        }

        var judged = false;
        foreach (var finding in new[] { Maker(context, route, flow), Design(context, route, flow), PerCapacity(context, route, flow) }.OfType<Finding>())
        {
            judged = true;
            yield return finding;
        }

        if (!judged)
            yield return route.UseIn(context.Finding(this)).Measure(flow, DisplayKind.AirFlow).RemarkUnknown(route.Readings).Information(AirMessages.AirflowWas(context.Present.InMessage(flow, DisplayKind.AirFlow), route.Words), AirMessages.AirflowNoFigure);
        foreach (var other in routes.Others)
            yield return Compare(context, route, flow, other);
    }

    private Finding? Maker(CheckContext context, AirflowRoute route, Uncertain flow)
    {
        if (context.Limits.Find(LimitIds.AirAirflow) is not { } limit || (limit.Lower is null && limit.Upper is null))
            return null;
        return Ended(context, Begin(context, route, AirMessages.AirflowSubjectMaker), route, new(flow, DisplayKind.AirFlow, route.Readings), context.State(limit), limit.Remark(context.Present.Units), AirMessages.AirflowAskedMaker);
    }

    private Finding? Design(CheckContext context, AirflowRoute route, Uncertain flow)
    {
        // A maker's bare target is a design value too.
        var design = context.Job.Air!.DesignAirflow ?? (context.Limits.Find(LimitIds.AirAirflow) is { Lower: null, Upper: null } ? context.Job.Limits?.Airflow?.Target : null);
        if (design is null || !(design.Value.Si > 0))
            return null;
        var finding = Begin(context, route, AirMessages.SubjectDesign).Use(AirMessages.ReadingDesignAirflow, design);
        var present = context.Present;
        var share = (flow - design.Value.Si) / design.Value.Si;
        finding.Step("δ", AirMessages.AirflowAgainstDesign, "q_V/q_V_design − 1", $"{present.Text(flow.Value, DisplayKind.AirFlow)} / {design.Text} − 1", present.Text(share, DisplayKind.Percentage), AirMessages.Definition);
        if (context.Limits.Find(LimitIds.AirAirflowDesignTolerance) is not { Upper: { } tolerance } limit)
            return finding.Measure(share, DisplayKind.Percentage).Information(AirMessages.AirflowDesignOnly(present.InMessage(flow, DisplayKind.AirFlow), route.Words, new(design.Text)), AirMessages.AirflowDesignNoTolerance);
        var state = context.State(limit) with { Text = $"{design.Text} ± {tolerance.Text}" };
        finding.Judge(share.On(state), DisplayKind.Percentage, state).RemarkUnknown(route.Readings);
        Reserve(finding, route);
        var (was, by, asked) = (present.InMessage(flow, DisplayKind.AirFlow), present.InMessage(share.Value, DisplayKind.Percentage), new TextValue(design.Text));
        if (finding.Passes)
            return finding.Say(AirMessages.AirflowDesignWithin(was, route.Words, by, asked)).Build();
        if (context.Limits.Find(LimitIds.AirAirflowGradeTwo) is { Upper: { } second } grade && share.Value < 0 && -share.Value <= second.Si)
            finding.Show(context.State(grade)).Remark(AirMessages.AirflowGradeTwo(new(second.Text), new(grade.Source)));
        return finding.Say(AirMessages.AirflowDesignBeyond(was, route.Words, by, asked, new(tolerance.Text))).Next(this.WhenItFails()).Build();
    }

    private Finding? PerCapacity(CheckContext context, AirflowRoute route, Uncertain flow)
    {
        var equipment = context.Job.Equipment;
        if (equipment.Capacity is not { } capacity || !(capacity.Value.Si > 0) || context.Get<ChargeAnalysis>().IsRefrigeration || context.Limits.Find(LimitIds.AirAirflowMinimum) is not { } limit)
            return null;
        var present = context.Present;
        var per = flow / Written.Rating(context, present.Text(ReadingsMessages.Capacity), capacity, DisplayKind.Capacity).Value;
        var finding = Begin(context, route, AirMessages.AirflowSubjectCapacity).Use(ReadingsMessages.Capacity, capacity)
            .Step("q_V/Q", AirMessages.AirflowPerCapacity, "q_V / Q_rated", $"{present.Text(flow.Value, DisplayKind.AirFlow)} / {capacity.Text}", present.Text(per, DisplayKind.FlowPerCapacity), AirMessages.Definition);
        if (context.Limits.Find(LimitIds.AirAirflowNominal) is { Target: not null } nominal)
            finding.Remark(AirMessages.AirflowNominal(new(context.State(nominal).Text), new(nominal.Source), new(nominal.Mark)));
        return Ended(context, finding, route, new(per, DisplayKind.FlowPerCapacity, route.Readings), context.State(limit), limit.Remark(present.Units), AirMessages.AirflowAsked);
    }

    private Finding Compare(CheckContext context, AirflowRoute route, Uncertain flow, AirflowRoute other)
    {
        var present = context.Present;
        var finding = other.UseIn(Begin(context, route, AirMessages.AirflowSubjectAgainst(new(MemberWords.Of(route.Method.ToString())), new(MemberWords.Of(other.Method.ToString())))));
        var agreement = Agreement.Of(flow, other.Value!);
        finding.Measure(agreement.Difference, DisplayKind.AirFlow)
            .Step("E_n", AirMessages.RoutesAgreement, AirMessages.RoutesAgreementFormula, $"{present.Text(flow.Value, DisplayKind.AirFlow)}, {present.Text(other.Value!.Value, DisplayKind.AirFlow)}, U {present.Text(agreement.Difference.Expanded, DisplayKind.AirFlow)}", agreement.NormalizedError.ToString("0.00", CultureInfo.InvariantCulture), Cited.FromMemory("ISO 13528 and ISO/IEC 17043"));
        return finding.Information(
            (agreement.Agrees ? AirMessages.RoutesAgree : (Func<QuantityValue, Message, QuantityValue, Message, Message>)AirMessages.RoutesDiffer)(present.InMessage(flow, DisplayKind.AirFlow), route.Words, present.InMessage(other.Value!, DisplayKind.AirFlow), other.Words),
            AirMessages.CapacitiesKind);
    }

    private Finding Ended(CheckContext context, FindingBuilder finding, AirflowRoute route, JudgedNumber number, LimitStatement state, Message? remark, Func<TextValue, Message> asked)
    {
        var (y, kind, readings) = number;
        finding.Judge(y.On(state), kind, state).Remark(remark).RemarkUnknown(readings);
        Reserve(finding, route);
        if (y.On(state).Value < state.LowerSi)
            FanLawsTo(context, finding, state.LowerSi.Value / y.Value);
        var (was, required) = (context.Present.InMessage(y, kind), asked(new(state.Text)));
        return finding.Passes
            ? finding.Say(AirMessages.AirflowEnough(was, route.Words, required)).Build()
            : finding.Say(y.Value < state.LowerSi ? AirMessages.AirflowTooLittle(was, route.Words, required) : AirMessages.AirflowTooMuch(was, route.Words, required)).Next(this.WhenItFails()).Build();
    }

    // What more speed alone would cost in the ducts as they are: often the reason to mend the ducts first.
    private static void FanLawsTo(CheckContext context, FindingBuilder finding, double speed)
    {
        var present = context.Present;
        var air = context.Job.Air!;
        var costs = new List<MessageValue>();
        var reading = context.Get<StaticReading>();
        if (reading.External is { } external)
        {
            finding.UseAll(reading.Readings);
            foreach (var use in reading.Uses)
                finding.Use(use);
            costs.Add(AirMessages.FanLawsStatic(present.Value(FanLaws.Pressure(external.Value, speed), DisplayKind.StaticPressure, present.Units[DisplayKind.StaticPressure].Decimals + 1)));
        }

        if (air.BlowerPower is { } power)
        {
            finding.Use(AirMessages.ReadingBlowerPower, power);
            costs.Add(AirMessages.FanLawsPower(present.InMessage(FanLaws.Power(power.Value.Si, speed), DisplayKind.Power)));
        }

        if (costs.Count == 0 || !double.IsFinite(speed))
            return;
        var factor = new NumberValue(speed, 2);
        finding.Step("n", AirMessages.FanLawsName, FanLaws.Formula, AirMessages.FanLawsTimes(factor), AirMessages.FanLawsCosts(new ListValue([.. costs], ListJoin.Comma)), AirMessages.FanLawsSource)
            .Remark(AirMessages.FanLawsWould(factor, new ListValue([.. costs], ListJoin.And)));
    }

    private static void Reserve(FindingBuilder finding, AirflowRoute route)
    {
        if (route.Reservation is { } why && finding.Passes)
            finding.Reserve(why).Next(AirMessages.AirflowReservedNext);
    }

    private FindingBuilder Begin(CheckContext context, AirflowRoute route, Message subject) =>
        route.UseIn(context.Finding(this, context.Present.Text(subject))).Use(AirMessages.ReadingMethod, context.Job.Air!.Airflow?.Method);
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
            yield return Judge(context, context.Present.Text(AirMessages.HeatRiseSubject), entering, leaving, new ChargeGates());
    }

    private Finding Judge(CheckContext context, string subject, CorrectedReading entering, CorrectedReading leaving, ChargeGates gates)
    {
        var present = context.Present;
        var rise = leaving.Value - entering.Value;
        var was = present.InMessage(rise, DisplayKind.TemperatureDifference);
        var finding = context.Finding(this, subject).Use(entering).Use(leaving)
            .Step("ΔT", AirMessages.HeatRiseName, "T_supply − T_return", $"{present.Text(leaving.Value.Value, DisplayKind.Temperature)} − {present.Text(entering.Value.Value, DisplayKind.Temperature)}", present.Text(rise, DisplayKind.TemperatureDifference))
            .Measure(rise, DisplayKind.TemperatureDifference);
        gates.NameIn(finding);
        if (gates.Blocked is var (why, todo))
            return finding.Say(AirMessages.HeatRiseNotJudged(was, why)).NotEvaluated(why, todo);
        if (context.Limits.Find(LimitIds.AirHeatRise) is not { } limit || (limit.Lower is null && limit.Upper is null))
            return finding.Information(AirMessages.HeatRiseWas(was), AirMessages.HeatRiseNoRange);
        var state = context.State(limit);
        return finding.Remark(limit.Remark(present.Units)).JudgeCharge(
            context, new(rise.On(state), DisplayKind.TemperatureDifference, [entering, leaving]), state, gates, AirMessages.HeatRiseAsked(was, new(state.Text)), this.WhenItFails());
    }
}
