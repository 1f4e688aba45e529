using Commission.Jobs.Model;
using Commission.Records.Findings;

namespace Commission.Checks.Piping;

/// <summary>Insulation of the lines, as written.</summary>
internal sealed class LineInsulationCheck : ICheck
{
    public string Id => "piping.insulation";

    public string Phase => Phases.Piping;

    public string Title => "Insulation of the lines";

    public CheckHelp Help { get; } = new(
        "Is the vapor line insulated all the way, with its joints sealed and protected outdoors? Bare cold pipe drips and loses capacity. Leak-test before insulating.",
        "insulated all the way; joints sealed; weatherproof outdoors",
        "Common practice, no source; the maker's and the energy code's thickness come first.",
        "Insulate what is bare, seal butt joints and slits, cover foam that lies in the sun.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PipingChecks is not { } checks
            || checks is { VaporLineInsulated: null, LiquidLineInsulated: null, InsulationThickness: null, InsulationJointsSealed: null, InsulationWeatherproof: null })
            yield break;
        var finding = context.Finding(this)
            .Use("vapor line insulated", checks.VaporLineInsulated)
            .Use("liquid line insulated", checks.LiquidLineInsulated)
            .Use("thickness", checks.InsulationThickness)
            .Use("joints sealed", checks.InsulationJointsSealed)
            .Use("weatherproof", checks.InsulationWeatherproof);
        var faults = new[]
        {
            Fault(checks.VaporLineInsulated, "the vapor line is not insulated all the way"),
            Fault(checks.InsulationJointsSealed, "its joints are not sealed"),
            Fault(checks.InsulationWeatherproof, "it is not protected outdoors"),
        }.OfType<string>().ToArray();
        finding.Decide(faults.Length == 0);
        if (checks.InsulationThickness is { } thickness)
            finding.Remark($"Thickness {thickness.Text}.");
        if (checks.LiquidLineInsulated is { } liquid)
            finding.Remark(liquid.Value ? "The liquid line is insulated." : "The liquid line is not insulated.");
        if (faults.Length > 0)
        {
            yield return finding.Say($"Insulation: {string.Join("; ", faults)}.").Next(Help.WhenItFails).Build();
            yield break;
        }

        if (checks.VaporLineInsulated is null)
            finding.Reserve("it is not written that the vapor line is insulated all the way").Next("Write vapor line insulated: yes.");
        yield return finding.Say(checks.VaporLineInsulated is null ? "Insulation as far as it is written." : "The vapor line is insulated all the way.").Build();
    }

    private static string? Fault(Given<bool>? answer, string fault) => answer is { Value: false } ? fault : null;
}
