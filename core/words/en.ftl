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

work-done-done = done
work-done-part-done = part done
work-done-not-done = not done
undone-because-weather = the weather
undone-because-daylight = no daylight left
undone-because-wires = too near a wire
undone-because-animals = insects, a nest or a roost
undone-because-found-aloft = not safe to go on, as found aloft
undone-because-gear = gear missing or failed
undone-because-client = the client asked for less
undone-because-other = another reason
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

distance-by-tape = tape, held level
distance-by-paces = paces
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
position-average = { $at } ± { $accuracy } · { $count ->
    [one] one fix
   *[other] { $count } fixes
}
position-on-plan = { $at } ± { $accuracy } · tapped on the plan, house value
position-waiting = No position yet. Step into the open and wait, or type it from the plan.
fix-no-number = { $count ->
    [one] One fix held no numbers.
   *[other] { $count } fixes held no numbers.
}
fix-no-place = { $count ->
    [one] One fix was at 0, 0, which a receiver gives where it has none.
   *[other] { $count } fixes were at 0, 0, which a receiver gives where it has none.
}
fix-no-accuracy = { $count ->
    [one] One fix did not say how far off it may be.
   *[other] { $count } fixes did not say how far off they may be.
}
fix-too-coarse = { $count ->
    [one] One fix was too far off to tell one tree from another.
   *[other] { $count } fixes were too far off to tell one tree from another.
}
fix-off-the-globe = { $count ->
    [one] One fix was no place on Earth.
   *[other] { $count } fixes were no places on Earth.
}
fix-old = { $count ->
    [one] One fix was from before you began.
   *[other] { $count } fixes were from before you began.
}
fix-outlier = { $count ->
    [one] One fix lay too far from the others.
   *[other] { $count } fixes lay too far from the others.
}

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
defect-kind-phaeolus = Phaeolus (dyer’s polypore)
defect-kind-heterobasidion = Heterobasidion (root rot)
defect-kind-inonotus = Inonotus (shaggy bracket)
defect-kind-ganoderma = Ganoderma (artist’s conk and kin)
defect-kind-armillaria = Armillaria (honey fungus)
defect-kind-bracket-other = other fungus, its name known
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

# Names of the starter codes, until a crew renames them.
code-soil-movement = { defect-kind-soil-movement }
code-roots-cut = { defect-kind-roots-cut }
code-girdling-roots = { defect-kind-girdling-roots }
code-decay = { defect-kind-decay }
code-fire-hollow = { defect-kind-fire-hollow }
code-bracket-unnamed = { defect-kind-bracket-unnamed }
code-kretzschmaria = { defect-kind-kretzschmaria }
code-meripilus = { defect-kind-meripilus }
code-phaeolus = { defect-kind-phaeolus }
code-heterobasidion = { defect-kind-heterobasidion }
code-inonotus = { defect-kind-inonotus }
code-ganoderma = { defect-kind-ganoderma }
code-armillaria = { defect-kind-armillaria }
code-bracket-other = { defect-kind-bracket-other }
code-stem-crack = { defect-kind-stem-crack }
code-union-crack = { defect-kind-union-crack }
code-included-bark = { defect-kind-included-bark }
code-limb-crack = { defect-kind-limb-crack }
code-lightning-strip = { defect-kind-lightning-strip }
code-under-tension = { defect-kind-under-tension }
code-hanger = { defect-kind-hanger }
code-dead-limb = { defect-kind-dead-limb }
code-dieback = { defect-kind-dieback }
code-topping-regrowth = { defect-kind-topping-regrowth }
code-wound = { defect-kind-wound }
code-canker = { defect-kind-canker }
code-climbers = { defect-kind-climbers }
code-stinging-insects = { defect-kind-stinging-insects }
code-nest-or-roost = { defect-kind-nest-or-roost }
code-touching-wire = { defect-kind-touching-wire }
code-other = { defect-kind-other }

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

permission-kind-owner = owner’s consent
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
caution-sheet-all-seen = Every part was seen, as far as it can be from the ground.
caution-sheet-aid = The crew’s own aid, not a permission to climb.
caution-sheet-refuse = Whoever climbs may refuse at any time.
caution-sheet-decide = Local codes and the qualified arborist on site decide.
caution-anchor-scope = It holds for this anchor, rope system and day:
caution-anchor-not = not for slips with slack, rigging loads or a pull from another side.
caution-anchor-aloft = Keep checking the anchor aloft.
caution-decay-bending = Only bending is worked out: not roots, not buckling.
caution-decay-shape = Decay is rarely a clean hole.
caution-zone-stem = Distances run along the ground from the stem.
caution-zone-more = Keep more downhill, in wind, and for dead tops and lodged trees.
caution-wires-people = Wire distances hold only for people with the qualification named.
caution-wires-all = Rope, tool and branch count as part of the climber.
caution-client-guarantee = This summary is not a guarantee.
caution-client-holds = It holds for { $time-frame }, or until a storm, digging near the tree or any other change, whichever comes first.
caution-client-risk = No tree is without risk.
caution-unknown = not recorded
caution-house = House value: the crew’s own choice, not from a published source.
caution-memory = From memory, not checked against its source.
caution-practice = Common practice, no published source.

## How sure a source is

rule-label-confirmed = read in its source
rule-label-second-hand = second-hand: quoted by another work
rule-label-memory = from memory, not checked
rule-label-common-practice = common practice, no source
rule-label-house = house value

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
noun-near-miss = near miss
noun-person = person
noun-sign-off = sign-off
noun-logged-climb = climb in the log
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
error-pack-refused = Nothing was taken in; everything here is as it was.
error-not-found = There is no { $kind } “{ $id }”. Check the name, or go back and choose it from the list.
error-newer = { $place } was written by a newer version (format { $found }; this version reads up to { $known }). It was left as it is. Update this app or program, then open it again.
error-damaged = { $place } is damaged: { $detail }. { $what-we-did }
error-damaged-moved-aside = Nothing was deleted. The damaged files are kept with the field book, in “{ $kept }”. Go on with the last good backup, and give that folder to someone who can repair it.
error-damaged-left-in-place = Nothing was deleted or moved. Copy the folder before you do anything else, then restore the last good backup.
error-disk-full = There is no room left to write { $place }. Nothing half-written was left behind. Free some space and try again.
error-place-quoted = “{ $name }”
error-place-field-book = the field book
error-unwritable = { $place } cannot be written: { $cause }. Check that the folder exists and may be written to, or choose another.
error-unreadable = { $place } cannot be read: { $cause }. Check that the file is there and may be read, then try again.
error-busy = { $place } is in use by another program. Close the other one, or wait a moment, and try again.
error-stopped = Stopped, as you asked. Nothing half-done was left behind.
error-defect = Something went wrong in the program itself: { $detail }. Your records are as they were last saved. Try again; if it happens again, pass this sentence on to whoever looks after the app.

## Faults: what does not fit

fault-at-place = { $place }: { $sentence }
fault-found = Found: { $found }.
fault-allowed = Allowed: { $allowed }.

fault-not-a-number = This is not a number that can be read.
fault-unit-does-not-fit = This unit does not fit here.
fault-out-of-range = This value is outside what can be meant here.
fault-comes-out-of-range = Taken together these readings give a value that cannot be meant. Take them again.
fault-too-small = This value is too small: { $found }. The least is { $allowed }.
fault-too-large = This value is too large: { $found }. The most is { $allowed }.
fault-too-short = This text is too short. It needs at least { $allowed } characters.
fault-too-long = This text is too long. It may have { $allowed } characters.
fault-too-few = Too few entries: { $found }. At least { $allowed } are needed.
fault-too-many = Too many entries: { $found }. There may be { $allowed }.
fault-not-a-choice = This is none of the choices.
fault-not-a-day = This is not a day of the calendar: { $found }. Write it like { $allowed }.
fault-leads-nowhere = This refers to a record that is not there.
fault-id-twice = This id is used more than once. Each record needs its own.
fault-tag-twice = Two trees have this tag. Give each tree a tag of its own.
fault-wrong-type = This is the wrong kind of value.
fault-unknown-field = This field is not known. Check its spelling, or take it out.
fault-missing-field = The field “{ $allowed }” is missing. Add it.
fault-does-not-fit = This does not fit the form of the file.
fault-not-json = This is not valid JSON. Mend it at this place first; other faults can only be found after that.
fault-not-geojson = This is not a GeoJSON file. Save the shapes as GeoJSON and try again.
fault-file-at-zero = This shape has a corner at 0, 0, which programs write where they have no position. Put it right in the program that made the file.
fault-no-shapes = There is no polygon, line or point in this file.
fault-not-utf8 = This is not text in UTF-8. Save the file as UTF-8 and try again.
fault-file-too-large = This file is too large to be read.
fault-ring-crosses-itself = This outline crosses itself. Enter its corners in order around the edge.
fault-coordinates-swapped = Latitude and longitude seem to be swapped.
fault-photo-missing = This photo file is not there. Put it beside the site file, or take the entry out.
fault-photo-not-a-picture = This file is not a picture that can be read. Use a JPEG or PNG.
fault-photo-broken = This picture is broken and was not taken in. Take it again, or copy it from the camera once more.
fault-photo-torn = This picture ends too early. The copy was cut short: copy it from the camera once more.
fault-photo-unknown-kind = This is no JPEG or PNG picture. Save it as JPEG and try again.
fault-photo-too-large = This picture file is too large. Save a smaller copy and try again.
fault-photo-too-many-pixels = This picture has too many pixels. Save a smaller copy and try again.
fault-syntax = This file cannot be read at this line. Mend it there first; other faults can only be found after that.
fault-missing = Something that is needed is missing here.
fault-doubled = This row is there twice. Keep one of them.
fault-bands = These bands leave a gap, overlap, or grow smaller as they go on.
fault-unknown-rule = There is no such row in the rule set. Check its spelling.
fault-rule-fixed = This row cannot be changed: it is a published minimum, not the crew’s choice.
fault-newer-format = This was written in a newer format. Update this version to read it.
fault-form = This value does not fit its field. Nothing was changed.
fault-record = This record is not whole. Nothing was changed.
fault-id-taken = This id is already in use. Nothing was changed.
fault-needed = This is needed. Enter it.
fault-not-whole = This has to be a whole number.
fault-no-position = This is no position on Earth. Wait for a fix and take it again.
fault-no-fix-yet = There is no position yet. Step into the open and wait, or type it from the plan.
fault-fix-at-zero = The phone gave 0, 0: it has no position yet. Step into the open and wait, tap it on the plan, or type it from there.
fault-fix-too-coarse = This fix is too far off to tell one tree from another. Step into the open and wait, or type the position from the plan.
fault-not-a-place = This cannot be read as latitude and longitude. Write it like { $allowed }.
fault-no-reading = The sensor gave no value. Hold the phone still and take it again, or type the value.
fault-thunder-both = Thunder was heard, or none was: one of the two.
fault-no-weather-yet = No weather was noted earlier today. Note it first.
fault-grade-without-sentence = This code has no sentence for this grade, so it cannot be graded so. Write the sentence in the codebook first.
fault-wall-beyond-middle = This wall would reach beyond the middle of the stem. Measure wall or stem again.
fault-climbs-with-self = Nobody climbs alone. Name who stayed within reach.
fault-name-twice = Another code has this name. Two tiles with one name cannot be told apart.
fault-rules-cross = The two values that belong together would meet or cross. Change the other one first.
fault-signs-off-self = Nobody signs off an own skill. Name the person who confirmed it.
fault-off-the-plan = This lies off the plan. Tap within it.
fault-plan-too-small = At this size a finger covers too much ground: { $found }, at most { $allowed }. Make the plan larger, then tap again.
fault-nothing-to-draw = There is nothing to draw yet. Take a position for the plan, a height for the side view, a girth for the section.
fault-nothing-to-undo = There is nothing to take back here.
fault-nothing-to-redo = There is nothing to do again here.
fault-nobody-signs = Nobody is named as holding this phone. Say who you are first.
fault-nothing-to-sign = Nobody has looked at this tree yet, so there is nothing to sign.
fault-signed-already = This judgment is signed as it stands. It can be signed again once it has changed.
fault-top-below-base = The top comes out below the base. Check that both readings were taken from one spot and not swapped.
fault-not-a-mapping = This does not say which column holds what. Write it like height_m=HEIGHT:ft.
fault-no-such-column = The file has no column “{ $found }”. It has: { $allowed }.
fault-mapped-twice = This field is mapped twice. Choose one column for it.
fault-no-known-column = No column could be recognized among: { $found }. Name them with --map, such as --map height_m=HEIGHT:ft.
fault-no-rows = There is nothing to read in this file.
fault-row-length = This row has { $found } cells where the header has { $allowed }. Its values may stand in the wrong columns. Mend the row.
fault-quote-not-closed = A quotation mark opens here and is never closed. Close it, or take it out.
fault-half-a-position = Only one half of the position is there. Add { $allowed }.
fault-no-place = The position is 0, 0, which many programs write where there is none.
fault-not-degrees = This position is not in degrees of latitude and longitude: { $found }. Allowed are { $allowed }. Convert the file to WGS 84.
fault-not-a-point = A tree stands at a point; this is another shape, or has no coordinates.
fault-other-reference-system = The coordinates are in another reference system: { $found }. Convert the file to WGS 84 ({ $allowed }).
fault-site-name = The property needs a name of { $allowed } characters.
fault-change = A line of the log does not fit and was not taken over.
fault-change-differs = This phone knows the entry “{ $found }” with other content. The pack was altered or damaged; let the other phone write it again.
fault-change-too-far-ahead = Dated { $found }, more than ten years ahead of this phone. Set the date of this phone right and take the pack in again; if it is right here, it is wrong on the other phone.
fault-record-elsewhere = “{ $found }” belongs to another property on this phone, so the two would run into each other.
fault-pack-altered = This is not what the pack says it holds: it was altered, or damaged on its way. Let the other phone write it again.
fault-pack-head = The head of the pack does not fit. Let the other phone write the pack again.
fault-pack-missing = The pack lists this file and does not hold it. Let the other phone write it again.
fault-pack-none = This file is no pack. Choose the file that another phone wrote as a pack.
fault-pack-other-site = This entry is about a property that the pack does not name. Let the other phone write it again.
fault-pack-path = This name leads out of the pack. Whoever made this file means harm, or it is no pack: do not take it in.
fault-pack-swells = This unpacks to more than a pack can hold. It is no pack of a field book: do not take it in.
fault-pack-too-large = This file is larger than a pack can be, and was not read.
fault-pack-torn = The pack was cut short or damaged on its way. Send it again.
fault-pack-unlisted = This file is in the pack and not on its list. Let the other phone write it again.

