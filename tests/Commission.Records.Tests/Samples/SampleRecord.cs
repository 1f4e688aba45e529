using System.Collections.Immutable;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Commission.Records.Integrity;
using Commission.Source;

namespace Commission.Records.Tests.Samples;

/// <summary>
/// A rich record for tests of files and pages. Every person, maker, site and number in it is invented; nothing in it was
/// measured or computed, and the numbers need not agree with each other.
/// </summary>
internal static class SampleRecord
{
    public static CommissioningRecord Full { get; } = RecordDigest.Seal(Build()).Record;

    /// <summary>A record with nothing but what every record has.</summary>
    public static CommissioningRecord Bare { get; } = new()
    {
        Header = new JobHeader { Id = "TEST-0", Work = "seasonal check", Date = "2026-01-02", Site = "Test site" },
        Outcome = Outcome.Incomplete,
        Reasons = ["No reading was given."],
        Program = "Commission 0.0.0-test",
        AsOf = "2026-01-02T12:00:00Z",
    };

    public static SourceLocation At(int line, int column = 7) => new("job.yaml", line, column);

    private static CommissioningRecord Build()
    {
        var findings = SampleFindings.All();
        return new CommissioningRecord
        {
            Header = SampleParts.Header(),
            Certificate = new()
            {
                Sentence = "Accepted with conditions: return in warm weather, and one more.",
                Rows =
                [
                    new KeyRow("Vacuum at isolation", "287 ± 33 micron", "at most 500 micron", Verdict.Pass, "pass", 20),
                    new KeyRow("Airflow, split", "", "", null, "not this visit", null),
                ],
                Failed = [new FailedCheck("Vacuum hold", "1141 ± 26 micron", "at most 1000 micron after 10 min", 21)],
                Figures = [.. SampleFigures.All().Select(f => f.Id).Take(2)],
                Units = [new LabelValue("Outdoor unit", "Test OC-36 serial 1"), new LabelValue("Indoor unit", "Test IC-36 serial 2")],
                Parties = [new LabelValue("Site", "4 Test Lane"), new LabelValue("Installer", "Test Cooling")],
                NearLimit = [27],
                Owner = ["Split, R-454B; worked on 2026-06-18.", "Keep this record."],
                Danger = "Flammable refrigerant (safety group A2L): only people trained and licensed for it may open this circuit.",
            },
            LimitSources = [new LimitSource("M1", "maker", "plate", "job"), new LimitSource("C1", "common practice", "practice", "from memory")],
            AsWritten = [new LabelValue("Evacuation", "pump (maker Test; model P-6)")],
            Outcome = Outcome.AcceptedWithConditions,
            Reasons =
            [
                "Airflow was not shown, so the charge verdicts are conditional (findings 27, 29 and 31).",
                "The leak sensor of the indoor unit was not tested (finding 49).",
            ],
            Missing =
            [
                new MissingPart(["safety.leak-sensor"], "Leak sensor test: nothing is written. Required because the unit has one (test pack).", "Leak sensor test: nothing is written.") { Names = ["Leak sensor"], NextStep = "Run the maker's test.", Keys = ["safety.leak sensor"] },
                new MissingPart(["photos"], "Photos missing: label. Required because the house rule asks for it (test pack).", "Photos missing: label.") { Names = ["photos"] },
            ],
            FirstStep = new PunchItem("Run the maker's test.", 49),
            KeyFigures = [27, 29],
            Diagnosis = SampleParts.Diagnosis(),
            Conditions =
            [
                new PunchItem("Return in warm weather (outdoor air 65 to 105 °F) and take one set of cooling readings with the panels on.", 27, "Test Fitters Ltd"),
                new PunchItem("Run the maker's leak sensor test and write down the time until the fan starts.", 49, "Test Fitters Ltd"),
            ],
            Cautions = SampleParts.Cautions(),
            Findings = findings,
            Phrases = [.. SampleMessages.Phrases],
            Tables = SampleParts.Tables(),
            Figures = SampleFigures.All(),
            Instruments = SampleParts.Instruments(),
            LimitsInForce = [.. findings.SelectMany(finding => finding.Limits.Select(limit => limit with { Check = finding.Check, Quantity = finding.Title }))],
            Sources = SampleParts.Sources(),
            Photos =
            [
                new PhotoNote("photos/plate-outdoor.jpg", "outdoor nameplate", "2026-06-18 07:31", new string('a', 64)),
                new PhotoNote("photos/gauge-isolation.jpg", "gauge at isolation", "2026-06-18 10:36", new string('b', 64)),
            ],
            Signatures =
            [
                new SignatureLine("Test Technician", "technician", "I performed this work.", "T-00001", "2026-06-18"),
                new SignatureLine("Test Witness", "witness", "I witnessed the pressure test and the evacuation.", "", "2026-06-18"),
                new SignatureLine("", "owner", "I received this record.", "", ""),
            ],
            Inputs =
            [
                new InputFile("job.yaml", 6120, new string('1', 64)),
                new InputFile("evacuation.csv", 48_213, new string('2', 64)),
                new InputFile("van-3.kit.yaml", 1988, new string('3', 64)),
            ],
            Job =
            [
                new InputNode("commission", "1", At(1, 1), []),
                new InputNode("job", null, At(3, 1),
                [
                    new InputNode("id", "TEST-2026-061", At(4, 3), []),
                    new InputNode("work", "new installation", At(5, 3), []),
                ]),
            ],
            Program = "Commission 0.0.0-test",
            AsOf = "2026-06-18T12:05:00-06:00",
            Paper = "letter",
            Units = "us",
        };
    }
}
