using System.Text;
using Xunit;

namespace Commission.Jobs.Tests;

/// <summary>One change to a good file, and the literal text, place and number of the problems a person gets.</summary>
public sealed class BadInputTests
{
    private static readonly string Plain = Reading.Data("plain.yaml");

    public static TheoryData<string, string, string> Words => new()
    {
        // Quantities.
        { "119.8,", "119.8 psi,", "27:37: \"119.8 psi\" does not say gauge or absolute. Write 119.8 psig (what a service gauge shows) or psia." },
        { "vapor pressure: 119.8", "vapor pressure: 119.8 psgi", "27:43: \"psgi\" is not a unit known here. Expected here: a pressure. Did you mean 119.8 psig?" },
        { "vapor pressure: 119.8", "vapor pressure: 119.8 °F", "27:37: \"119.8 °F\" is a temperature. Expected here: a pressure. Write it in psig, psia, kPag, kPaa, bar(g) or bar(a)." },
        { "vapor line: 57.9", "vapor line: 57.9 psi", "27:80: \"57.9 psi\" is a pressure difference. Expected here: a temperature. Write it in °F, °C, K or °R." },
        { "24.86 lb", "twenty lb", "24:19: \"twenty lb\" has its number in words. Write the number in digits, such as 11 lb 4 oz." },
        { "before: 24.86 lb", "before: heavy", "24:19: \"heavy\" does not begin with a number. Expected here: a mass. Write it like 11 lb 4 oz." },
        { "before: 24.86 lb", "before: \"24,86 lb\"", "24:20: \"24,86\" has a comma in the number. Write 24.86, with a point for the decimals." },
        { "before: 24.86 lb", "before: 24,86 lb", "24:19: \"24,86 lb\" has a decimal comma, and in braces a comma ends the value. Write before: 24.86 lb with a point." },
        { "resolution: 0.1 psi", "resolution: 0.1 °F", "15:49: \"0.1 °F\" is a temperature. Expected here: a pressure difference. Write it in psi, kPa, bar, Pa, mbar or hPa." },
        { "resolution: 0.1 psi", "resolution: tenth", "15:49: \"tenth\" does not begin with a number. Expected here: a pressure difference. Write it like 2.5 psi." },
        { "340 micron", "29.5 inHg vac", "20:31: \"29.5 inHg vac\" is a depth below the atmosphere, and a compound gauge cannot show dryness. Expected here: a vacuum level. Write what a vacuum gauge reads, in micron, Torr, Pa or mbar." },
        { "340 micron", "800000 micron", "20:31: 800000 micron is above the atmosphere. A vacuum level is absolute pressure below it. Check the number and the unit." },

        // Keys.
        { "vapor line: 57.9", "vapour lin: 57.9", "27:68: \"vapour lin\" is not a key of \"readings\". Did you mean \"vapor line\"?" },
        { "  id: T-1", "  id: T-1\n  elevation: 5280 ft", "5:3: \"elevation\" is not a key of \"job\". \"elevation\" belongs under \"job: site\"." },
        { "  id: T-1", "  id: T-1\n  banana: 5", "5:3: \"banana\" is not a key of \"job\". Keys here are id, work, date, zone, site, people, revision, paper, language or notes." },
        { "  id: T-1", "  id: T-1\n  id: T-2", "5:3: \"id\" is written twice; the first is in line 4. Keep one of them." },
        { "  id: T-1\n", "", "3:1: \"job\" does not say \"id\". The job's number or name; the record's files are named after it. Write it like id: TL-2026-061." },
        { "  work: new", "  wrk: new", "5:3: \"wrk\" is not a key of \"job\". Did you mean \"work\"?" },
        { "equipment:\n  system: split\n  compressor: fixed\n  refrigerant: R-454B\n  metering: TXV\n", "", "1:1: The file does not say \"equipment\". What the work was done on. Write it like equipment: {system: split, refrigerant: R-454B}." },
        { "vapor pressure: 119.8,", "vapor pressure: 119.8, suction pressure: 119.8,", "27:44: \"suction pressure\" and \"vapor pressure\" in line 27 are two names for one thing. Keep one of them." },
        { "name: Test", "<<: *x, name: Test", "8:14: *x refers to nothing: no &x comes before it. Put the value in quotes if it is meant to begin with *." },
        { "name: Test,", "name: Test, unit 14,", "8:22: \"unit 14\" stands alone: the comma before it ended \"Test\". If it belongs to the value, write name: \"Test, unit 14\"." },

        // Shapes and words.
        { "  site: {name: Test, elevation: 5280 ft}", "  site: Test Road", "8:9: \"site\" is \"Test Road\". Keys are expected: name, address, elevation or station pressure. Write it like site: {name: \"Tarn Lane flats, unit 14\", address: \"14 Tarn Lane, Ostby\"}." },
        { "compressor: fixed", "compressor: [fixed]", "11:15: \"compressor\" is a list. One word is expected: fixed, two-stage, variable speed, digital or tandem. Write it like compressor: fixed." },
        { "before: 24.86 lb", "before: {a: 1}", "24:19: \"before\" holds keys. A number with its unit is expected. Write it like before: 24.86 lb." },
        { "new installation", "new instalation", "5:9: \"new instalation\" is not known for \"work\". The words are new installation, opened circuit, leak repair, compressor replacement, refrigerant change, charge adjustment, seasonal check or decommissioning. Did you mean \"new installation\"?" },
        { "compressor: fixed", "compressor: quantum", "11:15: \"quantum\" is not known for \"compressor\". The words are fixed, two-stage, variable speed, digital or tandem." },
        { "[vapor line]", "[vapor lin]", "16:65: \"vapor lin\" is not known for \"reads\". Did you mean \"vapor line\"?" },
        { "insulated: yes", "insulated: maybe", "16:52: \"insulated\" is \"maybe\". Write yes or no." },
        { "  date: 2026-06-18", "  date:", "6:3: \"date\" has no value. A date is expected. Write it, such as date: 2026-06-18, or delete the line." },
        { "[vapor line]", "[]", "16:64: \"reads\" is an empty list. Write its items, or delete the line." },
        { "name: Test", "name: true", "8:16: \"true\" is read as yes or no. Text is expected. Put it in quotes if it is text." },
        { "commission: 1", "commission: 2", "1:13: \"commission\" is \"2\". This program reads version 1. Write commission: 1." },
        { "commission: 1", "commission: 1e308", "1:13: \"commission\" is \"1e308\". This program reads version 1. Write commission: 1." },
        { "units: us", "units: uss", "2:8: \"uss\" is not known for \"units\". The words are us or si. Did you mean \"us\"?" },
        { "   - {at: \"11:20\",", "   - {", "27:7: \"readings\" does not say \"at\". When. Write it like at: \"11:20\"." },
        { "  compressor: fixed", "    compressor: fixed", "11:15: This line is indented further than its neighbors. Keys of one block begin in the same column. Correct the indentation." },
        { "name: Test", "name: \"a\\eb\"", "8:16: \"name\" holds a character that cannot be printed (U+001B). Delete it, or the backslash that makes it." },

        // Dates, times, zones.
        { "2026-06-18", "18.06.2026", "6:9: \"18.06.2026\" is not a date. Write year-month-day, such as 2026-06-18." },
        { "2026-06-18", "2026-02-30", "6:9: \"2026-02-30\" is not a date of the calendar. Write year-month-day, such as 2026-06-18." },
        { "2026-06-18", "0026-06-18", "6:9: The year 26 cannot be right. Check the date." },
        { "America/Denver", "America/Denvr", "7:9: \"America/Denvr\" is not a time zone. Did you mean America/Denver?" },
        { "America/Denver", "Denver", "7:9: \"Denver\" is not a time zone. Did you mean America/Denver?" },
        { "\"11:20\"", "11.20", "27:12: \"11.20\" is not a time. Write \"11:20\", with a colon." },
        { "\"11:20\"", "\"14:20 PM\"", "27:12: \"14:20 PM\" is not a time of day. With AM or PM the hours run from 1 to 12. Write 14:20 without PM, or the hour of a twelve-hour clock." },
        { "\"11:20\"", "\"25:20\"", "27:12: \"25:20\" is not a time of day. Hours run from 0 to 23, minutes and seconds to 59. Write time since the start with its unit, such as 90 min." },
        { "\"11:20\"", "12", "27:12: \"12\" is not a time. Write a clock time such as \"10:42\", or 12 min for time since the start." },
        { "\"11:20\"", "noon", "27:12: \"noon\" is not a time. Write \"10:42\", \"10:42:30\", 10:42 AM, 2026-06-18 10:42, or 12 min for time since the start." },
        { "\"11:35\"", "\"11:15\"", "28:12: 11:15 comes after 11:20 in the list and is earlier. Put the entries in the order of time, or correct the time." },
        { "  levels:", "  events: [{at: \"09:20\", what: isolated}]\n  levels:", "19:17: The circuit was isolated at 09:20, before the pump was started at 09:25. Correct the times; write the date with a time of another day." },
        { "  levels:", "  events: [{at: \"10:36\", what: isolated}, {at: \"10:30\", what: end}]\n  levels:", "19:48: The hold ended at 10:30, before the circuit was isolated at 10:36. Correct the times." },
        { "  levels:", "  events: [{at: \"09:20\", what: end}]\n  levels:", "19:17: The evacuation ended at 09:20, before the pump was started at 09:25. Correct the times; write the date with a time of another day." },
        { "  started: \"09:25\"\n  levels:\n    - {at: \"10:36\"", "  levels:\n    - {at: 71 min", "19:12: 71 min counts from a start that is not written. Write started: under evacuation, or a clock time here." },
        { "  started: \"09:25\"\n  levels:\n    - {at: \"10:36\", pressure: 340 micron, isolated: yes}\n    - {at: \"10:46\", pressure: 420 micron}\n", "  target: 500\n", "18:3: The evacuation does not say when it was started. Write started: and the clock time, such as started: \"09:25\"." },
        { "evacuation:", "pressure test: {gas: dry nitrogen, tightness: {from: {at: \"09:10\", pressure: 400}, to: {at: \"08:10\", pressure: 400}}}\nevacuation:", "17:93: The hold ends at 08:10, before it starts at 09:10. Correct the times; if the hold ended on another day, write its date, such as 2026-06-19 08:10." },
        { "evacuation:", "pressure test: {gas: dry nitrogen, strength: {pressure: 400, at: 20 min}}\nevacuation:", "17:66: 20 min counts from a start that is not written. Write started: under pressure test, or a clock time here." },

        // Impossible values.
        { "vapor line: 57.9", "vapor line: -500 °F", "27:80: \"-500 °F\" is below absolute zero (−273.15 °C, −459.67 °F). Check the sign and the unit." },
        { "liquid line: 97.4", "liquid line: 97.4, return dry bulb: 70, return wet bulb: 75", "27:143: The return wet bulb 75 °F is above the dry bulb 70 °F. A wet bulb is at most as warm as the dry bulb. Check whether they are swapped." },
        { "liquid line: 97.4", "liquid line: 97.4, outdoor dry bulb: 91.7 °C", "27:123: \"outdoor dry bulb\" cannot be 91.7 °C. It lies between -60 °C and 65 °C. Check the number and the unit." },
        { "liquid line: 97.4", "liquid line: 970", "27:99: \"liquid line\" cannot be 970 °F. It lies between -184 °F and 392 °F. Check the number and the unit." },
        { "liquid line: 97.4", "liquid line: 97.4, return humidity: 148", "27:122: \"return humidity\" cannot be 148 %. It lies between 0 % and 100 %. Check the number and the unit." },
        { "liquid line: 97.4", "liquid line: 97.4, true suction pressure: 400, discharge pressure: 350", "27:128: The true suction pressure 400 psig is above the discharge pressure 350 psig. Check whether the readings are swapped; while the compressor runs its inlet is the lower." },
        { "vapor pressure: 119.8, liquid pressure: 341.5", "vapor pressure: 341.5, liquid pressure: 119.8", "27:37: The vapor pressure 341.5 psig is above the liquid pressure 119.8 psig. Check whether the readings are swapped; in heating, write mode: heating." },
        { "liquid pressure: 341.5", "liquid pressure: 34150", "27:61: \"liquid pressure\" cannot be 34150 psig. It lies between -15.8 psig and 2900 psig. Check the number and the unit." },
        { "vapor pressure: 119.8", "vapor pressure: -14 psig", "27:37: −14 psig is below a perfect vacuum at this site. Check the number and the unit." },
        { "after: 23.84 lb", "after: 25.84 lb", "24:36: The cylinder became heavier: 24.86 lb before, 25.84 lb after. Check whether they are swapped; what was taken out stands under removed." },
        { "evacuation:", "pressure test: {gas: dry nitrogen, strength: {pressure: -3 psig}}\nevacuation:", "17:57: A pressure test at −3 psig is not above the atmosphere. Check the number and the unit." },

        // The site and the refrigerant.
        { "elevation: 5280 ft", "elevation: 5280 ft, station pressure: 29.92 inHg", "8:60: 29.92 inHg looks corrected to sea level. At 5280 ft a barometer shows about 24.64 inHg. Write what a barometer on site shows, not the weather report; or delete the line." },
        { "elevation: 5280 ft", "elevation: 5280 ft, barometer: 1013 hPa", "8:53: 1013 hPa looks corrected to sea level. At 5280 ft a barometer shows about 834 hPa. Write what a barometer on site shows, not the weather report; or delete the line." },
        { "elevation: 5280 ft", "elevation: 5280 ft, station pressure: 27.5 inHg", "8:60: 27.5 inHg does not fit the elevation. At 5280 ft a barometer shows about 24.64 inHg. Check both; or delete one of them." },
        { "elevation: 5280 ft", "elevation: 52800 ft", "8:33: \"elevation\" cannot be 52800 ft. It lies between -1440 ft and 18000 ft. Check the number and the unit." },
        { "elevation: 5280 ft", "address: x", "8:9: The site has neither an elevation nor a station pressure. One of them is needed to turn gauge pressure into absolute pressure. Write elevation: and the height of the town, such as elevation: 5280 ft." },
        { "R-454B", "R-454D", "12:16: \"R-454D\" is not a refrigerant this program knows. Did you mean R-454A, R-454B or R-454C?" },
        { "R-454B", "freon", "12:16: \"freon\" is not a refrigerant this program knows. Write its designation, such as R-410A." },

        // Names and files.
        { "charging:\n", "charging:\n  with: lwo\n", "23:9: \"lwo\" is not an instrument of this job. Did you mean \"low\"?" },
        { "{id: vapor clamp,", "{id: low,", "16:10: Two instruments are called \"low\"; the first is in line 15. Give one of them another name." },
        { "charging:\n", "photos: [{file: ../x.jpg, shows: label}]\ncharging:\n", "22:17: \"../x.jpg\" leaves the job's folder. Put the file beside the job file, or in a folder below it." },
        { "charging:\n", "photos: [{file: y.jpg, shows: label}]\ncharging:\n", "22:17: There is no file \"y.jpg\" in the job's folder. Check the name; capitals count." },
        { "  levels:", "  series: /etc/passwd\n  levels:", "19:11: \"/etc/passwd\" is a path from outside the job's folder. Put the file beside the job file, or in a folder below it." },
        { "  levels:", "  series: logs\\evac.csv\n  levels:", "19:11: \"logs\\evac.csv\" has a backslash; folders are separated by /. Put the file beside the job file, or in a folder below it." },
        { "  levels:", "  series: {file: evac.csv}\n  levels:", "19:18: There is no file \"evac.csv\" in the job's folder. Check the name; capitals count." },
        { "  unit arrived: charged\n", "", "23:3: The charging of a new installation does not say \"unit arrived\". The scale sees the whole charge or only what was added, depending on it. Write unit arrived: charged, nitrogen holding charge, recovered and evacuated, or unknown." },
        { "resolution: 0.1 psi", "calibrated: 2027-01-05", "15:49: The calibration of 2027-01-05 lies after the job's date 2026-06-18. Check the year." },
        { "instruments:", "limits: {superheat: {from: plate}}\ninstruments:", "14:21: This limit has no figure. Write target and tolerance, or minimum, or maximum." },
        { "instruments:", "limits: {superheat: {minimum: 12, maximum: 8, from: plate}}\ninstruments:", "14:21: The minimum is above the maximum. Check whether they are swapped." },
        { "instruments:", "limits: {superheat: {target: 12, tolerance: 8}}\ninstruments:", "14:10: \"superheat\" does not say \"from\". Where the figure is written: page, plate, sheet. Write it like from: unit plate." },
    };

