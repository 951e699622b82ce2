using System.Diagnostics;

namespace Cablewright.Service.Tests.Support;

/// <summary>Waits for what comes about by itself.</summary>
public static class Eventually
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    public static async Task True(Func<Task<bool>> isSo)
    {
        for (var waited = Stopwatch.StartNew(); !await isSo(); await Task.Delay(50))
            Assert.True(waited.Elapsed < Patience, "it did not come about");
    }

    /// <summary>Asks until the answer has a status.</summary>
    public static async Task<Answer> Answers(int status, Func<Task<Answer>> ask)
    {
        Answer? answer = null;
        await True(async () => (answer = await ask()).Status == status);
        return answer!;
    }
}
