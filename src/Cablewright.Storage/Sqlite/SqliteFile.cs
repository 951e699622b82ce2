using System.Diagnostics;
using Microsoft.Data.Sqlite;

namespace Cablewright.Storage.Sqlite;

/// <summary>The SQLite file of this process: how it is made, opened and kept open.</summary>
/// <param name="path">Where it is.</param>
/// <param name="timeout">How long a command waits for another process's lock.</param>
internal sealed class SqliteFile(string path, TimeSpan timeout) : IDisposable
{
    private const UnixFileMode OnlyTheOwner = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(50);

    private readonly SemaphoreSlim writer = new(1);
    private readonly Lock holding = new();
    private SqliteConnection? held;
    private bool isOver;

    /// <summary>Whether it is there.</summary>
    public bool Exists => File.Exists(path);

    /// <summary>The store in a file that is there: one that is gone for a while must not come back empty.</summary>
    public SqliteStore Open() => SqliteStore.Open(path, timeout, mayCreate: false);

    /// <summary>The store in the file, made where it is not there.</summary>
    public SqliteStore OpenOrMake() => SqliteStore.Open(path, timeout, mayCreate: true);

    /// <summary>
    /// Keeps one connection open until the end, so that the log beside the file is not deleted and made anew at each turn. It is
    /// let go of where the file is no longer there: what it holds then is not what is opened.
    /// </summary>
    public void Hold()
    {
        lock (holding)
        {
            if (isOver || (held is not null && Exists)) return;
            held?.Dispose();
            held = null;
            var connection = new SqliteConnection(SqliteStore.ConnectionString(path, timeout, mayCreate: false));
            try
            {
                connection.Open();
                using SqliteCommand command = connection.CreateCommand();
                command.CommandText = "PRAGMA journal_mode = WAL; SELECT count(*) FROM sqlite_master;";
                command.ExecuteNonQuery();
                (held, connection) = (connection, null!);
            }
            finally
            {
                connection?.Dispose();
            }
        }
    }

    /// <summary>
    /// One writer of this process at a time: SQLite lets in no more, and each one that waited inside would hold up a thread.
    /// </summary>
    public async Task<IDisposable> TurnAsync(CancellationToken cancellation)
    {
        await writer.WaitAsync(cancellation);
        return new Turn(writer);
    }

    /// <summary>
    /// Makes the file, where it is not there, readable by its owner only, and keeps other processes from changing its tables
    /// until the answer is disposed of. This lock ends with its process; the row that the migrations lock with does not, so
    /// that one that is found here was left by a process that was killed.
    /// </summary>
    public async Task<FileStream> PrepareAsync(CancellationToken cancellation)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
        FileStream turn = await LockAsync(cancellation);
        try
        {
            if (!Exists) Make(path, FileMode.CreateNew, FileShare.ReadWrite).Dispose();
            await using var connection = new SqliteConnection(SqliteStore.ConnectionString(path, timeout, mayCreate: false));
            await connection.OpenAsync(cancellation);
            await using SqliteCommand command = connection.CreateCommand();
            command.CommandText = "PRAGMA journal_mode = WAL; DROP TABLE IF EXISTS \"__EFMigrationsLock\";";
            await command.ExecuteNonQueryAsync(cancellation);
            return turn;
        }
        catch
        {
            await turn.DisposeAsync();
            throw;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (holding)
        {
            // Work that was given up may come by later, and must not open it again.
            isOver = true;
            held?.Dispose();
        }
    }

    /// <summary>
    /// On a file of its own that stays: to close one's own handle of the database would end SQLite's locks on it.
    /// </summary>
    private async Task<FileStream> LockAsync(CancellationToken cancellation)
    {
        for (long begun = Stopwatch.GetTimestamp(); ; await Task.Delay(Pause, cancellation))
        {
            try
            {
                return Make(path + "-migration", FileMode.OpenOrCreate, FileShare.None);
            }
            catch (IOException) when (Stopwatch.GetElapsedTime(begun) < timeout)
            {
                // Another process is at it.
            }
        }
    }

    /// <summary>SQLite gives the files that it puts beside this one the same mode.</summary>
    private static FileStream Make(string path, FileMode mode, FileShare share)
    {
        var options = new FileStreamOptions { Mode = mode, Access = FileAccess.ReadWrite, Share = share };
        if (!OperatingSystem.IsWindows()) options.UnixCreateMode = OnlyTheOwner;
        return new FileStream(path, options);
    }

    private sealed class Turn(SemaphoreSlim writer) : IDisposable
    {
        public void Dispose() => writer.Release();
    }
}
