using System.Collections.Immutable;
using Commission.Jobs.Model;

namespace Commission.Jobs.Meaning;

/// <summary>Voltages and currents come one for a single phase, three for three phases.</summary>
internal static class ElectricalRules
{
    public static void Check(RuleContext context)
    {
        if (context.Job.Electrical is not { } electrical) return;
        var phases = context.Job.Equipment?.Nameplate?.Phases?.Value;
        Count(context, electrical.LineToLine, "line to line", phases);
        Count(context, electrical.Compressor, "compressor", phases);
        if (electrical.VoltageDropAtStart is { Before: { } before, Lowest: { } lowest } && lowest.Value.Si > before.Value.Si)
            context.Complain(lowest, $"The lowest voltage at start, {lowest.Text}, is above the {before.Text} before it.", "", "Check whether they are swapped.", "impossible");
    }

    private static void Count<T>(RuleContext context, ImmutableArray<Given<T>> values, string key, int? phases)
    {
        if (values.Length is 0 or 1 or 3 && !(values.Length == 3 && phases == 1)) return;
        context.Complain(values[^1], FormattableString.Invariant($"\"{key}\" has {values.Length} values{(phases == 1 ? " and the nameplate one phase" : "")}."),
            "One is expected for a single phase, three for three phases.", phases == 1 ? "Write one." : "Write one or three.", "too-many");
    }
}
