using System.Collections.Immutable;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.NitrogenAnalysis;
using Commission.Jobs.Model;
using Commission.Measurement.Decisions;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Recording;

/// <summary>Puts together what page 1 answers: the outcome with its reason, the figures that answer for the work, which units, what failed.</summary>
internal static class CertificateMaker
{
    private const int MostNamed = 3;
    private const int MostFigures = 2;
    private const double Near = 2;

    /// <summary>Makes it.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="record">The record so far: outcome, findings, figures, what is missing, conditions.</param>
    public static Certificate Make(CheckContext context, CommissioningRecord record)
    {
        var failed = Failed(record.Findings);
        return new Certificate
        {
            Sentence = context.Present.Text(Sentence(record, failed)),
            Rows = KeyRows.Of(context, record),
            Failed = [.. failed.Select(f => new FailedCheck(Name(f), f.Check == Diagnosis.Check && record.Diagnosis is not null ? context.Present.Text(CertificateMessages.ToldAbove) : f.Measured?.Text ?? f.Statement, f.Limits is [var limit, ..] ? limit.Text : "", f.Number))],
            Figures = Figures(record),
            Units = [.. Units(context.Job.Equipment)],
            Parties = [.. Parties(context.Job.Identity)],
            NearLimit = [.. record.Findings.Where(IsNearLimit).Select(f => f.Number)],
            Owner = Owner(context, record),
            Danger = Danger(context) is { } danger ? context.Present.Text(danger) : "",
        };
    }

    // A danger first, then in the order of the work; within a step what has a number, and the diagnosis, which is told above all of them, last.
    private static List<Finding> Failed(IEnumerable<Finding> findings) =>
        [.. findings.Where(f => f.Verdict == Verdict.Fail && (f.IsDanger || f.Phase != Phases.Evidence)).OrderBy(f => f.IsDanger ? 0 : 1).ThenBy(f => WorkOrder.Of(f.Phase)).ThenBy(f => f.Check == Diagnosis.Check ? 2 : f.Measured is null ? 1 : 0)];

    private static Message Sentence(CommissioningRecord record, List<Finding> failed)
    {
        switch (record.Outcome)
        {
            case Outcome.NotAccepted:
                var first = failed[0];
                var what = first is { Measured: { } measured, Limits: [var limit, ..] } ? CertificateMessages.FailedNumber(new(Name(first)), new(measured.Text), new(limit.Text)) : CommonMessages.AsWritten(new(Name(first)));
                return failed.Count == 1 ? CertificateMessages.NotAccepted(what) : CertificateMessages.NotAcceptedMore(what, failed.Count - 1);
            case Outcome.Incomplete:
                var parts = record.Missing.SelectMany(m => m.Names).ToList();
                var named = new ListValue([.. parts.Take(MostNamed).Select(name => (MessageValue)new NameValue(MissingWork.InSentence(name)))], parts.Count > MostNamed ? ListJoin.Comma : ListJoin.And);
                return parts.Count > MostNamed ? CertificateMessages.IncompleteMore(named, parts.Count - MostNamed) : CertificateMessages.Incomplete(named);
            case Outcome.AcceptedWithConditions:
                // A value that its doubt takes to the limit is told in one line; what to do about it stands below.
                var condition = record.Conditions[0].Finding is { } number && record.Findings[number - 1] is { Verdict: Verdict.Conditional, Reservation: null, Measured: { } near, Limits: [var bound, ..] } doubtful
                    ? CertificateMessages.ConditionNear(new(MissingWork.InSentence(Name(doubtful))), new(near.Text), new(bound.Text))
                    : CommonMessages.AsWritten(new(MissingWork.InSentence(record.Conditions[0].Text.TrimEnd('.'))));
                return record.Conditions.Length == 1 ? CertificateMessages.AcceptedOnCondition(condition) : CertificateMessages.AcceptedOnConditions(condition, record.Conditions.Length - 1);
            default:
                var judged = record.Findings.Count(f => f.Phase != Phases.Evidence && f.Verdict is Verdict.Pass or Verdict.PassWithinUncertainty);
                var within = record.Findings.Count(f => f.Phase != Phases.Evidence && f.Verdict == Verdict.PassWithinUncertainty);
                return within > 0 ? CertificateMessages.AcceptedNear(judged, within) : CertificateMessages.Accepted(judged);
        }
    }

