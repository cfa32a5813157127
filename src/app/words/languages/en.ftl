# The texts of the page in English. All other languages are held to this one.

## figures

# Symbol of the inch.
unit-inch = in

# Symbol of the foot.
unit-foot = ft

# Symbol of the foot, after exactly 1.
unit-one-foot = ft

# Symbol of the square foot.
unit-square-foot = ft²

# Symbol of the square foot, after exactly 1.
unit-one-square-foot = ft²

# Symbol of the pound per square foot.
unit-pound-per-square-foot = lb/ft²

# Symbol of the pound per cubic foot.
unit-pound-per-cubic-foot = lb/ft³

# Symbol of the moment of a pound-force on a lever of a foot.
unit-foot-pound-force = lbf·ft

# After the price of a foot.
unit-per-foot = /ft

# After the price of a square foot.
unit-per-square-foot = /ft²

# Symbol of the US fluid ounce.
unit-fluid-ounce = fl oz

# Symbol of the day, after a number.
unit-days = days

# Symbol of the day, after exactly 1.
unit-day = day

# Short name of the month, as in a date.
month-1 = Jan

# Short name of the month, as in a date.
month-2 = Feb

# Short name of the month, as in a date.
month-3 = Mar

# Short name of the month, as in a date.
month-4 = Apr

# Short name of the month, as in a date.
month-5 = May

# Short name of the month, as in a date.
month-6 = Jun

# Short name of the month, as in a date.
month-7 = Jul

# Short name of the month, as in a date.
month-8 = Aug

# Short name of the month, as in a date.
month-9 = Sep

# Short name of the month, as in a date.
month-10 = Oct

# Short name of the month, as in a date.
month-11 = Nov

# Short name of the month, as in a date.
month-12 = Dec

# A date. Between day and month stands a space that does not break.
date = { $day } { $month } { $year }

# Several things; before: all but the last, with commas.
list-and = { $before } and { $last }

## boot

# The name of the language in itself. What begins with boot- is read before the program is there.
boot-name = English

boot-loading = Slackwater is loading…

# Shown when loading takes long.
boot-late = This takes longer than it should. On a slow connection, wait a little more; otherwise reload the page, or try a newer browser. What this browser keeps of yours is untouched.

boot-no-script = Slackwater cannot start while JavaScript is switched off in this browser. Switch it on, then reload the page.

boot-failed = Slackwater could not be loaded. Check the connection, then try again. What this browser keeps of yours is untouched.

boot-too-old = Slackwater cannot run in this browser: WebAssembly is missing or switched off. Try a newer browser.

# Button.
boot-again = Try again

## mod

# Label of the choice of language.
language-label = Language

step-container = Container

step-crop = Crop

step-fertilizer = Fertilizer

step-climate = Climate

step-question-container = What holds the solution?

step-question-crop = What grows, how many, and when?

step-question-fertilizer = What do you dissolve, in what water?

step-question-climate = What air and light do the plants get?

unit-system-metric = Litres, cm, °C

unit-system-us-customary = Gallons, inches, °F

example-bottle = One head in a bottle

example-bucket = Two or three heads in a bucket

example-covered-tank = A covered tank

example-floating-boards = Boards that float, then rest

example-more-bottle = { $units ->
    [us] 1 gallon
   *[metric] 4 litres
}, a net pot in the neck, in mild humid weather.

example-more-bucket = { $units ->
    [us] 5 gallons
   *[metric] 19 litres
} with a lid, in mild humid weather. The usual first attempt.

example-more-covered-tank = A lined timber frame under one sheet of board, 48 heads.

example-more-floating-boards = A long tank, 12 foam boards over two pipes, 144 heads.

# While a part of the program is on its way.
fetching = One moment: this part of the page is being fetched.

# When a part of the program could not be had.
not-fetched = This part of the page could not be fetched. Check the connection, then try again.

# Asks for the part once more.
fetch-again = Try again

# The name of the page.
name = Slackwater

# What it is, under its name.
motto = Leafy crops on still nutrient solution, worked out before you plant

# At the foot of the page.
foot = Figures are forecasts from published models and your own measures. They do not replace product labels, local codes or licensed advice. Everything you enter stays on this device.

# Heading of the first page.
welcome = What would you like to plan?

# Under it.
welcome-more = Open a ready plan and change it, or start from the container you have. Nothing here needs power, a pump or the internet.
# First page: label of a list of shelters.
stand-where = Where will the plants stand?
# First choice of that list.
stand-as-said = Not sure yet: a clear roof or tunnel

# Button.
start-own = Start from what I have

# Name of a plan of one's own.
own-plan = My plan

# Heading of kept plans.
your-plans = Your plans

# Button that opens the list of plans.
plans = Plans

# Label of the plan's name.
plan-name = Name of this plan

# Button.
new-plan = New plan

# Button.
duplicate = Make a copy

# Button.
delete = Delete

# Button.
undo = Undo

# Button.
dismiss = Close

# Label of the unit choice.
units = Units

# Label of the steps.
steps = Steps

# Button.
next = Next

# Button.
back = Back

# Button after the last step.
to-result = See the result

# A plan without a name.
unnamed = Plan without a name

# A newer release has arrived.
update-ready = A newer version of Slackwater is ready. It opens by itself once this page has been closed everywhere; your plans stay.

# Button.
take-update = Change now

# Storage is blocked or full.
not-kept = This browser does not keep plans here (storage is blocked or full). Your plan stays while this page is open. Print the card before you close it.

# What was kept could not be read.
set-aside = The plans kept in this browser could not be read. They were set aside unchanged; save them to a file before you go on.

# Link.
save-set-aside = Save what was set aside

# Name of that file.
set-aside-file = slackwater-set-aside.json

# Under the question of a step.
not-sure = Not sure of a figure? Leave it as it stands, or empty: a usual one is then taken, and named. The result is ready at any time.

# Name of a copy of a plan.
plan-copy-name = { $name } (copy)

# After a plan was deleted; beside it stands a button that brings it back.
plan-deleted = Deleted: { $name }.

# What the button that deletes a plan is called where it cannot be seen.
plan-delete-this = Delete { $name }

# How many entries of a step need a look.
step-entries-to-mend = { $count ->
    [one] 1 entry to mend
   *[other] { $count } entries to mend
}

## choices

# Names of choices, in lists.

# How the plants stand.
method-bottle = One plant in a bottle

method-bucket = Several in a bucket

method-covered-tank = Covered tank

method-floating-boards = Floating boards on pipes

# Shape of the container.
shape-cylinder = Round, straight walls

shape-tapered-round = Round, tapered (most buckets)

shape-rectangular = Box, straight walls

shape-tapered-rectangular = Box, sloping walls (most storage boxes)

shape-bottle = Bottle with shoulder and neck

shape-measured = Measured with a jug

# How the holes are laid out.
pattern-square = Rows in line

pattern-staggered = Every other row shifted

pattern-hexagonal = Hexagonal, all neighbours alike

# What the date is the day of; after `label-date-meaning`.
date-meaning-transplanting = transplanting

# What the date is the day of; after `label-date-meaning`.
date-meaning-seeding = sowing

# How the fertilizer is measured out.
dosing-dry-blend = A dry blend, weighed

dosing-stocks = Stock solutions A and B

dosing-salts = Single salts, to a published solution

# What is known of the raw water.
water-kind-rain = Rain, or as pure

water-kind-tap = A tap, only its EC

water-kind-analysis = A full analysis

# No acid is used.
acid-choice-none = None

# Within a sentence the first letter is made small.
acid-choice-nitric = Nitric acid

acid-choice-phosphoric = Phosphoric acid

acid-choice-sulfuric = Sulfuric acid

acid-choice-citric = Citric acid (powder)

# Published solutions, by authors and year.
recipe-choice-hoagland-arnon1 = Hoagland and Arnon 1950, no. 1

recipe-choice-hoagland-arnon2 = Hoagland and Arnon 1950, no. 2

recipe-choice-steiner = Steiner 1984, universal

recipe-choice-sonneveld-straver-lettuce = Sonneveld and Straver 1994, lettuce

recipe-choice-modified-sonneveld = Mattson and Peters 2014, leafy greens

# Salts of the shelf. Within a sentence the first letter is made small.
salt-calcium-nitrate = Calcium nitrate tetrahydrate

# The grade: 15.5-0-0.
salt-calcium-ammonium-nitrate = Calcium nitrate, granular ({ $grade })

salt-potassium-nitrate = Potassium nitrate

salt-monopotassium-phosphate = Monopotassium phosphate

salt-monoammonium-phosphate = Monoammonium phosphate

salt-magnesium-sulfate = Magnesium sulfate (Epsom salt)

salt-magnesium-nitrate = Magnesium nitrate hexahydrate

salt-potassium-sulfate = Potassium sulfate

salt-ammonium-nitrate = Ammonium nitrate

salt-ammonium-sulfate = Ammonium sulfate

salt-potassium-chloride = Potassium chloride

salt-calcium-chloride = Calcium chloride dihydrate

salt-boric-acid = Boric acid

salt-borax = Borax

salt-manganese-sulfate = Manganese sulfate monohydrate

salt-zinc-sulfate = Zinc sulfate heptahydrate

salt-copper-sulfate = Copper sulfate pentahydrate

salt-sodium-molybdate = Sodium molybdate dihydrate

salt-iron-sulfate = Iron(II) sulfate heptahydrate

salt-iron-edta = Iron chelate, EDTA

salt-iron-dtpa = Iron chelate, DTPA

salt-iron-eddha = Iron chelate, EDDHA

# What the strength is set by.
strength-by-conductivity = EC (a meter can check it)

strength-by-nitrogen = Nitrogen (weighed, not checked)

# Kind of calcium nitrate. The grade: 15.5-0-0.
calcium-nitrate-double-salt = Granular, { $grade } with ammonium

# Kind of calcium nitrate.
calcium-nitrate-tetrahydrate = Crystals, tetrahydrate

# How the light is known.
daylight-by-radiation = Solar radiation

daylight-by-sunshine = Hours of sunshine

# The ends of the pipes. Also a sentence of its own in the steps of building, with a full stop.
pipe-ends-open = Open: solution fills them

pipe-ends-capped = Capped with air: they want to float, weigh them down

pipe-ends-flooded = Filled, then capped

pipe-material-pvc = PVC

pipe-material-polyethylene = Polyethylene (HDPE)

pipe-material-polypropylene = Polypropylene

pipe-material-abs = ABS

# What the tank stands on.
stands-on-ground = Firm level ground

stands-on-slab = A ground slab of a building

stands-on-bench = A bench or table

stands-on-upper-floor = A floor with a room or air below

stands-on-balcony-or-roof = A balcony, deck or roof

# Material of the cover.
cover-material-extruded-foam = Extruded foam

cover-material-expanded-foam = Expanded (beaded) foam

cover-material-plywood = Plywood

cover-material-rigid-plastic = Rigid plastic sheet

cover-material-fabric = Fabric or film stretched on a frame

crop-kind-leaf-lettuce = Leaf lettuce

crop-kind-butterhead-lettuce = Butterhead lettuce

crop-kind-romaine-lettuce = Romaine lettuce

crop-kind-pak-choi = Pak choi (not validated)

crop-kind-leaf-mustard = Leaf mustard (not validated)

crop-kind-spinach = Spinach (not validated)

crop-kind-chard = Chard (not validated)

crop-kind-basil = Basil (not validated)

crop-kind-coriander = Coriander (not validated)

crop-kind-parsley = Parsley (not validated)

# What stands between the sky and the plants.
shelter-rain-cover = Clear roof, open sides

shelter-porch = Porch under a solid roof

shelter-plastic-shelter = Tunnel or house of plastic film

shelter-greenhouse = Glass greenhouse

shelter-windowsill = Indoors at a bright window

shelter-lamps = Indoors under lamps

# A place and season.
climate-choice-upland-cool-humid = Upland, cool and humid

climate-choice-temperate-late-summer = Temperate, late summer to autumn

climate-choice-temperate-spring = Temperate, spring

climate-choice-maritime-summer = Cool coast, summer

climate-choice-mild-humid-coast = Mild humid coast

climate-choice-tropical-lowland = Tropical lowland, hot and humid

climate-choice-tropical-highland = Tropical highland, dry season

climate-choice-dry-summer = Inland, hot dry summer

climate-choice-desert-winter = Desert, winter

climate-choice-subtropical-winter = Subtropics, winter

climate-choice-room-under-lamps = A room under lamps

climate-choice-own = My own figures

# Foam of the boards, with its least density and its type.
foam-extruded-x = Extruded, { $density } (type X)

foam-extruded-iv = Extruded, { $density } (type IV, usual)

foam-extruded-vi = Extruded, { $density } (type VI)

foam-expanded-i = Expanded beads, { $density } (type I)

foam-expanded-viii = Expanded beads, { $density } (type VIII)

foam-expanded-ii = Expanded beads, { $density } (type II)

foam-expanded-ix = Expanded beads, { $density } (type IX)

# A net pot.
pot-choice-small = about { $units ->
    [us] 2 in
   *[metric] 5 cm
} wide and deep

# A net pot as wide as it is deep.
pot-choice-medium = about { $units ->
    [us] 3 in
   *[metric] { $size } cm
} wide and deep

# A net pot.
pot-choice-deep = about { $units ->
    [us] 3 in wide, 4 in deep
   *[metric] { $width } cm wide, 10 cm deep
}

# A common container.
vessel-choice-bottle4 = { $units ->
    [us] 1 gal
   *[metric] 4 L
} bottle with a wide neck

vessel-choice-cut-bottle2 = { $units ->
    [us] 1/2 gal
   *[metric] 2 L
} bottle, top cut off

vessel-choice-bucket19 = { $units ->
    [us] 5 gal
   *[metric] 19 L
} bucket ({ $units ->
    [us] 5 1/2 gal
   *[metric] 21 L
} to the brim)

vessel-choice-box45 = { $units ->
    [us] 12 gal
   *[metric] 45 L
} storage box

# A timber tank with a liner.
vessel-choice-tank240 = { $units ->
    [us] 8 × 4 ft
   *[metric] { $length } × { $width } m
} frame, lined

# A timber tank with a liner.
vessel-choice-tank720 = { $units ->
    [us] 24 × 4 ft
   *[metric] { $length } × { $width } m
} frame, lined

# Sawn timber of the US series: nominal size in inches; size: the true one, with units.
timber-dressed = { $thick } × { $wide } in nominal (truly { $size })

# A blend that is not on the list.
blend-choice-own = Another: I copy its label

# A pipe that is not on the list.
pipe-choice-own = Another: I measure it

# A pipe by its nominal size in inches.
pipe-choice-inch = { $nominal } in, schedule 40

# A pipe by its nominal size in inches.
pipe-choice-drain = { $nominal } in, sewer and drain

# In a list, where nothing is chosen yet.
choice-empty = Choose…

# In a list, where the plan holds a word that is not on it.
choice-unknown = '{ $text }' (not known)

# First line of a list that fills in measures.
preset-vessel = Fill in the measures of…

# First line of the list of pots.
preset-pot = Fill in a common net pot…

# Label of the list of common containers.
label-preset-vessel = Common containers

# Label of the list of common pots.
label-preset-pot = Common net pots

# Button.
add-line = Add a line

# Button.
remove-line = Remove the last line

# Over the blends that were kept.
kept-blends = Blends you keep, for all plans

# Button that writes a kept blend into the plan.
take-blend = Use { $name }

# Button that forgets a kept blend.
forget = Forget

# Name of that button for those who do not see the page.
forget-blend = Forget the blend { $name }

# Label of a kept blend's name.
blend-name = Name to keep this label under

# Button.
keep-blend = Keep this label for all plans

# Button where one of that name is kept.
keep-again = Replace the kept label

# Button.
keep-salt = Keep this salt for all plans

# Button.
forget-salt = Keep this salt no longer

# Button beside a date.
today = Today

# Name of the calendar button beside a date.
pick-date = Pick the date from a calendar

# Groups of fields.
group-vessel = The container

# Groups of fields.
group-pot = Cover and net pots

# Groups of fields.
group-pot-boards = Net pots

# Fold in the form of the container.
group-pot-measures = Measures of a net pot

# Groups of fields.
group-boards = Boards

# Groups of fields.
group-pipes = Pipes

# Groups of fields.
group-fill = Fill

# Groups of fields.
group-plants = Plants

# Groups of fields.
group-dates = Dates

# Groups of fields.
group-harvest = Harvest

# Groups of fields.
group-water = Raw water

# Groups of fields.
group-blend = Blend

# Groups of fields.
group-strength = Strength

# Groups of fields.
group-stocks-heading = Stock solutions

# Folded group of fields.
group-label = What the label says, % by mass

# Groups of fields.
group-recipe = Recipe and salts

# Folded group of fields.
group-acid = Acid for the pH

# Folded group of fields.
group-more = More crops on one charge, and prices

# Label of the currency.
currency = Sign of your currency

# First line of a list of salts.
choose-salt = Choose, or type a formula beside

# Label beside a list of salts.
own-formula = Own formula

# Groups of fields.
group-place = Place and season

# Groups of fields.
group-air = Air

# Groups of fields.
group-light = Light

## fields

# Labels above the fields; the unit may follow in brackets, or a colon and a value or a sentence.

label-count = How many such containers

label-height = Inside height, floor to rim

label-diameter = Inside diameter

label-top-diameter = Inside diameter at the rim

label-bottom-diameter = Inside diameter at the floor

label-length = Inside length

label-width = Inside width

label-bottom-length = Inside length at the floor

label-bottom-width = Inside width at the floor

label-body-height = Height of the straight body

label-shoulder-height = Height of the sloping shoulder

label-neck-diameter = Inside diameter of the neck

label-neck-height = Height of the neck

label-cover-thickness = Thickness of the cover

label-pot-height = Net pot: height under the flange

label-pot-top-diameter = Net pot: diameter under the flange

label-pot-bottom-diameter = Net pot: diameter at the foot

label-pot-flange-diameter = Net pot: diameter over the flange

label-pot-immersion = Pot foot in solution at planting

label-fill-depth = Your own fill depth

label-board-length = Board length

label-board-width = Board width

label-board-thickness = Board thickness

label-board-count = Boards in one tank

label-pipe-outside-diameter = Pipe: outside diameter

label-pipe-wall = Pipe: wall thickness

label-pipe-count = Pipes side by side

label-pipe-spacing = Pipe to pipe, middle to middle

label-pipe-material = What the pipes are made of

label-stands-on = The tank stands on

label-leg-count = Legs of the bench

label-support-rating = What that is rated to carry

label-floor-drop = Floor: one end lower by

label-timber = Timber of the sides

