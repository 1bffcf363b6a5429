using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;

namespace EightOhm.Cells.Sources;

/// <summary>Variables and members: what they hold, and what an assignment does.</summary>
internal sealed partial class Interpreter
{
    private Value Local(ISymbol local)
    {
        for (var frame = _frame; frame is not null; frame = frame.Lexical)
        {
            if (frame.Aliases.TryGetValue(local, out var alias))
                return _values.Union(In(alias.Frame, () => Eval(alias.Target)), _state.Get(SlotOf(local)));
        }

        return _state.Get(SlotOf(local));
    }

    private Value Parameter(IParameterSymbol parameter)
    {
        if (FindSlot(parameter) is not null)
            return Local(parameter);
        // A parameter of a type's own header, used by its members.
        return Member(_frame.This, parameter, parameter.Type);
    }

    private Value Field(IFieldReferenceOperation field)
    {
        if (field.Field.ContainingType.IsScriptClass)
            return OfAnotherCell(field.Field) is { } slot ? ReadVariable(slot) : _values.Of(new EveryEntryAtom(RecordAtom.Unknown));
        if (field.Field.IsStatic)
            return ReadVariable(Static(field.Field));
        return Member(Eval(field.Instance), field.Field.CorrespondingTupleField ?? field.Field, field.Type);
    }

    private Value ReadVariable(int slot)
    {
        var value = _state.Get(slot);
        if (_slots[slot].Position != _cell && _notes.Read.Add(slot) | !_values.Contains(_notes.Touched, value))
            _notes.Touched = _values.Union(_notes.Touched, value);
        return value;
    }

    private Value Property(IPropertyReferenceOperation property)
    {
        var symbol = property.Property;
        if (symbol.ContainingType.IsScriptClass && symbol.GetMethod is { } script)
            return _code.Body(script) is null && OfAnotherCell(symbol) is { } slot ? ReadVariable(slot) : Call(script, default, [], property.Syntax);
        var receiver = Eval(property.Instance);
        var index = Arguments(property.Arguments);
        if (Verbs.Find(symbol) is { } verb)
            return Entries(verb, receiver);
        if (symbol.GetMethod is { } get && _code.IsOfACell(symbol))
            return _values.Union(Virtual(get, receiver, index, property.Syntax), symbol.IsStatic && _code.Body(get) is null ? ReadVariable(Static(symbol)) : default);
        if (symbol.IsStatic)
            return ReadVariable(Static(symbol));
        var value = index.Count == 0 ? Member(receiver, symbol, property.Type) : ItemOf(receiver, property.Type);
        if (!_kinds.IsPlain(property.Type) && !_kinds.IsVisible(symbol.ContainingType))
            value = Result(property.Syntax, property.Type, value, handsOn: true);
        return index.Count == 0 ? value : _values.Union(value, Resolve(index.Aggregate(_values.Union)));
    }

    private Value Instance(IInstanceReferenceOperation instance) => instance.ReferenceKind switch
    {
        InstanceReferenceKind.ImplicitReceiver => _made.Peek(),
        InstanceReferenceKind.ContainingTypeInstance => _frame.This,
        _ => default,
    };

    /// <summary>A member of whatever a value holds: told apart in objects whose inside the cells show, all of it in others.</summary>
    private Value Member(Value receiver, ISymbol member, ITypeSymbol? type)
    {
        if (_values.IsSettled(receiver))
            return receiver;
        if (!_kinds.IsVisible(member.ContainingType))
            return HiddenMember(receiver, type, Kinds.Root(member) == "System" && member.ContainingType.IsGenericType);
        var sum = default(Value);
        foreach (var atom in _values.Atoms(receiver))
        {
            if (atom is not ObjectAtom made)
                sum = _values.Union(sum, _values.Of(atom));
            else if (_heap[made.Id].Type is not { } exact)
                sum = _values.Union(sum, HiddenMember(_values.Of(atom), type, handsOn: true));
            else if (CanBe(exact, member.ContainingType))
                sum = _values.Union(sum, _values.Union(_heap[made.Id].Whole, _heap[made.Id].Fields.GetValueOrDefault(NameOf(member))));
        }

        return Settle(type, sum);
    }

    private Value HiddenMember(Value receiver, ITypeSymbol? type, bool handsOn)
    {
        if (!_kinds.IsPlain(type))
            return Reach(receiver);
        var text = type!.SpecialType == SpecialType.System_String;
        var value = Resolve(receiver, texts: text && handsOn);
        return text && !handsOn ? _values.Union(value, _values.Of(new ComputedTextAtom())) : value;
    }

