using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Decisions;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>Every mass of refrigerant in and out, and whether scale and cylinder say the same.</summary>
internal sealed class LedgerCheck : ICheck
{
    public string Id => "refrigerant.ledger";

    public string Phase => Phases.Refrigerant;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var ledger = context.Get<RefrigerantLedger>();
        if (ledger.Movements.IsEmpty)
            yield break;
        var finding = context.Finding(this);
        foreach (var movement in ledger.Movements)
            movement.Mass?.UseIn(finding);
        finding.Use(RefrigerantMessages.ReadingCylinder, context.Job.Recovery?.Cylinder);
        foreach (var weighing in context.Job.Charging?.Scale ?? [])
            finding.Use(RefrigerantMessages.ReadingCylinder, weighing.Cylinder);
        var unweighed = ledger.Movements.Where(m => m.Mass is null).ToList();
        if (unweighed.Count > 0)
        {
            yield return finding.NotEvaluated(RefrigerantMessages.LedgerMassNotWritten(Names(unweighed, ListJoin.Comma)), RefrigerantMessages.LedgerMassNotWrittenNext);
            yield break;
        }

        var present = context.Present;
        foreach (var use in context.Get<PlateRefrigerant>().Uses)
            finding.Use(use);
        double Total(int sign) => ledger.Movements.Where(m => m.Sign == sign).Sum(m => m.Mass!.Value.Value);
        if (ledger.Movements.Where(m => m.Cylinder is null).DistinctBy(m => m.Name).ToList() is { Count: > 0 } unnamed)
            finding.Remark(RefrigerantMessages.LedgerNoCylinder(Names(unnamed, ListJoin.And)));
        Message said;
        if (ledger.Movements.Select(m => m.Refrigerant).Distinct(StringComparer.Ordinal).Count() > 1)
        {
            said = RefrigerantMessages.LedgerByGas(ByGas(present, ledger, 1), ByGas(present, ledger, -1));
        }
        else
        {
            said = RefrigerantMessages.LedgerInAndOut(present.InMessage(Total(1), DisplayKind.Mass), present.InMessage(Total(-1), DisplayKind.Mass), present.InMessage(ledger.Net!.Value, DisplayKind.Mass));
            finding.Step(
                "m_net", RefrigerantMessages.LedgerStepNet, RefrigerantMessages.LedgerStepNetFormula,
                $"{present.Text(Total(1), DisplayKind.Mass)} − {present.Text(Total(-1), DisplayKind.Mass)}", present.Text(ledger.Net, DisplayKind.Mass), RefrigerantMessages.StepDefinition);
        }

        if (ledger.Net is { } net)
            finding.Measure(net, DisplayKind.Mass);
        if (Worst(context, ledger, finding) is not { } worst || context.Limits.Find(LimitIds.EvidenceAgreement) is not { Upper: { } most } limit)
        {
            yield return finding.Decide(true).Say(said).Build();
            yield break;
        }

