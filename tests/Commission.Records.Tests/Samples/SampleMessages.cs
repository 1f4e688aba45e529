using Commission.Messages;

namespace Commission.Records.Tests.Samples;

/// <summary>Messages with a value of every kind, for tests of files. Their names stand in no catalogue.</summary>
internal static class SampleMessages
{
    public static Message EveryKind { get; } = Message.Of("sample", "every-kind",
    [
        new("level", new QuantityValue(101325.0 / 760, "pressure", "micron", 1000, 0)),
        new("mass", new QuantityValue(5.103, "mass", "oz", 180, 1) { Larger = "lb", Expanded = 0.5 }),
        new("after", new DurationValue(570)),
        new("at", TimeValue.At(new TimeOnly(14, 50, 5))),
        new("since", TimeValue.After(4260)),
        new("day", new DateValue(new DateOnly(2026, 6, 18))),
        new("n", new CountValue(3)),
        new("ratio", new NumberValue(1.0 / 3, 2)),
        new("gauges", new ListValue([new NameValue("low"), new NameValue("high")], ListJoin.Or)),
        new("words", new TextValue("as the crew wrote it")),
        new("rig", new ChoiceValue("untested")),
        new("numbers", new SymbolsValue("118.9 psig − 12.2 psi")),
        new("inner", Message.Of("sample", "inner", [])),
    ]);

    public static Phrase[] Phrases { get; } =
    [
        new("13.1 °F"),
        new("Every kind.", EveryKind),
        new("One. Every kind.", new ListValue([Message.Of("sample", "one", []), EveryKind], ListJoin.Sentences)),
    ];
}
