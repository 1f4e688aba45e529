using Commission.Checks.Findings;

namespace Commission.Checks.Charge;

/// <summary>The gates of one judgement, in the order in which a technician would look.</summary>
internal sealed class ChargeGates
{
    private readonly IChargeGate[] gates;

    /// <summary>Gathers gates.</summary>
    /// <param name="gates">The gates; the first that blocks is told.</param>
    public ChargeGates(params IChargeGate?[] gates) => this.gates = [.. gates.OfType<IChargeGate>()];

    /// <summary>The first gate that blocks; null when none does.</summary>
    public (string Why, string Todo)? Blocked
    {
        get
        {
            foreach (var gate in gates)
            {
                if (gate.Block is { } why)
                    return (why, gate.Todo ?? "Put it right and read again.");
            }

            return null;
        }
    }

    /// <summary>Everything that was not shown, without a full stop; null when everything was.</summary>
    public string? Open => gates.Select(g => g.Reservation).OfType<string>().ToArray() is { Length: > 0 } open ? string.Join("; ", open) : null;

    /// <summary>Names what the gates looked at.</summary>
    /// <param name="finding">The finding.</param>
    public void NameIn(FindingBuilder finding)
    {
        foreach (var gate in gates)
            gate.NameIn(finding);
    }

    /// <summary>Makes a pass conditional for whatever was not shown.</summary>
    /// <param name="finding">The finding.</param>
    public void ReserveIn(FindingBuilder finding)
    {
        foreach (var gate in gates)
        {
            if (gate.Reservation is { } what)
                finding.Reserve(what);
        }
    }
}
