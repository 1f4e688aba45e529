using Commission.Fluids;
using Commission.Messages;

namespace Commission.Checks.Kernel;

/// <summary>The refrigerant of the circuit: what is published about it, and its equations, loaded when something asks for them.</summary>
internal sealed class CircuitRefrigerant : IAnalysis<CircuitRefrigerant>
{
    private readonly Lazy<Refrigerant?> _fluid;

    private CircuitRefrigerant(string written)
    {
        Written = written;
        Info = RefrigerantCatalogue.Find(written);
        _fluid = new Lazy<Refrigerant?>(() => Info is { IsComputable: true } info ? Refrigerant.Load(info.Designation) : null);
    }

    /// <summary>The name as the job writes it.</summary>
    public string Written { get; }

    /// <summary>What is published about it; null for a name nobody knows, which the job reader has refused before.</summary>
    public RefrigerantInfo? Info { get; }

    /// <summary>The designation as the record prints it.</summary>
    public string Designation => Info?.Designation ?? Written;

    /// <summary>Its equations; null when it cannot be computed, and then <see cref="WhyNot"/> says why.</summary>
    public Refrigerant? Fluid => _fluid.Value;

    /// <summary>Why it cannot be computed; null when it can.</summary>
    public Message? WhyNot => Info is null ? KernelMessages.RefrigerantUnknown(new(Written)) : Info.LacksEquationOf is { } gas ? RefrigerantMessages.NoEquation(new(gas)) : null;

    /// <summary>Whether the equations were loaded for this job.</summary>
    public bool IsLoaded => _fluid.IsValueCreated;

    /// <inheritdoc/>
    public static CircuitRefrigerant Create(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return new CircuitRefrigerant(context.Job.Equipment.Refrigerant.Value);
    }
}
