using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Xunit;

namespace Commission.Checks.Tests.Charge;

/// <summary>What a judgement of the charge rests on: the first gate that blocks is told, everything that was not shown is reserved. The windows of the methods are those of RA3.2.</summary>
public sealed class ChargeGatesTests
{
    [Fact]
    public void The_first_gate_that_blocks_is_told()
    {
        Assert.Null(new ChargeGates().Blocked);
        Assert.Null(new ChargeGates(new Gate(), null).Blocked);
        Assert.Equal<(Message, Message)?>((Said("too cold"), Said("Wait.")), new ChargeGates(new Gate(), new Gate(Said("too cold"), Said("Wait.")), new Gate(Said("too hot"), Said("Go."))).Blocked);
        Assert.Equal<(Message, Message)?>((Said("too hot"), CircuitMessages.PutRightNext), new ChargeGates(null, new Gate(Said("too hot"))).Blocked);
    }

    [Fact]
    public void Everything_that_was_not_shown_is_reserved()
    {
        Assert.Null(new ChargeGates(new Gate()).Open);
        var gates = new ChargeGates(new Gate(Reservation: Said("a was not read")), new Gate(), new Gate(Reservation: Said("b was not read")));
        Assert.Equal("a was not read; b was not read", gates.Open.Said());
        var finding = JobText.Context(JobLines.Of()).Finding(CheckCatalogue.Find("charge.superheat")!).Decide(true).Say("It holds.".Plain());
        gates.ReserveIn(finding);
        Assert.Equal((Verdict.Conditional, "a was not read; b was not read"), (finding.Build().Verdict, finding.Build().Reservation));
    }

    [Fact]
    public void Each_gate_names_what_it_looked_at()
    {
        var gate = new Gate();
        new ChargeGates(gate, gate).NameIn(JobText.Context(JobLines.Of()).Finding(CheckCatalogue.Find("charge.superheat")!));
        Assert.Equal(2, gate.Named);
    }

    [Theory]
    [InlineData("outdoor dry bulb: 95.0", "outdoor dry bulb: 54.9", "outdoor dry bulb, 10:30", "come back in warmer weather")]
    [InlineData("outdoor dry bulb: 95.0", "outdoor dry bulb: 115.1", "outdoor dry bulb, 10:30", "when it is cooler")]
    [InlineData("return dry bulb: 80.0", "return dry bulb: 69.9", "return dry bulb, 10:30", "Warm the room")]
    [InlineData("return wet bulb: 67.0", "return wet bulb: 76.1", "return wet bulb, 10:30", "bring the room down")]
    public void Outside_the_window_the_advice_fits_the_side(string from, string to, string subject, string advice) =>
        Assert.Contains(advice, JobLines.Finding(ChargeJobs.FenRow.With(from, to), "charge.method-validity", subject).NextStep, StringComparison.Ordinal);

    // Only the table of target superheat asks for the wet bulb.
    [Theory]
    [InlineData("metering: fixed orifice", 3)]
    [InlineData("metering: TXV", 2)]
    public void The_wet_bulb_counts_where_the_table_is_used(string metering, int windows) =>
        Assert.Equal(windows, JobLines.Findings(ChargeJobs.FenRow.With("metering: fixed orifice", metering), "charge.method-validity").Length);

    // RA1 reads subcooling from 37 to 55 °F with the head pressure raised (from memory); superheat never, and not without it.
    [Theory]
    [InlineData("TXV", "yes", 37.0, true)]
    [InlineData("TXV", "yes", 36.9, false)]
    [InlineData("TXV", "yes", 54.9, true)]
    [InlineData("TXV", "no", 45.0, false)]
    [InlineData("fixed orifice", "yes", 45.0, false)]
    public void Raised_head_pressure_opens_the_winter_window_for_subcooling(string metering, string raised, double outdoor, bool counts)
    {
        var yaml = ChargeJobs.FenRow
            .With("metering: fixed orifice", $"metering: {metering}")
            .With("outdoor dry bulb: 95.0", FormattableString.Invariant($"outdoor dry bulb: {outdoor:0.0}"))
            .With("  running: full", $"  running: full\n  head pressure raised: {raised}")
            .With("instruments:", "limits: {packs: [california-title-24]}\ninstruments:");
        Assert.Equal(counts, JobLines.Finding(yaml, "charge.method-validity", "outdoor dry bulb, 10:30").Verdict is Verdict.Pass or Verdict.PassWithinUncertainty);
    }

    private static Message Said(string words) => CommonMessages.AsWritten(new(words));

    private sealed record Gate(Message? Block = null, Message? Todo = null, Message? Reservation = null) : IChargeGate
    {
        public int Named { get; private set; }

        public void NameIn(FindingBuilder finding) => Named++;
    }
}