    // Whether an object of a type can be asked for a member of another.
    private static bool CanBe(ITypeSymbol exact, ITypeSymbol container)
    {
        if (exact.IsTupleType || container.IsTupleType)
            return exact is INamedTypeSymbol { IsTupleType: true } a && container is INamedTypeSymbol { IsTupleType: true } b && a.TupleElements.Length == b.TupleElements.Length;
        if (exact.IsAnonymousType || container.IsAnonymousType)
            return exact.IsAnonymousType && container.IsAnonymousType;
        for (ITypeSymbol? at = exact; at is not null; at = at.BaseType)
        {
            if (SymbolEqualityComparer.Default.Equals(at.OriginalDefinition, container.OriginalDefinition))
                return true;
        }

        return exact.AllInterfaces.Any(i => SymbolEqualityComparer.Default.Equals(i.OriginalDefinition, container.OriginalDefinition));
    }

    // A property and the field behind it are one place.
    private static string NameOf(ISymbol member) => member switch
    {
        IFieldSymbol { AssociatedSymbol: { } property } => property.Name,
        IFieldSymbol field => (field.CorrespondingTupleField ?? field).Name,
        _ => member.Name,
    };

    /// <summary>Assigns; gives back what is assigned.</summary>
    /// <param name="target">What it is assigned to.</param>
    /// <param name="value">What is assigned.</param>
    /// <param name="weak">Whether the old value may stay.</param>
    private Value Assign(IOperation target, Value value, bool weak = false)
    {
        var kept = Settle(target.Type, _values.Union(value, Deciding()));
        Note(kept);
        switch (target)
        {
            case ILocalReferenceOperation local:
                SetLocal(local.Local, kept, weak, local.IsDeclaration);
                break;
            case IParameterReferenceOperation parameter when FindSlot(parameter.Parameter) is not null:
                SetLocal(parameter.Parameter, kept, weak, declares: false);
                break;
            case IParameterReferenceOperation parameter:
                SetMember(_frame.This, parameter.Parameter, kept);
                break;
            case IFieldReferenceOperation { Field.ContainingType.IsScriptClass: true } field:
                SetScript(field.Field, kept, weak);
                break;
            case IFieldReferenceOperation { Field.IsStatic: true } field:
                SetStatic(field.Field, kept);
                break;
            case IFieldReferenceOperation field:
                SetMember(field.Instance!, field.Field, kept);
                break;
            case IPropertyReferenceOperation property:
                SetProperty(property, kept, weak);
                break;
            case IEventReferenceOperation { Instance: { } instance } held:
                SetMember(instance, held.Event, kept);
                break;
            case IArrayElementReferenceOperation element:
                SetElement(element.ArrayReference, element.Indices, kept);
                break;
            case IImplicitIndexerReferenceOperation element:
                SetElement(element.Instance, [element.Argument], kept);
                break;
            case IDeclarationExpressionOperation declaration:
                Assign(declaration.Expression, value, weak);
                break;
            case IConversionOperation conversion:
                Assign(conversion.Operand, value, weak);
                break;
            case IConditionalOperation { IsRef: true } either:
                Assign(either.WhenTrue, value, weak: true);
                Assign(either.WhenFalse!, value, weak: true);
                break;
            case IDiscardOperation:
                break;
            default:
                // A reference that a call gives back, a dynamic member: it can lie in anything that is named here.
                Put(Reach(Eval(target)), kept);
                foreach (var part in target.DescendantsAndSelf().Where(o => !ReferenceEquals(o, target) && o is ILocalReferenceOperation or IFieldReferenceOperation { Field.ContainingType.IsScriptClass: true }))
                    Assign(part, value, weak: true);
                break;
        }

        return kept;
    }

    private void SetElement(IOperation collection, IEnumerable<IOperation> at, Value value)
    {
        var index = at.Aggregate(default(Value), (sum, i) => _values.Union(sum, Eval(i)));
        Put(Eval(collection), _values.Union(value, Resolve(index)));
        WriteThrough(collection, value);
    }

    private void SetProperty(IPropertyReferenceOperation property, Value value, bool weak)
    {
        var symbol = property.Property;
        if (symbol.ContainingType.IsScriptClass && symbol.SetMethod is { } script && _code.Body(script) is not null)
            Call(script, default, [value], property.Syntax);
        else if (symbol.ContainingType.IsScriptClass)
            SetScript(symbol, value, weak);
        else if (Kinds.IsRecord(symbol.ContainingType))
            Eval(property.Instance);
        else if (symbol.IsStatic)
            SetStatic(symbol, value);
        else if (property.Arguments.Length > 0 && !_code.IsOfACell(symbol))
            Put(Eval(property.Instance), _values.Union(value, Resolve(Arguments(property.Arguments).Aggregate(_values.Union))));
        else if (symbol.SetMethod is { } set && _code.Body(set) is not null)
            Virtual(set, Eval(property.Instance), [.. Arguments(property.Arguments), value], property.Syntax);
        else
            SetMember(property.Instance!, symbol, value);
    }

