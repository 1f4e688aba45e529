using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Measurement.Decisions;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;
using BudgetLine = Commission.Records.Findings.BudgetLine;

namespace Commission.Checks.Kernel;

/// <summary>
/// Puts a finding together: readings, steps, number, limit, verdict, words. Every check speaks through it, so that
/// decision rules, budgets and strip-chart positions are made in one place.
/// </summary>
internal sealed class FindingBuilder
{
    private readonly CheckContext _context;
    private readonly ICheck _check;
    private readonly string? _subject;
    private readonly List<ReadingUse> _readings = [];
    private readonly List<string> _instruments = [];
    private readonly List<ReadingUse> _impeached = [];
    private readonly List<TraceStep> _trace = [];
    private readonly List<LimitStatement> _limits = [];
    private readonly List<Message> _remarks = [];
    private MeasuredQuantity? _measured;
    private ImmutableArray<BudgetLine> _budget = [];
    private RootCause? _largest;
    private StripPosition? _strip;
    private Verdict _verdict = Verdict.Information;
    private Decision? _decision;
    private Uncertain? _distance;
    private readonly List<Message> _reservations = [];
    private Message? _reason;
    private Message? _statement;
    private Message? _next;
    private bool _isDanger;
    private string? _inFile;
    private bool _lookAt;

    internal FindingBuilder(CheckContext context, ICheck check, string? subject)
    {
        _context = context;
        _check = check;
        _subject = subject;
    }

    /// <summary>The verdict as it stands now.</summary>
    public Verdict Verdict => _verdict;

    /// <summary>Whether the verdict is a pass, with or without condition.</summary>
    public bool Passes => _verdict is Verdict.Pass or Verdict.PassWithinUncertainty or Verdict.Conditional;

    /// <summary>Names a corrected reading: its place, its instrument, and the corrections as steps of the trace.</summary>
    public FindingBuilder Use(CorrectedReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        foreach (var use in reading.Uses)
            AddReading(use);
        foreach (var step in reading.Steps)
        {
            if (!_trace.Contains(step))
                _trace.Add(step);
        }

        return this;
    }

    /// <summary>Names a value of the job that is used as it stands.</summary>
    /// <typeparam name="T">Kind of value.</typeparam>
    /// <param name="name">What it is, in the trade's words.</param>
    /// <param name="given">The value; nothing happens without one.</param>
    /// <param name="instrument">The instrument it was read on, where one is known.</param>
    public FindingBuilder Use<T>(Message name, Given<T>? given, string? instrument = null)
    {
        if (given is not null)
            AddReading(given.Use(_context.Present.Text(name), instrument));
        return this;
    }

    /// <summary>Names a reading whose use is already described, such as the elevation behind the atmosphere.</summary>
    /// <param name="use">The reading.</param>
    public FindingBuilder Use(ReadingUse use)
    {
        ArgumentNullException.ThrowIfNull(use);
        AddReading(use);
        return this;
    }

    /// <summary>Says that a reading cannot be what it says. The record then takes back what other checks concluded from it. For evidence that is hard: a contradiction, not an oddity.</summary>
    /// <param name="use">The reading.</param>
    public FindingBuilder Impeach(ReadingUse use)
    {
        ArgumentNullException.ThrowIfNull(use);
        AddReading(use);
        _impeached.Add(use);
        return this;
    }

    /// <summary>Adds a step of the trace that is already described; a step that stands there stays once.</summary>
    public FindingBuilder Step(TraceStep step)
    {
        if (!_trace.Contains(step))
            _trace.Add(step);
        return this;
    }

    /// <summary>Adds a step of the trace.</summary>
    /// <param name="symbol">Symbol of the result.</param>
    /// <param name="name">What it stands for.</param>
    /// <param name="formula">Formula in symbols or words.</param>
    /// <param name="substitution">The formula with its values.</param>
    /// <param name="result">Result with unit.</param>
    /// <param name="source">Where the formula comes from; empty for plain arithmetic.</param>
    public FindingBuilder Step(string symbol, Message name, TraceWords formula, TraceWords substitution, TraceWords result, TraceWords source = default)
    {
        var present = _context.Present;
        _trace.Add(new TraceStep(symbol, present.Text(name), formula.Text(present), substitution.Text(present), result.Text(present), source.Cited(present)));
        return this;
    }

