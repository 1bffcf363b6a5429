using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;

namespace EightOhm.Cells.Sources;

/// <summary>Statements other than loops.</summary>
internal sealed partial class Interpreter
{
    private readonly Stack<State> _tries = new();

    // Null when it is no statement.
    private Value? Statement(IOperation operation)
    {
        switch (operation)
        {
            case IBlockOperation block:
                Block(block.Operations);
                return default(Value);
            case IMethodBodyBaseOperation body:
                if (body is IConstructorBodyOperation { Initializer: { } before })
                    Eval(before);
                Eval(body.BlockBody ?? body.ExpressionBody);
                return default(Value);
            case IExpressionStatementOperation statement:
                Note(Eval(statement.Operation));
                return default(Value);
            case IVariableDeclarationGroupOperation or IVariableDeclarationOperation:
                foreach (var child in operation.ChildOperations)
                    Eval(child);
                return default(Value);
            case IVariableDeclaratorOperation declarator:
                Declare(declarator);
                return default(Value);
            case IReturnOperation done:
                Return(done);
                return default(Value);
            case IBranchOperation branch:
                Branch(branch);
                return default(Value);
            case ILabeledOperation labeled:
                Eval(labeled.Operation);
                return default(Value);
            case ISwitchOperation choice:
                Switch(choice);
                return default(Value);
            case ITryOperation attempt:
                Try(attempt);
                return default(Value);
            case IUsingOperation use:
                Note(Eval(use.Resources));
                Eval(use.Body);
                return default(Value);
            case IUsingDeclarationOperation use:
                Eval(use.DeclarationGroup);
                return default(Value);
            case ILockOperation held:
                Eval(held.LockedValue);
                Eval(held.Body);
                return default(Value);
            case ILoopOperation loop:
                Loop(loop);
                return default(Value);
            default:
                return null;
        }
    }

    private void Block(IEnumerable<IOperation> operations)
    {
        // Local functions are there before the first line.
        foreach (var local in operations.OfType<ILocalFunctionOperation>())
            SetLocal(local.Symbol, Function(local.Symbol, local.Body, _frame), weak: false, declares: true);
        foreach (var operation in operations)
        {
            if (_state.IsDead)
                return;
            Eval(operation);
        }
    }

    private void Declare(IVariableDeclaratorOperation declarator)
    {
        var initial = declarator.Initializer ?? (declarator.Parent as IVariableDeclarationOperation)?.Initializer;
        if (declarator.Symbol.IsRef && initial is not null)
            _frame.Aliases[declarator.Symbol] = (_frame, initial.Value);
        var value = initial is null ? default : Eval(initial.Value);
        Note(value);
        SetLocal(declarator.Symbol, Settle(declarator.Symbol.Type, _values.Union(value, Deciding())), weak: false, declares: true);
    }

    private void Return(IReturnOperation done)
    {
        var value = _values.Union(Eval(done.ReturnedValue), Deciding());
        if (done.Kind == OperationKind.YieldReturn)
        {
            _frame.Yielded = _values.Union(_frame.Yielded, value);
            return;
        }

        _frame.Returned = _values.Union(_frame.Returned, value);
        _frame.Residual = _values.Union(_frame.Residual, Deciding());
        (_frame.Exit ??= new State(_shared) { IsDead = true }).Join(_state, _values);
        End();
    }

    private Value Throw(IThrowOperation thrown)
    {
        Note(Eval(thrown.Exception));
        _frame.Threw = _values.Union(_frame.Threw, Deciding());
        _frame.Residual = _values.Union(_frame.Residual, Deciding());
        End();
        return default;
    }

    // Behind this point nothing runs, but a catch may go on from here.
    private void End()
    {
        foreach (var attempt in _tries)
            attempt.Join(_state, _values);
        _state = _state.Copy();
        _state.IsDead = true;
    }