read-number-example = a number with or without its unit, such as { $example }
read-feet-example = a number with or without its unit, such as { $example } or 5 ft 11
read-bearing-example = a side such as NW, or degrees such as { $example }

## Photos: what their own record leaves open

photo-gap-no-record = The photo says nothing about where and when it was taken.
photo-gap-record-damaged = The photo’s record is damaged. What could be read of it is used.
photo-gap-no-position = The photo does not say where it was taken.
photo-gap-position-broken = The photo’s position is no place on Earth. It is left out.
photo-gap-position-without-hemisphere = The photo’s position does not say north or south, east or west. It is left out.
photo-gap-position-void = The camera had no position when the photo was taken.
photo-gap-no-time = The photo does not say when it was taken.
photo-gap-time-broken = The photo’s time is no day and hour of the calendar. It is left out.
photo-gap-time-without-offset = The photo’s time is local, and its time zone is not known.
photo-gap-direction-without-north = The photo’s direction does not say whether from true or magnetic north. It is left out.
photo-gap-direction-broken = The photo’s direction is no bearing. It is left out.
photo-gap-orientation-broken = The photo does not say which side is up. It is shown as stored.

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
logged_climb-height_m-why = Training goes from low to high.
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
crown-radius_m-why = Pieces fall within the crown’s reach, and wires are measured from its edge.
crown-base_m-why = Below the lowest live limbs there is no anchor.
bark-bark_cm-why = Bark carries no load. It is taken off the diameter.
slope-slope_pct-why = Wood slides and rolls downhill, so the zone grows on that side.
risk-time_frame_months-why = A rating holds only for the time it was made for.
line-voltage_kv-why = The approach distance follows from the voltage. If nobody knows it, nobody climbs nearby.
line-height_m-why = Helps the line’s owner and the crew to find the right wire.
section-height-why = The strength left is worked out at this height. Measure where the stem sounds worst.
limb-height-why = The climb has to reach this height; route and rope follow from it.
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
# Land signs of the Beaufort scale, as the US National Weather Service publishes them.
weather-wind_force-how = 0 smoke rises straight up · 1 smoke drifts · 2 leaves rustle · 3 leaves and twigs keep moving · 4 small branches move · 5 small trees begin to sway · 6 large branches move · 7 whole trees move · 8 twigs break off · 9 and more: damage
weather-temperature_c-why = Heat and frost wear people down, and frost makes wood brittle.
weather-humidity_pct-why = Humid heat is harder on a climber than dry heat.
weather-thunder_min_ago-why = Nobody is in a tree until thunder has been silent long enough.
settings-text_size_pct-why = On top of the size that the phone itself is set to.

## Judge: stops, gaps, caps, limits, rules

zone-fell = { $lengths } × the larger of stem length and crown reach, { $length-up }
zone-removal = crown reach { $crown-up } and the published distance beyond it
zone-pieces = twice the longest piece around the crown (crown reach { $crown-up }, piece { $piece-up })
zone-flight = how far a piece of { $piece-up } flies from a cut at { $cut-up }
zone-swing = crown reach { $crown-up }, swing of a piece of { $piece-up }, and the published distance beyond it
zone-prune-barrier = crown reach { $crown-up } and the published barrier beyond the drip line
zone-beyond-drop = crown reach { $crown-up }, one piece of { $piece-up }, and the published distance beyond the drop zone
gap-zone-needs-height-and-lean = Height, lean or crown radius is missing: no zone for felling can be given. Measure them.
gap-zone-needs-crown = The crown radius is missing: pace it to the farthest tip.
gap-zone-needs-piece = The longest piece is missing: no zone for work in the crown can be given. Say how long the pieces are.
gap-zone-of-planned-way = No zone can be given for the planned way of working ({ $way }) until the gaps are closed.
gap-zone-needs-position = The tree has no position: the zone cannot be drawn on the plan. Pace it from the stem.
gap-zone-position-accuracy = The accuracy of the position is not known: the zone on the plan is drawn without it. Pace it from the stem.

# Stops: what bars climbing, who may lift it, and how.

stop-wire-inside-approach = { $line }: { $distance-down } away, and nobody here may come nearer than { $approach-up }. Only the owner of the line can lift this: by switching it off for the day, or with people qualified for line clearance.
stop-wire-voltage-unknown = { $line }: { $distance-down } away, voltage unknown. Ask the owner of the line; until they answer nobody climbs.
stop-wire-touching = The tree touches { $line }. Nobody touches tree or fence. Call the owner of the line; only they can lift this.
stop-wire-touching-unnamed = The tree touches a wire. Nobody touches tree or fence. Call the owner of the line; only they can lift this.
stop-dead-date-unknown = Dead, and nobody knows since when. Another way of working: platform, crane, felling. Somebody who knows when it died may enter the day.
stop-dead-brittle-kind = Dead, and this kind turns brittle soon after. Nobody can lift this: platform, crane or felling.
stop-ash-beetle = Ash killed by beetles breaks without warning. Nobody can lift this: platform, crane or felling.
stop-ash-dieback = Ash that has lost more than { $lost-down } of its crown breaks without warning. Nobody can lift this: platform, crane or felling.
stop-route-dead = A dead part is on the route. Choose another route or anchor, or remove it from a platform.
stop-soil-movement = The soil is lifted or cracked at the roots: the tree may be going over. Keep away. Only an arborist who has looked into the roots can lift this, with a new full check.
stop-roots-cut = Roots are cut. An arborist who has looked into the roots can clear it, by name.
stop-lean-new = The lean is newer than the last look: the tree may be going over. Keep away. Only an arborist who has looked into the roots can lift this, with a new full check.
stop-ground-dug = Ground was dug or roots were cut { $distance-down } from the stem, inside { $radius-up }. An arborist who has looked into the roots can clear it, by name.
stop-ground-dug-unmeasured = Ground was dug or roots were cut near the stem, and nobody took the distance and the girth. Measure both, or let an arborist look into the roots and clear it, by name.
stop-union-crack = A union that carries the climb is cracked or opening. Choose an anchor and a route that do not hang on it.
stop-stem-crack = The stem is cracked through. Nobody can lift this: platform, crane or felling.
stop-lightning-strip = Fresh lightning strip: nobody knows what is split inside. Another way of working; a new look when a season has passed.
stop-under-tension = Uprooted, lodged, split or under tension. Nobody climbs it. Take it down from the ground or by crane, by people who know tension.
stop-fire-hollow = The base is hollowed by fire. Nobody can lift this: platform, crane or felling.
stop-kretzschmaria = Kretzschmaria at the tree: the wood breaks like china. Nobody can lift this: platform, crane or felling.
stop-meripilus = Meripilus at the tree: roots may be rotten beneath. Nobody can lift this: platform, crane or felling.
stop-phaeolus = Phaeolus at the tree: base and roots may be rotten. Nobody can lift this: platform, crane or felling.
stop-heterobasidion = Heterobasidion at the tree: base and roots may be rotten. Nobody can lift this: platform, crane or felling.
stop-inonotus-ash = Inonotus on ash: it breaks at the bracket. Nobody can lift this: platform, crane or felling.
stop-ganoderma-hollow = Ganoderma, and the mallet sounds hollow. Nobody can lift this: platform, crane or felling.
stop-armillaria-dieback = Armillaria, and the crown is dying back: roots may be rotten. Nobody can lift this: platform, crane or felling.
stop-crew-code = { $name }: the crew has set that nobody climbs from this grade on.
stop-strength-loss = Decay has taken { $loss-down } of the strength at { $height }. Nobody can lift this: platform, crane or felling.
stop-hanger-over-route = A hanger over the route. Take it down from outside the tree, then look again.
stop-hanger-over-people = A hanger over a place where people are. Close the place, take the hanger down from outside the tree, then look again.
stop-stinging-insects = Bees, wasps or hornets. Wait for another day or the season's end, or have them moved by somebody who may.
stop-nest-or-roost = A nest or roost that is protected. Wait until it is left, or ask the authority.
stop-thunder = Thunder { $ago } ago. Out of the trees until 30 minutes have passed without any.
stop-ice = Ice or snow on bark or ground. Wait until it is gone.
stop-wind = Wind { $force }. Wait until it drops.
stop-dark = Dark. Wait for daylight.
stop-permission-refused = Refused: { $permission }. Only whoever refused can lift this.
stop-no-rescue-plan = No rescue plan for this property. Write it down: meeting point, grid reference, signal, first-aider, casualty unit.
stop-no-second = Nobody stands ready to bring a climber down from above { $above }. A second person is needed: signed off for aerial rescue, geared, able to reach this anchor.
stop-nobody-may-climb = Nobody here may climb by sign-offs and gear. See who lacks what.
stop-no-sign-off = { $person } is not signed off: { $skill }. Somebody who may confirm it signs it off, by name and day.
stop-no-sign-offs = { $person } is not signed off: { $skills }. Somebody who may confirm them signs them off, by name and day.
stop-trainee-no-limit = { $person } is a trainee without a height limit. Whoever trains them sets one.
stop-above-height-limit = { $person } may climb up to { $limit-down }; this anchor is at { $height-up }. Choose another climber or a lower anchor.
stop-above-height-limit-unknown = { $person } may climb up to { $limit-down }, and the anchor's height is not known. Measure it.
stop-spurs-on-pruning = Spurs are for removals only. Climb without them.
stop-no-stopper = Open moving-rope system without a stopper knot. Tie one at the end of the line.
stop-gear-out-of-use = { $gear } is out of use: { $why }. Take another.
stop-gear-shock-loaded = { $gear } took a shock load. Out of use until somebody competent has checked it.
stop-gear-never-checked = { $gear }: no check is recorded. Have it checked and enter the day.
stop-gear-check-due = { $gear }: its check was due on { $day }. Have it checked and enter the day.
stop-gear-not-rated = { $gear }: no rating is recorded. Read the mark on it; without a mark it stays on the ground.
stop-gear-rating = { $gear } is rated { $rating-down }; at least { $least-up } is needed. Take another.
stop-gear-connector-locking = { $gear } is not self-closing and double-locking. Take another.
stop-gear-helmet-strap = { $gear } has no chin strap. Take another.
stop-gear-line-unmeasured = { $gear }: the diameter of the line is not recorded. Read it on the line's label.
stop-gear-line-diameter = { $gear } is { $diameter } thick; climbing lines are { $least } to { $most }. Take another.
stop-gear-missing = No { $kind } in order. Add one, or enter the one you have.
stop-line-length-unknown = { $gear }: its length is not recorded, and { $needed-up } is needed. Measure it.
stop-line-short = { $gear } is { $length-down } long; { $needed-up } is needed. Take a longer line.
stop-zone-not-clear = { $target } lies inside { $radius-up } and can neither be closed nor moved. Choose another way of working, or have it closed.
stop-anchor-dead = Anchor { $anchor } is on a dead limb. Choose live wood.
stop-anchor-dead-stub = Anchor { $anchor } is a dead stub. Choose live wood.
stop-anchor-regrowth = Anchor { $anchor } is regrowth from an old topping cut. Choose wood grown from the start.
stop-anchor-union-opening = The union under anchor { $anchor } is cracked or opening. Choose another anchor.
stop-anchor-thin = Anchor { $anchor } has { $wood-down } of live wood without bark; at least { $least-up } is needed. Choose a thicker one.
stop-load-test-failed = Anchor { $anchor } gave under the load test. Choose another anchor; nobody goes up on this one.
stop-anchor-margin = This anchor is too weak for the work. Choose a thicker or steeper one, or move the line nearer to the union.
stop-stem-margin = The stem is too weak at { $height } for a climber. Another way of working, or a second opinion with better measurements.
stop-rescue-margin = This anchor would not bear a rescue. Choose another one.

# Gaps: what is still to check, and how.

gap-not-looked-at = Nobody has looked at this tree yet.
gap-no-date = This look has no date. Enter the visit it belongs to.
gap-full-check = Only looked at briefly. Before anybody climbs: the full check.
gap-full-check-over = The full check of { $day } no longer counts. Before anybody climbs: a new one.
gap-no-climb-judged = Nobody needs to climb this tree, so no climb was judged. Before anybody climbs it all the same: a full check with an anchor.
gap-look-again = Last looked at on { $day }: look again today at { $part }.
gap-life = Alive, dying or dead? Nobody said.
gap-way-of-working = The way of working is not decided.
gap-species = The species is not known. A genus is enough to begin with.
gap-height = Measure the height.
gap-girth = Measure the girth.
gap-lean = Look at the lean. Upright by eye is an answer.
gap-lean-new = Is the lean newer than the last look? Nobody said.
gap-position = Take one fix at the stem.
gap-crown-radius = Pace the crown radius to the farthest tip.
gap-crown-base = Measure where the crown begins.
gap-other-stem = Measure height, girth and lean of every stem.
gap-ground-dug = Was ground dug or filled, or roots cut, near the stem? Nobody said.
gap-wires-asked = Are there wires near? Nobody said.
gap-line-not-recorded = Wires are near, and the line is not recorded. Enter it with its way.
gap-base-asked = Do base and roots look sound? Nobody said.
gap-beetle = Did beetles kill this ash? Nobody said.
gap-dieback = How much of this ash's crown is lost? Nobody said.
gap-part-not-seen = Not looked at: { $part }.
gap-part-hidden = Not seen: { $part }, hidden by { $hidden }.
gap-base-mallet = Sound the base with a mallet on four sides.
gap-code-unknown = The code { $code } is not in the codebook. Counted as grade 3 meanwhile.
gap-finding-grade = { $name }: give it a grade. Counted as grade 3 meanwhile.
gap-code-without-sentence = { $name }: this grade has no sentence in the codebook. Write one. Counted as grade 3 meanwhile.
gap-piece-length = How long is the longest piece that comes down?
gap-anchor = No anchor was chosen.
gap-anchor-height = Anchor { $anchor }: measure its height.
gap-anchor-diameter = Anchor { $anchor }: read its diameter at the union.
gap-anchor-angle = Anchor { $anchor }: read the limb's angle from the vertical.
gap-anchor-from-union = Anchor { $anchor }: how far from the union does the line lie?
gap-anchor-union = Anchor { $anchor }: look at the union.
gap-anchor-state = Anchor { $anchor }: is the wood alive and grown from the start?
gap-ascent-side = On which side is the ascent?
gap-climber = Name the climber.
gap-second = Name the second person.
gap-second-unknown = The second person named is not in the crew.
gap-stopper = Is a stopper knot tied at the end of the line?
gap-crew = No crew is entered. Enter who climbs and who stands ready, with their sign-offs.
gap-gear = No gear is entered. Enter what the climber hangs on, with ratings and checks.
gap-section-walls = The section at { $height } says nothing of its walls. Sound it all around, or drill it.
gap-test-and-readings-disagree = The load test and the readings of this anchor disagree. Measure the anchor again.
gap-weather = The weather of the hour is not entered.
gap-weather-wind = How strong is the wind now?
gap-weather-thunder = Was thunder heard? Listen, then say.
gap-weather-ice = Is there ice or snow on bark or ground?
gap-weather-bark = Is the bark wet?
gap-weather-light = Is it day, dusk or dark?
gap-wire-distance = { $line }: measure the distance from the crown.
gap-wire-position-accuracy = { $line }: the accuracy of the tree's position is not known. Measure the distance on site.
gap-permission = { $permission }: not asked yet.
gap-permission-waiting = { $permission }: asked, not answered yet.
gap-permission-undated = { $permission }: answered, but nobody said when.
gap-rescue-plan = There is no rescue plan for this property.
gap-rescue-meeting-point = Rescue plan: where is the ambulance met?
gap-rescue-grid = Rescue plan: which grid reference is read out?
gap-rescue-signal = Rescue plan: is there phone signal?
gap-rescue-first-aider = Rescue plan: who is the first-aider?
gap-rescue-casualty-unit = Rescue plan: which is the nearest unit that takes casualties?

