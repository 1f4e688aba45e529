using System.Collections.Immutable;
using Commission.Measurement.Decisions;

namespace Commission.Records;

/// <summary>What page 1 answers: accepted or not, why, by which figures. Every text is as printed.</summary>
public sealed record Certificate
{
    /// <summary>The outcome with its reason, one sentence.</summary>
    public string Sentence { get; init; } = "";

    /// <summary>The figures that answer for the work, in the order of the work; what was not part of the visit has a row that says so.</summary>
    public ImmutableArray<KeyRow> Rows { get => field.IsDefault ? [] : field; init; }

    /// <summary>Checks that failed, the weightiest first.</summary>
    public ImmutableArray<FailedCheck> Failed { get => field.IsDefault ? [] : field; init; }

    /// <summary>Ids of the figures that page 1 shows, two at most.</summary>
    public ImmutableArray<string> Figures { get => field.IsDefault ? [] : field; init; }

    /// <summary>Each unit of the system in one line: what it is, maker, model, serial.</summary>
    public ImmutableArray<LabelValue> Units { get => field.IsDefault ? [] : field; init; }

    /// <summary>Where the work was done and who did it for whom, where page 1 has no room for everything that is written of them.</summary>
    public ImmutableArray<LabelValue> Parties { get => field.IsDefault ? [] : field; init; }

    /// <summary>Numbers of the findings whose value lies within twice its U of its limit: their budgets are printed.</summary>
    public ImmutableArray<int> NearLimit { get => field.IsDefault ? [] : field; init; }

    /// <summary>What the owner has to know, in plain sentences.</summary>
    public ImmutableArray<string> Owner { get => field.IsDefault ? [] : field; init; }

    /// <summary>What endangers whoever works on the system next, one sentence; empty where nothing of the kind is known.</summary>
    public string Danger { get; init; } = "";
}

/// <summary>One of the figures that answer for the work.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Measured">The figures as printed; empty where there are none.</param>
/// <param name="Limit">The limits they are judged by; empty where there are none.</param>
/// <param name="Verdict">The gravest verdict behind it; null where nothing was judged.</param>
/// <param name="Word">The verdict, or why there is none, in one word.</param>
/// <param name="Finding">Number of the finding that decides it; null without one.</param>
public sealed record KeyRow(string Label, string Measured, string Limit, Verdict? Verdict, string Word, int? Finding);

/// <summary>A check that failed.</summary>
/// <param name="Title">The check and what it is about.</param>
/// <param name="Measured">Its value as printed; its sentence where it has none.</param>
/// <param name="Limit">The limit; empty for none.</param>
/// <param name="Finding">Its number.</param>
public sealed record FailedCheck(string Title, string Measured, string Limit, int Finding);
