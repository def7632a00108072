using System.Collections.Immutable;
using Spoolbook.Checks.Accepting;
using Spoolbook.Checks.Counters;
using Spoolbook.Checks.Coverage;
using Spoolbook.Checks.Exposures;
using Spoolbook.Checks.Focusing;
using Spoolbook.Checks.Kits;
using Spoolbook.Checks.Labs;
using Spoolbook.Checks.Lengths;
using Spoolbook.Checks.Lines;
using Spoolbook.Checks.Loading;
using Spoolbook.Checks.Loans;
using Spoolbook.Checks.Papers;
using Spoolbook.Checks.Ruling;
using Spoolbook.Checks.Running;
using Spoolbook.Checks.Schools;
using Spoolbook.Checks.Sheets;
using Spoolbook.Checks.Shelves;
using Spoolbook.Checks.Shipments;
using Spoolbook.Checks.Sounds;
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
        .. LineCheckList.All,
        .. SheetCheckList.All,
        DialDiffers.Check,
        DialDrift.Check,
        DoesNotBalance.Check,
        EndTooLong.Check,
        FogInTake.Check,
        HeadNotAllowed.Check,
        LeftDiffers.Check,
        NotTheCans.Check,
        OverTheBody.Check,
        OverTheSpool.Check,
        ShortEndTooShort.Check,
        TailInFog.Check,
        TailNotAllowed.Check,
        TotalsDiffer.Check,
        UnaccountedGap.Check,
        CountDiffers.Check,
        DayNotListed.Check,
        DaysOutOfOrder.Check,
        DissolveMisaligned.Check,
        NoFrames.Check,
        NoTimeBetween.Check,
        NotZeroed.Check,
        OverUnwantedTake.Check,
        OverlapWithoutRewind.Check,
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
        BetweenMarks.Check,
        FlickerRisk.Check,
        IntervalTooTight.Check,
        LeftAtLoadingSpeed.Check,
        MotorRunsOn.Check,
        OutOfRange.Check,
        SetupDiffers.Check,
        SpringNearlyOut.Check,
        SpringOverrun.Check,
        SyncNeedsMotor.Check,
        WindMissed.Check,
        WoundTwice.Check,
        MuteAndSync.Check,
        NoSoundRoll.Check,
        SyncChanged.Check,
        TailSlateNotWritten.Check,
        CompositeOver.Check,
        CompositeUnder.Check,
        FadeTooLong.Check,
        FadeWithoutShutter.Check,
        FilterNotCounted.Check,
        FinderPracticeMixed.Check,
        NoSuchIndex.Check,
        NoSuchMark.Check,
        NoSuchStop.Check,
        NotAsMetered.Check,
        Over.Check,
        RatingMixed.Check,
        ReciprocityNotCounted.Check,
        ShutterClosed.Check,
        ShutterLeftPartClosed.Check,
        StopChanged.Check,
        StopNotOnLens.Check,
        TimedWhileRunning.Check,
        Under.Check,
        WrongBalance.Check,
        BeyondScale.Check,
        Jumped.Check,
        LensNotForFinder.Check,
        NearerThanLens.Check,
        OutsideDepth.Check,
        BodyNotEmpty.Check,
        InBrightLight.Check,
        LongInCamera.Check,
        LoopsOrPlate.Check,
        NoLoader.Check,
        NotReady.Check,
        PerforationDoesNotFit.Check,
        ReThreadUnmarked.Check,
        SpeedNotReset.Check,
        FilterSlotEmpty.Check,
        FinderOpen.Check,
        LeftWound.Check,
        LensNotInKit.Check,
        MoreCameBack.Check,
        NoBody.Check,
        NoSpareSpool.Check,
        NotInKit.Check,
        NotReturned.Check,
        ShotOutsideLoan.Check,
        UnlikelyFigure.Check,
        Expired.Check,
        LabelDiffers.Check,
        LoadedCold.Check,
        LoadedWhileGone.Check,
        LogImpossible.Check,
        MoreThanReceived.Check,
        NoUnit.Check,
        PlanDiffers.Check,
        RunsOut.Check,
        TooWarm.Check,
        UnitLoadedTwice.Check,
        UnknownLot.Check,
        XRayed.Check,
        ClosedThatDay.Check,
        CouldNotGo.Check,
        DeliveryIncomplete.Check,
        DriveTooSmall.Check,
        EffectsUndeclared.Check,
        FileRateDiffers.Check,
        FilmWaits.Check,
        MixedPush.Check,
        NoLab.Check,
        NoReturnAddress.Check,
        NothingShot.Check,
        OrderIncomplete.Check,
        PracticeRollSent.Check,
        ProcessMismatch.Check,
        ProcessNotRun.Check,
        ProcessTwoWays.Check,
        PushTooFar.Check,
        RatedNotPushed.Check,
        RollLeftOut.Check,
        SentTooLate.Check,
        SentTwice.Check,
        SyncWithoutRatio.Check,
        UnlikelyRate.Check,
        LensChanged.Check,
        ScreenDiffers.Check,
        ShotNotListed.Check,
        ShotWithoutGoodTake.Check,
        TakesTooShort.Check,
        PaleColour.Check,
        BadTolerance.Check,
        LevelIsFixed.Check,
        NothingOfThatName.Check,
        BackOnHoliday.Check,
        CameBackBroken.Check,
        Clash.Check,
        Incomplete.Check,
        NoSuchPiece.Check,
        NoSuchProduction.Check,
        Overdue.Check,
        ShotWithoutLoan.Check,
        HandedOverOnce.Check,
        InTwoProductions.Check,
        NoSuchUnit.Check,
        .. ShipmentCheckList.All,
        .. WaiverChecks.All,
        .. PaperCheckList.All,
        Fault.Listed,
    ];

    /// <summary>The groups, in the order of the list.</summary>
    public static ImmutableArray<string> Groups { get; } = [.. All.Select(c => c.Group).Distinct(StringComparer.Ordinal)];

    internal static Check? Named(string name) => All.FirstOrDefault(c => c.Name == name);
}