label-brace-spacing = Brace to brace along the sides

label-liner-layers = Layers of liner

label-cover-material = Material of the cover

label-prop-rows = Rows of props under the cover

label-edge-distance = Middle of a hole to the edge

label-sheet-length = Stock sheet: length

label-sheet-width = Stock sheet: width

label-sheet-price = Price of a stock sheet

label-pipe-price = Price of pipe

label-timber-price = Price of timber

label-liner-price = Price of liner

label-pot-price = Price of a net pot

label-plants-per-container = Plants in one container

label-spacing-across = Spacing across

label-spacing-along = Spacing along

label-date = Date

label-seedling-age = Seedling age at transplanting

label-target-head = Head mass to harvest at

label-growth-factor = Growth factor

label-water-factor = Water factor

label-people = People to feed every week

label-heads-per-person-week = Heads for each of them a week

label-turnaround-days = Days to clean and refill between crops

# Lines of a fertilizer's label.
label-label-nitrogen = Total nitrogen (N)

label-label-nitrate = Nitrate nitrogen

label-label-ammonium = Ammonium nitrogen

label-label-urea = Urea nitrogen

label-label-phosphate = Phosphate (P2O5)

label-label-potash = Potash (K2O)

# Of a fertilizer or of the raw water.
label-label-calcium = Calcium (Ca)

# Of a fertilizer or of the raw water.
label-label-magnesium = Magnesium (Mg)

label-label-sulfur = Sulfur (S)

label-label-iron = Iron (Fe)

label-label-manganese = Manganese (Mn)

label-label-zinc = Zinc (Zn)

label-label-copper = Copper (Cu)

label-label-boron = Boron (B)

label-label-molybdenum = Molybdenum (Mo)

label-target-conductivity = EC of the finished solution

label-target-nitrogen = Nitrogen in the finished solution

label-raw-water-conductivity = EC of your raw water

# Share of rain in all the water.
label-rain-share = Rain water mixed in

label-stock-acalcium-nitrate = Stock A: calcium nitrate

label-stock-bblend = Stock B: blend

label-stock-bmagnesium-sulfate = Stock B: magnesium sulfate

# Lines of a report on the raw water.
label-water-sodium = Sodium (Na)

label-water-potassium = Potassium (K)

label-water-chloride = Chloride (Cl)

label-water-sulfate = Sulfate (SO4)

label-water-alkalinity = Alkalinity, as CaCO3

label-water-nitrate = Nitrate (NO3)

label-water-ph = pH of the water

label-acid-strength = Strength of the acid, by mass

label-acid-density = Density of the acid, g/mL

label-target-ph = pH to reach

label-stock-volume = Volume of each stock you make up

label-store-temperature = Coldest the store gets

label-recipe-strength = Strength of the recipe

label-crops-in-arow = Crops in a row on one charge

label-price-blend = Price of the blend

label-price-calcium-nitrate = Price of calcium nitrate

label-price-magnesium-sulfate = Price of magnesium sulfate

label-price-acid = Price of the acid

label-water-kind = What you know of your water

label-acid = Acid

label-recipe = Published solution

label-salts = Salts on your shelf

label-latitude = Latitude

label-elevation = Elevation

label-temperature-min = Coolest of the night

label-temperature-max = Warmest of the day

label-humidity = Mean relative humidity

label-solar-radiation = Solar radiation of a day, outdoors

label-sunshine = Hours of bright sunshine a day

label-light-through = Light that passes the shelter

label-lamp-flux = Photon flux at the leaves (PPFD)

label-lamp-hours = Lamp hours a day

label-carbon-dioxide = Carbon dioxide in the air

label-method = How the plants stand

label-shape = Shape of the container

label-foam = Foam of the boards

label-pipe = Pipe size

label-pipe-ends = Pipe ends

label-crop-kind = Crop

label-pattern = Pattern of the holes

# Before `date-meaning-transplanting` or `date-meaning-seeding`.
label-date-meaning = The date below is the day of

label-dosing = How you measure out

label-blend = Blend, by its grade N-P2O5-K2O

label-strength-by = Set the strength by

label-calcium-nitrate = Kind of calcium nitrate

# Before a choice such as `climate-choice-dry-summer`.
label-climate-kind = A place and season like

# Before `daylight-by-radiation` or `daylight-by-sunshine`.
label-daylight-by = Light is known as

label-shelter = Shelter

# Over the lines of a container that is measured with a jug.
label-measured = Water poured and depth read

# One line of a container that is measured with a jug.
label-measured-volume = Water in it, line { $number }

# One line of a container that is measured with a jug.
label-measured-depth = Depth read, line { $number }

# One of the salts on the shelf.
label-salt-choice = Salt { $number }

# One of the salts on the shelf.
label-salt-purity = Purity of salt { $number }

# One of the salts on the shelf.
label-salt-price = Price of salt { $number }

# Name of the button that takes a value one step up.
label-step-up = { $label }: more

# Name of the button that takes a value one step down.
label-step-down = { $label }: less

# Hints under the labels: how to find the value.

hint-count = All filled and planted alike.

hint-height = Stand a ruler on the floor inside and read it at the rim.

# The diameter inside, wherever it is asked for.
hint-diameter = Lay a tape across the widest line inside.

# Inside length and width.
hint-length = Between the inner faces, liner in place.

# Inside length and width at the floor; after `hint-length`.
hint-bottom-length = The same, down at the floor.

hint-body-height = From the floor up to where it begins to narrow.

# After `hint-body-height`.
hint-shoulder-height = From there up to where the neck begins.

hint-cover-thickness = What the pots hang from. 0 if the pot hangs in the neck.

hint-pot-height = From the foot to the underside of the flange.

hint-pot-flange-diameter = Across the brim that keeps the pot from falling through.

hint-pot-immersion = The lowest { $low } to { $high } is usual.

hint-fill-depth = Leave empty to have it worked out.

hint-board-count = Those that float in one tank.

hint-pipe-outside-diameter = Measure across the outside; a nominal size is not the true one.

hint-pipe-spacing = Leave empty to spread them evenly over the width.

hint-edge-distance = Leave empty for half the spacing.

hint-support-rating = From the builder's or maker's papers. Leave empty if you do not know; then do not build there.

hint-floor-drop = Measure with a water level; { $good } is a good floor.

hint-brace-spacing = Corners count as braces. The solution pushes the sides out between them.

hint-prop-rows = Lengthwise, evenly between the sides; 0 for none.

hint-sheet-length = As sold, before cutting.

hint-pipe-count = They lie on the floor and carry the boards later.

hint-spacing-across = From plant to plant. It is also the room that a head may take.

hint-date = Year-month-day, such as 2027-03-01.

hint-seedling-age = Days from sowing. One to two weeks is usual.

hint-target-head = Fresh, cut above the pot. { $low } to { $high } is usual for lettuce.

hint-growth-factor = Start with { $start }. 1 is the published growth model, which grows faster than crops do without pumps.

hint-water-factor = Start with 1. A notebook kept of one crop gives a better one.

hint-people = Leave empty if you do not plant every week.

hint-turnaround-days = Leave empty for 2 days.

hint-label-nitrogen = Copy every line from the bag. What it does not list stays empty or 0.

hint-target-conductivity = { $low } to { $high } mS/cm is usual for leafy greens in one charge. The grams follow from it, with or without a meter.

hint-target-nitrogen = 100 to 200 mg/L is usual for leafy greens.

hint-raw-water-conductivity = Read it with the meter. Rain about { $rain }, many taps { $low } to { $high } mS/cm. No meter? Leave it as it stands.

hint-rain-share = Share of all the water. None? Leave 0.

hint-water-kind = Not sure? Choose the tap, and leave its EC as it stands.

hint-water-alkalinity = From the report; where it gives bicarbonate, enter { $factor } times that.

hint-water-sulfate = Where the report gives S, enter 3 times that.

hint-water-nitrate = Where the report gives nitrate as N, enter { $factor } times that.

hint-acid = Only where the pH would be too high. Never with unknown drain or battery acids.

# Under the list of acids, where none is chosen and the pH is high.
acid-wanted = Without an acid the pH is { $ph }; { $low } to { $high } suits leafy greens. An acid takes a pH meter or paper: without one leave none, and plant all the same. Citric acid is the easiest to handle, but fades as microbes eat it.

# After the one before. share: a percentage.
acid-rain = Rain water for { $share } of the water brings the pH down too: see Raw water.

hint-acid-strength = From the label. Dry citric acid powder is 100%, or 91% with crystal water.

hint-target-ph = { $low } to { $high } suits leafy greens.

hint-store-temperature = Salts fall out of strong stocks in the cold.

hint-recipe-strength = Recipes were made for circulating systems; 50 to 80% suits one charge.

hint-crops-in-arow = 1 is the safe answer. More save water and salts, but sodium builds up.

hint-sheet-price = In any currency. Leave empty if you need no prices.

hint-salts = Choose from the list or type a formula, such as KNO3 or MgSO4.7H2O. Purity 100% unless the bag says less.

hint-stock-acalcium-nitrate = { $strength } is usual.

hint-stock-bblend = { $strength } of an 8-15-36 blend is usual.

hint-stock-bmagnesium-sulfate = The heptahydrate, Epsom salt. { $strength } is usual.

hint-latitude = Degrees, north positive; south with a minus or an S.

hint-temperature-min = Where the plants stand, mean of the season.

hint-humidity = Mean of day and night where the plants stand.

hint-solar-radiation = From a weather service, mean of the season.

hint-light-through = Filled in from the shelter; change it if you measured it.

hint-lamp-flux = From the lamp's data sheet, or a quantum (PAR) meter.

hint-carbon-dioxide = About 420 ppm outdoors.

hint-climate-kind = Fills in the figures below. Change any of them.

hint-blend = A typical label of this grade is filled in below: copy your own bag's figures where they differ. It must dissolve wholly in water.

hint-pipe = True outside diameters, not nominal sizes.

# The choice is `shape-measured`.
hint-shape = Not sure? Choose 'measured' and pour water in with a jug.

hint-measured = Pour in a known amount, read the depth, and go on. Three lines or more, each deeper than the one before.

## problems

# Heading of the list of entries that keep a plan from being worked out.
entries-to-mend = { $count ->
    [one] One entry needs mending
   *[other] { $count } entries need mending
}

# Under the heading while older figures are shown.
stale = The figures below are from before. They come back to life once this is mended; the card waits too.

# Beside a field, often after a sentence that says what is wrong.
problem-number-from-to = Enter a number from { $low } to { $high }.

# An empty field.
problem-missing-date = Enter a date, such as 2027-03-01.

# An empty field.
problem-missing-salts = Put at least one salt on the shelf.

# An empty field.
problem-missing-choice = Choose one.

# got: what was typed.
problem-not-a-number = '{ $got }' is not a number.

# got: what was typed.
problem-unknown-unit = The unit in '{ $got }' does not fit here.

# got: what was typed, such as 1,234; fraction and whole: the two ways to read it, 1.234 and 1234.
problem-comma-or-thousands = '{ $got }' can be read two ways. Write { $fraction } or { $whole }.

# got: what was typed.
problem-too-large = '{ $got }' is too large to work with.

# All three are figures with their units.
problem-out-of-range = { $got } is outside what is allowed: { $low } to { $high }.

# got: a figure.
problem-not-whole = { $got } is not a whole number.

# Beside the list of shapes of a container.
problem-boards-need-box = Floating boards need a box with straight walls, or they jam as the level falls.

# got: a word that a link or file brought.
problem-not-a-choice = '{ $got }' is not on the list. Choose one.

# got: what was typed.
problem-not-a-formula = '{ $got }' is neither a salt of the list nor a chemical formula such as KNO3 or MgSO4.7H2O.

# got: what was typed.
problem-not-a-date = '{ $got }' is no date of the calendar. Write year-month-day, such as 2027-03-01.

# Lines of a table of measured depths and volumes.
problem-measured-pairs = { $got ->
    [one] 1 line is filled in
   *[other] { $got } lines are filled in
}; { $needed } or more are needed.

# A file that was opened.
problem-not-a-plan = This is not a plan: it cannot be read from line { $line }, column { $column } on.

# Beside a field.
problem-beyond-any-solution = This asks for more than any solution holds.

problem-text-beyond-models = Taken together, these figures lie where the models cannot follow, such as a day without sun. Check climate and container.

# got and supported: versions of the file.
problem-newer-version = This plan was saved by a later version ({ $got }; this page reads up to { $supported }). Reload the page to get the later version.

# Beside a field. Here and below, got: the figure entered, limit: what the other entries allow, both with units.
conflict-neck-narrower-than-body = A neck of { $got } is wider than the body. At most { $limit }.

# got: thickness of the cover or board. limit: height of the pot.
conflict-pot-reaches-below-cover = The net pot is { $limit } high and would not reach through { $got } of cover.

# limit: a diameter.
conflict-pot-narrows-downwards = A net pot is no wider at its foot than at its top: at most { $limit }.

# limit: diameter of the neck.
conflict-pot-passes-neck = The pot does not pass the neck of { $limit }.

# got: a spacing, or a number of plants.
conflict-pots-fit-cover = With { $got } there is no room for the flanges side by side. The limit is { $limit }.

# limit: diameter of the pot at its top.
conflict-flange-holds-pot = The flange must be wider than the pot's { $limit }, or the pot falls through.

# Lengths.
conflict-immersion-within-pot = The pot reaches only { $limit } below the cover, so it cannot stand { $got } deep.

# limit: a height of the pot.
conflict-pot-above-floor = The pot would stand on the floor. Less than { $limit }.

# got: a depth.
conflict-within-rim = { $got } is above the rim. At most { $limit }.

# got: length or width of a board.
conflict-board-fits = A board of { $got } does not fit into the tank: at most { $limit }.

# got and limit: numbers of boards.
conflict-boards-fit-area = { $got } boards do not fit into the tank: at most { $limit }.

conflict-pipe-within-tank = This pipe leaves no room to float the boards above it in so low a tank.

# got and limit: numbers of pipes.
conflict-pipes-fit-width = { $got ->
    [one] This pipe is wider than the tank.
   *[other] { $got } pipes do not fit side by side: at most { $limit }.
}

# limit: a distance.
conflict-pipes-reach-walls = Pipes this far apart reach beyond the sides: at most { $limit }.

# Thicknesses.
conflict-wall-within-pipe = A wall of { $got } fills the whole pipe. Less than { $limit }.

# Distances between plants, or from the edge.
conflict-one-plant-fits = A spacing of { $got } leaves room for no plant at all: at most { $limit }.

# limit: a temperature.
conflict-minimum-below-maximum = The night cannot be warmer than the day's { $limit }.

# Beside the hours of sunshine. limit: hours.
conflict-sunshine-within-daylight = The day is only { $limit } long at this latitude and date.

# Beside the solar radiation.
conflict-radiation-below-extraterrestrial = More than reaches the top of the air at this latitude and date: at most { $limit }.

# Strengths of a stock solution; the coldest of the store: the lowest temperature where it is kept.
conflict-dissolves-in-store = { $got } does not dissolve when the store is coldest: at most { $limit }. Make the stock weaker, or keep it warmer.

# Beside the wanted EC or nitrogen.
conflict-target-above-raw-water = Your water alone has { $limit }. The target must be above that.

# Shares of a bag of fertilizer, as its label gives them.
conflict-nitrogen-forms-make-total = Total nitrogen is { $got }, but nitrate, ammonium and urea add up to { $limit }. One of them is not what the bag says.

# Plain numbers.
conflict-label-within-whole = What this label names adds up to at least { $got }% of the bag, but a bag holds { $limit }%. Check each line of it.

conflict-blend-conducts = Nothing on this label shows on an EC meter. Set the strength by nitrogen.

conflict-blend-has-nitrogen = This label has no nitrogen. Set the strength by EC.

# Beside a field.
field-left-empty = Left empty: { $value } is taken, as is usual.

# Beside a field, and after its name in the list of findings.
unusual-value = Unusual. Most are between { $low } and { $high }. Look again.

## results

event-planted = Seedlings go onto the solution

event-pot-foot-leaves = The level falls below the pots; the water roots carry on

event-boards-rest = The boards come to rest on the pipes; the air gap opens

event-target-reached = Heads are ready to harvest

event-used-up = The solution is used up

verdict-sound = sound

verdict-boards-sink = boards sink

verdict-tank-too-low = tank too low for it

verdict-rests-at-planting = boards do not float at planting

verdict-never-rests = boards never rest: no air gap

verdict-runs-out = solution ends before harvest

verdict-gap-too-small = air gap too small

verdict-gap-too-large = air gap too large for the water roots

verdict-too-little-left = too little solution left under the roots

nutrient-nitrogen = nitrogen

nutrient-phosphorus = phosphorus

nutrient-potassium = potassium

nutrient-calcium = calcium

nutrient-magnesium = magnesium

# Heading.
result = What comes of it

# Heading of the few words that the figures rest on; each leads to its field.
basis = These figures are for what follows. Touch what is different with you.
# How deep the container is, in the fewest words.
basis-deep = Container { $depth } deep inside

# How many plants share a container.
basis-plants-each = { $plants ->
    [one] 1 plant in a container
   *[other] { $plants } plants in a container
}

# The day of sowing, in the fewest words.
basis-sown = Sow on { $date }

# The day of sowing, where it is today.
basis-sown-today = Sow today, { $date }

# The raw water, in the fewest words.
basis-water-rain = Rain water

basis-water-tap = Tap water

basis-water-analysis = Water as analysed

# Headline.
fill = Fill to

# Headline.
dissolve = Dissolve

# Headline.
harvest = Harvest

# Headline.
at-harvest = Left at harvest

# Headline where there is no harvest.
at-end = Left at the end

# Button.
print = Print the card

# Button of the bar at the foot of a phone.
glance-heading = Result

# Heading of the list of days.
season = The season

# Heading of the list of findings.
findings = Checks

# What good practice is folded under.
good-practice = Good practice for this plan

# Heading of the pipe table.
pipes = Pipes compared

# Heading of the nutrient table.
nutrients = Does one charge feed the crop?

# Heading of the table of elements.
elements = What is in the solution

# Beside the chosen pipe.
chosen-heading = yours

# A nutrient lasts.
enough = enough

# Heading of the table of species.
species = Ions and what they pair to

# Heading of the table of doses.
doses = Every dose, for one container

# Heading of the table of a recipe's targets.
targets = Recipe: asked and reached

# Heading of the table of stocks.
stocks = Stock solutions

# Heading of the table of both stocks poured together.
mixtures = Both stocks undiluted together

# Heads of the pipe table.
pipe-heads-1 = Pipe

# Heads of the pipe table.
pipe-heads-2 = Verdict

