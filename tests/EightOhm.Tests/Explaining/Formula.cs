using System.Reflection;

namespace EightOhm.Tests.Explaining;

/// <summary>A formula to be called by the tests.</summary>
internal static class Formula
{
    public static object Invoke(MemberInfo formula, object[] inputs)
    {
        var method = formula as MethodInfo ?? ((PropertyInfo)formula).GetMethod!;
        return method.IsStatic
            ? method.Invoke(null, BindingFlags.DoNotWrapExceptions, null, inputs, null)!
            : method.Invoke(inputs[0], BindingFlags.DoNotWrapExceptions, null, inputs[1..], null)!;
    }

    public static string Name(MemberInfo m) => m is MethodInfo f
        ? $"{m.DeclaringType!.Name}.{m.Name}({string.Join(", ", f.GetParameters().Select(p => p.Name))})"
        : $"{m.DeclaringType!.Name}.{m.Name}";
}
