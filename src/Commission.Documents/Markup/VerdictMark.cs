namespace Commission.Documents.Markup;

/// <summary>
/// The mark that stands before a verdict's word. Each has a shape of its own, so that a page printed in grey or read without
/// colours says the same.
/// </summary>
internal static class VerdictMark
{
    /// <summary>Verdict classes of the markup.</summary>
    public static IReadOnlyList<string> Classes { get; } = ["pass", "conditional-pass", "conditional-fail", "fail", "not-evaluated", "information"];

    /// <summary>The mark of a verdict class; empty for information, which judges nothing.</summary>
    public static string Of(string verdictClass) => verdictClass switch
    {
        "pass" => "✓",
        "conditional-pass" => "△",
        "conditional-fail" => "▲",
        "fail" => "✗",
        "not-evaluated" => "□",
        _ => "",
    };
}