# Heads of the pipe table.
pipe-heads-3 = Fill

# Heads of the pipe table.
pipe-heads-4 = Rests

# Heads of the pipe table.
pipe-heads-5 = Air gap

# Heads of the pipe table.
pipe-heads-6 = Outside

# Heads of the nutrient table.
nutrient-heads-1 = Nutrient

# Heads of the nutrient table.
nutrient-heads-2 = In the charge

# Heads of the nutrient table.
nutrient-heads-3 = Crop takes

# Heads of the table of elements.
element-heads-1 = Element

# Heads of the table of elements.
element-heads-2 = At planting

# Heads of the table of elements.
element-heads-3 = At the end

# Heads of the table of species.
species-heads-1 = Species

# Heads of the table of species.
species-heads-2 = mmol per kg of water

# Heads of the table of doses.
dose-heads-1 = What

# Heads of the table of doses.
dose-heads-2 = How much

# Heads of the table of targets.
target-heads-1 = Element

# Heads of the table of targets.
target-heads-2 = Asked

# Heads of the table of targets.
target-heads-3 = Reached

# Heads of the table of targets.
target-heads-4 = Miss

# Heads of the table of stocks.
stock-heads-1 = Stock

# Heads of the table of stocks.
stock-heads-2 = Contents

# Heads of the table of stocks.
stock-heads-3 = One batch serves

# Heads of the table of stocks.
stock-heads-4 = Saturation index

# Heads of that table.
mixture-heads-1 = Stock A

# Heads of that table.
mixture-heads-2 = Stock B

# Heads of that table.
mixture-heads-3 = Saturation index undiluted
# A share in per cent, by its number.
share-in-per-cent = { $share }%

# Heading of the checks that passed, folded away.
checks-passed = { $count ->
        [one] 1 check passed
       *[other] { $count } checks passed
    }

# Link under the large figures, to the cautions of the plan.
cautions-below = { $count ->
    [one] One caution: see the checks below
   *[other] { $count } cautions: see the checks below
}

# Before buttons that make a change.
mends-help = What helps:

# Button: makes this change.
mend-plants = { $plants ->
    [one] Set 1 plant in a container
   *[other] Set { $plants } plants in a container
}

# Button: makes this change.
mend-rain = If you have rain water: use { $share }%

# The fill mark: under Fill to, on the card, and within other sentences.
fill-below-rim = { $length } below the rim

# Under the fill mark. depth: of the solution before anything stands in it.
fill-deep = { $depth } deep, before the { $parts ->
        [boards] boards
       *[pots] pots
    } go in.

# Follows fill-deep, for one plant. brim: volume up to the brim; mass: of the solution.
fill-holds = { $volume } of the { $brim } to the brim, weighing { $mass }.

# Follows fill-deep, for several plants. brim: volume up to the brim; each: volume for one of them;
# mass: of the whole solution.
fill-holds-each = { $volume } of the { $brim } to the brim, weighing { $mass }: { $each } for each of { $plants } plants.

# After the volume of one container. rain: a volume.
fill-rain = { $rain } of it is rain water.

# Follows fill-holds, where there are several containers.
fill-all-containers = { $containers } containers take { $volume }.

# In place of the date of the harvest.
harvest-not-reached = Not reached

# Under the date of the harvest. head: mass of one.
harvest-after = { $days ->
    [one] 1 day
   *[other] { $days } days
} after the seedlings go in on { $planted } (sown on { $sown }), heads of about { $head }.

# Where there is no harvest. head: mass of one.
harvest-missing = Followed for { $days ->
    [one] 1 day
   *[other] { $days } days
}; heads reach about { $head }.

# Under the volume that is left. `use_per_mass`: with its unit, such as 20 L/kg.
left-uses = The crop draws { $each } a plant, { $use_per_mass } of fresh heads. Moist air gap { $gap }.

# The whole result, read aloud and copied as a text. mark: fill-below-rim; doses: a list such as 12 g of 10-8-22 fertilizer, or 5 salts; harvest: a date or harvest-not-reached.
result-told = Fill { $volume }, to { $mark }. Dissolve { $doses }. Harvest: { $harvest }. Left: { $left }.

# A day of the season and its date.
day-dated = Day { $day } · { $date }

# In the pipe table: the boards do not come to rest.
rests-never = never

# In the pipe table: when the boards come to rest.
rests-on-day = day { $day }

# Under the pipe table. Lengths with their units.
pipes-note-sound = Each size is filled so that its boards float { $clear } clear. The air gap comes from the water that the crop draws, so it hardly changes with the pipe; a thicker pipe leaves more solution. { $low } to { $high } of moist air at harvest is usual.

# Under the pipe table, where no size does.
pipes-note-none = No size gives a sound air gap with this crop and climate. The gap comes from the water that the crop draws: fewer or more plants, a longer or shorter crop, or another tank changes it; the pipe alone does not.

# In the nutrient table: there is less than the crop takes.
nutrient-short = short

# In the nutrient table.
nutrient-short-from = short from day { $day }

# A form of an element of a recipe; element: a symbol, N.
target-form = { $element } as { $form ->
        [ammonium] ammonium
       *[nitrate] nitrate
    }

# What one batch of a stock serves. Rounded numbers.
stock-serves = { $containers ->
    [one] 1 container
   *[other] { $containers } containers
}, { $heads ->
    [one] 1 head
   *[other] { $heads } heads
}

# A saturation index; several stand in a row with commas.
saturation-gypsum = gypsum { $index }

# A saturation index; several stand in a row with commas.
saturation-calcium-phosphate = calcium phosphate { $index }

# A saturation index; several stand in a row with commas.
saturation-lime = lime { $index }

# The readings of the solution. reference: the temperature that meters reckon EC to, 25 °C or 77 °F. ec, `ec_at_temperature`: with their unit; saturation: a list such as gypsum −1.2, lime 0.3.
solution-readings = EC { $ec } at { $reference } ({ $ec_at_temperature } at its own { $temperature }), pH { $ph }; saturation (clear below 0): { $saturation }.

## season

mark-fill = fill mark

mark-air = moist air

mark-never-above = no higher

curve-level = Level

curve-head = Head

curve-conductivity = EC

# Heading of the drawing.
drawing = In section, to scale

# Label of the day slider.
day-slider = Day after planting

# Button.
play = Play

# Button.
pause = Pause

# The curves, for those who cannot see them.
curves = Level, head and EC over the season; the table holds the same figures

# Under the curves.
curves-axis = days after planting

# Heading of the season's table.
season-table = Day by day

# Heads of the season's table.
season-heads-1 = Day

# Heads of the season's table.
season-heads-2 = Level

# Heads of the season's table.
season-heads-3 = Air gap

# Heads of the season's table.
season-heads-4 = Head

# Heads of the season's table.
season-heads-5 = EC

# Heads of the season's table.
season-heads-6 = pH

# A day of the season: value of the slider.
season-day = Day { $day }

# What the drawing shows on a day; standing-… follows. head: mass of one.
drawn-day = Day { $day }: solution { $level } deep, moist air gap { $gap }, heads of about { $head }, EC { $ec }.

# How pots and roots touch the solution; follows drawn-day.
standing-no-roots = The pots stand in the solution; their roots have not come out yet.

# How pots and roots touch the solution; follows drawn-day.
standing-in-solution = The pots stand in the solution; water roots reach { $length } below them.

# How pots and roots touch the solution; follows drawn-day.
standing-above = The pots hang above the solution; air roots span { $air }, water roots reach { $water } deep.

# How pots and roots touch the solution; follows drawn-day.
standing-dry = Neither pots nor roots touch the solution: the plants dry out.

# Button that shows the first day that fails.
failing-roots = Day { $day }: the solution falls away from the roots

# Button that shows the first day that fails.
failing-pots = Day { $day }: the pots lose the solution before roots reach it

# Notice after a button was pressed that mends the plan; change: the words of that button.
change-made = Changed: { $change }. Now { $figures }.

## doses

# What is measured out; begins with a small letter, as it stands after an amount. grade: 10-8-22.
material-blend = { $grade } fertilizer

# What is measured out.
material-stock-a = stock A

# What is measured out.
material-stock-b = stock B

# What is measured out. grade: 15.5-0-0.
material-calcium-nitrate-double-salt = calcium nitrate, granular ({ $grade })

# What is measured out.
material-calcium-nitrate-tetrahydrate = calcium nitrate tetrahydrate

# What is measured out.
material-magnesium-sulfate = magnesium sulfate heptahydrate (Epsom salt)

# An amount and what is measured out: 8 g of 10-8-22 blend. Several are joined by +.
dose-of = { $dose } of { $material }

# In place of a list that would be long: how many salts are weighed.
salts-in-all = { $count } salts

# count is two or more.
all-doses-as-often = { $count } containers take { $count } times as much.

# count is two or more. doses: 16 g of 10-8-22 blend + 20 mL of stock A.
all-doses = { $count } containers take { $doses }.

# Under the doses of one container, all with units but pH.
dose-more = { $ec } at { $reference }, pH { $ph }, { $nitrogen } nitrogen. For one container.

# charge: money for the fertilizer of one container. head: money for one plant of it.
cost-line = It costs about { $charge }, { $head } a head.

## findings

# Mark of a finding: the plan fails here.
weight-stop = Stop

# Mark of a finding: it may work, look again.
weight-caution = Take care

# How a caution is headed that stands in every plan of its kind.
weight-safety = Safety

# Mark of a finding: a check that passed.
weight-sound = Good

# Mark of advice that belongs to every such plan.
weight-reminder = Good practice

# A charge: the water and fertilizer filled in once, before planting.
finding-lasts = One charge lasts to harvest; about { $left } is left in each container.

# short: a volume.
finding-runs-out = The solution is used up on day { $day }, before harvest: about { $short } short. Plant fewer heads, take a larger container, give shade, or harvest smaller heads. Do not top up later: air roots drown.

# head: mass of one plant.
finding-not-reached = Heads reach only about { $head } in { $days } days. More light or warmth, older seedlings, or a smaller head would get there.

finding-per-plant = { $volume } of solution for each plant; { $low } to { $high } before planting is usual.

# After the one before, where there is more.
finding-per-plant-more = More does no harm, it only costs water and fertilizer.

finding-immersion = The lowest { $immersion } of each pot stands in the solution at planting; { $low } to { $high } is usual.

finding-pots-hang-above = The pots hang { $by } above the solution at planting, so the medium stays dry. Fill higher or use deeper pots.

finding-overflows = The container overflows once pots or boards are in. Fill less.

finding-gap = Moist air gap of { $gap } at harvest; { $low } to { $high } is usual.

finding-boards-sink = The boards sink under pots and plants. Use thicker boards or fewer plants.

finding-rest-at-planting = The boards lie on the pipes from the first day. They float once the fill is { $depth } deep.

finding-floats = The boards float at planting, { $clearance } clear of the pipes.

finding-never-rest = The boards still float at harvest, so no air gap opens and roots may lack air. Fill less, or use thicker pipes.

finding-little-left = Only { $depth } of solution is left under the boards at harvest; keep at least { $low }. A thicker pipe holds more.

finding-no-pipe-fits = No standard pipe gives a sound air gap here. See the table of pipes.

# nutrient: nitrogen, phosphorus, potassium, calcium or magnesium. The rest in grams.
finding-short = Too little { $nutrient } in the charge: { $supply } against { $need } that the crop takes.

# As before, with the day on which it begins.
finding-short-from-day = Too little { $nutrient } in the charge from day { $day } on: { $supply } against { $need } that the crop takes.

# After either of the two before.
finding-short-calcium = Most blends hold no calcium; calcium nitrate brings it. Choose stock solutions A and B, or single salts.

# After either of the two before, where it is not calcium.
finding-short-more = A stronger solution, another blend or different water must bring the rest.

finding-nutrients-last = Nitrogen, phosphorus, potassium, calcium and magnesium last to harvest.

finding-strong-at-end = The solution gets strong: about { $ec } at the end. Above { $limit } lettuce begins to suffer.

# After the one before. start: an electrical conductivity with its unit.
finding-strong-start = Start at { $start } at the most, or give more solution to each plant.

# In place of the one before, where no such start is known.
finding-strong-weaker = More solution for each plant, more light or smaller heads help.

finding-urea = { $share } of the nitrogen is urea. It feeds slowly in still solution and a meter does not see it. Prefer a blend with nitrate.

finding-heavy = Full, the solution alone weighs { $mass }. More than about { $limit } is no load for one person: fill it where it will stand.

finding-floor-load = The solution loads what is under it with { $load }. Build on firm level ground. From about { $limit }, on any bench, deck, balcony or roof, ask a competent person and follow local code first.

finding-open-water = Small children can drown in a few { $units ->
    [us] inches
   *[metric] centimetres
} of water. Keep the tank covered and fenced off, and never leave children alone with it.

finding-salts = Keep fertilizer and solution closed, labelled and out of reach of children and animals. Follow the product's label. Wash hands after mixing.

finding-electricity = Lamps and cords near water: use gear made for wet places on an outlet with a safety cut-out (RCD, GFCI), well above the tank; let cords loop down below the outlet, so that drips fall off; and let a licensed person wire it.

# minerals: one or more names of minerals, such as gypsum and lime.
finding-stocks-apart = Never pour stock A and stock B together undiluted: { $minerals } would fall out.

# After the one before.
finding-stocks-thinned = { $times ->
    [one] Equal parts would stay clear, but not every mixture.
   *[other] They stay clear only once thinned to { $times } times their volume.
}

# After the two before.
finding-stocks-in-turn = Stir one into the water first, then the other.

finding-acid = Acid: gloves and eye protection, out of children's reach, and always pour acid into water, never water into acid. Add part of it, stir, measure the pH, go on. Follow the label.

# stock: stock A or stock B; the first letter of the sentence becomes a capital. share: per cent, without the sign.
finding-stock-clear = { $stock } stays clear when the store is coldest; its salts take up { $share }% of what dissolves then.

# As before.
finding-stock-over-full = { $stock } does not stay clear: its salts are { $share }% of what dissolves when the store is coldest.

# As before. minerals: one or more names of minerals.
finding-stock-falls-out = { $stock } does not stay clear: { $minerals } will fall out of it.

# After one of the two before.
finding-stock-other-salts = Weaker does not help; use other salts.

# After one of the two before. share: per cent, without the sign.
finding-stock-weaker = Make it at most { $share }% of this strength, and pour more of it, or keep it warmer.

# low and high: EC.
finding-fitting-strength = In this climate a charge of { $low } to { $high } ends neither starved nor salty.

# low and high: EC.
finding-no-fitting-strength = No single strength fits: it takes { $low } or more to feed the crop to the end, and { $high } or less to keep the end from getting salty. { $fewer ->
    [yes] Fewer plants in the container
   *[no] More solution for each plant, or smaller heads,
} mend both.

# nutrient: symbol of an element. form: nitrate, ammonium or nothing. reached and target: mg/L.
finding-target-missed = The salts on the shelf miss { $nutrient }{ $form ->
    [nitrate] {" as nitrate"}
    [ammonium] {" as ammonium"}
   *[none] {""}
}: { $reached } where the recipe asks for { $target }.

# Electric charge of ions, in mmol.
finding-label-charges = The label of the blend does not balance: nitrate, phosphate and sulfate bring { $anions } of electric charge in a gram; potassium, ammonium, calcium and magnesium, which should balance it, only { $cations }. Check nitrate and phosphate against the bag.

finding-ph = pH { $ph } after mixing; { $low } to { $high } suits leafy greens.

# After the one before, where the pH is low.
finding-ph-low = Pure water does not hold the pH steady: some tap water in it brings the pH up, and it rises as the crop feeds.

# After it, where the pH is high.
finding-ph-high = You can plant all the same: young leaves may then go yellow, as iron feeds poorly.
# After the one before, while there is still time for it.
finding-ph-lower = Rain water for part of it, or an acid added with a pH meter or paper, brings the pH down.

finding-ph-drift = As the crop feeds, the pH drifts from { $from } to about { $to } (at the very most: roots and air hold it back).

# After the one before.
finding-ph-steady = With { $steady } of its nitrogen as ammonium a fertilizer would hold it steady; this one has { $now }.

# After the two before: the pH.
finding-ph-measure = Nothing to do before planting; yellow young leaves are the sign to measure it.

finding-no-acid-needed = No acid is needed: the pH is { $ph } already.

# minerals: one or more names of minerals; the first letter of the sentence becomes a capital.
finding-falls-out = { $minerals } can fall out: a white powder at the bottom, which feeds no plant. Rain water or a lower pH keeps it dissolved.

finding-analysis-agrees = The water analysis agrees with itself.

finding-analysis-disagrees = The water analysis does not agree with itself.

# After one of the two before.
finding-analysis-charge = Cations and anions differ by { $share }: positive and negative ions should balance.

# After one of them.
finding-analysis-ec = The EC measured is { $share } of what its ions would give.

# After the others, where the analysis does not agree.
finding-analysis-look = Look for a missing or mistyped line.

# item: what an analysis lists, such as Boron (FAO 29).
finding-water = { $item }: { $amount } in your water; up to { $limit } is without restriction.

# After the one before.
finding-water-severe = Severe restriction: do not use it unmixed.

# After it.
finding-water-moderate = Slight to moderate restriction.

finding-dilute-water = Mixed with rain, { $share } of your water and the rest rain meets every limit.

finding-salt-yield = Sodium chloride (common salt) in the solution at the end leaves about { $share } of the full yield.

# crop: 2 for the second crop on the same solution.
finding-grow-on = Crop { $crop }: refill with { $refill } of raw water and add back { $add_back } of the first dose of fertilizer (EC then { $ec }, sodium { $sodium }).

# After the one before.
finding-grow-on-drain = Better to drain and start afresh: it gets too salty. Spread what is spent on soil that can use it, never into a stream or storm drain.

finding-warm = The season's mean of { $mean } is warm for this crop; above { $limit } bolting, bitter leaves and tip burn are common. Shade, or plant in a cooler season.

# lost: a day.
finding-roots-follow = The roots come out of the pots into the solution by day { $day }, before the pots hang above it on day { $lost }, and follow it down.

finding-roots-reach = The roots come out of the pots into the solution by day { $day }, and the pots stand in it to the end.

finding-roots-stand = The pots stand in the solution all season.

# What mends it follows.
finding-contact-lost = On day { $day } the pots hang above the solution and the roots have not reached it: { $short } short. The medium dries and the plants with it.

# What mends it follows.
finding-roots-hang = On day { $day } the solution falls away from the roots: they hang { $short } above it.

