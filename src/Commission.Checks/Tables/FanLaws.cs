namespace Commission.Checks.Tables;

/// <summary>The fan laws for one fan in one duct system: flow with speed, pressure with its square, power with its cube.</summary>
internal static class FanLaws
{
    /// <summary>The laws, as a trace prints them.</summary>
    public const string Formula = "flow ∝ n, pressure ∝ n², power ∝ n³";

    /// <summary>Flow at another speed.</summary>
    /// <param name="flow">Flow now, any unit.</param>
    /// <param name="speedRatio">New speed over speed now.</param>
    /// <returns>Flow, same unit.</returns>
    public static double Flow(double flow, double speedRatio) => flow * speedRatio;

    /// <summary>Static pressure at another speed.</summary>
    /// <param name="pressure">Pressure now, any unit.</param>
    /// <param name="speedRatio">New speed over speed now.</param>
    /// <returns>Pressure, same unit.</returns>
    public static double Pressure(double pressure, double speedRatio) => pressure * speedRatio * speedRatio;

    /// <summary>Shaft power at another speed.</summary>
    /// <param name="power">Power now, any unit.</param>
    /// <param name="speedRatio">New speed over speed now.</param>
    /// <returns>Power, same unit.</returns>
    public static double Power(double power, double speedRatio) => power * speedRatio * speedRatio * speedRatio;

    /// <summary>Flow at another static pressure of the same system.</summary>
    /// <param name="flow">Flow now, any unit.</param>
    /// <param name="pressureRatio">New static pressure over the pressure now.</param>
    /// <returns>Flow, same unit.</returns>
    public static double FlowAtPressure(double flow, double pressureRatio) => flow * Math.Sqrt(pressureRatio);
}
