using EightOhm.Tests.Docs;

namespace EightOhm.Generators.Tests;

public class FormulasPageTests
{
    [Fact]
    public void The_table_in_docs_formulas_is_what_the_generator_takes() =>
        WrittenTable.Check("formulas.md", "supported", [
            "| write | it reads as | in the compiler's words |", "|---|---|---|",
            .. Supported.Statements.Select(s => $"| `{s.Example}` | {s.Means} | |"),
            .. Supported.Expressions.Select(e => $"| `{e.Value.Example.Replace("||", "\\|\\|", StringComparison.Ordinal)}` | {e.Value.Means} | {e.Key} |")]);
}
