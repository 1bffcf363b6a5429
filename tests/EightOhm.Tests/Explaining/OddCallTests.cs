using System.Reflection;
using EightOhm.Loads;
using EightOhm.OutputStages;
using EightOhm.Devices;
using EightOhm.Protection;
using EightOhm.Quantities;
using EightOhm.Supply;
using EightOhm.Tests.Devices;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Tests.Explaining;

/// <summary>Whatever the constructors, solvers and members of the power side are given, they give finite numbers or say in words what is wrong.</summary>
public class OddCallTests
{
    private const int Draws = 20;

    private static readonly MethodBase[] All = [.. Rooms.Types.Where(t => !typeof(Delegate).IsAssignableFrom(t)).SelectMany(Calls)];

    public static TheoryData<string> Names => [.. All.Select(Name).Distinct()];

    [Theory]
    [MemberData(nameof(Names))]
    public void Odd_inputs_give_finite_values_or_a_refusal_in_words(string name)
    {
        foreach (var call in All.Where(m => Name(m) == name))
        {
            var random = new Random(name.Length);
            for (var draw = 0; draw < Draws; draw++)
            {
                object? target = null;
                object?[] inputs;
                try
                {
                    target = call.IsStatic || call is ConstructorInfo ? null : Things.Make(call.DeclaringType!, "this", random);
                    inputs = [.. call.GetParameters().Select(p => Things.Make(p.ParameterType, p.Name!, random))];
                }
                catch (Exception e) when (OddInputs.InWords(e))
                {
                    continue; // the ordinary ones do not fit each other: draw again
                }

                if (inputs.Length > 0)
                    OddInputs.Put(inputs, random);
                string said = $"{name} of ({string.Join("; ", inputs.Select(OddInputs.Text))}) on {target}";
                using var time = new CancellationTokenSource(TimeSpan.FromMinutes(1));
                using var work = Work.Begin(time.Token);
                try
                {
                    var value = call is ConstructorInfo made ? made.Invoke(BindingFlags.DoNotWrapExceptions, null, inputs, null) : call.Invoke(target, BindingFlags.DoNotWrapExceptions, null, inputs, null);
                    // A record of figures keeps those that it is given; what computes must not make bad ones.
                    if (call is not ConstructorInfo && !OddInputs.Numbers(value).All(double.IsFinite))
                        Assert.Fail($"{said} gave {value}");
                }
                catch (OperationCanceledException)
                {
                    Assert.Fail($"{said} had not ended after a minute");
                }
                catch (Exception refusal) when (refusal is not Xunit.Sdk.XunitException)
                {
                    Assert.True(OddInputs.InWords(refusal), $"{said} threw {refusal.GetType().Name}: {refusal.Message}");
                }
            }
        }
    }

    private static IEnumerable<MethodBase> Calls(Type type)
    {
        const BindingFlags all = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        IEnumerable<MethodBase> made = type.IsAbstract || type.IsValueType || type.GetConstructors().Any(c => c.GetParameters().Any(p => p.ParameterType.IsByRef)) ? [] : type.GetConstructors();
        var members = type.GetMethods(all).Where(m => !m.IsSpecialName && m.Name is not ("ToString" or "GetHashCode" or "Equals" or "Deconstruct" or "PrintMembers" or "<Clone>$" or "GetType") && m.ReturnType != typeof(void) && !m.ContainsGenericParameters);
        return made.Concat(members).Where(m => (m.IsStatic || m is ConstructorInfo || Things.Can(type)) && m.GetParameters().All(p => Things.Can(p.ParameterType)));
    }

    private static string Name(MethodBase m) => $"{m.DeclaringType!.Name}.{m.Name}({string.Join(", ", m.GetParameters().Select(p => p.Name))})";
}

/// <summary>Ordinary things of the power side, by their own constructors and factories.</summary>
internal static class Things
{
    private static readonly Transistor Card = Transistor.Load(Cards.Output);

    private static readonly Dictionary<Type, MethodBase[]> Makers = [];

    public static bool Can(Type type) => Can(type, 0);

    public static object? Make(Type type, string name, Random random)
    {
        if (Nullable.GetUnderlyingType(type) is { } inner)
            return random.Next(2) == 0 ? null : Make(inner, name, random);
        if (type == typeof(Transistor))
            return Card;
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
        if (type == typeof(Transistor) || type.IsEnum || type == typeof(bool) || type == typeof(string) || Inputs.Has(type, ""))
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
