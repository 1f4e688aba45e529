namespace Commission.Fluids;

/// <summary>The publication an equation or a set of parameters was taken from.</summary>
/// <param name="Key">Short key: author, journal, year.</param>
/// <param name="Authors">Authors, separated by semicolons.</param>
/// <param name="Title">Title of the paper, book or report.</param>
/// <param name="Year">Year of publication.</param>
/// <param name="PublishedIn">Journal, proceedings or publisher; empty where the source names none.</param>
/// <param name="Volume">Volume, or null.</param>
/// <param name="Pages">Pages or article number, or null.</param>
/// <param name="Doi">Digital object identifier, or null.</param>
public sealed record Paper(string Key, string Authors, string Title, string Year, string PublishedIn, string? Volume, string? Pages, string? Doi)
{
    /// <summary>One line: authors, title, journal volume (year) pages.</summary>
    public string Citation
    {
        get
        {
            string place = PublishedIn;
            if (Volume is not null)
                place = place.Length == 0 ? Volume : place + " " + Volume;
            string tail = Pages is null ? string.Empty : ", " + Pages;
            return place.Length == 0 ? $"{Authors}: {Title} ({Year})" : $"{Authors}: {Title}. {place} ({Year}){tail}";
        }
    }

    /// <inheritdoc/>
    public override string ToString() => Citation;
}
