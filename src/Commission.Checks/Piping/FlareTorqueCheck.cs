using System.Globalization;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
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
            yield return Judge(context, flares[i], flares[i].Place?.Value ?? string.Create(CultureInfo.InvariantCulture, $"flare {i + 1}, {flares[i].Od.Text}"));
    }

    private Finding Judge(CheckContext context, FlareCheck flare, string subject)
    {
        var finding = context.Finding(this, subject).Use("tube diameter", flare.Od);
        if (flare.Torque is { } torque)
        {
            var reading = context.Readings.Plain($"torque, {subject}", ReadingName.Torque, torque, DisplayKind.Torque, flare.With);
            finding.Use(reading).Measure(reading.Value, DisplayKind.Torque);
            if (Maker(context, flare) is { } maker)
            {
                var state = Statement(context, maker.Minimum.Value.Si, maker.Maximum.Value.Si, maker.From.Value);
                finding.Use("maker's torque, least", maker.Minimum).Use("maker's torque, most", maker.Maximum).Judge(reading.Value.On(state), DisplayKind.Torque, state);
            }
            else if (FlareTorque.For(flare.Od.Value) is { } nut)
            {
                ByTable(context, finding, torque, nut, (lower, upper, mark) =>
                {
                    var state = Statement(context, lower, upper, FlareTorque.Source, mark);
                    finding.Judge(reading.Value.On(state), DisplayKind.Torque, state);
                });
            }
            else
            {
                return finding.NotEvaluated($"there is no published torque for a tube of {flare.Od.Text}", "Take the torque from the maker's manual.", "limits: {flare torque: [{od: …, minimum: …, maximum: …, from: …}]}");
            }

            finding.RemarkUnknown([reading]);
            return Ended(finding, flare, $"{torque.Text} on {flare.Od.Text}");
        }

        return flare.TurnAfterContact is { } turn
            ? ByTurn(finding.Use("turn after contact", turn), flare, turn)
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
        finding.Reserve($"one published set allows {context.Present.Text(torque, DisplayKind.Torque)}, the most usual one {Range(context, usual.Least, usual.Most)} only").Next(PipingMessages.FlareMakerNext, "limits: {flare torque: [{od: …, minimum: …, maximum: …, from: …}]}");
    }

    private Finding ByTurn(FindingBuilder finding, FlareCheck flare, Given<string> turn)
    {
        if (FlareTorque.For(flare.Od.Value) is not { } nut)
            return finding.NotEvaluated($"there is no published turn for a tube of {flare.Od.Text}", "Write the maker's torque and use a torque wrench.");
        var degrees = Numbers(turn.Value);
        if (degrees.Count == 0)
            return finding.NotEvaluated(PipingMessages.FlareNoAngle(new TextValue(turn.Value)), PipingMessages.FlareNoAngleNext, "piping checks: {flares: [{turn after contact: 75°}]}");
        var (least, most) = nut.Angle;
        var text = FormattableString.Invariant($"{least:0}° to {most:0}°");
        var holds = degrees.TrueForAll(d => d >= least && d <= most);
        finding.Decide(holds, new LimitStatement(LimitKind.Within, text, null, null, null, "common practice", "", FlareTorque.Source, "published", DecisionRule.Simple));
        if (holds)
            finding.Reserve("a turn is no torque: the nut's friction is not in it").Next("Tighten with a torque wrench and write the torque.");
        return Ended(finding, flare, $"turned {turn.Value} after contact on {flare.Od.Text}");
    }

    private Finding Ended(FindingBuilder finding, FlareCheck flare, string what)
    {
        finding.Use("oil on the flare's face only", flare.OilOnFlareFaceOnly).Use("flare made anew", flare.Remade);
        if (finding.Passes && flare.OilOnFlareFaceOnly?.Value == false)
            finding.Reserve("oil on the thread makes the same torque pull harder").Next("Look at the flare for cracks; clean the thread and tighten again.");
        return finding.Conclude($"Flare nut: {what}.", $"Flare nut: {what}, outside its range.", this.WhenItFails());
    }

    private static FlareLimit? Maker(CheckContext context, FlareCheck flare) =>
        (context.Job.Limits?.FlareTorque ?? []).FirstOrDefault(l => Math.Abs(l.Od.Value.Si - flare.Od.Value.Si) <= SameSize);

    private static LimitStatement Statement(CheckContext context, double least, double most, string from) =>
        new(LimitKind.Within, Range(context, least, most), least, most, null, "maker", "", from, "job", DecisionRule.Simple);

    private static LimitStatement Statement(CheckContext context, double least, double most, string source, string mark) =>
        new(LimitKind.Within, Range(context, least, most), least, most, null, "common practice", "", source, mark, DecisionRule.Simple);

    private static bool IsWithin(double torque, (double Least, double Most) range) => torque >= range.Least * (1 - SameNumber) && torque <= range.Most * (1 + SameNumber);

    private static string Range(CheckContext context, double least, double most)
    {
        var unit = context.Present.Unit(DisplayKind.Torque);
        return $"{context.Present.Number(least, DisplayKind.Torque)} to {context.Present.Number(most, DisplayKind.Torque)} {unit}";
    }

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
