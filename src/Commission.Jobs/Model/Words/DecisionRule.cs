namespace Commission.Jobs.Model.Words;

/// <summary>How uncertainty enters a verdict.</summary>
public enum DecisionRule
{
    /// <summary>The reading is compared with the limit; the probability is printed.</summary>
    Simple,

    /// <summary>The uncertainty is taken off the limit first.</summary>
    Guarded,
}
