using Commission.Fluids.Helmholtz;
using Commission.Fluids.Saturation;
using Xunit;

namespace Commission.Fluids.Tests.Saturation;

/// <summary>
/// Saturation of van der Waals' fluid, whose coexistence curve is known in closed form: with y half the entropy of evaporation in units of R,
/// f = (y cosh y − sinh y)/(sinh y cosh y − y) and g = 1 + 2 f cosh y + f² give T/Tc = 27 f (f + cosh y)/(4 g²), p/pc = 27 f² (1 − f²)/g² and
/// ρ/ρc = 3 f e^(±y)/(1 + f e^(±y)) (J. Lekner, Am. J. Phys. 50 (1982) 161, from memory; its limit at y = 0 is the critical point).
/// Its auxiliary equations are ours to spoil, and what is asked of the equation is written down, so that every way around a bad start is seen.
/// </summary>
public sealed class PureSaturationTests
{
    private const double R = 8.0;
    private const double Tc = 400;
    private const double Rhoc = 5000;
    private const double Pc = 0.375 * Rhoc * R * Tc;

    /// <summary>Half the entropy of evaporation over R: from 0.995 to 0.49 of the critical temperature.</summary>
    public static readonly TheoryData<double> HalfEntropies = [0.1, 0.2, 0.3, 0.5, 0.7, 0.9, 1.1, 1.3, 1.5, 1.7, 1.9, 2.1, 2.3];

    [Theory]
    [MemberData(nameof(HalfEntropies))]
    public void Both_searches_find_the_point_of_the_closed_form(double y)
    {
        var exact = Point.At(y);
        var solver = new PureSaturation(Fluid(new Log()));
        Assert.True(solver.AtTemperature(exact.Temperature));
        exact.Same(solver);
        solver = new PureSaturation(Fluid(new Log()));
        Assert.True(solver.AtPressure(exact.Pressure));
        Assert.Equal(exact.Temperature, solver.Temperature, 1e-9 * Tc);
        exact.Same(solver);
    }

    [Fact]
    public void A_search_costs_few_evaluations()
    {
        int pairs = 0, isotherms = 0;
        foreach (var row in HalfEntropies)
        {
            var log = new Log();
            Assert.True(new PureSaturation(Fluid(log)).AtPressure(Point.At(row.Data).Pressure));
            pairs += log.Densities.Count / 2;
            isotherms += log.Starts.Count;
        }

        // 13 points: 3 or 4 isotherms each, of which all but the first start from the one before and want 2 to 4 pairs of densities.
        Assert.InRange(isotherms, 42, 44);
        Assert.InRange(pairs, 134, 136);
    }

    [Fact]
    public void One_solver_walks_any_way_along_the_curve()
    {
        var solver = new PureSaturation(Fluid(new Log()));
        foreach (var y in new[] { 2.1, 2.0, 0.2, 1.0, 0.15, 2.3, 0.95, 1.05, 1.0 })
        {
            Assert.True(solver.AtPressure(Point.At(y).Pressure));
            Point.At(y).Same(solver);
        }
    }

    [Theory]
    [InlineData(0.5, 1.05)] // too thin for a saturated vapor at that pressure
    [InlineData(0.979, 1.05)]
    [InlineData(0.981, 0.981)]
    [InlineData(1.3, 1.3)]
    [InlineData(4.49, 4.49)]
    [InlineData(4.51, 1.05)] // too dense
    public void A_vapor_density_that_contradicts_the_vapor_pressure_is_not_started_from(double written, double started)
    {
        var exact = Point.At(1.6);
        var ideal = exact.Pressure / (R * exact.Temperature);
        var log = new Log();
        var fluid = Fluid(log, pressure: Constant(exact.Pressure), liquid: Constant(0.98 * exact.Liquid), vapor: Constant(written * ideal));
        Assert.True(new PureSaturation(fluid).AtTemperature(exact.Temperature));
        Assert.Equal(0.98 * exact.Liquid, log.Starts[0].Liquid, 1e-9);
        Assert.Equal(started * ideal, log.Starts[0].Vapor, 1e-9);
    }

    [Theory]
    [InlineData(0.495, false)]
    [InlineData(0.505, true)]
    [InlineData(1.98, true)]
    [InlineData(2.02, false)]
    public void A_solution_off_the_vapor_pressure_by_a_factor_of_two_is_another_loop(double found, bool right)
    {
        var exact = Point.At(1.6);
        var log = new Log();
        Assert.Equal(right, new PureSaturation(Fluid(log, pressure: Constant(exact.Pressure / found))).AtTemperature(exact.Temperature));
        Assert.Equal(right ? 1 : 11, log.Starts.Count);
    }

