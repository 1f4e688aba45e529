using System.Globalization;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;
using ReadingName = Commission.Jobs.Model.Words.ReadingName;

namespace Commission.Checks.Piping;

/// <summary>Torque of flare nuts, or the turn after contact where no torque wrench was used.</summary>
internal sealed class FlareTorqueCheck : ICheck
{
    // A metric size is rounded to a hundredth of a millimetre.
    private const double SameSize = 0.1e-3;

    // 45 lbf·ft are 540 lbf·in, but not to the last bit.
    private const double SameNumber = 1e-9;

    public string Id => "piping.flare-torque";

    public string Phase => Phases.Piping;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var flares = context.Job.PipingChecks?.Flares ?? [];
        for (var i = 0; i < flares.Length; i++)
            yield return Judge(context, flares[i], flares[i].Place?.Value ?? context.Present.Text(PipingMessages.SubjectFlare(new(i + 1, 0), new(flares[i].Od.Text))));
    }

    private Finding Judge(CheckContext context, FlareCheck flare, string subject)
    {
        var finding = context.Finding(this, subject).Use(PipingMessages.ReadingTube, flare.Od);
        if (flare.Torque is { } torque)
        {
            var reading = context.Readings.Plain(context.Present.Text(PipingMessages.ReadingTorque(new(subject))), ReadingName.Torque, torque, DisplayKind.Torque, flare.With);
            finding.Use(reading).Measure(reading.Value, DisplayKind.Torque);
            if (Maker(context, flare) is { } maker)
            {
                var state = Statement(context, maker.Minimum.Value.Si, maker.Maximum.Value.Si, maker.From.Value);
                finding.Use(PipingMessages.ReadingTorqueLeast, maker.Minimum).Use(PipingMessages.ReadingTorqueMost, maker.Maximum).Judge(reading.Value.On(state), DisplayKind.Torque, state);
            }
            else if (FlareTorque.For(flare.Od.Value) is { } nut)
            {
                ByTable(context, finding, torque, nut, (lower, upper, mark) =>
                {
                    var state = Statement(context, lower, upper, context.Present.Text(FlareTorque.Source), mark);
                    finding.Judge(reading.Value.On(state), DisplayKind.Torque, state);
                });
            }
            else
            {
                return finding.NotEvaluated(PipingMessages.FlareNoTorque(new(flare.Od.Text)), PipingMessages.FlareNoTorqueNext, "limits: {flare torque: [{od: …, minimum: …, maximum: …, from: …}]}");
            }

            finding.RemarkUnknown([reading]);
            return Ended(finding, flare, PipingMessages.FlareTightened(new(torque.Text), new(flare.Od.Text)));
        }

        return flare.TurnAfterContact is { } turn
            ? ByTurn(context, finding.Use(PipingMessages.ReadingTurn, turn), flare, turn)
            : finding.NotEvaluated(PipingMessages.FlareNotTold, PipingMessages.FlareNotToldNext, "piping checks: {flares: [{torque: 28 lbf·ft}]}");
    }

    // Manuals differ: what one allows and another does not is left to the maker.
    private static void ByTable(CheckContext context, FindingBuilder finding, Given<Torque> written, FlareNut nut, Action<double, double, string> judge)
    {
        // The manuals round their column in pound-force inches on its own: a wrench read in those is compared with that.
        var set = written.Text.Contains("lbf", StringComparison.Ordinal) && nut.Torque.ContainsKey(FlareTorqueSet.ManualAInches) ? FlareTorqueSet.ManualAInches : FlareTorqueSet.ManualA;
        var usual = nut.Torque[set];
        var torque = written.Value.Si;
        var widest = (Least: nut.Torque.Values.Min(t => t.Least), Most: nut.Torque.Values.Max(t => t.Most));
        if (IsWithin(torque, usual) || !IsWithin(torque, widest))
        {
            judge(usual.Least, usual.Most, nut.MarkOf(set));
            return;
        }

        judge(widest.Least, widest.Most, "published");
        finding.Reserve(PipingMessages.FlareOneSetOnly(context.Present.InMessage(torque, DisplayKind.Torque), RangeOf(context, usual.Least, usual.Most))).Next(PipingMessages.FlareMakerNext, "limits: {flare torque: [{od: …, minimum: …, maximum: …, from: …}]}");
    }

    private Finding ByTurn(CheckContext context, FindingBuilder finding, FlareCheck flare, Given<string> turn)
    {
        if (FlareTorque.For(flare.Od.Value) is not { } nut)
            return finding.NotEvaluated(PipingMessages.FlareNoTurn(new(flare.Od.Text)), PipingMessages.FlareNoTurnNext);
        var degrees = Numbers(turn.Value);
        if (degrees.Count == 0)
            return finding.NotEvaluated(PipingMessages.FlareNoAngle(new TextValue(turn.Value)), PipingMessages.FlareNoAngleNext, "piping checks: {flares: [{turn after contact: 75°}]}");
        var (least, most) = nut.Angle;
        var text = context.Present.Text(PipingMessages.LimitTurn(new(least, 0), new(most, 0)));
        var holds = degrees.TrueForAll(d => d >= least && d <= most);
        finding.Decide(holds, new LimitStatement(LimitKind.Within, text, null, null, null, "common practice", "", context.Present.Text(FlareTorque.Source), "published", DecisionRule.Simple));
        if (holds)
            finding.Reserve(PipingMessages.FlareTurnIsNoTorque).Next(PipingMessages.FlareTurnIsNoTorqueNext);
        return Ended(finding, flare, PipingMessages.FlareTurned(new(turn.Value), new(flare.Od.Text)));
    }

    private Finding Ended(FindingBuilder finding, FlareCheck flare, Message what)
    {
        finding.Use(PipingMessages.ReadingOilOnFace, flare.OilOnFlareFaceOnly).Use(PipingMessages.ReadingRemade, flare.Remade);
        if (finding.Passes && flare.OilOnFlareFaceOnly?.Value == false)
            finding.Reserve(PipingMessages.FlareOilOnThread).Next(PipingMessages.FlareOilOnThreadNext);
        return finding.Conclude(PipingMessages.FlareMet(what), PipingMessages.FlareMissed(what), this.WhenItFails());
    }

    private static FlareLimit? Maker(CheckContext context, FlareCheck flare) =>
        (context.Job.Limits?.FlareTorque ?? []).FirstOrDefault(l => Math.Abs(l.Od.Value.Si - flare.Od.Value.Si) <= SameSize);

    private static LimitStatement Statement(CheckContext context, double least, double most, string from) =>
        new(LimitKind.Within, Range(context, least, most), least, most, null, "maker", "", from, "job", DecisionRule.Simple);

    private static LimitStatement Statement(CheckContext context, double least, double most, string source, string mark) =>
        new(LimitKind.Within, Range(context, least, most), least, most, null, "common practice", "", source, mark, DecisionRule.Simple);

    private static bool IsWithin(double torque, (double Least, double Most) range) => torque >= range.Least * (1 - SameNumber) && torque <= range.Most * (1 + SameNumber);

    private static string Range(CheckContext context, double least, double most) => context.Present.Text(RangeOf(context, least, most));

    private static Message RangeOf(CheckContext context, double least, double most) =>
        PipingMessages.LimitTorque(new(context.Present.Value(least, DisplayKind.Torque), context.Present.Units[DisplayKind.Torque].Decimals), context.Present.InMessage(most, DisplayKind.Torque));

    // "60 to 90°", "75 degrees": the numbers in it.
    private static List<double> Numbers(string text)
    {
        var found = new List<double>();
        var start = -1;
        for (var i = 0; i <= text.Length; i++)
        {
            var part = i < text.Length && (char.IsAsciiDigit(text[i]) || (start >= 0 && text[i] == '.'));
            if (part && start < 0)
                start = i;
            if (part || start < 0)
                continue;
            if (double.TryParse(text.AsSpan(start, i - start).TrimEnd('.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
                found.Add(number);
            start = -1;
        }

        return found;
    }
}
