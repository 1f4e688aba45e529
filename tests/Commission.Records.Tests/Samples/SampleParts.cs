using System.Collections.Immutable;

namespace Commission.Records.Tests.Samples;

/// <summary>The invented parts of the sample record that are neither findings nor figures.</summary>
internal static class SampleParts
{
    public static Diagnosis Diagnosis() => new()
    {
        At = "11:35",
        Sentence = "Subcooling is on its target & superheat is what this valve holds: nothing speaks against the charge.",
        NextStep = "Read static pressure again with a clean filter.",
        Advice = "none",
        Ranked = [new RankedCause("all well", 0.91, null), new RankedCause("low airflow", 0.06, "static pressure")],
        Readings = [new WeighedReading("subcooling", "10.5 ± 1.4 °F", "9 ± 3 °F (unit plate)", "as expected")],
    };

    public static JobHeader Header() => new()
    {
        Id = "TEST-2026-061",
        Work = "new installation",
        Date = "2026-06-18",
        Site = "Test flats, unit 14 & stairs <north>",
        System = "Split system, R-454B, TXV, 3 ton",
        Notes = "Access through the yard; key with the caretaker. Line set runs behind the new wall.",
        Groups =
        [
            new HeaderGroup("Site",
            [
                new LabelValue("Name", "Test flats, unit 14 & stairs <north>", SampleRecord.At(9)),
                new LabelValue("Address", "14 Invented Lane, Nowhere", SampleRecord.At(9)),
                new LabelValue("Elevation", "5280 ft", SampleRecord.At(9)),
                new LabelValue("Air pressure", "83.4 ± 2.0 kPa from elevation"),
            ]),
            new HeaderGroup("People",
            [
                new LabelValue("Installer", "Test Fitters Ltd", SampleRecord.At(10)),
                new LabelValue("Technician", "Test Technician", SampleRecord.At(10)),
                new LabelValue("Certificate", "T-00001", SampleRecord.At(10)),
                new LabelValue("Witness", "Test Witness", SampleRecord.At(10)),
            ]),
            new HeaderGroup("Equipment",
            [
                new LabelValue("System", "split, fixed-speed compressor, TXV", SampleRecord.At(12)),
                new LabelValue("Outdoor", "Nomaker OC-36, serial X36-000001", SampleRecord.At(14)),
                new LabelValue("Indoor", "Nomaker IC-36, serial Y36-000002", SampleRecord.At(15)),
                new LabelValue("Refrigerant", "R-454B (A2L), GWP 466 (AR4)", SampleRecord.At(16)),
                new LabelValue("Capacity", "3 ton", SampleRecord.At(18)),
            ]),
            new HeaderGroup("Nameplate and piping",
            [
                new LabelValue("Factory charge", "6 lb 8 oz", SampleRecord.At(20)),
                new LabelValue("Design pressure", "450 psig low, 550 psig high", SampleRecord.At(21)),
                new LabelValue("Supply", "208 to 230 V, 1 phase, MCA 22.0 A, MOP 35 A", SampleRecord.At(22)),
                new LabelValue("Lines", "liquid 3/8 in, vapor 3/4 in, 42 ft, rise 9 ft", SampleRecord.At(30)),
            ]),
        ],
    };

    public static ImmutableArray<Caution> Cautions() =>
    [
        new("pressure", "A circuit under test holds energy like a spring. Raise nitrogen slowly through a regulator with a relief valve, stand clear, and never use oxygen or compressed air."),
        new("flammability", "R-454B burns (class A2L). Ventilate, keep ignition sources away and use machines rated for it."),
        new("electricity", "Prove dead before covers are opened; capacitors hold charge."),
        new("asphyxiation", "Refrigerant and nitrogen displace air in low and closed rooms."),
        new("frostbite", "Liquid refrigerant freezes skin and eyes: gloves and goggles."),
        new("local law", "Local codes and licensed practice come before anything this record says."),
    ];

