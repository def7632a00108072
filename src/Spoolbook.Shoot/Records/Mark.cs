namespace Spoolbook.Shoot.Records;

/// <summary>A take's mark: <c>good</c>, <c>hold</c>, <c>ng</c> or <c>test</c>; from best to worst.</summary>
public enum Mark
{
    /// <summary>G: wanted.</summary>
    Good,

    /// <summary>H: keep until the good take has been viewed.</summary>
    Hold,

    /// <summary>NG: not wanted.</summary>
    NoGood,

    /// <summary>A test (scratch, focus, wedge): counted as waste.</summary>
    Test,
}
