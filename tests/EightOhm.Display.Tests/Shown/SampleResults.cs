using System.Reflection;
using EightOhm.Quantities;
using EightOhm.Supply;
using EightOhm.Tests.Explaining;
using EightOhm.Thermal;

namespace EightOhm.Display.Tests.Shown;

/// <summary>A result of any type of the rooms: made as a user makes it, or asked of another that hands it out.</summary>
internal static class SampleResults
{
    private static readonly Dictionary<Type, object> ByHand = Bench().ToDictionary(v => v.GetType());

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

    // A rail over time is what a supply makes of it: columns of random lengths are none.
    private static bool Made(Type type) => ByHand.ContainsKey(type) || (type != typeof(RailWaveform) && Things.Can(type));

    private static IEnumerable<MethodInfo> Givers(Type type) =>
        from owner in Rooms.Types
        where owner != type && !owner.IsGenericTypeDefinition
        from method in owner.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
        where (Nullable.GetUnderlyingType(method.ReturnType) ?? method.ReturnType) == type && !method.ContainsGenericParameters
            && (method.IsStatic || Made(owner)) && method.GetParameters().All(p => Things.Can(p.ParameterType))
        select method;

    // Nodes belong to their network, and what is made of them as well.
    private static IEnumerable<object> Bench()
    {
        var net = new ThermalNetwork(35.degC);
        HeatNode junction = net.Node("junction", 0.05.J_per_K), sink = net.Node("sink", 400.J_per_K);
        net.Link(junction, sink, 1.18.K_per_W);
        net.Link(sink, net.Ambient, 0.9.K_per_W);
        var burst = HeatProfile.Burst(junction, 30.W, 60.s, 180.s);
        var sensor = new BiasSensor(sink, 2.1.mV_per_K);
        var bias = new BiasTracking(net, [junction], sensor, 46.V, 103.8.mA, 0.2725.Ohm, 2.1.mV_per_K);
        return [net, junction, burst, sensor, bias, new Heat(junction, 30.W), net.Steady(new Heat(junction, 30.W)), bias.Follow(600.s, [burst])];
    }
}
