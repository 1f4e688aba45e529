using Commission.Jobs.Model.Words;
using Commission.Source;

namespace Commission.Checks.Limits;

/// <summary>What a record has to show in a situation.</summary>
/// <param name="When">When it is asked.</param>
/// <param name="Checks">Groups of check ids: of each group one has to be judged.</param>
/// <param name="Photos">What photos have to show.</param>
/// <param name="Because">Why, as a phrase.</param>
/// <param name="At">Where it is written.</param>
internal sealed record RequiredProfile(
    LimitConditions When,
    IReadOnlyList<IReadOnlyList<string>> Checks,
    IReadOnlyList<PhotoSubject> Photos,
    string Because,
    SourceLocation At);
