using System.Collections.Frozen;
using System.Reflection;
using EightOhm.Display.Figures;
using EightOhm.Display.Formulas;
using EightOhm.Display.Schematics;
using EightOhm.Display.Tables;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display;

/// <summary>The register of how each kind of result is shown, for any host: quantities and lists of them, formulas, tables, figures, and every type of the rooms.</summary>
public static class DisplayRegister
{
    private static readonly FrozenDictionary<Type, DisplayForm> Forms = Collect();

    /// <summary>All forms, each type once. A type that a room adds later is here by itself.</summary>
    public static IReadOnlyCollection<DisplayForm> All => Forms.Values;

    /// <summary>The form of a type: its own, or that of a base type or interface that has one; null where there is none.</summary>
    /// <param name="type">The type of a value.</param>
    public static DisplayForm? Find(Type type)
    {
        ArgumentNullException.ThrowIfNull(type);
        for (var at = type; at is not null; at = at.BaseType)
        {
            if (Forms.TryGetValue(at, out var own) || (at.IsConstructedGenericType && Forms.TryGetValue(at.GetGenericTypeDefinition(), out own)))
                return own;
        }

        return type.GetInterfaces().Select(i => Forms.GetValueOrDefault(i)).FirstOrDefault(f => f is not null);
    }

    private static FrozenDictionary<Type, DisplayForm> Collect()
    {
        var forms = new Dictionary<Type, DisplayForm>();
        foreach (var form in Values().Concat(OfRooms()).Concat(Written()))
            forms[form.Type] = form;
        return forms.ToFrozenDictionary();
    }

    // What every host can show without any room: formulas, tables, figures, numbers, quantities, lists of them.
    private static IEnumerable<DisplayForm> Values()
    {
        yield return new(typeof(Explanation), v => ExplanationHtml.Write((Explanation)v), v => v.ToString()!, v => Latex.Write((Explanation)v));
        yield return new(typeof(Sentence), v => SentenceHtml.Write((Sentence)v), v => v.ToString()!);
        yield return DisplayForm.Of(typeof(Table), v => (Table)v);
        yield return new(typeof(Figure), v => FigureHtml.Render((Figure)v), v => ((Figure)v).AltText);
        yield return new(typeof(StackedFigures), v => FigureHtml.Render((StackedFigures)v), v => ((StackedFigures)v).AltText);
        yield return new(typeof(double), v => ValueText.Span(ValueText.Number((double)v)), v => ValueText.Number((double)v));
        yield return new(typeof(IQuantity), v => ValueText.Span(ValueText.Other((IQuantity)v)), v => ValueText.Other((IQuantity)v));
        foreach (var chosen in ListsOf(typeof(QuantityInUnit)).Append(typeof(QuantityInUnit)))
            yield return new(chosen, v => ValueText.Span(ValueText.List(v)), ValueText.List);
        foreach (var kind in QuantityKinds.All)
        {
            if (kind.Style != FormatStyle.Number)
                yield return new(kind.Type, v => ValueText.Span(QuantityFormat.Long(v)), v => QuantityFormat.Long(v));
            foreach (var list in ListsOf(kind.Type))
                yield return new(list, v => ValueText.Span(ValueText.List(v)), ValueText.List);
        }
    }

    // What a room's type says of itself: its figures as a table, or its own words.
    private static IEnumerable<DisplayForm> OfRooms()
    {
        foreach (var type in Rooms.Types.Where(t => QuantityKinds.Find(t) is null))
        {
            if (type is { IsAbstract: false, IsGenericTypeDefinition: false } && Facts.Has(type))
                yield return DisplayForm.Of(type, Facts.Of);
            else if (SpeaksForItself(type))
                yield return new(type, ValueText.Words, v => v.ToString()!);
        }
    }

    // The methods that show a type in a way of its own; they win over what the type says of itself.
    private static IEnumerable<DisplayForm> Written() =>
        from type in typeof(DisplayRegister).Assembly.GetTypes()
        from method in type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly)
        let shows = method.GetCustomAttribute<ShowsAttribute>()
        where shows is not null
        let parameter = method.GetParameters()[0].ParameterType
        from shown in shows.As.Length > 0 ? shows.As : Item(parameter) is { } item ? ListsOf(item) : [Open(parameter)]
        select FormOf(shown, method);

    private static DisplayForm FormOf(Type type, MethodInfo method)
    {
        object Call(object value) => Closed(method, type, value).Invoke(null, BindingFlags.DoNotWrapExceptions, null, [value, .. method.GetParameters().Skip(1).Select(p => p.DefaultValue)], null)!;
        return method.ReturnType == typeof(Table)
            ? DisplayForm.Of(type, v => (Table)Call(v))
            : new(type, v => Html(Call(v)), v => Text(v, Call(v)));
    }

    private static Type Open(Type parameter) => parameter.ContainsGenericParameters ? parameter.GetGenericTypeDefinition() : parameter;

    // A method for all curves becomes that for curves of the value's two quantities.
    private static MethodInfo Closed(MethodInfo method, Type type, object value)
    {
        if (!method.IsGenericMethodDefinition)
            return method;
        var at = value.GetType();
        while (!(at.IsConstructedGenericType && at.GetGenericTypeDefinition() == type))
            at = at.BaseType!;
        return method.MakeGenericMethod(at.GetGenericArguments());
    }

    private static string Html(object shown) => shown switch
    {
        Figure figure => FigureHtml.Render(figure),
        StackedFigures stack => FigureHtml.Render(stack),
        Schematic schematic => schematic.Html(),
        _ => (string)shown,
    };

    private static string Text(object value, object shown) => shown switch
    {
        Figure figure => figure.AltText,
        StackedFigures stack => stack.AltText,
        Schematic schematic => schematic.ToString(),
        // HTML of its own beside the words that the value has of itself.
        _ => value.ToString()!,
    };

    private static Type? Item(Type parameter) =>
        parameter.IsConstructedGenericType && parameter.GetGenericTypeDefinition() == typeof(IEnumerable<>) ? parameter.GetGenericArguments()[0] : null;

    private static Type[] ListsOf(Type item) =>
        [item.MakeArrayType(), typeof(List<>).MakeGenericType(item), typeof(IReadOnlyList<>).MakeGenericType(item)];

    // A sheet, a budget, a verdict.
    private static bool SpeaksForItself(Type type) =>
        type is { IsClass: true, IsAbstract: false } && !typeof(Delegate).IsAssignableFrom(type) && !typeof(Attribute).IsAssignableFrom(type)
        && type.GetMethod(nameof(ToString), Type.EmptyTypes)!.DeclaringType == type;
}
