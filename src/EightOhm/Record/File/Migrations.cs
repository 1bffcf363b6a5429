using EightOhm.Json;

namespace EightOhm.Record;

/// <summary>Older versions of the file, each brought to the next. A file is written in the present version at its first change, and not before.</summary>
internal static class Migrations
{
    private static readonly Func<JsonPart, JsonPart>[] Steps = [VersionOne.ToTwo];

    /// <summary>A file's content in the present version; its lines still point into the file.</summary>
    /// <exception cref="JsonFault">It is no record, or a newer one.</exception>
    public static JsonPart ToPresent(JsonPart root)
    {
        var format = root["format"];
        if (format.Text != RecordJson.Format)
            throw format.Fault($"this is not a design record (its format is \"{format.Text}\", not \"{RecordJson.Format}\").");
        var version = root["version"];
        if (version.Number > RecordJson.Version)
            throw version.Fault($"the record is of version {version.NumberText}; this EightOhm reads version {RecordJson.Version} and older. Use a newer EightOhm.");
        if (version.Number < 1 || version.Number != Math.Floor(version.Number))
            throw version.Fault($"there is no version {version.NumberText} of a record.");
        for (var step = (int)version.Number; step < RecordJson.Version; step++)
            root = Steps[step - 1](root);
        return root;
    }
}
