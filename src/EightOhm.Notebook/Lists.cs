using System.Net;
using EightOhm.Quantities;

namespace EightOhm.Notebook;

/// <summary>Lists of quantities: one line, the values between commas, instead of the host's table with its style sheet.</summary>
internal static class Lists
{
    /// <summary>Registers arrays and lists of every kind.</summary>
    public static void Register()
    {
        foreach (var kind in QuantityKinds.All)
            foreach (var list in Of(kind.Type))
                Formatters.Both(list, v => $"<span class=\"eo-value\">{WebUtility.HtmlEncode(Text(v))}</span>", Text);
    }

    /// <summary>The list types in which items of a type are shown.</summary>
    public static Type[] Of(Type item) =>
        [item.MakeArrayType(), typeof(List<>).MakeGenericType(item), typeof(IReadOnlyList<>).MakeGenericType(item)];

    private static string Text(object list) => string.Join(", ", ((System.Collections.IEnumerable)list).Cast<object>().Select(v => QuantityFormat.Short(v)));
}
