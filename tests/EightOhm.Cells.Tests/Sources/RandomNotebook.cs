namespace EightOhm.Cells.Tests.Sources;

/// <summary>Notebooks made up from a seed: variables, lists, functions, closures, objects, loops, branches, exceptions, mixed as they come.</summary>
internal sealed class RandomNotebook(int seed)
{
    private readonly Random _random = new(seed);
    private readonly List<string> _numbers = ["P", "Q", "R", "S"];
    private readonly List<string> _lists = [];
    private readonly List<string> _functions = [];
    private readonly List<string> _closures = [];
    private readonly List<string> _arrays = [];
    private readonly List<string> _sums = [];
    private readonly List<string> _entries = [];
    private readonly List<string> _nets = [];
    private int _names;
    private bool _inLoop;

    /// <summary>The type that all cells may use.</summary>
    public const string Types = "class Acc { double s; public readonly List<double> L = new(); public void Add(double x) { s = Mix(s, x); if (x > 50) L.Add(x); } public double Sum => s + L.Count; static double Mix(double a, double b) => Math.Sin(a * 1.3 + b); }";

    /// <summary>The cells after the inputs.</summary>
    public IReadOnlyList<string> Cells(int count) => [Types, .. Enumerable.Range(0, count).Select(_ => Cell())];

    private string Cell()
    {
        var lines = Enumerable.Range(0, _random.Next(1, 6)).Select(_ => Top()).ToList();
        if (_random.Next(3) > 0)
            lines.Add(Kept());
        return string.Join('\n', lines);
    }

    private string Kept()
    {
        var name = $"y{_names++}";
        var line = $"d.Compute(\"{name}\", 1.0 * {Expression(2)});";
        _entries.Add(name);
        return line;
    }

    private string Top()
    {
        var name = $"v{_names++}";
        switch (_random.Next(13))
        {
            case 0 or 1:
                return Declare(_numbers, name, $"double {name} = {Expression(2)};");
            case 2:
                return Declare(_lists, name, $"var {name} = new List<double> {{ {Expression(1)} }};");
            case 3 when _lists.Count > 0:
                return Declare(_lists, name, $"var {name} = {Any(_lists)};");
            case 4:
                return Declare(_closures, name, $"Func<double, double> {name} = x{name} => {Inside($"x{name}", () => Expression(2))};");
            case 5:
                return Declare(_functions, name, $"double {name}(double x{name}) {{ {Inside($"x{name}", () => $"{Statement(2)} if ({Condition()}) return {Expression(1)}; {Statement(2)} return {Expression(2)};")} }}");
            case 6:
                return Declare(_arrays, name, $"double[] {name} = [{Expression(1)}, {Expression(1)}];");
            case 7:
                return Declare(_sums, name, $"var {name} = new Acc();");
            case 8:
                return Declare(_nets, name, $"var {name} = new Net();");
            case 9:
                return Declare(_numbers, name, $"(double {name}, double _{name}) = ({Expression(1)}, {Expression(1)});");
            default:
                return Statement(3);
        }
    }

    private static string Declare(List<string> list, string name, string line)
    {
        list.Add(name);
        return line;
    }

    // With a further variable in scope.
    private string Inside(string variable, Func<string> make)
    {
        var (functions, loop) = (_functions.ToList(), _inLoop);
        _numbers.Add(variable);
        _inLoop = false;
        var text = make();
        _numbers.Remove(variable);
        _inLoop = loop;
        return text;
    }