    [Fact]
    public void Where_the_start_leads_nowhere_the_gap_between_the_phases_is_widened_step_by_step()
    {
        var exact = Point.At(0.4);
        var log = new Log();
        var solver = new PureSaturation(Fluid(log, pressure: Constant(exact.Pressure / 3)));
        Assert.False(solver.AtTemperature(exact.Temperature));
        Assert.Equal(11, log.Starts.Count);
        for (var step = 0; step < 10; step++)
        {
            var gap = (1.2 + 0.3 * step) * Math.Pow(1 - exact.Temperature / Tc, 0.325);
            Assert.Equal(Rhoc * (1 + gap), log.Starts[step + 1].Liquid, 1e-7);
            Assert.Equal(Rhoc * Math.Max(0.02, 1 - gap), log.Starts[step + 1].Vapor, 1e-7);
        }

        // Phases the wrong way round are no solution; the first gap finds it.
        log = new Log();
        solver = new PureSaturation(Fluid(log, pressure: Constant(exact.Pressure), liquid: Constant(exact.Vapor), vapor: Constant(exact.Liquid)));
        Assert.True(solver.AtTemperature(exact.Temperature));
        exact.Same(solver);
        Assert.Equal(2, log.Starts.Count);
    }

    [Fact]
    public void Equal_phases_are_no_solution()
    {
        var exact = Point.At(0.02);
        var log = new Log();
        var solver = new PureSaturation(Fluid(log, pressure: Constant(exact.Pressure), liquid: Constant(1.6 * Rhoc), vapor: Constant(1.6 * Rhoc)));
        Assert.True(solver.AtTemperature(exact.Temperature));
        Assert.True(log.Starts.Count > 1);
        Assert.InRange(solver.Liquid / solver.Vapor, 1.0001, 1.1);
    }

    [Fact]
    public void Inside_the_spinodal_the_densities_step_outward()
    {
        var exact = Point.At(0.9);
        var log = new Log();
        var solver = new PureSaturation(Fluid(log, liquid: Constant(1.2 * Rhoc), vapor: Constant(exact.Vapor), pressure: Constant(exact.Pressure)));
        Assert.True(solver.AtTemperature(exact.Temperature));
        exact.Same(solver);
        Assert.Equal(1.2 * 1.03 * Rhoc, log.Densities[2], 1e-6);
        Assert.Equal(exact.Vapor, log.Densities[3], 1e-6);

        log = new Log();
        var inside = 4 * exact.Pressure / (R * exact.Temperature);
        solver = new PureSaturation(Fluid(log, liquid: Constant(exact.Liquid), vapor: Constant(inside), pressure: Constant(exact.Pressure)));
        Assert.True(solver.AtTemperature(exact.Temperature));
        exact.Same(solver);
        Assert.Equal(exact.Liquid, log.Densities[2], 1e-6);
        Assert.Equal(0.9 * inside, log.Densities[3], 1e-6);
    }

    [Theory]
    [InlineData(0.15, 4.9, 2)] // 1.03 × 4.9 is above 5, five times the reducing density
    [InlineData(0.15, 4.8, 4)]
    public void A_liquid_that_runs_away_ends_the_search(double reducing, double reduced, int evaluations)
    {
        var exact = Point.At(1.6);
        var log = new Log();
        var liquid = Constant(reduced * reducing * Rhoc);
        new PureSaturation(Fluid(log, liquid: liquid, vapor: Constant(exact.Vapor), pressure: Constant(exact.Pressure), reducing: reducing)).AtTemperature(exact.Temperature);
        Assert.Equal(evaluations, log.Before(1));
    }

    [Theory]
    [InlineData(1.05e-12, 2)]
    [InlineData(1.20e-12, 4)]
    public void A_vapor_that_runs_away_ends_the_search(double reduced, int evaluations)
    {
        // Reduced by a density so large that 1e-12 of it lies in the middle of the two-phase region.
        var exact = Point.At(0.9);
        var log = new Log();
        var inside = 4 * exact.Pressure / (R * exact.Temperature);
        var vapor = Constant(inside);
        new PureSaturation(Fluid(log, liquid: Constant(exact.Liquid), vapor: vapor, pressure: Constant(exact.Pressure), reducing: inside / Rhoc / reduced)).AtTemperature(exact.Temperature);
        Assert.Equal(evaluations, log.Before(1));
    }