# Caps at refer, then at limited.

cap-grade-3-on-route = { $place }: { $name }, grade 3. Another route, another way, or a second opinion.
cap-bracket-not-named = { $name }. Have it named before anybody climbs.
cap-dead-tree = The whole tree is dead. First a platform, a crane, a neighboring tree or felling.
cap-base-needs-section = Something at the base asks for a section: sound it at eight points, or drill it.
cap-opening = The stem is open over { $opening } at { $height }. A second opinion, or another way.
cap-shell-thin = The sound wall is thin at { $height }. A second opinion, or another way.
cap-strength-loss = Decay has taken { $loss } of the strength at { $height }. A second opinion, or another way.
cap-part-seen = Only part seen: { $part }. Climb no part that hangs on it until you have seen it.
cap-full-check-older = The full check is of { $day }; only what changes overnight was looked at today. Look at stem, unions and crown on the way up.
cap-anchor-union-part-seen = The union under anchor { $anchor } cannot be seen from here. Look at it before anybody hangs on it.
cap-included-bark-anchor = Included bark at the union of anchor { $anchor }. Keep the line close to the union and straight down; no side pull.
cap-included-bark = { $name } below the anchor, between limbs nearly as thick as each other. Put no load on it that pulls them apart.
cap-wind = Wind { $force }: come down when it rises.
cap-dusk = Dusk: be down before dark.
cap-wet-bark = Wet bark: short steps, lanyard always on.
cap-wire-near = { $line }: { $distance-down } away. Nothing comes nearer than { $approach-up }: no climber, tool, rope or falling piece.
cap-rescue-own-anchor = The rescuer needs an own anchor.
cap-no-slack = No slack in the line, and never above the anchor.

limit-trainee-within-reach = { $person } is a trainee: somebody signed off stays within reach.
limit-throw-beyond-reach = The line has to go { $height-up } high; { $person } throws { $reach-down }. Install it in two steps, or let another throw.
limit-throw-beyond-a-good-hand = The line has to go { $height-up } high, more than a good hand throws. Install it in two steps or with a launcher.

# What took points; each is a limit when it took enough.

cause-anchor = The anchor is not strong: gentle moves, the line close to the union.
cause-stem = The stem is not strong at { $height }: no swinging, no heavy pieces against it.
cause-modulus = The stem has lost wood at { $height }: no swinging, no heavy pieces against it.
cause-finding = { $place }: { $name } ({ $grade }). Look at it again on the way, and come down if it is worse.
cause-part-seen = Only part seen: { $part }. Look at it before you hang on it.
cause-anchor-union-not-seen = The union at the anchor was not seen. Look at it before anybody hangs on it.
cause-hidden-ground = What cannot be seen from the ground: keep looking aloft.
cause-hidden-ground-tested = What cannot be seen from the ground, though the load test held: keep looking aloft.

place-on-route = on the route
place-under-anchor = under the anchor
place-above = above the route
place-near = near the route
place-elsewhere = elsewhere in the tree

# Remarks.

remark-load-test-first = Before you leave the ground: load the anchor with two people's weight on the line alone, nobody beneath, and watch it.
remark-load-test-held = Load test held { $force-down } = { $ratio } × the working load. It says little about a slip or a side pull.
remark-load-test-older = The load test is of another day and does not count today.
remark-load-test-without-mass = The load test has no mass on record and does not count.
remark-last-look = Last looked at on { $day }.
remark-work-done = The work on this tree is done: its zone no longer counts among what is to be closed.
remark-other-access-not-asked = Could it be done from the ground, a platform, a crane or a neighboring tree? Nobody said.
remark-bark-usual = Bark was not measured: its usual thickness counts.
remark-wood-by-genus = The wood of the genus counts, with a wider spread: the species is not named, or its strength is not in the tables.
remark-wood-general = No strength is published for this kind: the general value counts, with a wide spread.
remark-height-unusual = { $height } is unusual for this girth; { $low } to { $high } would be usual. Measure again.
remark-downhill-all-round = Nobody said which way is downhill: the wider radius counts all around.
remark-slope-not-given = The slope was not given: on sloping ground keep more distance downhill.
remark-next-look-open = No day is set for the next look.
remark-no-plan-worst-system = No climb plan: the rope system that loads an anchor most counts.
remark-system-counts-as-open = Open or closed rope system? Nobody said; it counts as open.
remark-route-sides-unknown = Side of ascent or bearing of the anchor's limb is not known: every finding in the crown counts as on the route.
remark-mass-usual = The climber's mass with gear is not known: { $mass } counts.
remark-anchor-read-as-by-eye = How the anchor's diameter was read is not known: it counts as read by eye.
remark-limb-length-usual = The length of the anchor's limb was not read: the crown radius counts.
remark-parent-diameter-missing = The stem's diameter at the anchor was not read: the union counts as that of two equal stems.
remark-wire-dead-today = { $line }: confirmed dead by its owner for today. Make sure before anybody starts.

# The next measurement.

next-height = Measure the height by two sight lines and two angles.
next-girth = Measure the girth with a tape.
next-lean = Measure the lean from two sides at right angles.
next-species = Name the species from leaf, bud or bark.
next-climber = Weigh the climber with gear.
next-anchor-photo = Read the anchor's diameter on a scaled photo.
next-anchor-tape = Measure the anchor with a tape aloft, from another anchor or a platform.
next-anchor-union = Look at the union under the anchor from another side.
next-section-drill = Drill three more times around the section at { $height }.
next-look-again = Look again at what was only part seen: { $part }.

# Wires.

wire-keep = { $line }: { $distance-down } from the crown. Stay { $approach-up } away ({ $level }).
wire-ask-owner = { $line }: { $distance-down } from the crown, voltage unknown. Ask its owner.
wire-no-contact = { $line }: { $distance-down } from the crown. No contact ({ $level }).
wire-dead-today = { $line }: confirmed dead by its owner for today.
wire-distance-unknown = { $line }: the distance from the crown is not known. Measure it.

# What to do about what lies inside a zone.

zone-empty-rooms = { $target }: rooms emptied, or another way.
zone-close-off = { $target }: close it off while work goes on.
zone-move-away = { $target }: move away what stands there.
zone-guard = { $target }: cannot be closed; somebody guards it.
zone-protect = { $target }: cover or protect it.
zone-ask-neighbour = { $target } is the neighbor's: ask them, and tell them the hour.
zone-call-line-owner = { $line } crosses the drop zone: call its owner first.
zone-crosses-edge = The keep-out runs over the edge of the property: ask the neighbor.

conflict-keep-out-overlaps = { $tree } and { $other } are { $apart-down } apart; { $needed-up } is needed. Not at the same time.

# The working, line by line.

work-height-95 = height at its upper end
work-stem-length = stem length
work-keep-out-prune = keep-out, pruning
work-keep-out-section-free-drop = keep-out, sections in free drop
work-keep-out-section-rigged = keep-out, sections rigged
work-keep-out-fell-whole = keep-out, felled whole
work-keep-out-fell-shortened = keep-out, felled after shortening
work-keep-out-inspect-only = keep-out, inspection
work-keep-out-platform-or-crane = keep-out, platform or crane
work-keep-out-no-work = keep-out, no work
work-downhill = keep-out downhill
work-rope-length = rope: shortest line
work-root-radius = critical root radius
work-wire-distance = wire: distance from the crown
work-wire-approach = wire: approach distance
work-section-hole = section: round hole of the same mean wall
work-wagener = section: strength loss after Wagener
work-coder = section: strength loss after Coder
work-smiley-fraedrich = section: strength loss after Smiley and Fraedrich
work-shell-ratio = section: thinnest wall over radius
work-modulus-left = section: modulus left in the weakest direction
work-modulus-left-steady = section: modulus left, lower bound that verdicts take
work-anchor-wood = anchor: diameter of the wood
work-anchor-force = anchor: working load
work-anchor-lever = anchor: lever from the union
work-anchor-pull = anchor: moment of the pull
work-anchor-own-weight = anchor: moment of the limb's own weight
work-anchor-stress = anchor: bending stress
work-anchor-strength = anchor: strength of the limb at its union
work-anchor-margin = anchor: margin at work
work-rescue-margin = anchor: margin in a rescue
work-slip-margin = anchor: margin in a slip
work-stem-diameter = stem: diameter over bark
work-stem-wood = stem: diameter of the wood
work-stem-length-above = stem: length above the section
work-stem-mass = stem: mass above the section
work-stem-own-moment = stem: moment of its own weight
work-stem-climber-moment = stem: moment of the climber
work-stem-modulus = stem: section modulus left
work-stem-stress = stem: bending stress
work-stem-margin = stem: margin
work-structure = factor of the structure
work-finding-factor = factor of a finding
work-score = score

## Pages and offers

