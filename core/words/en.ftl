### The words of Bolewalk in English (United States).
###
### An entry's key in the code has dots where its id here has hyphens: `verdict.no-stop` is
### `verdict-no-stop`. Each room keeps its entries under its own heading; add yours at the end of
### your heading. Short, plain sentences: they are read in gloves and in the sun.
### A number `x` is also there as `x-up` and `x-down`: use the first for distances that people
### keep, the second for margins and scores.

## Units and numbers

unit-m = { $number } m
unit-ft = { $number } ft
unit-cm = { $number } cm
unit-in = { $number } in
unit-mm = { $number } mm
unit-m2 = { $number } m²
unit-ft2 = { $number } ft²
unit-kg = { $number } kg
unit-lb = { $number } lb
unit-kg-m3 = { $number } kg/m³
unit-lb-ft3 = { $number } lb/ft³
unit-kn = { $number } kN
unit-lbf = { $number } lbf
unit-kn-m = { $number } kN·m
unit-lbf-ft = { $number } lbf·ft
unit-mpa = { $number } MPa
unit-psi = { $number } psi
unit-cm3 = { $number } cm³
unit-in3 = { $number } in³
unit-m-s = { $number } m/s
unit-mph = { $number } mph
unit-deg-c = { $number } °C
unit-deg-f = { $number } °F
unit-deg = { $number }°
unit-percent = { $number }%
unit-beaufort = force { $number }
unit-kv = { $number } kV
unit-s = { $number } s
unit-min = { $number } min
unit-days = { $value ->
    [one] { $number } day
   *[other] { $number } days
}
unit-months = { $value ->
    [one] { $number } month
   *[other] { $number } months
}
unit-years = { $value ->
    [one] { $number } year
   *[other] { $number } years
}
unit-points = { $value ->
    [one] { $number } point
   *[other] { $number } points
}
unit-plain = { $number }

symbol-m = m
symbol-ft = ft
symbol-cm = cm
symbol-in = in
symbol-mm = mm
symbol-m2 = m²
symbol-ft2 = ft²
symbol-kg = kg
symbol-lb = lb
symbol-kg-m3 = kg/m³
symbol-lb-ft3 = lb/ft³
symbol-kn = kN
symbol-lbf = lbf
symbol-kn-m = kN·m
symbol-lbf-ft = lbf·ft
symbol-mpa = MPa
symbol-psi = psi
symbol-cm3 = cm³
symbol-in3 = in³
symbol-m-s = m/s
symbol-mph = mph
symbol-deg-c = °C
symbol-deg-f = °F
symbol-deg = °
symbol-percent = %
symbol-beaufort = force
symbol-kv = kV
symbol-s = s
symbol-min = min
symbol-days = days
symbol-months = months
symbol-years = years
symbol-points = points
symbol-plain = { "" }

measure-with-se = { $value } ± { $se }
measure-feet-and-inches = { $feet } ft { $inches } in
measure-from-to = { $low } to { $high }
date-day-and-hour = { $day }, { $hour }

side-n = north
side-ne = northeast
side-e = east
side-se = southeast
side-s = south
side-sw = southwest
side-w = west
side-nw = northwest
side-short-n = N
side-short-ne = NE
side-short-e = E
side-short-se = SE
side-short-s = S
side-short-sw = SW
side-short-w = W
side-short-nw = NW

## Verdicts and the climb

verdict-no-stop = no stop found today
verdict-limited = only within these limits
verdict-refer = do not climb yet: another way, or a second opinion
verdict-barred = do not climb
verdict-incomplete = not judged: still to check

climb-need-needed = the work needs a climber
climb-need-not-needed = nobody needs to climb
climb-need-undecided = not decided yet whether anybody climbs

## Ways of working, work and access

way-of-working-inspect-only = inspect only
way-of-working-prune = prune
way-of-working-section-free-drop = section down in free drop
way-of-working-section-rigged = section down rigged
way-of-working-fell-whole = fell whole
way-of-working-fell-shortened = fell after shortening
way-of-working-platform-or-crane = platform or crane
way-of-working-no-work = no work

