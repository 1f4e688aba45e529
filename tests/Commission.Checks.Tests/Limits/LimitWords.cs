using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Messages;

namespace Commission.Checks.Tests.Limits;

/// <summary>Limits and the figures of a job in English.</summary>
internal static class LimitWords
{
    public static Presentation Us => PresentationOf(UnitPreset.Us, "US");

    public static Presentation Si => PresentationOf(UnitPreset.Si, "SI");

    public static string In(Message message) => MessageWriter.Words.Format(message, Language.English);

    public static string Text(Limit limit, UnitSystem units) => In(LimitText.Of(limit, units));

    public static ImmutableDictionary<string, MakerFigure> Figures(Job job) => MakerFigures.Of(job, In);

    private static Presentation PresentationOf(UnitPreset preset, string word) =>
        Presentation.For(JobBuilder.Split() with { Units = new UnitChoice { Preset = JobBuilder.Given(preset, word) } }, Language.English);
}
