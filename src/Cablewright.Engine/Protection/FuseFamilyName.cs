namespace Cablewright.Engine.Protection;

/// <summary>The families of fuses and breakers that the tables know.</summary>
public enum FuseFamilyName
{
    /// <summary>Blade, ISO 8820-3 type C (the middle size).</summary>
    BladeC,

    /// <summary>Blade, ISO 8820-3 type E (the large size).</summary>
    BladeE,

    /// <summary>Blade, ISO 8820-3 type F (the small size).</summary>
    BladeF,

    /// <summary>Bolt-in strip, ISO 8820-5 type SF30.</summary>
    StripSf30,

    /// <summary>Bolt-in strip, ISO 8820-5 type SF51.</summary>
    StripSf51,

    /// <summary>Bolt-in strip of the trade's ANL pattern.</summary>
    Anl,

    /// <summary>Current-limiting cartridge, UL 248-15.</summary>
    ClassT,

    /// <summary>Resettable direct-current breaker.</summary>
    CircuitBreaker,
}
