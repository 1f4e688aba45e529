using System.Collections.Immutable;
using Commission.Checks.Findings;
using Commission.Checks.Readings;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;

namespace Commission.Checks.Charge;

/// <summary>
/// Air before charge: a charge set on low airflow is a wrong charge. Airflow counts as shown by a measurement or by the temperature
/// split; filter, coil, panels and blower speed by the job's own words.
/// </summary>
internal sealed class ChargePrerequisites : IChargeGate
{
    private readonly AirSide? air;
    private readonly ImmutableArray<CorrectedReading> readings;
    private readonly ImmutableArray<Records.Findings.ReadingUse> uses;

    private ChargePrerequisites(AirSide? air, AirflowShown? airflow, ImmutableArray<Prerequisite> all, ImmutableArray<CorrectedReading> readings, ImmutableArray<Records.Findings.ReadingUse> uses)
    {
        this.air = air;
        this.readings = readings;
        this.uses = uses;
        Airflow = airflow;
        All = all;
    }

    /// <summary>The airflow with its limit; null when the job does not show it.</summary>
    public AirflowShown? Airflow { get; }

    /// <summary>Steady running and the running condition, on which it depends whether a temperature split counts.</summary>
    private ChargeGates? SplitCounts { get; init; }

    /// <summary>Whether the air runs through ducts, so that its flow has to be shown.</summary>
    public bool NeedsAirflow { get; private init; }

    /// <summary>Everything asked for.</summary>
    public ImmutableArray<Prerequisite> All { get; }

    /// <inheritdoc/>
    public string? Block => All.Any(p => p.Shown == false) ? $"{string.Join(", ", All.Where(p => p.Shown == false).Select(p => p.Otherwise))}: the air comes before the charge" : null;

    /// <inheritdoc/>
    public string? Todo => Block is null ? null : "Put the air side right first, let the system settle, then read again.";

    /// <inheritdoc/>
    public string? Reservation
    {
        get
        {
            var missing = All.Where(p => p.Shown is null).Select(p => p.What).ToArray();
            string?[] open = [missing.Length == 0 ? null : $"not shown that {Joined(missing)}", Airflow?.Reservation];
            var words = string.Join("; ", open.OfType<string>());
            return words.Length == 0 ? null : words;
        }
    }

    /// <summary>Looks at the air side of a job whose charge is judged by readings.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="row">The readings; null when there are none in cooling.</param>
    /// <returns>What is shown; null for a cold room, where air has other measures.</returns>
    public static ChargePrerequisites? Of(CheckContext context, ChargeRow? row)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.IsRefrigeration)
            return null;
        var equipment = context.Job.Equipment;
        var side = context.Job.Air;
        var ducted = equipment.Ducted?.Value ?? equipment.System.Value is SystemKind.Split or SystemKind.HeatPump or SystemKind.Packaged;
        var all = ImmutableArray.CreateBuilder<Prerequisite>();
        var parts = ImmutableArray.CreateBuilder<CorrectedReading>();
        AirflowShown? airflow = null;
        var facts = ImmutableArray<Records.Findings.ReadingUse>.Empty;
        if (ducted)
        {
            airflow = AirflowShown.Of(context, row);
            if (airflow is not null)
            {
                parts.AddRange(airflow.Readings);
                facts = airflow.Uses;
            }

            all.Add(new Prerequisite("the airflow is enough", airflow is null ? null : !airflow.IsLow, airflow?.Words ?? ""));
        }

        all.Add(Clean("the filter is clean", side?.Filter, "the filter is dirty"));
        all.Add(Clean("the indoor coil is clean", side?.Coil, "the indoor coil is dirty"));
        all.Add(new Prerequisite("the panels were on", side?.PanelsOn?.Value, "a panel was off"));
        all.Add(new Prerequisite("the blower ran at its cooling speed", side?.BlowerAtCoolingSpeed?.Value, "the blower did not run at its cooling speed"));
        return new ChargePrerequisites(side, airflow, all.ToImmutable(), parts.ToImmutable(), facts)
        {
            NeedsAirflow = ducted,
            SplitCounts = ducted && row is not null ? new ChargeGates(row.Settling, RunningCondition.Of(context, row)) : null,
        };
    }

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding)
    {
        finding
            .Use("filter", air?.Filter)
            .Use("indoor coil", air?.Coil)
            .Use("panels on", air?.PanelsOn)
            .Use("blower at cooling speed", air?.BlowerAtCoolingSpeed);
        SplitCounts?.NameIn(finding);
        foreach (var use in readings.SelectMany(r => r.Uses).Concat(uses))
            finding.Use(use);
    }

    private static Prerequisite Clean(string what, Given<Cleanliness>? seen, string otherwise) => new(
        what,
        seen?.Value switch
        {
            Cleanliness.Clean or Cleanliness.New or Cleanliness.None => true,
            Cleanliness.Dirty => false,
            _ => null,
        },
        otherwise);

    private static string Joined(IEnumerable<string> words)
    {
        var list = words.ToArray();
        return list.Length == 1 ? list[0] : $"{string.Join(", ", list[..^1])} and {list[^1]}";
    }
}
