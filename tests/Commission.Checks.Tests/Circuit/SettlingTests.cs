using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Messages;
using Xunit;

namespace Commission.Checks.Tests.Circuit;

/// <summary>How long a circuit ran undisturbed, and how its compressor ran: 15 min at least (California RA3.2, published).</summary>
public sealed class SettlingTests
{
    // The later of start and last change counts; a change behind the reading spoils it.
    [Theory]
    [InlineData("compressor started: \"10:00\"", "10:15", RowStanding.Settled, 15)]
    [InlineData("compressor started: \"10:00\"", "10:14", RowStanding.TooEarly, 14)]
    [InlineData("compressor started: \"10:00\", last change: \"10:10\"", "10:30", RowStanding.Settled, 20)]
    [InlineData("compressor started: \"10:00\", last change: \"10:20\"", "10:30", RowStanding.TooEarly, 10)]
    [InlineData("compressor started: \"10:10\", last change: \"10:00\"", "10:30", RowStanding.Settled, 20)]
    [InlineData("last change: \"10:00\"", "10:30", RowStanding.Settled, 30)]
    [InlineData("compressor started: \"10:00\", last change: \"10:31\"", "10:30", RowStanding.BeforeChange, 30)]
    [InlineData("compressor started: \"10:00\", last change: \"10:30\"", "10:30", RowStanding.TooEarly, 0)]
    [InlineData("compressor started: \"10:00\", events: [{at: \"10:20\", added: 3 oz}]", "10:30", RowStanding.TooEarly, 10)]
    [InlineData("compressor started: \"10:00\", events: [{at: \"10:20\", removed: 3 oz}]", "10:30", RowStanding.TooEarly, 10)]
    [InlineData("compressor started: \"10:00\", events: [{at: \"10:20\", note: looked}]", "10:30", RowStanding.Settled, 30)]
    [InlineData("compressor started: \"10:00\", events: [{at: \"10:40\", removed: 3 oz}]", "10:30", RowStanding.BeforeChange, 30)]
    [InlineData("compressor started: \"10:40\"", "10:30", RowStanding.NotKnown, null)]
    [InlineData("running: full", "10:30", RowStanding.NotKnown, null)]
    [InlineData("compressor started: \"10:00\"", "15 min", RowStanding.Settled, 15)]
    [InlineData("compressor started: \"10:00\"", "14 min", RowStanding.TooEarly, 14)]
    internal void The_time_since_start_and_change(string charging, string at, RowStanding standing, int? minutes)
    {
        var settling = Row($"{charging}, readings: [{{at: \"{at}\", vapor pressure: 118 psig}}]").Settling;
        Assert.Equal(standing, settling.Standing);
        Assert.Equal(minutes is { } m ? 60.0 * m : null, settling.Since?.Si);
        Assert.Equal(standing is RowStanding.TooEarly or RowStanding.BeforeChange, settling.Block is not null);
        Assert.Equal(settling.Block is not null, settling.Todo is not null);
        Assert.Equal(standing == RowStanding.NotKnown, settling.Reservation is not null);
        Assert.Equal(standing == RowStanding.Settled, settling.Words is null);
    }

    [Theory]
    [InlineData("compressor started: \"10:00\", last change: \"10:10\"", true)]
    [InlineData("compressor started: \"10:10\", last change: \"10:00\"", false)]
    [InlineData("last change: \"10:10\", compressor started: \"10:10\"", false)]
    public void What_the_time_counts_from_is_told(string charging, bool sinceChange) =>
        Assert.Equal(sinceChange, Row($"{charging}, readings: [{{at: \"10:20\", vapor pressure: 118 psig}}]").Settling.SinceChange);

    [Fact]
    public void Every_time_it_rests_on_is_named()
    {
        var yaml = Job("compressor started: \"10:00\", last change: \"10:05\", events: [{at: \"10:02\", added: 3 oz}, {at: \"10:03\", removed: 2 oz}, {at: \"10:04\", note: looked}], readings: [{at: \"10:30\", vapor pressure: 118 psig}]");
        var context = JobText.Context(yaml);
        var finding = context.Finding(CheckCatalogue.Find("charge.superheat")!);
        context.Get<ChargeAnalysis>().Rows[0].Settling.NameIn(finding);
        Assert.Equal(["10:30", "10:00", "10:05", "10:02", "10:03"], finding.Information("It ran.".Plain()).Readings.Select(r => r.Text));
    }

    [Fact]
    public void Heating_has_a_time_of_its_own()
    {
        var cooling = Row("compressor started: \"10:00\", readings: [{at: \"10:30\", vapor pressure: 118 psig}]").Settling.Least;
        var heating = Row("compressor started: \"10:00\", readings: [{at: \"10:30\", mode: heating, vapor pressure: 318 psig}]").Settling.Least;
        Assert.NotEqual(cooling!.Definition.Id, heating!.Definition.Id);
    }

