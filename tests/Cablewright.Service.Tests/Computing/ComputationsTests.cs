using Cablewright.Engine.Numerics;
using Cablewright.Service.Computing;
using Cablewright.Service.Health;
using Cablewright.Service.Hosting;
using Cablewright.Service.Problems;
using static Cablewright.Service.Tests.Computing.HeldComputation;

namespace Cablewright.Service.Tests.Computing;

public class ComputationsTests
{
    private const string One = "192.0.2.1", Another = "192.0.2.2", Third = "192.0.2.3";

    private static readonly LoadSettings Free = new() { WaitingSeconds = 60, AnonymousWorkPerMinute = 0 };

    [Fact]
    public async Task A_computation_ends_at_the_deadline()
    {
        (string? answer, ProblemAnswer? problem) = await Computations(Free with { ComputationSeconds = 0.05 })
            .Run<string>(From(One), Endless, CancellationToken.None);
        Assert.Null(answer);
        Assert.Equal((503, "computation.too-long"), Told(problem));
    }

    [Fact]
    public async Task A_computation_ends_when_its_caller_is_gone()
    {
        using var caller = new CancellationTokenSource();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => Computations(Free).Run<string>(
            From(One),
            computation =>
            {
                computation.MeterFor(ReferenceBuild.Stated).Count(1);
                caller.Cancel();
                return Endless(computation);
            },
            caller.Token));
    }

    [Fact]
    public async Task Whoever_finds_neither_a_place_nor_room_to_wait_is_told_so_at_once()
    {
        Computations computations = Computations(Free with { ComputationsAtOnce = 1, ComputationsWaiting = 1 });
        var first = new HeldComputation(computations, One);
        await first.Begun;
        Task<(string?, ProblemAnswer?)> second = Ask(computations, Another);
        Assert.Equal((503, "service.busy"), Told((await Ask(computations, Third)).Problem));
        Assert.False(second.IsCompleted);
        Assert.Equal("done", await first.LetGo());
        Assert.Equal("done", (await second).Item1);
        Assert.Equal("done", (await Ask(computations, Third)).Answer);
    }

    [Fact]
    public async Task Nobody_waits_for_a_place_for_long()
    {
        Computations computations = Computations(Free with { ComputationsAtOnce = 1, WaitingSeconds = 0.05 });
        var first = new HeldComputation(computations, One);
        await first.Begun;
        Assert.Equal((503, "service.busy"), Told((await Ask(computations, Another)).Problem));
        Assert.Equal("done", await first.LetGo());
    }

    /// <summary>Of two places one; of those and two to wait in, two.</summary>
    [Theory]
    [InlineData(One, One)]
    [InlineData("2001:db8::1", "2001:db8::2")]
    public async Task One_address_has_half_of_the_places_and_of_the_room_to_wait(string address, string sameNetwork)
    {
        Computations computations = Computations(Free with { ComputationsAtOnce = 2, ComputationsWaiting = 2 });
        var first = new HeldComputation(computations, address);
        await first.Begun;
        Task<(string?, ProblemAnswer?)> second = Ask(computations, sameNetwork);
        Assert.False(second.IsCompleted);
        Assert.Equal((503, "service.busy"), Told((await Ask(computations, address)).Problem));
        Assert.Equal("done", (await Ask(computations, Another)).Answer);
        Assert.Equal("done", (await Ask(computations, "2001:db8:0:1::1")).Answer);
        await first.LetGo();
        Assert.Equal("done", (await second).Item1);
    }

    [Fact]
    public async Task With_a_key_every_place_can_be_had()
    {
        Computations computations = Computations(Free with { ComputationsAtOnce = 2, ComputationsWaiting = 0 });
        HeldComputation[] both = [new(computations, null), new(computations, null)];
        foreach (HeldComputation each in both) await each.Begun;
        Assert.Equal((503, "service.busy"), Told((await Ask(computations, null)).Problem));
        foreach (HeldComputation each in both) await each.LetGo();
    }

    [Fact]
    public async Task A_line_of_a_batch_waits_where_a_call_is_refused()
    {
        Computations computations = Computations(Free with { ComputationsAtOnce = 1, ComputationsWaiting = 0 });
        var first = new HeldComputation(computations, One);
        await first.Begun;
        Task<(string?, ProblemAnswer?)>[] lines = Lines(computations, Another);
        Assert.Equal((503, "service.busy"), Told((await Ask(computations, Third)).Problem));
        Assert.All(lines, line => Assert.False(line.IsCompleted));
        await first.LetGo();
        foreach (Task<(string?, ProblemAnswer?)> line in lines) Assert.Equal("done", (await line).Item1);
    }

    [Fact]
    public async Task Lines_that_wait_take_no_calls_room_to_wait()
    {
        Computations computations = Computations(Free with { ComputationsAtOnce = 1, ComputationsWaiting = 1 });
        var first = new HeldComputation(computations, null);
        await first.Begun;
        Task<(string?, ProblemAnswer?)>[] lines = Lines(computations, null);
        Task<(string?, ProblemAnswer?)> call = Ask(computations, Another);
        Assert.False(call.IsCompleted);
        await first.LetGo();
        Assert.Equal("done", (await call).Item1);
        foreach (Task<(string?, ProblemAnswer?)> line in lines) Assert.Equal("done", (await line).Item1);
    }

    [Fact]
    public async Task What_was_computed_in_vain_is_charged_too()
    {
        LoadSettings load = Free with { ComputationSeconds = 0.05, AnonymousWorkPerMinute = 10 * WorkBuckets.EachRequest };
        var charges = new WorkCharges(load, new ManualClock());
        var computations = new Computations(load, new Places(load), charges, TimeProvider.System);
        await computations.Run<string>(
            From(One),
            computation =>
            {
                WorkMeter meter = computation.MeterFor(ReferenceBuild.Stated);
                meter.Count(load.AnonymousWorkPerMinute);
                return Endless(computation);
            },
            CancellationToken.None);
        Assert.False(charges.TryStart(From(One), out TimeSpan wait));
        Assert.True(wait > TimeSpan.Zero);
        Assert.True(charges.TryStart(From(Another), out _));
        Assert.True(charges.TryStart(From(null), out _));
    }

    private static (string?, ProblemAnswer?) Endless(Computation computation)
    {
        WorkMeter meter = computation.MeterFor(ReferenceBuild.Stated);
        while (true) meter.Count(0);
    }

    private static Task<(string? Answer, ProblemAnswer? Problem)> Ask(Computations computations, string? address) =>
        computations.Run<string>(From(address), _ => ("done", null), CancellationToken.None);

    private static Task<(string?, ProblemAnswer?)>[] Lines(Computations computations, string? address) =>
    [
        .. Enumerable.Range(0, 5).Select(
            _ => computations.RunLine<string>(From(address), _ => ("done", null), CancellationToken.None)),
    ];

    private static (int, string) Told(ProblemAnswer? problem)
    {
        Contract.Problems.Problem told = problem!.Of(new ProblemOrigin("trace", ""));
        return (told.Status, told.Code);
    }
}
