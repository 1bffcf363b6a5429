using EightOhm.Json;
using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>The first version of the file: Given, Let and Found, limits as bare values, functions by what they were called in the code.</summary>
/// <remarks>A Given becomes a target, as nothing says which of them were decisions; a Let is derived, a Found is computed and keeps its marks. A
/// limit becomes a target of its own, so that it has a name and can be moved. Nothing is lost, and nothing is made up.</remarks>
internal static class VersionOne
{
    /// <exception cref="JsonFault">It is not such a file.</exception>
    public static JsonPart ToTwo(JsonPart root)
    {
        root.Allow("format", "version", "design", "entries", "requirements");
        var entries = root["entries"];
        var made = entries.Items.Select(Entry).ToList();
        var taken = entries.Items.Select(e => e["name"].Text).ToHashSet(StringComparer.Ordinal);
        var labels = new HashSet<string>(StringComparer.Ordinal);
        var requirements = root["requirements"].Items.Select(r => Requirement(r, made, taken, labels)).ToList();
        return root.NewObject(
            ("format", root["format"]),
            ("version", root["version"].NewNumber("2")),
            ("design", root["design"]),
            ("entries", entries.NewList(made)),
            ("requirements", root["requirements"].NewList(requirements)));
    }

    private static JsonPart Entry(JsonPart entry)
    {
        var role = entry["role"];
        switch (role.Text)
        {
            case "Given":
                entry.Allow("name", "role", "note", "value", "set");
                var (kind, value) = Value(entry["value"]);
                return entry.NewObject(("name", entry["name"]), ("role", role.NewText("target")), ("note", entry.Optional("note")), ("kind", kind), ("value", value), ("set", entry.Optional("set") is { } set ? Value(set).Text : null));
            case "Let":
                entry.Allow("name", "role", "note", "rule", "from", "gives", "value", "expression");
                var from = entry["from"].Members;
                return entry.NewObject(
                    ("name", entry["name"]),
                    ("role", role.NewText("derived")),
                    ("note", entry.Optional("note")),
                    ("kind", entry["gives"]),
                    ("from", entry["from"].NewList(from.Select(f => f.Value.NewText(f.Key)))),
                    ("expression", VersionOneRules.Expression(entry["expression"])));
            case "Found":
                entry.Allow("name", "role", "note", "value", "from");
                var (foundKind, found) = Value(entry["value"]);
                // A Found that named nothing was computed from nobody knows what.
                var unknown = entry["from"].Members.Count == 0 ? entry["from"].NewFlag(true) : null;
                return entry.NewObject(("name", entry["name"]), ("role", role.NewText("computed")), ("note", entry.Optional("note")), ("kind", foundKind), ("value", found), ("hangsOnAll", unknown), ("from", entry["from"]));
            default:
                throw role.Fault($"the role \"{role.Text}\" is not known; known are Given, Let, Found.");
        }
    }

    private static JsonPart Requirement(JsonPart part, List<JsonPart> entries, HashSet<string> taken, HashSet<string> labels)
    {
        part.Allow("entry", "says", "sense", "low", "high");
        var (entry, sense) = (part["entry"], part["sense"]);
        if (sense.Text is not ("AtLeast" or "AtMost" or "Between"))
            throw sense.Fault($"\"{sense.Text}\" is not a limit; known are AtLeast, AtMost, Between.");
        var label = part.Optional("says")?.Text ?? $"{entry.Text}, {sense.Text switch { "AtLeast" => "at least", "AtMost" => "at most", _ => "between" }}";
        return part.NewObject(
            ("label", part.NewText(Unique(label, labels, n => n == 1 ? $"{label} ({entry.Text})" : $"{label} ({entry.Text}, {n})"))),
            ("entry", entry),
            ("atLeast", sense.Text == "AtMost" ? null : Limit(part["low"], $"{entry.Text}_min")),
            ("atMost", sense.Text == "AtLeast" ? null : Limit(part["high"], $"{entry.Text}_max")));

        JsonPart Limit(JsonPart end, string name)
        {
            var (kind, value) = Value(end);
            if (KindNames.Find(kind.Text) is { } known && RequirementLimit.IsNatural(known, RecordReader.ReadValue(value, known)))
                return end.NewObject(("kind", kind), ("value", value));
            var target = end.NewText(Unique(name, taken, n => $"{name}{n + 1}"));
            entries.Add(end.NewObject(("name", target), ("role", end.NewText("target")), ("note", end.NewText($"limit of: {label}")), ("kind", kind), ("value", value)));
            return end.NewObject(("entry", target));
        }
    }

    // { value, unit, kind, reads } was one value; now it is the kind, and the number with its unit.
    private static (JsonPart Kind, JsonPart Text) Value(JsonPart part)
    {
        part.Allow("value", "unit", "kind", "reads");
        _ = part["value"].Number;
        return (part["kind"], part["value"].NewText($"{part["value"].NumberText} {part["unit"].Text}".TrimEnd()));
    }

    private static string Unique(string text, HashSet<string> taken, Func<int, string> other)
    {
        var unique = text;
        for (var n = 1; !taken.Add(unique); n++)
            unique = other(n);
        return unique;
    }
}
