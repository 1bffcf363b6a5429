using System.Reflection;
using EightOhm.Devices;
using EightOhm.Tests.Devices;

namespace EightOhm.Tests.Explaining;

/// <summary>Ordinary things of the rooms, by their own constructors and factories.</summary>
internal static class Things
{
    private static readonly Transistor Card = Transistor.Load(Cards.Output), Complement = Transistor.Load(Cards.OutputPnp);

    private static readonly Dictionary<Type, MethodBase[]> Makers = [];

    public static bool Can(Type type) => Can(type, 0);

    public static object? Make(Type type, string name, Random random)
    {
        if (Nullable.GetUnderlyingType(type) is { } inner)
            return random.Next(2) == 0 ? null : Make(inner, name, random);
        if (type == typeof(Transistor))
            return name == "pnp" ? Complement : Card;
        // No random points descend as those of a printed area do.
        if (type == typeof(SafeAreaLine))
            return Card.SafeAreaLines[random.Next(Card.SafeAreaLines.Count)];
        if (type.IsEnum)
            return Enum.GetValues(type).GetValue(random.Next(Enum.GetValues(type).Length));
        if (type == typeof(bool))
            return random.Next(2) == 0;
        if (type == typeof(string))
            return "a line";
        if (Inputs.Has(type, name))
            return Inputs.Of(type, name, random);
        if (Item(type) is { } item)
        {
            var list = Array.CreateInstance(item, random.Next(1, 5));
            for (var i = 0; i < list.Length; i++)
                list.SetValue(Make(item, name, random), i);
            return list;
        }

        var makers = MakersOf(type);
        for (var tries = 0; ; tries++)
        {
            var maker = makers[random.Next(makers.Length)];
            try
            {
                object?[] inputs = [.. maker.GetParameters().Select(p => Make(p.ParameterType, p.Name!, random))];
                return maker is ConstructorInfo made ? made.Invoke(BindingFlags.DoNotWrapExceptions, null, inputs, null) : maker.Invoke(null, BindingFlags.DoNotWrapExceptions, null, inputs, null);
            }
            catch (Exception e) when (OddInputs.InWords(e) && tries < 100)
            {
            }
        }
    }

    private static bool Can(Type type, int depth)
    {
        if (depth > 4 || type.IsByRef)
            return false;
        if (type == typeof(Transistor) || type == typeof(SafeAreaLine) || type.IsEnum || type == typeof(bool) || type == typeof(string) || Inputs.Has(type, ""))
            return true;
        if ((Nullable.GetUnderlyingType(type) ?? Item(type)) is { } inner)
            return Can(inner, depth + 1);
        return type.Namespace?.StartsWith("EightOhm", StringComparison.Ordinal) == true && MakersOf(type, depth).Length > 0;
    }

    private static MethodBase[] MakersOf(Type type, int depth = 0)
    {
        if (Makers.TryGetValue(type, out var known))
            return known;
        var found = type.GetConstructors().Cast<MethodBase>()
            .Concat(type.GetMethods(BindingFlags.Public | BindingFlags.Static).Where(m => m.ReturnType == type && !m.IsSpecialName))
            .Where(m => !type.IsAbstract && m.GetParameters().All(p => p.ParameterType != type && Can(p.ParameterType, depth + 1)));
        return Makers[type] = [.. found];
    }

    private static Type? Item(Type type) =>
        type.IsArray ? type.GetElementType() : type.IsGenericType && (type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>) || type.GetGenericTypeDefinition() == typeof(IEnumerable<>)) ? type.GetGenericArguments()[0] : null;
}