# oxygen: mg/L.
finding-warm-solution = The solution is warm, about { $solution }, and holds at most { $oxygen } of oxygen. Above about { $limit } roots rot more easily. Shade the container, make it white or wrap it, and keep the moist air gap open.

# least, most and season: days with their unit.
finding-mosquitoes = Mosquitoes can grow up in the open solution: at { $mean } from egg to adult in about { $least } to { $most }, and it stands for { $season }. Close every gap, seal the cover, put fine screen over openings; small fish help in large tanks; or use a biological larvicide labelled for this use. Follow its label and local law.

finding-algae-in-clear-wall = Light through a clear wall grows algae, which take oxygen and food from the roots. Paint or wrap the bottle so that no light gets in.

finding-algae-at-edges = Algae grow where light falls on the solution beside the boards. Close the gaps with strips of board or dark film that move with the boards.

# deficit and limit: kilopascals, without the unit.
finding-midday-wilt = Expect wilting at midday: at { $max } the air is very dry (it lacks { $deficit } kPa of vapour; above { $limit } leaves lose more than roots bring). Leaves that stand up again by evening are unharmed; wilting in the morning means the roots are in trouble. Give shade at midday.

finding-tip-burn = Tip burn is likely: { $light } of light a day (from about { $limit } on), warm at { $mean } and moist at { $humidity }. Give shade, move the air over the leaves, or harvest smaller heads.

finding-rain-dilutes = Keep rain out of the container, also when it blows in from the side. Rain weakens the solution, and a level that rises drowns the air roots.

finding-drain-interval = Drain and scrub the container after { $crops ->
    [one] each crop
   *[other] { $crops } crops
}, about every { $days } days. Let it dry before the next charge.

finding-food-container = Use only containers made for food or drinking water. Never one that held pesticide, fuel, paint or any other chemical, however well it was rinsed.

finding-tank-liner = Line the tank with film made for food, drinking water or fish ponds, and keep treated timber away from the solution.

finding-clean-harvest = Harvest with clean hands and a clean knife, keep leaves clear of the solution, and wash them in drinking water before eating.

finding-spent-solution = About { $volume } of spent solution is left in all. Pour it on soil whose plants can use it, a little at a time. Never into a stream, pond or storm drain. Follow local rules.

finding-dim = Light is low: { $light } a day; below about { $limit } plants stretch and grow slowly.

finding-brighter-than-clear-sky = The solar radiation is more than a clear sky gives at this latitude and date. Check it.

finding-not-validated = The growth model was made and tested for lettuce. For this crop dates and amounts of water are a rough guide only.

# Where pots or roots lose the solution.
roots-mends-none = No single change of fill, pot or pipe mends it: take another container, or fewer and smaller plants.

# ways: some of the four below, with a semicolon between.
roots-mends-any = Any of these mends it: { $ways }.

# A way to mend. Also a button, which begins with a capital.
roots-way-fill-depth = fill to a depth of { $depth }

# A way to mend, and a button. height: of the pot.
roots-way-pot-height = use pots { $height } deep over the same fill

# A way to mend, and a button. across: outside diameter.
roots-way-pipe = lay pipes of { $across }

# A way to mend, and a button.
roots-way-pipe-and-fill = lay pipes of { $across } and have the fill worked out

# A mineral that falls out, within a sentence.
mineral-gypsum = gypsum

# A mineral that falls out.
mineral-calcium-phosphate = calcium phosphate

# A mineral that falls out.
mineral-lime = lime

# What an analysis of water lists. FAO 29 is the paper that the limit comes from.
water-item-salinity = Salinity (FAO 29)

# The sodium adsorption ratio.
water-item-sodium-adsorption = Sodium against calcium (FAO 29)

water-item-chloride-toxicity = Chloride (FAO 29)

water-item-boron = Boron (FAO 29)

water-item-nitrate-nitrogen = Nitrate nitrogen (FAO 29; it feeds the crop, count it in)

water-item-bicarbonate = Bicarbonate (FAO 29)

water-item-ph = pH (FAO 29)

water-item-sodium = Sodium

water-item-chloride = Chloride

water-item-sulfate = Sulfate

water-item-alkalinity = Alkalinity

water-item-calcium = Calcium

water-item-hardness = Hardness

# Milliequivalents in a litre. Between number and unit stands a space that does not break.
water-amount-milliequivalents = { $amount } me/L

# Alkalinity and hardness, counted as calcium carbonate.
water-amount-as-carbonate = { $amount } mg/L CaCO3

## workings

working-of-fill = How the fill is worked out

working-of-dose = How the dose is worked out

working-of-harvest = How the harvest is worked out

working-of-water = How the water is worked out

working-of-solution = How EC, pH and saturation are worked out

working-of-nutrients = How the nutrients are worked out

working-of-stocks = How the stocks are worked out

working-of-boards = How boards and pipes are worked out

working-of-days = How each day is worked out

working-of-recipe = How the recipe is worked out

working-of-strength = How the fitting strength is worked out

working-of-raw-water = How the raw water is judged

working-of-drift = How the drift of the pH is worked out

working-of-salt = How the cost of salt is worked out

working-of-next-crops = How the next crops are worked out

working-of-load = How the weight is worked out

working-of-roots = How the roots are worked out

working-of-mosquitoes = How the mosquitoes are worked out

inputs-stocks = Strength of each stock, the volume you make up, and how cold the store gets.

inputs-recipe = Targets of the recipe times its strength, less what the raw water brings; composition of each salt on your list.

inputs-salt = Sodium and chloride of raw water and fertilizer, and the water that leaves through the crop while they stay.

# Names of the four parts of a working.
working-parts-1 = From

# Names of the four parts of a working.
working-parts-2 = By

# Names of the four parts of a working.
working-parts-3 = After

# Names of the four parts of a working.
working-parts-4 = How sure

# What the fill is worked out from. level: of the solution above the floor; immersion: of the pots; depth: of the solution alone.
inputs-fill = Your measures of container, cover and pots. With everything in place the solution stands { $level } above the floor and the pots { $immersion } deep in it; without them the same { $volume } stand { $depth } deep.

# raw, solution: their electrical conductivity, with its unit; doses: a list such as 12 g of 10-8-22 fertilizer + 8 g of calcium nitrate, or 5 salts.
inputs-dose = { $volume } of solution, raw water of { $raw }, and the strength you asked for; the solution then reads { $solution } with { $nitrogen } nitrogen. That takes { $doses }.

# light: with its unit, mol/m².
inputs-harvest = Mean temperature { $temperature }, light { $light } a day at the plants, seedling age, spacing, the growth factor, and { $head } as the mass of a head at the end.

# `use_per_mass`: with its unit, such as 20 L/kg.
inputs-water = { $volume } at planting; the crop draws { $drawn } to the end, { $evaporated } of it through openings; { $use_per_mass } of fresh heads.

# saturation: a list such as gypsum −1.2, lime 0.3.
inputs-solution = Every ion of fertilizer, acid and raw water. Ionic strength { $ionic_strength } mol/kg; pH { $ph }; { $saturation }.

# plants: how many; head: the mass of one.
inputs-nutrients = Dry mass of { $plants } { $plants ->
        [one] head
       *[other] heads
    } of { $head } at the end, and the content of the tissue.

# What a day of the season is worked out from.
inputs-days = { $volume } of solution at planting, the water drawn on each day, the shape of the container, and what the crop takes up; { $days } days in all.

# solution: its electrical conductivity, with its unit.
inputs-strength = Water of { $use_per_mass } of fresh heads, uptake by the crop, and { $solution } at planting; the end of the season at each trial strength.

# An electrical conductivity, with its unit.
inputs-raw-water = Your figures of the raw water; it computes to { $conductivity }.

# What the drift of the pH is worked out from.
inputs-drift = Cations and anions that the crop takes up, and a pH of { $ph } at planting.

# solution: its electrical conductivity, with its unit.
inputs-next-crops = What is left at harvest: { $volume }, with an EC of { $solution }.

# What the weight on the floor is worked out from.
inputs-load = { $volume } in one container, which weighs { $mass }, over the area of its floor.

# growth: a length.
inputs-roots = Tips that grow { $growth } a day at the season's mean temperature; { $oxygen } of oxygen at the surface; the level of each day.

# What the time from egg to adult is worked out from.
inputs-mosquitoes = Solution at the mean of the air, { $temperature }.

# draught: how deep the board lies in the solution.
inputs-boards = One board with pots weighs { $mass } at planting and lies { $draught } deep; the level falls with the water drawn.

# By which equation.
working-fill-by = Volume of the shape up to the level, less what pots, boards and pipes push aside; inverted by Newton's method.

# After whom; names and years of sources stay.
working-fill-after = Solid geometry; monotone cubic interpolation for a vessel measured with a jug (Fritsch and Butland 1984).

# How sure that is.
working-fill-sure = As sure as your tape.

# By which equation.
working-dose-by = Composition of label or salt times grams, until EC or nitrogen meets the target; single salts by bounded least squares on the recipe.

# After whom; names and years of sources stay.
working-dose-after = IUPAC standard atomic weights; P = { $phosphorus } P2O5, K = { $potassium } K2O; Lawson and Hanson 1974.

# How sure that is.
working-dose-sure = As sure as the label and the scale. An unknown tap is taken as calcium bicarbonate water of its EC.

# By which equation.
working-harvest-by = Two stores of dry mass, sugars and structure; photosynthesis from light, carbon dioxide and temperature, hour by hour, times the growth factor.

# After whom; names and years of sources stay.
working-harvest-after = Van Henten 1994, with its published parameters; air and light by FAO Irrigation and Drainage Paper 56; dry matter by USDA food composition tables.

# How sure that is.
working-harvest-sure = Validated for lettuce in greenhouses; about a week either way.

# By which equation.
working-water-by = Energy balance of the canopy: heat and vapour flow against stomatal and aerodynamic resistances; pots and edges evaporate { $factor } times the reference.

# After whom; names and years of sources stay.
working-water-after = Graamans and others 2017; FAO Irrigation and Drainage Paper 56.

# How sure that is.
working-water-sure = 20 to 30% either way; a hot dry spell takes more than the mean.

# By which equation.
working-solution-by = Mass action of ions and pairs with activities, open to the air's carbon dioxide; conductivity from the species; saturation index = log of activity product over solubility product.

# After whom; names and years of sources stay.
working-solution-after = Truesdell and Jones 1974; Robinson and Stokes 1959; McCleskey and others 2012; Nordstrom and others 1990. Checked against PHREEQC.

# How sure that is.
working-solution-sure = EC within 3% of a known solution, 10% of a label; pH within { $error } in weakly buffered water.

# By which equation.
working-nutrients-by = Dry mass times content of the tissue, against grams brought by fertilizer and raw water.

# After whom; names and years of sources stay.
working-nutrients-after = USDA food composition tables, nitrate added.

# How sure that is.
working-nutrients-sure = About 30% either way.

# By which equation.
working-stocks-by = Each salt against its solubility when the store is coldest, and the saturation of gypsum and calcium phosphate in each stock and in both together.

# After whom; names and years of sources stay.
working-stocks-after = CRC Handbook solubilities; equilibria as for the tank.

# How sure that is.
working-stocks-sure = Solubility within 5% for one salt alone; saturation index within { $error }.

# By which equation.
working-boards-by = Displaced water equals floating mass; gap = height of the pipes less the level.

# After whom; names and years of sources stay.
working-boards-after = Archimedes; ASTM C578 foam densities; ISO 161-1, ASTM D1785, D2729 and D3034 pipe diameters.

# How sure that is.
working-boards-sure = About { $error } on a level floor; sag and a floor out of level are judged on their own.

# By which equation.
working-days-by = Solution of a day = that of the day before less transpiration and evaporation; level from the shape of the container; each nutrient less uptake; EC and pH from the ions left.

# After whom; names and years of sources stay.
working-days-after = Mass balance over the sources of harvest, water, nutrients and solution.

# How sure that is.
working-days-sure = As sure as water and harvest: 20 to 30%, and about a week.

# By which equation.
working-recipe-by = Grams of each salt, none below zero, that bring the least sum of squared misses, each relative to its target.

# After whom; names and years of sources stay.
working-recipe-after = Lawson and Hanson 1974, non-negative least squares; recipes as published, named in the list.

# How sure that is.
working-recipe-sure = Exact for pure salts; as sure as their purity.

# By which equation.
working-strength-by = From the weakest with which no nutrient runs out before harvest to the strongest whose EC at harvest the crop still bears.

# After whom; names and years of sources stay.
working-strength-after = Mass balance of the season; tissue contents by USDA food composition tables.

# How sure that is.
working-strength-sure = About 30% either way, like water use and uptake.

# By which equation.
working-raw-water-by = Each item against its limit; charges of cations against anions; computed against measured EC; the share of rain that brings every item below its limit.

# After whom; names and years of sources stay.
working-raw-water-after = FAO Irrigation and Drainage Paper 29 (Ayers and Westcot 1985), Table 1; alkalinity practice of soilless culture.

# How sure that is.
working-raw-water-sure = As sure as the analysis.

# By which equation.
working-drift-by = Each charge that roots take in is paid with one of hydrogen or bicarbonate; nitrate takes the pH up, ammonium down.

# After whom; names and years of sources stay.
working-drift-after = Charge balance of uptake; equilibria as for the tank.

# How sure that is.
working-drift-sure = The direction is sure, the size an outer bound: roots and their breath damp it.

# By which equation.
working-salt-by = Yield falls by a set share for each unit of salinity above a threshold.

# After whom; names and years of sources stay.
working-salt-after = Maas and Hoffman 1977; of the part of the EC that sodium and chloride make up, half counts as the soil extract they measured.

# How sure that is.
working-salt-sure = A few per cent of yield.

# By which equation.
working-next-crops-by = Refill with raw water to the first mark, add back what the next crop takes of nitrogen; drain once sodium, chloride or EC is past its limit.

# After whom; names and years of sources stay.
working-next-crops-after = Mass balance of the season.

# How sure that is.
working-next-crops-sure = Measure EC before each crop: it counts more than the forecast.

# By which equation.
working-roots-by = Tips start from a { $plug } plug, grow { $growth } for each degree above { $from } a day, and stop where less than 2 mg/L of oxygen diffuses down to them.

# After whom; names and years of sources stay.
working-roots-after = Degree-days after Kage and others 2000; diffusion after Han and Bartels 1996; the figures for lettuce, the plug and the least oxygen are assumed.

# How sure that is.
working-roots-sure = A guide: real solution stirs a little at night, so roots may go deeper.

# By which equation.
working-mosquitoes-by = Rate of development at a constant temperature, from egg to adult.

# After whom; names and years of sources stay.
working-mosquitoes-after = Rueda and others 1990, for Culex quinquefasciatus and Aedes aegypti.

# How sure that is.
working-mosquitoes-sure = Other species and hungry larvae take longer, up to three times.

# By which equation.
working-load-by = Volume times density; mass over area.

# After whom; names and years of sources stay.
working-load-after = Density of water by Tanaka and others 2001; loads of floors vary, so ask who knows the building.

# How sure that is.
working-load-sure = Within 2%, container, boards and crop not counted.

## card

# Kind of paper.
card = Planting card

# Where the plan has problems, instead of the card.
card-waits = The plan has entries to mend. There is no card until they are mended.

# Headings.
card-prepare-heading = Prepare

# Heading.
card-fill = Fill mark

# Heading.
card-mix-heading = Mix, in this order

# Heading.
card-dates-heading = Dates

# Heading.
card-rule = Never raise the level

# The rule.
card-rule-text = The level may only fall. Air roots grow in the moist gap that opens; a level that rises again drowns them. Keep rain out. If the solution would not last, pour in plain water a little at a time and never more than was drunk since the day before: so it never stands higher than then.

# Heading.
card-watch = Watch for

# Heading.
card-cautions = Take care

# Heading.
card-notes = Notes

# What to watch for; the same for every plan.
watch-lines-1 = Mosquitoes: seal every gap wider than { $gap }; stretch fine net over what must stay open.

# What to watch for; the same for every plan.
watch-lines-2 = Green water: light gets in. Cover it.

# What to watch for; the same for every plan.
watch-lines-3 = Midday wilt in hot sun that is gone by evening is no alarm; if they are limp in the morning, look at the roots.

# What to watch for; the same for every plan.
watch-lines-4 = Brown slime or a foul smell on the roots: take the plant out, wash the container.

# What to watch for, where the card lists levels. The use of water is known to within 20 to 30 %.
watch-lines-5 = Every second week measure from the rim down to the surface. If it has fallen from the fill mark by a third more than the list above says, write it down; if the solution would not last, pour in water as in the box, or harvest early.

# What to watch for; the same for every plan.
watch-lines-6 = Yellow young leaves: measure the pH, with paper strips if you have no meter; iron feeds poorly where it is high.

# Heads a list of dates, each with a length.
card-levels-heading = Level below the rim

# A date and how far the level is below the rim then.
card-level = { $date }: { $level }

# Under "Prepare", for a tank with boards that rest on pipes.
card-prepare-boards = A food-grade container that never held chemicals, washed, light-tight; boards washed, pipes laid and level.

# Under "Prepare", for a bottle.
card-prepare-neck = A food-grade container that never held chemicals, washed, light-tight, with a neck that the net pot fits.

# Under "Prepare", for a container with a cover. `hole`: diameter of a hole.
card-prepare-cover = A food-grade container that never held chemicals, washed, light-tight. In its cover { $plants ->
    [one] a hole { $hole } across; the pot hangs
   *[other] { $plants } holes { $hole } across, spread evenly; each pot hangs
} by its brim.

# Under "Prepare"; each: plants on one board.
card-prepare-pots-on-boards = { $plants ->
    [one] 1 net pot { $height } high with wet medium.
   *[other] { $plants } net pots { $height } high with wet medium, { $each } to a board.
}

# Under "Prepare".
card-prepare-pots = { $plants ->
    [one] 1 net pot { $height } high with wet medium, such as coir or perlite.
   *[other] { $plants } net pots { $height } high with wet medium, such as coir or perlite.
}
# Under "Prepare". Common practice, no source.
card-prepare-seeds = Seeds: two in each pot, moist and in the light until planting; leave the stronger seedling.
# Under "Prepare", where a blend is weighed.
card-prepare-blend = A fertilizer that dissolves wholly in water (try a pinch in a glass); slow-release grains do not feed here.

# A part of a stock solution, as in "100 g/L calcium nitrate"; parts stand in a row with "+".
card-stock-part = { $strength } of { $material }

# A stock solution and its parts.
card-stock = { $stock }: { $parts }.

# Under "Prepare", for two containers and more; a sentence with the doses of all may follow.
card-prepare-all = For { $containers } containers: { $volume } of solution in all.

