using Cablewright.Storage.Keys;
using Cablewright.Storage.Kits;
using Cablewright.Storage.Records;
using Cablewright.Storage.Shops;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace Cablewright.Storage;

/// <summary>Sets up the stores.</summary>
public static class StorageServices
{
    /// <summary>Adds the stores over the database that the settings name.</summary>
    public static void AddStorage(this IServiceCollection services, StorageSettings settings)
    {
        services.TryAddSingleton(TimeProvider.System);
        services.AddSingleton(settings);
        services.AddSingleton<Database>();
        services.AddSingleton<Catalogues>();
        services.AddSingleton<ShopStore>();
        services.AddSingleton<KitStore>();
        services.AddSingleton<KeyStore>();
        services.AddSingleton<RecordStore>();
    }
}
