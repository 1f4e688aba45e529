using Commission.Measurement.Decisions;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Records;

/// <summary>The words of a record, in its language.</summary>
public static class RecordWords
{
    private static readonly MessageWriter Writer = new(MessageCatalogue.BuiltIn, QuantityWriter.Instance);

    /// <summary>The word for a verdict.</summary>
    /// <param name="verdict">The verdict.</param>
    public static Message Of(Verdict verdict) => verdict switch
    {
        Verdict.Pass => RecordMessages.VerdictPass,
        Verdict.PassWithinUncertainty => RecordMessages.VerdictPassWithinUncertainty,
        Verdict.Conditional => RecordMessages.VerdictConditional,
        Verdict.Fail => RecordMessages.VerdictFail,
        Verdict.CannotDecide => RecordMessages.VerdictCannotDecide,
        Verdict.NotEvaluated => RecordMessages.VerdictNotEvaluated,
        _ => RecordMessages.VerdictInformation,
    };

    /// <summary>The words for an outcome.</summary>
    /// <param name="outcome">The outcome.</param>
    public static Message Of(Outcome outcome) => outcome switch
    {
        Outcome.Accepted => RecordMessages.OutcomeAccepted,
        Outcome.AcceptedWithConditions => RecordMessages.OutcomeAcceptedWithConditions,
        Outcome.NotAccepted => RecordMessages.OutcomeNotAccepted,
        _ => RecordMessages.OutcomeIncomplete,
    };

    /// <summary>Whose a limit is: the maker, common practice, the job, or the pack by its name.</summary>
    /// <param name="limit">The limit.</param>
    public static Message Whose(LimitStatement limit)
    {
        ArgumentNullException.ThrowIfNull(limit);
        return limit.Basis switch
        {
            "maker" => RecordMessages.WhoseMaker,
            "job" => RecordMessages.WhoseJob,
            LimitStatement.PackBasis => limit.Pack.Length > 0 ? RecordMessages.WhoseNamedPack(new NameValue(limit.Pack)) : RecordMessages.WhosePack,
            _ => RecordMessages.WhoseCommonPractice,
        };
    }

    /// <summary>The word for how well the source of a limit or of a clause is known.</summary>
    /// <param name="mark">The mark: <c>published</c>, <c>from memory</c>, <c>common practice</c>, <c>job</c> or <c>not read</c>.</param>
    public static Message Mark(string mark) => RecordMessages.Mark(mark switch
    {
        "published" => RecordMessages.MarkMark.Published,
        "from memory" => RecordMessages.MarkMark.FromMemory,
        "common practice" => RecordMessages.MarkMark.CommonPractice,
        "job" => RecordMessages.MarkMark.Job,
        _ => RecordMessages.MarkMark.NotRead,
    });

    /// <summary>A message as text.</summary>
    /// <param name="message">The message.</param>
    /// <param name="language">The language.</param>
    public static string Text(Message message, Language language) => Writer.Format(message, language);

    /// <summary>A value as text.</summary>
    /// <param name="value">The value.</param>
    /// <param name="language">The language.</param>
    public static string Text(MessageValue value, Language language) => Writer.Format(value, language);
}
