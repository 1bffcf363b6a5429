namespace EightOhm.Finding;

/// <summary>What a function takes.</summary>
/// <param name="Name">Its name, as a symbol: R_L.</param>
/// <param name="Kind">The kind in words: electric resistance.</param>
/// <param name="Unit">The unit in which such a value is spoken of; empty for a number.</param>
/// <param name="Text">What it is, with its convention and the range it may have.</param>
public sealed record FunctionParameter(string Name, string Kind, string Unit, string Text);