    // A variable-speed compressor shows its charge in the maker's charging mode alone; any other at full load or in its high stage.
    [Theory]
    [InlineData("fixed", "full", false, false)]
    [InlineData("fixed", "unknown", false, false)]
    [InlineData("fixed", "part", true, false)]
    [InlineData("two-stage", "full", false, false)]
    [InlineData("two-stage", "high stage", false, false)]
    [InlineData("two-stage", "unknown", false, true)]
    [InlineData("two-stage", "part", true, false)]
    [InlineData("digital", "full", false, false)]
    [InlineData("digital", "unknown", false, true)]
    [InlineData("variable speed", "charging mode", false, false)]
    [InlineData("variable speed", "full", true, false)]
    [InlineData("variable speed", "high stage", true, false)]
    [InlineData("variable speed", "part", true, false)]
    [InlineData("variable speed", "unknown", true, false)]
    [InlineData("", "full", false, false)]
    [InlineData("", "unknown", false, true)]
    [InlineData("", "charging mode", false, false)]
    public void How_the_compressor_ran(string compressor, string running, bool blocks, bool reserves)
    {
        var yaml = Job($"compressor started: \"10:00\", running: {running}, speed: 60 Hz, readings: [{{at: \"10:30\", vapor pressure: 118 psig}}]", compressor.Length == 0 ? "" : $", compressor: {compressor}");
        var context = JobText.Context(yaml);
        var gate = RunningCondition.Of(context, context.Get<ChargeAnalysis>().Rows[0]);
        Assert.Equal((blocks, blocks, reserves), (gate.Block is not null, gate.Todo is not null, gate.Reservation is not null));
        var finding = context.Finding(CheckCatalogue.Find("charge.superheat")!);
        gate.NameIn(finding);
        Assert.Equal(compressor.Length == 0 ? ["running", "speed"] : ["compressor", "running", "speed"], JobLines.Keys(yaml, finding.Information("It ran.".Plain())));
    }

    [Fact]
    public void A_variable_speed_compressor_is_told_how_it_ran()
    {
        static Message? Why(string running)
        {
            var context = JobText.Context(Job($"compressor started: \"10:00\", running: {running}, readings: [{{at: \"10:30\", vapor pressure: 118 psig}}]", ", compressor: variable speed"));
            return RunningCondition.Of(context, context.Get<ChargeAnalysis>().Rows[0]).Block;
        }

        Assert.Equal(3, new[] { "full", "high stage", "part" }.Select(Why).Distinct().Count());
    }

    // Orifices are printed in whole thousandths of an inch: half of one is none.
    [Theory]
    [InlineData("{kind: fixed orifice, size: 0.059 in, plate size: 0.059 in}", "", true, null)]
    [InlineData("{kind: fixed orifice, size: 0.0594 in, plate size: 0.059 in}", "", true, null)]
    [InlineData("{kind: fixed orifice, size: 0.0596 in, plate size: 0.059 in}", "", false, "orifice")]
    [InlineData("{kind: fixed orifice, size: 0.057 in, plate size: 0.059 in}", "", false, "orifice")]
    [InlineData("{kind: fixed orifice, size: 0.059 in}", "", null, null)]
    [InlineData("{kind: fixed orifice, plate size: 0.059 in}", "", null, null)]
    [InlineData("fixed orifice", ", matched: yes", null, null)]
    [InlineData("fixed orifice", ", matched: no", null, "pair")]
    [InlineData("{kind: fixed orifice, size: 0.057 in, plate size: 0.059 in}", ", matched: no", false, "orifice")]
    public void Orifice_and_units_belong_together(string metering, string matched, bool? fits, string? reserved)
    {
        var yaml = Job("compressor started: \"10:00\"", $", metering: {metering}{matched}");
        var context = JobText.Context(yaml);
        var match = EquipmentMatch.Of(context);
        Assert.Equal(fits, match.Fits);
        Assert.Equal(fits is not null || matched.Length > 0, match.IsShown);
        Assert.Equal((fits == false, fits == false), (match.Mismatch is not null, match.Todo is not null));
        Assert.Null(match.Block);
        Assert.True(reserved is null ? match.Reservation is null : match.Reservation.Said().Contains(reserved, StringComparison.Ordinal), match.Reservation.Said());
        var finding = context.Finding(CheckCatalogue.Find("charge.superheat")!);
        match.NameIn(finding);
        string[] keys = [.. new[] { "size", "plate size", "matched" }.Where(k => $"{metering}{matched}".Contains(k == "size" ? " size: 0.05" : k, StringComparison.Ordinal) && (k != "size" || metering.Contains(", size", StringComparison.Ordinal)))];
        Assert.Equal(keys, JobLines.Keys(yaml, finding.Information("It fits.".Plain())));
    }

    private static ChargeRow Row(string charging) => JobText.Context(Job(charging)).Get<ChargeAnalysis>().Rows[0];

    private static string Job(string charging, string equipment = "") => JobLines.Of($"charging: {{{charging}}}", "seasonal check", "heat pump", equipment: equipment);
}
