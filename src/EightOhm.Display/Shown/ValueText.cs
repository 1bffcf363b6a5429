using System.Collections;
using System.Globalization;
using System.Net;
using EightOhm.Display.Formulas;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display;

/// <summary>Single values and lists of them, as text and as a span.</summary>
internal static class ValueText
{
    public static string Span(string text) => $"<span class=\"eo-value\">{WebUtility.HtmlEncode(text)}</span>";

    public static string Words(object value) => $"<pre class=\"eo-words\" style=\"white-space:pre-wrap\">{SymbolHtml.Write(value.ToString() ?? "")}</pre>";

    // A caller's own arithmetic may come to this; our functions refuse before.
    public static string Number(double number) => double.IsFinite(number) ? QuantityFormat.Short(number) : "not a finite number (a division by zero?)";

    // A quantity outside the house's table: UnitsNet's own words, in the invariant culture.
    public static string Other(IQuantity quantity) => quantity.ToString(CultureInfo.InvariantCulture)!;

    public static string List(object list) => list is QuantityInUnit one ? one.ToString() : string.Join(", ", ((IEnumerable)list).Cast<object>().Select(v => v is QuantityInUnit chosen ? chosen.ToString() : QuantityFormat.Short(v)));
}
