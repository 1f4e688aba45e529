using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Jobs.Model;
using Commission.Jobs.Photos;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Evidence;

/// <summary>Which photos can stand for what they are named for: large enough to read, and no copy of another.</summary>
internal sealed class PhotoProof : IAnalysis<PhotoProof>
{
    // A quarter of VGA: the digits of a gauge that fills half the picture are a dozen pixels high. Common practice, no source.
    private const int LeastLongSide = 320;
    private const int LeastShortSide = 240;

    private readonly HashSet<Photo> _faulty = new(ReferenceEqualityComparer.Instance);

    private PhotoProof(ImmutableArray<Photo> photos)
    {
        var first = new Dictionary<string, Photo>(StringComparer.Ordinal);
        var faults = ImmutableArray.CreateBuilder<Message>();
        foreach (var photo in photos)
        {
            if (photo.Picture is not { } picture)
                continue;
            if (!first.TryAdd(picture.Sha256, photo))
                faults.Add(EvidenceMessages.PhotoCopied(new(photo.File.Value), Line(photo), new(first[picture.Sha256].File.Value), Line(first[picture.Sha256])));
            else if (Math.Max(picture.Width, picture.Height) < LeastLongSide || Math.Min(picture.Width, picture.Height) < LeastShortSide)
                faults.Add(EvidenceMessages.PhotoSmall(new(photo.File.Value), Line(photo), new(Size(picture)), new(string.Create(CultureInfo.InvariantCulture, $"{LeastLongSide} × {LeastShortSide}"))));
            else
                continue;
            _faulty.Add(photo);
        }

        Faults = faults.ToImmutable();
    }

    /// <summary>What is wrong with each photo that proves nothing, as half a sentence.</summary>
    public ImmutableArray<Message> Faults { get; }

    /// <inheritdoc/>
    public static PhotoProof Create(CheckContext context) => new(context.Job.Photos);

    /// <summary>Whether a photo counts as one of what it is named for. Of several copies the first does.</summary>
    /// <param name="photo">A photo of the job.</param>
    public bool Counts(Photo photo) => !_faulty.Contains(photo);

    /// <summary>The size of a picture in words.</summary>
    public static string Size(PhotoFacts picture) => string.Create(CultureInfo.InvariantCulture, $"{picture.Width} × {picture.Height}");

    /// <summary>The line in which a photo is named.</summary>
    public static NameValue Line(Photo photo) => new(photo.File.At.Line.ToString(CultureInfo.InvariantCulture));
}

/// <summary>Whether the photos are pictures of their own, and of this visit.</summary>
internal sealed class PhotosCheck : ICheck
{
    // Of 255 bits. Copies that were compressed again or made smaller differ in at most 12, the same gauge with another reading in 34 and more (measured: PicturePrintTests).
    private const int NearlyTheSame = 20;

    // A telephone keeps the network's time; a camera is set once a year. Common practice, no source.
    private static readonly TimeSpan ClockDoubt = TimeSpan.FromMinutes(15);

    public string Id => "evidence.photos";

    public string Phase => Phases.Evidence;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var photos = context.Job.Photos.Where(p => p.Picture is not null).ToList();
        if (photos.Count == 0)
            yield break;
        var finding = context.Finding(this);
        foreach (var photo in photos)
            finding.Use(EvidenceMessages.ReadingPhoto, photo.File).Use(EvidenceMessages.ReadingPhotoTaken(new(photo.File.Value)), photo.At);
        var proof = context.Get<PhotoProof>();
        foreach (var (earlier, later) in NearCopies(photos, proof))
            finding.Remark(EvidenceMessages.PhotosAlike(new(earlier.File.Value), PhotoProof.Line(earlier), new(later.File.Value), PhotoProof.Line(later)));
        var times = TimeRemarks(context, photos).ToList();
        foreach (var remark in times)
            finding.Remark(remark);
        if (!proof.Faults.IsEmpty)
        {
            yield return finding.NotEvaluated(proof.Faults.Skip(1).Aggregate(proof.Faults[0], (first, more) => EvidenceMessages.PhotosFaults(first, more)), EvidenceMessages.PhotosNext);
            yield break;
        }

        finding.Decide(true).Say(EvidenceMessages.PhotosGood(photos.Count));
        yield return (times.Count == 0 ? finding : finding.LookAt(EvidenceMessages.PhotoTimeNext)).Build();
    }

    private static IEnumerable<(Photo Earlier, Photo Later)> NearCopies(List<Photo> photos, PhotoProof proof)
    {
        for (var later = 1; later < photos.Count; later++)
        {
            for (var earlier = 0; earlier < later; earlier++)
            {
                // Copies to the last byte are told as such.
                if (photos[earlier].Picture is { Print: { } one } first && photos[later].Picture is { Print: { } other } second
                    && first.Sha256 != second.Sha256 && one.DistanceTo(other) <= NearlyTheSame && proof.Counts(photos[later]))
                {
                    yield return (photos[earlier], photos[later]);
                    break;
                }
            }
        }
    }

    private static IEnumerable<Message> TimeRemarks(CheckContext context, List<Photo> photos)
    {
        var job = context.Job;
        DateTimeOffset[] written = [.. WorkPhases.Of(job).SelectMany(p => p.Times).Select(t => t.Time).Concat(photos.Select(p => p.At).OfType<Given<JobTime>>()).Select(t => t.Value.Clock).OfType<DateTimeOffset>()];
        var first = job.Identity.Date.Value;
        var last = written.Select(t => DateOnly.FromDateTime(t.DateTime)).Append(first).Max();
        // A clock that knows its distance from UTC is read in the job's zone where the job names one.
        TimeSpan? zone = job.Identity.Zone is not null && written is [var any, ..] ? any.Offset : null;
        foreach (var photo in photos)
        {
            if (photo.Picture!.Taken is not { } camera)
                continue;
            var taken = camera.Offset is { } offset && zone is { } here ? new DateTimeOffset(camera.Clock, offset).ToOffset(here).DateTime : camera.Clock;
            if (DateOnly.FromDateTime(taken) < first || DateOnly.FromDateTime(taken) > last)
                yield return EvidenceMessages.PhotoOtherDay(new(photo.File.Value), PhotoProof.Line(photo), Words(taken));
            else if (photo.At?.Value.Clock is { } at && (at.DateTime - taken).Duration() > ClockDoubt)
                yield return EvidenceMessages.PhotoOtherTime(new(photo.File.Value), PhotoProof.Line(photo), Words(taken), new(photo.At.Text));
        }
    }

    private static TextValue Words(DateTime moment) => new(moment.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture));
}
