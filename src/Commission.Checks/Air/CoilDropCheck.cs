using Commission.Records.Findings;

namespace Commission.Checks.Air;

/// <summary>Pressure drop of the indoor coil.</summary>
internal sealed class CoilDropCheck : ICheck
{
    public string Id => "air.coil-drop";

    public string Phase => Phases.Air;

    public string Title => "Coil drop";

    public CheckHelp Help { get; } = new(
        "How much of the blower's pressure does the indoor coil take? A wet coil takes more than a dry one: compare like with like.",
        "p before the coil − p after it, read across it with one manometer",
        "The maker's table for this coil, wet or dry; there is no common figure.",
        "Clean the coil on the side where the air enters; look for a coil that is too small for this airflow, or one that is iced.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Get<StaticReading>().CoilDrop is not { } drop)
            yield break;
        var wet = context.Job.Air!.WetCoil;
        yield return PartDrop.Judge(context, this, drop, context.Limits.Find("air.coil-drop"), "coil", finding =>
        {
            finding.Use("wet coil", wet).Use("coil", context.Job.Air.Coil);
            if (wet is null && finding.Passes)
                finding.Reserve("it is not written whether the coil was wet, and the maker's figure is for one of the two").Next("Write wet coil: yes or no.");
            else if (wet is not null)
                finding.Remark(wet.Value ? "The coil was wet." : "The coil was dry.");
        });
    }
}