# Under the doses of one container.
card-dose-for = { $plants ->
    [one] For one container with one plant.
   *[other] For one container with { $plants } plants.
}
# After the one before, where a single material is weighed. strength: grams of it for each litre.
card-dose-each = Another volume: { $strength }.

# Under the fill mark in large type. `put_in`: what goes into the container, boards or pots.
card-mark-more = { $depth } above the floor of a container { $height } deep, { $volume } in all. Mark it before the { $put_in ->
    [boards] boards
   *[pots] pots
} go in; the pots then stand { $immersion } deep in the solution.

# First step of mixing.
card-mix-half = Fill about halfway with tap or well water (EC about { $ec }).

# First step of mixing, where the plan counts on water with hardly any salt.
card-mix-half-pure = Fill about halfway with rain water, or water as pure.

# First step of mixing, where half of the water or more is rain.
card-mix-rain = Pour in { $rain } of rain water.

# First step of mixing, where less than half of the water is rain.
card-mix-rain-and-tap = Pour in { $rain } of rain water, then tap or well water to about halfway.

# Step of mixing, with one fertilizer.
card-mix-only = Weigh { $dose } of { $material }. Stir it into a jug of water until clear, then pour it in.

# Step of mixing, the first of two stock solutions.
card-mix-first-stock = Pour in { $dose } of { $material } and stir well.

# Step of mixing, the second of two stock solutions.
card-mix-second-stock = Only then pour in { $dose } of { $material } and stir well.

# A salt in a list of those that go into one jug.
card-mix-salt = { $dose } { $material }

# Step of mixing; salts: a list with commas.
card-mix-first-jug = Dissolve in a jug, pour in, stir: { $salts }.

# Step of mixing: the salts that must not meet those of the first jug undiluted.
card-mix-second-jug = In a second jug, only after that: { $salts }.

# Step of mixing.
card-mix-fill = Fill to the mark with the same water and stir.

# Step of mixing, where the rain is in already.
card-mix-fill-tap = Fill to the mark with tap or well water and stir.

# Step of mixing.
card-mix-acid = Gloves, eye protection: stir in up to { $dose } of { $material }, bit by bit, to pH { $ph }. Without a meter or pH paper leave it out.

# Last step of mixing.
card-mix-measure = Measure, if you have a meter: EC about { $ec } at { $reference }, pH about { $ph }. Too strong? Swap some for water. Too weak? Stir in a little more, dissolved. Only now, before planting.

# Before a date.
card-date-sow = Sow

# Before a date.
card-date-plant = Fill, mix and plant

# Before a date.
card-date-boards-rest = Boards rest, about

# Before a date.
card-date-harvest = Harvest, about

# A date and the days since planting.
card-date-day = { $date } (day { $day })

# In place of the date of the harvest.
card-date-no-harvest = not reached

# Under the dates.
card-expect = Expected at the end: heads of about { $head }, { $left } of solution left (for planted soil, never a stream or drain), moist air gap { $gap }.

## calendar

# Heading.
calendar = Calendar

# Link.
save-calendar = Save for a calendar program

# Name of the file.
calendar-file = slackwater.ics

# Heading of the plantings of a succession.
succession-heading = Heads every week

# Heads of the table of plantings.
succession-heads-1 = Group

# Heads of the table of plantings.
succession-heads-2 = Sow

# Heads of the table of plantings.
succession-heads-3 = Plant

# Heads of the table of plantings.
succession-heads-4 = Harvest from

# Entry of the calendar.
calendar-seeding = Sow

# More about that entry, in the calendar program.
calendar-seeding-more = Sow the seed in plugs.

# Entry of the calendar.
calendar-transplanting = Fill, mix and plant

# More about that entry, in the calendar program.
calendar-transplanting-more = Fill to the mark, mix in the fertilizer, set the pots in place.

# Entry of the calendar.
calendar-boards-rest = Boards come to rest

# More about that entry, in the calendar program.
calendar-boards-rest-more = Moist air opens under the boards from now on. Do not top up.

# Entry of the calendar.
calendar-pots-leave = Pots hang above the solution, as they should

# More about that entry, in the calendar program.
calendar-pots-leave-more = Water roots carry on. Do not top up: air roots drown.

# Entry of the calendar.
calendar-harvest = Harvest, within a week

# More about that entry, in the calendar program.
calendar-harvest-more = Clean hands, a clean knife, a week to finish.

# Entry of the calendar.
calendar-clean = Drain and clean

# More about that entry, in the calendar program.
calendar-clean-more = Spread the rest on soil that can use it; never into a stream or storm drain.

# Entry of the calendar.
calendar-refill = Top up for the next crop

# More about that entry, in the calendar program.
calendar-refill-more = Add the raw water and fertilizer that the plan names until the boards or pots stand as at the first planting.

# Entry of the calendar.
calendar-seed-next = Sow the next crop

# More about that entry, in the calendar program.
calendar-seed-next-more = In time for the next planting.

# Entry of the calendar.
calendar-replant = Plant the next crop

# More about that entry, in the calendar program.
calendar-replant-more = As the first time.

# The succession in a sentence. heads: wanted each week; containers: in all; `each_week`: containers planted each week.
succession-containers = { $heads ->
    [one] 1 head a week takes
   *[other] { $heads } heads a week take
} { $containers ->
    [one] 1 of these containers
   *[other] { $containers } of these containers in turn
}: plant { $each_week } every week, each again after { $days } days.

# The same where the tank can also be one long one.
succession-or-tank = { $heads ->
    [one] 1 head a week takes
   *[other] { $heads } heads a week take
} { $containers ->
    [one] 1 of these containers
   *[other] { $containers } of these containers in turn
}, or { $tank } of tank as wide as this one: plant { $each_week } every week, each again after { $days } days.

## handing_on

link-error-not-alink = The end of this address is not a link to a plan. Ask for the link again.

link-error-damaged = This link was damaged on its way: letters are missing or changed. Ask for it again, or for a file.

link-error-newer-version = This link was made by a later version of this page. Reload the page while you are online, then open the link again.

file-error-not-plans = This file holds no plans.

file-error-too-long = This file is too large to be a file of plans, or could not be read.

file-error-newer-version = This file was written by a later version of this page. Reload the page while you are online, then open the file again. Your own plans were not touched.

# Heading.
hand-on = Hand on

# Under it.
hand-on-more = The link holds the whole plan. Whoever opens it sees a preview first. Nothing is sent to a server.

# Label.
link = Link to this plan

# Button.
copy = Copy link

# Button.
share = Share

# After copying.
copied = Copied.

# Where the browser did not copy.
not-copied = The browser did not copy. Select the link and copy it yourself.

# Name of the code.
code = QR code of the link

# Where a plan has no link.
no-link = This plan holds too much text for a link. Hand it on as a file.

# Where the link is too long for a code that paper can show.
no-code = This link is too long for a code that can be scanned.

# Beside the code on the card.
scan = Scan to open this plan

# Heading over a plan from a link.
from-link = A plan from a link

# Heading over plans from a file.
from-file = Plans from a file

# Button.
keep-new = Keep as a new plan

# Button.
do-not-keep = Do not keep

# Button.
add-them = Add to my plans

# Button.
replace-all = Replace all my plans

# Beside it.
replace-more = Plans that you have already are not added twice. Replacing saves your present plans to a file first.

# Button.
save-plan = Save this plan to a file

# Button.
save-all = Save all plans to a file

# Label of the choice of a file.
open-file = Open a file of plans

# Name of a file.
plan-file = slackwater-plan.json

# Name of a file.
plans-file = slackwater-plans.json

# Another tab wrote other plans.
elsewhere = Your plans were changed in another tab. Nothing more is kept from this tab until you choose.

# Button.
take-theirs = Take the other tab's plans

# Button.
keep-mine = Keep this tab's plans

# Stored by a later version.
set-aside-newer = The plans kept in this browser were written by a later version of this page and could not be read here. They were set aside unchanged; save them to a file before you go on.

# Button, once it was saved.
forget-set-aside = Saved: remove it from this browser

link-error-too-long = This link is longer than { $most } letters, which no plan takes. Ask for it again, or for a file.

file-error-line = This file holds no plans that can be read: look at line { $line }.

## handout

# A line for a name.
for-name = Name

# On a small card.
small-rule = Never raise the level later: air roots drown. Keep light, rain and mosquitoes out. An adult mixes; wash your hands.

# Heading.
group-get = To get and weigh, in all

# Heading.
to-prepare = Stock solutions to prepare, each in its own jug

# Heading.
group-each = For each container, in this order

# Heading.
weekly-record = Week by week

# How to keep the record.
record-how = Measure from the rim straight down to the solution, in the morning. What is expected is a forecast: what you read counts.

# Heading.
record-harvest = Heads at harvest, one by one

# Heads of the table.
group-heads-1 = What

# Heads of the table.
group-heads-2 = How much

# What to take care of where a group mixes.
group-care-1 = Salts irritate eyes and skin, acids burn: gloves and goggles, adults only, children stand back. Acid goes into water, never water into acid. Follow the product labels.

# What to take care of where a group mixes.
group-care-2 = A { $units ->
    [us] gallon
   *[metric] litre
} of water weighs { $weight }. Fill containers where they will stand.

# What to take care of where a group mixes.
group-care-3 = Cover every container of water where small children are.

# Heads of the table.
record-heads-1 = Day

# Heads of the table.
record-heads-2 = Date

# Heads of the table.
record-heads-3 = Expected below the rim

# Heads of the table.
record-heads-4 = Expected EC

# Heads of the table.
record-heads-5 = Below the rim

# Heads of the table.
record-heads-6 = EC

# Heads of the table.
record-heads-7 = Temperature

# Heads of the table.
record-heads-8 = What you see

# Over the small cards, where there are more containers than cards.
small-cards-of = { $cards } cards for { $containers } containers: print more of them.

# On a small card: fill and doses of one container.
small-mix-line = { $volume } of water with { $doses }.

# Under the heading of the list for a group. `below_rim`: a length.
group-line = { $containers ->
    [one] 1 container, filled to { $below_rim } below the rim
   *[other] { $containers } containers, each filled to { $below_rim } below the rim
}; { $plants ->
    [one] 1 net pot with a seedling
   *[other] in all { $plants } net pots with a seedling each
}.

# In the list of what to get; its quantity stands beside it.
group-get-water = Water

# A salt of a stock solution.
group-stock-part = { $dose } of { $material }

# How to prepare a stock solution. parts: as "20 g of calcium nitrate", joined with "and"; each: with its unit.
group-stock = { $stock }: dissolve { $parts } and fill up to { $volume }. Each container takes { $each } of it.

## chances

# Heading of the fold.
chances = How sure is this?

# Under it.
chances-under-heading = The same plan in { $seasons } seasons, each with other weather from day to day and with other luck in what the models do not know. The chances hold for such seasons, not for storms, pests or mistakes. One season in ten lies below what is called low, one in ten above what is called high.

# While changes are looked for.
looking = Looking for what would make it sure.

# While seasons are lived through.
seasons-so-far = { $done } of { $all } seasons so far.

# Where no season can be worked out.
chances-beyond = The models do not reach this far: no chances can be given.

# Heading of what is assumed.
chances-assumed = What differs from season to season

# Heads of the table.
chances-heads-2 = Low

# Heads of the table.
chances-heads-3 = Middle

# Heads of the table.
chances-heads-4 = High

# count: so many of 100.
chances-lasts = The solution lasts to harvest in { $count } of 100 such seasons.

# count: so many of 100 such seasons.
chances-feeds = What is dissolved feeds the crop to harvest in { $count } of 100.

# In the seasons in which the solution does not last.
chances-used-up = Where it does not last, the last drop goes on about day { $day } after planting.

# Line of the table: dates.
chances-row-harvest = Ready for harvest

# Line of the table: mass of one head.
chances-row-head = One head

# Line of the table: volume.
chances-row-water = Drawn from one container

# Line of the table: water for a mass of fresh heads, such as 25 L/kg.
chances-row-water-use = Water for heads

# Line of the table: length.
chances-row-gap = Moist air at the end

# Line of the table.
chances-row-ec = EC at the end

# Heading of the changes that bring something about. wanted: so many of 100 seasons.
offers-heading = { $aim ->
        [lasts] So that the water lasts in { $wanted } of 100
       *[feeds] So that the food lasts in { $wanted } of 100
    }

# Under that heading, where no change is offered.
no-offer-needed = Nothing has to change.

# Under that heading, where no change is offered.
no-offer-enough = No single change within the usual limits is enough.

# What differs. warmth: degrees with their symbol; light: per cent; humidity: points of a per cent.
spreads-weather = Weather: how days follow one another is after Richardson and Wright (1984), matrices A and B. Assumed: highs and lows differ by { $warmth } (a fifth of it in a room under lamps), light by { $light }%, humidity by { $humidity } points, each one standard deviation.

# What differs, in per cent.
spreads-plants = Plants: growth, water drawn and nutrients taken up differ by { $growth }%, { $water }% and { $uptake }% (assumed; the published models were out by 9 to 21% where they were tested).

# The seed is that of random numbers.
spreads-seed = The seasons are drawn from a fixed seed: the same plan gives the same chances on every device.

## building

# Folded group of fields.
group-build = How it is built

# Heading.
building = Building the tank

# Under it.
building-more = Read the checks above first. Lengths are for one tank, materials for all of them.

# Heading of the drawings.
build-drawings = Drawings

# Heading of the figures.
build-checks-heading = What holds, floats and sags

# Heading of what is made.
build-parts-heading = Frame, liner and holes

# Heading of the materials.
build-materials-heading = What to get

# Link that saves the materials.
save-materials = Save the list as a table (CSV)

# Name of that file.
materials-file = slackwater-materials.csv

# Heading of the running.
build-running-heading = Running it

# Heading of the work.
build-work = On the day of harvest, in this order

# Heading of what must not be missed.
alarm-heading = Stop and read

# Label of the choice of what is printed.
what-to-print = What to print

# A template of more pages than anybody joins.
template-too-large = This board is too large for a template of paper. Mark its holes by the measures on the build sheet.

# Beside the check bar. length: what it measures, with its unit.
template-bar = { $length }. If it is not, print again at 100%.

# How pages meet.
template-join = Cut along the frame. Join where the same letters meet and the slanted strokes run through. Thick line: edge.

# Columns of the figures.
build-check-heads-1 = What

# Columns of the figures.
build-check-heads-2 = In this plan

# Columns of the figures.
build-check-heads-3 = Wanted

# Columns of the materials.
build-material-heads-1 = What

# Columns of the materials.
build-material-heads-2 = How much

# Columns of the materials.
build-material-heads-3 = Size

# Columns of the materials.
build-material-heads-4 = Price

# What can be printed.
papers-1 = Planting card

# What can be printed.
papers-2 = Small cards for a class

# What can be printed.
papers-3 = List for the group

# What can be printed.
papers-4 = Weekly record

# What can be printed.
papers-5 = Build sheet

# What can be printed.
papers-6 = Drilling template

# Buttons that print what is not the card.
print-other-1 = Print the small cards

# Buttons that print what is not the card.
print-other-2 = Print the list

# Buttons that print what is not the card.
print-other-3 = Print the record

# Buttons that print what is not the card.
print-other-4 = Print the build sheet

# Buttons that print what is not the card.
print-other-5 = Print the template

# How many pages the template takes, and how to print it.
template-pages = { $pages ->
    [one] 1 page
   *[other] { $pages } pages
}, at true scale. Print at 100% (“actual size”, not “fit to page”) and measure the bar.

# At the head of a page of the template, in one short line: rows and columns of pages.
template-page = Row { $row }, column { $column }

# The same on the template of a tank that must not be built so: with one of the alarms below.
template-page-alarm = Row { $row }, column { $column }. { $alarm }

# The tank is heavier than its place bears. At the foot of a phone and the head of each page of the template: short.
alarm-above-rating = Do not build it there: too heavy for the place.

# The same where the load that the place bears is not given.
alarm-rating-unknown = Do not build it there: nobody knows what the place bears.

# The same on a balcony, a deck or a roof.
alarm-balcony-or-roof = Do not build it there: no tanks on balconies, decks or roofs.

# The same where the sides are high or long.
alarm-ask-competent-person = Have a competent person look at the sides before you fill.

# Under the drawing of a tank with a fixed cover; the size is length by width.
tank-caption-cover = The tank from above, its cover of { $size } and its props.

# Under the drawing of a tank with boards; the size is length by width.
tank-caption-boards = The tank from above: { $boards ->
    [one] 1 board
   *[other] { $boards } boards
} of { $size } on the pipes.

# The same where a narrow strip of board without holes fills the rest of the tank.
tank-caption-strip = The tank from above: { $boards ->
    [one] 1 board
   *[other] { $boards } boards
} of { $size } on the pipes, and a strip without holes at the end.

# Under the drawing of a board; the size is the diameter of a hole.
board-caption-board = One board: { $holes ->
    [one] 1 hole
   *[other] { $holes } holes
} of { $size }.

# The same of a fixed cover.
board-caption-cover = The cover: { $holes ->
    [one] 1 hole
   *[other] { $holes } holes
} of { $size }.

# Under the drawing of stock sheets that are cut alike. Offcuts are drawn with dashed lines.
sheet-caption = { $sheets ->
    [one] One sheet
   *[other] { $sheets } sheets alike
}: { $pieces ->
    [one] 1 piece
   *[other] { $pieces } pieces
} from each; { $offcuts ->
    [0] nothing is left
    [one] 1 offcut, dashed
   *[other] { $offcuts } offcuts, dashed
}.

## build_figures

# From a low figure to a high one, both with their units.
build-span = { $low } to { $high }

# Column “Wanted” of the figures: the most that is taken.
build-check-up-to = up to { $most }

# Column “Wanted” of the figures: the least that is taken.
build-check-or-more = { $least } or more

# A line of the figures: two depths follow, each a length or the next message.
build-check-draught = Boards lie in the solution, at planting and at the end

# In place of a depth: boards that sink.
build-check-under-water = under water

# A line of the figures: sag of boards at rest on the pipes.
build-check-board-sag = Sag between pipes at rest, in the long run

# A line of the figures: distance of the pipes.
build-check-pipe-spacing = Pipe to pipe, middle to middle

# What is wanted there: the distance at which boards sag least.
build-check-least-sag = least sag at { $spacing }

# A line of the figures: two lengths follow, as “5 cm to 6 cm”.
build-check-gap = Moist air at harvest, from the higher end of the floor to the lower

# The next line: the least of that gap.
build-check-clear-gap = At its least, under a sagging board

# A line of the figures: whether boards float upright; two heights follow.
build-check-metacentric = Metacentric height (steadiness afloat), at planting and with grown heads

