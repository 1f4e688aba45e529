namespace Commission.Checks.EvacuationAnalysis;

/// <summary>What gas passes on its way from the system to the pump.</summary>
public enum FlowElementKind
{
    /// <summary>A valve core left in its place: a short, narrow opening.</summary>
    Core,

    /// <summary>Any other short opening: a tee, a valve, an adapter.</summary>
    Fitting,

    /// <summary>A hose or a tube much longer than its bore.</summary>
    Hose,
}