    private void SetMember(IOperation instance, ISymbol member, Value value)
    {
        SetMember(Eval(instance), member, value);
        WriteThrough(instance, value);
    }

    private void SetMember(Value receiver, ISymbol member, Value value)
    {
        foreach (var made in Objects(receiver))
        {
            if (made.Type is { } exact && _kinds.IsVisible(exact) && CanBe(exact, member.ContainingType))
                _heap.Add(made, NameOf(member), value);
            else
                _heap.Add(made, value);
            Change(made);
        }
    }

    // A struct lies in its variable: what is written into it is in the variable.
    private void WriteThrough(IOperation holder, Value value)
    {
        if (holder.Type is { IsValueType: true } && holder is ILocalReferenceOperation or IFieldReferenceOperation or IParameterReferenceOperation or IArrayElementReferenceOperation)
            Assign(holder, _values.Union(Eval(holder), value), weak: true);
    }

    private void SetLocal(ISymbol local, Value value, bool weak, bool declares)
    {
        for (var frame = _frame; frame is not null; frame = frame.Lexical)
        {
            if (frame.Aliases.TryGetValue(local, out var alias))
                In(alias.Frame, () => Assign(alias.Target, value, weak: true));
        }

        var slot = declares ? Declare(_frame, local) : SlotOf(local);
        var captured = _code.IsCaptured(local);
        _state.Set(slot, weak || captured || _weak > 0 ? _values.Union(_state.Get(slot), value) : value);
    }

    private void SetScript(ISymbol variable, Value value, bool weak)
    {
        if (OfAnotherCell(variable) is not { } slot)
            return;
        SetVariable(slot, weak ? _values.Union(_state.Get(slot), value) : value);
    }

    private void SetStatic(ISymbol variable, Value value)
    {
        var slot = Static(variable);
        SetVariable(slot, _values.Union(_state.Get(slot), value));
        _notes.ChangesWorld |= !_code.IsOfACell(variable);
    }

    // A reference stands for a place in the frame that made it.
    private Value In(Frame frame, Func<Value> run)
    {
        var before = _frame;
        _frame = frame;
        var value = run();
        _frame = before;
        return value;
    }

    private int? OfAnotherCell(ISymbol variable) => _code.PositionOf(variable) is { } position ? Variable(position, variable) : null;

    private int Static(ISymbol variable)
    {
        if (!_statics.TryGetValue(variable.OriginalDefinition, out var slot))
        {
            _statics.Add(variable.OriginalDefinition, slot = NewSlot(variable, _code.IsOfACell(variable) ? _code.PositionOf(variable.DeclaringSyntaxReferences[0].SyntaxTree) : -1, shared: true));
            // A static member of a cell's type begins with its initialiser.
            if (_code.IsOfACell(variable) && _code.Initial(variable) is { } initial)
                _state.Set(slot, Eval(initial));
        }

        return slot;
    }

    private int? FindSlot(ISymbol variable)
    {
        for (var frame = _frame; frame is not null; frame = frame.Lexical)
        {
            if (frame.Slots.TryGetValue(variable, out var slot))
                return slot;
        }

        return null;
    }

    // A variable that a function sees before its declaration has run belongs to the outermost.
    private int SlotOf(ISymbol variable)
    {
        if (FindSlot(variable) is { } slot)
            return slot;
        var owner = _frame;
        while (owner.Lexical is not null && !SymbolEqualityComparer.Default.Equals(owner.Function, variable.ContainingSymbol))
            owner = owner.Lexical;
        return Declare(owner, variable);
    }

    private int Declare(Frame frame, ISymbol variable)
    {
        if (!frame.Slots.TryGetValue(variable, out var slot))
            frame.Slots.Add(variable, slot = NewSlot(variable, -1, _code.IsCaptured(variable)));
        return slot;
    }

    private List<HeapObject> Objects(Value value) => [.. _values.Atoms(value).OfType<ObjectAtom>().Select(o => _heap[o.Id])];

    private void Put(Value receiver, Value value)
    {
        foreach (var made in Objects(receiver))
        {
            _heap.Add(made, value);
            Change(made);
        }
    }

    private void Change(HeapObject made) => _heap.Changed(made, _cell);
}
