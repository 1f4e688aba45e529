using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;

namespace Commission.Checks.Air;

/// <summary>
/// How far the perfect-gas relations of moist air may be from real moist air. One cause for the humidity ratio and one for the enthalpy,
/// shared by every state of the job: between two states of like humidity most of it cancels, as it does in nature.
/// </summary>
internal sealed class MoistAirForm : IAnalysis<MoistAirForm>
{
    private MoistAirForm(Uncertain humidityRatio, Uncertain enthalpy)
    {
        HumidityRatio = humidityRatio;
        Enthalpy = enthalpy;
    }

    /// <summary>Error of a humidity ratio as a share of it; zero with its doubt.</summary>
    public Uncertain HumidityRatio { get; }

    /// <summary>Error of an enthalpy, J for each kilogram of dry air; zero with its doubt.</summary>
    public Uncertain Enthalpy { get; }

    /// <inheritdoc/>
    public static MoistAirForm Create(CheckContext context)
    {
        const string Source = "perfect-gas relations against real moist air, largest difference";
        var ratio = RootCause.FromHalfWidth("moist air: form of the humidity ratio", Source, context.Assume("assumption.moist-air.humidity-ratio"));
        var enthalpy = RootCause.FromHalfWidth("moist air: form of the enthalpy", Source, context.Assume("assumption.moist-air.enthalpy"));
        return new MoistAirForm(
            context.Scope.Reading(0, 1.0 * context.Causes.Enter(ratio, DisplayKind.Percentage)),
            context.Scope.Reading(0, 1.0 * context.Causes.Enter(enthalpy, DisplayKind.Enthalpy)));
    }
}
