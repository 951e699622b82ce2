using Cablewright.Storage.Keys;
using Cablewright.Storage.Kits;
using Cablewright.Storage.Records;
using Cablewright.Storage.Shops;
using Microsoft.EntityFrameworkCore;

namespace Cablewright.Storage;

/// <summary>The tables. Each kind of database has a context of its own, and with it migrations of its own.</summary>
/// <param name="options">Which database.</param>
internal abstract class StoreContext(DbContextOptions options) : DbContext(options)
{
    private const int IdLength = 40;

    public DbSet<ShopRow> Shops => Set<ShopRow>();

    public DbSet<KitRow> Kits => Set<KitRow>();

    public DbSet<KeyRow> Keys => Set<KeyRow>();

    public DbSet<RecordRow> Records => Set<RecordRow>();

    public DbSet<RevisionRow> Revisions => Set<RevisionRow>();

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<ShopRow>(shop =>
        {
            shop.ToTable("shops").HasKey(row => row.Id);
            shop.Property(row => row.Id).HasMaxLength(IdLength);
        });
        modelBuilder.Entity<KitRow>(kit =>
        {
            kit.ToTable("kits").HasKey(row => new { row.Shop, row.Sku });
            kit.Property(row => row.Shop).HasMaxLength(IdLength);
            kit.Property(row => row.Sku).HasMaxLength(IdLength);
            kit.HasIndex(row => row.Revision).IsUnique();
            kit.HasOne<ShopRow>().WithMany().HasForeignKey(row => row.Shop);
        });
        modelBuilder.Entity<KeyRow>(key =>
        {
            key.ToTable("keys").HasKey(row => row.Id);
            key.HasOne<ShopRow>().WithMany().HasForeignKey(row => row.Shop);
        });
        modelBuilder.Entity<RecordRow>(record =>
        {
            record.ToTable("records").HasKey(row => row.Id);
            record.HasOne<ShopRow>().WithMany().HasForeignKey(row => row.Shop);
        });
        modelBuilder.Entity<RevisionRow>(revision =>
        {
            revision.ToTable("revisions").HasKey(row => row.Id);
            revision.Property(row => row.Id).ValueGeneratedNever();
            revision.HasData(new RevisionRow { Id = RevisionRow.OfKits });
        });
    }
}
