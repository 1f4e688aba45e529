using Xunit;

namespace Commission.Checks.Tests.Recording;

/// <summary>Who issues a record, when, for whom, and what it replaces (what ISO/IEC 17025:2017, 7.8.2 asks a report to identify, from memory).</summary>
public sealed class HeaderTests
{
    [Fact]
    public void The_issuer_is_the_company_with_address_and_certificate()
    {
        var header = JobLines.Record(JobLines.Of(job: ", people: {installer: Hallam Cooling, address: 3 Dock Road, company certificate: C-1182, technician: Mira Solend}")).Header;
        Assert.Equal(("Hallam Cooling", "3 Dock Road", "C-1182", ""), (header.Issuer.Name, header.Issuer.Address, header.Issuer.Certificate, header.Issuer.Logo));
    }

    [Fact]
    public void Where_no_company_is_named_the_technician_issues_it() =>
        Assert.Equal("Mira Solend", JobLines.Record(JobLines.Of(job: ", people: {technician: Mira Solend}")).Header.Issuer.Name);

    [Fact]
    public void Customer_contact_and_who_answers_stand_among_the_people()
    {
        var record = JobLines.Record(JobLines.Of(job: ", people: {installer: Hallam Cooling, customer: Ostby Housing, contact: desk@ostby.example, approved by: T. Marwen}"));
        var people = record.Header.Groups.Single(g => g.Title == "People").Rows.Select(r => (r.Label, r.Value));
        Assert.Equal([("Installer", "Hallam Cooling"), ("Authorised by", "T. Marwen"), ("Customer", "Ostby Housing"), ("Contact", "desk@ostby.example")], people);
        Assert.Contains(record.Certificate.Parties, p => p is { Label: "Customer", Value: "Ostby Housing" });
    }

    [Fact]
    public void A_corrected_record_says_what_it_replaces_and_why()
    {
        var revision = JobLines.Record(JobLines.Of(job: ", revision: {number: 2, replaces: 3f9a11c0b2d4, reason: two digits swapped}")).Header.Revision;
        Assert.Equal((2, "3f9a11c0b2d4", "two digits swapped"), (revision!.Number, revision.Replaces, revision.Reason));
        Assert.Null(JobLines.Record(JobLines.Of()).Header.Revision);
    }

    [Fact]
    public void The_day_of_issue_is_that_of_the_work_where_none_is_stated()
    {
        var record = JobLines.Record(JobLines.Of());
        Assert.Equal(record.AsOf[..10], record.Header.Issued);
        Assert.Equal("2026-06-18", record.Header.Issued);
        // What a record tells was done before it was issued: a leak check two days later, a signature the day after that.
        Assert.Equal("2026-06-20", JobLines.Record(JobLines.Of("leak check: {date: 2026-06-20, method: bubble solution, result: none}")).Header.Issued);
        Assert.Equal("2026-06-21", JobLines.Record(JobLines.Of("signatures: [{name: Mira Solend, role: technician, date: 2026-06-21}]")).Header.Issued);
    }

    // A technician who did the work stands for it, whether or not the file names who signs.
    [Fact]
    public void A_technician_among_the_people_counts_as_named() =>
        Assert.Contains("Mira Solend, technician", JobLines.Finding(JobLines.Of(job: ", people: {technician: Mira Solend}"), "evidence.signature").Statement, StringComparison.Ordinal);
}