    /// <summary>States the number the finding is about, with its budget. <see cref="Judge"/> does this too.</summary>
    public FindingBuilder Measure(Uncertain y, DisplayKind kind)
    {
        ArgumentNullException.ThrowIfNull(y);
        _measured = _context.Present.Measured(y, kind);
        _budget = Budget(y, kind);
        _largest = y.Budget is [var first, ..] ? first.Cause : null;
        return this;
    }

    /// <summary>The end of most checks: what is said where the verdict is a pass, what where it is none, and what to do then.</summary>
    /// <param name="good">The sentence of a pass.</param>
    /// <param name="bad">The sentence of anything else.</param>
    /// <param name="next">What to do when it is no pass.</param>
    public Finding Conclude(Message good, Message bad, Message next) => Passes ? Say(good).Build() : Say(bad).Next(next).Build();

    /// <summary>The end of a check whose limit keeps people or the machine from harm.</summary>
    /// <param name="good">The sentence of a pass.</param>
    /// <param name="danger">The danger in one sentence, without the word.</param>
    /// <param name="next">What to do about it, at once.</param>
    public Finding ConcludeOrDanger(Message good, Message danger, Message next) => Passes ? Say(good).Build() : Danger(danger, next);

    /// <summary>Shows a limit beside the finding without judging by it.</summary>
    public FindingBuilder Show(LimitStatement limit)
    {
        _limits.Add(limit);
        return this;
    }

    /// <summary>Judges a number by a limit: verdict, probability of conformity, place on the strip chart.</summary>
    /// <param name="y">The number.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="limit">The limit; its SI bounds are compared with the number as they stand.</param>
    /// <param name="target">Where the limit moves with readings of its own, such as a target taken from a table: its doubt belongs to the distance between the two (GUM 5, shared causes counted once), not to the number.</param>
    public FindingBuilder Judge(Uncertain y, DisplayKind kind, LimitStatement limit, Uncertain? target = null)
    {
        ArgumentNullException.ThrowIfNull(y);
        ArgumentNullException.ThrowIfNull(limit);
        if (limit.LowerSi is null && limit.UpperSi is null)
            throw new ArgumentException($"{_check.Id}: a limit without bounds judges nothing.", nameof(limit));
        Measure(y, kind);
        _limits.Add(limit);
        var distance = y;
        if (target is { StandardUncertainty: > 0 } || (target is not null && _context.Scope is not LinearScope))
        {
            _distance = y - target;
            distance = _distance + target.Value;
            _largest = _distance.Budget is [var first, ..] ? first.Cause : _largest;
            Step("Δ", KernelMessages.DistanceToTarget, KernelMessages.DistanceFormula, $"{_context.Present.Text(y.Value, kind)} − {_context.Present.Text(target.Value, kind)}", _context.Present.Text(_distance, kind), "GUM 5");
        }

        _decision = Conformity.Judge(distance, new Tolerance(limit.LowerSi, limit.UpperSi), limit.Rule);
        _verdict = _decision.Verdict;
        _strip = Strip(y, limit, kind);
        return this;
    }

    /// <summary>Gives a verdict on words, not on a number.</summary>
    /// <param name="holds">Whether the requirement is met.</param>
    /// <param name="limit">The requirement; null when it is a fact of the work itself.</param>
    public FindingBuilder Decide(bool holds, LimitStatement? limit = null)
    {
        _verdict = holds ? Verdict.Pass : Verdict.Fail;
        if (limit is not null)
            _limits.Add(limit);
        return this;
    }

