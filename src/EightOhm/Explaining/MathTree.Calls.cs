using System.Linq.Expressions;
using EightOhm.Quantities;

namespace EightOhm.Explaining;

/// <content>Calls: of the functions that formulas are written with, of other formulas, of anything else.</content>
internal sealed partial class MathTree
{
    private MathNode Call(MethodCallExpression call)
    {
        if (call.Method.DeclaringType == typeof(Literals))
            return Shown(bindings.Value(call));
        var args = call.Arguments;
        if (call.Method is { IsSpecialName: true, Name: "get_Item" } && args.Count == 1)
            return Item(call, call.Object!, args[0]);
        if (FormulaFunction.Of(call.Method) is not { } function)
            return numbers ? Shown(bindings.Value(call)) : Named(call);
        return function.Form switch
        {
            FunctionForm.Root => new RootNode(Of(args[0])),
            FunctionForm.Power => new PowerNode(Of(args[0]), Of(args[1])),
            FunctionForm.PowerOfTen => new PowerNode(new NumberNode("10"), Of(args[0])),
            FunctionForm.Parallel => new InfixNode("∥", Of(args[0]), Of(args[1])),
            FunctionForm.Equation => new InfixNode("=", Of(args[0]), Of(args[1])),
            FunctionForm.Sum => Sum(args[0], (LambdaExpression)Bare(args[1])),
            FunctionForm.Itself => Of(args[0]),
            FunctionForm.Constant => Constant(args[0], args[1]),
            _ => new CallNode(function.Written, [.. args.Select(Of)]),
        };
    }

    // A call whose steps stand elsewhere, or nowhere: its name, its object, its arguments.
    private CallNode Named(MethodCallExpression call)
    {
        var name = Formula(call) is { } formula ? FormulaName(formula) : PlainName(call.Method.Name);
        // What reads as a method of its first argument in code reads so on paper.
        return call.Object is null && call.Method.IsDefined(typeof(System.Runtime.CompilerServices.ExtensionAttribute), false) && Owner(call.Arguments[0]) is { } first
            ? new CallNode(name, [.. call.Arguments.Skip(1).Select(Of)], first)
            : new CallNode(name, [.. call.Arguments.Select(Of)], Owner(call.Object));
    }

    private MathNode? Owner(Expression? owner)
    {
        if (owner is null || IsHost(owner) || NameOf(owner) == Self)
            return null;
        if (NameOf(owner) is not { } name)
            return new MathTree(bindings, numbers: false, applying).Of(owner);
        if (_objects.TrueForAll(o => o.Name != name))
            _objects.Add((name, bindings.Value(owner)));
        return new NameNode(name);
    }

    private static bool IsOpaque(MethodCallExpression call) =>
        call.Method.DeclaringType != typeof(Literals) && call.Method is not { IsSpecialName: true } && FormulaFunction.Of(call.Method) is null;

    // A constant by its name, or by its value where the numbers are put in.
    private MathNode Constant(Expression name, Expression value)
    {
        var text = (string)((ConstantExpression)name).Value!;
        return text == nameof(Math.PI) ? new NameNode("pi") : numbers ? Shown(bindings.Value(value)) : new NameNode(text);
    }

    // A local function's name as it was written.
    private static string PlainName(string name)
    {
        var at = name.IndexOf(">g__", StringComparison.Ordinal);
        return at < 0 ? name : name[(at + 4)..name.LastIndexOf('|')];
    }
}