    [Theory]
    [MemberData(nameof(Words))]
    public void One_mistake_gives_one_sentence_at_its_place(string find, string replace, string expected)
    {
        var yaml = Change(find, replace);
        var (reading, problems) = Reading.Of(yaml);
        Assert.Equal(expected.Length == 0 ? [] : ["job.yaml:" + expected], problems);
        Assert.Equal(expected.Length == 0, reading.Job is not null);
    }

    [Fact]
    public void The_good_file_is_good() => Assert.Empty(Reading.Of(Plain).Problems);

    [Fact]
    public void Many_mistakes_are_told_at_once_in_the_order_of_the_file()
    {
        var yaml = Change("new installation", "new instalation").Replace("R-454B", "R-454D", StringComparison.Ordinal)
            .Replace("insulated: yes", "insulated: maybe", StringComparison.Ordinal).Replace("vapor line: 57.9", "vapor lin: 57.9", StringComparison.Ordinal)
            .Replace("119.8,", "119.8 psi,", StringComparison.Ordinal).Replace("elevation: 5280 ft", "elevation: 52800 ft", StringComparison.Ordinal);
        Assert.Equal(["job.yaml:5:9", "job.yaml:8:33", "job.yaml:12:16", "job.yaml:16:52", "job.yaml:27:37", "job.yaml:27:72"],
            Reading.Of(yaml).Problems.Select(p => p[..p.IndexOf(": ", StringComparison.Ordinal)]));
    }

