using Commission.Documents.Media;
using Commission.Jobs;
using Commission.Jobs.Photos;
using Commission.Messages;
using Commission.Records;
using Commission.Source;

namespace Commission.Cli.Running;

/// <summary>Puts the photos of a job, and the sign of its company, on the shelf that pages take them from.</summary>
internal static class JobPhotos
{
    /// <param name="record">The record, which names them.</param>
    /// <param name="reading">The job as read, which opens them.</param>
    /// <param name="keepsLocation">Whether what the camera wrote beside them stays.</param>
    public static PhotoShelf Of(CommissioningRecord record, JobReading reading, bool keepsLocation) => new(
        record.Photos.Select(p => p.File).Append(record.Header.Issuer.Logo).Where(name => name.Length > 0),
        name => PhotoForPage.Make(() => reading.OpenPhoto(name), PhotoShelf.BoxWidth, PhotoShelf.BoxHeight, keepsLocation) is { } photo
            ? new EmbeddedPhoto(photo.Jpeg, photo.Width, photo.Height, photo.Orientation, photo.JpegThatTurnsItself())
            : throw new RefusedException(CliMessages.PhotoChanged(new(name))));
}
