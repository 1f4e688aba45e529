using Commission.Jobs.Model.Words;

namespace Commission.Jobs.Model;

/// <summary>Which decision rule holds.</summary>
public sealed record DecisionRules : JobPart
{
    /// <summary>For everything not named.</summary>
    public Given<DecisionRule>? All { get; init; }

    /// <summary>For instrument checks.</summary>
    public Given<DecisionRule>? Instruments { get; init; }

    /// <summary>For the pressure test.</summary>
    public Given<DecisionRule>? PressureTest { get; init; }

    /// <summary>For the evacuation.</summary>
    public Given<DecisionRule>? Evacuation { get; init; }

    /// <summary>For the charge.</summary>
    public Given<DecisionRule>? Charge { get; init; }

    /// <summary>For the air side.</summary>
    public Given<DecisionRule>? Air { get; init; }

    /// <summary>For the compressor.</summary>
    public Given<DecisionRule>? Compressor { get; init; }

    /// <summary>For the electrical side.</summary>
    public Given<DecisionRule>? Electrical { get; init; }

    /// <summary>For the piping.</summary>
    public Given<DecisionRule>? Piping { get; init; }

    /// <summary>For safety.</summary>
    public Given<DecisionRule>? Safety { get; init; }

    /// <summary>For refrigerant handling.</summary>
    public Given<DecisionRule>? Refrigerant { get; init; }
}
