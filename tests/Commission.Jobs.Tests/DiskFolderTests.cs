using Commission.Jobs.Files;
using Xunit;

namespace Commission.Jobs.Tests;

public sealed class DiskFolderTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("commission-").FullName;

    public DiskFolderTests()
    {
        Directory.CreateDirectory(Path.Combine(_root, "job", "photos"));
        File.WriteAllText(Path.Combine(_root, "job", "photos", "a.jpg"), "inside");
        File.WriteAllText(Path.Combine(_root, "secret.txt"), "outside");
    }

    public void Dispose() => Directory.Delete(_root, recursive: true);

    [Fact]
    public void A_file_of_the_folder_is_read()
    {
        var file = new DiskFolder(Path.Combine(_root, "job")).Read("photos/a.jpg", 100);
        Assert.Equal(FolderFileState.Read, file.State);
        Assert.Equal("inside"u8.ToArray(), file.Bytes);
    }

    [Fact]
    public void Missing_and_long_files_are_not_read()
    {
        var folder = new DiskFolder(Path.Combine(_root, "job"));
        Assert.Equal(FolderFileState.Missing, folder.Read("photos/b.jpg", 100).State);
        Assert.Equal(FolderFileState.Missing, folder.Read("photos", 100).State);
        Assert.Equal((FolderFileState.TooLong, 6L), (folder.Read("photos/a.jpg", 5).State, folder.Read("photos/a.jpg", 5).Length));
    }

    [Fact]
    public void Steps_and_links_out_of_the_folder_are_refused()
    {
        var folder = new DiskFolder(Path.Combine(_root, "job"));
        Assert.Equal(FolderFileState.Outside, folder.Read("../secret.txt", 100).State);
        File.CreateSymbolicLink(Path.Combine(_root, "job", "link.txt"), Path.Combine(_root, "secret.txt"));
        File.CreateSymbolicLink(Path.Combine(_root, "job", "relative.txt"), Path.Combine("..", "secret.txt"));
        Directory.CreateSymbolicLink(Path.Combine(_root, "job", "up"), _root);
        Assert.Equal(FolderFileState.Outside, folder.Read("link.txt", 100).State);
        Assert.Equal(FolderFileState.Outside, folder.Read("relative.txt", 100).State);
        Assert.Equal(FolderFileState.Outside, folder.Read("up/secret.txt", 100).State);
    }

    [Fact]
    public void Links_that_stay_inside_are_followed_and_circles_end()
    {
        var folder = new DiskFolder(Path.Combine(_root, "job"));
        File.CreateSymbolicLink(Path.Combine(_root, "job", "plate.jpg"), Path.Combine("photos", "a.jpg"));
        File.CreateSymbolicLink(Path.Combine(_root, "job", "round.jpg"), "round.jpg");
        Assert.Equal(FolderFileState.Read, folder.Read("plate.jpg", 100).State);
        Assert.Equal(FolderFileState.Missing, folder.Read("round.jpg", 100).State);
    }

    [Fact]
    public void The_folder_itself_may_be_a_link()
    {
        Directory.CreateSymbolicLink(Path.Combine(_root, "today"), Path.Combine(_root, "job"));
        Assert.Equal(FolderFileState.Read, new DiskFolder(Path.Combine(_root, "today")).Read("photos/a.jpg", 100).State);
    }

    [Fact]
    public void A_job_on_disk_reads_its_files_beside_it()
    {
        File.WriteAllBytes(Path.Combine(_root, "job", "photos", "a.jpg"), DrawnPhoto.Of("plate"));
        File.WriteAllText(Path.Combine(_root, "job", "job.yaml"),
            "commission: 1\njob: {id: T, work: seasonal check, date: 2026-06-18, site: {elevation: 100 m}}\nequipment: {system: split, refrigerant: R-410A}\nphotos: [{file: photos/a.jpg, shows: label}]\n");
        var problems = new Source.ProblemList();
        var path = Path.Combine(_root, "job", "job.yaml");
        var reading = JobReader.Read(JobSource.OnDisk(path, null), Reading.Refrigerants, problems);
        Assert.Empty(problems.Sorted());
        Assert.Equal(["job.yaml", "photos/a.jpg"], reading.Files.Select(f => f.Name));
        Assert.Equal(path + ":2:6", reading.Job!.Identity.Origin.ToString());
    }
}
