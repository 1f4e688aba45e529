using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Measurement.Decisions;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Kernel;

/// <summary>Verdict, place on the strip and budget of a finding. Worked by hand; U = 2u without degrees of freedom (95.45 %).</summary>
public sealed class FindingBuilderTests
{
    private static readonly CheckContext Context = JobText.Context(JobLines.Of());

    [Fact]
    public void A_number_between_two_bounds_has_its_place_on_the_strip()
    {
        // 12.5 ± 1.0 between 10 and 20: at a quarter, from 0.15 to 0.35.
        var found = Judged(12.5, 0.5, 10, 20);
        Assert.Equal(Verdict.Pass, found.Verdict);
        Assert.Equal(0.25, found.Strip!.Value, 1e-12);
        Assert.Equal(0.15, found.Strip.Low!.Value, 1e-9);
        Assert.Equal(0.35, found.Strip.High!.Value, 1e-9);
        Assert.True(found.Strip is { LowerIsLimit: true, UpperIsLimit: true });
        Assert.Equal(10 / 2 / 1.0, found.Adequacy!.Value, 1e-9);
    }

    // One bound has no width: its distance from zero, or the distance of the value where that is no scale.
    [Theory]
    [InlineData(2, null, 8.0, 0.25)]
    [InlineData(10, null, 8.0, 1.25)]
    [InlineData(-4.5, null, -4.0, 0.5)]
    [InlineData(-0.5, null, 0.0, 0.5)]
    [InlineData(0.5, null, 0.0, 1.5)]
    [InlineData(0, null, 0.0, 1)]
    [InlineData(7.5, 5.0, null, 0.5)]
    [InlineData(4, 5.0, null, -0.2)]
    [InlineData(-1.5, -2.0, null, 0.5)]
    [InlineData(0.5, 0.0, null, 0.5)]
    [InlineData(-0.5, 0.0, null, -0.5)]
    public void A_single_bound_makes_its_own_scale(double y, double? lower, double? upper, double place)
    {
        var strip = Judged(y, 0, lower, upper).Strip!;
        Assert.Equal(place, strip.Value, 1e-12);
        Assert.Equal((lower is not null, upper is not null), (strip.LowerIsLimit, strip.UpperIsLimit));
        Assert.Null(strip.Low);
        Assert.Null(strip.High);
    }

    // 20 °C where at least 2 °C is asked for: kelvins from absolute zero would put both on one line.
    [Fact]
    public void A_temperature_stands_in_the_middle_of_what_is_allowed()
    {
        var strip = Begun().Judge(Number(293.15, 0.3), DisplayKind.Temperature, Bounds(275.15, null, DecisionRule.Simple)).Say("It was judged.".Plain()).Build().Strip!;
        Assert.Equal(0.5, strip.Value, 1e-12);
        Assert.Equal(0.5 + 0.6 / 36, strip.High!.Value, 1e-3);
    }

    [Fact]
    public void A_limit_of_one_value_has_no_strip() => Assert.Null(Judged(5, 0, 5, 5).Strip);

    [Fact]
    public void A_limit_without_bounds_judges_nothing() => Assert.Throws<ArgumentException>(() => Judged(5, 0, null, null));

    [Theory]
    [InlineData(8.9, Verdict.Pass)]
    [InlineData(9.5, Verdict.Conditional)]
    [InlineData(10.0, Verdict.Conditional)]
    [InlineData(10.5, Verdict.Fail)]
    public void The_rule_stands_with_the_limit(double y, Verdict verdict)
    {
        Assert.Equal(verdict, Judged(y, 0.5, null, 10, DecisionRule.Guarded).Verdict);
        Assert.Equal(y switch { > 10 => Verdict.Fail, > 9 => Verdict.PassWithinUncertainty, _ => Verdict.Pass }, Judged(y, 0.5, null, 10).Verdict);
    }

