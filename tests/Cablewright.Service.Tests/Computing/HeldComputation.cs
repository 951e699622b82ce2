using System.Net;
using Cablewright.Service.Computing;
using Cablewright.Service.Hosting;
using Cablewright.Service.Keys;
using Cablewright.Service.Problems;
using Cablewright.Storage.Keys;
using Microsoft.AspNetCore.Http;

namespace Cablewright.Service.Tests.Computing;

/// <summary>A computation that takes until it is let go.</summary>
internal sealed class HeldComputation
{
    private readonly TaskCompletionSource begun = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly TaskCompletionSource release = new();
    private readonly Task<(string? Answer, ProblemAnswer? Problem)> outcome;

    public HeldComputation(Computations computations, string? address) => outcome = OnThread(() => computations.Run<string>(
        From(address),
        _ =>
        {
            begun.SetResult();
            release.Task.Wait();
            return ("done", null);
        },
        CancellationToken.None));

    public Task Begun => begun.Task;

    public async Task<string?> LetGo()
    {
        release.SetResult();
        return (await outcome).Answer;
    }

    public static Computations Computations(LoadSettings load, TimeProvider? clock = null)
    {
        TimeProvider time = clock ?? TimeProvider.System;
        return new(load, new Places(load), new WorkCharges(load, time), time);
    }

    /// <summary>A request from an address, or with a shop's key.</summary>
    public static HttpContext From(string? address)
    {
        var context = new DefaultHttpContext();
        if (address is not null) context.Connection.RemoteIpAddress = IPAddress.Parse(address);
        else context.Features.Set(new Caller(new ShopKey("key", "shop", KeyScopes.None, null, default, null, null), null));
        return context;
    }

    /// <summary>A thread of its own, so that none of the pool is held.</summary>
    private static Task<T> OnThread<T>(Func<Task<T>> work)
    {
        var outcome = new TaskCompletionSource<T>(TaskCreationOptions.RunContinuationsAsynchronously);
        var started = new Thread(() => work().ContinueWith(
            done => outcome.SetResult(done.Result), TaskContinuationOptions.ExecuteSynchronously));
        started.Start();
        return outcome.Task;
    }
}
