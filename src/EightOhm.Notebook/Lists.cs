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
            foreach (var list in new[] { kind.Type.MakeArrayType(), typeof(List<>).MakeGenericType(kind.Type), typeof(IReadOnlyList<>).MakeGenericType(kind.Type) })
                Formatters.Both(list, v => $"<span class=\"eo-value\">{WebUtility.HtmlEncode(Text(v))}</span>", Text);
    }

    private static string Text(object list) => string.Join(", ", ((System.Collections.IEnumerable)list).Cast<object>().Select(v => Face.Of(v)));
}