# Pages.
page-book = Field book
page-book-lead = No properties yet. Add the one you stand on: a name is ready, and everything else can wait. Or bring one in from a file.
page-site-of-day = Property of { $day }
page-nothing-found = Nothing fits “{ $search }”. Shorten it, or clear the search to see all.
page-away-km = { $far } km away
page-away-mi = { $far } mi away
page-here = here
page-backup = Last backup
page-never-backed-up = none yet
page-backup-why = A copy on this phone helps when the book is damaged. When the phone is lost, only a pack on another phone or at a desk helps.
page-backups = Copies kept
page-backups-why = If this book is damaged, the latest sound copy takes its place by itself, and what was entered after it is read back as far as it can be. Nothing is deleted.
page-damage = Damage
page-damage-kept = repaired on { $day }; the damaged files are kept
page-settings = Settings
page-left-hand = left
page-right-hand = right
page-people = People
page-people-count = { $count ->
    [0] nobody yet
    [one] one person
   *[other] { $count } people
}
page-people-lead = Nobody yet. Add whoever climbs or stands ready: who may climb follows from what was signed off.
page-training-next = { $done } of { $of } skills confirmed · next: { $next }
page-training-all = all { $of } skills confirmed
page-skill-next = not confirmed yet: this one comes next
page-skill-later = not confirmed; others come first
page-knots-known = every knot that a climber needs is confirmed, below
page-knots-missing = still to confirm, below: { $knots }
page-knots-lead = A knot is known when it is tied, dressed, set and loaded, low to the ground, without a fault. Under { $aim } is an aim, and is never required.
page-knot-needed = not confirmed yet; a climber needs it
page-knot-later = not confirmed
page-tied-in = tied in { $time }
page-not-yet = begins on that day
page-sign-off-lapsed = { $skill }: lapsed, it held until { $day }
page-sign-off-lapses = { $skill }: lapses after { $day }
page-sign-offs-lapsed = { $count ->
    [one] one sign-off has lapsed
   *[other] { $count } sign-offs have lapsed
}
page-sign-offs-lapse = { $count ->
    [one] one sign-off lapses within 30 days
   *[other] { $count } sign-offs lapse within 30 days
}
page-holds-until = until { $day }
page-ended-on = ended on { $day }
page-climbs-lead = Every climb in training is logged: low before high, and never alone.
page-climb-at = { $day } · { $place }
page-climbed-with = with { $who }
page-above-limit = above the height limit
page-gear = Gear
page-gear-lead = No gear yet. Enter what carries people first: a piece without a recorded check is not used.
page-gear-barred = { $count ->
    [0] All in order
    [one] One piece must not be used
   *[other] { $count } pieces must not be used
}
page-gear-out-of-use = Out of use
page-gear-not-to-be-used = Not to be used
page-gear-in-order = In order
page-bring-back-first = It is out of use. Bring it back first.
page-codebook = Codebook
page-codebook-lead = The names are the crew’s own; what a code means for the judgment stays when it is renamed. The stops of the method hold whatever stands here.
page-codes-count = { $count ->
    [one] one code
   *[other] { $count } codes
}
page-code-starter = ships with the app
page-code-own = the crew’s own
page-code-means = means: { $kind }
page-code-stops = bars climbing from grade { $grade }
page-code-is-first = It is the first already.
page-code-is-last = It is the last already.
page-grade-without-sentence = no sentence yet: this grade cannot be chosen
page-rules = Rules
page-rules-lead = Published minima stay as they are. House values are the crew’s to change, within their range and by name. Local codes come first.
page-rules-changed = { $count ->
    [0] as it ships
    [one] one value changed by the crew
   *[other] { $count } values changed by the crew
}
page-rule-range = from { $range }
page-rule-stays = stays as published
page-rule-ships = ships as { $value }
rule-group-measure = Readings
rule-group-check = How long a full check holds
rule-group-wood = Wood
rule-group-load = Loads
rule-group-stem = Stem
rule-group-margin = Margins
rule-group-test = Load test
rule-group-stop = Stops
rule-group-cap = Limits of the verdict
rule-group-finding = Findings
rule-group-score = Score
rule-group-zone = Drop zone and keep-out
rule-group-wire = Wires
rule-group-heat = Heat
rule-group-gear = Gear
rule-group-cost = Time that a reading costs
rule-row-measure-breast_height_m = Breast height: where the girth is taken, on the uphill side
rule-row-measure-height-tangent_cv = Error of a height by two angles and a level distance
rule-row-measure-height-percent_cv = Error of a height by two percent readings and a level distance
rule-row-measure-height-sine_cv = Error of a height by two angles and two slope distances
rule-row-measure-height-two_positions_cv = Error of a height from two positions
rule-row-measure-height-stick_cv = Error of a height by the stick method
rule-row-measure-height-tape_cv = Error of a height by tape or pole along the stem
rule-row-measure-height-by_eye_cv = Error of a height by eye
rule-row-measure-height-taken_over_cv = Error of a height taken over from another inventory
rule-row-measure-sight-tape_cv = Error of the distance to a tree by a level tape
rule-row-measure-sight-paces_cv = Error of the distance to a tree in paces
rule-row-measure-sight-angle_deg = Error of the angle to top or base, held by hand
rule-row-measure-girth-tape_cv = Error of a girth by tape
rule-row-measure-girth-diameter_cv = Error of a girth worked out from a diameter
rule-row-measure-girth-by_eye_cv = Error of a girth by eye
rule-row-measure-girth-taken_over_cv = Error of a girth taken over from another inventory
rule-row-measure-lean-by_eye_deg = Error of a lean by eye; upright by eye is 0 with this error
rule-row-measure-lean-two_sides_deg = Error of a lean read from two sides
rule-row-measure-lean-one_side_deg = Error of a lean read from one side
rule-row-measure-lean-taken_over_deg = Error of a lean taken over from another inventory
rule-row-measure-declination_unknown_deg = Error of a compass bearing whose declination nobody knows
rule-row-measure-crown-paces_m = Error of a crown radius in paces
rule-row-measure-anchor-height_cv = Error of the height of an anchor
rule-row-measure-anchor-tape_aloft_cv = Error of an anchor’s diameter by tape aloft
rule-row-measure-anchor-known_size_cv = Error of an anchor’s diameter beside something of known size
rule-row-measure-anchor-scaled_photo_cv = Error of an anchor’s diameter on a scaled photo
rule-row-measure-anchor-by_eye_cv = Error of an anchor’s diameter by eye
rule-row-measure-limb_angle_deg = Error of a limb’s angle read from the ground
rule-row-measure-limb_length_cv = Error of a limb’s length
rule-row-measure-shell-drill_cm = Error of a wall read with a drill
rule-row-measure-shell-core_cm = Error of a wall read on a core
rule-row-measure-shell-probe_cm = Error of a wall read with a rod in the cavity
rule-row-measure-shell-picture_cm = Error of a wall read on a section picture
rule-row-measure-shell-one_reading_spread = One reading: how far the wall elsewhere may lie from it
rule-row-measure-shell-two_readings_spread = Two readings: how far the wall between may lie from them
rule-row-measure-bark_cv = Error of bark taken from the species instead of a reading
rule-row-measure-mallet-sound_low = Sound under the mallet: thinnest wall over radius
rule-row-measure-mallet-sound_high = Sound under the mallet: thickest wall over radius
rule-row-measure-mallet-dull_low = Dull under the mallet: thinnest wall over radius
rule-row-measure-mallet-dull_high = Dull under the mallet: thickest wall over radius
rule-row-measure-mallet-hollow_low = Hollow under the mallet: thinnest wall over radius
rule-row-measure-mallet-hollow_high = Hollow under the mallet: thickest wall over radius
rule-row-measure-position-outlier_mads = A fix this many usual deviations off the middle is left out
rule-row-measure-position-tap_mm = A finger on the plan is this far off on the screen
rule-row-measure-position-plan_m = What the plan shows is known this well
rule-row-measure-height_check_spreads = A height this many spreads off the usual one is asked about
rule-row-check-carries_days = How long a full check carries on when the parts that change are looked at anew
rule-row-wood-confirmed_cv = Spread of a strength read in a published table
rule-row-wood-memory_cv = Spread of a strength from memory
rule-row-wood-general_cv = Spread where only the general function of density is left
rule-row-wood-density_cv = Spread of a green density from a table
rule-row-wood-limb_factor_low = Knots and grain of real limbs: weakest
rule-row-wood-limb_factor_high = Knots and grain of real limbs: strongest
rule-row-wood-included_bark_low = Strength left with included bark, lowest
rule-row-wood-included_bark_high = Strength left with included bark, highest
rule-row-wood-aspect_full_at = Limb over parent from which a codominant union counts as weakest
rule-row-wood-aspect_none_at = Limb over parent up to which a union counts as a branch
rule-row-load-climber_kg = Climber with gear where no mass is recorded
rule-row-load-climber_se_kg = Error of that mass
rule-row-load-named_climber_cv = Error of a recorded mass with gear
rule-row-load-work_factor_low = Dynamic factor of work aloft, gentlest
rule-row-load-work_factor_high = Dynamic factor of work aloft, roughest
rule-row-load-pull_stray_deg = How far the pull on an anchor may stray from the vertical
rule-row-load-lever_extra_cm = Least distance of the line from the union, beyond half the diameter
rule-row-load-limb_weight_from_deg = A limb flatter than this also carries its own weight
rule-row-load-limb_volume_factor = Volume of a limb over that of a cylinder
rule-row-load-limb_branches_share = Added to a limb’s mass for its branches
rule-row-load-limb_centre_share = Center of a limb’s mass, as a share of its length
rule-row-load-rescue_kg = Casualty and rescuer with gear on one system
rule-row-load-rescue_factor = Dynamic factor of a rescue
rule-row-load-slip_m = Fall of a slip with slack
rule-row-load-slip_stretch_low_m = Stretch of the line under the climber, short line
rule-row-load-slip_stretch_high_m = Stretch of the line under the climber, long line
rule-row-stem-form_factor_low = Stem volume over that of a cylinder, slenderest
rule-row-stem-form_factor_high = Stem volume over that of a cylinder, fullest
rule-row-stem-branch_share_low = Mass of branches as a share of the stem’s, lightest crown
rule-row-stem-branch_share_high = Mass of branches as a share of the stem’s, heaviest crown
rule-row-stem-centre_share = Center of mass, as a share of the stem’s length
rule-row-stem-centre_se = Error of that share
rule-row-stem-taper_exponent = How a stem tapers: power of the length left above
rule-row-stem-taper_cv = Error of a diameter worked out by taper
rule-row-stem-sections_sampled = At most this many of the weakest sections are sampled
rule-row-stem-rim_points = Points on the rim at which a section’s stress is taken
rule-row-margin-stop_at = A margin of the anchor this low bars climbing
rule-row-margin-full_at = A margin this high takes no points
rule-row-margin-rescue_limits_below = Rescue margin below which the rescuer needs an own anchor
rule-row-margin-rescue_bars_below = Rescue margin below which nobody climbs
rule-row-margin-slip_limits_below = Slip margin below which no slack is allowed
rule-row-margin-modulus_full_pct = Strength of a section left that takes no points
rule-row-margin-modulus_none_pct = Strength of a section left at which structure counts nothing
rule-row-test-least_samples = Fewer samples than this that agree with a test that held: test and readings disagree
rule-row-stop-strength_loss_pct = Strength loss that bars climbing
rule-row-stop-wind_force = Wind that ends climbing and felling
rule-row-stop-thunder_min = Wait this long after the last thunder
rule-row-stop-thunder_flash_s = From flash to thunder at or under this: take shelter
rule-row-stop-rescue_height_m = Above this height somebody trained in aerial rescue stands ready
rule-row-stop-roots_years = Roots cut within this many years bar climbing until somebody clears them by name
rule-row-stop-root_radius_ratio = Critical root radius over stem diameter
rule-row-stop-root_radius_sensitive_ratio = The same for old trees and sensitive kinds
rule-row-stop-ash_dieback_pct = Ash with more of its crown lost than this
rule-row-stop-anchor_cm = Smallest anchor
rule-row-stop-anchor_brittle_cm = Smallest anchor in brittle kinds
rule-row-cap-shell_ratio = Sound wall over radius below this: second opinion
rule-row-cap-wagener_pct = Strength loss after Wagener from here: second opinion
rule-row-cap-smiley_fraedrich_pct = Strength loss after Smiley and Fraedrich from here: second opinion
rule-row-cap-opening_deg = Opening wider than this: second opinion
rule-row-cap-aspect_included = Included bark with limb over parent above this: limited
rule-row-cap-wind_caution_force = Wind that limits climbing
rule-row-finding-grade_1 = Factor of a grade 1 on the route or above it
rule-row-finding-grade_2 = Factor of a grade 2 on the route or above it
rule-row-finding-grade_3 = Factor of a grade 3 on the route or above it
rule-row-finding-near_m = How near the route a finding counts more
rule-row-finding-near_power = Power of a factor near the route
rule-row-finding-far_power = Power of a factor elsewhere
rule-row-finding-others_power = In one part the worst counts in full, the others by this power
rule-row-score-hidden_ground = What the ground hides, so that nobody reads 100
rule-row-score-hidden_ground_tested = The same after a load test held
rule-row-score-no_stop_from = Lower end of the score from which no stop was found
rule-row-score-limited_from = Lower end of the score from which climbing within limits is left
rule-row-score-limit_named_from = A cause that costs this much is named as a limit
rule-row-score-sensitivity_bins = Classes for finding the next best reading
rule-row-zone-fell-everyone_lengths = Felling: tree lengths that everyone but the cutter keeps off
rule-row-zone-fell-crew_lengths = Felling: tree lengths for crew with a task
rule-row-zone-conflict_lengths = Tree lengths between a tree being felled and other work
rule-row-zone-removal_m = Taking down from the crown: distance from the drip line
rule-row-zone-beyond_drop_m = People without a task: beyond the drop zone
rule-row-zone-prune_barrier_m = Pruning: barrier beyond the drip line
rule-row-zone-piece_lengths = Lengths of the piece being cut
rule-row-zone-piece_speed_ms = Outward speed of a piece pushed off by hand
rule-row-zone-piece_hold_m = Distance of a piece from the stem when it is let go
rule-row-zone-swing_pieces = A rigged piece swings this many of its lengths beyond the crown
rule-row-zone-slope_share = Downhill: the radius grows by this share of the slope
rule-row-zone-slope_most = Slope beyond which the radius grows no further
rule-row-zone-height_end_pct = End of the height’s range at which the stem length is taken
rule-row-zone-outline_points = Corners of an outline
rule-row-wire-approach_m = Approach distance for unqualified people, up to 50 kV
rule-row-wire-approach_step_m = Added for every 10 kV or part of it over 50 kV
rule-row-wire-approach_step_kv = The step in voltage
rule-row-wire-approach_from_kv = The voltage up to which the first distance holds
rule-row-wire-consult_m = Within this distance the owner of a line is asked first
rule-row-wire-caution_lengths = Within this many approach distances a conductor limits the climb
rule-row-heat-caution_f = Heat index in °F: take care
rule-row-heat-extreme_caution_f = Heat index in °F: take great care
rule-row-heat-danger_f = Heat index in °F: danger
rule-row-heat-extreme_danger_f = Heat index in °F: extreme danger
rule-row-gear-line_kn = Least strength of a climbing line or lanyard
rule-row-gear-connector_kn = Least strength of a connector
rule-row-gear-friction_saver_kn = Least strength of a friction saver
rule-row-gear-line_least_mm = Thinnest climbing line
rule-row-gear-line_most_mm = Thickest climbing line
rule-row-gear-check_months = Thorough check of what carries a person
rule-row-gear-throw_routine_m = Height of a throw line as routine
rule-row-gear-throw_good_hand_m = Height of a throw line for a good hand
rule-row-gear-rope_reserve_m = Line left on the ground below a climber at the anchor
rule-row-gear-knot_aim_s = Aim for tying a knot; noted, never required
rule-row-cost-height_s = Height by two slope distances and two angles
rule-row-cost-girth_s = Girth by tape
rule-row-cost-lean_s = Lean from two sides
rule-row-cost-anchor_photo_s = Anchor’s diameter on a scaled photo
rule-row-cost-anchor_tape_s = Anchor’s diameter by tape aloft
rule-row-cost-limb_s = A limb’s angle and length
rule-row-cost-section_drill_s = Three more drill readings of a section
rule-row-cost-mallet_s = Mallet clock around the stem
rule-row-cost-load_test_s = Load test of the anchor
rule-row-cost-species_s = Species named from leaf, bud or bark
rule-row-cost-climber_s = Climber weighed with gear
rule-row-cost-look_s = A part of the walk-round looked at again
page-first-use = first used { $day }
page-used-by = used by { $name }
page-site-lead = No trees yet. Begin at the gate: add the first tree where you stand. The rescue plan and today’s visit come before anybody climbs.
page-today = Today
page-no-plan = No plan yet: give a tree a position, and the plan appears.
page-visit = Visit
page-visit-none = none begun today
page-visit-why = Weather, who may climb and every look at a tree belong to the visit of the day.
page-missing = not known yet
page-tree-count = { $count ->
    [0] no trees yet
    [one] one tree
   *[other] { $count } trees
}
page-genus = { $genus }, any species
page-client-and-trees = { $client } · { $trees }
page-trainee = trainee
page-up-to = up to { $height }
page-signed-off = by { $by }, { $day }
page-out-of-use = out of use: { $why }
page-shock-load = shock load on { $day }; to be checked
page-undo-gear = Undo the last change of gear
page-next-check = next check { $day }
page-last-check = last check { $day }
page-corners = { $count ->
    [one] one corner
   *[other] { $count } corners
}
page-occupancy-missing = how often somebody is there is not known
page-target-from-file = From the map file, { $number }
page-voltage-missing = voltage unknown
page-at-hour = { $what } at { $hour }
page-thunder-ago = heard { $ago } ago
page-no-thunder = listened, none heard
page-ice-yes = ice or snow
page-ice-no = no ice
page-wet-bark-yes = wet bark
page-wet-bark-no = dry bark
page-yes = yes
page-no = no
page-dug-yes = dug, filled or roots cut
page-dug-no = not dug
page-dead-since = dead since { $day }
page-toward = { $value } toward the { $side }
page-keep-out = Nobody within
page-apart = Not at the same time as
page-work-done-nothing-closed = the work is done: nothing to close
page-apart-more = and { $count } more. The page of each tree names those that it may not be worked on together with.
page-not-looked-at = not looked at
page-look-hidden = { $look }, hidden by { $hidden }
page-no-date = no date
page-nothing-to-compare = There is no earlier visit to compare with.
page-days-compared = { $then } and { $now }
page-verdict = Verdict
page-score-label = Score
page-judged-signed = as it was signed at the time
page-judged-anew = worked out anew from what was known at the time
page-verdict-lower = Worse: graver than before.
page-verdict-better = Better: less grave than before.
page-unchanged = The same as before.
page-not-judged-then = Not to be compared: it was not judged then.
page-not-judged-now = Not to be compared: it is not judged now.
page-intervals-overlap = No change that the score can tell: the ranges overlap.
page-score-higher = Higher: the ranges lie apart.
page-score-lower = Lower: the ranges lie apart.
page-change-read-once = Not to be compared: read at one of the two looks only.
page-change-unread = Read at neither look.
page-finding-unchanged = The same as before
page-change-larger = Larger: { $by } ({ $low } to { $high }), more than the readings can be off.
page-change-smaller = Smaller: { $by } ({ $low } to { $high }), more than the readings can be off.
page-change-within = No change that the readings can tell: { $by } ({ $low } to { $high }).
page-thinnest-wall = Thinnest wall at { $height }
page-finding-new = New
page-finding-worse = Worse than before
page-finding-better = Better than before
page-finding-cleared = Gone: cleared
page-finding-not-found = Gone: looked for, not found again
page-finding-not-looked-at = Not looked at again
page-zones-described = The ground around tree { $tag }: where something may land, and where nobody stands ({ $way })
page-base-mallet = Mallet at the base
page-no-grade = no grade yet
page-finding-here = Finding here
page-dead-tree = dead tree
page-dead-tree-help = No live leaves or buds anywhere; nobody knows how long it has been dead.
page-size-up-to = up to { $height }
page-size-over = over { $height }
page-wall-at = { $wall } of sound wall on the { $side } side
page-modulus-left = weakest: { $low } to { $high } left
page-sounded = { $count ->
    [one] sounded at one point
   *[other] sounded at { $count } points
}
page-section-at = Section at { $height }
page-section-on = Section at { $height } · tree { $tag }
page-weakest = Weakest toward the { $side } ({ $bearing }): about { $left } of the bending strength left, { $low } to { $high } by the readings so far
page-opening-wide = opening { $width }
page-weakest-open = Girth and a reading of the wall, or the mallet, show where it is weakest.
page-anchor-judged = the judgment rests on it
page-to-close-while = { $count ->
    [one] while tree { $trees } is worked on, up to { $distance } from it
   *[other] while trees { $trees } are worked on, up to { $distance } from them
}
page-limbs = { $count ->
    [one] one limb to reach
   *[other] { $count } limbs to reach
}
page-no-limbs = No limb is named yet.
page-plan-on = Climb on anchor { $anchor }
page-longest-piece = longest piece { $piece }
page-finding-on = { $finding } · tree { $tag }
page-anchor-on = Anchor { $anchor } · tree { $tag }
page-margin = { $central } ({ $low } to { $high })
page-score = { $points } of 100, from { $low } to { $high }
page-score-one = { $points } of 100
page-score-range = The readings in doubt were drawn anew a thousand times: 8 of 10 times the score lies in this range. The verdict rests on its lower end.
page-score-one-value = The readings in doubt were drawn anew a thousand times, and 8 of 10 times the score came out the same. It is not exact for that: what nobody looked at is not in it.
page-score-one-value-full = The readings in doubt were drawn anew a thousand times, and 8 of 10 times the score came out the same: anchor and stem carry so much that more strength gives no more points. It is not exact for that: what nobody looked at is not in it.
page-score-what = The score weighs strength, findings and what could not be seen, by the rule set of the house. It is no grade of the tree, no likelihood, and no leave to climb.
page-points-lost = { $points } lost, by cause:
page-takes-about = Takes about { $cost }.
page-signed-by = Signed by { $by }, { $at }.
page-signed-same = It is the same now.
page-signed-changed = Changed since:
page-signed-verdict = The verdict was “{ $then }”; it is “{ $now }” now.
page-signed-ended = What was signed ended with { $day }.
page-signed-new = New: { $what }
page-signed-gone = No longer: { $what }
page-signed-values = Distances, margins or the score are others now.
page-signed-unread = What was signed is of a newer version of this app, which can show it.
page-may-climb-and-rescue = may climb here, and may stand ready as second
page-may-climb = may climb here
page-may-rescue = may not climb here, may stand ready as second
page-may-not = may not climb here
page-days = { $count } days
page-hours = { $count } hours
page-minutes = { $count ->
    [one] one minute
   *[other] { $count } minutes
}
page-add-people-first = Nobody is in the crew yet. Add people first, from the field book.
page-name-holder = Who holds this phone
page-note-permission = Permission: { $permission }
page-wire-touching = the tree touches it
page-wire-from-crown = { $distance } from the crown
page-start-visit-first = Begin today’s visit first.
page-start-inspection-first = Begin with triage or the full check.
page-look-again-first = Say first how it was seen.
page-add-line-first = Enter the overhead line first.
page-add-target-first = Enter the target first.
page-add-anchor-first = Enter an anchor first.
page-plan-climb-first = There is no climb plan yet. Plan the climb on the page of the tree; then say here where the line landed.
page-add-tree-first = Enter a tree first.
page-standing-value = { $tree } { $what }: { $value } ({ $by })
page-removed-but-changed = One { $noun } was removed by { $removed } and changed by { $changed }.
rule-set-us = United States
language-english = English
language-spanish = Español
report-for-mail = to mail: small photos
report-for-print = to print: sharp photos
unit-system-metric = meters and kilograms
unit-system-imperial = feet and pounds
theme-follow-phone = as the phone is
theme-light = light
theme-dark = dark
theme-bright-sun = for bright sun
noun-value = value
noun-record = record

