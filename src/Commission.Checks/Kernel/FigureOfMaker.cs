using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Kernel;

/// <summary>A reading that is judged by a figure written for it, and is information where none is: no common figure fits every make.</summary>
/// <param name="Subject">What it is, as the finding's subject and in its sentence.</param>
/// <param name="Reading">The reading.</param>
/// <param name="Kind">How it is displayed.</param>
/// <param name="Limit">Id of the limit.</param>
internal sealed record FigureOfMaker(string Subject, CorrectedReading Reading, DisplayKind Kind, string Limit)
{
    /// <summary>The reading as its sentence has it: as written, where the job writes it.</summary>
    public string Found { get; init; } = Reading.Uses[0].Text;

    /// <summary>The finding of it.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="check">The check that speaks.</param>
    /// <param name="next">What to do when it misses the figure.</param>
    public Finding Judge(CheckContext context, ICheck check, Message next)
    {
        var finding = context.Finding(check, Subject).Use(Reading);
        var what = new TextValue(Subject);
        var found = new TextValue(Found);
        // Displayed over the atmosphere, and judged so: its doubt is in neither.
        var zero = Kind == DisplayKind.Pressure ? context.Get<SiteAtmosphere>().Value : Uncertain.Exact(0);
        var y = Reading.Value - zero;
        if (context.Limits.Find(Limit) is not { } limit || (limit.Lower is null && limit.Upper is null))
            return finding.Measure(y, Kind).Information(CommonMessages.FigureRead(what, found), CommonMessages.FigureNotWritten);
        var state = context.State(limit);
        state = state with { LowerSi = state.LowerSi - zero.Value, UpperSi = state.UpperSi - zero.Value, TargetSi = state.TargetSi - zero.Value };
        finding.Judge(y.On(state), Kind, state).Remark(limit.Remark(context.Present.Units));
        var asked = new TextValue(state.Text);
        return finding.Conclude(CommonMessages.FigureMet(what, found, asked), CommonMessages.FigureMissed(what, found, asked), next);
    }
}
