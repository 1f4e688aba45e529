using Xunit;

namespace Commission.Jobs.Tests;

public sealed class KitTests
{
    private const string Kit = """
        kit: 1
        units: si
        people: {company: Brackwater Mechanical, company certificate: C-1182, technician: Somebody Else}
        instruments:
          - {id: low, kind: pressure gauge, serial: G-771, accuracy: 0.5 % of full scale, full scale: 35 bar(g), calibrated: 2026-02-11, checks: {cylinder: {refrigerant: R-410A, read: 13.9, temperature: 21.1}}}
          - {id: vapor clamp, kind: pipe clamp, sensor: thermocouple K class 2}

        """;

    private const string Job = """
        commission: 1
        units: us
        job: {id: T, work: opened circuit, date: 2026-06-18, site: {elevation: 100}, people: {kit: van-3.kit.yaml, technician: Mira Solend}}
        equipment: {system: split, refrigerant: R-410A}
        instruments:
          kit: van-3.kit.yaml
          today:
            vapor clamp: {ice point: {read: 33.4 °F, adjusted: 32.1 °F}}
            low: {zero: 0.2 psig}
          also:
            - {id: borrowed, kind: scale}

        """;

    [Fact]
    public void A_kit_is_typed_once_and_checked_today()
    {
        var (reading, problems) = Reading.Of(Job, new MemoryFolder().With("van-3.kit.yaml", Kit));
        Assert.Empty(problems);
        var job = reading.Job!;
        Assert.Equal(["low", "vapor clamp", "borrowed"], job.Instruments.Select(i => i.Id.Value));
        Assert.Equal("van-3.kit.yaml:5:10", job.Instruments[0].Id.At.ToString());
        Assert.Equal("33.4 °F", job.Instruments[1].Checks!.IcePoint!.Read.Text);
        Assert.Equal("job.yaml:8:37", job.Instruments[1].Checks!.IcePoint!.Read.At.ToString());
        Assert.Equal("0.2 psig", job.Instruments[0].Checks!.Zero!.Read.Text);

        // The kit's bare numbers mean what the kit says, not what the job says.
        Assert.Equal("13.9 bar(g)", job.Instruments[0].Checks!.Cylinder!.Read.Text);
        Assert.Equal("21.1 °C", job.Instruments[0].Checks!.Cylinder!.Temperature.Text);
        Assert.Equal(("Brackwater Mechanical", "Mira Solend"), (job.Identity.People!.Installer!.Value, job.Identity.People.Technician!.Value));
        Assert.Equal(["job.yaml", "van-3.kit.yaml"], reading.Files.Select(f => f.Name));
        Assert.Equal(3, reading.Input!.Children.Single(c => c.Key == "instruments").Children.Length);
    }

    [Fact]
    public void A_kit_may_lie_in_the_shop_folder()
    {
        var (reading, problems) = Reading.Of(Job, new MemoryFolder(), new MemoryFolder().With("van-3.kit.yaml", Kit));
        Assert.Empty(problems);
        Assert.Equal(3, reading.Job!.Instruments.Length);
    }

    [Theory]
    [InlineData("vapor clamp: {ice", "vapour clamp: {ice", "job.yaml:8:5: \"vapour clamp\" is not an instrument of this kit. Did you mean \"vapor clamp\"?")]
    [InlineData("read: 33.4 °F", "red: 33.4 °F", "job.yaml:8:31: \"red\" is not a key of \"ice point\". Did you mean \"read\"?")]
    [InlineData("read: 33.4 °F", "read: 33.4 psig", "job.yaml:8:37: \"33.4 psig\" is a pressure. Expected here: a temperature. Write it in °F, °C, K or °R.")]
    public void Faults_in_the_job(string find, string replace, string expected) =>
        Assert.Equal([expected], Reading.Of(Job.Replace(find, replace, StringComparison.Ordinal), new MemoryFolder().With("van-3.kit.yaml", Kit)).Problems);

    [Theory]
    [InlineData("kind: pressure gauge", "knd: pressure gauge", "van-3.kit.yaml:5:15: \"knd\" is not a key of \"instruments\". Did you mean \"kind\"?")]
    [InlineData("calibrated: 2026-02-11", "calibrated: 2026-13-11", "van-3.kit.yaml:5:118: \"2026-13-11\" is not a date of the calendar. Write year-month-day, such as 2026-06-18.")]
    [InlineData("kit: 1", "kit: 7", "van-3.kit.yaml:1:6: \"kit\" is \"7\". This program reads version 1. Write kit: 1.")]
    public void Faults_in_the_kit_are_told_in_the_kit(string find, string replace, string expected) =>
        Assert.Equal([expected], Reading.Of(Job, new MemoryFolder().With("van-3.kit.yaml", Kit.Replace(find, replace, StringComparison.Ordinal))).Problems);

    [Fact]
    public void A_kit_that_is_not_there_is_told_once() =>
        Assert.Equal(["job.yaml:3:92: There is no file \"van-3.kit.yaml\" in the job's folder. Check the name, or name the shop folder with --shop."], Reading.Of(Job).Problems);
}