# What a person is told first.
notice-repaired = This field book was damaged. A sound copy of { $day } was put in its place, and { $saved } later changes were saved. Look over what was entered since. The damaged files are kept: “{ offer-damage-write }” hands them to someone who can repair them.
notice-repaired-without-backup = This field book was damaged, and there was no sound copy. { $saved } changes were saved; the rest is missing. Nothing was deleted: “{ offer-damage-write }” hands the damaged files to someone who can repair them.
notice-upgraded = This field book was brought up to this version. A copy of the old one is kept.
notice-clock-ahead = Phone “{ $device }” has its date or time set { $lead } ahead of this one. Check the clocks of both.
notice-photos-missing = { $count ->
    [one] One photo that the records name is not on this phone. Ask for a new pack from the phone that took it.
   *[other] { $count } photos that the records name are not on this phone. Ask for a new pack from the phone that took them.
}
notice-standing = { $count ->
    [one] One value was entered in two ways. Until somebody settles it, the lower verdict counts.
   *[other] { $count } values were entered in two ways. Until somebody settles them, the lower verdict counts.
}
notice-removed-but-changed = { $count ->
    [one] One of you removed something that another changed without knowing. Say whether it stays.
   *[other] { $count } things were removed by one of you and changed by another without knowing. Say of each whether it stays.
}
notice-unread = { $count ->
    [one] One value was entered by a newer version and cannot be read here. It is kept, and counts as a gap. Update this app.
   *[other] { $count } values were entered by a newer version and cannot be read here. They are kept, and count as gaps. Update this app.
}
gap-standing-values = Entered in two ways: { $count } times. Settle which one holds.
gap-unread-value = Entered by a newer version and not to be read here: { $noun }. Update this app.

# What is still missing while a measure is taken: `rehearse.<input>`.
rehearse-height-distance = How far away is the tree? Tape or pace it, level.
rehearse-height-up = Aim at the top.
rehearse-height-down = Aim at the base.
rehearse-height-near = Aim at the top from the near spot.
rehearse-height-far = Step straight back, and aim at the top again.
rehearse-height-apart = How far did you step back?
rehearse-lean-along = Hold the phone along the stem, from the first side.
rehearse-lean-across = Go a quarter around the tree, and hold it along the stem again.
rehearse-lean-along_toward = Which way did the first reading lean?
rehearse-tree-girth = Put the tape around the stem.
rehearse-tree-lean = Upright, or how far does it lean?
rehearse-tree-position = Stand at the stem and wait for a position.

# What was done: `done.<verb>`.
done-add = Added.
done-change = Changed.
done-remove = Removed. Undo brings it back.
done-undo = Taken back.
done-redo = Done again.
done-settle = Settled.
done-keep = Kept.
done-write = Written.
done-start = Begun.
done-on_sight = Barred. Undo takes it back.
done-same = Noted.
done-note = Noted.
done-record = Recorded.
done-height_by_angles = Height recorded.
done-height_from_two_positions = Height recorded.
done-lean_from_two_sides = Lean recorded.
done-lean_by_eye = Lean recorded.
done-girth = Girth recorded.
done-look = Noted.
done-measure = Measured.
done-grade = Graded.
done-clear = Cleared.
done-check = Checked.
done-put_out = Out of use.
done-bring_back = Back in use.
done-retire = Retired. It can be brought back.
done-move_up = Moved up.
done-move_down = Moved down.
done-reset = As it ships.
done-set = Set.
done-sound = Recorded.
done-read = Recorded.
done-test = Recorded.
done-add_limb = Added.
done-find = Added.
done-land = The plan goes over this anchor now.
done-shock = Out of use. Undo brings it back.
done-finish = Done.
done-leave = Noted for the client.
done-forget_limbs = Limbs taken out.
done-sign = Signed.
done-import = Brought in.
done-ground = { $count ->
    [one] One target was brought in. Say what it is and how often somebody is there.
   *[other] { $count } targets were brought in. Say what they are and how often somebody is there.
}
done-ground-with-edge = { $count ->
    [0] The property edge was brought in.
    [one] The property edge and one target were brought in.
   *[other] The property edge and { $count } targets were brought in.
}
done-backup = Copied.

# A pack that was written, and one that was taken in.
pack-written = Packed: { $changes ->
    [one] one entry
   *[other] { $changes } entries
}, { $photos ->
    [0] no photos
    [one] one photo
   *[other] { $photos } photos
}. Send the file to the other phone and take it in there.
pack-photos-left-out = { $count ->
    [one] One photo is not in it: it is missing or damaged here, or there was no room.
   *[other] { $count } photos are not in it: they are missing or damaged here, or there was no room.
}
pack-taken = Taken in: { $changes ->
    [0] no new entries
    [one] one new entry
   *[other] { $changes } new entries
}, { $photos ->
    [0] no new photos
    [one] one new photo
   *[other] { $photos } new photos
}.
pack-nothing-new = Nothing new: everything in this pack was here already.

# Headings of the lists of a page: `list.<page>.<list>`, else `list.<list>`; and, while a list holds
# nothing, what it is for and what to do first: `….empty`.
list-notices = To know first
list-unsettled = To settle
list-stops = What bars climbing
list-gaps = Still to check
list-cautions = Holds always
list-ways = More pages
list-offers = What can be done
list-book-lines = This phone
list-book-sites = Properties
list-book-health = Health of the field book
list-settings-lines = Settings as they are
list-codebook-codes = Codes in use
list-codebook-codes-empty = No code is in use. Bring one back or add one: every finding needs a code.
list-codebook-retired = Retired codes
list-rule_set-groups = Rules by subject
list-people-people = Crew
list-person-lines = About this person
list-person-skills = Skills, in the order of training
list-person-knots = Knots, by what they are for
list-person-climbs = Climbs
list-person-climbs-empty = No climb is logged yet. Log each one right after it, with the person who stayed within reach.
list-gear-pieces = Gear, what must not be used first
list-site-visit = Today’s visit
list-site-lines = The property
list-site-trees = Trees in walking order
list-site-to_close = What to close, move or guard
list-site-to_close-empty = Nothing yet. It follows from the way of working and the position of each tree, and from the targets.
list-site-conflicts = Not at the same time
list-site-targets = Targets
list-site-targets-empty = No target yet. Add what could be hit: houses, roads, paths, gardens. What to close and whom to move follows from them.
list-site-overhead_lines = Overhead lines
list-site-overhead_lines-empty = No overhead line is entered. Look for wires from a distance first; enter each with its voltage, or that it is unknown.
list-site-permissions = Permissions
list-site-permissions-empty = Nothing is asked yet. Ask for the owner’s consent, protected trees, nests and bats before work begins.
list-tree-doors = Where to begin
list-tree-again = To look at anew today
list-tree-lines = What is known of this tree
list-tree-ways_of_working = Way of working
list-tree-wires = Distances to wires
list-tree-walk_round = Walk-round
list-tree-findings = Findings
list-tree-findings-empty = No finding yet. Add each defect where it is seen. A part that nobody looked at is not sound: it stays to be checked.
list-tree-sections = Stem sections
list-tree-sections-empty = No section yet. Measure one where the stem sounds dull or hollow, or has an opening.
list-tree-anchors = Anchors
list-tree-anchors-empty = No anchor yet. Enter the one to tie into: its height, its diameter and how that was read.
list-tree-plans = Climb plans
list-tree-plans-empty = No climb plan yet. With an anchor entered, choose rope system, climber and second person.
list-tree-photos-empty = No photo yet. Take one of the whole tree, and one of each finding.
list-tree-photos = Photos
list-tree-work = Work
list-tree-work-empty = No work yet. Say what is to be done: piece sizes decide how far away people stay.
list-tree-notes = Notes
list-tree-risks = Risk for the client
list-tree-risks-empty = Not rated. A named assessor may enter it, for a stated time; it never follows from the score.
list-tree-history = Every look at this tree
list-tree-history-empty = Nobody has looked at this tree yet. Begin with a stop on sight, triage or the full check.
list-finding-lines = Where it is
list-finding-grades = Grade
list-finding-grades-empty = This code has no grades to choose from. Write their sentences in the codebook.
list-finding-photos = Photos of it
list-finding-photos-empty = No photo of it yet. One from nearby and one that shows where it is help whoever looks next.
list-stem_section-lines = Size of the section
list-stem_section-clock = Mallet clock
list-stem_section-readings = Readings of the sound wall
list-stem_section-readings-empty = No reading yet. Read the wall from several sides, first where it sounds worst.
list-anchor-lines = Readings
list-anchor-margins = Margins
list-anchor-margins-empty = No margin is worked out: the judgment does not rest on this anchor, or a reading is missing.
list-anchor-reasons = What the judgment holds about this anchor
list-aloft-plans = Climb plans
list-aloft-plans-empty = No climb plan yet. Enter one on the page of the tree before anybody leaves the ground.
list-aloft-found = Found aloft
list-aloft-found-empty = Nothing yet. Note what is found at once, with its grade: it may stop the climb.
list-aloft-near_misses = Near misses
list-aloft-near_misses-empty = None noted. Only the crew reads them, and they help whoever climbs next.
list-aloft-hangers = Hangers still up
list-aloft-gear = Gear for this climb
list-aloft-gear-empty = No gear is entered as in use. Enter the crew’s gear, so that a piece loaded by a shock can be put out of use.
list-aloft-other_gear = Other gear
page-other-gear = { $count ->
    [one] One other piece of gear
   *[other] { $count } other pieces of gear
}
list-aloft-work = Work
list-aloft-work-empty = No work is entered for this tree. Enter it on the page of the tree, to say afterwards what was not done.
list-judgement-refer_caps = Another way, or a second opinion
list-judgement-limits = Only within these limits
list-judgement-remarks = Also to know
list-judgement-score = Score, with the range that 8 of 10 would fall in
list-judgement-score-empty = No score while something is missing or bars the climb.
list-judgement-next_measurement = Next best measurement
list-judgement-signed = Signature
list-judgement-signed-empty = Nobody has signed yet. Signing keeps this judgment as it is now, with name and hour.
list-judgement-climbers = Who may climb
list-judgement-climbers-empty = Nobody is in the crew yet. Add people and sign off their skills: who may climb follows from them.
list-judgement-lines = Rope, wires and the next look
list-judgement-zones = Drop zone and keep-out
list-judgement-zones-empty = No zone yet. It follows from height, lean, crown and the way of working.
list-judgement-margins = Margins
list-judgement-margins-empty = No margin yet. It needs species, girth, and an anchor with its diameter.
list-judgement-working = The working, line by line
list-compare-lines = Then and now
list-compare-findings = Findings, then and now
list-hand_over-lines = State of the trees
list-hand_over-cautions = Printed on every paper