    // What was done to the circuit shows better than how it runs.
    private static ImmutableArray<string> Figures(CommissioningRecord record) =>
        [.. new[] { "pull-down", "nitrogen-hold", "charge-time", "pressure-enthalpy", "hold", "psychrometric" }.Where(id => record.Figures.Any(f => f.Id == id)).Take(MostFigures)];

    private static IEnumerable<LabelValue> Units(Equipment equipment)
    {
        if (equipment.Outdoor is { } outdoor)
            yield return Unit("Outdoor unit", outdoor.Maker?.Value, outdoor.Model?.Value, outdoor.Serial?.Value);
        if (equipment.Compressor is { } compressor && (compressor.Maker ?? compressor.Model ?? compressor.Serial) is not null)
            yield return Unit("Compressor", compressor.Maker?.Value, compressor.Model?.Value, compressor.Serial?.Value);
        foreach (var indoor in equipment.Indoor)
            yield return Unit(indoor.Id is { } id ? $"Indoor unit {id.Value}" : "Indoor unit", indoor.Maker?.Value, indoor.Model?.Value, indoor.Serial?.Value);
    }

    private static IEnumerable<LabelValue> Parties(JobIdentity identity) =>
        new (string Label, string? Value)[]
        {
            ("Site", identity.Site.Address?.Value),
            ("Installer", identity.People?.Installer?.Value),
            ("Technician", identity.People?.Technician?.Value),
            ("Customer", identity.People?.Customer?.Value ?? identity.People?.Owner?.Value),
        }.Where(p => p.Value is not null).Select(p => new LabelValue(p.Label, p.Value!));

    // What stays with the house: what is in it, when somebody has to come again, what to keep.
    private static ImmutableArray<string> Owner(CheckContext context, CommissioningRecord record)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var total = record.Findings.FirstOrDefault(f => f.Check == "charge.total")?.Measured?.Text;
        if (record.Outcome is Outcome.NotAccepted or Outcome.Incomplete)
            lines.Add(context.Present.Text(record.Outcome == Outcome.NotAccepted ? CertificateMessages.OwnerNotAccepted : CertificateMessages.OwnerIncomplete));
        lines.Add(context.Present.Text(total is null
            ? CertificateMessages.OwnerSystem(new(record.Header.System), new(record.Header.Date))
            : context.Get<WeighedCharge>().Put is null
                ? CertificateMessages.OwnerSystemPlate(new(record.Header.System), new(record.Header.Date), new(total))
                : CertificateMessages.OwnerSystemCharge(new(record.Header.System), new(record.Header.Date), new(total))));
        lines.AddRange(new[] { "refrigerant.co2e", "refrigerant.leak-check", "refrigerant.thresholds", "charge.return-visit" }
            .SelectMany(check => record.Findings.Where(f => f.Check == check)).Select(f => f.Statement).Distinct(StringComparer.Ordinal));
        if (context.Job.LeakCheck?.NextDue is { } next && !record.Findings.Any(f => f.Check == "refrigerant.leak-check" && f.Readings.Any(r => r.At == next.At)))
            lines.Add(context.Present.Text(CertificateMessages.OwnerNextLeakCheck(next.Value)));
        lines.Add(context.Present.Text(total is null ? CertificateMessages.OwnerKeepReadings : CertificateMessages.OwnerKeep));
        return lines.ToImmutable();
    }

    private static LabelValue Unit(string label, string? maker, string? model, string? serial) =>
        new(label, string.Join(" ", new[] { maker, model, serial is null ? null : $"serial {serial}" }.OfType<string>()));

    // Only where the next person who opens the circuit is endangered by what it holds.
    private static Message? Danger(CheckContext context)
    {
        var refrigerant = context.Get<CircuitRefrigerant>();
        var group = refrigerant.Info?.SafetyGroup?.Value;
        if (group is null)
            return CertificateMessages.DangerUnknown;
        if (context.Job.Equipment.Refrigerant.Value.Contains("744", StringComparison.Ordinal))
            return CertificateMessages.DangerCarbonDioxide;
        if (group.StartsWith('B'))
            return CertificateMessages.DangerToxic(new(group), group == "B1" ? CertificateMessages.DangerToxicBurns.No : CertificateMessages.DangerToxicBurns.Yes);
        return group == "A1" ? null : CertificateMessages.DangerFlammable(new(group));
    }

    private static bool IsNearLimit(Finding f) =>
        f is { Strip: { Low: { } low, High: { } high } strip, Verdict: not (Verdict.Information or Verdict.NotEvaluated) }
        && ((strip.LowerIsLimit && Math.Abs(strip.Value) <= Near * (high - low) / 2) || (strip.UpperIsLimit && Math.Abs(strip.Value - 1) <= Near * (high - low) / 2));

    private static string Name(Finding f) => f.Subject is null ? f.Title : $"{f.Title}, {f.Subject}";
}

