using Commission.Messages;
using Commission.Records.Findings;

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
        new("inner", Message.Of("sample", "inner", [])),
        new("plain", Message.Plain("Not in a catalogue.")),
    ]);

    public static FindingMessages Of(string statement) => new([EveryKind, Message.Plain(statement)])
    {
        Reason = Message.Of("sample", "reason", []),
        Reservation = [Message.Plain("one"), Message.Of("sample", "two", [new("n", new CountValue(2))])],
        NextStep = Message.Of("sample", "next", []),
    };
}