# The words of the shell itself: `shell.<name>`. Numbers are put in by the shell.
shell-opening = Opening the field book
shell-go_up = Up
shell-go_book = Field book
shell-go_rules = Rules
shell-go_hand_over = Hand over
shell-go_aloft = On the rope and afterwards
shell-go_compare = Beside the last visit
shell-go_on = Go on
shell-close = Close
shell-keep = Save
shell-clear = Clear
shell-draft_kept = What was entered before is still here. It is not saved yet.
shell-start_anew = Start anew
shell-answer_yes = Yes
shell-answer_no = No
shell-less = Less
shell-more = More
shell-larger = Larger
shell-smaller = Smaller
shell-needed = needed
shell-chosen = chosen
shell-search = Search
shell-search_list = Search the list
shell-take_photo = Take photo
shell-choose_photo = Choose a picture
shell-photo_ready = The photo is ready to be saved.
shell-camera_wanted = The camera takes photos and aims at the base and the top of a tree. Nothing leaves this phone.
shell-camera_refused = This app may not use the camera. Allow it in the system settings, or choose a picture.
shell-choose_file = Choose a file
shell-not_readable = That could not be read. Choose another file.
shell-too_large = That file is too large for this phone. Choose another.
shell-take_position = Take my position
shell-stop_position = Stop here
shell-position_wanted = The position of this phone is used to place trees and targets. It stays on this phone.
shell-position_refused = This phone may not read its position. Allow it in the system settings, or go on without.
shell-position_off = Position is switched off on this phone. Switch it on, or go on without.
shell-position_waiting = Waiting for a position under the open sky
shell-hold_still = Hold still
shell-take_bearing = Point the phone and take the bearing
shell-aim = Aim with the camera
shell-take_sight = Aim along the phone and take the angle
shell-take_lean = Lay the upright line along the stem and take the angle
shell-take_tilt = Lay the long edge of the phone along it and take the angle
shell-degrees = { $degrees }°
shell-sight_picture = Live picture of the camera with a crosshair
shell-sight_refused = This app may not use the camera. Aim along the edge of the phone, or type the angle.
shell-sight_off = The camera is switched off, or another app holds it. Aim along the edge of the phone, or type the angle.
shell-sight_lacking = This phone has no camera at its back. Aim along the edge of the phone, or type the angle.
shell-no_camera_app = No camera app answers on this phone. Choose a picture instead.
shell-no_room = This phone is full. Make room, then try again. Nothing was lost.
shell-open_settings = Open the settings
shell-not_handed = That file was not handed over by another app, so it is not read.
shell-handed_title = Take this file into the field book?
shell-handed_what = Another app handed it over. What it holds is checked first. Take it only if you know who it is from.
shell-handed_take = Take it in
shell-handed_leave = Leave it
shell-no_sensor = This phone has no sensor for that. Type it instead.
shell-add_corner = Add a corner where I stand
shell-tap_plan = Tap it on the plan
shell-close_plan = Close the plan
shell-plan_wanted = Tap the place on the plan. The larger the plan, the better the place is known.
shell-drop_corner = Take the last corner back
shell-corners = Corners: { $count }
shell-corners_least = At least { $count }
shell-pick_day = Choose the day
shell-busy = One moment, still at work.
shell-working = Working: step { $done } of { $of }
shell-stop_work = Stop
shell-written = Written.
shell-open_file = Open
shell-share = Share
shell-no_app = No app on this phone takes this.
shell-photo = Photo
shell-drawing = Drawing
shell-photo_large = Show it large
shell-refused_marked = Not saved yet. To put right: { $count }
shell-legend = What the signs mean

# What a button says: `offer.<id of the command>`.
offer-settings-change = Change the settings
offer-edit-undo = Undo
offer-edit-redo = Redo
edit-undo-what = Undo: { $what }
edit-redo-what = Redo: { $what }
edit-value-of-tree = { $what } of tree { $name }
edit-value-of = { $what } of { $name }
edit-step-at-tree = { $what }, tree { $name }
edit-step-at = { $what }, { $name }
edit-step-value-settle = Which value holds
edit-step-removed-keep = Keep what was removed
edit-step-removed-remove = Remove anew
edit-step-code-move_up = Order of the codes
edit-step-code-move_down = Order of the codes
edit-step-finding-grade = Grade
edit-step-finding-clear = Finding cleared
edit-step-gear-check = Check of gear
edit-step-gear-shock = Shock load
edit-step-weather-note = Weather
edit-step-weather-same = Weather
edit-step-work-finish = Work done
edit-step-work-leave = Work not done
offer-value-settle = This one holds
offer-removed-keep = Keep it
offer-removed-remove = Remove it
offer-code-add = Add a code
offer-code-change = Change the code
offer-code-retire = Retire the code
offer-code-bring_back = Bring the code back
offer-code-move_up = Move up
offer-code-move_down = Move down
offer-house_value-set = Set our own value
offer-house_value-reset = Back to the shipped value
offer-person-add = Add a person
offer-person-change = Change the person
offer-person-remove = Remove the person
offer-sign_off-add = Sign off a skill
offer-sign_off-remove = Remove the sign-off
offer-climb_log-add = Log a climb
offer-climb_log-change = Change the entry
offer-climb_log-remove = Remove the entry
offer-gear-add = Add gear
offer-gear-change = Change the gear
offer-gear-check = Checked today
offer-gear-put_out = Put out of use
offer-gear-bring_back = Bring back into use
offer-gear-remove = Remove the gear
offer-site-add = Add a property
offer-site-change = Change the property
offer-site-remove = Remove the property
offer-rescue-write = Rescue plan
offer-target-add = Add a target
offer-target-change = Change the target
offer-target-remove = Remove the target
offer-ground-import = Edge and targets from a map file
offer-line-add = Add an overhead line
offer-line-change = Change the line
offer-line-remove = Remove the line
offer-permission-add = Add a permission
offer-permission-change = Change the permission
offer-permission-remove = Remove the permission
offer-visit-start = Today’s visit
offer-weather-note = Weather now
offer-weather-same = Weather as before
offer-tree-add = Add a tree
offer-tree-change = Change the tree
offer-tree-remove = Remove the tree
offer-stop-on_sight = Stop on sight
offer-triage-record = Triage
offer-full_check-start = Full check
offer-full_check-record = Measures of the full check
offer-again-look = Look again
offer-work-add = Add work
offer-work-change = Change the work
offer-work-remove = Remove the work
offer-inspection-start = Begin an inspection
offer-inspection-record = Measures
offer-inspection-height_by_angles = Height by two angles
offer-inspection-height_from_two_positions = Height from two positions
offer-inspection-lean_from_two_sides = Lean from two sides
offer-inspection-lean_by_eye = Lean by eye
offer-inspection-girth = Girth
offer-walk-look = Look at a part
offer-wire-remove = Remove the distance
offer-wire-measure = Distance to a wire
offer-inspection-remove = Remove the inspection
offer-finding-add = Add a finding
offer-finding-change = Change the finding
offer-finding-grade = Grade it
offer-finding-clear = Clear it by name
offer-finding-remove = Remove the finding
offer-section-add = Add a stem section
offer-section-change = Change the section
offer-section-sound = Sound it with the mallet
offer-section-read = Read the wall
offer-reading-remove = Remove the reading
offer-section-remove = Remove the section
offer-anchor-add = Add an anchor
offer-anchor-change = Change the anchor
offer-anchor-test = Load test
offer-anchor-remove = Remove the anchor
offer-climb-add = Plan the climb
offer-climb-change = Change the plan
offer-climb-add_limb = Add a limb to reach
offer-climb-forget_limbs = Take the limbs out
offer-climb-remove = Remove the plan
offer-aloft-find = Found aloft
offer-aloft-land = The line landed elsewhere
offer-near_miss-note = Near miss
offer-near_miss-remove = Remove the near miss
offer-gear-shock = Took a shock load: out of use
offer-work-finish = Done
offer-work-leave = Not done, and why
offer-next_look-set = Next look
offer-photo-add = Add a photo
offer-photo-change = Change the photo
offer-photo-remove = Remove the photo
offer-risk-add = Enter a risk rating
offer-risk-remove = Remove the rating
offer-judgement-sign = Sign this judgment
offer-site_summary-write = Write the summary
offer-climb_sheets-write = Write the climb sheets
offer-table-write = Write the trees as a table (CSV)
offer-geojson-write = Write the map as GeoJSON
offer-geopackage-write = Write the map as GeoPackage
offer-pack-write = Write a pack for another phone
offer-pack-read = Take in a pack from another phone
offer-site_file-import = Bring a property in from a file
offer-book-backup = Make a backup
offer-damage-write = Share the damaged files

