using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace EightOhm.Cells.Sources;

/// <summary>Loops, run until nothing new comes.</summary>
internal sealed partial class Interpreter
{
    private void Loop(ILoopOperation loop)
    {
        if (loop is IForLoopOperation { Before: var first })
        {
            foreach (var operation in first)
                Eval(operation);
        }

        var each = loop as IForEachLoopOperation;
        var collection = Eval(each?.Collection);
        Note(collection);
        var jump = new Jump(_shared) { Continue = loop.ContinueLabel };
        _frame.Jumps[loop.ExitLabel] = jump;
        _frame.Jumps[loop.ContinueLabel] = jump;
        _frame.Running.Add(jump);
        var head = _state.Copy();
        var after = new State(_shared) { IsDead = true };
        var reason = default(Value);
        for (var round = 0; ; round++)
        {
            if (round > MostRounds)
                throw new CannotReadException("a loop in it does not settle");
            var (heap, residual, why) = (_heap.Version, jump.Residual, reason);
            _state = head.Copy();
            reason = _values.Union(reason, Turn(loop, each, collection, reason, after));
            _state.Join(jump.WentOn, _values);
            Under(reason, () =>
            {
                foreach (var operation in (loop as IForLoopOperation)?.AtLoopBottom ?? [])
                    Eval(operation);
                return default(Value);
            });
            if (loop is IWhileLoopOperation { ConditionIsTop: false } last && !_state.IsDead)
            {
                reason = _values.Union(reason, Under(reason, () => Resolve(Eval(last.Condition))));
                after.Join(_state, _values);
            }

            var grown = head.Join(_state, _values);
            if (!grown && heap == _heap.Version && residual == jump.Residual && why == reason)
                break;
        }

        _frame.Running.RemoveAt(_frame.Running.Count - 1);
        after.Join(jump.Left, _values);
        _state = after;
    }

    // One turn, from the state at the loop's head; gives back what decides over another turn.
    private Value Turn(ILoopOperation loop, IForEachLoopOperation? each, Value collection, Value known, State after)
    {
        var reason = known;
        switch (loop)
        {
            case IForEachLoopOperation:
                after.Join(_state, _values);
                reason = _values.Union(reason, Resolve(collection));
                break;
            case IWhileLoopOperation { ConditionIsTop: true, Condition: var condition }:
                reason = TopCondition(condition);
                break;
            case IForLoopOperation { Condition: var condition }:
                reason = TopCondition(condition);
                break;
        }

        Under(reason, () =>
        {
            if (each is not null)
                Item(each, collection);
            return Eval(loop.Body);
        });
        return reason;

        Value TopCondition(IOperation? condition)
        {
            var why = _values.Union(known, Under(known, () => Resolve(Eval(condition))));
            // Only an endless loop has no way out at its head.
            if (condition is not null && condition.ConstantValue is not { HasValue: true, Value: true })
                after.Join(_state, _values);
            return why;
        }
    }

    private void Item(IForEachLoopOperation each, Value collection)
    {
        switch (each.LoopControlVariable)
        {
            case IVariableDeclaratorOperation variable:
                SetLocal(variable.Symbol, Settle(variable.Symbol.Type, _values.Union(ItemOf(collection, variable.Symbol.Type), Deciding())), weak: false, declares: true);
                break;
            case { } parts:
                var type = each.Syntax is CommonForEachStatementSyntax syntax ? _code.Model(syntax.SyntaxTree).GetForEachStatementInfo(syntax).ElementType : null;
                var item = ItemOf(collection, type);
                AssignParts(parts, (i, part) => Part(item, type, i, part));
                break;
        }
    }
}
