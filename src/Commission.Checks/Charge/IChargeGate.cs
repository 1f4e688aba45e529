using Commission.Checks.Findings;

namespace Commission.Checks.Charge;

/// <summary>Something a judgement of the charge rests on beyond its own readings: steady running, the right stage, enough air.</summary>
internal interface IChargeGate
{
    /// <summary>Why nothing may be judged, without a full stop; null when something may.</summary>
    string? Block { get; }

    /// <summary>What would make it possible; null when it is possible.</summary>
    string? Todo { get; }

    /// <summary>What was not shown and makes a pass conditional; null when everything was.</summary>
    string? Reservation { get; }

    /// <summary>Names in a finding everything of the job the gate looked at.</summary>
    /// <param name="finding">The finding.</param>
    void NameIn(FindingBuilder finding);
}
