using Commission.Cli.Running;
using Xunit;

namespace Commission.Cli.Tests.Running;

public sealed class AtomicFileTests
{
    [Fact]
    public void A_file_is_replaced_whole_and_nothing_is_left_beside_it()
    {
        var folder = Directory.CreateTempSubdirectory("commission-").FullName;
        try
        {
            var path = Path.Combine(folder, "record.json");
            AtomicFile.Write(path, "first, and longer"u8);
            AtomicFile.Write(path, "second"u8);
            Assert.Equal("second"u8.ToArray(), File.ReadAllBytes(path));
            Assert.Equal([path], Directory.EnumerateFiles(folder));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Where_nothing_can_be_written_nothing_is_left()
    {
        var path = Path.Combine(Path.GetTempPath(), "commission-" + Guid.NewGuid().ToString("N"), "record.json");
        Assert.Throws<DirectoryNotFoundException>(() => AtomicFile.Write(path, "x"u8));
        Assert.False(Path.Exists(Path.GetDirectoryName(path)));
    }
}
