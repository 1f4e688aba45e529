using Commission.Measurement.Corrections;
using Commission.Measurement.Decisions;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using MathNet.Numerics.Distributions;

namespace Commission.Measurement.Tests;

/// <summary>Words of the examples: tolerances with one side, results that were observed together, the numbers of a correction.</summary>
internal static class Helpers
{
    extension(Tolerance)
    {
        public static Tolerance AtLeast(double lower) => new(lower, null);

        public static Tolerance AtMost(double upper) => new(null, upper);

        public static Tolerance Within(double lower, double upper) => new(lower, upper);

        public static Tolerance Around(double target, double halfWidth) => new(target - halfWidth, target + halfWidth);
    }

    extension(CorrectionPrinter)
    {
        /// <summary>Prints in two units, one decimal more for a difference.</summary>
        public static CorrectionPrinter For(Unit value, Unit difference, int decimals) => new(
            si => QuantityWriter.Of(si, value, decimals),
            si => QuantityWriter.Of(si, difference, decimals + 1));
    }

    /// <summary>A message as a reader in English has it.</summary>
    public static string Said(this Message? message) => message is null ? "" : new MessageWriter(MessageCatalogue.BuiltIn, QuantityWriter.Instance).Format(message, Language.English);

    /// <summary>Correlation coefficient by the causes two results share (GUM 5.2.2).</summary>
    public static double CorrelationWith(this Uncertain one, Uncertain other)
    {
        var shared = one.Budget.Join(other.Budget, l => l.Cause, l => l.Cause, (a, b) => a.Contribution * b.Contribution, ReferenceEqualityComparer.Instance).Sum();
        return shared / (one.StandardUncertainty * other.StandardUncertainty);
    }

    /// <summary>Means of quantities that were observed together (GUM 5.2.3): each set of simultaneous observations is a cause that moves all the means.</summary>
    public static Uncertain[] SimultaneousMeans(params double[][] series)
    {
        var n = series[0].Length;
        var sets = Enumerable.Range(1, n).Select(k => new RootCause($"set {k}".Plain(), "".Plain(), 1)).ToArray();
        var scale = 1 / Math.Sqrt(n * (n - 1.0));
        return [.. series.Select(values => Uncertain.From(values.Average(), [.. sets.Select((set, k) => set * ((values[k] - values.Average()) * scale))]))];
    }

    /// <summary>Two-sided quantile of Student's t.</summary>
    public static double Quantile(double probability, double degreesOfFreedom) => double.IsInfinity(degreesOfFreedom)
        ? Normal.InvCDF(0, 1, (1 + probability) / 2)
        : StudentT.InvCDF(0, 1, degreesOfFreedom, (1 + probability) / 2);
}

/// <summary>Runs a computation many times with drawn errors (JCGM 101).</summary>
internal static class MonteCarlo
{
    public static MonteCarloResult Run(Func<IUncertaintyScope, Uncertain> model, Random random, int trials)
    {
        var scope = new SamplingScope(random);
        return MonteCarloResult.Of(Enumerable.Range(0, trials).Select(_ =>
        {
            scope.NextTrial();
            return model(scope).Value;
        }));
    }
}

/// <summary>Words of a test as a message.</summary>
internal static class PlainWords
{
    public static Message Plain(this string words) => CommonMessages.AsWritten(new(words));
}
