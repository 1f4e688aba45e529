namespace Commission.Messages.Fluent;

// Read by the generator, too, which the compiler loads as netstandard2.0: no records and no newer library calls in this folder.

/// <summary>A catalogue file that does not follow the syntax, or uses a part of it that is not supported.</summary>
public sealed class FluentException : FormatException
{
    /// <summary>A fault at a place.</summary>
    /// <param name="file">The file, as it is to be shown.</param>
    /// <param name="line">Line from 1.</param>
    /// <param name="column">Column from 1.</param>
    /// <param name="fault">What was found and what was expected.</param>
    public FluentException(string file, int line, int column, string fault)
        : base(file + ":" + line + ":" + column + ": " + fault)
    {
        Line = line;
        Column = column;
        Fault = fault;
    }

    /// <summary>Line from 1.</summary>
    public int Line { get; }

    /// <summary>Column from 1.</summary>
    public int Column { get; }

    /// <summary>What was found and what was expected, without the place.</summary>
    public string Fault { get; }
}

/// <summary>A catalogue file as read: its messages and terms in order.</summary>
/// <param name="file">The file, as it is shown in errors.</param>
/// <param name="entries">Messages and terms.</param>
public sealed class FluentResource(string file, IReadOnlyList<FluentEntry> entries)
{
    /// <summary>The file, as it is shown in errors.</summary>
    public string File { get; } = file;

    /// <summary>Messages and terms in the order of the file.</summary>
    public IReadOnlyList<FluentEntry> Entries { get; } = entries;
}

/// <summary>A message, or a term (a word that only other messages use; its name begins with a dash, which <see cref="Id"/> leaves off).</summary>
/// <param name="id">Its identifier.</param>
/// <param name="isTerm">Whether it is a term.</param>
/// <param name="pattern">Its text.</param>
/// <param name="comment">The comment lines that stand right above it, without their <c>#</c>.</param>
/// <param name="line">Line of its identifier, from 1; the comment ends on the line before.</param>
public sealed class FluentEntry(string id, bool isTerm, FluentPattern pattern, IReadOnlyList<string> comment, int line)
{
    /// <summary>Its identifier.</summary>
    public string Id { get; } = id;

    /// <summary>Whether it is a term.</summary>
    public bool IsTerm { get; } = isTerm;

    /// <summary>Its text.</summary>
    public FluentPattern Pattern { get; } = pattern;

    /// <summary>The comment lines that stand right above it.</summary>
    public IReadOnlyList<string> Comment { get; } = comment;

    /// <summary>Line of its identifier, from 1.</summary>
    public int Line { get; } = line;
}

/// <summary>A text with gaps.</summary>
/// <param name="elements">Pieces of text and placeables in order.</param>
public sealed class FluentPattern(FluentElement[] elements)
{
    /// <summary>Pieces of text and placeables in order.</summary>
    public IReadOnlyList<FluentElement> Elements => elements;
}

/// <summary>A piece of a pattern.</summary>
/// <param name="line">Line from 1.</param>
/// <param name="column">Column from 1.</param>
public abstract class FluentElement(int line, int column)
{
    /// <summary>Line from 1.</summary>
    public int Line { get; } = line;

    /// <summary>Column from 1.</summary>
    public int Column { get; } = column;
}

/// <summary>Text as it stands; a quoted text and a number written in a placeable are such text, too.</summary>
/// <param name="value">The text.</param>
/// <param name="line">Line from 1.</param>
/// <param name="column">Column from 1.</param>
public sealed class FluentText(string value, int line, int column) : FluentElement(line, column)
{
    /// <summary>The text.</summary>
    public string Value { get; } = value;
}

/// <summary>A value that the program fills in: <c>{ $level }</c>.</summary>
/// <param name="name">Its name.</param>
/// <param name="line">Line from 1.</param>
/// <param name="column">Column from 1.</param>
public sealed class FluentVariable(string name, int line, int column) : FluentElement(line, column)
{
    /// <summary>Its name, without the dollar sign.</summary>
    public string Name { get; } = name;
}

/// <summary>Another message or a term put in: <c>{ rig-first }</c>, <c>{ -hold }</c>, <c>{ -hold(case: "dative") }</c>.</summary>
/// <param name="id">Its identifier, a term's without the dash.</param>
/// <param name="isTerm">Whether it is a term.</param>
/// <param name="arguments">What is handed to a term, by name; empty for a message.</param>
/// <param name="line">Line from 1.</param>
/// <param name="column">Column from 1.</param>
public sealed class FluentReference(string id, bool isTerm, IReadOnlyList<KeyValuePair<string, string>> arguments, int line, int column) : FluentElement(line, column)
{
    /// <summary>Its identifier.</summary>
    public string Id { get; } = id;

    /// <summary>Whether it is a term.</summary>
    public bool IsTerm { get; } = isTerm;

    /// <summary>What is handed to a term, by name.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> Arguments { get; } = arguments;
}

/// <summary>One of several texts, chosen by a variable.</summary>
/// <param name="selector">The variable that chooses.</param>
/// <param name="variants">The texts in order.</param>
/// <param name="standard">Index of the one that is taken when no other fits.</param>
/// <param name="line">Line from 1.</param>
/// <param name="column">Column from 1.</param>
public sealed class FluentSelect(string selector, FluentVariant[] variants, int standard, int line, int column) : FluentElement(line, column)
{
    /// <summary>Name of the variable that chooses.</summary>
    public string Selector { get; } = selector;

    /// <summary>The texts in order.</summary>
    public IReadOnlyList<FluentVariant> Variants => variants;

    /// <summary>The text that is taken when no other fits; the syntax marks it with a star.</summary>
    public FluentVariant Default => variants[standard];
}

/// <summary>One text of several.</summary>
/// <param name="key">The word or the number that chooses it.</param>
/// <param name="number">The number, where the key is one.</param>
/// <param name="pattern">The text.</param>
/// <param name="line">Line of the key, from 1.</param>
/// <param name="column">Column of the key, from 1.</param>
public sealed class FluentVariant(string key, double? number, FluentPattern pattern, int line, int column)
{
    /// <summary>The word or the number as written.</summary>
    public string Key { get; } = key;

    /// <summary>The number, where the key is one.</summary>
    public double? Number { get; } = number;

    /// <summary>The text.</summary>
    public FluentPattern Pattern { get; } = pattern;

    /// <summary>Line of the key, from 1.</summary>
    public int Line { get; } = line;

    /// <summary>Column of the key, from 1.</summary>
    public int Column { get; } = column;
}
