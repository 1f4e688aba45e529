using System.Security.Cryptography;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Xunit;

namespace Commission.Jobs.Tests;

/// <summary>The two example files read whole, and their values are those on the page. Factors: NIST SP 811 (pound 0.45359237 kg, inch 25.4 mm, psi 6894.757 Pa, micron = 1e-3 mmHg 133.322387415 Pa), from memory.</summary>
public sealed class ExampleTests
{
    private const double Psi = 0.45359237 * 9.80665 / (0.0254 * 0.0254);
    private const double Pound = 0.45359237;

    private static readonly Lazy<JobReading> TarnLane = new(() =>
    {
        var (reading, problems) = Reading.Of(Reading.Data("tarn-lane.yaml"), Reading.TarnLaneFolder());
        Assert.Empty(problems);
        return reading;
    });

    [Fact]
    public void The_first_example_reads()
    {
        var (reading, problems) = Reading.Of(Reading.Data("first-split.yaml"));
        Assert.Empty(problems);
        var job = reading.Job!;
        Assert.Equal(2, job.Charging!.Readings.Length);
        Assert.True(job.Evacuation!.Levels[0].Isolated!.Value);
        Assert.Equal(320e-3 * 133.322387415, job.Evacuation.Levels[0].Pressure.Value.Si, 9);
        Assert.Equal(35, job.Equipment.Nameplate!.MOP!.Value.Si);
        Assert.Equal("35 A", job.Equipment.Nameplate.MOP.Text);
    }

    [Fact]
    public void Quantities_are_in_si_and_know_their_place_and_canonical_text()
    {
        var job = TarnLane.Value.Job!;
        var reading = job.Charging!.Readings[1];
        Assert.Equal(118.9 * Psi, reading.VaporPressure!.Value.Pascals, 6);
        Assert.Equal(PressureReference.Gauge, reading.VaporPressure.Value.Reference);
        Assert.Equal("118.9 psig", reading.VaporPressure.Text);
        Assert.Equal("job.yaml:81:37", reading.VaporPressure.At.ToString());
        Assert.Equal(0.1 * Psi, reading.VaporPressure.Step!.Value, 9);
        Assert.Equal((57.2 + 459.67) / 1.8, reading.VaporLine!.Value.Si, 9);
        Assert.Equal(0.1 / 1.8, reading.VaporLine.Step!.Value, 9);
        Assert.Equal(3.0 * 12_000 * 1055.05585262 / 3600, job.Equipment.Capacity!.Value.Si, 6);
        Assert.Equal(6.5 * Pound, job.Equipment.Nameplate!.FactoryCharge!.Value.Si, 12);
        Assert.Equal("6 lb 8 oz", job.Equipment.Nameplate.FactoryCharge.Text);
        Assert.Equal((208.0, 230.0), (job.Equipment.Nameplate.Voltage!.Value.Low.Si, job.Equipment.Nameplate.Voltage.Value.High.Si));
        Assert.Equal(9.525e-3, job.Equipment.Piping[0].Liquid!.Od.Value.Si, 12);
        Assert.Equal(42 * 0.3048, job.Equipment.Piping[0].Vapor!.Length.Value.Si, 12);
        Assert.Equal(0.60 * Pound / 16 / 0.3048, job.Charging.LineAdjustment!.Figure.Value.Si, 12);
        Assert.Equal(10 / 1.8 * 0.9, job.Limits!.Subcooling!.Target!.Value.Si, 12);
        Assert.Equal("R-454B", job.Equipment.Refrigerant.Value);
        Assert.Equal(44.1e-6, job.Electrical!.RunCapacitor[0].Read!.Value.Si, 15);
        Assert.Equal("460 ft²", job.Safety!.Room[0].Area.Text);
        Assert.Equal(2, job.Safety.Room[0].DuctedAreas.Length);
        Assert.Equal(0.21 * 249.08891, -job.Air!.Static!.Return!.Value.Si, 3);
    }

    [Fact]
    public void A_stated_uncertainty_stays_with_its_value()
    {
        var applied = TarnLane.Value.Job!.Instruments.Single(i => i.Id.Value == "high").Checks!.KnownPressure!.Applied;
        Assert.Equal(300 * Psi, applied.Value.Si, 6);
        Assert.Equal(0.6 * Psi, applied.Stated!.HalfWidthSi, 9);
        Assert.Equal(2, applied.Stated.CoverageFactor);
    }

