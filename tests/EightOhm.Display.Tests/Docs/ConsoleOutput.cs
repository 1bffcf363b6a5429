namespace EightOhm.Display.Tests.Docs;

/// <summary>What an action writes to the console. The console is one for the process, so these tests run alone.</summary>
[CollectionDefinition(nameof(ConsoleOutput), DisableParallelization = true)]
public sealed class ConsoleOutput
{
    public static string Of(Action action)
    {
        ArgumentNullException.ThrowIfNull(action);
        var before = Console.Out;
        using var text = new StringWriter { NewLine = "\n" };
        Console.SetOut(text);
        try
        {
            action();
        }
        finally
        {
            Console.SetOut(before);
        }

        return text.ToString();
    }
}
