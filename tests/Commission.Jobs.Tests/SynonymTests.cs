using Commission.Jobs.Model;
using Xunit;

namespace Commission.Jobs.Tests;

/// <summary>Words of the trade as crews write them (common usage of technicians, no source), and what they mean in a job file.</summary>
public sealed class SynonymTests
{
    private const string Equipment = "equipment: {system: split, refrigerant: R-410A}\n";

    [Theory]
    [InlineData("minisplit", "ductless split")]
    [InlineData("mini-split", "ductless split")]
    [InlineData("mini split", "ductless split")]
    [InlineData("ductless", "ductless split")]
    [InlineData("ductless mini-split", "ductless split")]
    [InlineData("multi-zone", "multi-split")]
    [InlineData("multisplit", "multi-split")]
    [InlineData("RTU", "packaged")]
    [InlineData("rooftop unit", "packaged")]
    [InlineData("monobloc", "packaged")]
    [InlineData("walk-in", "refrigeration")]
    [InlineData("reach-in", "refrigeration")]
    public void A_system(string word, string meant) =>
        Means($"equipment: {{system: {word}, refrigerant: R-410A}}\n", job => job.Equipment.System.Text, meant);

    [Theory]
    [InlineData("inverter", "variable speed")]
    [InlineData("inverter scroll", "variable speed")]
    [InlineData("scroll", "fixed")]
    [InlineData("single speed", "fixed")]
    [InlineData("rotary", "fixed")]
    [InlineData("two stage", "two-stage")]
    [InlineData("digital scroll", "digital")]
    public void A_compressor(string word, string meant) =>
        Means($"equipment: {{system: split, refrigerant: R-410A, compressor: {word}}}\n", job => job.Equipment.Compressor!.Kind.Text, meant);

    [Theory]
    [InlineData("piston", "fixed orifice")]
    [InlineData("orifice", "fixed orifice")]
    [InlineData("cap tube", "capillary")]
    [InlineData("TEV", "TXV")]
    [InlineData("thermostatic expansion valve", "TXV")]
    [InlineData("EXV", "EEV")]
    public void A_metering_device(string word, string meant) =>
        Means($"equipment: {{system: split, refrigerant: R-410A, metering device: {word}}}\n", job => job.Equipment.Metering!.Kind.Text, meant);

    [Theory]
    [InlineData("weigh in", "weight")]
    [InlineData("weigh-in", "weight")]
    [InlineData("weighed in", "weight")]
    [InlineData("subcool", "subcooling")]
    [InlineData("total superheat", "superheat")]
    [InlineData("charging chart", "maker's chart")]
    public void A_way_to_charge(string word, string meant) =>
        Means($"{Equipment}charging: {{method: {word}}}\n", job => job.Charging!.Method!.Text, meant);

    [Theory]
    [InlineData("nameplates")]
    [InlineData("data plate")]
    [InlineData("rating plate")]
    public void A_nameplate(string key) =>
        Means($"equipment: {{system: split, refrigerant: R-410A, {key}: {{charge: 6 lb 8 oz}}}}\n", job => job.Equipment.Nameplate!.FactoryCharge!.Text, "6 lb 8 oz");

    [Theory]
    [InlineData("RLA: 16.7 A", "16.7 A")]
    [InlineData("compressor RLA: 16.7 A", "16.7 A")]
    public void A_rated_current(string written, string meant) =>
        Means($"equipment: {{system: split, refrigerant: R-410A, nameplate: {{{written}}}}}\n", job => job.Equipment.Nameplate!.CompressorRLA!.Text, meant);

    [Theory]
    [InlineData("MOCP")]
    [InlineData("max fuse")]
    public void A_largest_fuse(string key) =>
        Means($"equipment: {{system: split, refrigerant: R-410A, nameplate: {{{key}: 35 A}}}}\n", job => job.Equipment.Nameplate!.MOP!.Text, "35 A");

    [Theory]
    [InlineData("gas line")]
    [InlineData("suction line")]
    [InlineData("vapor line")]
    [InlineData("gas")]
    public void A_vapor_line(string key) =>
        Means($"equipment: {{system: split, refrigerant: R-410A, line set: {{liquid line: {{od: 3/8 in, length: 5 m}}, {key}: {{od: 3/4 in, length: 5 m}}}}}}\n", job => job.Equipment.Piping[0].Vapor!.Od.Text, "3/4 in");

