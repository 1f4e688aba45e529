using System.Reflection;
using System.Text.Json;
using Commission.Checks.Recording;
using Commission.Cli;
using Commission.Jobs;
using Commission.Jobs.Model;
using Xunit;

namespace Commission.Acceptance.Tests;

/// <summary>
/// Every key of the schema is used by somebody, or says <c>x-shown</c>: then the record shows it in the tree of inputs and nothing else looks at it.
/// Used means that compiled code asks for the property, read from the assemblies' own instructions.
/// </summary>
public sealed class KeysReadTests
{
    private const byte Call = 0x28;
    private const byte CallVirtual = 0x6F;
    private const BindingFlags Everything = BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;

    [Fact]
    public void A_key_is_read_or_marked_as_shown_only_and_not_both()
    {
        var asked = Asked();
        var faults = new List<string>();
        var count = 0;
        foreach (var (part, key, isShown) in Keys())
        {
            count++;
            var type = typeof(Job).Assembly.GetType($"Commission.Jobs.Model.{part}", throwOnError: true)!;
            var property = type.GetProperties().SingleOrDefault(p => p.Name == key.Member);
            if (property is null)
                faults.Add($"{part}: {key.Name} has no property");
            else if (asked.Contains(Name(property.GetMethod!)) == isShown)
                faults.Add($"{part}: {key.Name} is {(isShown ? "read and marked as shown only" : "read by nobody and not marked as shown only")}");
        }

        Assert.Equal("", string.Join('\n', faults));
        Assert.True(count > 500, $"{count} keys");
    }

    // The getters of the model that any method outside the model calls.
    private static HashSet<string> Asked()
    {
        var asked = new HashSet<string>(StringComparer.Ordinal);
        foreach (var assembly in new[] { typeof(JobReader).Assembly, typeof(RecordBuilder).Assembly, typeof(CommissionProgram).Assembly })
        {
            foreach (var type in assembly.GetTypes().Where(t => !IsModel(t) || t.IsGenericType))
            {
                foreach (var method in type.GetMethods(Everything).Cast<MethodBase>().Concat(type.GetConstructors(Everything)))
                {
                    // A generic limit reads its own figures for everyone, but its printing reads all of them.
                    if (method.Name is "PrintMembers" or "Equals" or "GetHashCode" || (IsModel(type) && method.Name.StartsWith("get_", StringComparison.Ordinal)))
                        continue;
                    asked.UnionWith(Calls(method));
                }
            }
        }

        return asked;
    }

    private static bool IsModel(Type type) => (type.Namespace ?? "").StartsWith("Commission.Jobs.Model", StringComparison.Ordinal);

    private static IEnumerable<string> Calls(MethodBase method)
    {
        var code = method.GetMethodBody()?.GetILAsByteArray() ?? [];
        var typeArguments = method.DeclaringType!.IsGenericType ? method.DeclaringType.GetGenericArguments() : null;
        var methodArguments = method.IsGenericMethod ? method.GetGenericArguments() : null;
        for (var i = 0; i + 4 < code.Length; i++)
        {
            if (code[i] is not (Call or CallVirtual))
                continue;
            MethodBase? called;
            try
            {
                called = method.Module.ResolveMethod(BitConverter.ToInt32(code, i + 1), typeArguments, methodArguments);
            }
            catch (Exception fault) when (fault is ArgumentException or BadImageFormatException)
            {
                // The byte was part of another instruction.
                continue;
            }

            if (called?.DeclaringType?.Namespace == "Commission.Jobs.Model" && called.Name.StartsWith("get_", StringComparison.Ordinal))
                yield return Name(called);
        }
    }

    private static string Name(MethodBase getter) =>
        $"{(getter.DeclaringType!.IsGenericType ? getter.DeclaringType.GetGenericTypeDefinition() : getter.DeclaringType).Name}.{getter.Name}";

    private static IEnumerable<(string Part, (string Name, string Member) Key, bool IsShown)> Keys()
    {
        using var stream = typeof(JobReader).Assembly.GetManifestResourceStream("job.schema.json")!;
        var root = JsonDocument.Parse(stream).RootElement;
        foreach (var (part, schema) in root.GetProperty("$defs").EnumerateObject().Select(d => (d.Name, d.Value)).Prepend(("Job", root)))
        {
            // Kits are put in place before anything is bound; the limits share one generic type, held by its own code.
            if (!schema.TryGetProperty("properties", out var properties) || schema.TryGetProperty("x-expanded", out _) || schema.TryGetProperty("x-generic", out _))
                continue;
            foreach (var key in properties.EnumerateObject())
            {
                if (key.Value.TryGetProperty("x-alias-of", out _))
                    continue;
                var member = key.Value.TryGetProperty("x-member", out var own) ? own.GetString()! : Member(key.Name);
                yield return (part, (key.Name, member), key.Value.TryGetProperty("x-shown", out var shown) && shown.GetBoolean());
            }
        }
    }

    // As DEVELOPERS.md says: each word begins with a capital.
    private static string Member(string key) =>
        string.Concat(key.Replace("'", "", StringComparison.Ordinal).Split([' ', '-', ','], StringSplitOptions.RemoveEmptyEntries).Select(w => char.ToUpperInvariant(w[0]) + w[1..]));
}
