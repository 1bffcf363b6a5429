using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace EightOhm.Cells.Sources;

/// <summary>Taking values apart and putting objects together: patterns, deconstruction, initialisers, copies.</summary>
internal sealed partial class Interpreter
{
    /// <summary>What a pattern looks at; its variables are assigned.</summary>
    private Value Matched(IPatternOperation pattern, Value value)
    {
        switch (pattern)
        {
            case IDeclarationPatternOperation declaration:
                Declared(declaration.DeclaredSymbol, value);
                return Resolve(value);
            case IRecursivePatternOperation recursive:
                Declared(recursive.DeclaredSymbol, value);
                var sum = _values.Where(value, atom => atom is EntryAtom or EveryEntryAtom or RequirementAtom);
                foreach (var property in recursive.PropertySubpatterns)
                    sum = _values.Union(sum, Matched(property.Pattern, property.Member is IMemberReferenceOperation member ? Member(value, member.Member, property.Pattern.InputType) : value));
                var parts = recursive.DeconstructionSubpatterns;
                for (var i = 0; i < parts.Length; i++)
                    sum = _values.Union(sum, Matched(parts[i], Part(value, recursive.InputType, i, parts[i].InputType)));
                return recursive.PropertySubpatterns.IsEmpty && parts.IsEmpty ? Resolve(value) : sum;
            case IListPatternOperation list:
                Declared(list.DeclaredSymbol, value);
                return list.Patterns.Aggregate(Resolve(value), (all, p) => _values.Union(all, Matched(p, p is ISlicePatternOperation ? value : ItemOf(value, p.InputType))));
            case ISlicePatternOperation slice:
                return slice.Pattern is null ? default : Matched(slice.Pattern, value);
            case INegatedPatternOperation negated:
                return Matched(negated.Pattern, value);
            case IBinaryPatternOperation binary:
                return _values.Union(Matched(binary.LeftPattern, value), Matched(binary.RightPattern, value));
            case IConstantPatternOperation constant:
                return _values.Union(Resolve(value), Eval(constant.Value));
            case IRelationalPatternOperation relational:
                return _values.Union(Resolve(value), Eval(relational.Value));
            case IDiscardPatternOperation:
                return default;
            default:
                return Resolve(value);
        }
    }

    private void Declared(ISymbol? variable, Value value)
    {
        if (variable is null)
            return;
        var kept = Settle(TypeOf(variable), _values.Union(value, Deciding()));
        if (variable is ILocalSymbol)
            SetLocal(variable, kept, weak: false, declares: true);
        else
            SetScript(variable, kept, weak: false);
    }

    private Value Choice(ISwitchExpressionOperation choice)
    {
        var value = Eval(choice.Value);
        var reason = default(Value);
        var sum = default(Value);
        var rest = _state.Copy();
        var after = new State(_shared) { IsDead = true };
        foreach (var arm in choice.Arms)
        {
            _state = rest.Copy();
            reason = _values.Union(reason, Matched(arm.Pattern, value));
            if (arm.Guard is not null)
                reason = _values.Union(reason, Under(reason, () => Resolve(Eval(arm.Guard))));
            rest = _state.Copy();
            sum = _values.Union(sum, Under(reason, () => Eval(arm.Value)));
            after.Join(_state, _values);
        }

        _state = after;
        return _values.Union(sum, reason);
    }

    private Value Deconstruct(IDeconstructionAssignmentOperation deconstruction)
    {
        var value = Eval(deconstruction.Value);
        if (deconstruction.Syntax is AssignmentExpressionSyntax syntax && _code.Model(syntax.SyntaxTree).GetDeconstructionInfo(syntax).Method is { } method && _code.Body(method) is not null)
        {
            Call(method, method.IsStatic ? default : value, method.IsStatic ? [value] : [], syntax, []);
            var frame = FrameOf(_frame, syntax, method.OriginalDefinition, null);
            var given = method.OriginalDefinition.Parameters.Where(p => p.RefKind == RefKind.Out).Select(p => _state.Get(Declare(frame, p))).ToList();
            AssignParts(deconstruction.Target, (i, _) => given[i]);
        }
        else
        {
            AssignParts(deconstruction.Target, (i, type) => Part(value, deconstruction.Value.Type, i, type));
        }

        return value;
    }

