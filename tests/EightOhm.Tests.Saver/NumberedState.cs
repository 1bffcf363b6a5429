using System.Globalization;

namespace EightOhm.Tests.Saver;

/// <summary>States of a record that can be told whole from half: a number, and a long note that repeats it.</summary>
public static class NumberedState
{
    public static string Note(int n) => string.Join(' ', Enumerable.Repeat(n.ToString(CultureInfo.InvariantCulture), 20_000));
}