    /// <summary>Makes a pass conditional because something it rests on was not shown. A verdict that is no pass stays.</summary>
    /// <param name="why">What was not shown.</param>
    public FindingBuilder Reserve(Message why)
    {
        if (_verdict is Verdict.Pass or Verdict.PassWithinUncertainty)
            _verdict = Verdict.Conditional;
        _reservations.Add(why);
        return this;
    }

    /// <summary>A danger to people or to the machine: it fails whatever was judged, and no outcome can be an acceptance.</summary>
    /// <param name="sentence">One plain sentence; the word DANGER is set before it.</param>
    /// <param name="next">What to do about it, at once.</param>
    public Finding Danger(Message sentence, Message next)
    {
        _verdict = Verdict.Fail;
        _isDanger = true;
        _statement = sentence;
        return Next(next).Build();
    }

    /// <summary>Turns whatever was judged into a failure for a reason beyond the number: a condition not met.</summary>
    /// <param name="why">The reason.</param>
    public FindingBuilder Fail(Message why)
    {
        _verdict = Verdict.Fail;
        _reason = why;
        return this;
    }

    /// <summary>The sentence of the finding.</summary>
    /// <param name="sentence">One plain sentence.</param>
    public FindingBuilder Say(Message sentence)
    {
        _statement = sentence;
        return this;
    }

    /// <summary>A remark that stands behind the sentence, such as a maker's figure looser than common practice.</summary>
    /// <param name="remark">One plain sentence; nothing happens without one.</param>
    public FindingBuilder Remark(Message? remark)
    {
        if (remark is not null)
            _remarks.Add(remark);
        return this;
    }

    /// <summary>What a technician does next.</summary>
    /// <param name="step">One plain sentence.</param>
    /// <param name="inFile">How that is written in the job file; null where the words say it.</param>
    public FindingBuilder Next(Message step, string? inFile = null)
    {
        _next = step;
        _inFile = inFile;
        return this;
    }

    /// <summary>What a technician does about a fact that decides nothing but that somebody has to look at: it stands on the first page.</summary>
    /// <param name="step">One plain sentence.</param>
    public FindingBuilder LookAt(Message step)
    {
        _lookAt = true;
        return Next(step);
    }

    /// <summary>Ends without a verdict because U is wider than the tolerance.</summary>
    /// <param name="why">Which doubt is too large.</param>
    /// <param name="todo">Which instrument or reading would settle it.</param>
    public Finding CannotDecide(Message why, Message todo) => NotEvaluated(why, todo) with { Verdict = Verdict.CannotDecide };

    /// <summary>Ends as not evaluated.</summary>
    /// <param name="why">Why it could not be judged.</param>
    /// <param name="todo">What would make it possible, in the trade's words.</param>
    /// <param name="inFile">How that is written in the job file; null where the words say it.</param>
    public Finding NotEvaluated(Message why, Message? todo, string? inFile = null)
    {
        _inFile = inFile;
        _verdict = Verdict.NotEvaluated;
        _decision = null;
        _strip = null;
        _reason = why;
        _next = todo;
        _statement ??= CommonMessages.NotEvaluated(why);
        return Build();
    }

    /// <summary>Ends as information: nothing sets a limit.</summary>
    /// <param name="sentence">The sentence.</param>
    /// <param name="why">What kind of information it is, or why no limit applies.</param>
    public Finding Information(Message sentence, Message? why = null)
    {
        _verdict = Verdict.Information;
        _decision = null;
        _strip = null;
        _reason = why;
        _statement = sentence;
        return Build();
    }