    private void Branch(IBranchOperation branch)
    {
        if (branch.BranchKind == BranchKind.GoTo || !_frame.Jumps.TryGetValue(branch.Target, out var jump))
            throw new CannotReadException("it jumps with goto");
        (SymbolEqualityComparer.Default.Equals(jump.Continue, branch.Target) ? jump.WentOn : jump.Left).Join(_state, _values);
        // Whatever else runs in the loops that it leaves runs for the same reason.
        var reason = Deciding();
        for (var i = _frame.Running.Count - 1; i >= 0; i--)
        {
            _frame.Running[i].Residual = _values.Union(_frame.Running[i].Residual, reason);
            if (ReferenceEquals(_frame.Running[i], jump))
                break;
        }

        End();
    }

    private void Switch(ISwitchOperation choice)
    {
        var value = Eval(choice.Value);
        var jump = new Jump(_shared);
        _frame.Jumps[choice.ExitLabel] = jump;
        _frame.Running.Add(jump);
        var reason = Resolve(value);
        var before = _state.Copy();
        foreach (var section in choice.Cases)
        {
            _state = before.Copy();
            foreach (var clause in section.Clauses)
                reason = _values.Union(reason, Clause(clause, value));
            Under(reason, () =>
            {
                Block(section.Body);
                return default(Value);
            });
            jump.Left.Join(_state, _values);
        }

        _frame.Running.RemoveAt(_frame.Running.Count - 1);
        _state = before;
        _state.Join(jump.Left, _values);
        if (choice.Cases.Any(c => c.Clauses.Any(k => k.CaseKind == CaseKind.Default)))
            _state = jump.Left;
    }

    private Value Clause(ICaseClauseOperation clause, Value value) => clause switch
    {
        IPatternCaseClauseOperation pattern => _values.Union(Matched(pattern.Pattern, value), Eval(pattern.Guard)),
        ISingleValueCaseClauseOperation single => Eval(single.Value),
        _ => default,
    };

    private void Try(ITryOperation attempt)
    {
        var seen = _evaluated;
        var before = _state.Copy();
        var reason = default(Value);
        State ended;
        _weak++;
        // What is computed in it decides how far it comes.
        for (var round = 0; ; round++)
        {
            _state = before.Copy();
            _evaluated = default;
            _tries.Push(new State(_shared) { IsDead = true });
            Under(attempt.Catches.IsEmpty ? default : reason, () => Eval(attempt.Body));
            ended = _tries.Pop();
            var all = _values.Union(reason, Seen(_evaluated));
            if (all == reason || attempt.Catches.IsEmpty || round > MostRounds)
                break;
            reason = all;
        }

        _weak--;
        _evaluated = _values.Union(seen, _evaluated);
        var whole = _state;
        var caught = before;
        caught.Join(ended, _values);
        var going = whole.Copy();
        going.IsDead = false;
        caught.Join(going, _values);
        foreach (var handler in attempt.Catches)
        {
            _state = caught.Copy();
            Under(reason, () =>
            {
                if (handler.ExceptionDeclarationOrExpression is IVariableDeclaratorOperation variable)
                    SetLocal(variable.Symbol, _values.Union(reason, _evaluated), weak: false, declares: true);
                Eval(handler.Filter);
                return Eval(handler.Handler);
            });
            whole.Join(_state, _values);
        }

        _state = whole;
        if (attempt.Finally is not null)
            Finally(attempt.Finally, caught);
    }

    // It runs on every way out, also on that of a return that has gone before.
    private void Finally(IOperation last, State anywhere)
    {
        var dead = _state.IsDead;
        _state.Join(anywhere, _values);
        _weak++;
        Eval(last);
        _weak--;
        _frame.Exit?.Join(_state, _values);
        foreach (var jump in _frame.Running)
        {
            if (!jump.Left.IsDead)
                jump.Left.Join(_state, _values);
            if (!jump.WentOn.IsDead)
                jump.WentOn.Join(_state, _values);
        }

        _state.IsDead = dead;
    }
}
