using Commission.Records.Series;

namespace Commission.Checks.Recording;

/// <summary>Makes the data of one kind of figure. Everything the figure shows, fitted curves included, is worked out here.</summary>
public interface IFigureSource
{
    /// <summary>The figures of this kind for the job; none when the job has nothing to draw.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    IEnumerable<FigureData> Figures(CheckContext context);
}
