using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Messages;

namespace Commission.Checks.Refrigerants;

/// <summary>
/// The second look that the law asks for after a leak was repaired: of equipment that it has checked for leaks, once the system has run and within a
/// month (Regulation (EU) 2024/573, article 4(5), published). It is owed whether or not anybody wrote of it; smaller equipment owes none.
/// </summary>
internal sealed class SecondCheck : IAnalysis<SecondCheck>
{
    private readonly Job _job;
    private readonly EuropeanDuties _duties;
    private readonly Limit? _limit;

    private SecondCheck(CheckContext context)
    {
        _job = context.Job;
        _duties = context.Get<EuropeanDuties>();
        _limit = context.Limits.Find(LimitIds.RefrigerantLeakCheckRecheck);
        var check = _job.LeakCheck;
        var isRepair = _job.Identity.Work.Value == WorkKind.LeakRepair;
        var isRepaired = check?.Result.Value != LeakResult.Leak && (isRepair || check?.Result.Value == LeakResult.LeakRepaired || check?.AfterRepair?.Value == true);
        if (_limit is not { Upper: { } months } || !isRepaired)
            return;
        var repair = check is { Result.Value: LeakResult.LeakRepaired } && !isRepair ? check.Date : _job.Identity.Date;
        Latest = repair.Value.AddMonths((int)months.Si);
        Span = RefrigerantMessages.LeakRecheckSpan(repair.Value, new TextValue(months.Text));

        // The regulation before asked for no running time.
        Running = _duties.Edition == FluorinatedGasEdition.Regulation517Of2014 ? null : context.Limits.Find(LimitIds.RefrigerantLeakCheckRecheckRunning);
        if (_duties.Plan is { Months: null } free)
        {
            State = SecondCheckState.NotOwed;
            Sentence = RefrigerantMessages.LeakRecheckNotOwed(free.Because);
        }
        else if (check is null || check.AfterRepair?.Value == false || (check.AfterRepair is null && check.Date.Value <= repair.Value))
        {
            IsToCome(_duties.Plan is null ? RefrigerantMessages.LeakRecheckUnknown : RefrigerantMessages.LeakRecheckOpen);
        }
        else
        {
            IsInTime = check.Date.Value <= Latest && check.Date.Value >= repair.Value;
            if (IsInTime && Running is { Lower: { } hours } && check.RunningFor is { } ran && ran.Value.Si < hours.Si)
                IsToCome(RefrigerantMessages.LeakRecheckTooEarly(new TextValue(ran.Text)));
            else
                IsDone(check);
        }
    }

    /// <summary>What has become of it.</summary>
    public SecondCheckState State { get; private set; }

    /// <summary>The limit on its time.</summary>
    public Limit Limit => _limit!;

    /// <summary>The limit on the running time before it; null where none is asked.</summary>
    public Limit? Running { get; }

    /// <summary>The last day for it.</summary>
    public DateOnly Latest { get; }

    /// <summary>The day of the repair and the time allowed, as a trace prints them; null where none is asked.</summary>
    public Message? Span { get; }

    /// <summary>Whether a check that was made lies between the repair and the last day.</summary>
    public bool IsInTime { get; }

    /// <summary>Whether a check was made, and nobody wrote how long the system had run.</summary>
    public bool AreHoursUnknown { get; private set; }

    /// <summary>What is said of it; null where none is asked.</summary>
    public Message? Sentence { get; private set; }

    /// <summary>Why it is still owed; null where it is not.</summary>
    public Message? Why { get; private set; }

    /// <summary>What is done about it; null where it is not owed any more.</summary>
    public Message? Next { get; private set; }

    /// <inheritdoc/>
    public static SecondCheck Create(CheckContext context) => new(context);

    /// <summary>Names what it follows from.</summary>
    public FindingBuilder UseIn(FindingBuilder finding)
    {
        _duties.UseIn(finding);
        return finding.Use(ReadingsMessages.Work, _job.Identity.Work).Use(ReadingsMessages.DateOfJob, _job.Identity.Date).Use(RefrigerantMessages.ReadingCheckDate, _job.LeakCheck?.Date)
            .Use(RefrigerantMessages.ReadingAfterRepair, _job.LeakCheck?.AfterRepair).Use(RefrigerantMessages.ReadingRunningFor, _job.LeakCheck?.RunningFor);
    }

    private void IsToCome(Message why)
    {
        State = SecondCheckState.ToCome;
        Why = why;
        if (Running is { Lower: { } hours })
        {
            var least = new TextValue(hours.Text);
            Sentence = RefrigerantMessages.LeakRecheckToCome(least, Latest);
            Next = RefrigerantMessages.LeakRecheckNext(least, Latest);
        }
        else
        {
            Sentence = RefrigerantMessages.LeakRecheckToComeBy(Latest);
            Next = RefrigerantMessages.LeakRecheckNextBy(Latest);
        }
    }

    private void IsDone(LeakCheck check)
    {
        State = SecondCheckState.Done;
        AreHoursUnknown = Running is not null && check.RunningFor is null;
        Sentence = !IsInTime ? RefrigerantMessages.LeakRecheckLate(check.Date.Value, Latest)
            : check.RunningFor is { } ran ? RefrigerantMessages.LeakRecheckDoneAfter(check.Date.Value, new TextValue(ran.Text))
            : RefrigerantMessages.LeakRecheckDone(check.Date.Value);
    }
}

/// <summary>What has become of the second look at a repair.</summary>
internal enum SecondCheckState
{
    /// <summary>No pack asks for one, or nothing was repaired.</summary>
    NotAsked,

    /// <summary>The equipment is too small for leak checks.</summary>
    NotOwed,

    /// <summary>It is still to be made.</summary>
    ToCome,

    /// <summary>One was made, in time or not.</summary>
    Done,
}
