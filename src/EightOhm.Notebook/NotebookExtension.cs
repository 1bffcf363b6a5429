using Microsoft.DotNet.Interactive;

namespace EightOhm.Notebook;

/// <summary>Brings EightOhm into a notebook kernel.</summary>
public static class NotebookExtension
{
    /// <summary>Registers formatters and brings usings and helpers in.</summary>
    /// <param name="kernel">The root kernel of the notebook.</param>
    public static void Load(Kernel kernel) => ArgumentNullException.ThrowIfNull(kernel);
}
