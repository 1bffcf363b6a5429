using System.Collections.Frozen;
using System.Reflection;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Explaining;

/// <summary>How a function of formulas is written: by a sign of its own, or by its name.</summary>
internal enum FunctionForm
{
    /// <summary>A name and arguments: ln(x).</summary>
    Named,

    /// <summary>A root sign.</summary>
    Root,

    /// <summary>The first argument raised to the second.</summary>
    Power,

    /// <summary>Ten raised to the argument.</summary>
    PowerOfTen,

    /// <summary>The sign of resistances side by side.</summary>
    Parallel,

    /// <summary>A sum of a term over a list.</summary>
    Sum,

    /// <summary>An equation of the two arguments.</summary>
    Equation,

    /// <summary>The argument itself.</summary>
    Itself,

    /// <summary>A constant: its name is the first argument, its value the second.</summary>
    Constant,
}

/// <summary>A function that has a written form of its own. It goes by its owner and name: another type's Sqrt is an ordinary call.</summary>
/// <param name="Owner">The type that declares it.</param>
/// <param name="Name">The method's name.</param>
/// <param name="Form">How it is written.</param>
/// <param name="Written">The name that it is written with; empty when it has a sign.</param>
internal sealed record FormulaFunction(Type Owner, string Name, FunctionForm Form, string Written = "")
{
    private static readonly FrozenDictionary<(Type, string), FormulaFunction> Known = new FormulaFunction[]
    {
        new(typeof(Maths), nameof(Maths.Sqrt), FunctionForm.Root),
        new(typeof(Maths), nameof(Maths.Pow), FunctionForm.Power),
        new(typeof(Maths), nameof(Maths.PowerOfTen), FunctionForm.PowerOfTen),
        new(typeof(Maths), nameof(Maths.Parallel), FunctionForm.Parallel),
        new(typeof(Maths), nameof(Maths.Sum), FunctionForm.Sum),
        new(typeof(Maths), nameof(Maths.Ln), FunctionForm.Named, "ln"),
        new(typeof(Maths), nameof(Maths.Log10), FunctionForm.Named, "log₁₀"),
        new(typeof(Maths), nameof(Maths.Exp), FunctionForm.Named, "exp"),
        new(typeof(Maths), nameof(Maths.Sin), FunctionForm.Named, "sin"),
        new(typeof(Maths), nameof(Maths.Cos), FunctionForm.Named, "cos"),
        new(typeof(Maths), nameof(Maths.Tan), FunctionForm.Named, "tan"),
        new(typeof(Maths), nameof(Maths.ArcTan), FunctionForm.Named, "arctan"),
        new(typeof(Maths), nameof(Maths.Erfc), FunctionForm.Named, "erfc"),
        new(typeof(Maths), nameof(Maths.Gamma), FunctionForm.Named, "Γ"),
        new(typeof(Math), nameof(Math.Sqrt), FunctionForm.Root),
        new(typeof(Math), nameof(Math.Pow), FunctionForm.Power),
        new(typeof(Math), nameof(Math.Log), FunctionForm.Named, "ln"),
        new(typeof(Math), nameof(Math.Log10), FunctionForm.Named, "log₁₀"),
        new(typeof(Math), nameof(Math.Log2), FunctionForm.Named, "log₂"),
        new(typeof(Math), nameof(Math.Asin), FunctionForm.Named, "arcsin"),
        new(typeof(Math), nameof(Math.Acos), FunctionForm.Named, "arccos"),
        new(typeof(Math), nameof(Math.Atan), FunctionForm.Named, "arctan"),
        new(typeof(Balance), nameof(Balance.Of), FunctionForm.Equation),
        new(typeof(Gain), nameof(Gain.FromRatio), FunctionForm.Itself),
        new(typeof(Ratio), nameof(Ratio.FromDecimalFractions), FunctionForm.Itself),
        new(typeof(QuantityUnits), nameof(QuantityUnits.In), FunctionForm.Itself),
        new(typeof(FormulaSteps), nameof(FormulaSteps.Kept), FunctionForm.Itself),
        new(typeof(FormulaSteps), nameof(FormulaSteps.Constant), FunctionForm.Constant),
    }.ToFrozenDictionary(f => (f.Owner, f.Name));

    /// <summary>The function that a method is, or null when it is an ordinary call.</summary>
    public static FormulaFunction? Of(MethodInfo method)
    {
        if (method.DeclaringType is not { } owner)
            return null;
        if (Known.TryGetValue((owner, method.Name), out var found))
            return found.Takes(method.GetParameters().Length) ? found : null;
        // The framework's other functions of numbers (sinh, floor, min, …) go by their own names.
        return owner == typeof(Math) || owner == typeof(Maths) ? new(owner, method.Name, FunctionForm.Named, method.Name.ToLowerInvariant()) : null;
    }

    // The logarithm to a base of its own is not ln.
    private bool Takes(int arguments) => !(Owner == typeof(Math) && Name == nameof(Math.Log) && arguments != 1);
}