/// <summary>The rows of the table on page 1, in the order of the work.</summary>
internal static class KeyRows
{
    private static readonly string[] Superheats = ["charge.subcooling", "charge.superheat", "charge.metering-superheat", "charge.heating", "charge.maker-chart", "charge.receiver"];
    private static readonly string[] Airs = ["air.airflow", "air.temperature-split", "air.heat-rise", "air.gas-heat", "functional.water", "air.static"];

    /// <summary>The rows.</summary>
    public static ImmutableArray<KeyRow> Of(CheckContext context, CommissioningRecord record)
    {
        var rows = new Builder(context, record);
        return
        [
            rows.Test(),
            rows.Hold(),
            rows.One(CertificateMessages.RowVacuum, Phases.Evacuation, "evacuation.level"),
            rows.VacuumHold(),
            rows.Charge(),
            rows.One(CertificateMessages.RowRunning, Phases.Charge, Superheats),
            rows.One(CertificateMessages.RowAir, Phases.Air, Airs),
            rows.All(CertificateMessages.RowElectrical, Phases.Electrical),
            rows.All(CertificateMessages.RowSafety, Phases.Safety),
        ];
    }

    private sealed class Builder(CheckContext context, CommissioningRecord record)
    {
        // Filter, coil and airflow before the charge: missing, it is the air that nobody looked at.
        private const string Prerequisites = "charge.prerequisites";

        private readonly HashSet<string> _missing = [.. record.Missing.SelectMany(m => m.Checks)];

        private bool IsWeighed => context.Get<WeighedCharge>().Put is not null;

        public KeyRow Test()
        {
            var levels = record.Findings.Where(f => f.Check == "pressure-test.level" && f.Measured is not null).ToList();
            var time = Judged("pressure-test.time");
            var worst = Worst(record.Findings.Where(f => f.Phase == Phases.PressureTest && f.Check != "pressure-test.hold" && f.Verdict is not (Verdict.Information or Verdict.NotEvaluated)));
            // The lowest pressure of the hold is told first, also where nobody asks for so much; a test above its ceiling tells that.
            if ((levels.Find(f => f.Verdict == Verdict.Fail) ?? levels.FirstOrDefault()) is not { Measured: { } pressure } level || worst is null)
                return One(CertificateMessages.RowTest, Phases.PressureTest, "pressure-test.level");
            var measured = time?.Measured is { } held ? Text(CertificateMessages.HeldFor(new(pressure.Text), new(held.Text))) : pressure.Text;
            // What is only usual is no limit beside which another could stand; the strength test has a ceiling of its own, and is no row here.
            var limits = level.Verdict == Verdict.Information && level.Limits.Length > 0
                ? [Text(CertificateMessages.UsualLimit(new(level.Limits[0].Text)))]
                : levels.Where(f => f.Limits.Length > 0).DistinctBy(f => f.Limits[0].Kind).Select(f => f.Limits[0].Text);
            var row = Row(CertificateMessages.RowTest, measured, string.Join("; ", limits.Append(Limits(time)).Where(l => l.Length > 0)), worst);
            // Below what is usual nobody fails it, and it is no plain pass either.
            return level.Verdict == Verdict.Information && worst.Verdict is (Verdict.Pass or Verdict.PassWithinUncertainty) ? row with { Verdict = null, Word = Text(CertificateMessages.BelowUsual) } : row;
        }

