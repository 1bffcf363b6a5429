using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;

namespace EightOhm.Cells.Sources;

/// <summary>Calls: of cells' functions, which are followed, and of libraries, of which it is known what they may do.</summary>
internal sealed partial class Interpreter
{
    private Value Invocation(IInvocationOperation call)
    {
        var method = call.TargetMethod;
        if (Verbs.Find(method) is { } verb)
            return Do(call, verb);
        var receiver = method.ContainingType is { IsScriptClass: true } ? default : Eval(call.Instance);
        var arguments = Arguments(call.Arguments);
        var references = References(call.Arguments, arguments.Count);
        if (method.MethodKind == MethodKind.DelegateInvoke)
            return CallFunctions(receiver, arguments, call, references);
        if (method.MethodKind == MethodKind.LocalFunction)
            return CallFunctions(_state.Get(SlotOf(method.OriginalDefinition)), arguments, call, references);
        if (method.MethodKind == MethodKind.Constructor)
            return ConstructAlso(method, arguments, call.Syntax, references);
        if (_code.IsOfACell(method))
            return Virtual(method, receiver, arguments, call.Syntax, references);
        var value = Library(call, method, receiver, arguments, call.Type);
        foreach (var argument in call.Arguments.Where(a => a.Parameter?.RefKind is RefKind.Ref or RefKind.Out))
            Assign(argument.Value, _values.Union(ItemOf(arguments.Aggregate(receiver, _values.Union), argument.Parameter!.Type), value), weak: argument.Parameter!.RefKind == RefKind.Ref);
        return value;
    }

    // By the parameters' order, evaluated in the order of the text.
    private List<Value> Arguments(ImmutableArray<IArgumentOperation> arguments)
    {
        var values = new List<Value>(Enumerable.Repeat(default(Value), arguments.Length));
        for (var i = 0; i < arguments.Length; i++)
        {
            var at = arguments[i].Parameter?.Ordinal ?? i;
            values[Math.Min(at, values.Count - 1)] = Settle(arguments[i].Parameter?.Type, Eval(arguments[i].Value));
        }

        return values;
    }

    // What the parameters by reference stand for.
    private List<(Frame Frame, IOperation Target)?>? References(ImmutableArray<IArgumentOperation> arguments, int count)
    {
        if (!arguments.Any(a => a.Parameter?.RefKind is RefKind.Ref or RefKind.Out))
            return null;
        var references = new List<(Frame, IOperation)?>(Enumerable.Repeat<(Frame, IOperation)?>(null, count));
        foreach (var argument in arguments.Where(a => a.Parameter?.RefKind is RefKind.Ref or RefKind.Out))
        {
            // The variable is declared here, not in the function.
            if (argument.Value is IDeclarationExpressionOperation { Expression: ILocalReferenceOperation declared })
                Declare(_frame, declared.Local);
            references[argument.Parameter!.Ordinal] = (_frame, argument.Value is IDeclarationExpressionOperation declaration ? declaration.Expression : argument.Value);
        }

        return references;
    }

    private Value Creation(IObjectCreationOperation creation)
    {
        var type = (INamedTypeSymbol)creation.Type!;
        var arguments = Arguments(creation.Arguments);
        var made = _heap.Make(creation.Syntax, _frame, _cell, type);
        var value = _values.Of(new ObjectAtom(made.Id));
        if (_code.IsOfACell(type))
            Construct(made, type, creation.Constructor, arguments, creation.Syntax, References(creation.Arguments, arguments.Count));
        else if (Used(creation, creation.Constructor, default, arguments) is var used)
            _heap.Add(made, LibraryCalls.IsFresh(creation.Constructor) ? Items(type, HoldsFunctions(type) ? used : Enumerated(used)) : used);
        if (creation.Initializer is { } initializer)
            Initialize(made, initializer.Initializers);
        return _kinds.IsPlain(type) ? Resolve(value) : value;
    }

