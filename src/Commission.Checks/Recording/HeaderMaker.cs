using System.Collections.Immutable;
using System.Globalization;
using Commission.Jobs.Model;
using Commission.Records;

namespace Commission.Checks.Recording;

/// <summary>Makes the head of the record: which job, where, by whom, on what.</summary>
internal static class HeaderMaker
{
    public static JobHeader Make(Job job)
    {
        var identity = job.Identity;
        var equipment = job.Equipment;
        return new JobHeader
        {
            Id = identity.Id.Value,
            Work = identity.Work.Text,
            Date = identity.Date.Value.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            Site = identity.Site.Name?.Value ?? identity.Site.Address?.Value ?? "not named",
            System = string.Join(", ", new[] { Capital(equipment.System.Text), equipment.Refrigerant.Value, equipment.Capacity?.Text, equipment.Circuit is { } c ? "circuit " + c.Value : null }.OfType<string>()),
            Notes = identity.Notes?.Value ?? "",
            Groups = [.. Groups(job).Where(g => g.Rows.Length > 0)],
        };
    }

    private static IEnumerable<HeaderGroup> Groups(Job job)
    {
        var site = job.Identity.Site;
        yield return Group("Site", ("Name", site.Name?.Value), ("Address", site.Address?.Value), ("Elevation", site.Elevation?.Text), ("Station pressure", site.StationPressure?.Text), ("Time zone", job.Identity.Zone?.Value));
        if (job.Identity.People is { } people)
        {
            yield return Group(
                "People",
                ("Installer", people.Installer?.Value),
                ("Company certificate", people.CompanyCertificate?.Value),
                ("Technician", people.Technician?.Value),
                ("Person certificate", people.PersonCertificate?.Value),
                ("Category", people.Category?.Value),
                ("Owner", people.Owner?.Value),
                ("Witness", people.Witness?.Value));
        }

        var equipment = job.Equipment;
        if (equipment.Outdoor is { } outdoor)
            yield return Group("Outdoor unit", ("Maker", outdoor.Maker?.Value), ("Model", outdoor.Model?.Value), ("Serial", outdoor.Serial?.Value));
        foreach (var indoor in equipment.Indoor)
        {
            var title = indoor.Id is { } id ? $"Indoor unit {id.Value}" : "Indoor unit";
            yield return Group(title, ("Maker", indoor.Maker?.Value), ("Model", indoor.Model?.Value), ("Serial", indoor.Serial?.Value), ("Capacity", indoor.Capacity?.Text), ("Room", indoor.Room?.Value));
        }

        yield return Group(
            "Circuit",
            ("Refrigerant", equipment.Refrigerant.Value),
            ("Compressor", equipment.Compressor?.Kind.Text),
            ("Metering", Joined(equipment.Metering?.Kind.Text, equipment.Metering?.Size?.Text)),
            ("Capacity", equipment.Capacity?.Text),
            ("Lines", Lines(equipment)),
            ("Covered by factory charge", Sole(equipment.Piping.Select(p => p.CoveredByFactoryCharge?.Text))));
        if (equipment.Nameplate is { } plate)
        {
            yield return Group(
                "Nameplate",
                ("Factory charge", plate.FactoryCharge?.Text),
                ("Design pressure low", plate.DesignPressure?.Low?.Text),
                ("Design pressure high", plate.DesignPressure?.High?.Text),
                ("Voltage", plate.Voltage?.Text),
                ("Phases", plate.Phases?.Text),
                ("Compressor RLA", plate.CompressorRLA?.Text),
                ("MCA", plate.MCA?.Text),
                ("MOP", plate.MOP?.Text),
                ("Fan FLA", plate.FanFLA?.Text),
                ("Run capacitor", plate.RunCapacitor?.Text),
                ("Max static", plate.MaxStatic?.Text));
        }
    }

    private static HeaderGroup Group(string title, params (string Label, string? Value)[] rows) =>
        new(title, [.. rows.Where(r => !string.IsNullOrEmpty(r.Value)).Select(r => new LabelValue(r.Label, r.Value!))]);

    private static string? Lines(Equipment equipment)
    {
        var runs = equipment.Piping.Select(run => string.Join(", ", new[] { Line("liquid", run.Liquid), Line("vapor", run.Vapor) }.OfType<string>())).Where(t => t.Length > 0).ToImmutableArray();
        return runs.Length switch
        {
            0 => null,
            1 => runs[0],
            _ => string.Create(CultureInfo.InvariantCulture, $"{runs.Length} runs"),
        };
    }

    private static string? Line(string name, Tube? tube) => tube is null ? null : $"{name} {tube.Od.Text} × {tube.Length.Text}";

    private static string? Joined(string? first, string? second) => first is null ? null : second is null ? first : $"{first}, {second}";

    private static string? Sole(IEnumerable<string?> texts) => texts.OfType<string>().Distinct(StringComparer.Ordinal).ToArray() is [var only] ? only : null;

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
