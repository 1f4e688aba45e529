namespace Commission.Jobs.Model.Words;

/// <summary>How the refrigerant left the cylinder.</summary>
public enum RefrigerantPhase
{
    /// <summary>As liquid.</summary>
    Liquid,

    /// <summary>As vapor.</summary>
    Vapor,
}
