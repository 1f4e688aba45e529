namespace Commission.Jobs.Model.Words;

/// <summary>The set of units of bare numbers.</summary>
public enum UnitPreset
{
    /// <summary>Inch, pound, °F.</summary>
    Us,

    /// <summary>Metre, kilogram, °C.</summary>
    Si,
}
