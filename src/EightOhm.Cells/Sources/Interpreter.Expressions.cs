using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace EightOhm.Cells.Sources;

/// <summary>Expressions.</summary>
internal sealed partial class Interpreter
{
    private readonly Stack<Value> _made = new();
    private readonly Stack<Value> _conditional = new();

    /// <summary>Runs a statement or an expression; a statement gives nothing.</summary>
    private Value Eval(IOperation? operation)
    {
        if (operation is null)
            return default;
        RuntimeHelpers.EnsureSufficientExecutionStack();
        if (++_steps > MostSteps)
            throw new CannotReadException("it takes too many steps to follow");
        if (operation.ConstantValue is { HasValue: true, Value: var constant })
            return constant is string text ? _values.Of(new TextAtom(text)) : default;
        var value = Step(operation);
        // An object that is just being made is the object yet.
        if (operation is IInstanceReferenceOperation || !_kinds.IsPlain(operation.Type))
            return value;
        value = Settle(operation.Type, value);
        Note(value);
        return value;
    }

    private Value Step(IOperation operation)
    {
        switch (operation)
        {
            case IInvalidOperation:
                throw new CannotReadException("it does not compile");
            case ILiteralOperation or IDefaultValueOperation or ITypeOfOperation or ISizeOfOperation or INameOfOperation or IUtf8StringOperation or IEmptyOperation or IDiscardOperation or ILocalFunctionOperation:
                return default;
            case ILocalReferenceOperation local:
                return Local(local.Local);
            case IParameterReferenceOperation parameter:
                return Parameter(parameter.Parameter);
            case IFieldReferenceOperation field:
                return Field(field);
            case IPropertyReferenceOperation property:
                return Property(property);
            case IEventReferenceOperation held:
                return Member(Eval(held.Instance), held.Event, held.Type);
            case IInstanceReferenceOperation instance:
                return Instance(instance);
            case IInvocationOperation call:
                return Invocation(call);
            case IObjectCreationOperation creation:
                return Creation(creation);
            case IAnonymousObjectCreationOperation anonymous:
                return Initialized(anonymous, anonymous.Type!, anonymous.Initializers);
            case ITupleOperation tuple:
                return Tuple(tuple);
            case IArrayCreationOperation or IArrayInitializerOperation or ICollectionExpressionOperation:
                return Collection(operation);
            case ISpreadOperation spread:
                return ItemOf(Eval(spread.Operand), spread.ElementType);
            case IArrayElementReferenceOperation element:
                return Element(element.ArrayReference, element.Indices, element.Type);
            case IImplicitIndexerReferenceOperation element:
                return Element(element.Instance, [element.Argument], element.Type);
            case IConversionOperation { OperatorMethod: { } method } conversion when _code.Body(method) is not null:
                return Call(method, default, [Eval(conversion.Operand)], conversion.Syntax);
            case IConversionOperation conversion:
                return Eval(conversion.Operand);
            case IDelegateCreationOperation made:
                return Eval(made.Target);
            case IAnonymousFunctionOperation lambda:
                return Function(lambda.Symbol, lambda.Body, _code.SeesOutside(lambda) ? _frame : null);
            case IMethodReferenceOperation method:
                return MethodGroup(method);
            case IBinaryOperation binary:
                return Binary(binary);
            case IUnaryOperation { OperatorMethod: { } method } unary when _code.Body(method) is not null:
                return Call(method, default, [Eval(unary.Operand)], unary.Syntax);
            case ICoalesceOperation coalesce:
                return Either(Eval(coalesce.Value), () => Eval(coalesce.WhenNull));
            case ICoalesceAssignmentOperation coalesce:
                return Either(Eval(coalesce.Target), () => Assign(coalesce.Target, Eval(coalesce.Value), weak: true));
            case IConditionalAccessOperation access:
                return ConditionalAccess(access);
            case IConditionalAccessInstanceOperation:
                return _conditional.Peek();
            case IConditionalOperation conditional:
                return Conditional(conditional);
            case ISimpleAssignmentOperation { IsRef: true, Target: ILocalReferenceOperation target } assignment:
                _frame.Aliases[target.Local] = (_frame, assignment.Value);
                return Eval(assignment.Value);
            case ISimpleAssignmentOperation assignment:
                return Assign(assignment.Target, Eval(assignment.Value));
            case ICompoundAssignmentOperation compound:
                return Compound(compound);
            case IIncrementOrDecrementOperation step:
                return Assign(step.Target, Eval(step.Target));
            case IDeconstructionAssignmentOperation deconstruction:
                return Deconstruct(deconstruction);
            case IDeclarationExpressionOperation declaration:
                return Eval(declaration.Expression);
            case IEventAssignmentOperation { EventReference: IEventReferenceOperation target } assignment:
                return Assign(target, Eval(assignment.HandlerValue), weak: true);
            case IInterpolatedStringOperation or IInterpolatedStringHandlerCreationOperation:
                return _values.Union(Resolve(Parts(operation)), _values.Of(new ComputedTextAtom()));
            case IIsPatternOperation pattern:
                return Matched(pattern.Pattern, Eval(pattern.Value));
            case IIsTypeOperation type:
                return Resolve(Eval(type.ValueOperand));
            case ISwitchExpressionOperation choice:
                return Choice(choice);
            case IWithOperation with:
                return With(with);
            case IObjectOrCollectionInitializerOperation initializer:
                return Parts(initializer);
            case IMemberInitializerOperation member:
                return MemberInitializer(member);
            case IAwaitOperation wait:
                return ItemOf(Eval(wait.Operation), wait.Type);
            case IThrowOperation thrown:
                return Throw(thrown);
            case IDynamicInvocationOperation or IDynamicMemberReferenceOperation or IDynamicObjectCreationOperation or IDynamicIndexerAccessOperation or ITypeParameterObjectCreationOperation:
                return Dynamic(operation);
            case { Syntax: StackAllocArrayCreationExpressionSyntax or ImplicitStackAllocArrayCreationExpressionSyntax }:
                var stacked = _heap.Make(operation.Syntax, _frame, _cell, null);
                _heap.Add(stacked, Parts(operation));
                return _values.Of(new ObjectAtom(stacked.Id));
            case { Kind: OperationKind.None }:
                throw new CannotReadException($"it holds {operation.Syntax.ToString().Split('\n')[0]}, which is not followed");
            default:
                return Statement(operation) is { } done ? done : Parts(operation);
        }
    }

