using Commission.Jobs.Model.Words;

namespace Commission.Checks.Limits;

/// <summary>A photo that has to be there.</summary>
/// <param name="Shows">What it has to show.</param>
/// <param name="Because">Why, as a phrase.</param>
/// <param name="Pack">The pack that asks for it.</param>
internal sealed record RequiredPhoto(PhotoSubject Shows, string Because, string Pack);
