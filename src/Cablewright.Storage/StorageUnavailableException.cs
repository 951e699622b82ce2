namespace Cablewright.Storage;

/// <summary>
/// The database cannot be reached, is locked for too long, or failed. Whether a write took place is then unknown.
/// </summary>
public sealed class StorageUnavailableException : Exception
{
    /// <summary>Without a cause.</summary>
    public StorageUnavailableException()
        : base("The database cannot be used.")
    {
    }

    /// <summary>With its own message.</summary>
    public StorageUnavailableException(string message)
        : base(message)
    {
    }

    /// <summary>With the cause.</summary>
    public StorageUnavailableException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
