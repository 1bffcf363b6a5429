using System.Reflection;
using System.Reflection.Emit;

namespace EightOhm.Record;

/// <summary>The fields, methods and constructors that a method's code names, in order.</summary>
internal static class CodeReader
{
    private static readonly OpCode[] Short = new OpCode[256];
    private static readonly OpCode[] Long = new OpCode[256];

    static CodeReader()
    {
        foreach (var code in typeof(OpCodes).GetFields().Select(f => f.GetValue(null)).OfType<OpCode>())
            (code.Size == 1 ? Short : Long)[(byte)code.Value] = code;
    }

    /// <summary>What the code names; null when there is no code to be read.</summary>
    public static IReadOnlyList<MemberInfo>? Read(MethodBase method)
    {
        byte[]? code;
        try
        {
            code = method.GetMethodBody()?.GetILAsByteArray();
        }
        catch (InvalidOperationException)
        {
            // Code made at run time keeps no text of itself.
            return null;
        }

        if (code is null)
            return null;
        var named = new List<MemberInfo>();
        for (var at = 0; at < code.Length;)
        {
            var op = code[at] == 0xFE ? Long[code[at + 1]] : Short[code[at]];
            at += op.Size;
            if (op.OperandType is OperandType.InlineField or OperandType.InlineMethod or OperandType.InlineTok && Resolve(method, BitConverter.ToInt32(code, at)) is { } member)
                named.Add(member);
            at += Operand(op, code, at);
        }

        return named;
    }

    private static MemberInfo? Resolve(MethodBase method, int token)
    {
        var types = method.DeclaringType is { IsGenericType: true } owner ? owner.GetGenericArguments() : null;
        var own = method.IsGenericMethod ? method.GetGenericArguments() : null;
        var member = method.Module.ResolveMember(token, types, own);
        return member is FieldInfo or MethodBase ? member : null;
    }

    private static int Operand(OpCode op, byte[] code, int at) => op.OperandType switch
    {
        OperandType.InlineNone => 0,
        OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
        OperandType.InlineVar => 2,
        OperandType.InlineI8 or OperandType.InlineR => 8,
        OperandType.InlineSwitch => 4 + (4 * BitConverter.ToInt32(code, at)),
        _ => 4,
    };
}