    // Newton's step from these starts at y = 1.6, as shares of the densities, worked outside the program: (−0.0610, 0.0354), (0.2207, 0.0251),
    // (0.2133, −0.5275), (0.0654, −0.5588) and (0.1942, −2.1054); then the two bounds.
    [Theory]
    [InlineData(1.1, 1, -0.0610, 0.0354)]
    [InlineData(0.9, 1, 0.1, 0.0114)]
    [InlineData(0.9, 1.5, 0.1, -0.2473)]
    [InlineData(0.95, 1.5, 0.0468, -0.4)]
    [InlineData(0.9, 2, 0.0369, -0.4)]
    public void A_step_changes_the_liquid_by_a_tenth_and_the_vapor_by_two_fifths_at_most(double liquid, double vapor, double liquidStep, double vaporStep)
    {
        var exact = Point.At(1.6);
        var log = new Log();
        var solver = new PureSaturation(Fluid(log, liquid: Constant(liquid * exact.Liquid), vapor: Constant(vapor * exact.Vapor), pressure: Constant(exact.Pressure)));
        Assert.True(solver.AtTemperature(exact.Temperature));
        exact.Same(solver);
        Assert.Equal(liquidStep, log.Densities[2] / log.Densities[0] - 1, 1e-4);
        Assert.Equal(vaporStep, log.Densities[3] / log.Densities[1] - 1, 1e-4);
    }

    [Theory]
    [InlineData(1.6, 0.15, 0.735, 0.1)] // the liquid runs away
    [InlineData(0.3, 1.1, 1.6, 1.6)] // both phases come out the same
    public void What_an_earlier_search_found_is_never_taken_for_an_answer(double y, double reducing, double liquid, double vapor)
    {
        var exact = Point.At(y);
        var log = new Log();
        var solver = new PureSaturation(Fluid(log, liquid: Constant(liquid * Rhoc), vapor: Constant(vapor * Rhoc), pressure: Constant(exact.Pressure), reducing: reducing));
        Assert.True(solver.AtTemperature(exact.Temperature));
        Assert.True(log.Starts.Count > 1);
        Assert.True(solver.AtTemperature(exact.Temperature + 1));
        Assert.Equal(exact.Temperature + 1, solver.Temperature);
    }

    [Fact]
    public void The_first_temperature_is_that_of_the_auxiliary_vapor_pressure()
    {
        // One that is nearly straight in 1/T, and one that is not: the search by secants takes more steps there.
        foreach (var auxiliary in new[] { Bent(1), new Ancillary(AncillaryForm.ExponentialOfReduced, Tc, Pc, [-4, 3], [1, 1.5]) })
        {
            for (var share = 0.55; share < 0.999; share += 0.02)
            {
                var log = new Log();
                new PureSaturation(Fluid(log, pressure: auxiliary)).AtPressure(auxiliary.At(share * Tc));
                Assert.Equal(share, log.Temperatures[0] / Tc, 1e-6);
            }
        }

        // Close to the critical point and below the range the search starts at the ends.
        var end = new Log();
        new PureSaturation(Fluid(end)).AtPressure(0.99999999 * Pc);
        Assert.Equal(0.99999, end.Temperatures[0] / Tc, 1e-12);
        end = new Log();
        Assert.False(new PureSaturation(Fluid(end)).AtPressure(1e-3 * Pc));
        Assert.Equal(0.98 * Lowest, end.Temperatures[0], 1e-9);
        Assert.All(end.Temperatures, t => Assert.True(t > 0.9799999 * Lowest));
    }

    [Theory]
    [InlineData(1.45)] // the auxiliary pressure is too high: the search comes from below
    [InlineData(0.7)] // too low: from above
    public void A_wrong_auxiliary_pressure_only_costs_steps(double factor)
    {
        foreach (var row in HalfEntropies)
        {
            var exact = Point.At(row.Data);
            var log = new Log();
            var solver = new PureSaturation(Fluid(log, pressure: Bent(factor)));
            Assert.True(solver.AtPressure(exact.Pressure), $"{row.Data}");
            exact.Same(solver);
            Assert.All(log.Temperatures, t => Assert.InRange(t, 0.98 * Lowest, Tc));
            Assert.InRange(log.Starts.Count, 2, 25);
        }
    }

    [Fact]
    public void A_pressure_whose_temperature_has_no_solution_has_none() =>
        Assert.False(new PureSaturation(Fluid(new Log(), pressure: Bent(5))).AtPressure(Point.At(1).Pressure));

    private const double Lowest = 0.5 * Tc;

    private static EquationOfState Fluid(Log log, Ancillary? pressure = null, Ancillary? liquid = null, Ancillary? vapor = null, double reducing = 1.1)
    {
        const double ReducingTemperature = 1.25 * Tc;
        log.Temperature = ReducingTemperature;
        log.Density = reducing * Rhoc;
        return new EquationOfState
        {
            Designation = "van der Waals",
            ChemicalName = "van der Waals' fluid",
            Papers = [],
            GasConstant = R,
            MolarMass = 0.1,
            LowestTemperature = Lowest,
            HighestTemperature = 2 * Tc,
            HighestPressure = 10 * Pc,
            CriticalTemperature = Tc,
            CriticalPressure = Pc,
            CriticalDensity = Rhoc,
            ReducingTemperature = ReducingTemperature,
            ReducingDensity = reducing * Rhoc,
            AcentricFactor = -0.302,
            Ideal = [],
            Residual = new HelmholtzFunction([new VanDerWaals(reducing, Tc / ReducingTemperature), log]),
            VaporPressure = pressure ?? Bent(1),
            LiquidDensity = liquid ?? new Ancillary(AncillaryForm.Linear, Tc, Rhoc, [2, 0.4], [0.5, 1]),
            VaporDensity = vapor ?? new Ancillary(AncillaryForm.ExponentialOfReduced, Tc, Rhoc, [-2, -1.4], [0.5, 1]),
        };
    }

