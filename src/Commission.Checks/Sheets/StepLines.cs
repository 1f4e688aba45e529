using System.Globalization;

namespace Commission.Checks.Sheets;

/// <summary>An advice as lines of a terminal: each line of the advice is a step, and where there are several they are numbered below each other.</summary>
public static class StepLines
{
    /// <param name="lead">What stands before it, without its colon; spaces at its front indent everything.</param>
    /// <param name="text">The advice.</param>
    public static IEnumerable<string> Of(string lead, string text)
    {
        ArgumentNullException.ThrowIfNull(lead);
        ArgumentNullException.ThrowIfNull(text);
        var steps = text.Split('\n');
        if (steps.Length == 1)
            return [$"{lead}: {text}"];
        var indent = new string(' ', lead.Length - lead.TrimStart().Length + 2);
        return steps.Select((step, i) => string.Create(CultureInfo.InvariantCulture, $"{indent}{i + 1}. {step}")).Prepend(lead + ":");
    }
}