    [Fact]
    public void Instruments_say_what_was_read_on_them_and_how_good_they_are()
    {
        var job = TarnLane.Value.Job!;
        Assert.Equal(9, job.Instruments.Length);
        var low = job.Instruments[0];
        Assert.Equal([ReadingName.VaporPressure, ReadingName.PressureTest], low.Reads.Select(r => r.Value));
        Assert.True(low.Accuracy!.Value.NeedsFullScale);
        Assert.Equal(500 * Psi, low.FullScale!.Value.Si, 6);
        Assert.Equal(Dimension.PressureDifference, low.Resolution[0].Step.Value.Dimension);
        Assert.Equal(new DateOnly(2027, 2, 11), low.Interval!.Value.After(low.Calibrated!.Value));
        var clamp = job.Instruments.Single(i => i.Id.Value == "vapor clamp");
        Assert.Equal(SensorKind.ThermocoupleKClass2, clamp.Sensor!.Value);
        Assert.Equal((32.1 + 459.67) / 1.8, clamp.Checks!.IcePoint!.Adjusted!.Value.Si, 9);
    }

    [Fact]
    public void Times_have_the_zone_of_the_job_and_count_from_the_start_of_their_phase()
    {
        var job = TarnLane.Value.Job!;

        // Mountain daylight time is six hours behind UTC.
        Assert.Equal(new DateTimeOffset(2026, 6, 18, 9, 25, 0, TimeSpan.FromHours(-6)), job.Evacuation!.Started!.Value.Clock);
        Assert.Equal(new DateTimeOffset(2026, 6, 18, 10, 36, 0, TimeSpan.FromHours(-6)), job.Evacuation.Events[1].At.Value.Clock);
        Assert.Equal(71 * 60, job.Evacuation.Events[1].At.Value.Elapsed!.Value.Si);
        Assert.Equal(35 * 60, job.Charging!.Readings[1].At.Value.Elapsed!.Value.Si);
        Assert.Equal(7, job.Instruments[2].Checks!.IcePoint!.At!.Value.Clock!.Value.Hour);
    }

    [Fact]
    public void The_log_is_read_with_its_readings_above_range()
    {
        var series = TarnLane.Value.Job!.Evacuation!.Series!.Data!;
        Assert.Equal(559, series.Times.Length);
        Assert.Equal("micron", series.Unit);
        Assert.Equal(10, series.Times[1]);
        Assert.True(series.OverRange[0]);
        Assert.True(double.IsNaN(series.Values[0]));
        Assert.Equal(345e-3 * 133.322387415, series.Values[426], 9);
        Assert.Equal(428, series.Rows[426]);
        Assert.Equal(TarnLane.Value.Job.Evacuation.Started!.Value.Clock, series.Start);
    }

    [Fact]
    public void The_record_gets_a_tree_with_canonical_texts_and_every_file_with_its_digest()
    {
        var reading = TarnLane.Value;
        var charging = reading.Input!.Children.Single(c => c.Key == "charging");
        var readings = charging.Children.Single(c => c.Key == "readings");
        Assert.True(readings.IsList);
        Assert.Equal("118.9 psig", readings.Children[1].Children.Single(c => c.Key == "vapor pressure").Text);
        Assert.Equal("11:35", readings.Children[1].Children[0].Text);
        Assert.Equal(["job.yaml", "evacuation.csv", "photos/outdoor-plate.jpg", "photos/gauge-isolated.jpg"], reading.Files.Select(f => f.Name));
        Assert.Equal([JobFileRole.Job, JobFileRole.Log, JobFileRole.Photo, JobFileRole.Photo], reading.Files.Select(f => f.Role));

        // The hash by the framework's own function (FIPS 180-4), the bytes of a photo forgotten.
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(DrawnPhoto.Of("gauge at isolation; size 64x48"))), reading.Files[3].Sha256);
        Assert.Equal((DrawnPhoto.Of("gauge at isolation; size 64x48").Length, 0), (reading.Files[3].Length, reading.Files[3].Content.Length));
    }

    [Fact]
    public void Every_value_can_be_followed_to_its_place()
    {
        var text = Reading.Data("tarn-lane.yaml").Split('\n');
        void Look(JobInput input)
        {
            if (input.Text is not null)
            {
                var line = text[input.At.Line - 1][(input.At.Column - 1)..];
                Assert.True(line.TrimStart('"').Length > 0);
                Assert.Equal(char.ToLowerInvariant(input.Text[0]), line.TrimStart('"')[0] is var first and not '-' ? char.ToLowerInvariant(first) : '−');
            }

            foreach (var child in input.Children)
                Look(child);
        }

        Look(TarnLane.Value.Input!);
    }
}
