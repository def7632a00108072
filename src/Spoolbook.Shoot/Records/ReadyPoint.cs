namespace Spoolbook.Shoot.Records;

/// <summary>A point of the ready list: what can ruin a roll, and is looked at before it is shot.</summary>
public enum ReadyPoint
{
    /// <summary>The gate was cleaned: no hair, no emulsion in it.</summary>
    Gate,

    /// <summary>The loops are set, and the loop formers open again.</summary>
    Loops,

    /// <summary>The pressure plate is closed.</summary>
    Plate,

    /// <summary>The filter slot has its holder in, with or without a filter.</summary>
    Slot,

    /// <summary>The trimmed end of film is out of the camera.</summary>
    CutOff,

    /// <summary>It was run a little, and sounded right.</summary>
    RunTest,
}