        finding.Decide(worst.Error <= most.Si, Agreed(context, limit));
        yield return finding.Conclude(
            CommonMessages.TwoSentences(said, RefrigerantMessages.LedgerAgrees),
            CommonMessages.TwoSentences(said, RefrigerantMessages.LedgerDiffers(new(worst.Cylinder), present.InMessage(worst.Difference, DisplayKind.Mass))),
            this.WhenItFails());
    }

    private static ListValue Names(IEnumerable<Movement> movements, ListJoin join) => new([.. movements.Select(m => m.Name)], join);

    private static ListValue ByGas(Presentation present, RefrigerantLedger ledger, int sign)
    {
        MessageValue[] masses =
        [
            .. ledger.Movements.Where(m => m.Sign == sign).GroupBy(m => m.Refrigerant, StringComparer.Ordinal)
                .Select(gas => RefrigerantMessages.LedgerMassOf(present.InMessage(gas.Sum(m => m.Mass!.Value.Value), DisplayKind.Mass), new NameValue(gas.Key))),
        ];
        return new ListValue(masses.Length == 0 ? [RefrigerantMessages.LedgerNothing] : [.. masses]);
    }

    // The weighing of a movement against the gross masses of its cylinder; the pair that agrees least.
    private static (string Cylinder, double Error, double Difference)? Worst(CheckContext context, RefrigerantLedger ledger, FindingBuilder finding)
    {
        (string Cylinder, double Error, double Difference)? worst = null;
        foreach (var cylinder in context.Job.Cylinders)
        {
            var moved = ledger.WeighedBy(cylinder);
            if (moved.IsEmpty || ledger.LeftBy(cylinder) is not { } left)
                continue;
            left.UseIn(finding);
            finding.Use(RefrigerantMessages.ReadingCylinder, cylinder.Id);
            var booked = moved.Select(m => m.Sign * m.Mass!.Value).Aggregate((a, b) => a + b);
            // A number of which nothing is doubtful must be met exactly, but not to the last bit of a double.
            var agreement = Agreement.Of(left.Value + Grain(context, cylinder), booked);
            finding.Step(
                "E_n", RefrigerantMessages.LedgerStepAgreement(new(cylinder.Id.Value)), "|a − b| / U(a − b)",
                $"|{context.Present.Text(left.Value.Value, DisplayKind.Mass)} − {context.Present.Text(booked.Value, DisplayKind.Mass)}| / {context.Present.Text(agreement.Difference.Expanded, DisplayKind.Mass)}",
                agreement.NormalizedError.ToString("0.00", CultureInfo.InvariantCulture), Cited.FromMemory("ISO 13528"));
            if (worst is null || agreement.NormalizedError > worst.Value.Error)
                worst = (cylinder.Id.Value, agreement.NormalizedError, Math.Abs(agreement.Difference.Value));
        }

        return worst;
    }

    private static LimitStatement Agreed(CheckContext context, Limits.Limit limit)
    {
        var state = context.State(limit);
        return state with { Text = context.Present.Text(RefrigerantMessages.LedgerLimit(new(state.Text))) };
    }

    // Cylinders are entered by the tenth of a pound, and masses by the ounce, whatever the scale shows: the last digit written is the least that counts.
    private static Uncertain Grain(CheckContext context, Cylinder cylinder) => context.Scope.Reading(
        0,
        [
            1.0 * RootCause.FromHalfWidth(RefrigerantMessages.LedgerRounding, RefrigerantMessages.LedgerRoundingSource, 0.0005),
            .. new[] { cylinder.Before, cylinder.After }.Select(m => m?.Step).OfType<double>().Select(step => 1.0 * RootCause.FromResolution(RefrigerantMessages.LedgerLastDigit, RefrigerantMessages.LedgerLastDigitSource, step)),
        ]);
}

/// <summary>Every movement of refrigerant, cylinder by cylinder.</summary>
internal sealed class RefrigerantLedgerTable : ITableSource
{
    public IEnumerable<RecordTable> Tables(CheckContext context)
    {
        var ledger = context.Get<RefrigerantLedger>();
        if (ledger.Movements.IsEmpty)
            yield break;
        var present = context.Present;
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        foreach (var movement in ledger.Movements)
        {
            var cylinder = ledger.CylinderOf(movement);
            var mass = movement.Mass is { } m ? present.Text(m.Value, DisplayKind.Mass) : present.Text(RefrigerantMessages.LedgerNotWeighed);
            rows.Add([movement.Time, present.Text(movement.Name), movement.Cylinder ?? cylinder?.Id.Value ?? "", Contents(cylinder), movement.Weighing?.Before.Text ?? "", movement.Weighing?.After.Text ?? "", movement.Sign > 0 ? mass : "", movement.Sign < 0 ? mass : ""]);
        }

        yield return new RecordTable
        {
            Id = "refrigerant-ledger",
            Phase = Phases.Refrigerant,
            Title = present.Text(RefrigerantMessages.LedgerTitle),
            Note = ledger.Net is { } net ? present.Text(RefrigerantMessages.LedgerNet(present.InMessage(net, DisplayKind.Mass))) : "",
            Columns =
            [
                new TableColumn(present.Text(RefrigerantMessages.LedgerColumnTime)),
                new TableColumn(present.Text(RefrigerantMessages.LedgerColumnWhat)),
                new TableColumn(present.Text(RefrigerantMessages.LedgerColumnCylinder)),
                new TableColumn(present.Text(RefrigerantMessages.LedgerColumnContents)),
                new TableColumn(present.Text(RefrigerantMessages.LedgerColumnBefore), "", ColumnAlign.Right),
                new TableColumn(present.Text(RefrigerantMessages.LedgerColumnAfter), "", ColumnAlign.Right),
                new TableColumn(present.Text(RefrigerantMessages.LedgerColumnIn), "", ColumnAlign.Right),
                new TableColumn(present.Text(RefrigerantMessages.LedgerColumnOut), "", ColumnAlign.Right),
            ],
            Rows = rows.ToImmutable(),
        };
    }

    private static string Contents(Cylinder? cylinder) => cylinder is null ? "" : string.Join(", ", new[] { cylinder.Refrigerant?.Value, cylinder.Contents?.Text, cylinder.Batch?.Value }.OfType<string>());
}
