using System.Globalization;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Kits;

/// <summary>The state of the catalogue that an answer rests on.</summary>
internal static class CatalogueState
{
    /// <summary>Names it.</summary>
    public const string RevisionHeader = "Catalogue-Revision";

    /// <summary>
    /// The newest state of the catalogue, for a caller whose key is in it. The answer says which it rests on, and how many
    /// whole seconds ago the database was last asked whether it still holds.
    /// </summary>
    public static Catalogue Name(HttpContext context)
    {
        Catalogues catalogues = context.RequestServices.GetRequiredService<Catalogues>();
        Catalogue catalogue = catalogues.Newest!;
        context.Response.Headers[RevisionHeader] = catalogue.Revision.ToString(CultureInfo.InvariantCulture);
        context.Response.Headers.Age = ((long)catalogues.AgeOf(catalogue).TotalSeconds).ToString(CultureInfo.InvariantCulture);
        return catalogue;
    }
}
