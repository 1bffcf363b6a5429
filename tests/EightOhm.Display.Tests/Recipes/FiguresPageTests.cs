using System.Globalization;
using System.Reflection;
using System.Text;
using EightOhm.Display.Figures;
using EightOhm.Tests.Docs;

namespace EightOhm.Display.Tests.Recipes;

/// <summary>docs/figures.md and its pictures are what the recipes draw: compared here, or rewritten when EIGHTOHM_WRITE_DOCS is 1.</summary>
public class FiguresPageTests
{
    private static readonly (RecipeAttribute Recipe, MethodInfo Method)[] All =
        [.. typeof(FigureRecipes).GetMethods(BindingFlags.Public | BindingFlags.Static).Select(m => (m.GetCustomAttribute<RecipeAttribute>()!, m))];

    public static TheoryData<string> Names => [.. All.Select(r => r.Method.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_recipe_draws_the_picture_that_the_page_shows(string name)
    {
        var drawn = typeof(FigureRecipes).GetMethod(name)!.Invoke(null, null)!;
        Assert.Contains("<img", Show.Html(drawn), StringComparison.Ordinal);
        Figure[] figures = drawn is StackedFigures stack ? [.. stack.Figures] : [(Figure)drawn];
        foreach (var (place, figure) in figures.Index())
            Kept(Path.Combine(Folder(), "figures", $"{Slug(name, place)}.svg"), SvgWriter.Write(figure) + "\n");
    }

    [Fact]
    public void The_page_shows_each_recipe_as_a_cell_would_have_it() => Kept(Path.Combine(Folder(), "figures.md"), Page());

    private static string Page()
    {
        var page = new StringBuilder("""
            # Figures, by recipe

            Each picture is drawn by the lines above it; a test draws them again. Where scripts run, a figure can be looked into: drag or use the keys
            (arrows move, `+` and `−` zoom, `0` shows the whole), and keep the picture as SVG or its values as CSV by the buttons below it. Without scripts, in print and
            in a notebook that is not trusted, the picture itself is shown, whole. It follows the reader's light or dark page and has a narrow shape for a telephone.

            """.ReplaceLineEndings("\n"));
        foreach (var (recipe, method) in All)
        {
            page.Append(CultureInfo.InvariantCulture, $"\n## {recipe.Title}\n\n{recipe.Words}\n\n```csharp\n{Code(method.Name)}\n```\n\n");
            var count = method.Invoke(null, null) is StackedFigures stack ? stack.Figures.Count : 1;
            for (var place = 0; place < count; place++)
                page.Append(CultureInfo.InvariantCulture, $"![{recipe.Title}](figures/{Slug(method.Name, place)}.svg)\n");
        }
        return page.ToString();
    }

    // What stands after the arrow, without the indent of the class.
    private static string Code(string name)
    {
        var lines = File.ReadAllLines(Path.Combine(WrittenTable.Root(), "tests", "EightOhm.Display.Tests", "Recipes", nameof(FigureRecipes) + ".cs"));
        var first = Array.FindIndex(lines, l => l.Contains($" {name}() =>", StringComparison.Ordinal)) + 1;
        var last = Array.FindIndex(lines, first, l => l.EndsWith(';'));
        return string.Join('\n', lines[first..(last + 1)].Select(l => l[8..])).TrimEnd(';');
    }

    private static void Kept(string file, string text)
    {
        if (Environment.GetEnvironmentVariable("EIGHTOHM_WRITE_DOCS") == "1")
            File.WriteAllText(file, text);
        else
            Assert.True(File.Exists(file) && File.ReadAllText(file).ReplaceLineEndings("\n") == text, $"{file} is not what the recipes draw. Run the tests once with EIGHTOHM_WRITE_DOCS=1 and look at the change.");
    }

    private static string Slug(string name, int place) => name.ToLowerInvariant() + (place == 0 ? "" : $"-{place + 1}");

    private static string Folder() => Path.Combine(WrittenTable.Root(), "docs");
}