other-access-ground = from the ground
other-access-platform = from a platform
other-access-crane = by crane
other-access-neighbouring-tree = from a neighboring tree
other-access-no-other = no other way found

operation-deadwood = remove dead, dying and broken limbs
operation-crown-thinning = thin the crown
operation-crown-raising = raise the crown
operation-crown-reduction = reduce the crown
operation-limb-removal = reduce or remove a limb
operation-clearance = prune for clearance
operation-structural-pruning = prune for structure
operation-bracing = brace a weak union
operation-hanger-removal = remove a hanger
operation-removal = remove the tree
operation-habitat-stem = keep as a standing stem for wildlife
operation-inspection = look again, or more closely

priority-immediate = now
priority-soon = within weeks
priority-season = this season
priority-routine = when convenient

## The walk-round and the inspection

inspection-level-stop-on-sight = stop on sight
inspection-level-triage = triage
inspection-level-full-check = full check
inspection-level-same-day = same day again

life-state-alive = alive
life-state-dying = dying
life-state-dead = dead

walk-part-wires = wires
walk-part-hangers = hangers
walk-part-insects = insects
walk-part-roots = roots
walk-part-base = base
walk-part-stem-north = stem, north side
walk-part-stem-east = stem, east side
walk-part-stem-south = stem, south side
walk-part-stem-west = stem, west side
walk-part-unions = unions
walk-part-crown = crown

look-seen = seen
look-part-seen = part seen
look-not-seen = not seen

tree-part-roots = roots
tree-part-base = base
tree-part-stem = stem
tree-part-union = union
tree-part-limb = limb
tree-part-crown = crown
tree-part-around = around the tree

mallet-sound-sound = sound
mallet-sound-dull = dull
mallet-sound-hollow = hollow
mallet-sound-not-sounded = not sounded

height-method-tangent = two angles and a level distance
height-method-percent = two percent readings and a level distance
height-method-sine = two angles and two slope distances
height-method-two-positions = from two positions on one line
height-method-stick = stick and similar triangles
height-method-tape = tape or pole up the tree
height-method-by-eye = by eye
height-method-taken-over = from an earlier inventory

girth-method-tape = tape around the stem
girth-method-diameter = diameter tape or calipers
girth-method-by-eye = by eye
girth-method-taken-over = from an earlier inventory

lean-method-by-eye = by eye
lean-method-two-sides = plumb, from two sides
lean-method-one-side = plumb, from one side
lean-method-taken-over = from an earlier inventory

position-method-phone-fix = phone fix
position-method-averaged-fixes = average of many phone fixes
position-method-survey = survey receiver
position-method-map = read on a map
position-method-photo-record = from a photo
position-method-taken-over = from an earlier inventory

shell-method-drill = resistance drill
shell-method-core = increment core
shell-method-probe = rod or tape in the cavity
shell-method-section-picture = picture of the section

## Defects

