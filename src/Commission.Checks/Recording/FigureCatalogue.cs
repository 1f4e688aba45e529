using Commission.Checks.Air;
using Commission.Checks.Charge;
using Commission.Checks.Evacuation;
using Commission.Checks.Instruments;
using Commission.Checks.PressureTest;

namespace Commission.Checks.Recording;

/// <summary>Every kind of figure, one line each, in the order of the record.</summary>
public static class FigureCatalogue
{
    /// <summary>All sources of figures.</summary>
    public static IReadOnlyList<IFigureSource> All { get; } =
    [
        new InstrumentResidualsFigure(),
        new NitrogenFigure(),
        new PullDownFigure(),
        new HoldFigure(),
        new ChargeTimeFigure(),
        new PressureEnthalpyFigure(),
        new PsychrometricFigure(),
    ];
}
