using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.PressureTest;

/// <summary>What the circuit was tested with.</summary>
internal sealed class TestGasCheck : ICheck
{
    public string Id => "pressure-test.gas";

    public string Phase => Phases.PressureTest;

    public string Title => "Test gas";

    public CheckHelp Help { get; } = new(
        "Was the circuit tested with an inert gas? Oxygen and compressed air explode with oil, fuel gases burn, and refrigerant may not be let out.",
        "dry nitrogen, helium, argon or carbon dioxide; a tracer up to the share the pack allows",
        "ASHRAE 15-1994 section 10.1.2, interim action on the test gas (published).",
        "Stop. Release the gas outdoors away from ignition, purge with dry nitrogen, find out what it has done to the oil, and test again with dry nitrogen through a regulator and relief device.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PressureTest is not { } test)
            yield break;
        var finding = context.Finding(this).Use("test gas", test.Gas).Use("tracer", test.Tracer?.Gas).Use("share of the tracer", test.Tracer?.Share);
        var inert = test.Gas.Value is TestGas.DryNitrogen or TestGas.NitrogenWithTracer or TestGas.Helium or TestGas.Argon or TestGas.CarbonDioxide;
        var limit = context.Limits.Find("pressure-test.gas");
        if (test.Tracer?.Share is { } share && inert && context.Limits.Find("pressure-test.tracer.maximum") is { } most)
        {
            finding.Judge(Uncertain.Exact(share.Value.Si), DisplayKind.Percentage, context.State(most));
            yield return finding.Passes
                ? finding.Say($"Tested with {test.Gas.Text}, {share.Text} {test.Tracer!.Gas.Value} as tracer.").Build()
                : finding.Say($"{share.Text} {test.Tracer!.Gas.Value} is more tracer than the limit allows.").Next("Release the gas outdoors and use a made-up mixture of at most 5 %.").Build();
            yield break;
        }

        finding.Decide(inert, limit is null ? null : context.State(limit));
        yield return inert
            ? finding.Say($"Tested with {test.Gas.Text}.").Build()
            : finding.Say($"DANGER: {test.Gas.Text} was used as test gas. {Why(test.Gas)}").Next(Help.WhenItFails).Build();
    }

    private static string Why(Given<TestGas> gas) => gas.Value switch
    {
        TestGas.Oxygen or TestGas.CompressedAir => "With oil under pressure it explodes.",
        TestGas.Hydrogen or TestGas.Acetylene => "It burns and explodes.",
        _ => "It may not be released, and it hides a leak.",
    };
}