# Labels of inputs: `input.<id of the input>`.
input-settings-language = Language
input-settings-units = Units
input-settings-theme = Colors
input-settings-text_size = Size of letters
input-settings-left_hand = For the left hand
input-code-name = Name
input-code-kind = What it means
input-code-parts = Where it can be
input-code-grade_1 = Grade 1 looks like
input-code-grade_2 = Grade 2 looks like
input-code-grade_3 = Grade 3 looks like
input-code-stops_from = Bars climbing from
input-house_value-value = Value
input-house_value-by = Decided by
input-house_value-why = Because
input-settings-person = Who holds this phone
input-person-name = Name
input-person-trainee = Trainee
input-person-mass = Mass with gear
input-person-height_limit = Height limit
input-person-throw = Throws a line up to
input-person-electrical = Near electricity
input-sign_off-skill = Skill
input-sign_off-knot = Which knot
input-sign_off-by = Confirmed by
input-sign_off-on = On
input-sign_off-until = Until
input-sign_off-seconds = Time it took
input-climb_log-on = On
input-climb_log-place = Property and tree
input-climb_log-height = Height reached
input-climb_log-system = Rope system
input-climb_log-with_whom = With whom
input-climb_log-note = Note
input-gear-name = Name or mark
input-gear-kind = What it is
input-gear-rating = Rating
input-gear-diameter = Diameter
input-gear-length = Length
input-gear-first_use = First use
input-gear-last_check = Last check
input-gear-next_check = Next check
input-gear-out_of_use = Out of use, because
input-gear-shock_loaded = Took a shock load
input-gear-double_locking = Self-closing and double-locking
input-gear-chin_strap = With chin strap
input-gear-used_by = Used by
input-site-name = Name of the property
input-site-client = Client
input-site-address = Address or directions
input-site-rule_set = Rules
input-site-outline = Property edge
input-site-note = Notes
input-rescue-meeting_point = Rescue: where to meet the ambulance
input-rescue-grid_reference = Grid reference to read out
input-rescue-signal = Phone signal
input-rescue-first_aider = First-aider
input-rescue-casualty_unit = Nearest unit for casualties
input-target-name = Name
input-target-kind = What it is
input-target-occupancy = How often somebody is there
input-target-can_be_moved = Can be moved
input-target-can_be_closed = Can be closed
input-target-neighbours = Belongs to a neighbor
input-target-form = Form on the ground
input-target-ground = Place on the ground
input-target-here = I stand at it
input-line-name = Name
input-line-kind = What it is
input-line-voltage = Voltage
input-line-voltage_between = Measured
input-line-height = Lowest wire above the ground
input-line-owner_told = Owner told on
input-line-dead_on = Confirmed dead for
input-line-way = Its way over the ground
input-permission-kind = What was asked
input-permission-answer = Answer
input-permission-on = On
input-permission-tree = For one tree
input-permission-note = Conditions
input-visit-crew = Who is there
input-visit-note = Notes
input-weather-hour = Hour
input-weather-wind_force = Wind, by its signs
input-weather-wind = Wind, measured
input-weather-no_thunder = Listened: no thunder
input-weather-thunder_ago = Last thunder, minutes ago
input-weather-ice = Ice or snow
input-weather-wet_bark = Wet bark
input-weather-light = Light
input-weather-temperature = Temperature
input-weather-humidity = Humidity
input-tree-tag = Tag
input-tree-species = Species
input-tree-position = Position
input-tree-way = Way of working
input-tree-other_access = Could it be done without climbing?
input-tree-walk_order = Place in the walk
input-tree-note = Notes
input-work-operation = Work
input-work-priority = How soon
input-work-piece_length = Longest piece
input-work-piece_mass = Heaviest piece
input-work-cut_height = Highest cut
input-work-chainsaw_aloft = Chainsaw aloft
input-work-note = In the client’s words
input-inspection-level = How closely
input-tree-life = Alive, dying or dead
input-tree-dead_since = Dead since
input-tree-beetle_killed = Killed by beetles
input-tree-dieback = Crown died back
input-tree-wires_near = Wires near
input-tree-base_sound = Base and roots look sound
input-tree-height = Height
input-tree-height_method = How the height was taken
input-tree-height_se = Height may be off by
input-tree-girth = Girth
input-tree-girth_method = How the girth was taken
input-tree-girth_at = Tape at
input-tree-bark = Bark
input-tree-lean = Lean
input-tree-lean_toward = Leans toward
input-tree-lean_method = How the lean was taken
input-tree-lean_is_new = Lean is new
input-tree-crown_radius = Crown, largest reach
input-tree-crown_base = Crown begins at
input-tree-slope = Slope of the ground
input-tree-downhill = Downhill is
input-tree-ground_dug = Ground dug or roots cut
input-tree-dug_when = When it was dug
input-tree-dug_distance = Nearest to the stem
input-tree-dug_cleared_by = Roots looked into by
input-tree-base_north = Mallet at the base, north
input-tree-base_east = Mallet at the base, east
input-tree-base_south = Mallet at the base, south
input-tree-base_west = Mallet at the base, west
input-inspection-note = Notes
input-inspection-next_look = Next look
input-height-distance = Level distance
input-height-up = Angle to the top
input-height-down = Angle to the base
input-height-distance_by = Distance by
input-height-near = Angle to the top, from the near spot
input-height-far = Angle to the top, from the far spot
input-height-apart = From spot to spot
input-lean-upright = Upright by eye
input-lean-along = Lean seen from the first side
input-lean-along_toward = Toward
input-lean-across = Lean seen a quarter turn clockwise
input-walk-part = Part
input-walk-look = Seen?
input-walk-hidden_by = Hidden by
input-wire-line = Line
input-wire-distance = Distance from the crown
input-wire-touching = The tree touches it
input-finding-code = What
input-finding-part = Where on the tree
input-finding-grade = Grade
input-finding-height = Height
input-finding-side = Side
input-finding-anchor = On the limb of anchor
input-finding-aspect_ratio = Limb to stem, ratio
input-finding-cleared_by = Cleared by
input-finding-cleared_on = Cleared on
input-finding-note = Notes
input-on_sight-what = What bars it
input-triage-size = How tall
input-section-height = Height
input-section-girth = Girth there
input-section-diameter = Diameter there
input-section-bark = Bark
input-section-opening_side = Opening, side
input-section-opening_width = Opening, width along the bark
input-section-note = Notes
input-sound-north = North
input-sound-northeast = Northeast
input-sound-east = East
input-sound-southeast = Southeast
input-sound-south = South
input-sound-southwest = Southwest
input-sound-west = West
input-sound-northwest = Northwest
input-reading-bearing = Side
input-reading-shell = Sound wall
input-reading-method = How it was read
input-reading-se = May be off by
input-reading-drill_angle = Drill off the radius
input-anchor-name = Name
input-anchor-height = Height
input-anchor-height_se = Height may be off by
input-anchor-diameter = Diameter at the union
input-anchor-diameter_read = How it was read
input-anchor-parent_diameter = Stem at the union
input-anchor-from_union = Line from the union
input-anchor-limb_angle = Limb from the vertical
input-anchor-limb_bearing = Limb points
input-anchor-limb_length = Length of the limb
input-anchor-union = Union
input-anchor-state = Wood
input-anchor-note = Notes
input-load_test-outcome = Load test
input-load_test-mass = Mass on the line
input-load_test-on = On
input-load_test-by = Watched by
input-climb-anchor = Anchor
input-climb-system = Rope system
input-climb-ascent_side = Side of the ascent
input-climb-climber = Climber
input-climb-second = Second person
input-climb-spurs = On spurs
input-climb-open_system = Open system
input-climb-stopper = Stopper knot tied
input-limb-bearing = Side
input-limb-height = Height
input-near_miss-what = What nearly happened
input-work-done = How far
input-work-why = Why
input-work-left = What is left, for the client
input-photo-file = Photo
input-photo-caption = What it shows
input-photo-finding = Finding it shows
input-site_summary-language = Language of the summary
input-site_summary-photos = What it is for
input-climb_sheets-language = Language of the sheets
input-risk-target = Target
input-risk-part = Part that could fail
input-risk-assessor = Assessed by
input-risk-level = Level
input-risk-time_frame = Holds for
input-risk-failure = Likelihood of failure
input-risk-impact = Likelihood of impact
input-risk-consequences = Consequences

# Why something other than a number is asked: `<id of the input>.why`.
settings-person-why = Every change carries the name of who made it.
settings-theme-why = The colors for bright sun have the strongest contrast.
settings-left_hand-why = Buttons then lie under the left thumb.
code-kind-why = The judgment goes by what a code means, not by its name.
code-stops_from-why = The stops of the method hold besides.
house_value-by-why = A value of our own is somebody’s decision: by name and day.
person-electrical-why = Without a recorded qualification the distances for everybody hold.
climb_log-with_whom-why = Somebody signed off stays within reach of a trainee.
gear-out_of_use-why = Whoever finds it has to know why it must not be used.
site-client-why = The summary is made out to the client.
site-address-why = The crew, and an ambulance, have to find the place.
site-rule_set-why = Distances and limits come from the rules of the region.
site-outline-why = The keep-out may run over the edge; then the neighbor has to be asked.
rescue-meeting_point-why = Nobody climbs without a rescue plan.
target-occupancy-why = Whether a place has to be closed or guarded follows from how often somebody is there.
line-dead_on-why = Only the owner of a line can say that it is dead, and for which day.
permission-answer-why = What nobody asked counts as not given.
visit-crew-why = Who may climb, and who stands ready, follows from who is there.
weather-no_thunder-why = Nobody is in a tree until thunder has been silent long enough.
weather-ice-why = On ice neither foot nor rope holds.
weather-wet_bark-why = On wet bark feet slip and hitches slide.
weather-light-why = Nobody climbs in the dark.
tree-tag-why = The number on the tree or on the plan; each tree has its own.
tree-species-why = Strength and weight of the wood follow from the species. A genus is enough to begin with.
tree-position-why = Without a position the plan cannot show the tree or what stands near it.
tree-way-why = The keep-out distance and who may do it follow from the way of working.
tree-other_access-why = Nobody has to climb a tree that can be worked on in another way.
tree-walk_order-why = Trees are listed in the order in which the crew walks.
tree-life-why = Dead wood breaks without bending first.
tree-wires_near-why = Wires kill. They come first.
tree-base_sound-why = What the base hides holds up the whole tree.
tree-lean_is_new-why = A lean that is new means that the roots are giving way.
tree-ground_dug-why = A tree whose roots were cut may still look well.
tree-base_north-why = Dull or hollow sound tells of decay that the eye does not see.
height-distance_m-why = From the eye to the plumb line under the tip, level.
height-apart_m-why = Both spots in one line with the stem, level with each other.
height-sight_deg-why = The height follows from the angles to the top and to the base.
height-rise_deg-why = The farther spot sees the top under the flatter angle.
lean-seen_deg-why = From one side a lean toward you or away from you cannot be seen.
finding-part-why = What is on the route or above it counts most.
finding-grade-why = Without a grade it counts as the gravest.
finding-cleared_by-why = A finding is cleared by a named person who looked into it.
anchor-height-why = Rope length, throw and the work stress on the limb follow from it.
anchor-parent_diameter-why = A limb nearly as thick as its stem is held less well.
anchor-union-why = Included bark or a crack takes much of a union’s strength.
anchor-state-why = Only live wood, grown from the start, carries a climber.
load_test-outcome-why = Two people’s weight on the line alone, nobody beneath, the anchor watched.
site_summary-language-why = The client may read another language than the crew.
climb_sheets-language-why = Everybody at the foot of the tree has to understand them.
near_miss-what-why = For the crew to learn from. It is on no client’s paper.
work-left-why = The client’s paper says what was not done.
inspection-next_look-why = The client’s paper says when somebody should look again.
walk-look-why = What was not looked at counts as not known, never as sound.

## Papers: site summary and climb sheets

# Every paper.
paper-page = page { $page } of { $pages }
paper-caution = Please note
paper-nothing-noted = nothing noted
paper-and-more = and { $count } more

# Site summary: cover.
summary-title = Site summary
summary-subject = What was seen on the trees of { $site }, what is proposed, and what to close while work goes on
summary-foot = Not a guarantee: trees change, and no tree is without risk
summary-client = Client
summary-address = Address
summary-looked-at-on = Looked at on
summary-looked-at-by = Looked at by
summary-tree-count = Trees
summary-target-count = Places people use
summary-line-count = Overhead lines
summary-made-on = Paper made on
summary-lead = { $looked ->
    [0] None of the { $trees } trees on this property has been looked at yet.
    [one] { $trees ->
        [one] The one tree on this property was looked at from the ground.
       *[other] One of the { $trees } trees on this property was looked at from the ground.
    }
   *[other] { $all ->
        [yes] All { $trees } trees on this property were looked at from the ground.
       *[no] { $looked } of the { $trees } trees on this property were looked at from the ground.
    }
  } This paper says what was seen, what is proposed, and what to close, move or guard while the work goes on.
summary-first = What comes first
summary-first-nothing = No work is marked as urgent.
summary-contents = In this paper
summary-only-what-was-seen = It tells what could be seen from the ground on the days named.
summary-until-next-looks = the time up to each tree’s next look
summary-last-word = Local rules, and the qualified arborist on site on the day of work, have the last word.

# Site summary: what was looked at.
summary-looked = What was looked at
summary-looked-lead = The trees were looked at from the ground, walking around each one. Anything measured in another way is named in its record.
summary-looked-level = How closely
summary-looked-count = Trees
summary-looked-which = Which
summary-looked-table = How closely each tree was looked at
summary-level-stop-on-sight = Seen at a distance; something plain was found at once
summary-level-triage = First look: species, size, base and roots
summary-level-full-check = Full check, part by part
summary-level-same-day = Looked at again on the same day
summary-level-not-yet = Not looked at yet
summary-unseen = What could not be seen
summary-unseen-lead = These parts were hidden, or were not looked at. Nothing is said about them, and they do not count as sound.
summary-unseen-none = Every part that the check asks for was seen on every tree that had a full check.
summary-part-hidden = { $part } ({ $hidden })
summary-part-of = { $part } (in part)
summary-part-of-hidden = { $part } (in part: { $hidden })
summary-not-done = What this paper does not do
summary-not-done-roots = Roots and their hold in the soil are not calculated; only what shows above the ground was seen.
summary-not-done-wood = Wood inside the stem was not measured, except where a record says so.
summary-not-done-risk = Risk is given only where a named person assessed it; everywhere else the record says “not assessed”.

# Site summary: the plan.
summary-plan = The plan
summary-plan-lead = Each tree with its tag and crown, and, in orange, the ground to be kept clear while it is worked on.
summary-plan-described = Plan of { $site }, north at the top: { $trees ->
    [one] one tree
   *[other] { $trees } trees
  }, the property edge, places people use, overhead lines, and the ground to be kept clear around each tree
summary-plan-caption = Drawn from positions taken on site, at 1:{ $scale } on this sheet. A thin ring around a tree shows how well its position is known.
summary-plan-no-place = Not on the plan, because no position was taken: { $trees }.
summary-plan-sheet = Part { $name }
summary-plan-none = No plan can be drawn: no position was taken on this property.
legend-property = Property edge
legend-tree = Tree
legend-crown = Crown
legend-dead-crown = Crown of a dead tree
legend-keep-out = Keep clear while work goes on
legend-line = Overhead line
legend-approach = Strip along the line that nobody and nothing enters
legend-accuracy = How well the position is known
legend-me = You are here
legend-entered = Entered now
legend-target = Place people use
legend-weakest = Weakest direction
legend-opening = Opening in the stem
plan-north = N

# Site summary: what to close, move, guard.
summary-close = What to close, move or guard
summary-close-lead = While a tree is worked on, nobody but the crew may be inside its orange line. The crew needs your help with the following.
summary-close-nothing = Nothing but the trees themselves lies inside the ground to be kept clear.
summary-close-done = The work is done, and nothing need be closed any more, for { $trees }.
summary-close-table = What lies inside the ground to be kept clear, and what to do about it
summary-close-what = What
summary-close-do = To do
summary-close-for = While these trees are worked on
summary-close-edge = Ground beyond the property edge
summary-close-lands = Pieces may land there: { $trees }
summary-action-empty-rooms = Nobody in the rooms on the tree’s side, or another way of working
summary-action-close-off = Closed, with somebody to turn people back
summary-action-move-away = Moved away before work begins
summary-action-guard = Guarded by a person
summary-action-protect = Covered or otherwise protected
summary-action-ask-neighbour = The neighbor agrees and knows the day
summary-action-call-line-owner = The owner of the line is called before work begins
summary-permissions = Permissions
summary-permissions-table = Permissions and their state
summary-permission = Permission
summary-permission-for = For
summary-permission-state = State
summary-permission-site = the property
summary-permission-not-asked = still to be asked
summary-permission-on = { $answer } on { $day }
summary-permissions-none = No permission has been looked into yet. Work does not begin before that is done.

# Site summary: schedule.
summary-schedule = Schedule of trees
summary-schedule-table = Every tree with its size, the work proposed and the page of its record
summary-tag = Tag
summary-species = Species
summary-height = Height
summary-girth = Girth
summary-work = Work proposed
summary-priority = How soon
summary-page = Page
summary-species-in-full = { $common } ({ $latin })
summary-species-unknown = species not known
summary-no-work = no work proposed

