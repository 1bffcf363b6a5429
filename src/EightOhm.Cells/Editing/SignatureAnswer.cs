namespace EightOhm.Cells.Editing;

/// <summary>What the call around the caret asks for.</summary>
/// <param name="Signatures">Its forms, the shortest first.</param>
/// <param name="Active">Which of them fits what is written, from 0.</param>
/// <param name="Parameter">Which of its parameters the caret is at, from 0; -1 where it takes none or has no more.</param>
public sealed record SignatureAnswer(IReadOnlyList<Signature> Signatures, int Active, int Parameter);

/// <summary>One form of a call.</summary>
/// <param name="Label">The form as C#.</param>
/// <param name="Parameters">What it asks for, in order.</param>
/// <param name="Documentation">What it is, as HTML; empty where nothing is written.</param>
public sealed record Signature(string Label, IReadOnlyList<SignatureParameter> Parameters, string Documentation);

/// <summary>One parameter of a call.</summary>
/// <param name="Label">Its type and name, as they stand in the label of the form.</param>
/// <param name="Documentation">What it is, with its unit and range, as HTML; empty where nothing is written.</param>
public sealed record SignatureParameter(string Label, string Documentation);
