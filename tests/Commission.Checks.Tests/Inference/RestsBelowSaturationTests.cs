using Commission.Checks.Inference;
using Commission.Checks.Tests.Charge;
using Commission.Messages;
using Xunit;

namespace Commission.Checks.Tests.Inference;

/// <summary>
/// At rest, with liquid in the circuit, the pressure cannot lie below saturation: Gibbs' phase rule. R-410A at sea level: bubble 201.76 psig at 70 °F
/// (equation of state, computed by a program of its own), slope 3.1 to 3.3 psi/°F from there down to 165 psig.
/// </summary>
public sealed class RestsBelowSaturationTests
{
    // 9 °F (5 K) are more than clamps and gauges explain (common practice, no source): 175 psig lie 8.1 to 8.6 °F below, 168 psig 10.2 to 10.9 °F.
    [Theory]
    [InlineData("168.0", "sight glass: clear", true)]
    [InlineData("175.0", "sight glass: clear", false)]
    [InlineData("211.8", "sight glass: clear", false)]
    [InlineData("168.0", "sight glass: bubbles", false)]
    [InlineData("168.0", "receiver level: 40 %", true)]
    [InlineData("168.0", "receiver level: 5 %", false)]
    [InlineData("168.0", "running: full", false)]
    public void Liquid_at_rest_below_saturation_is_another_refrigerant(string standing, string liquid, bool other)
    {
        var seen = liquid == "running: full" ? liquid : $"running: full\n  {liquid}";
        var context = JobText.Context(ChargeJobs.FenRow.With("running: full", $"{seen}\n  standing test: {{off for: 20 min, condenser fan on: yes, liquid pressure: {standing}, liquid line: 70.0}}"));
        var diagnosis = context.Get<CircuitDiagnosis>();
        Assert.Equal(other, diagnosis.Said?.Sentence.Id == "diagnosis.rests-below");
        Assert.Equal(other, diagnosis.Result!.Ranked.Any(r => r.Cause == "wrong refrigerant"));
        Assert.Equal(other, diagnosis.Said?.Next == DiagnosisMessages.WrongRefrigerantNext);
    }
}
