using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace EightOhm.Cells.Sources;

/// <summary>The record's verbs.</summary>
internal sealed partial class Interpreter
{
    // What the arguments of one call come to.
    private sealed class Told
    {
        public List<string>? Names { get; set; } = [];

        public Value Sources { get; set; }

        public Value Reads { get; set; }

        public Value Conditions { get; set; }

        public Value Given { get; set; }
    }

    private Value Do(IInvocationOperation call, Verb verb)
    {
        var receiver = Eval(call.Instance);
        var records = Records(receiver, verb);
        if (verb.Gives == Gives.Variables)
            return Recall(call, _values.Where(receiver, a => a is EntryAtom or EveryEntryAtom), records);
        var told = new Told { Sources = _values.Where(receiver, a => a is EntryAtom or EveryEntryAtom) };
        if (verb.Gives == Gives.Worst)
        {
            told.Sources = Resolve(receiver);
            told.Conditions = Objects(receiver).Aggregate(default(Value), (sum, o) => _values.Union(sum, o.Aside));
        }

        var arguments = call.Arguments.Select(a => (Parameter: a.Parameter!, Name: NameOfLimit(verb, a), a.Value))
            .Select(a => (a.Parameter, Value: Settle(a.Parameter.Type, Eval(a.Name ?? a.Value)), IsName: a.Name is not null)).Where(a => !Kinds.IsRecord(a.Parameter.Type)).ToList();
        foreach (var (parameter, value, isName) in arguments.OrderBy(a => verb.Of(a.Parameter) == Takes.Rule))
            Tell(told, verb, parameter, value, isName, records, call);
        if (verb.Gives == Gives.Limited)
            told.Names = Names(Objects(receiver).Aggregate(default(Value), (sum, o) => _values.Union(sum, o.Aside)));
        var sources = _values.Union(told.Sources, _values.Union(told.Reads, Deciding()));
        if (verb.Writes)
            Wrote(records, Written.Entry, told.Names, call.Syntax, sources);
        else if (verb.Gives is Gives.Requirement)
            Wrote(records, Written.Requirement, told.Names, call.Syntax, sources);
        var value_ = GivenBy(call, verb, receiver, records, told, sources);
        Note(Without<RecordAtom>(value_));
        return value_;
    }

    // A limit takes a value or the name of an entry, whichever is given: what is spelled is a name.
    private static IOperation? NameOfLimit(Verb verb, IArgumentOperation argument) =>
        verb.Of(argument.Parameter!) == Takes.Limit && argument.Value is IConversionOperation { Operand: { Type.SpecialType: SpecialType.System_String } name } ? name : null;

    // Each variable hangs on the entry of its own name.
    private Value Recall(IInvocationOperation call, Value sources, List<RecordAtom> records)
    {
        foreach (var argument in call.Arguments.Where(a => a.Parameter?.RefKind == RefKind.Out))
        {
            var name = (argument.Value is IDeclarationExpressionOperation declaration ? declaration.Expression : argument.Value) switch
            {
                ILocalReferenceOperation local => local.Local.Name,
                IParameterReferenceOperation parameter => parameter.Parameter.Name,
                IFieldReferenceOperation field => field.Field.Name,
                _ => null,
            };
            var read = _values.Union(sources, Entries(records, name is null ? null : [name]));
            Assign(argument.Value, Result(argument.Syntax, argument.Value.Type, read, handsOn: false));
        }

        return default;
    }

    private Value GivenBy(IInvocationOperation call, Verb verb, Value receiver, List<RecordAtom> records, Told told, Value sources)
    {
        switch (verb.Gives)
        {
            case Gives.InForce:
                // The record computes a rule again by itself; a value it takes from here, unless another was set.
                var from = verb.Parts.Contains(Takes.Rule) ? default : told.Sources;
                return Result(call.Syntax, call.Type, _values.Union(from, Entries(records, told.Names)), handsOn: true);
            case Gives.Value:
                return told.Given;
            case Gives.Read or Gives.Worst:
                return Result(call.Syntax, call.Type, _values.Union(told.Reads, told.Sources), handsOn: false);
            case Gives.All:
                if (Verbs.IsUnknown(verb))
                    Everything(_values.Of(records), Line(call.Syntax), sources);
                return Result(call.Syntax, call.Type, _values.Union(_values.Of(records.Select(r => new EveryEntryAtom(r))), sources), handsOn: false);
            case Gives.Requirement:
                return Requirement(call, records, told, sources);
            case Gives.Limited:
                foreach (var required in Objects(receiver))
                    _heap.Add(required, sources);
                var whole = Resolve(Objects(receiver).Aggregate(sources, (sum, o) => _values.Union(sum, o.Whole)));
                Wrote(records, Written.Requirement, told.Names, call.Syntax, whole);
                return receiver;
            case Gives.Conditions:
                return Conditions(call, receiver, records, told, sources);
            case Gives.Record:
                return _values.Union(told.Sources, told.Names is null ? _values.Of(RecordAtom.Unknown) : _values.Of(told.Names.Select(n => new RecordAtom(n, 0))));
            case Gives.ScratchRecord:
                var made = _heap.Make(call.Syntax, _frame, _cell, call.Type);
                return _values.Union(told.Sources, _values.Of((told.Names ?? [""]).Select(n => new RecordAtom(n, made.Id))));
            default:
                return default;
        }
    }