# What is wanted of these heights.
build-check-above-zero = above zero

# A line of the figures: how far an edge of a board goes down.
build-check-edge-dip = Edge dips when one half is harvested

# A line of the figures: two clearances follow.
build-check-room = Room beside the boards, across and along

# A line of the figures: two masses follow.
build-check-ballast = Ballast in a { $units ->
    [us] foot
   *[metric] metre
} of pipe; in all

# What is wanted of the ballast: it outweighs the lift of the pipe, given as a mass.
build-check-lift = lift { $lift } a { $units ->
    [us] foot
   *[metric] metre
}

# The same where the pipes stay down by themselves: no ballast is needed.
build-check-no-ballast = none needed

# A line of the figures.
build-check-uptake = Water that one board takes up

# A line of the figures.
build-check-cover-load = Load on the cover

# A line of the figures.
build-check-cover-sag = Sag of the cover, in the long run

# A line of the figures.
build-check-cover-gap = Moist air at harvest under its lowest point

# A line of the figures: the solution pushes the sides out; a force and a moment follow.
build-check-push = Push on a { $units ->
    [us] foot
   *[metric] metre
} of side; moment about its base

# A line of the figures: bending stress of the sides.
build-check-bending = Sides bend between braces

# A line of the figures: a length follows.
build-check-bulge = Sides bulge, in the long run

# A line of the figures: two masses follow.
build-check-weight = Full weight; of it solution

# A line of the figures: load on the floor, the bench or the ground.
build-check-load = Load on what is below

# What is wanted below the tank.
frame-checks-ground = firm ground

# The same where what the place bears is not given.
build-check-rating-unknown = nobody knows: do not build

# A line of the figures: a mass follows.
build-check-leg = Load on each leg

# First step of building: short tanks.
build-parts-spirit-level = Level the place first, with a spirit level on a straight edge. Recheck once the frame stands.

# The same for long tanks.
build-parts-water-level = Level the place first, with a water level: a clear hose filled with water. Recheck once the frame stands.

# A step of building. Timber: its size, as “38 × 140 mm”.
build-parts-frame = Frame of { $timber } timber: two sides of { $long }, two of { $short } between them, { $height } high.

# Follows in the same step.
build-parts-posts = A post in each corner.

# In place of the one before where the sides need braces; braces: two or more.
build-parts-posts-and-braces = A post in each corner, { $braces } braces along the sides, none further apart than { $spacing }.

# A step of building: felt or the like between frame and liner, by its area.
build-parts-cushion = Cushion floor and sides ({ $area }): no stone, nail or splinter may touch the liner.

# A step of building.
build-parts-liner = Liner: { $layers ->
    [one] one sheet
   *[other] { $layers } sheets
} of { $length } × { $width }, { $overlap } over the rim and down outside. Lay it loose, fold the corners uncut, run in a hand's depth of water and press out all air under it. Only then fasten it, with about { $staples } staples, on the outside of the rim only.

# A step of building. Size: the name of the pipe, as “110 mm”; ends: how its ends are made, a choice of the plan with a capital letter.
build-parts-pipes = { $count ->
    [one] Lay 1 pipe of { $size } along the tank.
   *[other] Lay { $count } pipes of { $size } along the tank, { $spacing } from middle to middle.
} { $ends }.

# A step of building: props hold the cover up. Places: one length or several, with commas.
build-parts-props = Props { $height } tall under the cover, in rows at { $places } from one side, on pads that spare the liner.

# A step of building. Diameter of a hole, all holes of the tank, plants on a square metre or foot; stock sheets of length by width.
build-parts-holes = Holes { $diameter } across: { $holes } in all, { $density } plants on a square { $units ->
    [us] foot
   *[metric] metre
}. { $sheets ->
    [one] 1 sheet
   *[other] { $sheets } sheets
} of { $size }.

# A step of building: how the tank is emptied later.
build-parts-drain = To drain: a hose of { $hose } as a siphon, its end well below the floor, takes about { $minutes } min. Lead it where spent solution does no harm.

# A step of building.
build-parts-children = Small children drown in a few { $units ->
    [us] inches
   *[metric] centimetres
} of open water: keep the tank covered or fenced, also when it holds nothing but rain.

# Over that list.
hole-rows-heading = Middles of the holes from a corner, row by row

# A row of holes: how far the row lies from one edge, and where the holes lie along it, with commas.
hole-row = { $from } from the edge: { $places }

## build_lists

# Things to get, in the list of materials, down to the growing medium.
item-name-stock-sheet = Sheets for boards or cover

item-name-cover-fabric = Fabric for the cover

item-name-net-pot = Net pots

item-name-pipe = Pipe

item-name-ballast = Clean stone or sand as ballast

item-name-pipe-cap = Caps for the pipes

item-name-side-timber = Timber for the sides

item-name-corner-brace = Corner posts

item-name-mid-brace = Braces

item-name-prop = Props

item-name-liner = Liner

item-name-cushion = Cushion under the liner

item-name-staple = Staples or tacks

item-name-medium = Growing medium

# Steps of the day of harvest, in this order, down to the edges.
work-step-pull-boards = Float the boards and pull them in to one end.

work-step-cut-heads = Cut the heads.

work-step-clear-pots = Take out pots and roots; none may stay in the tank.

work-step-wash-boards = Wash boards or cover, and let them dry.

work-step-drain = Siphon off what is not used again, and wipe the liner.

work-step-fill-up = Fill up to the mark.

work-step-add-fertilizer = Stir in what the next crop needs.

work-step-measure = Measure EC and pH.

work-step-inspect = Look for leaks, air under the liner, and larvae.

work-step-plant = Set in pots with seedlings.

work-step-float-boards = Float the boards back, or lay the cover on.

work-step-close-edges = Close every gap at the edges against light and mosquitoes.

# Last line of the list of materials: the sum of those with a price.
build-materials-total = All that has a price

# How the tanks are run: the volume of the first fill.
running-first-fill = The first fill takes { $volume }.

# The same: boards rest on pipes at harvest; so much water lifts them off.
running-refloat = At harvest { $volume } more brings the boards afloat again, so that they can be pulled in.

# The same of several tanks. Apart: days from one tank's planting to the next tank's; cycle: days from one planting of a tank to its next.
running-tanks = { $tanks } tanks in turn, planted { $apart ->
    [one] 1 day
   *[other] { $apart } days
} apart, each one every { $cycle } days: about { $heads ->
    [one] 1 head
   *[other] { $heads } heads
} a week.

# The same of one tank.
running-tank = Planted every { $cycle } days: about { $heads ->
    [one] 1 head
   *[other] { $heads } heads
} a week in the long run.

## built

# Button that opens the working of a check.
built-name-sag = How the sag is worked out

# Button that opens the working of a check.
built-name-clear-gap = How the clear gap is worked out

# Button that opens the working of a check.
built-name-trim = How the trim is worked out

# Button that opens the working of a check.
built-name-room = How the room at the edges is judged

# Button that opens the working of a check.
built-name-ballast = How the ballast is worked out

# Button that opens the working of a check.
built-name-uptake = How the water in the foam is worked out

# Button that opens the working of a check.
built-name-cuts = How holes and cuts are worked out

# Button that opens the working of a check.
built-name-cover = How the cover is worked out

# Button that opens the working of a check.
built-name-level = How the floor is judged

# Button that opens the working of a check.
built-name-sides = How the sides are worked out

# Button that opens the working of a check.
built-name-load = How the load is worked out

# Working of a check, first part: what goes into it. places: distances with commas, such as 100 mm, 500 mm.
built-inputs-sag = { $load } on a board { $width } wide; pipes under it at { $places } from its edge.

# Follows built-inputs-sag. Foams of one type differ in stiffness.
built-inputs-sag-range = The stiffest foam of the type sags { $least }, the softest { $most }.

# Working of a check, first part: what goes into it.
built-inputs-clear-gap = { $gap } of moist air between solution and pipes at the end, less the sag of { $sag } and half of the { $drop } that the floor is out of level.

# The same where the sag cannot be worked out.
built-inputs-clear-gap-no-sag = { $gap } of moist air between solution and pipes at the end, less the sag of a board and half of the { $drop } that the floor is out of level.

# Working of a check, first part: what goes into it. Two draughts, then the width of the board.
built-inputs-trim = One board with pots and seedlings weighs { $weight }; it lies { $draught } deep at planting and { $draught_at_end } at the end, { $width } wide.

# Working of a check, first part: what goes into it.
built-inputs-room = Inside measures of the tank less the boards in rows: { $across } is left across, { $along } along.

# Working of a check, first part: what goes into it. The lift may be negative: then the pipe stays down.
built-inputs-ballast = A { $units ->
    [us] foot
   *[metric] metre
} of the bare pipe weighs { $weight } and lifts { $lift } with its ends as planned; margin { $margin }.

# Working of a check, first part: what goes into it.
built-inputs-uptake = Volume of one board and the water that foam of its type takes up in long immersion: { $water }.

# Working of a check, first part: what goes into it. Stock sheets: as sold, boards and cover are cut from them.
built-inputs-cuts = Holes of { $hole } by the spacing of the plants and the distance from the edge; stock sheets of { $length } × { $width }.

# Working of a check, first part: what goes into it. Materials of one name differ in stiffness.
built-inputs-cover = A free span of { $span } under { $load }, { $thickness } thick. The stiffest of the material sags { $least }, the softest { $most }.

# Working of a check, first part: what goes into it.
frame-inputs-level = How much lower you say one end of the floor lies than the other.

# Working of a check, first part: what goes into it. force, moment: with their units.
built-inputs-sides = { $depth } of solution presses with { $force } on each { $units ->
    [us] foot
   *[metric] metre
} of side (moment about its base { $moment }); braces leave { $span } free; the lowest board is { $thickness } × { $width }.

# Working of a check, first part: what goes into it.
built-inputs-load = Solution { $solution }; with boards or cover, grown heads and timber { $total }; over the area of the floor.

# Working of a check, second part: by which equation.
built-equation-sag = The board as a beam on its pipes with ends beyond them, under an even load: bending moment over stiffness, summed twice, times creep.

built-equation-clear-gap = Gap less sag, less half of the drop: the solution stays level, while pipes and boards follow the floor down.

built-equation-trim = Metacentric height = centre of buoyancy + second moment of the water line over the displaced volume − centre of mass; the dip of an edge = half the width times heeling moment over (weight times metacentric height).

built-equation-room = Inside measure less as many boards as fit.

built-equation-ballast = Lift = displaced water less pipe, less what fills it; ballast inside the pipe = lift times the margin.

built-equation-uptake = Volume of the board times the long-term uptake of its foam.

# Cuts run through: from edge to edge of the sheet.
built-equation-cuts = Rows by spacing and edge distance, spread evenly; sheets by straight cuts right through, and of all patterns of up to three blocks the one that gives most pieces.

built-equation-cover = A strip of cover across the tank as a beam on sides and rows of props under an even load, times creep; fabric as a hanging cable.

# Drop: how much lower one end of the floor lies.
built-equation-level = The drop against the most that leaves roots room and contact at both ends.

built-equation-sides = Pressure = density × gravity × depth; the lowest board as a beam hinged at the braces; stress = moment over section modulus; bulge times creep.

built-equation-load = Mass over the area of the floor, against what the place is rated to carry.

# Working of a check, third part: after whom. Two factors of creep.
built-source-sag = Three-moment equation (Clapeyron 1857); strength by ASTM C578; moduli by makers' sheets. The limit and the creep factors ({ $extruded } extruded, { $expanded } expanded) are assumed.

built-source-clear-gap = Geometry. Least gap: common practice, no source.

built-source-trim = Archimedes; Bouguer 1746. Centres of mass of heads: assumed.

# Source of two workings: room at the edges and level of the floor.
built-source-practice = Limits: common practice, no source.

built-source-ballast = Archimedes; diameters and walls of ISO 161-1, EN ISO 1452, ASTM D1785, D2729 and D3034. The margin of { $margin } is assumed.

built-source-uptake = Limits for long immersion of EN 13164 (extruded) and EN 13163 (expanded).

built-source-cuts = Geometry; { $foam } of foam beside a hole is common practice, no source.

built-source-cover = Clapeyron 1857; moduli after EN 636 (plywood) and makers' sheets; creep of plywood by EN 1995-1-1, of the others assumed, as is the limit.

built-source-sides = Hydrostatics; strength class C16 of EN 338, wet and in the long run by EN 1995-1-1.

built-source-load = Archimedes and the scale; ratings come from the builder or maker only.

# Working of a check, fourth part: how sure.
built-sure-sag = Within a third for foam as sold: the modulus varies. What the solution bears is left out, which errs to the safe side.

built-sure-clear-gap = As sure as sag and water use.

built-sure-trim = A guide: grown heads lean on their neighbours, and boards on theirs.

built-sure-room = As sure as your tape; timber and liner move with the wet.

built-sure-ballast = Within a tenth.

built-sure-uptake = An upper limit; what roots open up is not counted.

built-sure-cuts = Exact; saw cuts take { $low } to { $high } each.

built-sure-cover = Within a third; moist plywood sags more.

# Level: the tool.
built-sure-level = As sure as the level that you use.

built-sure-sides = Errs to the safe side for sound wood. Screws and joints are not counted.

built-sure-load = Within a tenth. It judges no building: an engineer does.

## structure

# pipes: 0 or 1.
fact-too-few-pipes = At rest a board lies on { $pipes ->
    [0] none of the pipes
    [one] only one of the pipes
   *[other] { $pipes } of the pipes
} and tips over. Each board needs two under it.

# stress: per cent of the strength.
fact-board-sag = Resting boards sag { $sag } under grown heads, at { $stress } of the strength of the foam; up to { $limit } is allowed.

# Follows where that is no good.
fact-board-sag-mend = Move the pipes, add one, or take thicker boards.

fact-clear-gap = After { $sag } of sag and { $floor } for a floor out of level, { $gap } of moist air is left at its least; { $least } or more is wanted.

fact-turns-over = Grown heads turn the boards over: they stand too high for the width. Take wider boards or lighter heads.

fact-edge-dip = With heads on one half only, the edge dips by { $dip }; { $freeboard } of the board stands above the solution.

# Follows where that is no good.
fact-edge-dip-mend = It goes under: harvest from both halves in turn, or take thicker boards.

fact-jam = The boards have { $room } of room between the sides; at least { $least } keeps them from jamming.

# Follows where that is no good.
fact-jam-mend = A board that jams hangs in the air or is drowned.

fact-no-open-strips = No open strip beside the boards is wider than { $limit }.

fact-open-strips = A strip of { $strip } stays open beside the boards. Light grows algae there and mosquitoes breed: close it with a strip of board or a flap of liner.

fact-boards-without-place = { $boards ->
    [one] 1 of the boards finds no place
   *[other] { $boards } of the boards find no place
} when they lie in rows. Take fewer, or another size of board.

fact-pipes-stay-down = The pipes stay down by themselves.

fact-pipes-lift = Each { $units ->
    [us] foot
   *[metric] metre
} of pipe lifts { $lift }. Put { $ballast } of clean stone or sand into each { $units ->
    [us] foot
   *[metric] metre
} before it is closed, or leave the ends open.

fact-extruded-foam = Extruded foam: its closed cells take up hardly any water.

# Expanded foam: of beads that are fused.
fact-water-uptake = Expanded (beaded) foam takes up to { $uptake } of water into a board of { $board } over the weeks, so it floats lower each crop and roots grow into it. Extruded foam does not.

fact-holes-weaken = Only { $foam } of foam is left beside a hole; less than { $least } breaks out. Move the holes apart or away from the edge.

fact-sheet-too-small = The stock sheet is too small to cut a board or the cover from it.

fact-cover-sag = The cover sags { $sag } under grown heads; up to { $limit } is allowed.

# Follows where rows of props carry the cover.
fact-cover-props = Props stand { $height } tall on the floor.

# Follows where that is no good.
fact-cover-sag-mend = Prop it from below.

fact-cover-light = This cover lets light through. Lay black film or a second layer over it, or algae grow and mosquitoes find their way in.

# The floor of the tank. drop: how much lower one end lies. by: the tool.
fact-floor-level = The floor is { $drop } out of level over { $length }; up to { $limit } is allowed. { $by ->
        [water] Level it with a water level (a clear hose filled with water) before the liner goes in.
       *[spirit] Level it with a spirit level on a straight edge before the liner goes in.
    }

# stress: per cent of what the wood may bear.
fact-sides = Between braces the sides bulge { $bulge } (up to { $limit } is allowed) and bear { $stress } of what wet softwood may.

# Follows where that is no good.
fact-sides-mend = Set more braces or take thicker timber, and have a competent person look at it.

fact-ask-competent-person = { $depth } of solution is deep. From about { $limit } a competent person should look at the sides and their joints before you fill.

# A sentence that says why follows, then fact-build-elsewhere.
fact-do-not-build-there = Do not build it there. The tank weighs { $total } and loads what carries it with { $load }.

# Why not there.
fact-balcony-or-roof = Balconies, decks and roofs are not for tanks.

# Why not there.
fact-above-rating = It is rated for { $rating } only.

# Why not there.
fact-rating-unknown = Nobody has said what it carries.

# What to do instead.
fact-build-elsewhere = Build on firm level ground, or let a licensed engineer rate the place and follow local code.

## glossary

# Opens the glossary.
glossary = Words and drawings

# What is in it.
glossary-more = What the words on this page mean. A letter before a word shows where it is in the drawing.

# Heading of a group of words.
chapter-container = In the container

# What its drawing shows, for those who do not see it.
chapter-container-drawing = A bucket cut open, on the day of planting and near harvest: the solution has fallen, and roots hang in the air above it.

term-rim = Rim

# Its meaning.
term-rim-meaning = The upper edge of the inside of a container. Depths are measured down from it or up from the floor.

term-cover = Cover

# Its meaning.
term-cover-meaning = The lid, sheet or board that carries the plants and keeps light and insects out.

term-net-pot = Net pot

# Its meaning.
term-net-pot-meaning = A slotted pot. Its flange rests on the cover, its foot stands in the solution on the day of planting, so that the medium in it stays moist.

term-fill-mark = Fill mark

# Its meaning.
term-fill-mark-meaning = The level to fill to before planting. Everything the crop will drink is in there; nothing is added later.

term-nutrient-solution = Nutrient solution

# Its meaning.
term-nutrient-solution-meaning = Water with all the fertilizer dissolved in it.

term-charge = Charge

# Its meaning.
term-charge-meaning = One filling of a container: all the water and all the fertilizer that a crop gets.

term-moist-air-gap = Moist air gap