defect-kind-soil-movement = soil heave, mound or crack
defect-kind-roots-cut = roots cut or ground dug
defect-kind-girdling-roots = girdling roots
defect-kind-decay = decay or cavity
defect-kind-fire-hollow = base hollowed by fire
defect-kind-bracket-unnamed = bracket or fungus, not named
defect-kind-kretzschmaria = Kretzschmaria (brittle cinder)
defect-kind-meripilus = Meripilus (giant polypore)
defect-kind-phaeolus = Phaeolus (dyer's polypore)
defect-kind-heterobasidion = Heterobasidion (root rot)
defect-kind-inonotus = Inonotus (shaggy bracket)
defect-kind-ganoderma = Ganoderma (artist's conk and kin)
defect-kind-armillaria = Armillaria (honey fungus)
defect-kind-bracket-other = another fungus, named
defect-kind-stem-crack = crack in the stem
defect-kind-union-crack = crack in a union, or union opening
defect-kind-included-bark = included bark or codominant stems
defect-kind-limb-crack = crack in a limb
defect-kind-lightning-strip = fresh lightning strip
defect-kind-under-tension = uprooted, lodged, split or under tension
defect-kind-hanger = hanger
defect-kind-dead-limb = dead limb or top
defect-kind-dieback = dieback
defect-kind-topping-regrowth = regrowth from an old topping cut
defect-kind-wound = old wound, bark lost
defect-kind-canker = canker, swelling or ridge
defect-kind-climbers = ivy or other vines
defect-kind-stinging-insects = bees, wasps or hornets
defect-kind-nest-or-roost = protected nest or roost
defect-kind-touching-wire = touching a wire
defect-kind-other = something else

grade-1 = grade 1: slight
grade-2 = grade 2: marked
grade-3 = grade 3: grave

## Anchors and the climb plan

diameter-read-tape-aloft = tape aloft
diameter-read-beside-known-size = beside something of known size
diameter-read-scaled-photo = on a scaled photo
diameter-read-by-eye = by eye

union-form-bark-ridge = raised bark ridge
union-form-included-bark = included bark
union-form-opening = cracked or opening
union-form-not-seen = not to be seen from here

anchor-state-live = live wood
anchor-state-regrowth = regrowth from an old topping cut
anchor-state-dead = dead limb
anchor-state-dead-stub = dead stub

load-test-outcome-held = held
load-test-outcome-moved = moved
load-test-outcome-cracked = cracked
load-test-outcome-sank = sank

rope-system-moving-rope = moving rope
rope-system-stationary-crown = stationary rope, tied in the crown
rope-system-stationary-base = stationary rope, tied at the base

margin-anchor = anchor, working load
margin-rescue = anchor, rescue load
margin-slip = anchor, slip
margin-section = stem at a section
margin-base = stem at the base

## People, skills and gear

electrical-level-unqualified = not qualified near electricity
electrical-level-line-clearance = line-clearance qualified

skill-inspection = tree inspection
skill-gear-check = gear check
skill-electrical-awareness = electrical awareness
skill-first-aid = first aid
skill-knot = knots
skill-friction-hitch = friction hitches
skill-moving-rope = moving rope
skill-throw-line = throw line
skill-limb-walk = moving out on limbs
skill-aerial-rescue = aerial rescue
skill-stationary-rope = stationary rope
skill-chainsaw-aloft = chainsaw aloft, two attachments
skill-spurs = spurs, on removals only
skill-rigging = rigging

knot-use-stopper = stopper at the end of a line
knot-use-termination = ends a line at a connector
knot-use-joining = joins two lines
knot-use-midline = loop in mid-line
knot-use-gripping = grips a line and slides
knot-use-anchoring = ties to a stem
knot-use-lifting = ties tools for lifting

gear-kind-climbing-line = climbing line
gear-kind-lanyard = lanyard
gear-kind-second-attachment = second attachment
gear-kind-harness = harness
gear-kind-helmet = helmet
gear-kind-connector = connector
gear-kind-hitch-cord = hitch cord
gear-kind-friction-saver = friction saver
gear-kind-throw-line = throw line and weight
gear-kind-rescue-kit = rescue kit
gear-kind-first-aid-kit = first-aid kit
gear-kind-spurs = spurs
gear-kind-rigging-line = rigging line
gear-kind-rigging-block = rigging block
gear-kind-top-handled-saw = chainsaw for use aloft

## The site: targets, wires, permissions, weather

target-kind-dwelling = dwelling
target-kind-outbuilding = outbuilding
target-kind-road = road
target-kind-path = path
target-kind-garden = garden
target-kind-parking = parking
target-kind-play = play or seating area
target-kind-fence = fence or wall
target-kind-services = pipes or services
target-kind-animals = animals
target-kind-other = other

occupancy-rare = rare
occupancy-occasional = occasional
occupancy-frequent = frequent
occupancy-constant = constant

ground-form-spot = point
ground-form-way = line
ground-form-area = area

line-kind-transmission = transmission line
line-kind-distribution = distribution line
line-kind-service = service line to a building
line-kind-communication = telephone or cable
line-kind-railway = railway contact line
line-kind-unknown = line of unknown kind

voltage-between-phases = phase to phase
voltage-between-phase-and-ground = phase to ground

permission-kind-owner = owner's consent
permission-kind-protected-tree = protected tree
permission-kind-neighbour = neighbor
permission-kind-nests = nesting birds
permission-kind-bats = bats
permission-kind-quarantine = quarantine
permission-kind-road-closure = closing a road or path

permission-answer-given = given
permission-answer-refused = refused
permission-answer-not-needed = not needed
permission-answer-waiting = asked, no answer yet

phone-signal-good = good signal
phone-signal-patchy = signal in places
phone-signal-no-signal = no signal

daylight-day = daylight
daylight-dusk = dusk or dawn
daylight-dark = dark

## Zones

zone-action-empty-rooms = rooms emptied, or another way
zone-action-close-off = close off
zone-action-move-away = move away
zone-action-guard = guard
zone-action-protect = cover or protect
zone-action-ask-neighbour = ask the neighbor
zone-action-call-line-owner = call the owner of the line

## Risk for the client

failure-likelihood-improbable = improbable
failure-likelihood-possible = possible
failure-likelihood-probable = probable
failure-likelihood-imminent = imminent
impact-likelihood-very-low = very low
impact-likelihood-low = low
impact-likelihood-medium = medium
impact-likelihood-high = high
consequences-negligible = negligible
consequences-minor = minor
consequences-significant = significant
consequences-severe = severe
combined-likelihood-unlikely = unlikely
combined-likelihood-somewhat-likely = somewhat likely
combined-likelihood-likely = likely
combined-likelihood-very-likely = very likely
risk-rating-low = low
risk-rating-moderate = moderate
risk-rating-high = high
risk-rating-extreme = extreme
risk-level-1 = level 1: limited visual assessment
risk-level-2 = level 2: basic assessment
risk-level-3 = level 3: advanced assessment
risk-not-assessed = not assessed

## Cautions, printed always

# Arguments: $day, $hour, $weather, $level. Where one is not known pass `caution.unknown`.
caution-sheet-ground = Judged from the ground on { $day }, { $hour }, { $weather }. Inspection: { $level }.
caution-sheet-not-seen = Not seen: { $parts }.
caution-sheet-all-seen = Every part on the list was seen from the ground. What cannot be seen from the ground was not.
caution-sheet-aid = This is the crew's own aid, not a permission to climb.
caution-sheet-refuse = Whoever climbs may refuse, at any time, without giving a reason.
caution-sheet-decide = Local codes and the qualified arborist on site decide.
caution-anchor-scope = This holds for this anchor, this rope system and this day only.
caution-anchor-not = It says nothing about slips with slack in the line, rigging loads or a pull from another side.
caution-anchor-aloft = Keep checking the anchor while you are aloft.
caution-decay-bending = Only bending was worked out. Roots and buckling are not.
caution-decay-shape = Decay is rarely a clean round hole. Trust the doubt, not the number.
caution-zone-stem = Distances are measured along the ground from the stem.
caution-zone-more = Keep more distance downhill, in wind, and around dead tops and lodged trees.
caution-wires-people = Wire distances hold only for people with the qualification named.
caution-wires-all = Rope, tool and branch count as part of the climber.
caution-client-guarantee = This summary is not a guarantee.
caution-client-holds = It holds for { $time-frame }, or until a storm, digging near the tree or any other change, whichever comes first.
caution-client-risk = No tree is without risk.
caution-unknown = not recorded
caution-house = House value: the crew's own choice, not from a published source.
caution-memory = From memory, not checked against its source.
caution-practice = Common practice, no published source.

## Nouns

noun-site = property
noun-target = target
noun-overhead-line = overhead line
noun-permission = permission
noun-visit = visit
noun-weather-hour = weather entry
noun-tree = tree
noun-work = work item
noun-inspection = inspection
noun-wire-distance = distance to a wire
noun-part-look = part of the walk-round
noun-finding = finding
noun-stem-section = stem section
noun-shell-reading = wall reading
noun-anchor-point = anchor
noun-climb-plan = climb plan
noun-photo = photo
noun-risk-entry = risk entry
noun-person = person
noun-sign-off = sign-off
noun-gear = piece of gear
noun-defect-code = code in the codebook
noun-house-value = house value
noun-signed-judgement = signed judgment
noun-file = file
noun-folder = folder
noun-page = page
noun-field-book = field book
noun-rule-set = rule set
noun-species = species

## Errors: what happened, and what to do

error-refused = { $count ->
    [one] This does not fit, and nothing was changed. Mend it and try again.
   *[other] { $count } entries do not fit, and nothing was changed. Mend them and try again.
}
error-not-found = There is no { $kind } “{ $id }”. Check the name, or go back and choose it from the list.
error-newer = “{ $place }” was written by a newer version (format { $found }; this version reads up to { $known }). It was left as it is. Update this app or program, then open it again.
error-damaged = “{ $place }” is damaged: { $detail }. { $what-we-did }
error-damaged-moved-aside = Nothing was deleted. The damaged files are kept in “{ $kept }”. Go on with the last good backup, and give that folder to someone who can repair it.
error-damaged-left-in-place = Nothing was deleted or moved. Copy the folder before you do anything else, then restore the last good backup.
error-disk-full = There is no room left to write “{ $place }”. Nothing half-written was left behind. Free some space and try again.
error-unwritable = “{ $place }” cannot be written: { $cause }. Check that the folder exists and may be written to, or choose another.
error-unreadable = “{ $place }” cannot be read: { $cause }. Check that the file is there and may be read, then try again.
error-busy = “{ $place }” is in use by another program. Close the other one, or wait a moment, and try again.
error-stopped = Stopped, as you asked. Nothing half-done was left behind.
error-defect = Something went wrong in the program itself: { $detail }. Your records are as they were last saved. Try again; if it happens again, pass this sentence on to whoever looks after the app.

## Faults: what does not fit

fault-at-place = { $place }: { $sentence }
fault-found = Found: { $found }.
fault-allowed = Allowed: { $allowed }.

fault-not-a-number = This is not a number that can be read.
fault-unit-does-not-fit = This unit does not fit here.
fault-out-of-range = This value is outside what can be meant here.
fault-too-small = This value is too small.
fault-too-large = This value is too large.
fault-too-short = This text is too short.
fault-too-long = This text is too long.
fault-too-few = Too few entries here.
fault-too-many = Too many entries here.
fault-not-a-choice = This is none of the choices.
fault-not-a-day = This is not a day of the calendar. Write it as 2026-05-14.
fault-leads-nowhere = This refers to a record that is not there.
fault-id-twice = This id is used more than once. Each record needs its own.
fault-tag-twice = Two trees have this tag. Give each tree a tag of its own.
fault-wrong-type = This is the wrong kind of value.
fault-unknown-field = This field is not known. Check its spelling, or take it out.
fault-missing-field = A field that is needed is missing.
fault-does-not-fit = This does not fit the form of the file.
fault-not-json = This is not valid JSON. Mend it at this place first; other faults can only be found after that.
fault-not-utf8 = This is not text in UTF-8. Save the file as UTF-8 and try again.
fault-file-too-large = This file is too large to be read.
fault-ring-crosses-itself = This outline crosses itself. Enter its corners in order around the edge.
fault-coordinates-swapped = Latitude and longitude seem to be swapped.
fault-photo-missing = This photo file is not there. Put it beside the site file, or take the entry out.
fault-photo-not-a-picture = This file is not a picture that can be read. Use a JPEG or PNG.
fault-newer-format = This was written in a newer format. Update this version to read it.
fault-change = This change cannot be applied.

read-number-example = a number with or without its unit, such as { $example }
read-feet-example = a number with or without its unit, such as { $example } or 5 ft 11
read-bearing-example = a side such as NW, or degrees such as { $example }

## Why a number is asked

position-lat_deg-why = Without a position the plan cannot show the tree or what stands near it.
position-lon_deg-why = Without a position the plan cannot show the tree or what stands near it.
position-accuracy_m-why = The zones on the plan grow by the error of the position.
anchor-diameter_cm-why = The strength of an anchor goes with the third power of its diameter.
anchor-from_union_cm-why = The farther the line sits from the union, the harder it bends the limb.
anchor-limb_angle_deg-why = A flat limb is bent more by the same pull than a steep one.
anchor-limb_length_m-why = A long limb already carries its own weight.
load_test-mass_kg-why = A test says something only up to the load that was really on the line.
person-mass_with_gear_kg-why = The anchor carries the climber with all gear.
person-height_limit_m-why = A trainee climbs only as high as was agreed.
person-throw_m-why = An anchor counts only if somebody can set a line over it.
gear-rating_kn-why = Every link from the climber to the tree has to carry its rated load.
gear-diameter_mm-why = Rope, hitch cord and devices have to fit each other.
gear-length_m-why = The line has to reach the ground from the anchor.
sign_off-seconds-why = Noted to see progress. It is never required.
finding-height_m-why = A defect on the route or under the anchor weighs more than one elsewhere.
finding-aspect_ratio-why = A union of two stems of nearly the same size is weaker.
inspection-dieback_pct-why = A crown that dies back has brittle wood and weak roots.
wire-distance_m-why = A distance measured on site replaces the one read off the plan.
height-height_m-why = Drop zone and keep-out distance follow from the height.
measure-se_m-why = How far off the reading may be decides how sure the answer is.
girth-girth_cm-why = The strength of the stem follows from its girth.
measure-se_cm-why = How far off the reading may be decides how sure the answer is.
girth-at_height_m-why = Girth changes along the stem, so the height of the tape counts.
lean-lean_deg-why = A leaning stem is longer than the tree is high, and already bent by its own weight.
measure-se_deg-why = How far off the reading may be decides how sure the answer is.
measure-bearing_deg-why = The side decides what lies below it.
crown-radius_m-why = Pieces fall within the crown's reach, and wires are measured from its edge.
crown-base_m-why = Below the lowest live limbs there is no anchor.
bark-bark_cm-why = Bark carries no load. It is taken off the diameter.
slope-slope_pct-why = Wood slides and rolls downhill, so the zone grows on that side.
risk-time_frame_months-why = A rating holds only for the time it was made for.
line-voltage_kv-why = The approach distance follows from the voltage. If nobody knows it, nobody climbs nearby.
line-height_m-why = Helps the line's owner and the crew to find the right wire.
section-diameter_cm-why = The sound wall counts against the size of the stem.
section-shell_cm-why = The sound wall is what holds the stem up.
section-drill_angle_deg-why = A slanted path through the wall is longer than the wall is thick.
section-opening_cm-why = An open stem is weaker than a closed one with the same wall.
work-piece_length_m-why = The keep-out distance grows with the longest piece.
work-piece_mass_kg-why = Rigging and ground crew have to be ready for the heaviest piece.
work-cut_height_m-why = A piece cut higher up flies farther.
weather-hour-why = Weather changes within the day. Each entry belongs to an hour.
weather-wind_ms-why = Wind moves the anchor and carries pieces away.
weather-wind_force-why = Wind moves the anchor and carries pieces away.
weather-temperature_c-why = Heat and frost wear people down, and frost makes wood brittle.
weather-humidity_pct-why = Humid heat is harder on a climber than dry heat.
weather-thunder_min_ago-why = Nobody is in a tree until thunder has been silent long enough.

## Judge: stops, gaps, caps, limits, rules

## Pages and offers

## Papers: site summary and climb sheets

## Desk command

## Drawings