    private void Tell(Told told, Verb verb, IParameterSymbol parameter, Value value, bool isName, List<RecordAtom> records, IInvocationOperation call)
    {
        var part = verb.Of(parameter);
        if (part is Takes.Value or Takes.Limit && Kinds.IsFunction(parameter.Type))
            part = Takes.Rule;
        if (isName || part == Takes.Limit && parameter.Type is { SpecialType: SpecialType.System_String } or IArrayTypeSymbol { ElementType.SpecialType: SpecialType.System_String })
            part = Takes.Read;
        // Require("entry", limit): the label is the entry's name.
        if (part == Takes.Label && call.TargetMethod.Parameters is [_, { Type.Name: "EntryLimit" }, ..])
            part = Takes.LabelOfEntry;
        switch (part)
        {
            case Takes.Entry or Takes.Role or Takes.Label or Takes.LabelOfEntry:
                told.Names = Named(value, call)?.Select(n => part == Takes.Role ? n.Replace(' ', '_') : n).ToList();
                told.Sources = _values.Union(told.Sources, Settled(value));
                if (part == Takes.LabelOfEntry)
                    told.Reads = _values.Union(told.Reads, Entries(records, told.Names));
                break;
            case Takes.Value or Takes.Limit:
                told.Given = value;
                told.Sources = _values.Union(told.Sources, Resolve(value));
                break;
            case Takes.Read:
                var read = Named(Resolve(value, texts: true), call);
                told.Reads = _values.Union(told.Reads, _values.Union(Settled(Resolve(value)), Entries(records, read)));
                // A requirement is found by its label and by its entry.
                if (verb.Gives == Gives.Requirement)
                    told.Names = told.Names is null || read is null ? null : [.. told.Names, .. read];
                break;
            case Takes.ReadLabel:
                var names = Named(Resolve(value, texts: true), call);
                told.Reads = _values.Union(told.Reads, _values.Union(Settled(Resolve(value)), names is null ? Entries(records, null) : Required(records, names)));
                break;
            case Takes.Rule:
                told.Given = Rule(value, records, told);
                told.Sources = _values.Union(told.Sources, told.Given);
                break;
            case Takes.Conditions:
                told.Sources = _values.Union(told.Sources, Resolve(value));
                told.Conditions = Objects(value).Aggregate(told.Conditions, (sum, o) => _values.Union(sum, o.Aside));
                break;
            case Takes.Condition or Takes.ConditionOfEntry:
                told.Names = Named(value, call);
                told.Sources = _values.Union(told.Sources, Settled(value));
                if (part == Takes.ConditionOfEntry)
                    told.Reads = _values.Union(told.Reads, Entries(records, told.Names));
                break;
            case Takes.Words when verb.Gives is Gives.Record or Gives.ScratchRecord:
                told.Names = Names(value);
                told.Sources = _values.Union(told.Sources, Settled(value));
                break;
        }
    }

    /// <summary>What a rule comes to: its parameters name entries, but for those that name a condition.</summary>
    private Value Rule(Value rule, List<RecordAtom> records, Told told)
    {
        // Where a condition's name is computed, a parameter can be one or name an entry.
        var conditions = told.Conditions.IsEmpty ? [] : Names(told.Conditions);
        var sum = _values.Where(rule, a => a is EntryAtom or EveryEntryAtom or RequirementAtom);
        var functions = _values.Atoms(rule).OfType<ClosureAtom>().Select(c => _closures[c.Id]).ToList();
        if (functions.Count == 0 || Has<ObjectAtom>(rule))
            sum = _values.Union(sum, Entries(records, null));
        foreach (var function in functions)
        {
            var before = _state.Copy();
            var arguments = function.Method.Parameters.Select(p => conditions is null ? _values.Union(told.Sources, Entries(records, [p.Name])) : conditions.Contains(p.Name) ? told.Sources : Entries(records, [p.Name])).ToList();
            var value = CallFunction(function, arguments, (function.Body ?? _code.Body(function.Method))?.Syntax ?? _code.Tree(_cell).GetRoot(), function.Lexical ?? FrameOf(null, null, null, null));
            sum = _values.Union(sum, arguments.Aggregate(Resolve(value), _values.Union));
            Maybe(before);
        }

        return sum;
    }

