using System.Text.RegularExpressions;
using Cablewright.Contract;
using Cablewright.Contract.Schema;
using Cablewright.Storage;
using Cablewright.Storage.Keys;
using Cablewright.Storage.Shops;

namespace Cablewright.Service.Commands;

/// <summary>
/// What an operator does from the command line, on the same settings as the service: <c>shops add|list</c>,
/// <c>keys add|list|revoke</c>.
/// </summary>
internal static partial class ServiceCommands
{
    private const int Done = 0;
    private const int Refused = 1;
    private const int Misused = 2;

    /// <summary>An operator waits for a slow database, where a caller of the service is sent away.</summary>
    private static readonly TimeSpan OperatorPatience = TimeSpan.FromMinutes(1);

    private const string NoShop = "There is no such shop.";

    private const string Usage = """
        shops add <shop>                           make a shop
        shops list                                 list the shops
        keys add <shop> [--scopes a,b] [--days n] [--label text]
                                                   make a key; it is shown this once. Scopes: kits:read, kits:write,
                                                   records:read, records:write; all where left out. Without --days it
                                                   does not expire.
        keys list <shop>                           list a shop's keys
        keys revoke <key id>                       revoke a key for ever
        """;

    /// <summary>Whether these are arguments for a command rather than for the service.</summary>
    public static bool Knows(string[] args) => args is ["shops" or "keys" or "help" or "--help", ..];

    /// <summary>
    /// Runs one command. The exit code is 0 where it was done, 1 where it could not be, 2 where it was not understood.
    /// </summary>
    public static async Task<int> Run(string[] args)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        StorageSettings settings = builder.Configuration.GetSection(StorageSettings.Section).Get<StorageSettings>() ?? new();
        settings.Timeout = OperatorPatience;
        builder.Services.AddStorage(settings);
        await using ServiceProvider services = builder.Services.BuildServiceProvider();
        try
        {
            await services.GetRequiredService<Database>().MigrateAsync(CancellationToken.None);
            return await Dispatch(
                args, services.GetRequiredService<ShopStore>(), services.GetRequiredService<KeyStore>(),
                services.GetRequiredService<TimeProvider>());
        }
        catch (StorageUnavailableException unavailable)
        {
            return Say($"{unavailable.Message} {unavailable.InnerException?.Message}", Refused);
        }
    }

    private static Task<int> Dispatch(string[] args, ShopStore shops, KeyStore keys, TimeProvider clock) => args switch
    {
        ["shops", "add", string shop] => AddShop(shops, shop),
        ["shops", "list"] => ListShops(shops),
        ["keys", "add", string shop, .. string[] options] => AddKey(keys, clock, shop, options),
        ["keys", "list", string shop] => ListKeys(keys, shop),
        ["keys", "revoke", string id] => RevokeKey(keys, id),
        _ => Task.FromResult(Say(Usage, Misused)),
    };

    private static async Task<int> AddShop(ShopStore shops, string shop)
    {
        if (!Identifier().IsMatch(shop)) return Say($"A shop's id is {IdentifierAttribute.Accepted}.", Misused);
        return await shops.AddAsync(shop, CancellationToken.None) ? Done : Say("There is such a shop already.", Refused);
    }

    private static async Task<int> ListShops(ShopStore shops)
    {
        foreach (string shop in await shops.ListAsync(CancellationToken.None)) Console.WriteLine(shop);
        return Done;
    }

    private static async Task<int> AddKey(KeyStore keys, TimeProvider clock, string shop, string[] options)
    {
        if (KeyOptions.Read(options) is not { } asked) return Say(Usage, Misused);
        DateTimeOffset? end = asked.Life is { } life ? clock.GetUtcNow() + life : null;
        var made = await keys.AddAsync(shop, asked.Scopes, asked.Label, end, CancellationToken.None);
        if (made is not { } key) return Say(NoShop, Refused);
        Console.WriteLine(key.Text);
        return Say($"Key {key.Key.Id} of {shop} for {key.Key.Scopes.Words()}. It is shown this once: keep it.", Done);
    }

    private static async Task<int> ListKeys(KeyStore keys, string shop)
    {
        if (await keys.ListAsync(shop, CancellationToken.None) is not { } kept) return Say(NoShop, Refused);
        foreach (ShopKey key in kept)
            Console.WriteLine(
                $"{key.Id}\t{key.Scopes.Words()}\tmade {key.CreatedAt:u}\t"
                + $"{(key.ExpiresAt is { } end ? $"expires {end:u}" : "does not expire")}\t"
                + $"{(key.RevokedAt is { } when ? $"revoked {when:u}" : "not revoked")}\t{key.Label}");
        return Done;
    }

    private static async Task<int> RevokeKey(KeyStore keys, string id) =>
        await keys.RevokeAsync(id, CancellationToken.None) ? Done : Say("There is no such key.", Refused);

    private static int Say(string text, int exitCode)
    {
        Console.Error.WriteLine(text);
        return exitCode;
    }

    [GeneratedRegex(ContractLimits.IdPattern, RegexOptions.ECMAScript)]
    private static partial Regex Identifier();
}
