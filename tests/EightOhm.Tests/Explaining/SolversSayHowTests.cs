using System.Reflection;
using System.Runtime.CompilerServices;
using EightOhm.Explaining;
using EightOhm.Quantities;

namespace EightOhm.Tests.Explaining;

/// <summary>Explain never shows a bare number: each public function of the rooms that gives a quantity or a result shows its steps, names its equation, or says how it works.</summary>
public class SolversSayHowTests
{
    // Teaching asks questions; it computes nothing.
    private static readonly MethodInfo[] All = [.. Rooms.Types.Where(IsOfARoom)
        .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
        .Where(m => !m.IsSpecialName && m.GetBaseDefinition() == m && !m.IsDefined(typeof(CompilerGeneratedAttribute)) && m.Name != nameof(Equals))];

    [Fact]
    public void There_are_functions_of_all_three_marks()
    {
        Assert.True(All.Count(m => m.IsDefined(typeof(FormulaAttribute))) > 150);
        Assert.True(All.Count(m => m.IsDefined(typeof(SolvesAttribute))) >= 7);
        Assert.True(All.Count(m => m.IsDefined(typeof(WorkedAttribute))) > 60);
    }

    [Fact]
    public void Each_function_that_gives_a_quantity_or_a_result_says_how_it_came()
    {
        var silent = All.Where(m => Gives(m) && !Marked(m)).Select(m => $"{m.DeclaringType!.Name}.{m.Name}({string.Join(", ", m.GetParameters().Select(p => p.ParameterType.Name))})");
        Assert.True(!silent.Any(), $"Mark with [Formula], [Solves] or [Worked(\"what was looked for: the method\")]: {string.Join("; ", silent)}");
    }

    [Fact]
    public void What_is_said_is_a_sentence_and_no_name_of_the_function()
    {
        Assert.All(All.Where(m => m.IsDefined(typeof(WorkedAttribute))), m =>
        {
            var how = m.GetCustomAttribute<WorkedAttribute>()!.How;
            Assert.True(how.Length > 15 && how.Contains(' ', StringComparison.Ordinal) && !how.EndsWith('.'), $"{m.DeclaringType!.Name}.{m.Name}: {how}");
        });
    }

    [Fact]
    public void No_function_has_two_of_the_marks() =>
        Assert.All(All, m => Assert.True(new[] { typeof(FormulaAttribute), typeof(SolvesAttribute), typeof(WorkedAttribute) }.Count(a => m.IsDefined(a)) <= 1, $"{m.DeclaringType!.Name}.{m.Name}"));

    private static bool Marked(MethodInfo m) => m.IsDefined(typeof(FormulaAttribute)) || m.IsDefined(typeof(SolvesAttribute)) || m.IsDefined(typeof(WorkedAttribute));

    // A quantity, or a result of another type of the rooms. What gives its own type makes or changes an object; words and tables of numbers are shown as such.
    private static bool Gives(MethodInfo m) =>
        QuantityKinds.Find(m.ReturnType) is not null || (IsOfARoom(m.ReturnType) && m.ReturnType != m.DeclaringType && !IsPartOf(m));

    // A node that is put into a network, an element into a circuit, is no result.
    private static bool IsPartOf(MethodInfo m) => m.Name is "Add" or "Node" || m.ReturnType == typeof(EightOhm.Circuits.Element);

    private static bool IsOfARoom(Type type) => Rooms.Holds(type) && type.Namespace != typeof(EightOhm.Teaching.Exercise).Namespace;
}
