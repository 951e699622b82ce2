using System.Text;
using Cablewright.Service.Tests.Support;
using Cablewright.Storage.Keys;
using Cablewright.Storage.Kits;
using Cablewright.Storage.Shops;
using Microsoft.Extensions.DependencyInjection;

namespace Cablewright.Service.Tests.Stores;

/// <summary>A service over a database of its own, with shops and their keys.</summary>
public sealed class CatalogueService : IAsyncDisposable
{
    private readonly ServiceFixture service = new();

    private CatalogueService(TestDatabase database) => Database = database;

    public TestDatabase Database { get; }

    public static Task<CatalogueService> Start(TestDatabase database, params (string Name, string Value)[] settings) =>
        Start(database, null, settings);

    /// <summary>With settings of the storage that differ from the usual ones.</summary>
    public static async Task<CatalogueService> Start(
        TestDatabase database, string? connection, params (string Name, string Value)[] settings)
    {
        var started = new CatalogueService(database);
        foreach ((string name, string value) in database.Settings(":", connection)) started.service.Settings[name] = value;
        foreach ((string name, string value) in settings) started.service.Settings[$"Cablewright:Storage:{name}"] = value;
        await started.service.InitializeAsync();
        return started;
    }

    public T Get<T>() where T : notnull => service.Services.GetRequiredService<T>();

    /// <summary>A shop, made where it is not there yet, and a key of it.</summary>
    public async Task<(string Text, ShopKey Key)> Key(
        string shop, KeyScopes scopes = ScopeWords.All, DateTimeOffset? expiresAt = null)
    {
        await Get<ShopStore>().AddAsync(shop, CancellationToken.None);
        var made = await Get<KeyStore>().AddAsync(shop, scopes, null, expiresAt, CancellationToken.None);
        await Get<Catalogues>().RefreshAsync(CancellationToken.None);
        return made!.Value;
    }

    public Task<Answer> Send(
        HttpMethod method, string address, string? key, string? body = null, params (string Name, string Value)[] headers)
    {
        var request = new HttpRequestMessage(method, address);
        if (body is not null)
        {
            request.Content = new ByteArrayContent(Encoding.UTF8.GetBytes(body));
            request.Content.Headers.ContentType = new("application/json");
        }

        return service.Send(request, key is null ? headers : [.. headers, ("Authorization", $"Bearer {key}")]);
    }

    public Task<Answer> Send(HttpRequestMessage request) => service.Send(request);

    public async ValueTask DisposeAsync() => await ((IAsyncLifetime)service).DisposeAsync();
}

/// <summary>One service a kind of database, for all tests of a class.</summary>
public sealed class CatalogueServices : IAsyncLifetime
{
    private readonly Dictionary<string, CatalogueService> started = [];

    public CatalogueService this[string store] => started[store];

    public async Task InitializeAsync()
    {
        string[] stores = Store.PostgresServer is null ? [Store.Sqlite] : [Store.Sqlite, Store.Postgres];
        foreach (string store in stores) started[store] = await CatalogueService.Start(await TestDatabase.Make(store));
    }

    public async Task DisposeAsync()
    {
        foreach (CatalogueService service in started.Values)
        {
            await service.DisposeAsync();
            await service.Database.DisposeAsync();
        }
    }
}
