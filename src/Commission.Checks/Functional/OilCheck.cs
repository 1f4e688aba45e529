using Commission.Jobs.Model.Words;
using Commission.Records.Findings;

namespace Commission.Checks.Functional;

/// <summary>Oil level and oil pressure of a compressor that shows them.</summary>
internal sealed class OilCheck : ICheck
{
    public string Id => "functional.oil";

    public string Phase => Phases.Functional;

    public string Title => "Compressor oil";

    public CheckHelp Help { get; } = new(
        "Does the oil stand in the sight glass while the compressor runs, and what is the net oil pressure?",
        "level in the glass; the net oil pressure is shown beside it for the maker's figure to judge",
        "Compressor makers' instructions (common practice, no source).",
        "Low: find out where the oil is (traps, velocity in risers, a long evaporator) before any is added. High: suspect refrigerant in the oil; check the crankcase heater and the superheat.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional || (functional.OilLevel is null && functional.OilPressureDifference is null))
            yield break;
        var finding = context.Finding(this).Use("oil level", functional.OilLevel).Use("oil pressure difference", functional.OilPressureDifference);
        var pressure = functional.OilPressureDifference is { } net ? $" Net oil pressure {net.Text}." : "";
        yield return functional.OilLevel?.Value switch
        {
            null => finding.Information(pressure.Trim(), "no oil level is written, and nothing sets a limit on the pressure"),
            OilLevel.NoGlass => finding.Information($"The compressor has no oil glass.{pressure}", "the level cannot be seen"),
            OilLevel.InTheGlass => finding.Decide(true).Say($"The oil stands in the glass.{pressure}").Build(),
            _ => finding.Decide(false).Say($"The oil level is {functional.OilLevel.Text}.{pressure}").Next(Help.WhenItFails).Build(),
        };
    }
}