    // A requirement keeps its record and label beside what it hangs on, for the limit that may follow.
    private Value Requirement(IInvocationOperation call, List<RecordAtom> records, Told told, Value sources)
    {
        var made = _heap.Make(call.Syntax, _frame, _cell, null);
        _heap.Add(made, sources);
        _heap.AddAside(made, _values.Union(_values.Of(records), told.Names is null ? _values.Of(new ComputedTextAtom()) : _values.Of(told.Names.Select(n => new TextAtom(n)))));
        return _values.Union(_values.Of(new ObjectAtom(made.Id)), told.Names is null ? Entries(records, null) : Required(records, told.Names));
    }

    // Conditions are made anew by each step, or grow in place: the object that is there grows if its type can.
    private Value Conditions(IInvocationOperation call, Value receiver, List<RecordAtom> records, Told told, Value sources)
    {
        var old = Objects(receiver);
        var names = told.Names is null ? _values.Of(new ComputedTextAtom()) : _values.Of(told.Names.Select(n => new TextAtom(n)));
        var made = _heap.Make(call.Syntax, _frame, _cell, null);
        foreach (var grown in old.Where(_ => _kinds.Changes(call.TargetMethod.ContainingType) && !Kinds.IsRecord(call.TargetMethod.ContainingType)).Append(made))
        {
            _heap.Add(grown, old.Aggregate(sources, (sum, o) => _values.Union(sum, o.Whole)));
            _heap.AddAside(grown, old.Aggregate(_values.Union(_values.Of(records), names), (sum, o) => _values.Union(sum, o.Aside)));
        }

        return _values.Of(new ObjectAtom(made.Id));
    }

    private Value Entries(Verb verb, Value receiver) =>
        verb.Gives == Gives.All ? _values.Of(Records(receiver, verb).Select(r => new EveryEntryAtom(r))) : _values.Of(new ComputedTextAtom());

    private Value Entries(IEnumerable<RecordAtom> records, IReadOnlyList<string>? names) =>
        _values.Of(records.SelectMany(r => names is null || r == RecordAtom.Unknown ? [new EveryEntryAtom(r)] : names.Select(n => (Atom)new EntryAtom(r, n.Normalize()))));

    // A requirement goes by its label or by the entry it is about.
    private Value Required(IEnumerable<RecordAtom> records, IReadOnlyList<string> labels) =>
        _values.Of(records.SelectMany(r => r == RecordAtom.Unknown ? [new EveryEntryAtom(r)] : labels.Select(l => (Atom)new RequirementAtom(r, l))));

    private List<RecordAtom> Records(Value receiver, Verb verb)
    {
        if (verb.Gives is Gives.Record or Gives.ScratchRecord)
            return [];
        var held = verb.Type == "*" ? Objects(receiver).Aggregate(default(Value), (sum, o) => _values.Union(sum, o.Aside)) : receiver;
        var records = _values.Atoms(held).OfType<RecordAtom>().ToList();
        return records.Count > 0 ? records : [RecordAtom.Unknown];
    }

    // The names that a value spells out; null when it can be any.
    private List<string>? Names(Value value)
    {
        var texts = _values.Atoms(value).OfType<TextAtom>().Select(t => t.Text).ToList();
        return texts.Count == 0 || Has<ComputedTextAtom>(value) ? null : texts;
    }

    private List<string>? Named(Value value, IInvocationOperation call)
    {
        var names = Names(value);
        if (names is null)
            _notes.Warnings.Add($"line {Line(call.Syntax)}: {call.TargetMethod.Name} is given a name that is computed, so all entries count as its sources; write the name out.");
        return names;
    }

    private Value Settled(Value value) => _values.Where(value, a => a is EntryAtom or EveryEntryAtom or RequirementAtom);

    private void Wrote(IEnumerable<RecordAtom> records, Written kind, IReadOnlyList<string>? names, SyntaxNode call, Value sources)
    {
        var line = call is InvocationExpressionSyntax invocation ? invocation.ArgumentList.OpenParenToken.GetLocation().GetMappedLineSpan().StartLinePosition.Line + 1 : Line(call);
        foreach (var record in records)
        {
            foreach (var name in names is null ? [null] : names.Select(n => kind == Written.Entry ? n.Normalize() : n).Cast<string?>())
                Wrote(new(record, kind, name, line), sources);
        }
    }

    private void Wrote(Write write, Value sources)
    {
        _notes.Writes[write] = _values.Union(_notes.Writes.GetValueOrDefault(write), sources);
        if (write.Record.Site > 0)
            Change(_heap[write.Record.Site]);
    }

    // Someone else has the record in hand: any entry may have moved.
    private void Everything(Value records, int line, Value sources)
    {
        foreach (var record in _values.Atoms(records).OfType<RecordAtom>())
            Wrote(new(record, Written.Entry, null, line), _values.Union(_values.Of(new EveryEntryAtom(record)), Resolve(Without<RecordAtom>(sources))));
    }
}
