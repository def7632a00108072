namespace Spoolbook.Film.Tests;

/// <summary>Constants that standards and makers publish, and no reckoning starts from.</summary>
static class PublishedMeterConstants
{
    /// <summary>K, 11.4 cd s/m²: ASA PH2.12-1961 (GNU units).</summary>
    public const double K1961 = 11.4;

    /// <summary>K, 14 cd s/m²: two makers (GNU units).</summary>
    public const double KHigh = 14;

    /// <summary>C, 250 lx s: a flat receptor, two makers (GNU units).</summary>
    public const double CFlat = 250;

    /// <summary>C, 224 lx s, 20.83 footcandles: ASA PH2.12-1961 (GNU units).</summary>
    public const double C1961 = 224;

    /// <summary>C, 322 lx s, 30 ± 5 footcandles: ANSI PH3.49-1971, the mean (GNU units).</summary>
    public const double C1971 = 322;
}