    [Theory]
    [InlineData("outdoor unit")]
    [InlineData("condenser")]
    [InlineData("condensing unit")]
    public void An_outdoor_unit(string key) =>
        Means($"equipment: {{system: split, refrigerant: R-410A, {key}: {{model: OC-36}}}}\n", job => job.Equipment.Outdoor!.Model!.Value, "OC-36");

    [Theory]
    [InlineData("air handler")]
    [InlineData("indoor unit")]
    public void An_indoor_unit(string key) =>
        Means($"equipment: {{system: split, refrigerant: R-410A, {key}: {{model: AH-36}}}}\n", job => job.Equipment.Indoor[0].Model!.Value, "AH-36");

    [Theory]
    [InlineData("head pressure")]
    [InlineData("high side pressure")]
    [InlineData("high side")]
    public void A_liquid_pressure(string key) => Means(Row($"{key}: 418 psig"), job => job.Charging!.Readings[0].LiquidPressure!.Text, "418 psig");

    [Theory]
    [InlineData("suction pressure")]
    [InlineData("low side pressure")]
    [InlineData("low side")]
    public void A_vapor_pressure(string key) => Means(Row($"{key}: 118 psig"), job => job.Charging!.Readings[0].VaporPressure!.Text, "118 psig");

    [Theory]
    [InlineData("suction temperature")]
    [InlineData("suction line temperature")]
    [InlineData("gas line")]
    public void A_vapor_line_temperature(string key) => Means(Row($"{key}: 52 °F"), job => job.Charging!.Readings[0].VaporLine!.Text, "52 °F");

    [Theory]
    [InlineData("outdoor temperature", "95 °F")]
    [InlineData("ambient", "95 °F")]
    public void An_outdoor_temperature(string key, string meant) => Means(Row($"{key}: {meant}"), job => job.Charging!.Readings[0].OutdoorDryBulb!.Text, meant);

    [Theory]
    [InlineData("micron gauge", "vacuum gauge")]
    [InlineData("manifold", "pressure gauge")]
    [InlineData("refrigerant scale", "scale")]
    [InlineData("sniffer", "leak detector")]
    public void An_instrument(string word, string meant) =>
        Means($"{Equipment}instruments: [{{id: a, kind: {word}}}]\n", job => job.Instruments[0].Kind.Text, meant);

    [Fact]
    public void A_weigh_in_is_what_the_scale_showed() =>
        Means($"{Equipment}charging: {{weigh in: {{before: 24.86 lb, after: 20.11 lb}}}}\n", job => job.Charging!.Scale[0].Before.Text, "24.86 lb");

    // What is nearly a word of the trade is asked back.
    [Theory]
    [InlineData("equipment: {system: minisplt, refrigerant: R-410A}\n", "Did you mean \"minisplit\"?")]
    [InlineData("equipment: {system: split, refrigerant: R-410A, compressor: invertor}\n", "Did you mean \"inverter\"?")]
    [InlineData("equipment: {system: split, refrigerant: R-410A, metering: pistn}\n", "Did you mean \"piston\"?")]
    [InlineData("equipment: {system: split, refrigerant: R-410A, dataplate: {charge: 6 lb}}\n", "Did you mean \"data plate\"?")]
    [InlineData(Equipment + "charging: {readings: [{at: \"11:00\", head presure: 418 psig}]}\n", "Did you mean \"head pressure\"?")]
    [InlineData(Equipment + "charging: {method: weight in}\n", "Did you mean \"weigh in\"?")]
    [InlineData(Equipment + "charging: {readings: [{at: \"11:00\", suction: 118 psig}]}\n", "Did you mean \"true suction pressure\" or \"compressor suction line\"?")]
    public void A_near_miss_is_asked_back(string yaml, string question)
    {
        var (_, problems) = Reading.Of(Head + yaml);
        Assert.Contains(question, Assert.Single(problems), StringComparison.Ordinal);
    }

    private const string Head = "commission: 1\njob: {id: T, work: opened circuit, date: 2026-06-18, site: {elevation: 100 m}}\n";

    private static string Row(string reading) => $"{Equipment}charging: {{readings: [{{at: \"11:00\", {reading}}}]}}\n";

    private static void Means(string yaml, Func<Job, string> value, string meant)
    {
        var (reading, problems) = Reading.Of(Head + yaml);
        Assert.Equal("", string.Join('\n', problems));
        Assert.Equal(meant, value(reading.Job!));
    }
}