    public static ImmutableArray<RecordTable> Tables() =>
    [
        new RecordTable
        {
            Id = "joints",
            Phase = "pressure-test",
            Title = "Joints",
            Columns = [new("Place"), new("Kind"), new("Method"), new("Detector"), new("Result")],
            Rows =
            [
                ["outdoor service valves", "flare", "bubble solution", "", "none"],
                ["indoor coil stubs", "brazed", "electronic with tracer", "detector (5 g/yr)", "none"],
            ],
        },
        new RecordTable
        {
            Id = "readings",
            Phase = "charge",
            Title = "Readings",
            Note = "The last row is judged; earlier rows are drawn.",
            Columns =
            [
                new("Time"),
                new("Vapor pressure", "psig", ColumnAlign.Decimal), new("Liquid pressure", "psig", ColumnAlign.Decimal),
                new("Vapor line", "°F", ColumnAlign.Decimal), new("Liquid line", "°F", ColumnAlign.Decimal),
                new("Outdoor", "°F", ColumnAlign.Decimal), new("Return dry bulb", "°F", ColumnAlign.Decimal),
                new("Return wet bulb", "°F", ColumnAlign.Decimal), new("Supply", "°F", ColumnAlign.Decimal),
                new("Superheat", "°F", ColumnAlign.Decimal), new("Subcooling", "°F", ColumnAlign.Decimal),
            ],
            Rows =
            [
                ["11:05", "121.4", "338.0", "61.0", "97.9", "91.2", "76.8", "64.0", "58.1", "15.6 ± 1.5", "9.1 ± 1.4"],
                ["11:20", "119.8", "341.5", "57.9", "97.4", "91.5", "76.2", "63.4", "56.9", "13.2 ± 1.5", "10.2 ± 1.4"],
                ["11:35", "118.9", "340.8", "57.2", "97.0", "91.7", "76.0", "63.2", "56.6", "12.9 ± 1.5", "10.5 ± 1.4"],
            ],
        },
        new RecordTable
        {
            Id = "ledger",
            Phase = "refrigerant",
            Title = "Refrigerant ledger",
            Columns = [new("Cylinder"), new("Before", "lb", ColumnAlign.Decimal), new("After", "lb", ColumnAlign.Decimal), new("Into the circuit", "oz", ColumnAlign.Decimal), new("Remark")],
            Rows = [["C-118", "24.86", "23.84", "16.3", "liquid; hoses 0.3 oz"], ["recovered", "", "", "0", "nothing recovered"]],
        },
    ];

    public static ImmutableArray<InstrumentRow> Instruments() =>
    [
        Instrument("low", "pressure gauge", "G-1", "0.5 % of full scale", "0.1 psi", ["vapor pressure", "pressure test"], ["Zero read 0.2 psig."], ["0.2 psi taken off every reading."], ["superheat: good", "pressure test: good"]),
        Instrument("high", "pressure gauge", "G-2", "0.5 % of full scale", "0.1 psi", ["liquid pressure"], ["Zero read −0.3 psig.", "At 300.0 ± 0.6 psig it read 301.1 psig."], ["−0.3 psi zero and 0.47 % gain."], ["subcooling: usable in the field"]),
        Instrument("vapor clamp", "pipe clamp, type K class 2", "", "class 2", "0.1 °F", ["vapor line"], ["Ice point read 33.4 °F, adjusted to 32.1 °F at 07:40."], ["0.1 °F residual taken off."], ["superheat: usable in the field"]),
        Instrument("liquid clamp", "pipe clamp, type K class 2", "", "class 2", "0.1 °F", ["liquid line"], ["Ice point read 31.2 °F, adjusted to 32.0 °F at 07:44."], ["none"], ["subcooling: usable in the field"]),
        Instrument("air probe", "psychrometer", "P-3", "0.9 °F", "0.1 °F", ["outdoor air", "return air", "supply air"], [], [], ["temperature split: usable in the field"]),
        Instrument("vacuum", "vacuum gauge, thermal", "V-4", "10 % of reading", "1 micron", ["evacuation"], ["Blanked rig 80 micron, rise 20 micron in 5 min."], [], ["level at isolation: good"]),
        Instrument("scale", "scale", "S-5", "0.5 oz", "0.1 oz", ["charge"], ["A check weight of 10 lb read 10.01 lb."], [], ["charge by weight: usable in the field"]),
        Instrument("meter", "clamp meter", "M-6", "1.5 % of reading", "0.1 A", ["electrical"], [], [], ["compressor current: good"]),
    ];

    public static ImmutableArray<SourceNote> Sources() =>
    [
        new("equation of state", "R-32", "240 to 435 K, to 70 MPa", "A. Author and B. Author (1997): invented title for a test. Test Journal 1, 1–10.", "published"),
        new("equation of state", "R-1234yf", "220 to 410 K, to 30 MPa", "C. Author (2011): invented title for a test. Test Journal 2, 11–20.", "published"),
        new("constant", "Molar gas constant", "8.314462618 J/(mol·K)", "CODATA 2018.", "published"),
        new("standard", "Expression of uncertainty", "coverage by Student's t at 95.45 %", "JCGM 100:2008.", "published"),
    ];

    private static InstrumentRow Instrument(
        string id, string kind, string serial, string accuracy, string resolution, ImmutableArray<string> reads,
        ImmutableArray<string> checks, ImmutableArray<string> corrections, ImmutableArray<string> judges) => new()
        {
            Id = id,
            Kind = kind,
            Serial = serial,
            Accuracy = accuracy,
            Resolution = resolution,
            Calibrated = "2026-02-11, every 12 months",
            Reads = reads,
            FieldChecks = checks,
            Corrections = corrections,
            Judges = judges,
        };
}
