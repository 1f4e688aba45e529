using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Source;

namespace Commission.Checks.Tests.Limits;

/// <summary>A small invented job: a split of Aldermoor at Tarn Lane.</summary>
internal static class JobBuilder
{
    public static readonly SourceLocation Nowhere = new("job.yaml", 7, 3);

    public static Job Split() => new()
    {
        Commission = Given(1, "1"),
        Identity = new JobIdentity
        {
            Id = Given("TL-1", "TL-1"),
            Work = Given(WorkKind.NewInstallation, "new installation"),
            Date = Given(new DateOnly(2026, 6, 18), "2026-06-18"),
            Site = new Site { Name = Given("Tarn Lane flats", "Tarn Lane flats") },
        },
        Equipment = new Equipment
        {
            System = Given(SystemKind.Split, "split"),
            Refrigerant = Given("R-454B", "R-454B"),
            Metering = new Metering { Kind = Given(MeteringKind.TXV, "TXV") },
            Compressor = new Compressor { Kind = Given(CompressorKind.Fixed, "fixed") },
            Capacity = Given(Power.FromTonsOfRefrigeration(3), "3 ton"),
        },
    };

    public static Given<T> Given<T>(T value, string text) => new(value, Nowhere, text) { Number = Number(value, text) };

    private static WrittenNumber? Number<T>(T value, string text)
    {
        Dimension? dimension = value switch
        {
            Pressure => Dimension.VacuumLevel,
            StatedPressure => Dimension.Pressure,
            PressureDifference => Dimension.PressureDifference,
            Temperature => Dimension.Temperature,
            TemperatureDifference => Dimension.TemperatureDifference,
            Duration => Dimension.Duration,
            Length => Dimension.Length,
            Mass => Dimension.Mass,
            Power => Dimension.Power,
            Ratio or double => Dimension.Ratio,
            _ => null,
        };
        return dimension is { } of && QuantityParser.Parse(text, of, UnitTable.Find("1", Dimension.Ratio)).Value is { } parsed ? new WrittenNumber(parsed.Si, parsed.Unit, parsed.Decimals) : null;
    }

    public static Given<TemperatureDifference> Degrees(double value, string text) => Given(TemperatureDifference.FromFahrenheitDegrees(value), text);

    public static QuantityLimit<T, TTolerance> Limit<T, TTolerance>(Given<T>? target = null, Given<TTolerance>? tolerance = null, Given<T>? minimum = null, Given<T>? maximum = null, string from = "unit plate") =>
        new() { Target = target, Tolerance = tolerance, Minimum = minimum, Maximum = maximum, From = Given(from, from), Origin = Nowhere };
}