# Its meaning.
term-moist-air-gap-meaning = The air between the falling solution and the cover. It has to open early enough and must stay moist.

term-air-roots = Air roots

# Its meaning.
term-air-roots-meaning = Short, branched roots that grow in the moist air gap and take up oxygen there. They drown when the level is raised again.

term-water-roots = Water roots

# Its meaning.
term-water-roots-meaning = Roots in the solution. They drink and feed, and have to keep up with the falling level.

term-never-above = No higher

# Its meaning.
term-never-above-meaning = The highest level that a top-up may reach: above it are air roots.

term-head = Head

# Its meaning.
term-head-meaning = One plant, cut above its pot. Its mass is the fresh mass.

# Heading of a group of words.
chapter-boards = Boards that float, then rest

# What its drawing shows, for those who do not see it.
chapter-boards-drawing = A tank cut open twice: a board floats on a high level with its pipe below; later the level is lower and the board rests on the pipe.

term-floating-board = Floating board

# Its meaning.
term-floating-board-meaning = A sheet of foam that carries pots and plants on the solution.

term-draught = Draught

# Its meaning.
term-draught-meaning = How deep the underside of a floating board lies in the solution. It grows with the plants.

term-pipe = Pipe

# Its meaning.
term-pipe-meaning = Lies on the floor under the boards. Its outside diameter decides where the boards come to rest.

term-rest = Rest

# Its meaning.
term-rest-meaning = The day on which the falling level sets the boards down on their pipes. From then on the moist air gap opens.

term-sag = Sag

# Its meaning.
term-sag-meaning = How far a resting board or a cover bends between its supports in the long run.

term-clear-gap = Clear gap

# Its meaning.
term-clear-gap-meaning = What the sag leaves of the moist air gap.

# Heading of a group of words.
chapter-dissolved = What is dissolved

# What its drawing shows, for those who do not see it.
chapter-dissolved-drawing = A bag with three numbers and a jug of raw water beside two stock bottles A and B.

term-grade = Grade

# Its meaning.
term-grade-meaning = The three numbers of a blend, N-P2O5-K2O: nitrogen, phosphate and potash as per cent of its mass.

term-raw-water = Raw water

# Its meaning.
term-raw-water-meaning = Your water before anything is dissolved in it.

term-stock-a = Stock A

# Its meaning.
term-stock-a-meaning = A strong solution of calcium nitrate. It is kept apart, because calcium falls out with sulfate and phosphate.

term-stock-b = Stock B

# Its meaning.
term-stock-b-meaning = A strong solution of the blend and of magnesium sulfate.

term-ec = EC

# Its meaning.
term-ec-meaning = Electrical conductivity at 25 °C (77 °F), in millisiemens per centimetre: how much salt is dissolved, not which.

term-alkalinity = Alkalinity

# Its meaning.
term-alkalinity-meaning = What neutralises acid in the water, as calcium carbonate. High alkalinity lifts the pH as plants drink.

term-chelate = Chelate

# Its meaning.
term-chelate-meaning = Iron or another metal held in a ring of a larger molecule, so that it stays dissolved.

term-falls-out = Falls out

# Its meaning.
term-falls-out-meaning = A salt that does not stay dissolved and settles as a solid: the plants do not get it.

# Heading of a group of words.
chapter-time = A crop in time

# What its drawing shows, for those who do not see it.
chapter-time-drawing = A line of days: seed, a seedling in a pot, a grown head with the level much lower.

term-seeding = Sowing

# Its meaning.
term-seeding-meaning = The day on which seeds are laid into the medium.

term-transplanting = Transplanting

# Its meaning.
term-transplanting-meaning = The day on which seedlings move onto the solution. The page counts days from here: it is day 0.

term-harvest = Harvest

# Its meaning.
term-harvest-meaning = The day on which the mean head has the mass that you ask for.

term-succession = Succession

# Its meaning.
term-succession-meaning = Plantings one after the other, so that there are heads every week.

term-factors = Growth factor, water factor

# Its meaning.
term-factors-meaning = Numbers that make the model grow or drink more or less than the published one. A crop that you followed teaches them.

term-seasons = 100 such seasons

# Its meaning.
term-seasons-meaning = The same plan lived through many times with other weather and other plants: in how many of a hundred it goes well.

# Heading of a group of words.
chapter-air = Air and light

# What its drawing shows, for those who do not see it.
chapter-air-drawing = The sun and a lamp over a leaf that gives off water into the air.

term-solar-radiation = Solar radiation

# Its meaning.
term-solar-radiation-meaning = The energy of sunlight that reaches a square metre in a day, in megajoules.

term-photon-flux = Photon flux (PPFD)

# Its meaning.
term-photon-flux-meaning = How many photons that plants can use reach the leaves, in micromoles on a square metre each second. Lamps are sold by it.

term-water-given-off = Water given off

# Its meaning.
term-water-given-off-meaning = What leaves lose to the air, more in sun, warmth and dry air. Nearly all of the solution goes this way.

term-relative-humidity = Relative humidity

# Its meaning.
term-relative-humidity-meaning = How much water vapour the air holds, as a share of what it could hold at that temperature.

term-shelter = Shelter

# Its meaning.
term-shelter-meaning = What stands between the sky and the plants: it takes light away and slows the wind.

## trial

trial-label-replicates = Containers of each variant, or blocks

trial-label-heads-per-unit = Heads planted in one container

trial-label-columns = Containers side by side

trial-label-seed = Number that the lots were drawn with

trial-label-difference = Difference that matters to you, % of the mean

trial-label-power = Chance of seeing it, %

trial-label-confidence = Confidence of intervals and tests, %

trial-label-unit-spread = Spread from container to container, %

trial-label-head-spread = Spread from head to head, %

trial-hint-replicates = 1 to 50. Each is a replicate: a container on its own.

trial-hint-heads-per-unit = 1 to 200. Empty: as many as the plan has.

trial-hint-columns = 1 to 100. Empty: one row for each block.

trial-hint-seed = A whole number. The same one gives the same places.

trial-hint-difference = 1 to 200. Empty: 20.

trial-hint-power = 50 to 99. Empty: 80.

trial-hint-confidence = 50 to { $most }. Empty: 95.

trial-hint-unit-spread = { $least } to 100, standard deviation of containers treated alike. Empty: 10, assumed. A past trial tells it.

trial-hint-head-spread = 0 to 100, standard deviation of heads in one container. Empty: 15, assumed.

# Heading of the part of the page.
trials = Which does better here? A fair trial

# Under it.
trials-more = Set out variants of the open plan side by side, such as three pipe sizes. Slackwater draws lots for their places, prints labels, keeps what you weigh and says what the figures allow to be said. A trial keeps the plan as it stood when it was begun.

# Button.
new-trial = Begin a trial of this plan

# Name of the list.
your-trials = Your trials

# A trial without a name.
unnamed-trial = Trial without a name

# Label.
trial-name = Name of this trial

# Button.
leave-trial = Leave this trial

# Button.
save-trial = Save this trial to a file

# Name of that file.
trial-file = slackwater-trial.json

# Button.
delete-trial = Delete this trial

# After a trial was deleted.
trial-deleted = The trial was deleted.

# Heading.
compared = What is compared

# Label.
differs = What differs

# Under it.
differs-hint = One thing alone: if something else differs too, nobody can tell which of them did it.

# First line of that list.
own-factor = Something else, in my own words

# Where the variants of a file differ in several things.
several = Several things

# Label of a value of a variant.
value-heading = Value

# What stands in an empty value.
as-planned = As planned

# Label of the grower's own words for what differs.
note = How it differs

# Label of the name of a variant.
variant-name = Name on the labels

# Button.
add-variant = Add a variant

# Button.
remove-variant = Remove the last variant

# Heading.
laid-out = How it is laid out

# Label.
design = Places are given

# Under it.
design-hint = A block is a group of places alike, such as one end of a bench or one shelf; each holds every variant once. Use blocks where light or draughts change along the bench.

# What counts as one.
unit-is = One independent unit is one container with its own solution

# The reason.
unit-why = Heads of one container share its solution, its place and its luck. Weighing more of them tells you better about that container, and nothing more about the variant: they are parts of one unit, never replicates. The same holds for boards that float in one tank, and for shade, lamps or warmth that a whole bench or house shares: there the bench or the house is the unit, and one of each can never be judged.

# Where there is one unit of each.
one-of-each = With one container of each variant nothing can be said, however many heads you weigh: what the container did cannot be told from what the variant did. Take two at the very least.

# Button.
draw-again = Draw lots again

# Where the layout is fixed.
fixed = Records belong to this layout, so it stays as it is. Remove all records to change it.

# Where the layout came in a file.
given = The layout came with the file: it was drawn elsewhere.

# Heading of what is seldom changed.
more-settings = What to look for, and how sure to be

# Name of the drawing.
bench = The bench from above

# Heading.
expected = What each variant should bring

# Under it.
expected-more = From the models, for the air and light of the plan. Where they expect no difference, the trial may still find one: that is what it is for.

# Heading.
how-many = How many containers it takes

# Heading.
record = What you weigh and measure

# Under it.
record-more = The fresh mass of every head, container by container, and all the solution a container used from planting to harvest: what you filled in, plus what you added, less what is left. Leave a cell empty where a head is missing. It counts as missing, never as nothing.

# Label.
paste = Paste a table, or lines of a CSV file

# Under it.
paste-hint-in = A line for each container: its number, then { $units ->
    [us] ounces
   *[metric] grams
} of each head. Or with headings: unit, { $units ->
    [us] water_gal, head_1_oz, head_2_oz
   *[metric] water_l, head_1_g, head_2_g
}; a line for each head does too. NA, a dash or nothing means missing. A trial laid out elsewhere comes with columns named unit, treatment and block.

# Button.
take-in = Take in this table

# Button.
take-in-layout = Take it in with its layout

# Where the table tells none.
no-layout = This table tells no layout: each line needs a unit and its treatment. Columns named block, row and column may stand beside them.

# Label.
table-file = Open a CSV file

# Link.
save-records = Save the records as CSV

# Name of that file.
records-file = slackwater-trial.csv

# Button.
clear-records = Remove all records

# The same button, once it was pressed.
clear-records-sure = Remove them for good

# Name of the table.
record-table = Records

# Column.
container-heading = Container

# What stands in an empty cell of a container of which something was recorded.
missing = missing

# Where there are more heads than columns.
sample = The table has room for a dozen heads of each container. Draw lots which ones to weigh, or paste all of them.

# Records that belong to no container of the layout.
belongs-nowhere = These lines belong to no container of this layout.

# Button.
remove-stray = Remove these lines

# Column of the solution used.
used = Solution used

# Heading of the way to paper.
trial-print = Print

# The two ways, in the order of their list.
designs-1 = By chance over the whole bench

# The two ways, in the order of their list.
designs-2 = By chance within each block

# Its columns.
expected-heads-1 = Variant

# Its columns.
expected-heads-2 = Harvest, days

# Its columns.
expected-heads-3 = Head

# Its columns.
expected-heads-4 = Water per mass

# Its columns.
expected-heads-5 = Solution to begin with

# Its columns.
expected-heads-6 = Depth of fill

# Its columns.
expected-heads-7 = Moist air at the end

# What can be printed.
trial-papers-1 = Labels

# What can be printed.
trial-papers-2 = Layout and record sheet

# What can be printed.
trial-papers-3 = Report

# The button for each.
trial-prints-1 = Print the labels

# The button for each.
trial-prints-2 = Print the layout and record sheet

# The button for each.
trial-prints-3 = Print the report

# Name that a new trial of a plan begins with.
named-trial = Trial: { $plan }

# A trial in the list of what a file holds, beside plans.
listed-trial = { $name } (a trial)

# Name of a variant that has none yet; letter: A, B, C …
lettered-variant = Variant { $letter }

# One container, in the description of the drawing for screen readers: its number, the letter and name of its variant, where it stands.
trial-place = container { $container }: { $letter }, { $name }, row { $row }, place { $place }

# A container with its number, on its label.
container-number = Container { $unit }

# A block with its number or name, on labels and in the drawing.
trial-block = Block { $block }

# Where a container stands, on its label.
row-and-place = Row { $row }, place { $place }

# In the column of days to harvest, where the harvest mass is never reached.
expected-not-reached = not reached

# How many containers it takes. from: expected or recorded (the spread from these records); units and heads: that spread, as percentages; containers: a number, or beyond where even 200 are too few; difference and chance: percentages.
containers-needed = { $from ->
        [recorded] With the spread of these records
       *[expected] With the spread that is expected
    } (from container to container { $units }, from head to head { $heads }), { $containers ->
        [beyond] more than 200 containers of each variant would be needed
       *[other] { $containers } containers of each variant are needed
    } to see a difference of { $difference } with a chance of { $chance }.

# After it: what the trial can see as it is laid out. All are percentages; it: the difference that was just told.
trial-sees = This trial, as it is laid out, has a chance of { $power } to see it; what it sees with a chance of { $chance } is { $smallest } or more.

# Last under how many containers it takes.
containers-count = More heads in a container help little: it is containers that count.

# Column of a head with its number; a unit may follow.
numbered-head = Head { $number }

# After a table was read.
taken-in = Read { $lines ->
    [one] 1 line
   *[other] { $lines } lines
}: { $heads ->
    [one] 1 head mass
   *[other] { $heads } head masses
}, { $missing } missing.

# After it, where cells or lines of the table could not be read.
not-taken-in = { $problems ->
    [one] 1 place could not be read; it stands as it came.
   *[other] { $problems } places could not be read; they stand as they came.
}

## trial_problems

trial-problem-no-plan = There is no plan that this could differ from.

table-problem-no-records = there is no line to read.

table-problem-no-figures = there is no column of head masses or water. The first column is the container.

table-problem-open-quote = a quotation mark is not closed.

# Over what is wrong with more than one field.
trial-waits = The layout waits until these entries are mended.

# Where cells of the records are wrong.
result-waits = The result waits until these records are mended.

# A cell of the records holds a value outside its limits.
trial-problem-range = { $got } is outside what is allowed: { $low } to { $high }.

# A cell of the records is no number; got: what was typed.
trial-problem-cell-not-a-number = '{ $got }' is not a number. Leave the cell empty where it is missing.

# A field of a trial is no number; got: what was typed.
trial-problem-not-a-number = '{ $got }' is not a number.

# A field of a trial is empty.
trial-problem-missing = Fill this in.

# A file that should hold a trial.
trial-problem-not-a-trial = This is not a trial: it cannot be read from line { $line } on.

# Too few or too many variants, containers, records or heads.
trial-problem-count = { $got ->
    [one] 1 is too few
   *[other] { $got } are too few or too many
}: { $low } to { $high } are allowed.

# The name of a variant or a container stands twice.
trial-problem-repeated = '{ $got }' stands twice. Each needs a name of its own.

# A record of a container that the layout does not have.
trial-problem-unknown-unit = No container of this layout is called '{ $got }'.

# A container or a record of a variant that there is not.
trial-problem-unknown-treatment = No variant is called '{ $got }'.

# A record names another variant than the layout.
trial-problem-other-treatment = The record says '{ $got }', but the layout gave this container '{ $laid_out }'.

# Two records of one container tell different volumes.
trial-problem-water-twice = The solution used stands twice: { $got } here, { $before } before.

# A variant of a file changes a field that no plan has; got: the name of the field in the file.
trial-problem-unknown-field = A plan has no field '{ $got }'.

# After the line of a pasted table, and a colon.
table-problem-unknown-column = the column '{ $got }' is not known and was left out.

# After the line of a pasted table, and a colon.
table-problem-too-many-cells = { $cells } cells, but the table has { $columns ->
    [one] 1 column
   *[other] { $columns } columns
}.

# After the line of a pasted table, and a colon.
table-problem-too-many-lines = only { $most } lines are read.

# What is wrong with a line of a pasted table.
table-problem-in-line = Line { $line }: { $what }

# What is wrong with a cell of a pasted table.
table-problem-in-cell = Line { $line }, column { $column }: { $what }

## trial_tables

pair-note-one-spread = Tukey's honest differences: their intervals and chances hold for all pairs together.

pair-note-own-spreads = Differences of Games and Howell: each variant has a spread of its own; intervals and chances hold for all pairs together.

variance-lines-blocks = Blocks

variance-lines-treatments = Variants

variance-lines-units = Containers alike (error)

variance-lines-heads = Heads of one container

check-lines-head-mass = Sums of squares are in { $unit }. Variants are judged by containers, never by heads.

check-lines-water-per-kg = Sums of squares are in { $unit }.

# Columns of the means.
mean-heads-1 = Variant

# Columns of the means.
mean-heads-2 = Mean

# Columns of the means.
mean-heads-3 = Lies between

# Columns of the means.
mean-heads-4 = Containers

# Columns of the means.
mean-heads-5 = Heads

# Columns of the means.
mean-heads-6 = Letters

# Columns of the comparisons.
pair-heads-1 = Compared

# Columns of the comparisons.
pair-heads-2 = Difference

# Columns of the comparisons.
pair-heads-3 = Lies between

# Columns of the comparisons.
pair-heads-4 = Chance

# Columns of the analysis of variance.
variance-heads-1 = Source

# Columns of the analysis of variance.
variance-heads-2 = Degrees of freedom

# Columns of the analysis of variance.
variance-heads-3 = Sum of squares

# Columns of the analysis of variance.
variance-heads-4 = Mean square

# Columns of the analysis of variance.
variance-heads-5 = F

# Columns of the analysis of variance.
variance-heads-6 = P

# Under the table of means; confidence: a percentage.
mean-note-confidence = Each interval holds the true mean with { $confidence } confidence.

# After it.
mean-note-adjusted = Means are adjusted to all blocks alike, because containers are missing from some.

# What a line of the comparisons compares: the letters of two variants, the second taken from the first.
pair-less = { $larger } less { $smaller }

# Check of the residuals; p: such as P = 0.3.
check-lines-normal = What is left over scatters as chance does (Shapiro and Wilk, { $p }): the points below lie near the line.

# Check of the residuals; p: such as P = 0.003.
check-lines-not-normal = What is left over does not scatter as chance does (Shapiro and Wilk, { $p }): look for a container that went wrong, such as the point far off the line. Take the result with care.

# Where the residuals could not be checked.
check-lines-normality-unknown = There are too few containers to check how the figures scatter.

# Check of equal spread; p: such as P = 0.3.
check-lines-alike = The variants spread alike (Brown and Forsythe, { $p }).

# Check of equal spread; p: such as P = 0.003.
check-lines-not-alike = The variants do not spread alike (Brown and Forsythe, { $p }), so Welch's analysis and the differences of Games and Howell are used, which allow for that.

