namespace Commission.Jobs.Model.Words;

/// <summary>Where refrigerant would come out.</summary>
public enum Mounting
{
    /// <summary>At the floor.</summary>
    Floor,

    /// <summary>At window height.</summary>
    Window,

    /// <summary>High on a wall.</summary>
    Wall,

    /// <summary>At the ceiling.</summary>
    Ceiling,
}
