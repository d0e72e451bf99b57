//! The names of the rule set's rows: one variant a row, so that a row that is not there is a
//! mistake at compile time and a rule set without it is refused when it is read.

macro_rules! rules {
    ($($(#[$doc:meta])* $name:ident = $id:literal,)*) => {
        /// A row of the rule set. Its unit is the row's quantity; its source stands in the row.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Rule {
            $($(#[$doc])* $name,)*
        }

        impl Rule {
            /// Every row that a rule set must have.
            pub const ALL: &'static [Rule] = &[$(Rule::$name,)*];

            /// The row's id in the rule set's file, and the place of a changed house value.
            pub fn id(self) -> &'static str {
                match self {
                    $(Rule::$name => $id,)*
                }
            }
        }
    };
}

rules! {
    /// 4 ft 6 in above ground on the uphill side.
    MeasureBreastHeightM = "measure.breast_height_m",
    /// A full check carries on for this long, when what changes overnight is looked at anew.
    CheckCarriesDays = "check.carries_days",
    /// Standard error of a height without one of its own, as a share of the height.
    MeasureHeightTangentCv = "measure.height.tangent_cv",
    /// As for the tangent method.
    MeasureHeightPercentCv = "measure.height.percent_cv",
    /// Two real points, no level distance needed.
    MeasureHeightSineCv = "measure.height.sine_cv",
    /// The difference of two angles carries the error.
    MeasureHeightTwoPositionsCv = "measure.height.two_positions_cv",
    /// Similar triangles by hand.
    MeasureHeightStickCv = "measure.height.stick_cv",
    /// Tape or pole along the stem.
    MeasureHeightTapeCv = "measure.height.tape_cv",
    /// Estimated from the ground.
    MeasureHeightByEyeCv = "measure.height.by_eye_cv",
    /// From another inventory, method unknown.
    MeasureHeightTakenOverCv = "measure.height.taken_over_cv",
    /// Distance to a tree by tape, as a share.
    MeasureSightTapeCv = "measure.sight.tape_cv",
    /// Distance to a tree by paces, as a share.
    MeasureSightPacesCv = "measure.sight.paces_cv",
    /// Angle to the top or the base of a tree, in degrees.
    MeasureSightAngleDeg = "measure.sight.angle_deg",
    /// Tape around the stem.
    MeasureGirthTapeCv = "measure.girth.tape_cv",
    /// Diameter tape, callipers, or a diameter turned into girth.
    MeasureGirthDiameterCv = "measure.girth.diameter_cv",
    /// Estimated from the ground.
    MeasureGirthByEyeCv = "measure.girth.by_eye_cv",
    /// From another inventory, method unknown.
    MeasureGirthTakenOverCv = "measure.girth.taken_over_cv",
    /// Upright by eye is read as 0 with this standard error.
    MeasureLeanByEyeDeg = "measure.lean.by_eye_deg",
    /// Two plumb readings at right angles.
    MeasureLeanTwoSidesDeg = "measure.lean.two_sides_deg",
    /// One plumb reading from the side of the lean.
    MeasureLeanOneSideDeg = "measure.lean.one_side_deg",
    /// From another inventory, method unknown.
    MeasureLeanTakenOverDeg = "measure.lean.taken_over_deg",
    /// Standard error of a compass bearing whose declination nobody knows.
    MeasureDeclinationUnknownDeg = "measure.declination_unknown_deg",
    /// Standard error of a crown radius taken in paces.
    MeasureCrownPacesM = "measure.crown.paces_m",
    /// Standard error of an anchor's height without one of its own.
    MeasureAnchorHeightCv = "measure.anchor.height_cv",
    /// Diameter by tape aloft.
    MeasureAnchorTapeAloftCv = "measure.anchor.tape_aloft_cv",
    /// Diameter beside something of known size.
    MeasureAnchorKnownSizeCv = "measure.anchor.known_size_cv",
    /// Diameter on a scaled photo.
    MeasureAnchorScaledPhotoCv = "measure.anchor.scaled_photo_cv",
    /// Diameter by eye.
    MeasureAnchorByEyeCv = "measure.anchor.by_eye_cv",
    /// Standard error of a limb's angle read from the ground.
    MeasureLimbAngleDeg = "measure.limb_angle_deg",
    /// Standard error of a limb's length, given or taken from the crown radius.
    MeasureLimbLengthCv = "measure.limb_length_cv",
    /// Standard error of a wall read with a resistance drill.
    MeasureShellDrillCm = "measure.shell.drill_cm",
    /// Standard error of a wall read on a core.
    MeasureShellCoreCm = "measure.shell.core_cm",
    /// Standard error of a wall read with a rod or a tape in the cavity.
    MeasureShellProbeCm = "measure.shell.probe_cm",
    /// Standard error of a wall read on a section picture.
    MeasureShellPictureCm = "measure.shell.picture_cm",
    /// One reading is a point, not a ring: how far the wall elsewhere may lie from it, as a coefficient of variation.
    MeasureShellOneReadingSpread = "measure.shell.one_reading_spread",
    /// Two readings: how far the wall between may lie from them.
    MeasureShellTwoReadingsSpread = "measure.shell.two_readings_spread",
    /// Spread of bark taken from the species' share instead of a reading.
    MeasureBarkCv = "measure.bark_cv",
    /// Sound under the mallet: thinnest wall over radius.
    MeasureMalletSoundLow = "measure.mallet.sound_low",
    /// Sound under the mallet: thickest wall over radius.
    MeasureMalletSoundHigh = "measure.mallet.sound_high",
    /// Dull under the mallet: thinnest wall over radius.
    MeasureMalletDullLow = "measure.mallet.dull_low",
    /// Dull under the mallet: thickest wall over radius.
    MeasureMalletDullHigh = "measure.mallet.dull_high",
    /// Hollow under the mallet: thinnest wall over radius.
    MeasureMalletHollowLow = "measure.mallet.hollow_low",
    /// Hollow under the mallet: thickest wall over radius.
    MeasureMalletHollowHigh = "measure.mallet.hollow_high",
    /// A fix further than this many median absolute deviations from the median is left out.
    MeasurePositionOutlierMads = "measure.position.outlier_mads",
    /// How far a gloved finger is off on a plan, in millimetres of the screen.
    MeasurePositionTapMm = "measure.position.tap_mm",
    /// How well the plan itself is known, unless its trees say worse.
    MeasurePositionPlanM = "measure.position.plan_m",
    /// An entered height this many spreads off the species' usual height for its diameter is asked about, never refused.
    MeasureHeightCheckSpreads = "measure.height_check_spreads",
    /// Spread of a green bending strength read in a published table.
    WoodConfirmedCv = "wood.confirmed_cv",
    /// Spread of a green bending strength recalled, not read.
    WoodMemoryCv = "wood.memory_cv",
    /// Spread where only the general function of specific gravity is left.
    WoodGeneralCv = "wood.general_cv",
    /// Spread of a green density from a table.
    WoodDensityCv = "wood.density_cv",
    /// Knots and grain of real limbs: weakest.
    WoodLimbFactorLow = "wood.limb_factor_low",
    /// Knots and grain of real limbs: strongest.
    WoodLimbFactorHigh = "wood.limb_factor_high",
    /// Ratio of breaking forces with and without included bark, small stems (0.723 worked out from both lines, rounded down).
    WoodIncludedBarkLow = "wood.included_bark_low",
    /// Ratio of breaking forces with and without included bark, large stems (0.846, rounded).
    WoodIncludedBarkHigh = "wood.included_bark_high",
    /// Ratio of limb to parent at which the weakness of a codominant union counts in full.
    WoodAspectFullAt = "wood.aspect_full_at",
    /// Ratio of limb to parent up to which a union counts as a branch.
    WoodAspectNoneAt = "wood.aspect_none_at",
    /// Climber with gear where nobody is named or no mass is recorded.
    LoadClimberKg = "load.climber_kg",
    /// Standard error of that mass.
    LoadClimberSeKg = "load.climber_se_kg",
    /// Spread of a recorded mass with gear: what is carried differs by the day.
    LoadNamedClimberCv = "load.named_climber_cv",
    /// Dynamic factor of work aloft, gentlest.
    LoadWorkFactorLow = "load.work_factor_low",
    /// Dynamic factor of work aloft, roughest.
    LoadWorkFactorHigh = "load.work_factor_high",
    /// How far the pull on an anchor may stray from the vertical.
    LoadPullStrayDeg = "load.pull_stray_deg",
    /// The line lies at least half the diameter and this far from the union.
    LoadLeverExtraCm = "load.lever_extra_cm",
    /// A limb further than this from the vertical also carries its own weight.
    LoadLimbWeightFromDeg = "load.limb_weight_from_deg",
    /// Volume of a limb over diameter squared times length times a quarter of pi.
    LoadLimbVolumeFactor = "load.limb_volume_factor",
    /// Added to a limb's mass for its branches.
    LoadLimbBranchesShare = "load.limb_branches_share",
    /// Centre of a limb's mass, from the union, as a share of its length.
    LoadLimbCentreShare = "load.limb_centre_share",
    /// Casualty and rescuer with gear on one system.
    LoadRescueKg = "load.rescue_kg",
    /// Dynamic factor of a rescue.
    LoadRescueFactor = "load.rescue_factor",
    /// Free fall of a slip with slack.
    LoadSlipM = "load.slip_m",
    /// Stretch of the line under the climber's still weight, short line.
    LoadSlipStretchLowM = "load.slip_stretch_low_m",
    /// Stretch of the line under the climber's still weight, long line.
    LoadSlipStretchHighM = "load.slip_stretch_high_m",
    /// Stem volume over that of a cylinder of the same base and length, slenderest.
    StemFormFactorLow = "stem.form_factor_low",
    /// Stem volume over that of a cylinder of the same base and length, fullest.
    StemFormFactorHigh = "stem.form_factor_high",
    /// Mass of branches as a share of the stem's, lightest crown.
    StemBranchShareLow = "stem.branch_share_low",
    /// Mass of branches as a share of the stem's, heaviest crown.
    StemBranchShareHigh = "stem.branch_share_high",
    /// Centre of mass as a share of the stem's length.
    StemCentreShare = "stem.centre_share",
    /// Standard error of that share.
    StemCentreSe = "stem.centre_se",
    /// Diameter at height z over that at breast height: ((H - z)/(H - 1.3)) to this power.
    StemTaperExponent = "stem.taper_exponent",
    /// Spread of a stem diameter worked out by taper.
    StemTaperCv = "stem.taper_cv",
    /// At most this many of the weakest sections are sampled.
    StemSectionsSampled = "stem.sections_sampled",
    /// Points on the rim at which a section's stress is taken.
    StemRimPoints = "stem.rim_points",
    /// A central margin of the anchor this low bars climbing.
    MarginStopAt = "margin.stop_at",
    /// A margin this high takes no points.
    MarginFullAt = "margin.full_at",
    /// 10 % margin of a rescue on the same anchor below which the rescuer needs an own one.
    MarginRescueLimitsBelow = "margin.rescue_limits_below",
    /// 10 % margin of a rescue on the same anchor below which nobody climbs.
    MarginRescueBarsBelow = "margin.rescue_bars_below",
    /// 10 % margin of a slip below which no slack is allowed and nobody works above the anchor.
    MarginSlipLimitsBelow = "margin.slip_limits_below",
    /// Section modulus left that takes no points.
    MarginModulusFullPct = "margin.modulus_full_pct",
    /// Section modulus left at which structure counts nothing.
    MarginModulusNonePct = "margin.modulus_none_pct",
    /// Fewer samples that agree with a load test that held than this: test and readings disagree.
    TestLeastSamples = "test.least_samples",
    /// Strength loss by any published formula or by modulus that bars climbing.
    StopStrengthLossPct = "stop.strength_loss_pct",
    /// Small trees sway: climbing and felling end. No published number for climbing was found.
    StopWindForce = "stop.wind_force",
    /// Wait this long after the last thunder.
    StopThunderMin = "stop.thunder_min",
    /// From flash to thunder at or under this: take shelter.
    StopThunderFlashS = "stop.thunder_flash_s",
    /// Above this height a second person trained in aerial rescue is on site.
    StopRescueHeightM = "stop.rescue_height_m",
    /// Roots cut or ground dug within this many years bars climbing unless a named person cleared it.
    StopRootsYears = "stop.roots_years",
    /// Radius over diameter at breast height.
    StopRootRadiusRatio = "stop.root_radius_ratio",
    /// Radius over diameter at breast height, for old trees and sensitive kinds.
    StopRootRadiusSensitiveRatio = "stop.root_radius_sensitive_ratio",
    /// Ash with more of its crown lost than this.
    StopAshDiebackPct = "stop.ash_dieback_pct",
    /// Smallest anchor.
    StopAnchorCm = "stop.anchor_cm",
    /// Smallest anchor in brittle kinds.
    StopAnchorBrittleCm = "stop.anchor_brittle_cm",
    /// Sound wall over radius below this: refer. A statement of chance, not a limit.
    CapShellRatio = "cap.shell_ratio",
    /// Strength loss from here: refer.
    CapWagenerPct = "cap.wagener_pct",
    /// Strength loss from here: refer.
    CapSmileyFraedrichPct = "cap.smiley_fraedrich_pct",
    /// Opening wider than this: refer.
    CapOpeningDeg = "cap.opening_deg",
    /// Included bark with limb over parent above this, below the anchor: limited.
    CapAspectIncluded = "cap.aspect_included",
    /// Small branches move: limited. No published number for climbing was found.
    CapWindCautionForce = "cap.wind_caution_force",
    /// Factor of a grade 1 on the route, above it or under the anchor.
    FindingGrade1 = "finding.grade_1",
    /// Factor of a grade 2 on the route, above it or under the anchor.
    FindingGrade2 = "finding.grade_2",
    /// Factor of a grade 3 on the route, above it or under the anchor.
    FindingGrade3 = "finding.grade_3",
    /// Within this distance of the route a factor counts by its square root, further off by its fourth root.
    FindingNearM = "finding.near_m",
    /// Power of a factor near the route.
    FindingNearPower = "finding.near_power",
    /// Power of a factor elsewhere.
    FindingFarPower = "finding.far_power",
    /// In one part the worst counts in full, the others by this power.
    FindingOthersPower = "finding.others_power",
    /// What the ground hides, so that nobody reads 100.
    ScoreHiddenGround = "score.hidden_ground",
    /// The same after a load test held.
    ScoreHiddenGroundTested = "score.hidden_ground_tested",
    /// 10 % end from which no stop was found.
    ScoreNoStopFrom = "score.no_stop_from",
    /// 10 % end from which climbing within limits is left.
    ScoreLimitedFrom = "score.limited_from",
    /// A cause that costs this many points is named as a limit.
    ScoreLimitNamedFrom = "score.limit_named_from",
    /// Bins of equal probability for the first-order sensitivity.
    ScoreSensitivityBins = "score.sensitivity_bins",
    /// Tree lengths that everyone but the cutter keeps off while a tree is felled.
    ZoneFellEveryoneLengths = "zone.fell.everyone_lengths",
    /// Tree lengths for crew with a task, such as on a pull line.
    ZoneFellCrewLengths = "zone.fell.crew_lengths",
    /// Tree lengths of the tree being felled, between two places of work.
    ZoneConflictLengths = "zone.conflict_lengths",
    /// Taking down from the crown: distance from the drip line, 20 ft.
    ZoneRemovalM = "zone.removal_m",
    /// People without a task: beyond the drop zone, 20 ft.
    ZoneBeyondDropM = "zone.beyond_drop_m",
    /// Barrier beyond the drip line while pruning, 10 ft.
    ZonePruneBarrierM = "zone.prune_barrier_m",
    /// Lengths of the piece being cut, and often more.
    ZonePieceLengths = "zone.piece_lengths",
    /// Outward speed of a piece pushed off by hand.
    ZonePieceSpeedMs = "zone.piece_speed_ms",
    /// Distance of a piece from the stem when it is let go.
    ZonePieceHoldM = "zone.piece_hold_m",
    /// A rigged piece swings this many of its lengths beyond the crown.
    ZoneSwingPieces = "zone.swing_pieces",
    /// Downhill half: radius times 1 plus this share of the slope.
    ZoneSlopeShare = "zone.slope_share",
    /// Slope, rise over run, beyond which the downhill radius grows no further.
    ZoneSlopeMost = "zone.slope_most",
    /// End of the height's distribution that the stem length is taken at.
    ZoneHeightEndPct = "zone.height_end_pct",
    /// Corners of an outline.
    ZoneOutlinePoints = "zone.outline_points",
    /// Unqualified people, up to 50 kV: 10 ft.
    WireApproachM = "wire.approach_m",
    /// Added for every 10 kV or part of it over 50 kV: 4 in. In feet the step is 0.1016 m.
    WireApproachStepM = "wire.approach_step_m",
    /// The step in voltage.
    WireApproachStepKv = "wire.approach_step_kv",
    /// The voltage up to which the first distance holds.
    WireApproachFromKv = "wire.approach_from_kv",
    /// Within this distance of a conductor its owner is asked first.
    WireConsultM = "wire.consult_m",
    /// Within this many approach distances a conductor limits the climb.
    WireCautionLengths = "wire.caution_lengths",
    /// Heat index in degrees Fahrenheit.
    HeatCautionF = "heat.caution_f",
    /// Heat index in degrees Fahrenheit.
    HeatExtremeCautionF = "heat.extreme_caution_f",
    /// Heat index in degrees Fahrenheit.
    HeatDangerF = "heat.danger_f",
    /// Heat index in degrees Fahrenheit.
    HeatExtremeDangerF = "heat.extreme_danger_f",
    /// Breaking strength of a climbing line, split tail or lanyard when new: 24 kN (5,400 lbf).
    GearLineKn = "gear.line_kn",
    /// Connectors: 5,000 lbf, self-closing and double-locking.
    GearConnectorKn = "gear.connector_kn",
    /// Friction savers: 5,000 lbf.
    GearFrictionSaverKn = "gear.friction_saver_kn",
    /// Thinnest climbing line.
    GearLineLeastMm = "gear.line_least_mm",
    /// Thickest climbing line.
    GearLineMostMm = "gear.line_most_mm",
    /// Thorough check of what carries a person.
    GearCheckMonths = "gear.check_months",
    /// Height of a throw line as routine.
    GearThrowRoutineM = "gear.throw_routine_m",
    /// Height of a throw line for a good hand.
    GearThrowGoodHandM = "gear.throw_good_hand_m",
    /// Line left on the ground below a climber at the anchor.
    GearRopeReserveM = "gear.rope_reserve_m",
    /// Aim for tying a knot.
    GearKnotAimS = "gear.knot_aim_s",
    /// Height by two slope distances and two angles.
    CostHeightS = "cost.height_s",
    /// Girth by tape.
    CostGirthS = "cost.girth_s",
    /// Lean from two sides.
    CostLeanS = "cost.lean_s",
    /// Anchor's diameter on a scaled photo.
    CostAnchorPhotoS = "cost.anchor_photo_s",
    /// Anchor's diameter by tape aloft.
    CostAnchorTapeS = "cost.anchor_tape_s",
    /// A limb's angle and length.
    CostLimbS = "cost.limb_s",
    /// Three more drill readings of a section.
    CostSectionDrillS = "cost.section_drill_s",
    /// Mallet clock around the stem.
    CostMalletS = "cost.mallet_s",
    /// Load test of the anchor.
    CostLoadTestS = "cost.load_test_s",
    /// Species named from leaf, bud or bark.
    CostSpeciesS = "cost.species_s",
    /// Climber weighed with gear.
    CostClimberS = "cost.climber_s",
    /// A part of the walk-round looked at again.
    CostLookS = "cost.look_s",
}

impl Rule {
    /// The row with this id, if there is one.
    pub fn of_id(id: &str) -> Option<Rule> {
        Rule::ALL.iter().copied().find(|rule| rule.id() == id)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_id_leads_back_to_its_row() {
        for rule in Rule::ALL {
            assert_eq!(Rule::of_id(rule.id()), Some(*rule));
        }
        assert_eq!(Rule::of_id("zone.fell.everyone"), None);
    }
}
