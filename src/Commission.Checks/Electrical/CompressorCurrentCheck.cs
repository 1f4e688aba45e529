using System.Globalization;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Compressor current against the rated load current, and above it against the maximum continuous current.</summary>
internal sealed class CompressorCurrentCheck : ICheck
{
    public string Id => "compressor.current";

    public string Phase => Phases.Compressor;

    public string Title => "Compressor current";

    public CheckHelp Help { get; } = new(
        "Does the compressor draw no more than it is rated for? The rated load current is no running limit: a hot day may pass it honestly. The maximum continuous current is.",
        "current ≤ RLA: pass; RLA to MCC: pass with a remark; above MCC: fail. Without MCC on the plate, MCC = pack factor × RLA. Fixed-speed compressors only; a low current proves nothing",
        "RLA = MCC/1.4 at least, MCC/1.56 at most (UL practice, from memory); maker's figure first.",
        "Check voltage, unbalance, condenser airflow and charge. If the current stays above MCC, stop the unit.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var currents = context.Get<ElectricalReadings>().Compressor;
        if (currents.IsEmpty)
            yield break;
        var plate = context.Job.Equipment.Nameplate;
        var kind = context.Job.Equipment.Compressor?.Kind;
        foreach (var current in currents)
        {
            var finding = context.Finding(this, currents.Length == 1 ? null : current.Name).Use(current).Use("RLA", plate?.CompressorRLA).Use("MCC", plate?.CompressorMCC).Use("compressor", kind);
            if (kind?.Value is CompressorKind.VariableSpeed or CompressorKind.Digital)
            {
                yield return finding.Measure(current.Value, DisplayKind.Current).Information(
                    $"Compressor current {current.Uses[0].Text}.", "RLA judges fixed-speed compressors; a variable-speed one is compared with the unit's rated input");
                continue;
            }

            if (context.Limits.Find("electrical.compressor-current") is { } makers)
            {
                finding.Judge(current.Value, DisplayKind.Current, context.State(makers));
                yield return finding.Passes
                    ? finding.Say($"Compressor current {current.Uses[0].Text}, within the maker's figure.").Build()
                    : finding.Say($"Compressor current {current.Uses[0].Text}, outside the maker's figure.").Next(Help.WhenItFails).Build();
                continue;
            }

            if (plate?.CompressorRLA is not { } rla)
            {
                yield return finding.NotEvaluated("the nameplate's RLA is not written", "Write nameplate: {compressor RLA: 16.7 A}.");
                continue;
            }

            yield return Judge(context, finding, current.Value, rla.Value.Si, plate.CompressorMCC?.Value.Si);
        }
    }

    private Finding Judge(CheckContext context, Findings.FindingBuilder finding, Measurement.Uncertainty.Uncertain current, double rla, double? mcc)
    {
        var continuous = context.Limits.Find("electrical.compressor-current.continuous");
        if (context.Limits.Find("electrical.compressor-current.rated") is not { Upper: { } factor } rated)
            return finding.NotEvaluated("no pack sets a limit", "Name a limits pack.");
        var most = mcc ?? (continuous?.Upper?.Si * rla) ?? (factor.Si * rla);
        var present = context.Present;
        var text = present.Text(current.Value, DisplayKind.Current);
        if (current.Value <= factor.Si * rla)
        {
            finding.Judge(current, DisplayKind.Current, context.State(rated) with { Kind = LimitKind.AtMost, Text = $"at most {present.Text(factor.Si * rla, DisplayKind.Current)} (RLA)", LowerSi = null, UpperSi = factor.Si * rla });
            return finding.Say($"Compressor current {text}, at or below RLA.").Build();
        }

        finding.Step("I_max", "maximum continuous current", mcc is null ? "factor × RLA" : "nameplate", mcc is null ? string.Create(CultureInfo.InvariantCulture, $"{most / rla:0.##} × {present.Text(rla, DisplayKind.Current)}") : present.Text(most, DisplayKind.Current), present.Text(most, DisplayKind.Current), continuous?.Source ?? "");
        finding.Judge(current, DisplayKind.Current, context.State(continuous ?? rated) with { Kind = LimitKind.AtMost, Text = $"at most {present.Text(most, DisplayKind.Current)} (MCC)", LowerSi = null, UpperSi = most });
        return finding.Passes
            ? finding.Say($"Compressor current {text}, above RLA and below the maximum continuous current.").Remark("A hot day or a high load may explain it; read again at rated conditions.").Build()
            : finding.Say($"Compressor current {text}, above the maximum continuous current.").Next(Help.WhenItFails).Build();
    }
}
