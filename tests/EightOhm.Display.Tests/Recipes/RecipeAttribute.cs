namespace EightOhm.Display.Tests.Recipes;

/// <summary>Marks a figure of docs/figures.md: one recipe is one test, one picture and one entry of the page.</summary>
/// <param name="title">What the reader wants to draw.</param>
/// <param name="words">What there is to know about it.</param>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class RecipeAttribute(string title, string words) : Attribute
{
    public string Title { get; } = title;

    public string Words { get; } = words;
}
