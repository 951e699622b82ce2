using Cablewright.Service.Tests.Hosting;
using Cablewright.Service.Tests.Support;
using Cablewright.Storage;

namespace Cablewright.Service.Tests.Stores;

/// <summary>What becomes of the SQLite file at a first start, while the service runs, and when it is restored.</summary>
public class SqliteFileTests
{
    private const string Kit = "/v1/shops/file/kits/one";

    /// <summary>The table and the row with which the migrations lock, in the words of the library that makes them.</summary>
    private const string LeftLock = """
        CREATE TABLE "__EFMigrationsLock" (
            "Id" INTEGER NOT NULL CONSTRAINT "PK___EFMigrationsLock" PRIMARY KEY, "Timestamp" TEXT NOT NULL);
        INSERT INTO "__EFMigrationsLock" VALUES (1, '2026-01-01 00:00:00+00:00');
        """;

    [Fact]
    public async Task A_start_that_was_killed_while_it_made_the_tables_hinders_no_other()
    {
        await using TestDatabase database = await TestDatabase.Make(Store.Sqlite);
        await LeaveLock(database);
        await using CatalogueService service = await CatalogueService.Start(database);
        Assert.NotEmpty((await service.Key("file")).Text);
    }

    [Fact]
    public async Task A_process_that_makes_the_tables_is_waited_for()
    {
        await using TestDatabase database = await TestDatabase.Make(Store.Sqlite);
        await LeaveLock(database);
        var settings = new StorageSettings { SqliteFile = database.SqliteFile, Timeout = TimeSpan.FromMilliseconds(300) };
        using var prepared = new Database(settings);
        await using (new FileStream(database.SqliteFile + "-migration", FileMode.Create, FileAccess.ReadWrite, FileShare.None))
        {
            await Assert.ThrowsAsync<StorageUnavailableException>(() => prepared.MigrateAsync(CancellationToken.None));
            Assert.Equal(1, await database.Execute("""UPDATE "__EFMigrationsLock" SET "Id" = 1"""));
        }

        await prepared.MigrateAsync(CancellationToken.None).WaitAsync(TimeSpan.FromSeconds(60));
        Assert.Equal(1, await database.Execute("UPDATE revisions SET \"Value\" = 0"));
    }

    [Fact]
    public async Task Two_processes_that_start_at_once_on_no_file_both_become_ready()
    {
        await using TestDatabase database = await TestDatabase.Make(Store.Sqlite);
        ServiceProcess one = new(), other = new();
        foreach ((string name, string value) in database.Settings("__"))
            (one.Environment[name], other.Environment[name]) = (value, value);
        try
        {
            await Task.WhenAll(one.InitializeAsync(), other.InitializeAsync());
            foreach (ServiceProcess process in new[] { one, other })
                await Eventually.True(async () => (await process.Client.GetAsync("/health/ready")).IsSuccessStatusCode);
        }
        finally
        {
            await one.DisposeAsync();
            await other.DisposeAsync();
        }
    }

    [Fact]
    public async Task Only_its_owner_can_read_it()
    {
        if (OperatingSystem.IsWindows()) return;
        await using TestDatabase database = await TestDatabase.Make(Store.Sqlite);
        await using CatalogueService service = await CatalogueService.Start(database);
        await service.Key("file");
        string[] files = Directory.GetFiles(Path.GetDirectoryName(database.SqliteFile)!, "cablewright.db*");
        Assert.Contains(database.SqliteFile + "-wal", files);
        Assert.Contains(database.SqliteFile + "-shm", files);
        foreach (string file in files) Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file));
    }

    [Fact]
    public async Task Its_log_is_kept_from_one_turn_to_the_next_and_put_away_at_the_end()
    {
        await using TestDatabase database = await TestDatabase.Make(Store.Sqlite);
        string log = database.SqliteFile + "-wal";
        await using (CatalogueService service = await CatalogueService.Start(database))
        {
            string key = (await service.Key("file")).Text;
            for (int number = 0; number < 20; number++)
            {
                Assert.True(File.Exists(log));
                await service.Send(HttpMethod.Put, $"/v1/shops/file/kits/{number}", key, SomeKit.Named("kit"));
            }
        }

        // The host that a test stops is disposed of by its own thread.
        await Eventually.True(() => Task.FromResult(!File.Exists(log)));
    }

    [Theory]
    [InlineData("VACUUM INTO '{0}';")]
    [InlineData(".backup '{0}'\n")]
    [InlineData(".dump\n")]
    public async Task A_restored_file_is_taken_up(string backup)
    {
        await using TestDatabase database = await TestDatabase.Make(Store.Sqlite);
        string copy = Path.Combine(database.Folder, "copy.db"), key;
        Answer written;
        await using (CatalogueService service = await CatalogueService.Start(database))
        {
            key = (await service.Key("file")).Text;
            written = await service.Send(HttpMethod.Put, Kit, key, SomeKit.Named("kept"));
            string dump = SqliteShell.Run(database.SqliteFile, string.Format(null, backup, copy));
            if (dump.Length > 0) SqliteShell.Run(copy, dump);
        }

        File.Move(copy, database.SqliteFile, overwrite: true);
        await using CatalogueService restored = await CatalogueService.Start(database);
        Assert.Equal(written.Body, (await restored.Send(HttpMethod.Get, Kit, key)).Body);
        Assert.Equal(201, (await restored.Send(HttpMethod.Put, Kit + "-more", key, SomeKit.Named("new"))).Status);
    }

    private static async Task LeaveLock(TestDatabase database)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(database.SqliteFile)!);
        await database.Execute(LeftLock);
    }
}
