namespace Commission.Records.Series;

/// <summary>Names the axis a reference line belongs to.</summary>
public enum AxisName
{
    /// <summary>The horizontal axis: the line is vertical.</summary>
    X,

    /// <summary>The vertical axis: the line is horizontal.</summary>
    Y,
}