    /// <summary>The finished finding.</summary>
    /// <exception cref="InvalidOperationException">The check gave no sentence: a fault of this program.</exception>
    public Finding Build()
    {
        if (_verdict == Verdict.Conditional && _next is null && _largest is { } largest && _reservations.Count == 0)
        {
            _next = CommonMessages.SettleByLessDoubt(
                _context.Get<InstrumentKit>().All.FirstOrDefault(i => i.Brings(_largest)) is { } doubted ? CommonMessages.AccuracyOf(new TextValue(doubted.Id)) : (Message)largest.Name,
                _check.Phase is Phases.PressureTest or Phases.Evacuation && _context.Job.Charging is { Readings.IsEmpty: false } ? CommonMessages.SettleByLessDoubtAgain.Charged : CommonMessages.SettleByLessDoubtAgain.Can);
        }

        Message[] sentences = [_statement ?? throw new InvalidOperationException($"{_check.Id} has no statement."), .. _remarks];
        var told = new ListValue([.. sentences], ListJoin.Sentences);
        var adequacy = _decision?.Adequacy.Ratio;
        var messages = new FindingMessages([.. sentences]) { Reason = _reason, Reservation = [.. _reservations], NextStep = _next };
        return new Finding
        {
            Check = _check.Id,
            Phase = _check.Phase,
            Title = _context.Present.Text(_check.Title()),
            Subject = _subject,
            Verdict = _verdict,
            Reservation = _reservations.Count == 0 ? null : _context.Present.Text(new ListValue([.. _reservations], ListJoin.Semicolons)),
            Reason = _reason is null ? null : _context.Present.Text(_reason),
            IsDanger = _isDanger,
            Statement = _context.Present.Text(_isDanger ? CommonMessages.Danger(told) : told),
            NextStep = _next is null ? null : _context.Present.Text(_next),
            InFile = _inFile,
            Distance = _distance,
            IsToLookAt = _lookAt,
            Messages = messages,
            Measured = _measured,
            Limits = [.. _limits],
            ProbabilityOfConformity = _decision?.ProbabilityOfConformity,
            ConformityText = Printed(PrintedNumbers.Probability(_decision?.ProbabilityOfConformity)),
            MaximumFalseAccept = _decision?.MaximumFalseAccept,
            FalseAcceptText = Printed(PrintedNumbers.Probability(_decision?.MaximumFalseAccept)),
            Adequacy = adequacy,
            AdequacyText = Printed(PrintedNumbers.Ratio(adequacy)),
            Trace = [.. _trace],
            Readings = [.. _readings],
            Instruments = [.. _instruments],
            Impeached = [.. _impeached],
            Budget = _budget,
            Strip = _strip,
        };

        string? Printed(string? number) => number is null ? null : _context.Present.Symbols(number);
    }

    private static StripPosition? Strip(Uncertain y, LimitStatement limit, DisplayKind kind)
    {
        // A limit with one side has no width of its own: its own size gives the scale. A temperature has no size, nor has a limit at zero:
        // there the value itself gives it, so that it stands in the middle of what is allowed.
        var lower = limit.LowerSi;
        var upper = limit.UpperSi;
        double zero, one;
        if (lower is { } a && upper is { } b)
            (zero, one) = (a, b);
        else if (upper is { } most)
            (zero, one) = (most - Width(most), most);
        else if (lower is { } least)
            (zero, one) = (least, least + Width(least));
        else
            return null;
        if (!(one > zero))
            return null;
        double Width(double bound) => kind != DisplayKind.Temperature && bound > 0 ? bound : Math.Max(2 * Math.Abs(y.Value - bound), 4 * y.Expanded) is var width and > 0 ? width : 1;
        double At(double v) => (v - zero) / (one - zero);
        return y.StandardUncertainty > 0
            ? new StripPosition(At(y.Value), At(y.Value - y.Expanded), At(y.Value + y.Expanded), lower is not null, upper is not null)
            : new StripPosition(At(y.Value), null, null, lower is not null, upper is not null);
    }

    private void AddReading(ReadingUse use)
    {
        if (!_readings.Contains(use))
            _readings.Add(use);
        if (use.Instrument is { } id && !_instruments.Contains(id, StringComparer.Ordinal))
            _instruments.Add(id);
    }

