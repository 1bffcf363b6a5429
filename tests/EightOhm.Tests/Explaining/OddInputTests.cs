using System.Reflection;
using EightOhm.Explaining;

namespace EightOhm.Tests.Explaining;

/// <summary>Whatever a formula is given, it gives a finite number or says in words what is wrong.</summary>
public class OddInputTests
{
    private const int Draws = 400;

    private static readonly MemberInfo[] All = [.. FormulaSteps.FormulasOf(typeof(FormulaSteps).Assembly).Where(m => Inputs.For(m, new Random(1)).Count > 0)];

    public static TheoryData<string> Formulas => [.. All.Select(Formula.Name)];

    [Theory]
    [MemberData(nameof(Formulas))]
    public void Odd_inputs_give_a_finite_value_or_a_refusal_in_words(string name)
    {
        var formula = All.Single(m => Formula.Name(m) == name);
        var random = new Random(name.Length);
        for (var draw = 0; draw < Draws; draw++)
        {
            object[] inputs = [.. Inputs.For(formula, random)];
            OddInputs.Put(inputs, random);
            try
            {
                var value = Formula.Invoke(formula, inputs);
                Assert.True(OddInputs.Numbers(value).All(double.IsFinite), $"{Call(inputs)} gave {value}");
            }
            catch (Exception refusal) when (refusal is not Xunit.Sdk.XunitException)
            {
                Assert.True(OddInputs.InWords(refusal), $"{Call(inputs)} threw {refusal.GetType().Name}: {refusal.Message}");
            }

            string Call(object[] values) => $"{name} of ({string.Join("; ", values.Select(OddInputs.Text))})";
        }
    }
}
