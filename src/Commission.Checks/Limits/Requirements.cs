using System.Collections.Immutable;
using Commission.Jobs.Model.Words;
using Commission.Messages;
using Commission.Source;

namespace Commission.Checks.Limits;

/// <summary>What a record has to show in a situation.</summary>
/// <param name="When">When it is asked.</param>
/// <param name="Checks">Of each one check has to be judged.</param>
/// <param name="Photos">What photos have to show.</param>
/// <param name="Because">Why, as a phrase.</param>
/// <param name="At">Where it is written.</param>
internal sealed record RequiredProfile(
    LimitConditions When,
    IReadOnlyList<RequiredChoice> Checks,
    IReadOnlyList<PhotoSubject> Photos,
    Message Because,
    SourceLocation At);

/// <summary>A check that has to be judged, or a choice of which one has to be.</summary>
/// <param name="OneOf">Check ids; one alone, or several of which one is enough.</param>
/// <param name="Called">What they show, where several do; null for the titles of the checks.</param>
internal sealed record RequiredChoice(IReadOnlyList<string> OneOf, Message? Called);

/// <summary>A choice that has to be judged in this job.</summary>
/// <param name="Choice">The checks of which one is enough.</param>
/// <param name="Because">Why, as a phrase.</param>
/// <param name="Pack">The pack that asks for it.</param>
internal sealed record RequiredCheck(RequiredChoice Choice, Message Because, string Pack)
{
    /// <summary>Whether a check is the one, or one of them.</summary>
    public bool Names(string check) => Choice.OneOf.Contains(check, StringComparer.Ordinal);
}

/// <summary>What a record has to show, collected from packs. What is not named here is never missed.</summary>
/// <param name="Checks">Checks that have to be judged.</param>
/// <param name="Photos">Photos that have to be there.</param>
internal sealed record RequiredEvidence(ImmutableArray<RequiredCheck> Checks, ImmutableArray<RequiredPhoto> Photos)
{
    /// <summary>Collects the profiles that apply.</summary>
    /// <param name="packs">The packs, in order.</param>
    /// <param name="situation">What is known of the job.</param>
    /// <returns>Each check and photo once, with the first pack that asks for it.</returns>
    public static RequiredEvidence Of(IEnumerable<LimitPack> packs, LimitSituation situation)
    {
        var checks = ImmutableArray.CreateBuilder<RequiredCheck>();
        var photos = ImmutableArray.CreateBuilder<RequiredPhoto>();
        var seenChecks = new HashSet<string>(StringComparer.Ordinal);
        var seenPhotos = new HashSet<PhotoSubject>();
        foreach (var pack in packs)
        {
            foreach (var profile in pack.Required.Where(profile => profile.When.Hold(situation)))
            {
                foreach (var choice in profile.Checks)
                {
                    if (seenChecks.Add(string.Join('|', choice.OneOf)))
                        checks.Add(new RequiredCheck(choice, profile.Because, pack.Name));
                }

                foreach (var photo in profile.Photos)
                {
                    if (seenPhotos.Add(photo))
                        photos.Add(new RequiredPhoto(photo, profile.Because, pack.Name));
                }
            }
        }

        return new RequiredEvidence(checks.ToImmutable(), photos.ToImmutable());
    }

    /// <summary>Whether a check is required, alone or as one of a choice.</summary>
    /// <param name="check">Check id.</param>
    /// <returns>True when some profile names it.</returns>
    public bool Names(string check) => Checks.Any(required => required.Names(check));
}

/// <summary>A photo that has to be there.</summary>
/// <param name="Shows">What it has to show.</param>
/// <param name="Because">Why, as a phrase.</param>
/// <param name="Pack">The pack that asks for it.</param>
internal sealed record RequiredPhoto(PhotoSubject Shows, Message Because, string Pack);
