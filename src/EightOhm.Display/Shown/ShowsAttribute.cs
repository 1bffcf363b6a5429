namespace EightOhm.Display;

/// <summary>Registers a method as the way in which values of its parameter's type are shown; a sequence as parameter stands for lists of its items.</summary>
/// <remarks>On a public static method of one parameter that returns a table, a figure, stacked figures, an explanation's HTML or other HTML as text.
/// Nothing is listed elsewhere: the register finds the methods of this assembly by this attribute.</remarks>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ShowsAttribute : Attribute
{
    /// <summary>The types shown, where the parameter is wider than they are.</summary>
    public Type[] As { get; init; } = [];
}
