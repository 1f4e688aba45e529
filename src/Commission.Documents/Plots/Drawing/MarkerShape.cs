namespace Commission.Documents.Plots.Drawing;

/// <summary>Shapes that tell series apart without colour.</summary>
internal enum MarkerShape
{
    /// <summary>A disc.</summary>
    Circle,

    /// <summary>A square.</summary>
    Square,

    /// <summary>A square on its corner.</summary>
    Diamond,

    /// <summary>A triangle standing on its side.</summary>
    Triangle,
}
