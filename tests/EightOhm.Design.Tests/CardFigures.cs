using System.Text.Json.Nodes;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Design.Tests;

/// <summary>Every figure of a card, each a place in its JSON, and the card with one of them moved.</summary>
internal static class CardFigures
{
    /// <summary>The paths of all values that carry a number.</summary>
    public static IReadOnlyList<string> Of(string json)
    {
        var found = new List<string>();
        Walk(JsonNode.Parse(json)!, found);
        return found;
    }

    /// <summary>The card's text with one figure multiplied.</summary>
    public static string With(string json, string path, double factor)
    {
        var root = JsonNode.Parse(json)!;
        var value = Find(root, path);
        var text = (string)value!;
        var number = QuantityText.ParseAny(text);
        var kind = QuantityKinds.Of(number.GetType());
        var moved = number is Temperature t
            ? QuantityFormat.Short(Temperature.FromDegreesCelsius(t.DegreesCelsius * factor), 6)
            : QuantityFormat.Short(kind.FromSi(kind.ToSi(number) * factor), 6);
        value!.ReplaceWith(moved);
        return root.ToJsonString();
    }

    private static void Walk(JsonNode node, List<string> found)
    {
        switch (node)
        {
            case JsonObject o:
                foreach (var (_, child) in o)
                    Walk(child!, found);
                break;
            case JsonArray a:
                foreach (var child in a)
                    Walk(child!, found);
                break;
            case JsonValue v when v.TryGetValue<string>(out var text) && text.Length > 0 && char.IsAsciiDigit(text[0]):
                found.Add(node.GetPath());
                break;
        }
    }

    private static JsonNode? Find(JsonNode root, string path)
    {
        var stack = new Stack<JsonNode>([root]);
        while (stack.TryPop(out var node))
        {
            if (node.GetPath() == path)
                return node;
            var children = node switch
            {
                JsonObject o => o.Select(p => p.Value!),
                JsonArray a => a.Select(c => c!),
                _ => [],
            };
            foreach (var child in children)
                stack.Push(child);
        }

        return null;
    }
}
