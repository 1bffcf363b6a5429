using EightOhm.Display.Tables;

namespace EightOhm.Display;

/// <summary>How values of a type are shown.</summary>
/// <param name="Type">The type.</param>
/// <param name="Html">As HTML.</param>
/// <param name="Text">As plain text, for a console.</param>
/// <param name="Latex">As LaTeX, where there is any.</param>
/// <param name="Table">As the table that both come from, where it is one.</param>
public sealed record DisplayForm(Type Type, Func<object, string> Html, Func<object, string> Text, Func<object, string>? Latex = null, Func<object, Table>? Table = null)
{
    /// <summary>The form of a type that is shown as a table.</summary>
    /// <param name="type">The type.</param>
    /// <param name="table">The table of a value.</param>
    public static DisplayForm Of(Type type, Func<object, Table> table)
    {
        ArgumentNullException.ThrowIfNull(table);
        return new(type, v => table(v).ToHtml(), v => table(v).ToString(), Table: table);
    }
}