    /// <summary>A call of a cell's method or accessor: of every one that can stand behind it.</summary>
    private Value Virtual(IMethodSymbol method, Value receiver, IReadOnlyList<Value> arguments, SyntaxNode site, IReadOnlyList<(Frame Frame, IOperation Target)?>? references = null)
    {
        var open = method.IsVirtual || method.IsAbstract || method.IsOverride || method.ContainingType?.TypeKind == TypeKind.Interface;
        if (!open)
            return Call(method, receiver, arguments, site, references);
        var before = _state;
        var after = new State(_shared) { IsDead = true };
        var sum = default(Value);
        var candidates = _code.Types.SelectMany(t => t.GetMembers()).OfType<IMethodSymbol>()
            .Where(m => (m.Name == method.Name || m.Name.EndsWith("." + method.Name, StringComparison.Ordinal)) && m.Parameters.Length == method.Parameters.Length && !m.IsAbstract).ToList();
        foreach (var candidate in candidates)
        {
            _state = before.Copy();
            sum = _values.Union(sum, Call(candidate, receiver, arguments, site, references));
            after.Join(_state, _values);
        }

        _state = candidates.Count == 0 ? before : after;
        return candidates.Count > 0 ? sum : Result(site, method.ReturnType, arguments.Aggregate(receiver, _values.Union), handsOn: false);
    }

    /// <summary>A call of a cell's method.</summary>
    private Value Call(IMethodSymbol method, Value receiver, IReadOnlyList<Value> arguments, SyntaxNode site, IReadOnlyList<(Frame Frame, IOperation Target)?>? references = null)
    {
        if (_code.Body(method) is { } body)
            return Run(method.OriginalDefinition, body, null, receiver, arguments, site, _frame, references);
        if (method.AssociatedSymbol is not IPropertySymbol property)
            return Result(site, method.ReturnType, arguments.Aggregate(receiver, _values.Union), handsOn: false);
        if (method.MethodKind == MethodKind.PropertyGet)
            return Member(receiver, property, property.Type);
        SetMember(receiver, property, arguments[^1]);
        return default;
    }

    /// <summary>A call of a function that is a value: of every one that it can be.</summary>
    private Value CallFunctions(Value functions, IReadOnlyList<Value> arguments, IOperation call, IReadOnlyList<(Frame Frame, IOperation Target)?>? references)
    {
        var before = _state;
        var after = new State(_shared) { IsDead = true };
        var sum = default(Value);
        foreach (var closure in _values.Atoms(functions).OfType<ClosureAtom>().Select(c => _closures[c.Id]).ToList())
        {
            _state = before.Copy();
            sum = _values.Union(sum, CallFunction(closure, arguments, call.Syntax, _frame, references));
            after.Join(_state, _values);
        }

        _state = Has<ClosureAtom>(functions) ? after : before;
        var others = Without<ClosureAtom>(functions);
        // A function that a library made: it may do with what it is given whatever it likes.
        return others.IsEmpty && Has<ClosureAtom>(functions) ? sum : _values.Union(sum, Library(call, null, functions, arguments, call.Type));
    }

    private Value CallFunction(Closure closure, IReadOnlyList<Value> arguments, SyntaxNode site, Frame caller, IReadOnlyList<(Frame Frame, IOperation Target)?>? references = null)
    {
        if (closure.Begun is { } begun)
            return Resume(closure, begun);
        if (closure.Body is { } body)
            return Run(closure.Method, body, closure.Lexical, closure.This, arguments, site, caller, references);
        return _code.IsOfACell(closure.Method)
            ? Virtual(closure.Method, closure.This, arguments, site, references)
            : Result(site, closure.Method.ReturnType, arguments.Aggregate(closure.This, _values.Union), LibraryCalls.HandsStringsOn(closure.Method));
    }

    private Value Dynamic(IOperation operation)
    {
        var parts = Parts(operation);
        return Library(operation, null, parts, [], operation.Type);
    }

    /// <summary>A call into a library.</summary>
    private Value Library(IOperation call, IMethodSymbol? method, Value receiver, IReadOnlyList<Value> arguments, ITypeSymbol? type)
    {
        var used = Used(call, method, receiver, arguments);
        if (LibraryCalls.IsFresh(method))
        {
            var made = _heap.Make(call.Syntax, _frame, _cell, type);
            _heap.Add(made, Items(type, HoldsFunctions(type) ? used : Enumerated(used)));
            return _values.Of(new ObjectAtom(made.Id));
        }

        var value = Result(call.Syntax, type, used, LibraryCalls.HandsStringsOn(method));
        if (LibraryCalls.IsLazy(method))
            _heap.Make(call.Syntax, _frame, _cell, null).IsLazy = true;
        return value;
    }

