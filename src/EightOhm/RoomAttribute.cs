namespace EightOhm;

/// <summary>Announces a room: a folder of one subject of the trade. Whoever needs the rooms (what a cell sees, what is shown, the tests) asks the assembly.</summary>
/// <param name="name">The last part of the room's namespace.</param>
/// <param name="subject">What it holds, in a few words.</param>
[AttributeUsage(AttributeTargets.Assembly, AllowMultiple = true)]
public sealed class RoomAttribute(string name, string subject) : Attribute
{
    /// <summary>The last part of the room's namespace.</summary>
    public string Name { get; } = name;

    /// <summary>What it holds, in a few words.</summary>
    public string Subject { get; } = subject;

    /// <summary>The room's namespace.</summary>
    public string Namespace => $"{nameof(EightOhm)}.{Name}";
}
