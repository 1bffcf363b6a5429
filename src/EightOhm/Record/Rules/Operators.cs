using System.Linq.Expressions;
using System.Reflection;
using EightOhm.Explaining;
using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>The operators of rules, by their signs; what one means follows from the kinds of its operands, as it does on paper.</summary>
internal static class Operators
{
    private static readonly (ExpressionType Type, string Sign, int Operands, string Method)[] Table =
        [.. FormulaOperator.All.Select(o => (Enum.Parse<ExpressionType>(o.Node), o.Code, o.Operands, o.Method))];

    /// <summary>The signs.</summary>
    public static IEnumerable<string> Signs => Table.Select(o => o.Sign).Distinct();

    /// <summary>The sign of an operator, or null when no rule may use it.</summary>
    public static string? Sign(ExpressionType type) => Table.FirstOrDefault(o => o.Type == type).Sign;

    /// <summary>The operator of a sign with one or two operands, or null.</summary>
    public static ExpressionType? Find(string sign, int operands) =>
        Table.FirstOrDefault(o => o.Sign == sign && o.Operands == operands) is { Sign: not null } found ? found.Type : null;

    /// <summary>The method by which an operator works on such operands; null for plain numbers, which need none.</summary>
    /// <exception cref="MissingMethodException">The operator has no meaning for them.</exception>
    public static MethodInfo? Method(ExpressionType type, params Type[] operands)
    {
        if (operands.All(KindNames.IsPrimitive))
            return null;
        var name = Table.First(o => o.Type == type).Method;
        return Owners(operands).SelectMany(o => o.GetMethods(BindingFlags.Public | BindingFlags.Static))
            .FirstOrDefault(m => m.Name == name && m.GetParameters().Select(p => p.ParameterType).SequenceEqual(operands) && KindNames.Name(m.ReturnType) is not null)
            ?? throw new MissingMethodException($"{Sign(type)} has no meaning for {string.Join(" and ", operands.Select(KindNames.Of))}");
    }

    /// <summary>The method that turns the one type into the other; null for plain numbers and for a list taken as a list.</summary>
    /// <exception cref="MissingMethodException">There is no such conversion.</exception>
    public static MethodInfo? Conversion(Type from, Type to)
    {
        if ((KindNames.IsPrimitive(from) && KindNames.IsPrimitive(to)) || (to.IsAssignableFrom(from) && KindNames.Name(to) is not null))
            return null;
        return new[] { from, to }.Distinct().SelectMany(o => o.GetMethods(BindingFlags.Public | BindingFlags.Static))
            .FirstOrDefault(m => m.Name is "op_Implicit" or "op_Explicit" && m.ReturnType == to && m.GetParameters() is [{ } taken] && taken.ParameterType == from)
            ?? throw new MissingMethodException($"{KindNames.Of(from)} cannot be taken as {KindNames.Of(to)}");
    }

    // A type's own operators go before those that we add to it, as the compiler has it.
    private static IEnumerable<Type> Owners(Type[] operands) => operands.Where(o => !o.IsPrimitive).Append(typeof(Algebra)).Distinct();
}
