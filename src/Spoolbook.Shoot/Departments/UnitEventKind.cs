namespace Spoolbook.Shoot.Departments;

/// <summary>What a production wrote about a unit of the school's stock.</summary>
public enum UnitEventKind
{
    /// <summary>It came to the production.</summary>
    Came,

    /// <summary>It was loaded.</summary>
    Loaded,

    /// <summary>It went to another production or back to the shelf.</summary>
    Went,
}
