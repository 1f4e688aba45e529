using System.Collections.Frozen;
using Commission.Messages;

namespace Commission.Checks.Recording;

/// <summary>How well a source is known; a source of several is known as badly as its worst.</summary>
internal enum SourceMark
{
    /// <summary>The document was read.</summary>
    Published,

    /// <summary>The document was not at hand.</summary>
    FromMemory,

    /// <summary>There is no document.</summary>
    CommonPractice,
}

/// <summary>The marks of the sources that formulas name: a citation carries its mark, and the sources in words stand here.</summary>
internal static class SourceMarks
{
    private static readonly FrozenDictionary<string, SourceMark> Worded = new[]
    {
        (AirMessages.StateSource, SourceMark.FromMemory),
        (CircuitMessages.WetBulbSource, SourceMark.FromMemory),
        (EvacuationMessages.PullBandSource, SourceMark.FromMemory),
        (FormulasMessages.WaterHeatSource, SourceMark.FromMemory),
        (FormulasMessages.UnbalanceSource, SourceMark.FromMemory),
        (FormulasMessages.VaporViscositySource, SourceMark.FromMemory),
        (KernelMessages.StandardAtmosphereSource, SourceMark.FromMemory),
        (VacuumHoldMessages.HumidityHeatLoss, SourceMark.FromMemory),
        (VacuumHoldMessages.LeakSource, SourceMark.FromMemory),
        (VacuumHoldMessages.WitnessSource, SourceMark.FromMemory),
        (AirMessages.BalanceShareSource, SourceMark.CommonPractice),
        (CircuitMessages.CommonPractice, SourceMark.CommonPractice),
        (CommonMessages.CommonPracticeNoSource, SourceMark.CommonPractice),
        (FormulasMessages.SuperheatSource, SourceMark.CommonPractice),
        (KernelMessages.ClampSource, SourceMark.CommonPractice),
        (RefrigerantMessages.LabelStepSource, SourceMark.CommonPractice),
        (VacuumHoldMessages.ShapeDefault, SourceMark.CommonPractice),
        (VacuumHoldMessages.ShapeSimulated, SourceMark.CommonPractice),
    }.ToFrozenDictionary(pair => pair.Item1.Id, pair => pair.Item2, StringComparer.Ordinal);

    /// <summary>The mark of a source.</summary>
    /// <param name="source">The message, or a value inside one.</param>
    public static SourceMark Of(MessageValue? source) => source switch
    {
        Message message when Worded.TryGetValue(message.Id, out var mark) => mark,
        Message { Phase: "common", Name: "cited" } cited => OfCitation(((ChoiceValue)cited.Find("mark")!).Option),
        Message message => Worst(message.Values.Select(value => value.Value)),
        ListValue list => Worst(list.Items),
        _ => SourceMark.Published,
    };

    /// <summary>The mark as a record keeps it.</summary>
    /// <param name="mark">The mark.</param>
    public static string Word(SourceMark mark) => mark switch
    {
        SourceMark.CommonPractice => "common practice",
        SourceMark.FromMemory => "from memory",
        _ => "published",
    };

    private static SourceMark OfCitation(string option) => option switch
    {
        "common-practice" => SourceMark.CommonPractice,
        "from-memory" or "unconfirmed" or "computed-from-memory" => SourceMark.FromMemory,
        _ => SourceMark.Published,
    };

    private static SourceMark Worst(IEnumerable<MessageValue> values) => values.Select(Of).DefaultIfEmpty(SourceMark.Published).Max();
}
