using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Jobs.Model;
using Commission.Messages;
using Commission.Records;

namespace Commission.Checks.Recording;

/// <summary>Makes the head of the record: which job, where, by whom, on what.</summary>
/// <param name="context">The job and everything derived from it.</param>
internal sealed class HeaderMaker(CheckContext context)
{
    private const string IsoDay = "yyyy-MM-dd";

    /// <summary>The head of the record.</summary>
    /// <param name="asOf">The moment the record speaks for, ISO 8601; its day is that of the issue.</param>
    public JobHeader Make(string asOf)
    {
        var job = context.Job;
        var identity = job.Identity;
        var equipment = job.Equipment;
        return new JobHeader
        {
            Id = identity.Id.Value,
            Work = identity.Work.Text,
            Date = identity.Date.Value.ToString(IsoDay, CultureInfo.InvariantCulture),
            Issued = asOf[..IsoDay.Length],
            Issuer = new IssuerNote(
                identity.People?.Installer?.Value ?? identity.People?.Technician?.Value ?? "",
                identity.People?.Address?.Value ?? "",
                identity.People?.CompanyCertificate?.Value ?? "",
                identity.People?.Logo?.Value ?? ""),
            Revision = identity.Revision is { } revision ? new RevisionNote((int)revision.Number.Value, revision.Replaces.Value, revision.Reason.Value) : null,
            Site = identity.Site.Name?.Value ?? identity.Site.Address?.Value ?? Text(RecordMessages.SiteNotNamed),
            System = string.Join(", ", new[] { Capital(equipment.System.Text), equipment.Refrigerant.Value, equipment.Capacity?.Text, equipment.Circuit is { } c ? Text(RecordMessages.CircuitNamed(new(c.Value))) : null }.OfType<string>()),
            Notes = identity.Notes?.Value ?? "",
            Groups = [.. Groups().Where(g => g.Rows.Length > 0)],
        };
    }

    private IEnumerable<HeaderGroup> Groups()
    {
        var job = context.Job;
        var site = job.Identity.Site;
        yield return Group(RecordMessages.GroupSite, (RecordMessages.LabelName, site.Name?.Value), (RecordMessages.LabelAddress, site.Address?.Value), (RecordMessages.LabelElevation, site.Elevation?.Text), (RecordMessages.LabelStationPressure, site.StationPressure?.Text), (RecordMessages.LabelTimeZone, job.Identity.Zone?.Value));
        if (job.Identity.People is { } people)
        {
            yield return Group(
                RecordMessages.GroupPeople,
                (RecordMessages.LabelInstaller, people.Installer?.Value),
                (RecordMessages.LabelAddress, people.Address?.Value),
                (RecordMessages.LabelCompanyCertificate, people.CompanyCertificate?.Value),
                (RecordMessages.LabelTechnician, people.Technician?.Value),
                (RecordMessages.LabelPersonCertificate, people.PersonCertificate?.Value),
                (RecordMessages.LabelCategory, people.Category?.Value),
                (RecordMessages.LabelAuthorisedBy, people.ApprovedBy?.Value),
                (RecordMessages.LabelCustomer, people.Customer?.Value),
                (RecordMessages.LabelContact, people.Contact?.Value),
                (RecordMessages.LabelOwner, people.Owner?.Value),
                (RecordMessages.LabelWitness, people.Witness?.Value));
        }

        var equipment = job.Equipment;
        if (equipment.Outdoor is { } outdoor)
            yield return Group(RecordMessages.GroupOutdoorUnit, (RecordMessages.LabelMaker, outdoor.Maker?.Value), (RecordMessages.LabelModel, outdoor.Model?.Value), (RecordMessages.LabelSerial, outdoor.Serial?.Value));
        foreach (var indoor in equipment.Indoor)
        {
            var title = indoor.Id is { } id ? RecordMessages.GroupIndoorUnitNamed(new(id.Value)) : RecordMessages.GroupIndoorUnit;
            yield return Group(title, (RecordMessages.LabelMaker, indoor.Maker?.Value), (RecordMessages.LabelModel, indoor.Model?.Value), (RecordMessages.LabelSerial, indoor.Serial?.Value), (RecordMessages.LabelCapacity, indoor.Capacity?.Text), (RecordMessages.LabelRoom, indoor.Room?.Value));
        }

        yield return Group(
            RecordMessages.GroupCircuit,
            (RecordMessages.LabelRefrigerant, equipment.Refrigerant.Value),
            (RecordMessages.LabelCompressor, Parts(equipment.Compressor?.Kind.Text, equipment.Compressor?.Maker?.Value, equipment.Compressor?.Model?.Value, equipment.Compressor?.Serial?.Value)),
            (RecordMessages.LabelMetering, Joined(equipment.Metering?.Kind.Text, equipment.Metering?.Size?.Text)),
            (RecordMessages.LabelCapacity, equipment.Capacity?.Text),
            (RecordMessages.LabelLines, Lines(equipment)),
            (RecordMessages.LabelCoveredByFactoryCharge, Sole(equipment.Piping.Select(p => p.CoveredByFactoryCharge?.Text))));
        if (equipment.Nameplate is { } plate)
        {
            yield return Group(
                RecordMessages.GroupNameplate,
                (RecordMessages.LabelFactoryCharge, plate.FactoryCharge?.Text),
                (RecordMessages.LabelDesignPressureLow, plate.DesignPressure?.Low?.Text),
                (RecordMessages.LabelDesignPressureHigh, plate.DesignPressure?.High?.Text),
                (RecordMessages.LabelVoltage, plate.Voltage?.Text),
                (RecordMessages.LabelPhases, plate.Phases?.Text),
                (RecordMessages.LabelCompressorRla, plate.CompressorRLA?.Text),
                (RecordMessages.LabelMca, plate.MCA?.Text),
                (RecordMessages.LabelMop, plate.MOP?.Text),
                (RecordMessages.LabelFanFla, plate.FanFLA?.Text),
                (RecordMessages.LabelRunCapacitor, plate.RunCapacitor?.Text),
                (RecordMessages.LabelMaxStatic, plate.MaxStatic?.Text));
        }
    }

    private HeaderGroup Group(Message title, params (Message Label, string? Value)[] rows) =>
        new(Text(title), [.. rows.Where(r => !string.IsNullOrEmpty(r.Value)).Select(r => new LabelValue(Text(r.Label), r.Value!))]);

    private string Text(Message message) => context.Present.Text(message);

    private string? Lines(Equipment equipment)
    {
        var runs = equipment.Piping.Select(run => string.Join(", ", new[] { run.Liquid is { } liquid ? Text(RecordMessages.LineLiquid(new(liquid.Od.Text), new(liquid.Length.Text))) : null, run.Vapor is { } vapor ? Text(RecordMessages.LineVapor(new(vapor.Od.Text), new(vapor.Length.Text))) : null }.OfType<string>())).Where(t => t.Length > 0).ToImmutableArray();
        return runs.Length switch
        {
            0 => null,
            1 => runs[0],
            _ => Text(RecordMessages.Runs(runs.Length)),
        };
    }

    private static string? Parts(params string?[] parts) => parts.Any(p => p is not null) ? string.Join(", ", parts.OfType<string>()) : null;

    private static string? Joined(string? first, string? second) => first is null ? null : second is null ? first : $"{first}, {second}";

    private static string? Sole(IEnumerable<string?> texts) => texts.OfType<string>().Distinct(StringComparer.Ordinal).ToArray() is [var only] ? only : null;

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
