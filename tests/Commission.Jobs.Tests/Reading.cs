using System.Text;
using Commission.Source;

namespace Commission.Jobs.Tests;

/// <summary>Reads job files in memory; refrigerants are a handful that the tests name.</summary>
internal static class Reading
{
    public static readonly IReadOnlyDictionary<string, string> Refrigerants =
        new[] { "R-22", "R-32", "R-134a", "R-290", "R-404A", "R-407C", "R-410A", "R-438A", "R-454A", "R-454B", "R-454C", "R-744" }.ToDictionary(name => name, name => name, StringComparer.Ordinal);

    public static (JobReading Reading, string[] Problems) Of(string yaml, MemoryFolder? folder = null, MemoryFolder? shop = null) =>
        Of(Encoding.UTF8.GetBytes(yaml), folder, shop);

    public static (JobReading Reading, string[] Problems) Of(byte[] yaml, MemoryFolder? folder = null, MemoryFolder? shop = null)
    {
        folder ??= new MemoryFolder();
        folder["job.yaml"] = yaml;
        var problems = new ProblemList();
        var reading = JobReader.Read(new JobSource("job.yaml", "job.yaml", folder, shop), Refrigerants, problems);
        return (reading, [.. problems.Sorted().Select(p => p.ToString())]);
    }

    public static string Data(string name)
    {
        using var stream = typeof(Reading).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    public static MemoryFolder TarnLaneFolder() => new MemoryFolder
    {
        ["photos/outdoor-plate.jpg"] = Plate,
        ["photos/gauge-isolated.jpg"] = Gauge,
    }.With("evacuation.csv", Data("evacuation.csv"));

    // Drawn once and small: many tests read the same job.
    private static byte[] Plate { get; } = DrawnPhoto.Of("outdoor plate; size 64x48");

    private static byte[] Gauge { get; } = DrawnPhoto.Of("gauge at isolation; size 64x48");
}
