using System.Text;
using Commission.Jobs.Files;
using Commission.Source;
using Xunit;

namespace Commission.Jobs.Tests.Photos;

/// <summary>Files named as photos of a job: refused at their line, or kept as what they show and no bytes.</summary>
public sealed class PhotoFileTests
{
    private const string Head = "commission: 1\nunits: si\njob: {id: T, work: seasonal check, date: 2026-06-18, site: {elevation: 100 m}}\nequipment: {system: split, refrigerant: R-410A}\n";

    [Theory]
    [InlineData("a.jpg", "", "6:10: \"a.jpg\" is empty. Copy the photo from the camera again.")]
    [InlineData("a.jpg", "plate", "6:10: \"a.jpg\" is text, not a picture. Name the photo itself, a JPEG or PNG file.")]
    [InlineData("job.yaml", null, "6:10: \"job.yaml\" is text, not a picture. Name the photo itself, a JPEG or PNG file.")]
    [InlineData("a.heic", "\0\0\0\u001cftypheic\0\0\0\0", "6:10: \"a.heic\" is a HEIC picture, as many phones write them, which is not read here. Take photos as JPEG (a setting of the camera), or convert this file to JPEG or PNG and name the new one.")]
    public void What_is_no_photo_is_refused_at_its_line(string name, string? content, string problem)
    {
        var folder = content is null ? new MemoryFolder() : new MemoryFolder().With(name, content);
        var (reading, problems) = Reading.Of($"{Head}photos:\n- {{file: {name}, shows: label}}\n", folder);
        Assert.Null(reading.Job);
        Assert.Equal(problem[..5] == "6:10:" ? "job.yaml:" + problem : problem, Assert.Single(problems));
    }

    [Fact]
    public void A_cut_photo_is_refused_at_its_line()
    {
        var folder = new MemoryFolder { ["a.jpg"] = DrawnPhoto.Of("plate")[..4000], ["b.png"] = DrawnPhoto.Of("plate; png")[..4000] };
        var (_, problems) = Reading.Of($"{Head}photos: [{{file: a.jpg, shows: label}}, {{file: b.png, shows: label}}]\n", folder);
        Assert.Equal(
            ["job.yaml:5:17: \"a.jpg\" ends before its picture does. Copy it from the camera again: a copy was broken off or changed.", "job.yaml:5:46: \"b.png\" ends before its picture does. Copy it from the camera again: a copy was broken off or changed."],
            problems);
    }

    [Fact]
    public void Of_a_photo_only_what_it_shows_is_kept()
    {
        var folder = new MemoryFolder { ["a.jpg"] = DrawnPhoto.Of("plate; taken 2026:06:18 09:00:00") };
        var (reading, problems) = Reading.Of($"{Head}photos: [{{file: a.jpg, shows: label}}, {{file: \" a.jpg \", shows: wiring}}]\n", folder);
        Assert.Empty(problems);
        Assert.Equal(["job.yaml", "a.jpg"], reading.Files.Select(f => f.Name));
        Assert.Equal((0, (long)folder["a.jpg"].Length), (reading.Files[1].Content.Length, reading.Files[1].Length));
        Assert.All(reading.Job!.Photos, p => Assert.Equal((400, 300, 9), (p.Picture!.Width, p.Picture.Height, p.Picture.Taken!.Value.Clock.Hour)));
    }

    // A pack, a kit and a log that are named as photos, too, are no pictures, whichever is named first.
    [Fact]
    public void A_log_named_as_a_photo_is_none()
    {
        var folder = new MemoryFolder().With("log.csv", "time,micron\n10:00,500\n");
        var (_, problems) = Reading.Of($"{Head}evacuation: {{started: \"09:30\", series: log.csv}}\nphotos: [{{file: log.csv, shows: label}}]\n", folder);
        Assert.Contains(problems, p => p.Contains("is text, not a picture", StringComparison.Ordinal));
    }

    // Forty photos of 60 MB: hashed on the way, never held. What a run allocates in all stays below one of them.
    [Fact]
    public void Many_large_photos_need_little_memory()
    {
        var folder = new LargePhotos(60 << 20);
        var yaml = Head + "photos:\n" + string.Concat(Enumerable.Range(0, 40).Select(i => $"- {{file: {i}.jpg, shows: other}}\n"));
        folder.Job = Encoding.UTF8.GetBytes(yaml);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var problems = new ProblemList();
        var reading = JobReader.Read(new JobSource("job.yaml", "job.yaml", folder, null), Reading.Refrigerants, problems);
        Assert.Empty(problems.Sorted());
        Assert.Equal(40, reading.Files.Count(f => f.Length == 60 << 20));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 60 << 20);
        Assert.Equal(40, folder.Closed);
    }

    private sealed class LargePhotos(int length) : IJobFolder
    {
        public byte[] Job { get; set; } = [];

        public int Closed { get; private set; }

        public FolderFile Read(string path, long mostBytes) => path == "job.yaml" ? FolderFile.Of(Job) : throw new InvalidOperationException($"{path} is read as a whole.");

        public OpenFile Open(string path, long mostBytes) => new(FolderFileState.Read, new Padded(this, DrawnPhoto.Of("x"), length), length);

        // A photo with nothing behind it, up to a length.
        private sealed class Padded(LargePhotos folder, byte[] photo, int length) : MemoryStream(photo, writable: false)
        {
            private int _rest = length - photo.Length;

            public override int Read(byte[] buffer, int offset, int count)
            {
                var read = base.Read(buffer, offset, count);
                if (read > 0)
                    return read;
                read = Math.Min(count, _rest);
                Array.Clear(buffer, offset, read);
                _rest -= read;
                return read;
            }

            protected override void Dispose(bool disposing)
            {
                folder.Closed++;
                base.Dispose(disposing);
            }
        }
    }
}