    // What a sequence comes to whose functions have run: one that waits is looked through, because what its functions give is there already.
    private Value Enumerated(Value used)
    {
        var (seen, kept) = (new HashSet<int>(), new HashSet<int>());
        var open = new Stack<Value>([used]);
        while (open.TryPop(out var next))
        {
            foreach (var number in _values.Numbers(next))
            {
                if (!seen.Add(number) || _values[number] is ClosureAtom)
                    continue;
                if (_values[number] is ObjectAtom made && _heap[made.Id].IsLazy)
                    open.Push(_heap[made.Id].Whole);
                else
                    kept.Add(number);
            }
        }

        return _values.Of(kept);
    }

    /// <summary>What a library is given, with what it gets from the functions among that; it has changed what it may change.</summary>
    private Value Used(IOperation call, IMethodSymbol? method, Value receiver, IReadOnlyList<Value> arguments)
    {
        var given = arguments.Aggregate(receiver, _values.Union);
        Note(given);
        if (Has<RecordAtom>(given))
            Note(_values.Of(_values.Atoms(given).OfType<RecordAtom>().Select(r => new EveryEntryAtom(r))));
        var change = LibraryCalls.Of(method);
        if (change == Sources.Change.World)
            given = _values.Union(given, _heap.World.Whole);
        var answers = AskAll(given);
        if (LibraryCalls.IsSummary(method))
            return _values.Union(answers, Shape(given));
        given = LibraryCalls.IsLazy(method) ? given : _values.Union(given, answers);
        var put = _values.Union(given, Deciding());
        if (change is Sources.Change.All or Sources.Change.World)
            Put(Reach(given), put);
        else if (change == Sources.Change.Receiver)
            Put(receiver, put);
        if (change == Sources.Change.World)
            _heap.Add(_heap.World, put);
        if (change is Sources.Change.All or Sources.Change.World && method is { IsStatic: true, ReturnsVoid: true })
            _notes.ChangesWorld = true;
        if (change is Sources.Change.All or Sources.Change.World && Has<RecordAtom>(given))
            Everything(Only<RecordAtom>(given), Line(call.Syntax), put);
        ChangeOwn(method, receiver, arguments, put);
        return given;
    }

    // How many items there are: all that lies in collections beside the objects whose inside the cells show.
    private Value Shape(Value given) => Objects(Reach(given)).Where(o => o.Type is null || !_kinds.IsVisible(o.Type)).Aggregate(Settled(given), (sum, o) => _values.Union(sum, Settled(o.Whole)));

    // Objects of ours that keep what they are told, and objects of cells' types that a library calls back.
    private void ChangeOwn(IMethodSymbol? method, Value receiver, IReadOnlyList<Value> arguments, Value put)
    {
        for (var i = -1; i < arguments.Count; i++)
        {
            var value = i < 0 ? receiver : arguments[i];
            var type = i < 0 ? method?.ContainingType : i < method?.Parameters.Length ? method.Parameters[i].Type : null;
            foreach (var made in Objects(value))
            {
                if (made.Type is null ? _kinds.Changes(type) : _kinds.Changes(made.Type))
                    Put(_values.Of(new ObjectAtom(made.Id)), put);
                else if (made.Type is { } exact && IsCalledBack(exact))
                    Put(Reach(_values.Of(new ObjectAtom(made.Id))), put);
            }
        }
    }

    /// <summary>What a library gives back: a plain value hangs on all that went in; anything else may be, or hold, whatever went in.</summary>
    private Value Result(SyntaxNode site, ITypeSymbol? type, Value used, bool handsOn)
    {
        if (type is null || type.SpecialType == SpecialType.System_Void)
            return default;
        if (Kinds.IsRecord(type))
            return _values.Union(_values.Of(RecordAtom.Unknown), _values.Union(Only<RecordAtom>(Reach(used)), Resolve(Without<RecordAtom>(used))));
        var more = handsOn ? default : _values.Of(new ComputedTextAtom());
        if (_kinds.IsPlain(type))
        {
            var text = type.SpecialType == SpecialType.System_String;
            var value = Resolve(Without<ClosureAtom>(used), texts: text && handsOn);
            return text ? _values.Union(value, more) : value;
        }

        var made = _heap.Make(site, _frame, _cell, null);
        _heap.Add(made, _values.Union(used, more));
        return _values.Union(_values.Of(new ObjectAtom(made.Id)), Reach(used));
    }

    private static int Line(SyntaxNode syntax) => syntax.GetLocation().GetMappedLineSpan().StartLinePosition.Line + 1;
}
