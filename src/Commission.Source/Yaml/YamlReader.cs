using System.Globalization;
using Commission.Messages;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Commission.Source.Yaml;

/// <summary>
/// Reads one YAML 1.2 document strictly: no tags, no duplicate keys, bounded nesting, bounded use of aliases.
/// Values stay text: what <c>10:42</c> or <c>yes</c> means is for the field they stand in.
/// </summary>
public static class YamlReader
{
    /// <summary>The deepest nesting that is read. A job file needs fewer than ten levels.</summary>
    public const int MaximumDepth = 40;

    /// <summary>The most nodes a document may have once every alias is written out.</summary>
    public const int MaximumNodes = 200_000;

    /// <summary>Reads the document. Faults of YAML itself stop at the first; duplicate keys, tags and broken-off values are all reported.</summary>
    /// <param name="text">The text.</param>
    /// <param name="problems">Receives what is wrong.</param>
    /// <returns>The document's root, or null when it could not be read to its end.</returns>
    public static SourceNode? Read(SourceText text, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(problems);
        return new YamlComposer(text, problems).Compose();
    }
}

// Works on parser events and not on the library's document model: the model has no bound on nesting and expands aliases.
internal sealed class YamlComposer
{
    private readonly SourceText _text;
    private readonly ProblemList _problems;
    private readonly Scanner _scanner;
    private readonly FlowAnchors _flowAnchors;
    private readonly Parser _parser;
    private readonly Dictionary<string, Anchored> _anchors = new(StringComparer.Ordinal);
    private readonly Stack<(char Bracket, SourceLocation At)> _openBrackets = new();
    private int _nodes;

    public YamlComposer(SourceText text, ProblemList problems)
    {
        _text = text;
        _problems = problems;
        _scanner = new Scanner(new StringReader(text.Text), skipComments: true);
        _flowAnchors = new FlowAnchors(_scanner);
        _parser = new Parser(_flowAnchors);
    }

    public SourceNode? Compose()
    {
        try
        {
            return ComposeDocument();
        }
        catch (Refused)
        {
            return null;
        }
        catch (YamlException fault)
        {
            ReportSyntax(fault.Message, fault.Start.Line > 0 ? Place(fault.Start) : Place(_scanner.CurrentPosition));
            return null;
        }
        catch (Exception fault) when (fault is InvalidOperationException or ArgumentException)
        {
            // The library's scanner throws these on an unclosed bracket and on a broken tag.
            ReportSyntax(fault.Message, Place(_scanner.CurrentPosition));
            return null;
        }
    }

    private SourceNode? ComposeDocument()
    {
        Next();
        Next();
        if (_parser.Current is StreamEnd)
        {
            _problems.Add(SourceLocation.WholeFile(_text.File), YamlMessages.Empty, null, null, "empty-file");
            return null;
        }

        Next();
        var root = ComposeNode(0, out _, out _);
        if (root is SourceScalar { IsEmpty: true })
        {
            _problems.Add(SourceLocation.WholeFile(_text.File), YamlMessages.Empty, null, null, "empty-file");
            return null;
        }

        Next();
        Next();
        if (_parser.Current is DocumentStart second)
        {
            _problems.Add(Place(second.Start), YamlMessages.SecondDocument, YamlMessages.OneDocument,
                YamlMessages.SecondDocumentNext, "second-document", 3);
            return null;
        }

        return root;
    }

    private void Next()
    {
        if (!_parser.MoveNext())
            throw new YamlException("ended");
    }

    // Leaves the parser on the last event of the node.
    private SourceNode ComposeNode(int depth, out int size, out int height)
    {
        size = 1;
        height = 0;
        if (_parser.Current is AnchorAlias alias)
            return Expand(alias, depth, out size, out height);
        // On some broken texts the parser ends a mapping after a key: its own events do not pair up.
        if (_parser.Current is not NodeEvent node)
            throw new YamlException(_parser.Current!.Start, _parser.Current.End, "unpaired event");

        Count(1, node.Start);
        if (!node.Tag.IsEmpty)
        {
            _problems.Add(Place(node.Start), YamlMessages.Tag(new(node.Tag.Value)), YamlMessages.TagExpected,
                YamlMessages.TagNext, "tag", Span(node));
        }

        var anchor = !node.Anchor.IsEmpty ? node.Anchor.Value : node is Scalar ? _flowAnchors.Of(node.Start) : null;
        if (anchor is not null)
            _anchors[anchor] = Anchored.Open;
        SourceNode result = node switch
        {
            Scalar scalar => ComposeScalar(scalar),
            SequenceStart sequence => ComposeSequence(sequence, depth, ref size, ref height),
            _ => ComposeMapping((MappingStart)node, depth, ref size, ref height),
        };
        if (anchor is not null)
            _anchors[anchor] = new Anchored(result, size, height);
        return result;
    }

    private SourceScalar ComposeScalar(Scalar scalar) =>
        new(Place(scalar.Start), Span(scalar), scalar.Value, scalar.Style != ScalarStyle.Plain);

