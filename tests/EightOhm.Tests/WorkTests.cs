namespace EightOhm.Tests;

public class WorkTests
{
    [Fact]
    public void Nothing_happens_where_nobody_began_work()
    {
        Work.Checkpoint();
        Work.Report(1, 2);
    }

    [Fact]
    public void A_cancelled_work_stops_the_loop_that_polls_it()
    {
        using var source = new CancellationTokenSource();
        using var work = Work.Begin(source.Token);
        Work.Checkpoint();

        source.Cancel();

        Assert.Throws<OperationCanceledException>(Work.Checkpoint);
        Assert.Throws<OperationCanceledException>(() => Work.Report(1, 2));
    }

    [Fact]
    public void The_end_of_an_inner_work_brings_the_outer_back()
    {
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();
        using (Work.Begin(CancellationToken.None))
        {
            using (Work.Begin(cancelled.Token))
                Assert.Throws<OperationCanceledException>(Work.Checkpoint);
            Work.Checkpoint();
        }

        Work.Checkpoint();
    }

    [Fact]
    public void Threads_that_the_work_starts_belong_to_it()
    {
        using var source = new CancellationTokenSource();
        using var work = Work.Begin(source.Token);
        source.Cancel();

        var failure = Assert.Throws<AggregateException>(() => Parallel.For(0, 8, _ => Work.Checkpoint()));

        Assert.All(failure.InnerExceptions, e => Assert.IsType<OperationCanceledException>(e));
    }

    [Fact]
    public async Task Another_flow_of_control_does_not_see_the_work()
    {
        using var source = new CancellationTokenSource();
        await source.CancelAsync();
        var go = new TaskCompletionSource();
        var other = Task.Run(async () =>
        {
            await go.Task;
            Work.Checkpoint();
        });

        using var work = Work.Begin(source.Token);
        go.SetResult();

        await other;
    }

    [Fact]
    public void Progress_reaches_the_host_as_a_part_of_the_whole()
    {
        var told = new Told();
        using (Work.Begin(CancellationToken.None, told))
            Work.Report(1, 4);

        Assert.Equal(new WorkDone(1, 4), Assert.Single(told.All));
        Assert.Equal(0.25, told.All[0].Fraction);
        Assert.Equal(0, new WorkDone(3, 0).Fraction);
    }

    private sealed class Told : IProgress<WorkDone>
    {
        public List<WorkDone> All { get; } = [];

        public void Report(WorkDone value) => All.Add(value);
    }
}