    // All that an operation is made of, together.
    private Value Parts(IOperation operation)
    {
        var sum = default(Value);
        foreach (var child in operation.ChildOperations)
            sum = _values.Union(sum, Eval(child));
        return sum;
    }

    private Value Binary(IBinaryOperation binary)
    {
        var left = Eval(binary.LeftOperand);
        if (binary.OperatorMethod is { } method && _code.Body(method) is not null)
            return Call(method, default, [left, Eval(binary.RightOperand)], binary.Syntax);
        if (binary.OperatorKind is BinaryOperatorKind.ConditionalAnd or BinaryOperatorKind.ConditionalOr)
            return Either(left, () => Eval(binary.RightOperand));
        var both = _values.Union(left, Eval(binary.RightOperand));
        if (binary.Type?.SpecialType == SpecialType.System_String)
            return _values.Union(Resolve(both), _values.Of(new ComputedTextAtom()));
        return Kinds.IsFunction(binary.Type) ? both : Resolve(both);
    }

    // The second runs or not, as the first decides.
    private Value Either(Value first, Func<Value> second)
    {
        var before = _state.Copy();
        var value = _values.Union(first, Under(Resolve(first), second));
        Maybe(before);
        return value;
    }

    // What has run since may not have: where it changed nothing, the state is the one before, by its version too.
    private void Maybe(State before)
    {
        before.Join(_state, _values);
        _state = before;
    }

    private Value Conditional(IConditionalOperation conditional)
    {
        var condition = Resolve(Eval(conditional.Condition));
        var before = _state.Copy();
        var value = Under(condition, () => Eval(conditional.WhenTrue));
        var whenTrue = _state;
        _state = before;
        value = _values.Union(value, Under(condition, () => Eval(conditional.WhenFalse)));
        _state.Join(whenTrue, _values);
        return _values.Union(value, condition);
    }

    private Value ConditionalAccess(IConditionalAccessOperation access)
    {
        var receiver = Eval(access.Operation);
        _conditional.Push(receiver);
        var value = Either(Resolve(receiver), () => Eval(access.WhenNotNull));
        _conditional.Pop();
        return value;
    }

    private Value Compound(ICompoundAssignmentOperation compound)
    {
        var old = Eval(compound.Target);
        var value = Eval(compound.Value);
        if (compound.OperatorMethod is { } method && _code.Body(method) is not null)
            return Assign(compound.Target, Call(method, method.IsStatic ? default : old, method.IsStatic ? [old, value] : [value], compound.Syntax), weak: !method.IsStatic);
        var sum = _values.Union(old, value);
        return Assign(compound.Target, compound.Type?.SpecialType == SpecialType.System_String ? _values.Union(Resolve(sum), _values.Of(new ComputedTextAtom())) : sum);
    }

    private Value Collection(IOperation creation)
    {
        var made = _heap.Make(creation.Syntax, _frame, _cell, creation.Type);
        var sizes = creation is IArrayCreationOperation { DimensionSizes: var all } ? all.Aggregate(default(Value), (sum, size) => _values.Union(sum, Resolve(Eval(size)))) : default;
        var items = Items(creation).Aggregate(sizes, (sum, item) => _values.Union(sum, Eval(item)));
        _heap.Add(made, Items(creation.Type, _values.Union(items, Deciding())));
        return _values.Of(new ObjectAtom(made.Id));
    }

    // The items as the text lists them, of all dimensions.
    private static IEnumerable<IOperation> Items(IOperation? collection) => collection switch
    {
        IArrayCreationOperation array => Items(array.Initializer),
        IArrayInitializerOperation initializer => initializer.ElementValues.SelectMany(item => item is IArrayInitializerOperation ? Items(item) : [item]),
        ICollectionExpressionOperation expression => expression.Elements,
        _ => [],
    };

    private Value Element(IOperation of, IEnumerable<IOperation> at, ITypeSymbol? type)
    {
        var collection = Eval(of);
        var index = at.Aggregate(default(Value), (sum, i) => _values.Union(sum, Eval(i)));
        return _values.Union(ItemOf(collection, type), Resolve(index));
    }

    private Value Tuple(ITupleOperation tuple)
    {
        var made = _heap.Make(tuple.Syntax, _frame, _cell, tuple.Type ?? tuple.NaturalType);
        for (var i = 0; i < tuple.Elements.Length; i++)
            _heap.Add(made, $"Item{i + 1}", Eval(tuple.Elements[i]));
        return _values.Of(new ObjectAtom(made.Id));
    }
}