        public KeyRow Hold()
        {
            var row = One(CertificateMessages.RowHold, Phases.PressureTest, "pressure-test.hold");
            return row.Finding is not null && row.Measured.Length > 0 && context.Get<NitrogenRun>().Loss is { } loss
                ? row with { Measured = Text(CertificateMessages.DropAndShare(context.Present.InMessage(loss.CorrectedDrop, DisplayKind.PressureDifference), new(row.Measured))) }
                : row;
        }

        public KeyRow VacuumHold()
        {
            var row = One(CertificateMessages.RowVacuumHold, Phases.Evacuation, "evacuation.hold");
            // A level that nobody read at that minute is no reading.
            return row.Finding is { } number && record.Findings[number - 1].Messages?.Statement.Any(m => m is { Phase: Phases.Evacuation, Name: "hold-interpolated" }) == true
                ? row with { Measured = Text(CertificateMessages.BetweenReadings(new(row.Measured))) }
                : row;
        }

        public KeyRow Charge()
        {
            var total = record.Findings.FirstOrDefault(f => f.Check == "charge.total")?.Measured?.Text;
            var whole = context.Get<WeighedCharge>().SawWholeCharge;
            if (Judged("charge.by-weight") is { Measured: { } added } weighed)
            {
                var measured = whole ? CertificateMessages.WeighedIn(new(added.Text)) : total is null ? CertificateMessages.AddedOnly(new(added.Text)) : CertificateMessages.AddedAndTotal(new(added.Text), new(total));
                return Row(CertificateMessages.RowCharge, Text(measured), Limits(weighed), weighed);
            }
            // A charge that nobody weighed is what the nameplate says, which is no measurement.
            var row = One(CertificateMessages.RowCharge, Phases.Charge, "charge.by-weight");
            if (row.Measured.Length == 0 && total is null && context.Get<WeighedCharge>().Put is { } put)
            {
                var mass = new TextValue(context.Present.Text(put.Value, DisplayKind.Mass));
                return row with { Measured = Text(whole ? CertificateMessages.WeighedIn(mass) : CertificateMessages.AddedOnly(mass)) };
            }

            return row.Measured.Length == 0 && total is not null ? row with { Limit = "", Measured = Text(IsWeighed ? CertificateMessages.TotalOnly(new(total)) : CertificateMessages.TotalNotWeighed(new(total))) } : row;
        }

        /// <summary>The gravest finding of the first of these checks that was judged.</summary>
        public KeyRow One(Message label, string phase, params string[] checks)
        {
            foreach (var check in checks)
            {
                if (Judged(check) is { } finding)
                    return Row(label, checks.Length > 1 && finding.Measured is { } value ? Which(finding, value.Text) : finding.Measured?.Text ?? "", Limits(finding), finding);
            }

            var told = checks.Select(c => record.Findings.FirstOrDefault(f => f.Check == c)).FirstOrDefault(f => f is not null);
            return told is { Verdict: Verdict.CannotDecide or Verdict.NotEvaluated }
                ? Row(label, told.Measured is not { } shown ? "" : checks.Length > 1 ? Which(told, shown.Text) : shown.Text, Limits(told), told)
                : None(label, phase, checks);
        }

