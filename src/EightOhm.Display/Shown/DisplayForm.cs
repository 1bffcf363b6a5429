namespace EightOhm.Display;

/// <summary>How values of a type are shown.</summary>
/// <param name="Type">The type.</param>
/// <param name="Html">As HTML.</param>
/// <param name="Text">As plain text, for a console.</param>
/// <param name="Latex">As LaTeX, where there is any.</param>
public sealed record DisplayForm(Type Type, Func<object, string> Html, Func<object, string> Text, Func<object, string>? Latex = null);