    private static Ancillary Constant(double value) => new(AncillaryForm.Linear, Tc, value, [], []);

    /// <summary>ln p/pc = (Tc/T)(−4 θ + n θ^1.5): slope 4 at the critical point as van der Waals' fluid has, times a factor there.</summary>
    private static Ancillary Bent(double factor) => new(AncillaryForm.ExponentialOfReduced, Tc, factor * Pc, [-4, 0.5], [1, 1.5]);

    private sealed record Point(double Temperature, double Pressure, double Liquid, double Vapor, double Slope)
    {
        public static Point At(double y)
        {
            double sinh = Math.Sinh(y), cosh = Math.Cosh(y);
            var f = (y * cosh - sinh) / (sinh * cosh - y);
            var g = 1 + 2 * f * cosh + f * f;
            var liquid = 3 * Rhoc * f * Math.Exp(y) / (1 + f * Math.Exp(y));
            var vapor = 3 * Rhoc * f * Math.Exp(-y) / (1 + f * Math.Exp(-y));
            return new Point(Tc * 27 * f * (f + cosh) / (4 * g * g), Pc * 27 * f * f * (1 - f * f) / (g * g), liquid, vapor, 2 * y * R / (1 / vapor - 1 / liquid));
        }

        // The closed form itself loses digits toward the critical point, where f is a quotient of small differences.
        public void Same(PureSaturation found)
        {
            Assert.Equal(Temperature, found.Temperature, 1e-9 * Tc);
            Assert.Equal(Pressure, found.Pressure, 1e-9 * Pressure);
            Assert.Equal(Liquid, found.Liquid, 1e-7 * Liquid);
            Assert.Equal(Vapor, found.Vapor, 1e-7 * Vapor);
            Assert.Equal(Slope, found.Slope, 1e-7 * Slope);
        }
    }

    /// <summary>α = −ln(1 − b) − 9/8 τc δc with b = δc/3; δc and τc refer to the critical point, not to the reducing constants.</summary>
    private sealed class VanDerWaals(double density, double temperature) : ResidualTerms
    {
        public override int WorkLength => 1;

        public override void Prepare(double tau, double lnTau, Span<double> work) => work[0] = 1.125 * tau * temperature;

        public override void Add(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum)
        {
            AddVolume(table, tau, work, ref sum);
            sum.T -= work[0] * table.Delta * density;
            sum.DT -= work[0] * table.Delta * density;
        }

        public override void AddVolume(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum)
        {
            var delta = table.Delta * density;
            sum.A += -Math.Log(1 - delta / 3) - work[0] * delta;
            sum.D += delta / (3 - delta) - work[0] * delta;
            sum.DD += delta * delta / ((3 - delta) * (3 - delta));
        }
    }

    /// <summary>Adds nothing to the equation and writes down what it is asked for.</summary>
    private sealed class Log : ResidualTerms
    {
        private readonly List<int> _isotherms = [];

        /// <summary>K; the reducing temperature of the equation.</summary>
        public double Temperature { private get; set; }

        /// <summary>mol/m³; the reducing density of the equation.</summary>
        public double Density { private get; set; }

        /// <summary>K of each isotherm.</summary>
        public List<double> Temperatures { get; } = [];

        /// <summary>mol/m³, liquid and vapor in turn.</summary>
        public List<double> Densities { get; } = [];

        /// <summary>The first two densities of each isotherm.</summary>
        public List<(double Liquid, double Vapor)> Starts => [.. _isotherms.Where(i => i + 1 < Densities.Count).Select(i => (Densities[i], Densities[i + 1]))];

        public override int WorkLength => 0;

        /// <summary>How many densities were asked for before an isotherm began.</summary>
        public int Before(int isotherm) => isotherm < _isotherms.Count ? _isotherms[isotherm] : Densities.Count;

        public override void Prepare(double tau, double lnTau, Span<double> work)
        {
            _isotherms.Add(Densities.Count);
            Temperatures.Add(Temperature / tau);
            Assert.Equal(Math.Log(tau), lnTau, 1e-15);
        }

        public override void Add(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum)
        {
        }

        public override void AddVolume(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum) => Densities.Add(table.Delta * Density);
    }
}
