namespace Commission.Checks.Tables;

/// <summary>How the indoor unit is mounted, when the height from which refrigerant would escape is not given.</summary>
internal enum ReleaseMounting
{
    /// <summary>Standing on the floor: 0.6 m.</summary>
    Floor,

    /// <summary>In a window: 1.0 m.</summary>
    Window,

    /// <summary>On a wall: 1.8 m.</summary>
    Wall,

    /// <summary>At the ceiling: 2.2 m.</summary>
    Ceiling,
}