# Site summary: one record a tree.
summary-records = Tree by tree
summary-tree-name = { $tag } · { $species }
summary-spread = Crown
summary-spread-value = { $radius } to its widest side
summary-lean = Lean
summary-lean-upright = upright, by eye
summary-lean-toward = { $lean } toward the { $side }
summary-life = State
summary-dieback = { $share } of the crown died back
summary-seen-on = Looked at
summary-seen-on-by = { $day }, by { $who }
summary-level = How closely
summary-not-looked-at = This tree has not been looked at yet. Nothing is known of its state.
summary-not-measured = not measured
summary-unknown = not known
summary-findings = What was found
summary-findings-none = Nothing was found in the parts that were seen.
summary-finding-place = { $part }, { $place }
summary-finding-height = at { $height }
summary-finding-side = on the { $side } side
summary-finding-both = at { $height } on the { $side } side
summary-photo-missing = A photo of this tree could not be read and is left out: { $file }.
summary-photo-described = Photo of tree { $tag }
summary-photo-finding = Photo of tree { $tag }, finding { $number }: { $code }
summary-photo-caption = { $number }: { $caption }
summary-profile-described = Side view of tree { $tag }, { $height } high, seen from the { $side }, with its findings marked by number
summary-profile-caption = Seen from the { $side }. The person is drawn for scale.
summary-risk = Risk
summary-risk-not-assessed = Not assessed.
summary-risk-table = Risk to each target, as assessed
summary-risk-target = Target
summary-risk-part = Part
summary-risk-likelihood = Failure, impact
summary-risk-likelihood-value = { $failure }, { $impact }
summary-risk-consequences = Consequences
summary-risk-rating = Risk
summary-risk-assessor = Assessed by
summary-risk-assessor-value = { $assessor }, { $level }, for { $months }
summary-risk-targets-not-assessed = Not assessed: { $targets }.
summary-record-work = Work proposed
summary-work-with-priority = { $work }: { $priority }
summary-work-note = { $work }. { $note }
summary-inside = Inside the stem of { $tag }, at { $height }
summary-inside-thinnest = Thinnest wall
summary-inside-opening = Opening
summary-inside-left = Strength left
summary-inside-method = Read with
summary-inside-wall = { $wall } on the { $side } side
summary-inside-at-least = at least { $left-down } of a sound stem’s against bending
summary-inside-described = Section through the stem of tree { $tag } at { $height }, from above, north at the top: sound wood, decay, opening, and the sound wall where it was read
summary-inside-caption = From above: sound wood light, decay dark. Between the readings the wall is drawn, not known.
summary-reach = How the crew would reach it
summary-reach-climber = By a climber on ropes, after a fresh check on the day.
summary-reach-ground = From the ground.
summary-reach-platform = From a platform, or with a crane.
summary-reach-neighbour-tree = From a neighboring tree.
summary-reach-inspect = Nobody goes into the tree; it is only looked at.
summary-reach-no-work = Nobody goes into the tree.
summary-reach-open = Not settled yet; the crew decides on the day, and may choose another way of working.
summary-record-unseen = What could not be seen
summary-record-unseen-none = All parts the check asks for were seen.
summary-record-unseen-all = Only a first look was made; the parts of a full check were not gone through.
summary-next-look = Next look
summary-next-look-open = no date set

# Climb sheets: one page a tree, in the order needed at its foot.
sheet-title = Climb sheets
sheet-subject = One page a tree for the crew at its foot, for { $day }
sheet-foot = { $site }, { $day }
sheet-tree = { $tag } { $species }
sheet-under-tree = { $way } · { $height } high
sheet-nobody-climbs = Nobody needs to climb this tree
sheet-way-open = way of working not decided
sheet-stops = Stop
sheet-limits = Only within these limits
sheet-mind = Keep in mind
sheet-besides = Besides this
sheet-refer = Not before this is settled
sheet-refer-together = No single thing holds it, but the doubts below weigh too much together. Measure again, choose another anchor, or another way.
sheet-gaps = Still to check
sheet-more-gaps = { $count ->
    [one] … and one more point: see the tree’s page.
   *[other] … and { $count } more points: see the tree’s page.
  }
sheet-remarks = Also know
sheet-who = Who may climb
sheet-who-climbs = Climbs: { $names }
sheet-who-climbs-and-seconds = Climbs, or stands ready as second: { $names }
sheet-who-seconds = Second on the ground: { $names }
sheet-who-nobody = Nobody of today’s crew
sheet-who-no-second = No second person: nobody climbs
sheet-who-not = { $name }: { $reason }
sheet-anchor = Anchor and rope
sheet-anchor-place = Anchor
sheet-anchor-at = { $name }, { $height } up
sheet-anchor-at-side = { $name }, { $height } up, limb to the { $side }
sheet-anchor-none = no anchor chosen
sheet-anchor-nameless = anchor
sheet-system = System
sheet-rope = Rope
sheet-rope-length = at least { $length }
sheet-rope-stopper = at least { $length }, stopper knot in the end
sheet-throw = Throw
sheet-throw-to = { $height }
sheet-ascent = Go up on
sheet-ascent-side = the { $side } side
sheet-load-test = Load test
sheet-before = Before you leave the ground
sheet-before-load-test = Load test not done: two people’s weight on the line alone, nobody beneath, one watches the anchor.
sheet-before-look-again = Look again today: wires, hangers, insects, roots, base.
sheet-load-test-held = held; not for slips or side pulls
sheet-load-test-failed = the anchor gave: nobody climbs on it
sheet-pace = Pace from the stem
sheet-pace-everyone = Nobody within
sheet-pace-crew = Crew outside
sheet-pace-lands = Lands within
sheet-pace-downhill = … on the downhill side
sheet-pace-inside = Inside it: { $what }
sheet-pace-none = No distance can be given yet: size or way of working is missing.
sheet-apart = Not at the same time as { $trees }
sheet-wires = Wires
sheet-rescue = If somebody is hurt
sheet-rescue-none = No rescue plan: nobody climbs
sheet-meeting-point = Meet at
sheet-grid-reference = Read out
sheet-signal = Phone
sheet-first-aider = First aid
sheet-casualty-unit = Taken to
sheet-rescue-not-noted = not noted

sheet-judged-without-hour = Judged from the ground on { $day }; hour and weather not recorded. Inspection: { $level }.
sheet-not-judged = Nobody has looked at this tree yet.
sheet-caution-ends = This answer ends with the day, on changed work, after a storm, with another anchor.
paper-language = en-US
summary-profile-behind = far side
sheet-weather-wind = wind { $wind }
sheet-weather-wet = wet bark
sheet-weather-ice = ice

## Trees from another inventory: what was guessed

import-delimited = The columns are separated by { $delimiter }; the text is in { $encoding }.
import-delimiter-comma = commas
import-delimiter-semicolon = semicolons
import-delimiter-tab = tabs
import-delimiter-bar = bars
import-decimal-comma = Numbers are read with a decimal comma.
import-column = Column “{ $column }” is read as { $field }.
import-column-with-unit = Column “{ $column }” is read as { $field } in { $unit }.
import-column-unit-assumed = Column “{ $column }” is read as { $field }. It names no unit: { $unit } is assumed.
import-tags-told-apart = { $count ->
    [one] { $count } tag stands more than once: the key is put behind it.
   *[other] { $count } tags stand more than once: the key is put behind each.
}
import-tags-from-key = No column holds tags: the key serves as tag.
import-tags-from-row = No column holds tags or a unique key: the trees are numbered in the order of the rows.
import-crown-halved = Half the crown’s diameter is taken as its radius. If the diameter is a mean, the largest radius may be more.
import-diameter-to-girth = Diameters are turned into girths, as of a round stem.
import-no-day = No day is given, so the measures have no date. Name the day they were taken.
import-field-tag = the tag
import-field-key = the unique key
import-field-species = the species
import-field-common-name = the common name
import-field-lat = latitude
import-field-lon = longitude
import-field-accuracy = the accuracy of the position
import-field-height = height
import-field-girth = girth
import-field-diameter = stem diameter
import-field-crown-radius = crown radius
import-field-crown-diameter = crown diameter
import-field-lean = lean
import-field-note = notes

## Desk command

desk-zone-tree = Tree { $tag }
desk-zone-unseen = no inspection: nothing is known of this tree yet
desk-zone-planned = planned
desk-zone-drop = something may land within { $drop-up }
desk-zone-keep-out = nobody within { $everyone-up } of the stem
desk-zone-downhill = downhill { $downhill-up }
desk-zone-crew = crew with a task no nearer than { $crew-up }
desk-zone-rule = fixed by: { $rule }
desk-zone-source = source: { $source }
desk-zone-caution = Measured from the stem. More downhill, in wind, for dead tops and lodged trees. A zone says nothing of whether a tree may be climbed. Local codes and the qualified arborist on site decide.
desk-zone-no-trees = This property has no trees yet.

# The judgement as a table. Heads of its columns; a few words each, since a column is narrow.
desk-judge-head = { $site }: judged from the ground for { $day }
desk-judge-no-trees = This property has no trees yet.
desk-judge-table-note = Distances are from the stem; the keep-out is the wider one, downhill where the ground slopes. The score is the crew’s own aid: points at central values, and below them the range that holds 8 cases of 10. A single figure means that no reading in doubt moves it. It is no grade for the tree.
desk-head-tag = Tag
desk-head-species = Species
desk-head-size = Height and lean
desk-head-way = Way of working
desk-head-verdict = Verdict
desk-head-score = Score
desk-head-drop = Drop zone
desk-head-keep-out = Keep out
desk-head-rule = Fixed by
desk-head-next-look = Next look
desk-way-open = not decided
desk-not-needed = nobody needs to
desk-score =
    { $points }
    { $low }–{ $high }
desk-rule-of-other-way = { $way }: { $rule }
desk-short-zone-fell = { $lengths } × length
desk-short-zone-removal = crown + { $beyond-crown }
desk-short-zone-pieces = crown + 2 × piece
desk-short-zone-flight = flight of a piece
desk-short-zone-swing = swing + { $beyond-drop }
desk-short-zone-prune-barrier = drip line + { $beyond-crown }
desk-short-zone-beyond-drop = drop zone + { $beyond-drop }

desk-site-stops = Today nobody climbs here
desk-site-gaps = Still to settle for the whole property
desk-inside = What lies inside the keep-out, and what to do about it
desk-inside-nothing = Nothing that is recorded lies inside.
desk-inside-trees = { $count ->
    [one] while tree { $trees } is worked on
   *[other] while any of these trees is worked on: { $trees }
}
desk-inside-landing = { $count ->
    [one] pieces may land there from tree { $trees }
   *[other] pieces may land there from trees { $trees }
}
desk-apart = Not at the same time
desk-apart-none = No two trees are so near that they may not be worked on together.
desk-apart-tree = { $tree }: not together with { $others }
desk-why = Why, tree by tree
desk-why-tree = { $tag } · { $species }: { $answer }
desk-why-more = and { $count } more: --explain { $tag }
desk-refer-by-score = No single thing holds it here, but together they do: the score may be as low as { $low }. Measure what is named below, choose another anchor, or another way.
desk-judge-unsettled = { $count ->
    [one] One value stands beside another until somebody settles it; the last one entered counts here.
   *[other] { $count } values stand beside others until somebody settles them; the last ones entered count here.
}
desk-judge-unread = { $count ->
    [one] One value is of a newer version and was left out.
   *[other] { $count } values are of a newer version and were left out.
}

desk-explain-basis = Judged for { $day } by the rule set “{ $rules }”, version { $version } of the method.
desk-explain-stops = Stops
desk-explain-gaps = Still to check
desk-explain-refer = What holds the verdict at “{ verdict-refer }”
desk-explain-limited = What holds the verdict at “{ verdict-limited }”
desk-explain-limits = Limits, and what costs most points
desk-explain-remarks = Also know
desk-explain-score = Score: { $points } of 100, 8 cases of 10 between { $low } and { $high }. Points lost:
desk-explain-share = × { $factor } · { $cause }
desk-explain-next = Next: { $what } About { $cost }; it takes away { $gain } of the spread.
desk-explain-margins = Margins: strength over load, where 2 is a stop and 6 is full
desk-explain-margin = { $part }: { $central } (8 cases of 10 between { $low } and { $high })
desk-explain-modulus = at least { $left-down } of the wood’s bending strength left
desk-explain-people = Who may climb
desk-person-climbs-and-rescues = { $name }: may climb, may bring a climber down
desk-person-climbs = { $name }: may climb
desk-person-rescues = { $name }: may not climb here, may bring a climber down
desk-person-stays = { $name }: may not climb here
desk-explain-zones = Zones, by way of working
desk-explain-zone = { $way }: nobody within { $keep-up }, something may land within { $drop-up }; fixed by { $rule }
desk-explain-zone-downhill = { $way }: nobody within { $keep-up } ({ $downhill-up } downhill), something may land within { $drop-up }; fixed by { $rule }
desk-explain-working = The working, in metric units, at central values
desk-imported = { $site }: { $trees ->
    [one] one tree
   *[other] { $trees } trees
  } brought into “{ $folder }”.
desk-inventory-rows = { $rows } rows: { $trees } became trees, { $refused } did not, { $blank } were blank.
desk-inventory-guesses = What was guessed; say --map where a guess is wrong
desk-inventory-refused = { $count ->
    [one] One row became no tree
   *[other] { $count } rows became no tree
}
desk-inventory-left-out = { $count ->
    [one] One value was left out of its tree
   *[other] { $count } values were left out of their trees
}
fault-of-inventory-only = This is for trees of another origin; a site file says itself what it holds.
desk-written = Written: { $path }
desk-yes = yes
desk-demo-ask = “{ $folder }” holds a demo already. Replace it with all that is in it? yes or no:
desk-demo-left = Nothing was changed.
desk-demo-photos = Photos
desk-packing = Packing the property
desk-taking-pack = Taking the pack in
desk-map-files = Map files
desk-demo-invented = The place, its trees and its people are invented; the photos are drawn.
desk-demo-made = Made in “{ $folder }”: a field book, { $files }.
desk-demo-next = One tree’s working, line by line: bolewalk judge { $folder } --explain 04
fault-demo-is-there = A demo is here already, and nobody can be asked whether to replace it. Say --yes, or name another folder.
fault-folder-not-a-demo = This folder holds what the demo did not put there, and it stays as it is: { $found }. Name another folder.
fault-several-sites = This field book holds several properties. Name one with --site.

## Drawings