    [Fact]
    public void A_reservation_makes_a_pass_conditional_and_leaves_a_failure()
    {
        var passed = Begun().Decide(true).Reserve("a was not shown".Plain()).Reserve("b was not shown".Plain()).Say("It holds.".Plain());
        Assert.True(passed.Passes);
        Assert.Equal((Verdict.Conditional, "a was not shown; b was not shown"), (passed.Build().Verdict, passed.Build().Reservation));
        var failed = Begun().Decide(false).Reserve("a was not shown".Plain()).Say("It does not.".Plain());
        Assert.False(failed.Passes);
        Assert.Equal(Verdict.Fail, failed.Build().Verdict);
        Assert.Equal(Verdict.Fail, Begun().Decide(true).Fail("danger".Plain()).Say("Stop.".Plain()).Build().Verdict);
    }

    [Fact]
    public void What_is_not_evaluated_keeps_its_number_and_loses_its_judgement()
    {
        var found = Begun().Judge(Number(12, 0.5), DisplayKind.Number, Bounds(10, 20)).NotEvaluated("the door was open".Plain(), "Close it.".Plain());
        Assert.Equal((Verdict.NotEvaluated, "Not evaluated: the door was open.", "the door was open", "Close it."), (found.Verdict, found.Statement, found.Reason, found.NextStep));
        Assert.Null(found.Strip);
        Assert.Null(found.ProbabilityOfConformity);
        Assert.Null(found.Adequacy);
        Assert.Equal(12, found.Measured!.Value.Si);
        Assert.Equal("The door was open all day.", Begun().Say("The door was open all day.".Plain()).NotEvaluated("the door was open".Plain(), "Close it.".Plain()).Statement);
    }

    [Fact]
    public void What_is_told_is_not_judged()
    {
        var found = Begun().Judge(Number(12, 0.5), DisplayKind.Number, Bounds(10, 20)).Remark("Nobody asks for it.".Plain()).Remark(null).Information("It is 12.".Plain(), "no limit".Plain());
        Assert.Equal((Verdict.Information, "It is 12. Nobody asks for it.", "no limit"), (found.Verdict, found.Statement, found.Reason));
        Assert.Null(found.Strip);
        Assert.Null(found.MaximumFalseAccept);
    }

    [Fact]
    public void A_check_that_says_nothing_is_a_fault() => Assert.Throws<InvalidOperationException>(() => Begun().Decide(true).Build());

    [Fact]
    public void A_reading_and_a_step_are_named_once()
    {
        var use = new ReadingUse("vapor pressure", "118 psig", Context.Job.Identity.Id.At, "low");
        var step = new TraceStep("SH", "superheat", "a − b", "1 − 2", "3", "");
        var found = Begun().Use(use).Use(use).Use("id".Plain(), Context.Job.Identity.Id).Use<string>("nothing".Plain(), null).Step(step).Step(step).Decide(true).Say("It holds.".Plain()).Build();
        Assert.Equal(["vapor pressure", "id"], found.Readings.Select(r => r.Name));
        Assert.Equal(["low"], found.Instruments);
        Assert.Single(found.Trace);
    }

    [Fact]
    public void A_budget_is_in_the_units_of_its_causes_and_its_shares_make_a_whole()
    {
        // u 0.3 K = 0.54 °F entered as a difference of temperatures, and 0.4 of a bound with the sensitivity 1 K: 36 and 64 % of 0.5² K².
        var entered = Context.Causes.Enter(new RootCause("probe".Plain(), "sheet".Plain(), 0.3), DisplayKind.TemperatureDifference);
        var found = Begun().Measure(Uncertain.From(10, entered, RootCause.FromHalfWidth("bound".Plain(), "class".Plain(), 0.4 * Math.Sqrt(3))), DisplayKind.TemperatureDifference).Information("10 K.".Plain());
        Assert.Equal(["bound", "probe"], found.Budget.Select(b => b.Cause));
        Assert.Equal(64, found.Budget[0].SharePercent, 1e-9);
        Assert.Equal(36, found.Budget[1].SharePercent, 1e-9);
        Assert.Equal(("0.4 of its bound", "1.8 °F for the bound", "rectangular", "class"), (found.Budget[0].StandardUncertainty, found.Budget[0].Sensitivity, found.Budget[0].Distribution, found.Budget[0].Source));
        Assert.Equal(("0.54 °F", "1", "normal", "sheet"), (found.Budget[1].StandardUncertainty, found.Budget[1].Sensitivity, found.Budget[1].Distribution, found.Budget[1].Source));
        Assert.Equal(0.3, found.Budget[1].ContributionSi, 1e-12);
    }

