using Commission.Checks.Charge;
using Commission.Checks.Findings;
using Commission.Checks.Limits;
using Commission.Checks.Readings;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Air;

/// <summary>The way of a check that judges the pressure drop of one part of the air handler by the maker's figure.</summary>
internal static class PartDrop
{
    /// <summary>Judges it.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="check">The check that speaks.</param>
    /// <param name="drop">The drop.</param>
    /// <param name="limit">The maker's figure; null when it is not written.</param>
    /// <param name="part">Filter or coil.</param>
    /// <param name="before">What is added to the finding before it ends; null for nothing.</param>
    public static Finding Judge(CheckContext context, ICheck check, CorrectedReading drop, Limit? limit, string part, Action<FindingBuilder>? before = null)
    {
        var finding = context.Finding(check).Use(drop);
        var text = context.Present.Text(drop.Value, DisplayKind.StaticPressure);
        if (drop.Value.Value < 0)
            return finding.Measure(drop.Value, DisplayKind.StaticPressure).NotEvaluated($"a drop of the {part} below zero cannot be", "Swap the hoses of the manometer, or write the drop without its sign.");
        if (limit is not { Upper: not null })
        {
            before?.Invoke(finding.Measure(drop.Value, DisplayKind.StaticPressure));
            return finding.Information($"The {part} takes {text}.", "the maker's figure is not written");
        }

        var state = context.State(limit);
        finding.Judge(drop.Value.On(state), DisplayKind.StaticPressure, state).RemarkUnknown([drop]);
        before?.Invoke(finding);
        return finding.Passes
            ? finding.Say($"The {part} takes {text}, {state.Text} allowed.").Build()
            : finding.Say($"The {part} takes {text}, more than the {state.Text} allowed.").Next(check.Help.WhenItFails).Build();
    }
}
