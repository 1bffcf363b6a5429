using System.Linq.Expressions;
using BenchmarkDotNet.Attributes;
using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Benchmarks;

/// <summary>What a slider feels: two hundred rules after one input moved; and what opening a very long record costs.</summary>
[MemoryDiagnoser]
public class RecordBenchmarks
{
    private readonly string _folder = Directory.CreateTempSubdirectory("record").FullName;
    private DesignRecord _record = DesignRecord.Scratch();
    private bool _up;

    private string Long => Path.Combine(_folder, "long.json");

    [GlobalSetup]
    public void Setup()
    {
        _record = DesignRecord.Scratch();
        _record.Target("P", 100.W);
        _record.Target("R_L", 8.Ohm);
        _record.Derive("V0", (Power P, ElectricResistance R_L) => Sqrt(P * R_L));
        for (var i = 1; i < 200; i++)
            _record.Derive($"V{i}", Next(i - 1));
        var record = DesignRecord.Open(Long);
        using (record.Batch())
        {
            for (var i = 0; i < 20_000; i++)
                record.Target($"x{i}", (double)i);
        }
    }

    [GlobalCleanup]
    public void Cleanup() => Directory.Delete(_folder, recursive: true);

    /// <summary>Every rule hangs on the one before and on the load.</summary>
    [Benchmark]
    public ElectricPotential Two_hundred_rules_after_one_input_moved()
    {
        _up = !_up;
        _record.Set("P", _up ? "120 W" : "100 W");
        return _record.Get<ElectricPotential>("V199");
    }

    [Benchmark]
    public DesignRecord Open_twenty_thousand_entries() => DesignRecord.Open(Long);

    private static Expression<Func<ElectricPotential, ElectricResistance, ElectricPotential>> Next(int i)
    {
        var (v, r) = (Expression.Parameter(typeof(ElectricPotential), $"V{i}"), Expression.Parameter(typeof(ElectricResistance), "R_L"));
        Expression<Func<ElectricPotential, ElectricResistance, ElectricPotential>> rule = (V, R_L) => Sqrt(V * V / R_L * R_L);
        var body = new Renamed(rule.Parameters, [v, r]).Visit(rule.Body);
        return Expression.Lambda<Func<ElectricPotential, ElectricResistance, ElectricPotential>>(body, v, r);
    }

    private sealed class Renamed(IReadOnlyList<ParameterExpression> from, ParameterExpression[] to) : ExpressionVisitor
    {
        protected override Expression VisitParameter(ParameterExpression node) => to[from.ToList().IndexOf(node)];
    }
}
