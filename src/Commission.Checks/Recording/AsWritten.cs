using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Commission.Checks.Kernel;
using Commission.Measurement.Decisions;
using Commission.Records;
using Commission.Source;

namespace Commission.Checks.Recording;

/// <summary>
/// What the crew wrote and no other place of the record prints, part by part in the words of the job file: nobody writes in vain. A text that stands
/// whole in the head, in a table, with an instrument, a photo or a signature, or in the sentence of a check that used it, is printed there.
/// </summary>
internal static class AsWritten
{
    private const int ShortWord = 4;

    // Places in the file, versions and the choice of units say nothing of the system.
    private static readonly HashSet<string> Left = ["commission", "units", "limits packs", "signatures"];

    // Their tables print every reading, each under the unit of its column.
    private static readonly HashSet<string> InTables = ["charging readings", "tightness from", "tightness to", "tightness readings", "air static"];

    // Of an instrument the table prints these, two of them joined.
    private static readonly HashSet<string> OfInstruments = ["id", "kind", "calibrated", "interval", "reads"];

    /// <summary>The parts, in the order of the job file.</summary>
    public static ImmutableArray<LabelValue> Make(CommissioningRecord record)
    {
        var printed = Printed(record);
        var told = Told(record);
        var parts = ImmutableArray.CreateBuilder<LabelValue>();
        foreach (var node in record.Job)
        {
            if (Left.Contains(node.Key))
                continue;
            var text = new StringBuilder();
            Write(node.Key == "instruments" ? WithoutTable(node, record.Instruments) : Untold(node, told), text, printed);
            if (text.Length > 0)
                parts.Add(new LabelValue(char.ToUpperInvariant(node.Key[0]) + node.Key[1..], text.ToString(), node.At));
        }

        return parts.ToImmutable();
    }

    // Their table prints who they are and what their checks of the day showed.
    private static InputNode WithoutTable(InputNode instruments, ImmutableArray<InstrumentRow> rows) => instruments with
    {
        Children =
        [
            .. instruments.Children.Select(i =>
            {
                var row = rows.FirstOrDefault(r => i.Children.Any(c => c.Key == "id" && c.Text == r.Id));
                var text = row is null ? "" : string.Join(' ', row.FieldChecks.Append(row.Serial).Append(row.Accuracy));
                return i with { Children = [.. i.Children.Where(c => !OfInstruments.Contains(c.Key)).Select(c => Without(c, leaf => text.Contains(leaf.Text!, StringComparison.Ordinal)))] };
            }),
        ],
    };

    // What a check that used it says in its row or its sentence.
    private static Dictionary<SourceLocation, string> Told(CommissioningRecord record)
    {
        var told = new Dictionary<SourceLocation, string>();
        foreach (var finding in record.Findings.Where(f => f.Phase is not (Phases.Instruments or Phases.Evidence)))
        {
            var text = $"{finding.Subject} {(finding is { Measured: { } measured, Verdict: Verdict.Pass or Verdict.PassWithinUncertainty } ? measured.Text : finding.Statement)} ";
            foreach (var use in finding.Readings)
                told[use.At] = told.GetValueOrDefault(use.At, "") + text;
        }

        return told;
    }

    private static InputNode Untold(InputNode node, Dictionary<SourceLocation, string> told) =>
        Without(node, leaf => leaf.At is { } at && told.TryGetValue(at, out var text) && text.Contains(leaf.Text!, StringComparison.OrdinalIgnoreCase));

    // A leaf that is left out keeps its place, so that items of a list stay items.
    private static InputNode Without(InputNode node, Func<InputNode, bool> isLeft) => node.Text is { Length: > 0 }
        ? isLeft(node) ? node with { Text = "" } : node
        : node with { Children = [.. node.Children.Select(child => Without(child, isLeft))] };

    private static HashSet<string> Printed(CommissioningRecord record)
    {
        var printed = new HashSet<string>(StringComparer.Ordinal) { record.Header.Id, record.Header.Work, record.Header.Date, record.Header.Site, record.Header.Notes };
        printed.UnionWith(record.Header.Groups.SelectMany(g => g.Rows).Select(r => r.Value));
        printed.UnionWith(record.Tables.SelectMany(t => t.Rows).SelectMany(r => r));
        foreach (var i in record.Instruments)
            printed.UnionWith([i.Id, i.Kind, i.Maker, i.Model, i.Serial, i.Certificate, i.Accuracy, i.Resolution, .. i.Reads]);
        foreach (var p in record.Photos)
            printed.UnionWith([p.File, p.Shows, p.Taken]);
        printed.Remove("");
        return printed;
    }

    // key value; key (key value, key value); items of a list one after the other, those that say the same once with their number.
    private static void Write(InputNode node, StringBuilder text, HashSet<string> printed)
    {
        var (last, times) = ("", 0);
        foreach (var child in node.Children)
        {
            if (Left.Contains($"{node.Key} {child.Key}") || InTables.Contains($"{node.Key} {child.Key}"))
                continue;
            var isItem = char.IsAsciiDigit(child.Key[0]) && node.Children[0].Key == "1";
            if (child.Text is { } value)
            {
                // Short words such as yes tell nothing where they stand in a table of something else.
                if (value.Length == 0 || (value.Length >= ShortWord && printed.Contains(value)))
                    continue;
                Separate(text);
                if (!isItem)
                    text.Append(child.Key).Append(' ');
                text.Append(value);
                continue;
            }

            var inside = new StringBuilder();
            Write(child, inside, printed);
            if (inside.Length == 0)
                continue;
            if (isItem && last.Length > 0 && inside.Equals(last.AsSpan()))
            {
                times++;
                continue;
            }

            Repeated(text, times);
            (last, times) = (inside.ToString(), 1);
            Separate(text);
            if (isItem)
                text.Append('(').Append(inside).Append(')');
            else
                text.Append(child.Key).Append(" (").Append(inside).Append(')');
        }

        Repeated(text, times);
    }

    private static void Repeated(StringBuilder text, int times)
    {
        if (times > 1)
            text.Append(CultureInfo.InvariantCulture, $" × {times}");
    }

    private static void Separate(StringBuilder text)
    {
        if (text.Length > 0)
            text.Append("; ");
    }
}
