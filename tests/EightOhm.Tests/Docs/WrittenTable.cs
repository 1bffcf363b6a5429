namespace EightOhm.Tests.Docs;

/// <summary>A table in a docs page that is written from the code: compared here, or rewritten when EIGHTOHM_WRITE_DOCS is 1.</summary>
internal static class WrittenTable
{
    public static void Check(string page, string name, IEnumerable<string> lines)
    {
        var path = Path.Combine(Root(), "docs", page);
        var text = File.ReadAllText(path).ReplaceLineEndings("\n");
        string open = $"<!-- written: {name} -->\n", close = $"<!-- end: {name} -->";
        var from = text.IndexOf(open, StringComparison.Ordinal) + open.Length;
        var to = text.IndexOf(close, StringComparison.Ordinal);
        Assert.True(from >= open.Length && to >= from, $"docs/{page} must hold the lines {open.Trim()} and {close}");
        var table = string.Join("\n", lines) + "\n";
        if (Environment.GetEnvironmentVariable("EIGHTOHM_WRITE_DOCS") == "1")
            File.WriteAllText(path, text[..from] + table + text[to..]);
        else
            Assert.True(table == text[from..to], $"The table {name} in docs/{page} is not what the code says. Run the tests once with EIGHTOHM_WRITE_DOCS=1 and look at the change.\n{table}");
    }

    public static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "EightOhm.slnx")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException("The tests must run from inside the repository.");
    }
}