    private SourceSequence ComposeSequence(SequenceStart start, int depth, ref int size, ref int height)
    {
        var flow = start.Style == SequenceStyle.Flow;
        Enter(depth, start.Start, flow ? '[' : null);
        var items = new List<SourceNode>();
        for (Next(); _parser.Current is not SequenceEnd; Next())
        {
            items.Add(ComposeNode(depth + 1, out var itemSize, out var itemHeight));
            size += itemSize;
            height = Math.Max(height, itemHeight + 1);
        }

        if (flow)
            _openBrackets.Pop();
        return new SourceSequence(Place(start.Start), 1, items);
    }

    private SourceMapping ComposeMapping(MappingStart start, int depth, ref int size, ref int height)
    {
        var flow = start.Style == MappingStyle.Flow;
        Enter(depth, start.Start, flow ? '{' : null);
        var entries = new List<SourceEntry>();
        var strays = new StrayKeys(_text, _problems);
        var firstPlace = new Dictionary<string, SourceLocation>(StringComparer.Ordinal);
        for (Next(); _parser.Current is not MappingEnd; Next())
        {
            var key = ComposeKey();
            Next();
            var value = ComposeNode(depth + 1, out var valueSize, out var valueHeight);
            size += valueSize + 1;
            height = Math.Max(height, valueHeight + 1);
            if (key is null)
                continue;
            if (flow && strays.Take(key, value))
                continue;
            strays.Flush();
            strays.Previous = new SourceEntry(key, value);
            if (firstPlace.TryGetValue(key.Text, out var first))
            {
                _problems.Add(key.Location, YamlMessages.Twice(new(key.Text), first.Line), null, YamlMessages.TwiceNext, "duplicate-key", key.Length);
                continue;
            }

            firstPlace.Add(key.Text, key.Location);
            entries.Add(new SourceEntry(key, value));
        }

        strays.Flush();
        if (flow)
            _openBrackets.Pop();
        return new SourceMapping(Place(start.Start), 1, entries, flow);
    }

    private SourceScalar? ComposeKey()
    {
        if (_parser.Current is Scalar)
            return (SourceScalar)ComposeNode(0, out _, out _);

        var at = _parser.Current!.Start;
        _problems.Add(Place(at), YamlMessages.BadKey, YamlMessages.BadKeyExpected, YamlMessages.BadKeyNext, "bad-key");
        if (_parser.Current is AnchorAlias)
            return null;
        var open = 0;
        do
        {
            open += _parser.Current!.NestingIncrease;
            if (open > YamlReader.MaximumDepth)
                TooDeep(_parser.Current.Start);
            if (open > 0)
                Next();
        }
        while (open > 0);
        return null;
    }

    private SourceNode Expand(AnchorAlias alias, int depth, out int size, out int height)
    {
        var name = alias.Value.Value;
        if (!_anchors.TryGetValue(name, out var target))
        {
            _problems.Add(Place(alias.Start), YamlMessages.UnknownAlias(new(name)), null,
                YamlMessages.UnknownAliasNext, "unknown-alias", Span(alias));
            throw new Refused();
        }

        if (target.Node is null)
        {
            _problems.Add(Place(alias.Start), YamlMessages.AliasLoop(new(name)), null, YamlMessages.AliasLoopNext, "alias-loop", Span(alias));
            throw new Refused();
        }

        Count(target.Size, alias.Start);
        if (depth + target.Height > YamlReader.MaximumDepth)
            TooDeep(alias.Start);
        size = target.Size;
        height = target.Height;
        return target.Node;
    }

    private void Count(int more, Mark at)
    {
        _nodes += more;
        if (_nodes <= YamlReader.MaximumNodes)
            return;
        _problems.Add(Place(at), YamlMessages.TooManyValues(new(YamlReader.MaximumNodes.ToString("N0", CultureInfo.InvariantCulture))), null, YamlMessages.TooManyValuesNext, "too-many-values");
        throw new Refused();
    }

    private void Enter(int depth, Mark at, char? bracket)
    {
        if (bracket is { } open)
            _openBrackets.Push((open, Place(at)));
        if (depth >= YamlReader.MaximumDepth)
            TooDeep(at);
    }

    private void TooDeep(Mark at)
    {
        _problems.Add(Place(at), YamlMessages.TooDeep(YamlReader.MaximumDepth), null, YamlMessages.TooDeepNext, "too-deep");
        throw new Refused();
    }

    private void ReportSyntax(string message, SourceLocation at)
    {
        (char, SourceLocation)? bracket = _openBrackets.Count > 0 ? _openBrackets.Peek() : null;
        _problems.Add(YamlSyntaxFault.Translate(_text, message, at, bracket));
    }

    private SourceLocation Place(Mark mark) =>
        new(_text.File, (int)Math.Clamp(mark.Line, 1, _text.Lines.Count), (int)Math.Max(1, mark.Column));

    private static int Span(ParsingEvent node) =>
        node.End.Line == node.Start.Line ? (int)Math.Max(1, node.End.Column - node.Start.Column) : 1;

    private readonly record struct Anchored(SourceNode? Node, int Size, int Height)
    {
        public static Anchored Open => default;
    }

    // Leaves the recursion after a fault that was already reported.
    private sealed class Refused : Exception;
}
