using System.Globalization;

namespace EightOhm.Published.Machine;

/// <summary>A file of values that a script of tests/references computed.</summary>
internal sealed class Reference
{
    private Reference(string name, string says, IReadOnlyList<ReferenceRow> rows) => (Name, Says, Rows) = (name, says, rows);

    public string Name { get; }

    /// <summary>What the file's first line says it holds.</summary>
    public string Says { get; }

    public IReadOnlyList<ReferenceRow> Rows { get; }

    public static Reference Read(string name)
    {
        var lines = File.ReadAllLines(Path.Combine(Repository.Root, "tests", "references", name));
        var comments = lines.TakeWhile(l => l.StartsWith('#')).Select(l => l.TrimStart('#', ' ')).ToArray();
        if (comments.Length < 2 || !comments[1].Contains("scipy", StringComparison.Ordinal))
            throw new InvalidDataException($"{name} must begin with two comment lines: what it holds, and the program with its version.");
        var columns = lines[comments.Length].Split(',');
        var rows = lines.Skip(comments.Length + 1).Select(l => new ReferenceRow(columns, [.. l.Split(',').Select(v => double.Parse(v, CultureInfo.InvariantCulture))])).ToArray();
        return rows.Length > 0 ? new Reference(name, comments[0], rows) : throw new InvalidDataException($"{name} has no rows.");
    }
}

/// <summary>A row of such a file.</summary>
internal sealed class ReferenceRow(string[] columns, double[] values)
{
    public double this[string column] => values[Array.IndexOf(columns, column) is var i and >= 0
        ? i
        : throw new ArgumentException($"There is no column {column}; there are {string.Join(", ", columns)}.", nameof(column))];

    public override string ToString() => string.Join(", ", columns.Zip(values, (c, v) => $"{c} = {v.ToString("R", CultureInfo.InvariantCulture)}"));
}
