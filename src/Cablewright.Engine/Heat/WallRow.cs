namespace Cablewright.Engine.Heat;

internal sealed record WallRow(double UpToMm2, double WallMillimetres, string Source, string Provenance);