    // 1 psi is 6894.757293168 Pa, 1 oz 0.028349523125 kg. A slope of 0.15 °F per psi is 0.15/1.8/6894.757 K/Pa.
    [Fact]
    public void A_sensitivity_is_printed_in_the_units_of_result_and_cause()
    {
        var pressure = Context.Causes.Enter(new RootCause("gauge".Plain(), "sheet".Plain(), 2 * 6894.757293168), DisplayKind.PressureDifference);
        var slope = Assert.Single(Begun().Measure(Uncertain.From(10, 0.15 / 1.8 / 6894.757293168 * pressure), DisplayKind.TemperatureDifference).Information("10 K.".Plain()).Budget);
        Assert.Equal(("2 psi", "0.15 °F per psi"), (slope.StandardUncertainty, slope.Sensitivity));
        var count = Context.Causes.Enter(new RootCause("count".Plain(), "by hand".Plain(), 0.3), DisplayKind.Number);
        var plain = Assert.Single(Begun().Measure(Uncertain.From(10, 2.0 * count), DisplayKind.Number).Information("10.".Plain()).Budget);
        Assert.Equal(("0.3", "2"), (plain.StandardUncertainty, plain.Sensitivity));
        var bound = Assert.Single(Begun().Measure(Uncertain.From(10, 2.0 * new RootCause("bound".Plain(), "class".Plain(), 0.3)), DisplayKind.Number).Information("10.".Plain()).Budget);
        Assert.Equal(("0.3 of its bound", "2 for the bound"), (bound.StandardUncertainty, bound.Sensitivity));
        var mass = Context.Causes.Enter(new RootCause("scale".Plain(), "sheet".Plain(), 0.5 * 0.028349523125), DisplayKind.Mass);
        var ounces = Assert.Single(Begun().Measure(Uncertain.From(3, mass), DisplayKind.Mass).Information("3 kg.".Plain()).Budget);
        Assert.Equal(("0.5 oz", "1"), (ounces.StandardUncertainty, ounces.Sensitivity));
    }

    [Fact]
    public void A_judged_number_is_stated_with_its_limit()
    {
        var found = Judged(12.5, 0.5, 10, 20);
        Assert.Equal((12.5, 0.5), (found.Measured!.Value.Si, found.Measured.StandardUncertaintySi));
        Assert.Equal("bounds", Assert.Single(found.Limits).Text);
        Assert.Equal("doubt", Assert.Single(found.Budget).Cause);
        Assert.NotNull(found.ProbabilityOfConformity);
        Assert.NotNull(found.MaximumFalseAccept);
    }

    [Fact]
    public void Nothing_is_no_reading_and_no_number()
    {
        Assert.Throws<ArgumentNullException>(() => Begun().Use((CorrectedReading)null!));
        Assert.Throws<ArgumentNullException>(() => Begun().Use((ReadingUse)null!));
        Assert.Throws<ArgumentNullException>(() => Begun().Impeach(null!));
        Assert.Throws<ArgumentNullException>(() => Begun().Measure(null!, DisplayKind.Number));
        Assert.Throws<ArgumentNullException>(() => Begun().Judge(null!, DisplayKind.Number, Bounds(1, 2)));
        Assert.Throws<ArgumentNullException>(() => Begun().Judge(Number(1, 0), DisplayKind.Number, null!));
    }

    [Theory]
    [InlineData(1.234e-7, "1.23·10^−7 of its bound")]
    [InlineData(1.234e-6, "0.00000123 of its bound")]
    [InlineData(1.234e-5, "0.0000123 of its bound")]
    [InlineData(0.01234, "0.0123 of its bound")]
    [InlineData(123.4, "123 of its bound")]
    [InlineData(123_456, "123456 of its bound")]
    [InlineData(1.23e6, "1230000 of its bound")]
    [InlineData(1.23e7, "1.23·10^7 of its bound")]
    [InlineData(1.234e8, "1.23·10^8 of its bound")]
    public void Small_and_large_numbers_are_written_as_people_do(double u, string text) =>
        Assert.Equal(text, Assert.Single(Begun().Measure(Uncertain.From(10, new RootCause("a".Plain(), "b".Plain(), u)), DisplayKind.Number).Information("10.".Plain()).Budget).StandardUncertainty);