    [Fact]
    public void Bare_numbers_without_units_are_told_one_by_one_and_the_way_out_once()
    {
        var (_, problems) = Reading.Of(Change("units: us\n", ""));
        Assert.Equal(8, problems.Length);
        Assert.Equal("job.yaml:26:37: \"119.8\" has no unit. Expected here: a pressure. Write 119.8 psig or 119.8 psia. Or write units: us at the top, which gives every bare number its unit.", problems[0]);
        Assert.Equal("job.yaml:26:61: \"341.5\" has no unit. Expected here: a pressure. Write 341.5 psig or 341.5 psia.", problems[1]);
    }

    [Theory]
    [InlineData("", "job.yaml: The file is empty.")]
    [InlineData("just text", "job.yaml:1:1: This is not a job file. Keys are expected: commission, job, equipment and others. Begin job.yaml with commission: 1.")]
    [InlineData("- a\n- b\n", "job.yaml:1:1: This is not a job file. Keys are expected: commission, job, equipment and others. Begin job.yaml with commission: 1.")]
    [InlineData("a: \0", "job.yaml:1:4: The text holds a NUL byte (U+0000). Delete it; a job file is plain text.")]
    public void What_is_no_job_file_is_told_in_one_sentence(string yaml, string expected) =>
        Assert.Equal([expected], Reading.Of(yaml).Problems);

