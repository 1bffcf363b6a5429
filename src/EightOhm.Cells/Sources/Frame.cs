using Microsoft.CodeAnalysis;

namespace EightOhm.Cells.Sources;

/// <summary>One call of a function, told from other calls by the way that led to it, or the run of a cell.</summary>
/// <param name="id">Its number.</param>
/// <param name="way">The last calls that led to it, the last first.</param>
/// <param name="lexical">The frame in whose text the function stands.</param>
/// <param name="function">The function; null for a cell.</param>
internal sealed class Frame(int id, Way? way, Frame? lexical, ISymbol? function)
{
    public int Id { get; } = id;

    public Way? Way { get; } = way;

    /// <summary>The frame in whose text the function stands; its variables are seen from here.</summary>
    public Frame? Lexical { get; } = lexical;

    public ISymbol? Function { get; } = function;

    /// <summary>The object that a method runs on.</summary>
    public Value This { get; set; }

    /// <summary>Parameters and local variables, local functions among them.</summary>
    public Dictionary<ISymbol, int> Slots { get; } = new(SymbolEqualityComparer.Default);

    /// <summary>What a local or a parameter by reference stands for.</summary>
    public Dictionary<ISymbol, (Frame Frame, IOperation Target)> Aliases { get; } = new(SymbolEqualityComparer.Default);

    /// <summary>Where a break, a continue or a return leads.</summary>
    public Dictionary<ILabelSymbol, Jump> Jumps { get; } = new(SymbolEqualityComparer.Default);

    /// <summary>The loops and switches that are running, the innermost last.</summary>
    public List<Jump> Running { get; } = [];

    public Value Returned { get; set; }

    public Value Yielded { get; set; }

    /// <summary>What decided over a return so far: all that runs after it runs for that reason too.</summary>
    public Value Residual { get; set; }

    /// <summary>What decided over a throw: the caller's rest runs for that reason too.</summary>
    public Value Threw { get; set; }

    /// <summary>The states at the returns.</summary>
    public State? Exit { get; set; }

    /// <summary>Forgets an earlier run of the same call; the variables stay, because closures may have kept them.</summary>
    public void Begin()
    {
        (Returned, Yielded, Residual, Threw, Exit) = (default, default, default, default, null);
        Jumps.Clear();
        Running.Clear();
        Aliases.Clear();
    }
}

/// <summary>The places of the last calls, the last first. Longer ways are not told apart: then one frame serves several calls, one after the other.</summary>
internal sealed record Way(SyntaxNode? Last, SyntaxNode? Before, SyntaxNode? First);

/// <summary>A loop or a switch while it runs: who left it or went on early, and why.</summary>
internal sealed class Jump(IReadOnlyList<bool> shared)
{
    public State Left { get; } = new(shared) { IsDead = true };

    public State WentOn { get; } = new(shared) { IsDead = true };

    public Value Residual { get; set; }

    public ILabelSymbol? Continue { get; init; }
}

/// <summary>A function as a value.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Method">Its symbol.</param>
/// <param name="Body">What it does; null where a library's code does it.</param>
/// <param name="Lexical">The frame whose variables it sees.</param>
/// <param name="This">The object that it runs on.</param>
/// <param name="Begun">The frame of an iterator that was called and runs only when it is enumerated.</param>
internal sealed record Closure(int Id, IMethodSymbol Method, IOperation? Body, Frame? Lexical, Value This, Frame? Begun);

/// <summary>A cell that this reader does not follow; all that it touches then hangs on every entry.</summary>
internal sealed class CannotReadException(string reason) : Exception(reason);
