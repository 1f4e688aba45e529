namespace Commission.Jobs.Model.Words;

/// <summary>Who uses a room.</summary>
public enum Occupancy
{
    /// <summary>Anyone.</summary>
    General,

    /// <summary>People who cannot leave on their own.</summary>
    Institutional,

    /// <summary>A known number of people, some trained.</summary>
    Supervised,

    /// <summary>Trained people only.</summary>
    Authorised,
}
