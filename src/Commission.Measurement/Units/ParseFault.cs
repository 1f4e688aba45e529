namespace Commission.Measurement.Units;

/// <summary>Why a text is not the quantity asked for. The parts are sentences that stay apart; the caller adds the place.</summary>
/// <param name="Kind">What kind of thing is wrong.</param>
/// <param name="Found">What was found, as a sentence.</param>
/// <param name="Expected">What was expected, as a sentence; empty when <paramref name="Found"/> says it.</param>
/// <param name="Advice">What to write instead, as a sentence.</param>
/// <param name="Offset">Where the fault starts, in characters from the start of the text.</param>
/// <param name="Length">How many characters it covers, at least one unless the text is empty.</param>
public sealed record ParseFault(FaultKind Kind, string Found, string Expected, string Advice, int Offset, int Length)
{
    /// <summary>The sentences joined.</summary>
    public string Message => string.Join(' ', new[] { Found, Expected, Advice }.Where(part => part.Length > 0));

    internal ParseFault Shifted(int by) => this with { Offset = Offset + by };
}
