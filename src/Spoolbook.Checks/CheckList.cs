using System.Collections.Immutable;
using Spoolbook.Checks.Accepting;
using Spoolbook.Checks.Counters;
using Spoolbook.Checks.Coverage;
using Spoolbook.Checks.Exposures;
using Spoolbook.Checks.Focusing;
using Spoolbook.Checks.Kits;
using Spoolbook.Checks.Labs;
using Spoolbook.Checks.Lengths;
using Spoolbook.Checks.Loading;
using Spoolbook.Checks.Papers;
using Spoolbook.Checks.Ruling;
using Spoolbook.Checks.Running;
using Spoolbook.Checks.Schools;
using Spoolbook.Checks.Sheets;
using Spoolbook.Checks.Speeds;
using Spoolbook.Checks.Stocks;

namespace Spoolbook.Checks;

/// <summary>
/// Every finding of every stage, one line each. A check that is not listed here never runs, and a test fails on a
/// finding whose name is not here.
/// </summary>
public static class CheckList
{
    /// <summary>Every check, by name within its group, in the order of the stages.</summary>
    public static ImmutableArray<Check> All { get; } =
    [
        .. SheetCheckList.All,
        DialDiffers.Check,
        DialDrift.Check,
        DoesNotBalance.Check,
        FogInTake.Check,
        HeadNotAllowed.Check,
        OverTheSpool.Check,
        ShortEndTooShort.Check,
        TailInFog.Check,
        UnaccountedGap.Check,
        CountDiffers.Check,
        DissolveMisaligned.Check,
        NotZeroed.Check,
        OverlapWithoutRewind.Check,
        OverUnwantedTake.Check,
        PassOutside.Check,
        RewindForwards.Check,
        RewindInLight.Check,
        RewindMissed.Check,
        RewindPastHead.Check,
        RunOffInLight.Check,
        RunsBackwards.Check,
        SlateOutOfOrder.Check,
        TakeRepeated.Check,
        TakeSkipped.Check,
        TimeOutOfOrder.Check,
        FlickerRisk.Check,
        IntervalTooTight.Check,
        LeftAtLoadingSpeed.Check,
        OutOfRange.Check,
        SetupDiffers.Check,
        SpringNearlyOut.Check,
        SpringOverrun.Check,
        SyncNeedsMotor.Check,
        CompositeOver.Check,
        CompositeUnder.Check,
        FilterNotCounted.Check,
        FinderPracticeMixed.Check,
        Over.Check,
        RatingMixed.Check,
        ReciprocityNotCounted.Check,
        ShutterClosed.Check,
        ShutterLeftPartClosed.Check,
        StopNotOnLens.Check,
        Under.Check,
        WrongBalance.Check,
        NearerThanLens.Check,
        OutsideDepth.Check,
        InBrightLight.Check,
        LoopsOrPlate.Check,
        NoLoader.Check,
        ReThreadUnmarked.Check,
        SpeedNotReset.Check,
        FilterSlotEmpty.Check,
        FinderOpen.Check,
        LeftWound.Check,
        LensNotInKit.Check,
        NoSpareSpool.Check,
        NotInKit.Check,
        NotReturned.Check,
        Expired.Check,
        LoadedCold.Check,
        LoadedWhileGone.Check,
        LogImpossible.Check,
        MoreThanReceived.Check,
        RunsOut.Check,
        TooWarm.Check,
        UnitLoadedTwice.Check,
        UnknownLot.Check,
        XRayed.Check,
        CouldNotGo.Check,
        EffectsUndeclared.Check,
        MixedPush.Check,
        NoLab.Check,
        NoReturnAddress.Check,
        NothingShot.Check,
        PracticeRollSent.Check,
        ProcessMismatch.Check,
        ProcessNotRun.Check,
        PushTooFar.Check,
        RatedNotPushed.Check,
        RollLeftOut.Check,
        SentTwice.Check,
        ShotNotListed.Check,
        ShotWithoutGoodTake.Check,
        PaleColour.Check,
        BadTolerance.Check,
        LevelIsFixed.Check,
        NothingOfThatName.Check,
        .. WaiverChecks.All,
        .. PaperCheckList.All,
        Fault.Listed,
    ];

    /// <summary>The groups, in the order of the list.</summary>
    public static ImmutableArray<string> Groups { get; } = [.. All.Select(c => c.Group).Distinct(StringComparer.Ordinal)];

    internal static Check? Named(string name) => All.FirstOrDefault(c => c.Name == name);
}
