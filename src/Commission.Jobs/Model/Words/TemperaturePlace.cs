namespace Commission.Jobs.Model.Words;

/// <summary>Where the temperature of the nitrogen was taken.</summary>
public enum TemperaturePlace
{
    /// <summary>On the vapor line.</summary>
    VaporLine,

    /// <summary>On the liquid line.</summary>
    LiquidLine,

    /// <summary>On both lines.</summary>
    BothLines,

    /// <summary>On the indoor coil.</summary>
    IndoorCoil,

    /// <summary>In the air beside it.</summary>
    Air,
}
