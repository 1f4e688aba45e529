using System.Buffers.Binary;
using System.Security.Cryptography;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Measurement.Decisions;
using Commission.Records;
using Commission.Source;
using Xunit;

namespace Commission.Acceptance.Tests;

/// <summary>What the examples show together, and what each one was written to show.</summary>
public sealed class ExamplesTests
{
    private const string Kit = "nordmark-van-2.kit.yaml";

    // Checks that no example can make speak without becoming an unlikely job, and why.
    private static readonly Dictionary<string, string> Silent = new(StringComparer.Ordinal)
    {
        ["refrigerant.suction-drier"] = "a suction drier is fitted after a burnout, of which the corpus has jobs",
        ["evacuation.dwell"] = "only the pack of split air-to-water heat pumps asks how long the pump stayed on at the level",
    };

    public static TheoryData<string> Examples => ExamplesLibrary.Names;

    [Fact]
    public void Every_check_speaks_in_an_example()
    {
        var spoken = Repository.Examples.SelectMany(e => ExamplesLibrary.Findings(e)).Select(f => f.Check).ToHashSet(StringComparer.Ordinal);
        Assert.Equal(Silent.Keys.Order(StringComparer.Ordinal), CheckCatalogue.All.Select(c => c.Id).Where(id => !spoken.Contains(id)).Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_readme_says_in_a_few_lines_what_to_look_at_and_one_outcome(string example)
    {
        var lines = File.ReadAllLines(Repository.PathTo("examples", example, "README.md"));
        Assert.InRange(lines.Length, 4, 12);
        Assert.StartsWith("# ", lines[0], StringComparison.Ordinal);
        Assert.Single(lines, l => l.StartsWith("Outcome: ", StringComparison.Ordinal));
        Assert.Matches("^Outcome: (accepted|accepted with conditions|not accepted|incomplete)\\.$", lines.Single(l => l.StartsWith("Outcome: ", StringComparison.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Photos_are_small_drawn_pictures_large_enough_to_read(string example)
    {
        foreach (var photo in PhotosOf(example))
        {
            // PNG (ISO/IEC 15948): eight bytes of signature, then the header chunk with width and height as big-endian 32-bit numbers.
            var bytes = File.ReadAllBytes(photo);
            Assert.Equal([0x89, .. "PNG\r\n\u001a\n"u8], bytes[..8]);
            Assert.Equal("IHDR"u8, bytes.AsSpan(12, 4));
            Assert.InRange(BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(16)), 640u, 1600u);
            Assert.InRange(BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(20)), 480u, 1200u);
            Assert.InRange(bytes.Length, 2_000, 40_000);
        }
    }

    [Fact]
    public void Every_photo_is_another_picture_and_belongs_to_a_job()
    {
        var photos = Repository.Examples.SelectMany(PhotosOf).ToList();
        Assert.Equal(photos.Count, photos.Select(p => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(p)))).Distinct().Count());
        foreach (var example in Repository.Examples)
            Assert.Equal(ExamplesLibrary.Read(example).Job!.Photos.Select(p => Path.GetFileName(p.File.Value)).Order(StringComparer.Ordinal), PhotosOf(example).Select(p => Path.GetFileName(p)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_shortest_file_can_be_read_and_copied_line_by_line() =>
        Assert.All(File.ReadAllLines(Repository.PathTo("examples", "first-split", "job.yaml")), l => Assert.InRange(l.Length, 0, 100));

    [Fact]
    public void Two_examples_have_their_people_and_instruments_from_one_kit()
    {
        string[] users = ["wet-system", "winter-start"];
        Assert.Equal(users, Repository.Examples.Where(e => File.Exists(Repository.PathTo("examples", e, Kit))));
        Assert.Single(users.Select(e => File.ReadAllText(Repository.PathTo("examples", e, Kit))).Distinct(StringComparer.Ordinal));
        var (wet, winter) = (ExamplesLibrary.Read("wet-system").Job!, ExamplesLibrary.Read("winter-start").Job!);
        foreach (var job in new[] { wet, winter })
        {
            Assert.Equal(["gauge", "clamp", "air", "vacuum", "scale", "detector"], job.Instruments.Where(i => i.Id.At.File == Kit).Select(i => i.Id.Value));
            Assert.Equal(Kit, job.Identity.People!.Installer!.At.File);
            Assert.Equal("job.yaml", job.Instruments[0].Checks!.Zero!.Read.At.File);
        }

        // What a job writes itself wins over the kit.
        Assert.Equal((Kit, "job.yaml"), (winter.Identity.People!.Technician!.At.File, wet.Identity.People!.Technician!.At.File));
        Assert.Equal(4, winter.Instruments.Count(i => i.Id.At.File == "job.yaml"));
    }

    [Fact]
    public void A_kit_of_the_shop_folder_does_what_the_one_beside_the_job_does()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(Path.Combine(folder.Path, "photos"));
        var example = Repository.PathTo("examples", "wet-system");
        foreach (var file in Directory.EnumerateFiles(example, "*", SearchOption.AllDirectories).Where(f => Path.GetFileName(f) != Kit))
            File.Copy(file, Path.Combine(folder.Path, Path.GetRelativePath(example, file)));
        var job = Path.Combine(folder.Path, "job.yaml");
        var beside = CommandRun.Of("check", Repository.PathTo("examples", "wet-system", "job.yaml"));
        Assert.Equal((1, beside.Output), (beside.ExitCode, CommandRun.Of("check", job, "--shop", Repository.PathTo("examples", "winter-start")).Output));
        Assert.Equal(2, CommandRun.Of("check", job).ExitCode);
    }

    [Fact]
    public void Dry_heat_a_dash_of_the_table_is_no_target_though_the_formula_has_one()
    {
        var superheat = Only("dry-heat-orifice", "charge.superheat");
        Assert.Equal(Verdict.NotEvaluated, superheat.Verdict);
        Assert.Contains("gives no target at this load", superheat.Reason, StringComparison.Ordinal);

        // (3 · 63.6 − 80 − 97.0)/2 = 6.9 °F; by RA3.2 a reading within 5 °F of it would have passed.
        Assert.Contains(superheat.Trace, s => s.Symbol == "SH_formula" && s.Result == "6.9 °F");
        Assert.InRange(superheat.Measured!.Value.Si * 1.8, 6.9 - 5, 6.9 + 5);
    }

    [Fact]
    public void Dry_heat_the_atmosphere_of_sea_level_would_have_put_superheat_below_the_floor()
    {
        // 5.6 ± 1.1 °F over a floor of 5 °F.
        Assert.Equal(Verdict.PassWithinUncertainty, Only("dry-heat-orifice", "charge.superheat-floor").Verdict);
        var atSeaLevel = ExamplesLibrary.Read("dry-heat-orifice", ExamplesLibrary.Text("dry-heat-orifice").Replace("elevation: 4540 ft", "elevation: 0 ft", StringComparison.Ordinal));
        Assert.Equal(Verdict.Fail, RecordBuilder.Evaluate(ExamplesLibrary.Context(atSeaLevel)).Single(f => f.Check == "charge.superheat-floor").Verdict);
    }

    [Fact]
    public void Wrong_curve_the_bubble_curve_would_have_passed_what_the_dew_curve_fails()
    {
        var superheat = Only("wrong-curve", "charge.superheat");
        Assert.Equal(Verdict.Fail, superheat.Verdict);
        var vapor = ExamplesLibrary.Findings("wrong-curve").Single(f => f.Check == "charge.saturation" && f.Subject!.StartsWith("vapor", StringComparison.Ordinal));
        Assert.Contains("from the bubble point it would have read 7.0 K", vapor.Statement, StringComparison.Ordinal);
        Assert.InRange(7.0, superheat.Limits[0].LowerSi!.Value, superheat.Limits[0].UpperSi!.Value);
    }

    [Fact]
    public void Winter_the_return_visit_is_the_one_condition()
    {
        var record = Record("winter-start");
        var condition = Assert.Single(record.Conditions);
        Assert.StartsWith("return visit: cooling check", condition.Text, StringComparison.Ordinal);
        Assert.Equal(Verdict.Pass, Only("winter-start", "charge.by-weight").Verdict);
    }

    [Fact]
    public void Propane_is_judged_by_its_room_and_asked_for_no_vacuum()
    {
        var room = Only("propane-monobloc", "safety.flammable-charge");
        Assert.Equal(Verdict.Pass, room.Verdict);

        // IEC 60335-2-40 annex GG (from memory): 2.5 · 0.038^1.25 · 1.8 m · √28 = 0.400 kg; 4 · 0.038 = 0.152 kg without a room limit.
        Assert.Equal(0.400, room.Limits[0].UpperSi!.Value, 0.001);
        Assert.DoesNotContain(ExamplesLibrary.Findings("propane-monobloc"), f => f.Phase is Phases.Evacuation or Phases.PressureTest);
    }

    [Fact]
    public void Multi_split_is_charged_by_weight_and_does_not_miss_subcooling()
    {
        // 20 g/m × (36 − 30) m + 100 g = 220 g.
        Assert.Equal(0.220, Only("multi-split-by-weight", "charge.by-weight").Limits[0].TargetSi!.Value, 1e-9);
        Assert.DoesNotContain(ExamplesLibrary.Findings("multi-split-by-weight"), f => f.Check == "charge.subcooling" && f.Verdict == Verdict.NotEvaluated);
    }

    [Fact]
    public void Cold_room_is_judged_by_its_glass_and_two_superheats()
    {
        var receiver = ExamplesLibrary.Findings("cold-room").Where(f => f.Check == "charge.receiver").ToList();
        Assert.Contains(receiver, f => f.Subject == "sight glass" && f.Verdict == Verdict.Pass);
        Assert.Equal(2, receiver.Count(f => f.Subject!.Contains("superheat", StringComparison.Ordinal) && f.Verdict == Verdict.Pass));
        Assert.Equal(Verdict.Information, Only("cold-room", "charge.subcooling").Verdict);
    }

    [Fact]
    public void Leak_repair_shows_as_found_and_balances_its_cylinders()
    {
        Assert.Contains(ExamplesLibrary.Findings("leak-repair"), f => f.Check == "charge.as-found" && f.Statement.Contains("1.92 kg recovered", StringComparison.Ordinal));
        Assert.Equal(Verdict.Pass, Only("leak-repair", "refrigerant.recovery-level").Verdict);
        Assert.Contains(ExamplesLibrary.Findings("leak-repair"), f => f.Check == "refrigerant.leak-check" && f.Verdict == Verdict.Pass);
    }

    [Fact]
    public void Copied_readings_are_told_with_both_lines_and_leave_the_outcome_alone()
    {
        var lines = File.ReadAllLines(Repository.PathTo("examples", "copied-readings", "job.yaml"));
        var first = Array.FindIndex(lines, l => l.Contains("\"11:25\"", StringComparison.Ordinal)) + 1;
        var repeated = ExamplesLibrary.Findings("copied-readings").Single(f => f.Check == "evidence.repeated" && f.Statement.Contains("11:25", StringComparison.Ordinal));
        Assert.Contains(repeated.Readings, r => r.At.Line == first);
        Assert.Contains(repeated.Readings, r => r.At.Line == first + 1);
        Assert.Contains("11:45", repeated.Statement, StringComparison.Ordinal);
        Assert.Equal(Outcome.Accepted, Record("copied-readings").Outcome);
    }

    private static string[] PhotosOf(string example)
    {
        var folder = Repository.PathTo("examples", example, "photos");
        return Directory.Exists(folder) ? Directory.GetFiles(folder) : [];
    }

    private static Records.Findings.Finding Only(string example, string check) => Assert.Single(ExamplesLibrary.Findings(example), f => f.Check == check);

    private static CommissioningRecord Record(string example) => JobEvaluation.Evaluate(ExamplesLibrary.Read(example), new RecordChoices(), "commission", new ProblemList())!;
}
