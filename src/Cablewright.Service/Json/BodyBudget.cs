using Cablewright.Contract;

namespace Cablewright.Service.Json;

/// <summary>The memory that request bodies take up together.</summary>
/// <param name="most">The most of it, in bytes.</param>
internal sealed class BodyBudget(long most)
{
    private long held;

    /// <summary>What is taken up, in bytes.</summary>
    public long Held => Volatile.Read(ref held);

    /// <summary>Takes some more for a body.</summary>
    /// <param name="bytes">How much more.</param>
    /// <param name="mostBytes">The most that the body may have: a quarter is left for those that can only be small.</param>
    /// <exception cref="BudgetSpentException">There is not so much left.</exception>
    public void Take(int bytes, int mostBytes)
    {
        long limit = mostBytes > ContractLimits.BodyBytes ? most / 4 * 3 : most;
        if (Interlocked.Add(ref held, bytes) <= limit) return;
        Give(bytes);
        throw new BudgetSpentException();
    }

    /// <summary>Gives back what was taken.</summary>
    public void Give(int bytes) => Interlocked.Add(ref held, -bytes);
}

/// <summary>The memory for request bodies is taken up.</summary>
internal sealed class BudgetSpentException : Exception;