    private ImmutableArray<BudgetLine> Budget(Uncertain y, DisplayKind kind)
    {
        var lines = ImmutableArray.CreateBuilder<BudgetLine>();
        foreach (var line in y.Budget)
        {
            var cause = line.Cause;
            var u = cause.StandardUncertainty;
            var sensitivity = u > 0 ? line.Contribution / u : 0;
            var causeKind = _context.Causes.KindOf(cause);
            lines.Add(new BudgetLine(
                _context.Present.Text(cause.Name),
                _context.Present.Text(Words(cause.Distribution)),
                CauseText(u, causeKind),
                SensitivityText(sensitivity, kind, causeKind),
                line.Contribution,
                100 * line.Share,
                _context.Present.Text(cause.Source))
            { ShareText = _context.Present.Symbols(PrintedNumbers.Share(100 * line.Share)) });
        }

        return lines.ToImmutable();
    }

    private string CauseText(double u, DisplayKind? kind)
    {
        // A cause without a unit of its own is a share of a stated bound, the same for every reading of the instrument.
        if (kind is not { } known)
            return _context.Present.Text(KernelMessages.OfItsBound(new(Plain(u))));
        var unit = Fine(known);
        return _context.Present.Symbols(WithUnit(Plain(u / unit.Factor), unit));
    }

    private string SensitivityText(double sensitivity, DisplayKind result, DisplayKind? cause)
    {
        var up = Fine(result);
        if (cause is not { } known)
            return _context.Present.Text(KernelMessages.ForTheBound(new(WithUnit(Plain(sensitivity / up.Factor), up))));
        var down = Fine(known);
        var number = Plain(sensitivity * down.Factor / up.Factor);
        // A pure number has no unit to be told.
        if (up.Symbol == down.Symbol)
            return _context.Present.Symbols(number);
        return down.Symbol == "1" ? _context.Present.Symbols(WithUnit(number, up)) : _context.Present.Text(KernelMessages.PerUnit(new(WithUnit(number, up)), new(down.Symbol)));
    }

    private static string WithUnit(string number, Unit unit) => unit.Symbol == "1" ? number : $"{number} {unit.Symbol}";

    // Three digits; powers of ten as people write them, not as programs do.
    private static string Plain(double number)
    {
        var text = number.ToString("G3", CultureInfo.InvariantCulture);
        var e = text.IndexOf('E', StringComparison.Ordinal);
        if (e < 0)
            return MessageWriter.WithTrueMinus(text);
        var exponent = int.Parse(text.AsSpan(e + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        return MessageWriter.WithTrueMinus(exponent is >= -6 and <= 6
            ? Math.Round((decimal)number, Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Abs(number))), 0, 12)).ToString("0.############", CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"{text[..e]}·10^{exponent}"));
    }

    private Unit Fine(DisplayKind kind) => _context.Present.Units[kind].Smaller ?? _context.Present.Units[kind].Unit;

    private static Message Words(Distribution distribution) => distribution switch
    {
        Distribution.Rectangular => KernelMessages.Rectangular,
        Distribution.Triangular => KernelMessages.Triangular,
        Distribution.UShaped => KernelMessages.UShaped,
        _ => KernelMessages.Normal,
    };
}

/// <summary>What the checks of air, compressor and piping have in common when they put a finding together.</summary>
internal static class AirFindings
{
    /// <summary>Remarks that U holds the resolution alone where nobody states an accuracy. A pass stays a pass: which instrument was used is a question of its own.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="readings">The readings the number rests on.</param>
    public static FindingBuilder RemarkUnknown(this FindingBuilder finding, IEnumerable<CorrectedReading> readings)
    {
        var names = readings.Where(r => !r.AccuracyKnown).Select(r => r.Name).Distinct(StringComparer.Ordinal).ToArray();
        return names.Length == 0 ? finding : finding.Remark(KernelMessages.ResolutionAlone(new([.. names.Select(n => new TextValue(n))])));
    }

    /// <summary>Names readings with their corrections.</summary>
    public static FindingBuilder UseAll(this FindingBuilder finding, IEnumerable<CorrectedReading> readings)
    {
        foreach (var reading in readings)
            finding.Use(reading);
        return finding;
    }
}
