using System.Reflection;
using EightOhm.Circuits;

namespace EightOhm.Display.Tests.Schematics;

/// <summary>The schematics of the chapters as code, each a method of this class in a file of its subject. Their values are invented.</summary>
public static partial class Examples
{
    private static readonly Dictionary<string, Func<Circuit>> All = typeof(Examples).GetMethods(BindingFlags.Public | BindingFlags.Static)
        .Where(m => m.ReturnType == typeof(Circuit) && m.GetParameters().Length == 0).ToDictionary(m => m.Name, m => m.CreateDelegate<Func<Circuit>>());

    /// <summary>Their names.</summary>
    public static IEnumerable<string> Names => All.Keys;

    /// <summary>One of them.</summary>
    /// <param name="name">Its name.</param>
    public static Circuit Of(string name) => All[name]();
}
