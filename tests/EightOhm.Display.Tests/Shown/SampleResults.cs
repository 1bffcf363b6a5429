using System.Reflection;
using EightOhm.Tests.Explaining;

namespace EightOhm.Display.Tests.Shown;

/// <summary>A result of any type of the rooms: made as a user makes it, or asked of another that hands it out.</summary>
internal static class SampleResults
{
    private static readonly Dictionary<Type, object> ByHand = HandMade.All.ToDictionary(v => v.GetType());

    public static bool Can(Type type) => Made(type) || Givers(type).Any();

    public static object Make(Type type, int draw)
    {
        var random = new Random(draw);
        if (ByHand.TryGetValue(type, out var own))
            return own;
        if (Made(type))
            return Things.Make(type, "this", random)!;
        var givers = Givers(type).ToArray();
        for (var tries = 0; ; tries++)
        {
            var giver = givers[random.Next(givers.Length)];
            try
            {
                var owner = giver.IsStatic ? null : Make(giver.DeclaringType!, random.Next());
                var inputs = giver.GetParameters().Select(p => Things.Make(p.ParameterType, p.Name!, random)).ToArray();
                if (giver.Invoke(owner, BindingFlags.DoNotWrapExceptions, null, inputs, null) is { } given)
                    return given;
            }
            catch (Exception e) when (OddInputs.InWords(e) && tries < 200)
            {
            }
        }
    }

    private static bool Made(Type type) => ByHand.ContainsKey(type) || Things.Can(type);

    private static IEnumerable<MethodInfo> Givers(Type type) =>
        from owner in Rooms.Types
        where owner != type && !owner.IsGenericTypeDefinition
        from method in owner.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
        where (Nullable.GetUnderlyingType(method.ReturnType) ?? method.ReturnType) == type && !method.ContainsGenericParameters
            && (method.IsStatic || Made(owner)) && method.GetParameters().All(p => Things.Can(p.ParameterType))
        select method;
}