    [Fact]
    public void Carriage_returns_and_a_byte_order_mark_do_no_harm() =>
        Assert.Empty(Reading.Of("\uFEFF" + Plain.Replace("\n", "\r\n", StringComparison.Ordinal)).Problems);

    [Fact]
    public void Bytes_that_are_not_text_are_refused() =>
        Assert.Equal(["job.yaml:3:3: The byte 0xFF is not UTF-8 text. UTF-8 is expected. Save the file as UTF-8 in the editor, or retype that character."],
            Reading.Of([.. Encoding.UTF8.GetBytes("a: 1\nb: 2\nc:"), 0xFF]).Problems);

    [Fact]
    public void A_hundred_megabytes_are_refused_without_reading_them() =>
        Assert.Equal(["job.yaml: The file has 100.0 MB; at most 4 MB are read. Put long series of readings into a CSV file beside the job."],
            Reading.Of(new byte[100 * 1024 * 1024]).Problems);

    [Fact]
    public void A_missing_job_file_is_told()
    {
        var problems = new Source.ProblemList();
        JobReader.Read(new JobSource("shop/job.yaml", "job.yaml", new MemoryFolder(), null), Reading.Refrigerants, problems);
        Assert.Equal("shop/job.yaml: There is no such file. Check the name and the folder.", Assert.Single(problems.Sorted()).ToString());
    }

