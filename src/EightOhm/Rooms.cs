using System.Reflection;

namespace EightOhm;

/// <summary>The rooms of the house, as each announced itself.</summary>
public static class Rooms
{
    /// <summary>All rooms, in the order of their names.</summary>
    public static IReadOnlyList<RoomAttribute> All { get; } =
        [.. typeof(Rooms).Assembly.GetCustomAttributes<RoomAttribute>().OrderBy(r => r.Name, StringComparer.Ordinal)];

    /// <summary>The public types of all rooms.</summary>
    public static IEnumerable<Type> Types => typeof(Rooms).Assembly.GetExportedTypes().Where(Holds);

    /// <summary>Whether a type belongs to a room.</summary>
    /// <param name="type">A type.</param>
    /// <returns>True for a type in the namespace of a room.</returns>
    public static bool Holds(Type type)
    {
        ArgumentNullException.ThrowIfNull(type);
        return type.Assembly == typeof(Rooms).Assembly && All.Any(r => r.Namespace == type.Namespace);
    }
}