# Check of equal spread in a trial in blocks; p: such as P = 0.003.
check-lines-not-alike-in-blocks = The variants do not spread alike (Brown and Forsythe, { $p }). Within blocks there is no remedy for that: take the result with care.

# Where equal spread could not be checked.
check-lines-alike-unknown = Whether the variants spread alike cannot be seen from so few containers.

# between and within: degrees of freedom; p: such as P = 0.03.
check-lines-welch = Welch's analysis, which needs no equal spread: F = { $f } with { $between } and { $within } degrees of freedom, { $p }.

# units and heads: percentages.
check-lines-spread = Spread from container to container { $units }, from head to head { $heads }: what to plan the next trial with.

# by: blocks (and variants) or variants (alone); share: a percentage; smallest: a difference with its unit.
check-lines-explained = { $by ->
        [blocks] Blocks and variants
       *[variants] Variants
    } explain { $share } of all variation between containers; the smallest difference that this trial shows reliably is { $smallest }.

## trial_result

measure-head-mass = Head mass

measure-water-per-kg = Water per mass of heads

means-of-head-mass = Mean head mass

means-of-water-per-kg = Mean water per mass of heads

pairs-of-head-mass = Head mass compared

pairs-of-water-per-kg = Water per mass compared

refusal-one-unit-each = Nothing can be said: all heads of a variant shared one container. Its heads are parts of one unit, not replicates, and what the container did cannot be told from what the variant did. Repeat the trial with at least two containers of each variant, better four.

refusal-heads-without-unit = Nothing can be said: heads were recorded without the container that they stood in. Heads of one container are alike for reasons of their own, so they may not count one by one. Write down the container of each head.

refusal-one-treatment = Nothing can be compared yet: fewer than two variants have at least two containers with a figure.

refusal-nothing-left-for-error = Nothing can be said: containers and blocks leave nothing to judge the spread by. More containers of each variant are needed.

refusal-not-connected = Nothing can be said: so many containers are missing that variants and blocks cannot be taken apart.

refusal-no-spread = Nothing can be said: all containers treated alike agree to the last digit, as copied figures do.

refusal-beyond-method = Nothing can be said: these figures lie beyond what the method covers.

dots-note-head-mass = Small dots: heads. Rings: means of containers. Bar: mean of the variant with its interval.

dots-note-water-per-kg = Rings: containers. Bar: mean of the variant with its interval.

# Heading.
said = What the records say

# Under the heading while nothing is recorded.
nothing-yet = Nothing is recorded yet.

# Fold.
variance = Analysis of variance and checks

# Name of a picture.
residuals = What the analysis does not explain, in order

# Explains it.
residuals-note = What is left over in each container, in order. Near the line: as chance scatters. The outermost two bear the numbers of their containers.

# Explains the letters.
letters = Variants that share a small letter cannot be told apart.

# An interval in a column that is headed "Lies between".
between-amounts = { $low } and { $high }

# A chance as a share of trials, put into the sentences below.
share-tiny = less than 1 in 1000

# A chance as a share of trials, put into the sentences below.
share-one-in = about 1 in { $count }

# A chance as a share of trials, put into the sentences below.
share-in-hundred = about { $count } in 100

# Two variants that differ. measure: mass (of heads) or water (per mass of heads); larger and smaller: letters and names; by, low and high: with their unit; more and sure: percentages.
pair-line = { $larger } { $measure ->
        [water] used more water for the same mass than
       *[mass] brought heavier heads than
    } { $smaller }: by { $by } ({ $more }); with { $sure } confidence the true difference lies between { $low } and { $high }.

# A test that is not allowed, and what it would say. between and within: degrees of freedom; p: such as P = 0.003.
naive-in-containers = A test that took each of the { $heads } heads in { $containers } containers for a replicate would claim F = { $f } with { $between } and { $within } degrees of freedom, { $p }. That would be a lie: these heads are not independent of one another.

# The same where the containers of the heads were not written down.
naive-without-containers = A test that took each of the { $heads } heads for a replicate would claim F = { $f } with { $between } and { $within } degrees of freedom, { $p }. That would be a lie: these heads are not independent of one another.

# After the variants that differ; share: such as "about 1 in 20".
how-sure = How sure: were all variants alike, means as far apart as these would come up in { $share } of such trials.

# Where the variants differ as a whole, but no two of them for sure; share: such as "about 1 in 20".
differs-somewhere = The variants do not all do the same, but no two of them can be named: were all alike, means as far apart would come up in { $share } of such trials.

# Where no difference is shown; share: such as "about 30 in 100".
cannot-be-told = No difference can be told. That does not mean that the variants are alike: means as far apart come up in { $share } of such trials by luck alone.

# After it; `detectable` and `half_width`: with their unit; cases: a number.
trial-finds = A trial of this size and spread finds a difference of { $detectable } or more in { $cases } of 100 cases and easily misses smaller ones; a difference here is uncertain by { $half_width } either way.

# A variant that could not be judged; containers: 0 or 1.
variant-left-out = { $variant } was left out: { $containers ->
    [0] none of its containers has a figure
    [one] 1 container with a figure is too few
   *[other] { $containers } containers with a figure are too few
}.

# Name of the picture of all figures.
dots-of = { $measure }: every container and its mean

## notebook

# What a notebook is called: the name of its plan, and the day (a date, or what was typed in its place).
notebook-planted = { $name }, planted { $day }

# A notebook in the list of what a file holds, beside plans and trials.
notebook-among-plans = { $name } (a notebook)

# Day of a reading or a cut, counted from planting, where no date was written.
reading-day = Day { $day }

# A level that was read, such as 5 cm. From: rim or mark.
reading-level = { $from ->
    [mark] { $level } below the fill mark
   *[rim] { $level } below the rim
}

# When a reading was taken (a date or Day 12), and the number of its container.
reading-container = { $when }, container { $container }

# In the line of a reading, after level, EC and temperature: a volume that was added.
reading-added = { $amount } added

# Heads that were cut, in a line: date or day, how many, and their mass together.
cut-heads = { $when }: { $heads ->
    [one] 1 head
   *[other] { $heads } heads
}, { $mass }

# Label of a box of a reading.
reading-date = Day or date

# Under it.
reading-date-hint = Days since planting, or year-month-day.

# Label of a box of a reading.
reading-which-container = Container

# Under it.
reading-which-container-hint = Its number. Empty: all alike.

# Label of a box of a reading; the unit follows after a comma.
reading-level-label = Level

# Under it.
reading-level-hint = Down to the surface.

# Label of a choice: below the rim, or below the fill mark.
reading-level-from = This level is

# Label of a box of a reading; the unit follows after a comma.
reading-ec = EC

# Under it.
reading-ec-hint = At { $reference }, as meters show it.

# Label of a box of a reading; the unit follows after a comma.
reading-temperature = Solution temperature

# Under it: the models do not use it.
reading-temperature-hint = Kept as a note; the forecast does not use it.

# Label of a box of a reading, for what was added after the level was read; the unit follows after a comma.
reading-then-added = Then added

# Under it.
reading-then-added-hint = To one container.

# Label of a box of a reading.
reading-note = Note

# Beside a day that lies before planting.
day-before-planting = That is { $days ->
    [one] 1 day
   *[other] { $days } days
} before planting.

# Beside a day that lies too late; the last that is allowed.
day-too-late = From the day of planting to day { $day } after it.

# Beside a figure; the limits have units.
reading-outside = { $got } is outside what is allowed: { $low } to { $high }.

# After that, of a level.
level-above-rim = A surface is never above the rim.

# After that, of a level.
level-below-floor = The container is not deeper.

# Beside a figure without a unit.
reading-not-a-number = '{ $got }' is not a number. Write a number, or leave it empty.

# Beside a figure; the symbol of its unit.
reading-not-a-number-of = '{ $got }' is not a number. Write a number of { $unit }, or leave it empty.

# Beside what is neither a day nor a date.
reading-no-day = '{ $got }' is no day. Write days since planting, such as 12, or a date, such as 2027-03-01.

# Beside an empty box for the day.
reading-day-missing = Write the day.

# Beside an empty box of heads that were cut.
reading-missing = Fill this in, or remove the line.

# Of a file that was opened.
csv-no-header = There is nothing to read.

# Of a table's first line; the names of columns are the same in all languages.
csv-unknown-column = The column '{ $got }' is not known. Known are { $allowed }.

# Of a line of a table: more cells than the table has columns.
csv-too-many-cells = { $cells } cells, but the table has { $columns ->
    [one] 1 column
   *[other] { $columns } columns
}.

# Of a line of a table.
csv-open-quote = A quotation mark is not closed.

# Where in a table something is wrong, and what: one of the sentences above.
csv-line = Line { $line }: { $what }

# After a table was read.
readings-taken-in = { $added ->
    [one] 1 reading was added
   *[other] { $added } readings were added
}; { $known ->
    [one] 1 was there already
   *[other] { $known } were there already
}.

# Heading of the part of the page.
notebooks = A crop under way

# Under it.
notebooks-more = Once the crop is planted, write down what you read: the level, and EC where you have a meter. The forecast bends to it, says whether to top up and how far, and what the crop taught for the next one. A notebook keeps the plan as it stands on the day it is begun.

# Button.
new-notebook = Begin a notebook of this plan

# Name of the list.
your-notebooks = Your notebooks

# Button.
leave-notebook = Leave this notebook

# Heading of the files and the paper.
keep = On paper and in files

# Button.
save-notebook = Save this notebook to a file

# Name of that file.
notebook-file = slackwater-notebook.json

# Button.
delete-notebook = Delete this notebook

# Button.
print-notebook = Print this notebook

# Heading of the paper.
notebook = Notebook

# After a notebook was deleted.
notebook-deleted = The notebook was deleted.

# Label.
planted = Planted on

# Under it.
planted-hint = Year-month-day: the day the seedlings moved onto the solution. Empty: the day that the plan says.

# Heading.
readings-heading = What you read

# Under it.
readings-more = Hold a ruler against the inside of the container and read down to the surface, before you add anything. What you did not read stays empty.

# Button.
add-reading = Add a reading

# Button that closes the boxes of a reading.
done = Done

# Button.
remove-reading = Remove this reading

# Button.
undo-last = Undo the last change

# Where nothing was read.
no-reading = Nothing yet.

# Of a reading with something wrong.
to-mend = to mend

# Heading.
cuts = What you cut

# Under it.
cuts-more = Heads cut on one day, and what they weigh together.

# Button.
add-cut = Add heads that were cut

# Button.
remove-cut = Remove these heads

# Button.
save-readings = Save the readings as CSV

# Name of that file.
readings-file = slackwater-readings.csv

# Label.
open-readings = Add readings from a CSV file

# Where the file is too large or cannot be read.
no-table = This file is too large, or could not be read.

# Hint of a level that is read from the fill mark.
from-mark = Down to the surface; above the mark with a minus.

# The columns of a reading on paper and in its line.
reading-heads-1 = Day

# The columns of a reading on paper and in its line.
reading-heads-2 = Level

# The columns of a reading on paper and in its line.
reading-heads-3 = EC

# The columns of a reading on paper and in its line.
reading-heads-4 = Temperature

# The columns of a reading on paper and in its line.
reading-heads-5 = Added

# The columns of a reading on paper and in its line.
reading-heads-6 = Note

# From where a level was read.
levels-from-1 = below the rim

# From where a level was read.
levels-from-2 = below the fill mark

# Labels of the columns of a cut: day, container, heads, mass.
cut-columns-1 = Day or date

# Labels of the columns of a cut: day, container, heads, mass.
cut-columns-2 = Container

# Labels of the columns of a cut: day, container, heads, mass.
cut-columns-3 = Heads

# Labels of the columns of a cut: day, container, heads, mass.
cut-columns-4 = Mass together

## notebook_forecast

# Heading.
forecast = What comes of it now

# While nothing is known yet.
forecasting = Working out the forecast.

# Where entries are wrong.
forecast-waits = The forecast waits until the marked entries are mended.

# After the forecast, where lines of the notebook are wrong.
left-out = { $lines ->
    [one] 1 marked line is left out until it is mended.
   *[other] { $lines } marked lines are left out until they are mended.
}

# Where the kept plan is wrong.
notebook-plan-wrong = The plan kept in this notebook cannot be worked out:

# Where the models do not reach.
notebook-beyond = The models do not reach this far: no forecast can be given.

# Name of the plan that is made for the next crop.
next-crop-of = { $name } (next crop)

# Button; the name of the open plan.
correct-plan = Use this correction for the next plan: { $name }

# Progress, in hundreds.
seasons-weighed = { $seasons } seasons weighed so far.

# What a closed crop came to, before anything was weighed.
crop-closed = This crop is closed.

# What a closed crop came to: water for the mass of heads, such as 20 L/kg.
crop-closed-with = This crop is closed. It took { $water } of fresh heads.

# The sentence of the forecast, large. Basis: plan (nothing was read) or readings.
pace-endless = { $basis ->
    [plan] By the plan alone the solution does not end.
   *[readings] At this pace the solution does not end.
}

# The same, where no harvest is foreseen. The day counts from planting.
pace-no-harvest = { $basis ->
    [plan] By the plan alone the solution ends on day { $day }; the head mass you aim for is not reached in time.
   *[readings] At this pace the solution ends on day { $day }; the head mass you aim for is not reached in time.
}

# The same, with so many whole days after harvest.
pace-after = { $basis ->
        [plan] By the plan alone
       *[readings] At this pace
    } the solution ends on day { $day }, { $days ->
        [one] 1 day
       *[other] { $days } days
    } after harvest.

# The same, with so many whole days before harvest.
pace-before = { $basis ->
        [plan] By the plan alone
       *[readings] At this pace
    } the solution ends on day { $day }, { $days ->
        [one] 1 day
       *[other] { $days } days
    } before harvest.

# The same, on one day with the harvest.
pace-same-day = { $basis ->
    [plan] By the plan alone the solution ends on day { $day }, the day of harvest.
   *[readings] At this pace the solution ends on day { $day }, the day of harvest.
}

# How often the solution lasts, of 100 seasons. Basis: plan (nothing was read) or readings.
lasts-in-seasons = { $basis ->
    [plan] It lasts to harvest in { $lasts } of 100 seasons.
   *[readings] It lasts to harvest in { $lasts } of 100 seasons that agree with what you read.
}

# How much the readings leave of the seasons that were lived through; worth: an effective sample size.
seasons-that-agree = Of { $seasons } seasons of the plan, those that agree with your readings are worth { $worth ->
    [one] 1 equally likely one
   *[other] { $worth } equally likely ones
}.

# The same, where too few were left.
seasons-drawn-anew = Few of { $seasons } seasons of the plan agree with your readings: together they are worth { $worth ->
    [one] 1 equally likely one
   *[other] { $worth } equally likely ones
}. So { $seasons } new ones were drawn that agree.

# Name of a line of the table.
solution-ends = Solution ends

# In that line: days after planting.
days-from-to = day { $low } to { $high }

# In the other lines. A unit or year that both have stands with the second only.
low-to-high = { $low } to { $high }

# Name of the picture.
levels = Level of the solution, day by day

# Heading.
top-up = Top-up

# In place of the second and third, where nothing was read.
level-key-plan = By the plan alone: middle, and eight seasons in ten

# Before anything was read.
top-up-waits = How much may be added is known once a level has been read.

# What to add, large: a volume for each container.
top-up-add = Add { $amount }

# Under it.
top-up-raw-water = To each container, as raw water: the solution ends strong enough.

# Under it: the strength of what is added, as a share of the plan's own doses.
top-up-mixed = To each container, mixed at { $percent }% of the plan's doses for as much water: EC { $ec }.

# Under it: how far the surface may rise.
top-up-ceiling = Never above { $depth } below the rim. Air roots have formed down to there, and they drown when they are covered.

# Under it: a volume, where the air roots forbid so much.
top-up-not-enough = { $needed } would be needed to be sure. More may not go in now: let the level fall, read it, and add again.

# Where the air roots forbid it.
add-nothing = Add nothing now

# Where none is needed.
no-top-up = No top-up is needed now.

# Heading.
close = When the crop is over

# Under it.
close-more = Read a last level, weigh the heads, then close the crop. You then see how much water it took and what it taught.

# Button.
close-crop = Close this crop

# Button.
reopen-crop = Open it again

# Before heads were weighed and a level was read.
not-measured = The water for a mass of heads needs the mass of the heads and a last level. Neither may be missing.

# Under the measured water for a mass of heads: a volume, a count, and the mean mass of one head.
water-measured = Water for fresh heads, as measured: one container lost { $water }; { $heads ->
    [one] 1 head weighed { $mass }
   *[other] { $heads } heads weighed { $mass } on average
}.

# A factor that was taught; its name is the label of the plan's field.
factor-learnt = { $factor }: { $was } in this plan, { $now } by what you read; with 95% probability between { $low } and { $high }.

# Over what was taught.
taught = What this crop taught

# Button where no plan is open.
plan-with-it = Begin the next plan with this correction

# What stands in the picture, in the order of its marks.
level-key-1 = What you read

# What stands in the picture, in the order of its marks.
level-key-2 = After your readings: middle, and eight seasons in ten

# What stands in the picture, in the order of its marks.
level-key-3 = By the plan alone: eight seasons in ten

# What stands in the picture, in the order of its marks.
level-key-4 = Fill mark

# What stands in the picture, in the order of its marks.
level-key-5 = Underside of cover or boards at the end: the moist air gap lies below it

# What stands in the picture, in the order of its marks.
level-key-6 = No higher: air roots above it

# Heads of the table.
forecast-heads-1 = Eight seasons in ten:

# Heads of the table.
forecast-heads-2 = by the plan alone

# Heads of the table.
forecast-heads-3 = after your readings

## hints

# Button under the result of a trial: a table of means, differences and variance.
save-report = Save the result as CSV

# Name of that file.
report-file = slackwater-trial-result.csv

finding-spoons = No scale at hand? A level teaspoon of such salts holds anything from { $least } to { $most }: by spoons a dose, and the EC with it, can be { $error } off either way. Weigh it.

# Under a date and beside the dates.
sowing-past = The day of sowing is already past. Without seedlings of that age, choose a later date, or sowing as what the date means.

# Button under the question of a step: opens the glossary.
words-explained = What do the words mean?

# Button in the glossary.
back-to-plan = Back to the plan

# Under a date that is far off. today: a date.
sowing-far = Sowing is more than a month away: today is { $today }.

# The names of plans made from the ready ones. In English they are those of the ready plans, which keeps links short.
example-name-bottle = My bottle

example-name-bucket = My bucket

example-name-covered-tank = My covered tank

example-name-floating-boards = My tank with boards