        /// <summary>A phase in one row: the check that fails, else how many pass.</summary>
        public KeyRow All(Message label, string phase)
        {
            var judged = record.Findings.Where(f => f.Phase == phase && f.Verdict is Verdict.Pass or Verdict.PassWithinUncertainty or Verdict.Conditional or Verdict.Fail).ToList();
            if (Worst(judged) is not { } worst)
            {
                // What the work has to do with and nobody showed is no part of another visit.
                return record.Findings.FirstOrDefault(f => f.Phase == phase && f.Verdict is Verdict.NotEvaluated or Verdict.CannotDecide) is { } open
                    ? new(Text(label), "", "", null, Text(CertificateMessages.NotShown), open.Number)
                    : None(label, phase, [.. record.Findings.Where(f => f.Phase == phase).Select(f => f.Check)]);
            }
            if (worst.Verdict is Verdict.Fail or Verdict.Conditional)
                return Row(label, worst.Measured is { } value ? Which(worst, value.Text) : worst.Title, Limits(worst), worst);
            // What passes does not speak for what nobody showed.
            var lost = _missing.Select(CheckCatalogue.Find).Where(c => c?.Phase == phase).Select(c => MissingWork.InSentence(Text(c!.Title()))).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
            return lost.Count == 0
                ? Row(label, Text(CertificateMessages.ChecksPass(judged.Count)), "", worst)
                : new(Text(label), Text(CertificateMessages.ChecksPassOthersMissing(judged.Count, new ListValue([.. lost.Select(l => (MessageValue)new NameValue(l))]))), "", null, Text(CertificateMessages.NotShown), null);
        }

        private KeyRow None(Message label, string phase, string[] checks) =>
            new(Text(label), "", "", null, Text(Why(phase, checks)), null);

        // Asked for and not shown; read and not judged; or no part of this visit.
        private Message Why(string phase, string[] checks) =>
            checks.Any(_missing.Contains) || (phase == Phases.Air && _missing.Contains(Prerequisites)) || (phase is Phases.Air or Phases.Electrical or Phases.Safety && _missing.Any(m => CheckCatalogue.Find(m)?.Phase == phase)) ? CertificateMessages.NotShown
            : record.Findings.Any(f => f.Phase == phase && f.Verdict is not (Verdict.NotEvaluated or Verdict.CannotDecide)) ? CertificateMessages.NotJudged
            : CertificateMessages.NotPart;

        private Finding? Judged(string check) => Worst(record.Findings.Where(f => f.Check == check && f.Verdict is Verdict.Pass or Verdict.PassWithinUncertainty or Verdict.Conditional or Verdict.Fail));

        private static Finding? Worst(IEnumerable<Finding> findings) => findings.OrderBy(f => f.Verdict switch
        {
            Verdict.Fail => 0,
            Verdict.CannotDecide => 1,
            Verdict.Conditional => 2,
            Verdict.PassWithinUncertainty => 3,
            _ => 4,
        }).ThenBy(f => f.Measured is null).FirstOrDefault();

        // A check of several numbers is told by the one that counts.
        private string Which(Finding finding, string value) => Text(CertificateMessages.Which(new(finding is { Check: "charge.receiver", Subject: { } subject } ? subject : finding.Title), new(value)));

        private KeyRow Row(Message label, string measured, string limit, Finding finding) =>
            new(Text(label), measured, limit, finding.Verdict, Text(RecordWords.Of(finding.Verdict)), finding.Number);

        private static string Limits(params ReadOnlySpan<Finding?> findings)
        {
            var limits = new List<string>();
            foreach (var finding in findings)
            {
                if (finding is { Limits: [{ Text: var text }, ..] })
                    limits.Add(text);
            }

            return string.Join("; ", limits);
        }

        private string Text(Message message) => context.Present.Text(message);
    }
}
