using BenchmarkDotNet.Attributes;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;

namespace Commission.Benchmarks;

/// <summary>Text of messages. Targets: a sentence with five values 2 µs, a catalogue read within 5 ms of a cold start.</summary>
[MemoryDiagnoser]
public class MessagesBenchmarks
{
    private readonly MessageWriter _writer = new(MessageCatalogue.BuiltIn, QuantityWriter.Instance);
    private Message _sentence = null!;

    /// <summary>Makes a sentence.</summary>
    [GlobalSetup]
    public void Setup()
    {
        var micron = UnitTable.Find("micron", Dimension.VacuumLevel)!;
        _sentence = EvacuationMessages.HoldFailedCrossed(
            QuantityWriter.Of(40, micron, 0), QuantityWriter.Of(200, micron, 0), new DurationValue(600), QuantityWriter.Of(133, micron, 0), new DurationValue(430));
    }

    /// <summary>A sentence with three quantities and two spans.</summary>
    [Benchmark]
    public string Sentence() => _writer.Format(_sentence, Language.English);

    /// <summary>The largest catalogue, read anew.</summary>
    [Benchmark]
    public string Catalogue() => new MessageWriter(new MessageCatalogue(MessageCatalogue.Embedded), QuantityWriter.Instance).Format(EvacuationMessages.HoldNoLimit, Language.English);
}