    private void AssignParts(IOperation target, Func<int, ITypeSymbol?, Value> part)
    {
        if (target is IDeclarationExpressionOperation declaration)
            target = declaration.Expression;
        if (target is not ITupleOperation tuple)
            return;
        for (var i = 0; i < tuple.Elements.Length; i++)
        {
            var element = tuple.Elements[i] is IDeclarationExpressionOperation inner ? inner.Expression : tuple.Elements[i];
            var value = part(i, element.Type);
            if (element is ITupleOperation)
                AssignParts(element, (j, type) => Part(value, element.Type, j, type));
            else
                Assign(element, value);
        }
    }

    // The n-th part of a value that is taken apart.
    private Value Part(Value value, ITypeSymbol? whole, int n, ITypeSymbol? type)
    {
        if (whole is INamedTypeSymbol { IsTupleType: true } tuple && n < tuple.TupleElements.Length)
            return Member(value, tuple.TupleElements[n].CorrespondingTupleField ?? tuple.TupleElements[n], type);
        if (whole is INamedTypeSymbol { IsRecord: true } record && _code.IsOfACell(record) && Header(record) is { } header && n < header.Parameters.Length
            && record.GetMembers(header.Parameters[n].Name).OfType<IPropertySymbol>().FirstOrDefault() is { } property)
            return Member(value, property, type);
        return _kinds.IsPlain(type) ? Resolve(value, texts: true) : ItemOf(value, type);
    }

    // The constructor that a type writes in its header.
    private static IMethodSymbol? Header(INamedTypeSymbol type) =>
        type.InstanceConstructors.FirstOrDefault(c => c.DeclaringSyntaxReferences.Any(r => r.GetSyntax() is TypeDeclarationSyntax));

    /// <summary>A new object with its initialisers, as the value that is being made.</summary>
    private Value Initialized(IOperation creation, ITypeSymbol type, IEnumerable<IOperation> initializers)
    {
        var made = _heap.Make(creation.Syntax, _frame, _cell, type);
        Initialize(made, initializers);
        return _values.Of(new ObjectAtom(made.Id));
    }

    private void Initialize(HeapObject made, IEnumerable<IOperation> initializers)
    {
        _made.Push(_values.Of(new ObjectAtom(made.Id)));
        foreach (var initializer in initializers)
            Eval(initializer);
        _made.Pop();
    }

    private Value MemberInitializer(IMemberInitializerOperation member)
    {
        _made.Push(Eval(member.InitializedMember));
        Eval(member.Initializer);
        var value = _made.Pop();
        // What was put into the member is in the object too.
        if (_made.Count > 0)
            Put(_made.Peek(), value);
        return value;
    }

    private Value With(IWithOperation with)
    {
        var old = Eval(with.Operand);
        Note(old);
        var made = _heap.Make(with.Syntax, _frame, _cell, with.Type);
        var written = (with.Initializer?.Initializers ?? []).OfType<ISimpleAssignmentOperation>().Select(a => a.Target).OfType<IMemberReferenceOperation>().Select(m => NameOf(m.Member)).ToHashSet();
        foreach (var atom in _values.Atoms(old))
        {
            if (atom is ObjectAtom copied && _heap[copied.Id] is { Type: { } type } source && _kinds.IsVisible(type))
            {
                foreach (var (name, value) in source.Fields.Where(f => !written.Contains(f.Key)).ToList())
                    _heap.Add(made, name, value);
                _heap.Add(made, source.Whole);
            }
            else
            {
                _heap.Add(made, _values.Of(atom));
            }
        }

        Initialize(made, with.Initializer?.Initializers ?? []);
        return _kinds.IsPlain(with.Type) ? Resolve(_values.Of(new ObjectAtom(made.Id))) : _values.Union(_values.Of(new ObjectAtom(made.Id)), _kinds.IsVisible(with.Type!) ? default : Reach(old));
    }
}
