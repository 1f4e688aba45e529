using Commission.Jobs.Model.Words;

namespace Commission.Jobs.Model;

/// <summary>A safety device.</summary>
public sealed record SafetyDevice : JobPart
{
    /// <summary>What it is.</summary>
    public required Given<SafetyDeviceKind> Kind { get; init; }

    /// <summary>Its name.</summary>
    public Given<string>? Id { get; init; }

    /// <summary>What it is set to.</summary>
    public Given<QuantityValue>? Set { get; init; }

    /// <summary>What it tripped at.</summary>
    public Given<QuantityValue>? TrippedAt { get; init; }

    /// <summary>What it came back at.</summary>
    public Given<QuantityValue>? ResetAt { get; init; }

    /// <summary>How it comes back.</summary>
    public Given<ResetKind>? Reset { get; init; }

    /// <summary>How the test ended.</summary>
    public Given<TestResult>? Tested { get; init; }

    /// <summary>Date on the device.</summary>
    public Given<DateOnly>? Date { get; init; }

    /// <summary>When it was tested.</summary>
    public Given<JobTime>? At { get; init; }
}
