using System.Text;

namespace Commission.Generators.JobModel;

/// <summary>How a value of the job file is read.</summary>
internal enum FieldKind
{
    Part,
    Word,
    YesNo,
    Whole,
    Number,
    Text,
    Id,
    Refrigerant,
    Zone,
    Unit,
    DisplayUnit,
    Date,
    Time,
    Period,
    Accuracy,
    AnyValue,
    AnyDifference,
    Quantity,
    QuantityRange,
    ChartAxis,
    Chart,
}

/// <summary>A key of a part.</summary>
internal sealed class Field
{
    public string Key { get; set; } = "";

    /// <summary>The property's name.</summary>
    public string Member { get; set; } = "";

    public string Description { get; set; } = "";

    public FieldKind Kind { get; set; }

    public bool IsList { get; set; }

    public bool IsRequired { get; set; }

    /// <summary>The part or the list of words it refers to; empty for any other kind.</summary>
    public string Definition { get; set; } = "";

    /// <summary>What a quantity is a number of; empty when that follows from another key.</summary>
    public string Quantity { get; set; } = "";

    /// <summary>Whether a mass may be written as so many litres of water.</summary>
    public bool IsWater { get; set; }

    /// <summary>Whether a pressure that does not say what it is counted from is gauge.</summary>
    public bool IsGauge { get; set; }

    /// <summary>Unit of a bare number under <c>units: us</c>.</summary>
    public string UsUnit { get; set; } = "";

    /// <summary>Unit of a bare number under <c>units: si</c>.</summary>
    public string SiUnit { get; set; } = "";

    /// <summary>The key of <c>units</c> that names another unit; empty when none does.</summary>
    public string UnitOverride { get; set; } = "";

    /// <summary>The ends of the plausible range as written; null when the value has none.</summary>
    public string[]? Within { get; set; }

    /// <summary>The row of <c>x-ranges</c> that holds, where the kind of quantity follows from another key.</summary>
    public string RangeRow { get; set; } = "";

    /// <summary>What a time is in the order of its phase: start, on, or empty for a time that stands alone.</summary>
    public string TimeRole { get; set; } = "";

    /// <summary>Whether its times run beside those of the keys before it.</summary>
    public bool IsBeside { get; set; }

    /// <summary>Whether a log of this part begins with it.</summary>
    public bool OpensLog { get; set; }

    /// <summary>What the log it names holds; empty when it names none.</summary>
    public string LogQuantity { get; set; } = "";

    /// <summary>The key of <c>units</c> for the log's bare numbers.</summary>
    public string LogUnits { get; set; } = "";
}

/// <summary>A mapping of the job file.</summary>
internal sealed class Part
{
    public string Name { get; set; } = "";

    public string Description { get; set; } = "";

    /// <summary>In the order of the schema.</summary>
    public List<Field> Fields { get; } = [];

    /// <summary>Keys in the order in which they are bound.</summary>
    public List<Field> Order { get; } = [];

    /// <summary>Other names of keys: the name and the key.</summary>
    public List<KeyValuePair<string, string>> Aliases { get; } = [];

    /// <summary>The key whose value may stand for the whole part; empty when none may.</summary>
    public string Short { get; set; } = "";

    /// <summary>The phase of the work that this part is; empty when it is none.</summary>
    public string Phase { get; set; } = "";

    /// <summary>The key that says what the part's values are numbers of; empty when nothing depends on it.</summary>
    public string MeasuredBy { get; set; } = "";

    /// <summary>The generic type that holds it; empty when it has a type of its own.</summary>
    public string Generic { get; set; } = "";

    /// <summary>Whether the binder takes note of it once it is made.</summary>
    public bool IsNoted { get; set; }

    /// <summary>Its type.</summary>
    public string TypeName => Generic.Length == 0 ? Name : $"{Generic}<{TypeArgument("target")}, {TypeArgument("tolerance")}>";

    private string TypeArgument(string key) => ModelWriter.QuantityType(Fields.First(f => f.Key == key));
}

/// <summary>A list of words.</summary>
internal sealed class WordList
{
    public string Name { get; set; } = "";

    public string Description { get; set; } = "";

    /// <summary>Each word and what it means.</summary>
    public List<KeyValuePair<string, string>> Words { get; } = [];

    /// <summary>Other spellings: the spelling and the word.</summary>
    public List<KeyValuePair<string, string>> Aliases { get; } = [];

    /// <summary>For each word the quantities that a thing of this kind shows, the usual one first; empty when nothing depends on it.</summary>
    public List<KeyValuePair<string, string[]>> Measures { get; } = [];
}

/// <summary>All of the schema that becomes C#.</summary>
internal sealed class SchemaModel
{
    public List<Part> Parts { get; } = [];

    public List<WordList> WordLists { get; } = [];

    /// <summary>Rows of plausible ranges by quantity: the row's name, the quantity, both ends.</summary>
    public List<KeyValuePair<string, List<KeyValuePair<string, string[]>>>> RangeRows { get; } = [];

    /// <summary>What is wrong with the schema.</summary>
    public List<string> Faults { get; } = [];
}

/// <summary>How a key or a word of the job file is called in C#: <c>vapor pressure</c> is <c>VaporPressure</c>, <c>compressor RLA</c> is <c>CompressorRLA</c>.</summary>
internal static class KeyName
{
    public static string Of(string key)
    {
        var name = new StringBuilder(key.Length);
        var capital = true;
        foreach (var c in key)
        {
            if (c is ' ' or '-' or ',')
            {
                capital = true;
            }
            else if (c != '\'')
            {
                name.Append(capital ? char.ToUpperInvariant(c) : c);
                capital = false;
            }
        }

        return name.ToString();
    }
}
