using Commission.Measurement.Decisions;
using Commission.Measurement.Units;
using Commission.Messages;

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

    /// <summary>A message as text.</summary>
    /// <param name="message">The message.</param>
    /// <param name="language">The language.</param>
    public static string Text(Message message, Language language) => Writer.Format(message, language);

    /// <summary>A value as text.</summary>
    /// <param name="value">The value.</param>
    /// <param name="language">The language.</param>
    public static string Text(MessageValue value, Language language) => Writer.Format(value, language);
}