    [Fact]
    public void Ten_thousand_levels_and_an_alias_bomb_are_refused()
    {
        Assert.Contains("nested more than 40 deep", Assert.Single(Reading.Of("job: " + new string('[', 10_000)).Problems), StringComparison.Ordinal);
        var bomb = new StringBuilder("a: &a0 [x,x,x,x,x,x,x,x,x]\n");
        for (var i = 1; i < 10; i++)
            bomb.Append("b" + i + ": &a" + i + " [").AppendJoin(',', Enumerable.Repeat("*a" + (i - 1), 9)).Append("]\n");
        Assert.Contains("more than 200,000 values", Assert.Single(Reading.Of(bomb.ToString()).Problems), StringComparison.Ordinal);
    }

    [Fact]
    public void Fifty_thousand_unknown_keys_are_told_without_a_guess_for_each()
    {
        var yaml = new StringBuilder(Plain);
        for (var i = 0; i < 50_000; i++)
            yaml.Append("vapor presure ").Append(i).Append(": 1\n");
        var problems = Reading.Of(yaml.ToString()).Problems;
        Assert.Equal(50_000, problems.Length);
        Assert.EndsWith("is not a key of a job file.", problems[^1], StringComparison.Ordinal);
    }

    private static string Change(string find, string replace)
    {
        var at = Plain.IndexOf(find, StringComparison.Ordinal);
        Assert.True(at >= 0, find);
        return Plain[..at] + replace + Plain[(at + find.Length)..];
    }
}
