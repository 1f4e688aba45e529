using System.Text;
using Commission.Checks.Kernel;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Json;
using Xunit;

namespace Commission.Acceptance.Tests;

/// <summary>The program as a crew meets it: exit codes, files, words.</summary>
public sealed class CommandTests
{
    private static string Job(string example) => Repository.PathTo("examples", example, "job.yaml");

    [Fact]
    public void Render_writes_one_file_of_each_kind_and_says_where()
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of("render", Job("tarn-lane"), "--out", folder.Path);

        Assert.Equal("", run.Error);
        Assert.Equal(["TL-2026-061.html", "TL-2026-061.pdf", "TL-2026-061.record.json"], Directory.EnumerateFiles(folder.Path).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
        Assert.StartsWith("TL-2026-061: ", run.Output, StringComparison.Ordinal);
        Assert.Contains("TL-2026-061.pdf", run.Output, StringComparison.Ordinal);
        Assert.StartsWith("%PDF-", Encoding.ASCII.GetString(File.ReadAllBytes(Path.Combine(folder.Path, "TL-2026-061.pdf")).AsSpan(0, 5)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_pdf_of_the_long_example_stays_below_400_kB()
    {
        using var folder = new TemporaryFolder();
        CommandRun.Of("render", Job("tarn-lane"), "--out", folder.Path, "--format", "pdf");
        Assert.InRange(new FileInfo(Path.Combine(folder.Path, "TL-2026-061.pdf")).Length, 20_000, 400_000);
    }

    [Fact]
    public void The_same_job_gives_the_same_bytes_from_any_folder()
    {
        using var first = new TemporaryFolder();
        using var second = new TemporaryFolder();
        using var copy = new TemporaryFolder();
        foreach (var file in Directory.EnumerateFiles(Repository.PathTo("examples", "tarn-lane"), "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(copy.Path, Path.GetRelativePath(Repository.PathTo("examples", "tarn-lane"), file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }

        CommandRun.Of("render", Job("tarn-lane"), "--out", first.Path);
        CommandRun.Of("render", Path.Combine(copy.Path, "job.yaml"), "--out", second.Path);
        foreach (var file in Directory.EnumerateFiles(first.Path))
            Assert.Equal(File.ReadAllBytes(file), File.ReadAllBytes(Path.Combine(second.Path, Path.GetFileName(file))));
    }

    [Fact]
    public void Only_the_asked_formats_are_written()
    {
        using var folder = new TemporaryFolder();
        CommandRun.Of("render", Job("incomplete"), "--out", folder.Path, "--format", "json,html");
        Assert.Equal([".html", ".json"], Directory.EnumerateFiles(folder.Path).Select(f => Path.GetExtension(f)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_wrong_file_gives_2_its_problems_and_no_output_file()
    {
        using var folder = new TemporaryFolder();
        var job = folder.File("job.yaml", "commission: 1\njob: {id: X-1, work: new installation, date: 2026-01-05, site: {elevation: 0 m}}\nequipment: {system: split, refrigerant: R-999}\n");
        var target = Path.Combine(folder.Path, "out");
        var run = CommandRun.Of("render", job, "--out", target);

        Assert.Equal(2, run.ExitCode);
        Assert.Contains(":3:", run.Error, StringComparison.Ordinal);
        Assert.Contains("R-999", run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(target));
    }

    [Fact]
    public void A_missing_file_a_folder_and_an_unknown_option_give_2()
    {
        Assert.Equal(2, CommandRun.Of("check", Repository.PathTo("examples", "nowhere.yaml")).ExitCode);
        Assert.Equal(2, CommandRun.Of("check", Repository.PathTo("examples")).ExitCode);
        var run = CommandRun.Of("render", Job("tarn-lane"), "--ouut", "x");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("--ouut", run.Error, StringComparison.Ordinal);
        Assert.Equal(2, CommandRun.Of("render", Job("tarn-lane"), "--format", "docx").ExitCode);
    }

    [Fact]
    public void Two_jobs_of_one_id_do_not_overwrite_each_other()
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of("render", Job("incomplete"), Job("incomplete"), "--out", folder.Path);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("HB-77", run.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFiles(folder.Path));
    }

    [Fact]
    public void Of_several_jobs_the_worst_counts_and_the_rest_is_still_written()
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of("render", Job("incomplete"), Repository.PathTo("examples", "nowhere.yaml"), "--out", folder.Path);
        Assert.Equal(2, run.ExitCode);
        Assert.NotEmpty(run.Written);
        Assert.Equal(run.Written.Order(StringComparer.Ordinal), Directory.EnumerateFiles(folder.Path).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_record_says_its_outcome_and_carries_a_digest_over_itself()
    {
        using var folder = new TemporaryFolder();
        CommandRun.Of("render", Job("incomplete"), "--out", folder.Path, "--format", "json");
        var file = File.ReadAllBytes(Directory.EnumerateFiles(folder.Path).Single());
        var record = RecordJson.Read(file);
        Assert.Equal(Outcome.Incomplete, record.Outcome);
        Assert.Equal(record.Digest, Records.Integrity.RecordDigest.Compute(file));
        Assert.All(record.Inputs, input => Assert.Equal(64, input.Sha256.Length));
    }

    [Fact]
    public void As_of_decides_which_calibrations_are_current_only_through_the_job()
    {
        // Calibration is judged on the day of the job, whenever the record is made.
        var early = CommandRun.Of("check", Job("tarn-lane"));
        var late = CommandRun.Of("check", Job("tarn-lane"), "--as-of", "2030-01-01");
        Assert.Equal(early.Output, late.Output);
        Assert.Equal(2, CommandRun.Of("check", Job("tarn-lane"), "--as-of", "yesterday").ExitCode);
    }

    [Fact]
    public void Help_and_version_say_something_and_give_0()
    {
        Assert.Equal(0, CommandRun.Of("--help").ExitCode);
        Assert.Contains("render", CommandRun.Of("--help").Output, StringComparison.Ordinal);
        Assert.Equal(0, CommandRun.Of("--version").ExitCode);
    }

    [Fact]
    public void Explain_has_a_page_for_every_check()
    {
        foreach (var check in Checks.Recording.CheckCatalogue.All)
        {
            var run = CommandRun.Of("explain", check.Id);
            Assert.Equal(0, run.ExitCode);
            Assert.Contains(RecordWords.Text(check.HelpWhat(), Language.English), run.Output, StringComparison.Ordinal);
            Assert.Contains(RecordWords.Text(check.WhenItFails(), Language.English), run.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Properties_and_refrigerants_answer()
    {
        // Dew at 118.7 psig (zero removed) at 5280 ft is 44.0 °F: the independent expectation for the long example.
        var run = CommandRun.Of("properties", "R-454B", "--at", "118.7 psig, 57.1 °F", "--elevation", "5280 ft");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("dew 44.00 °F", run.Output, StringComparison.Ordinal);
        Assert.Contains("superheat 13.10 °F", run.Output, StringComparison.Ordinal);
        Assert.Equal(2, CommandRun.Of("properties", "R-454B", "--at", "118.7 psi, 57.1 °F").ExitCode);
        Assert.Contains("R-410A", CommandRun.Of("refrigerants", "R-410").Error + CommandRun.Of("refrigerants", "R410A").Output, StringComparison.Ordinal);
        Assert.Equal(2, CommandRun.Of("limits", "common-practise").ExitCode);
        Assert.Contains("common-practice", CommandRun.Of("limits", "common-practise").Error, StringComparison.Ordinal);
    }
}