    private string Statement(int depth)
    {
        if (depth == 0)
            return $"{Variable()} = {Expression(1)};";
        switch (_random.Next(16))
        {
            case 0 or 1:
                return $"{Variable()} = {Expression(2)};";
            case 2:
                return $"{Variable()} += {Expression(1)};";
            case 3 or 4 when _lists.Count > 0:
                return $"{Any(_lists)}.Add({Expression(1)});";
            case 5:
                return $"if ({Condition()}) {{ {Statement(depth - 1)} }} else {{ {Statement(depth - 1)} }}";
            case 6:
                return $"if ({Condition()}) {{ {Statement(depth - 1)} {Statement(depth - 1)} }}";
            case 7:
                var i = $"i{_names++}";
                return $"for (var {i} = 0; {i} < 2; {i}++) {{ {Loop(i, depth)} }}";
            case 8 when _lists.Count > 0:
                var x = $"x{_names++}";
                return $"foreach (var {x} in {Any(_lists)}.Take(3).ToArray()) {{ {Loop(x, depth)} }}";
            case 9 when _closures.Count > 0:
                var p = $"p{_names++}";
                return $"{Any(_closures)} = {p} => {Inside(p, () => Expression(1))};";
            case 10 when _arrays.Count > 0:
                return $"{Any(_arrays)}[{_random.Next(2)}] = {Expression(1)};";
            case 11 when _sums.Count > 0:
                return $"{Any(_sums)}.Add({Expression(1)});";
            case 12:
                return $"try {{ {Statement(depth - 1)} if ({Condition()}) throw new Exception(); {Statement(depth - 1)} }} catch (Exception) {{ {Statement(depth - 1)} }}";
            case 13 when _lists.Count > 0:
                return $"Foreign.Push({Any(_lists)}, {Expression(1)});";
            case 14:
                return $"Foreign.Twice(() => {Variable()} = {Expression(1)});";
            case 15 when _nets.Count > 0:
                return $"{Any(_nets)}.Add({Expression(1)});";
            default:
                return $"{Variable()} = {Expression(1)};";
        }
    }

    private string Loop(string variable, int depth)
    {
        _numbers.Add(variable);
        var outer = _inLoop;
        _inLoop = true;
        var text = $"{Statement(depth - 1)} if ({Condition()}) {(_random.Next(2) == 0 ? "break" : "continue")}; {Statement(depth - 1)}";
        _inLoop = outer;
        _numbers.Remove(variable);
        return text;
    }

    // A variable that can be assigned.
    private string Variable()
    {
        var own = _numbers.Where(n => n[0] == 'v').ToList();
        return own.Count > 0 ? Any(own) : "S";
    }

    private string Condition() => $"Mix({Expression(1)}, {Expression(0)}) > {_random.Next(10, 90)}";

    private string Expression(int depth)
    {
        if (depth == 0)
            return _random.Next(4) == 0 ? $"{_random.Next(1, 60)}.5" : Any(_numbers);
        var (a, b) = (depth - 1, _random.Next(depth));
        switch (_random.Next(20))
        {
            case 0 or 1 or 2:
                return $"Mix({Expression(a)}, {Expression(b)})";
            case 3:
                return $"({Condition()} ? {Expression(a)} : {Expression(b)})";
            case 4 when _lists.Count > 0:
                return $"{Any(_lists)}.Sum()";
            case 5 when _lists.Count > 0:
                return $"{Any(_lists)}.Count";
            case 6 when _closures.Count > 0:
                return $"Call({Any(_closures)}, {Expression(b)})";
            case 7 when _functions.Count > 0:
                return $"Call({Any(_functions)}, {Expression(b)})";
            case 8 when _arrays.Count > 0:
                return $"{Any(_arrays)}[{_random.Next(2)}]";
            case 9 when _sums.Count > 0:
                return $"{Any(_sums)}.Sum";
            case 10 when _lists.Count > 0:
                var x = $"z{_names++}";
                return $"{Any(_lists)}.Select({x} => {Inside(x, () => Expression(a))}).Sum()";
            case 11:
                return $"new Stage({Expression(a)}, 2).Worst(1 + Math.Abs({Expression(b)}))";
            case 12 when _entries.Count > 0:
                return $"d.Get<double>(\"{Any(_entries)}\")";
            case 13 when _closures.Count > 0:
                return $"new Supply({Any(_closures)}).At({Expression(b)})";
            case 14 when _nets.Count > 0:
                return $"{Any(_nets)}.Sum()";
            case 15:
                return $"(A: {Expression(a)}, B: {Expression(b)}).{(_random.Next(2) == 0 ? 'A' : 'B')}";
            case 16:
                return $"new {{ A = {Expression(a)}, B = {Expression(b)} }}.B";
            case 17 when _lists.Count > 0:
                var q = $"q{_names++}";
                return $"{Any(_lists)}.Where({q} => {Inside(q, Condition)}).Count()";
            default:
                return Expression(a);
        }
    }

    private string Any(List<string> list) => list[_random.Next(list.Count)];
}