    // A share of a kelvin for each kelvin is a pure number: nothing stands behind its "per".
    [Fact]
    public void A_pure_number_has_no_unit_in_a_sensitivity()
    {
        var context = JobText.Context(JobLines.Of(""));
        var share = context.Causes.Enter(new RootCause("cold junction".Plain(), "b".Plain(), 0.01), DisplayKind.Number);
        var found = context.Finding(new Checks.Air.StaticCheck()).Measure(context.Scope.Reading(5, 5.0 * share), DisplayKind.TemperatureDifference).Information("5.".Plain());
        Assert.Equal("9 °F", Assert.Single(found.Budget).Sensitivity);
    }

    [Fact]
    public void A_danger_fails_whatever_was_judged_and_says_so_first()
    {
        var found = Begun().Judge(Number(12, 0.5), DisplayKind.Number, Bounds(10, 20)).Remark("It was seen twice.".Plain()).Danger("the case is live.".Plain(), "Switch off.".Plain());
        Assert.Equal((Verdict.Fail, true, "DANGER: the case is live. It was seen twice.", "Switch off."), (found.Verdict, found.IsDanger, found.Statement, found.NextStep));
        Assert.False(Begun().Decide(false).Say("It does not.".Plain()).Build().IsDanger);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_check_ends_with_one_of_two_sentences_and_advice_where_it_fails(bool holds)
    {
        var found = Begun().Decide(holds).Conclude("It holds.".Plain(), "It does not.".Plain(), "Mend it.".Plain());
        Assert.Equal((holds ? "It holds." : "It does not.", holds ? null : "Mend it.", false), (found.Statement, found.NextStep, found.IsDanger));
        var danger = Begun().Decide(holds).ConcludeOrDanger("It holds.".Plain(), "it burns.".Plain(), "Stop.".Plain());
        Assert.Equal((holds ? "It holds." : "DANGER: it burns.", holds ? null : "Stop.", !holds), (danger.Statement, danger.NextStep, danger.IsDanger));
        Assert.Equal("It holds.", Begun().Decide(true).Reserve("a was not shown".Plain()).Conclude("It holds.".Plain(), "It does not.".Plain(), "Mend it.".Plain()).Statement);
    }

    [Fact]
    public void A_verdict_of_words_shows_the_requirement()
    {
        var limit = Bounds(1, null);
        Assert.Equal([limit], Begun().Decide(true, limit).Say("It holds.".Plain()).Build().Limits);
        Assert.Empty(Begun().Decide(true).Say("It holds.".Plain()).Build().Limits);
        Assert.Equal([limit], Begun().Show(limit).Information("It is told.".Plain()).Limits);
    }

    [Fact]
    public void What_cannot_be_decided_names_the_doubt_and_how_to_write_what_is_missing()
    {
        var found = Begun().CannotDecide("U is wider than the tolerance".Plain(), "Take a finer meter.".Plain());
        Assert.Equal((Verdict.CannotDecide, "U is wider than the tolerance", "Take a finer meter.", null), (found.Verdict, found.Reason, found.NextStep, found.InFile));
        var open = Begun().NotEvaluated("nothing is written".Plain(), "Write it.".Plain(), "ground: continuous");
        Assert.Equal((Verdict.NotEvaluated, "ground: continuous", false), (open.Verdict, open.InFile, open.IsToLookAt));
        Assert.Null(Begun().Next("Write it.".Plain(), "ground: continuous").Danger("the case is live.".Plain(), "Switch off.".Plain()).InFile);
    }

    [Fact]
    public void What_somebody_has_to_look_at_stands_on_the_first_page()
    {
        var found = Begun().LookAt("Ask why.".Plain()).Information("Two rows agree.".Plain());
        Assert.Equal((true, "Ask why."), (found.IsToLookAt, found.NextStep));
        Assert.False(Begun().Next("Ask why.".Plain()).Information("Two rows agree.".Plain()).IsToLookAt);
    }

    [Fact]
    public void A_reading_that_cannot_be_is_named_and_impeached()
    {
        var use = new ReadingUse("vapor line", "31 °F", Context.Job.Identity.Id.At, "clamp");
        var found = Begun().Impeach(use).Decide(false).Say("It cannot be.".Plain()).Build();
        Assert.Equal([use], found.Impeached);
        Assert.Equal([use], found.Readings);
        Assert.Empty(Begun().Use(use).Decide(false).Say("It cannot be.".Plain()).Build().Impeached);
    }

    // A pass too near to its limit to be sure is settled by a smaller doubt: the largest is named, unless something else is missing or advised.
    [Fact]
    public void A_pass_near_its_limit_names_the_largest_doubt()
    {
        FindingBuilder Near() => Begun().Judge(Number(9.5, 0.5), DisplayKind.Number, Bounds(null, 10, DecisionRule.Guarded)).Say("It was judged.".Plain());
        Assert.Equal("common.settle-by-less-doubt", Near().Build().Messages!.NextStep!.Id);
        Assert.Contains("doubt", Near().Build().NextStep, StringComparison.Ordinal);
        Assert.Equal("Measure again.", Near().Next("Measure again.".Plain()).Build().NextStep);
        Assert.Null(Near().Reserve("a was not shown".Plain()).Build().NextStep);
        Assert.Null(Judged(8.5, 0.5, null, 10, DecisionRule.Guarded).NextStep);
        Assert.Null(Begun().Decide(true).Reserve("a was not shown".Plain()).Say("It holds.".Plain()).Build().NextStep);
    }

    [Fact]
    public void No_remark_is_none()
    {
        var found = Begun().Decide(true).Remark(null).Say("It holds.".Plain()).Build();
        Assert.Equal("It holds.", found.Statement);
        Assert.Single(found.Messages!.Statement);
        Assert.Null(found.Reason);
        Assert.Null(found.Reservation);
    }

    [Fact]
    public void An_accuracy_that_nobody_states_is_remarked_upon_by_the_names_of_its_readings()
    {
        static CorrectedReading Reading(string name, bool known) => new() { Name = name, Value = Uncertain.Exact(1), AfterZero = 1, Uses = [], AccuracyKnown = known };
        Assert.Equal("It holds.", Begun().Decide(true).Say("It holds.".Plain()).RemarkUnknown([Reading("a", true)]).Build().Statement);
        Assert.Equal(
            "It holds. U holds the resolution alone: the accuracy of b and c is not written.",
            Begun().Decide(true).Say("It holds.".Plain()).RemarkUnknown([Reading("a", true), Reading("b", false), Reading("c", false), Reading("b", false)]).Build().Statement);
    }

    [Fact]
    public void Readings_bring_their_corrections_each_once()
    {
        var place = Context.Job.Identity.Id.At;
        CorrectedReading Reading(string name, string step) => new() { Name = name, Value = Uncertain.Exact(1), AfterZero = 1, Uses = [new ReadingUse(name, "1", place, name)], Steps = [new TraceStep(step, "", "", "", "", "")], AccuracyKnown = true };
        var found = Begun().UseAll([Reading("a", "zero"), Reading("b", "zero"), Reading("a", "ice point")]).Step("L", "loss".Plain(), "1 − a", "1 − 0.9", "0.1").Decide(true).Say("It holds.".Plain()).Build();
        Assert.Equal(["a", "b"], found.Readings.Select(r => r.Name));
        Assert.Equal(["a", "b"], found.Instruments);
        Assert.Equal(["zero", "ice point", "L"], found.Trace.Select(s => s.Symbol));
        Assert.Equal("", found.Trace[^1].Source);
    }

    private static FindingBuilder Begun() => Context.Finding(CheckCatalogue.Find("electrical.ground")!, "north");

    private static Uncertain Number(double y, double u) => u > 0 ? Uncertain.From(y, new RootCause("doubt".Plain(), "by hand".Plain(), u)) : Uncertain.Exact(y);

    private static LimitStatement Bounds(double? lower, double? upper, DecisionRule rule = DecisionRule.Simple) => new(LimitKind.Within, "bounds", lower, upper, null, "", "", "by hand", "", rule);

    private static Finding Judged(double y, double u, double? lower, double? upper, DecisionRule rule = DecisionRule.Simple) =>
        Begun().Judge(Number(y, u), DisplayKind.Number, Bounds(lower, upper, rule)).Say("It was judged.".Plain()).Build();
}
