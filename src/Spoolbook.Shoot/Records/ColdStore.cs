namespace Spoolbook.Shoot.Records;

/// <summary>Where raw stock is kept cold: <c>fridge</c> or <c>freezer</c>.</summary>
public enum ColdStore
{
    /// <summary>Some degrees above freezing, up to 13 °C.</summary>
    Fridge,

    /// <summary>About −18 °C.</summary>
    Freezer,
}
