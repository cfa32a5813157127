# The texts of the page in English. All other languages are held to this one.

## figures

# The name of the language in itself.
language-name = English

# Symbol of the inch.
unit-inch = in

# Symbol of the foot.
unit-foot = ft

# Symbol of the square foot.
unit-square-foot = ft²

# Symbol of the pound per square foot.
unit-pound-per-square-foot = lb/ft²

# Symbol of the US fluid ounce.
unit-fluid-ounce = fl oz

# Symbol of the day, after a number.
unit-days = days

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

## mod

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

example-bucket = Three heads in a bucket

example-covered-tank = A covered tank

example-floating-boards = Boards that float, then rest

example-more-bottle = 4 litres, a net pot in the neck, a porch in mild humid weather.

example-more-bucket = 19 litres with a lid. The usual first attempt.

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
not-sure = Not sure of a figure? Leave it empty: a usual one stands in, and is named.

## choices

method-bottle = One plant in a bottle

method-bucket = Several in a bucket

method-covered-tank = Covered tank

method-floating-boards = Floating boards on pipes

shape-cylinder = Round, straight walls

shape-tapered-round = Round, tapered (most buckets)

shape-rectangular = Box, straight walls

shape-tapered-rectangular = Box, sloping walls (most storage boxes)

shape-bottle = Bottle with shoulder and neck

shape-measured = Measured with a jug

pattern-square = Rows in line

pattern-staggered = Every other row shifted

pattern-hexagonal = Hexagonal, all neighbours alike

date-meaning-transplanting = transplanting

date-meaning-seeding = seeding

dosing-dry-blend = A dry blend, weighed

dosing-stocks = Stock solutions A and B

dosing-salts = Single salts, to a published solution

water-kind-rain = Rain, or as pure

water-kind-tap = A tap, only its EC

water-kind-analysis = A full analysis

acid-choice-none = None

acid-choice-nitric = Nitric acid

acid-choice-phosphoric = Phosphoric acid

acid-choice-sulfuric = Sulfuric acid

acid-choice-citric = Citric acid (powder)

recipe-choice-hoagland-arnon1 = Hoagland and Arnon 1950, no. 1

recipe-choice-hoagland-arnon2 = Hoagland and Arnon 1950, no. 2

recipe-choice-steiner = Steiner 1984, universal

recipe-choice-sonneveld-straver-lettuce = Sonneveld and Straver 1994, lettuce

recipe-choice-modified-sonneveld = Mattson and Peters 2014, leafy greens

salt-calcium-nitrate = Calcium nitrate tetrahydrate

salt-calcium-ammonium-nitrate = Calcium nitrate, granular (15.5-0-0)

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

strength-by-conductivity = EC (needs a meter)

strength-by-nitrogen = Nitrogen (needs a scale only)

calcium-nitrate-double-salt = Granular, 15.5-0-0 with ammonium

calcium-nitrate-tetrahydrate = Crystals, tetrahydrate

daylight-by-radiation = Solar radiation

daylight-by-sunshine = Hours of sunshine

pipe-ends-open = Open: solution fills them

pipe-ends-capped = Capped with air: they want to float, weigh them down

pipe-ends-flooded = Filled, then capped

pipe-material-pvc = PVC

pipe-material-polyethylene = Polyethylene (HDPE)

pipe-material-polypropylene = Polypropylene

pipe-material-abs = ABS

stands-on-ground = Firm level ground

stands-on-slab = A ground slab of a building

stands-on-bench = A bench or table

stands-on-upper-floor = A floor with a room or air below

stands-on-balcony-or-roof = A balcony, deck or roof

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

shelter-rain-cover = Outdoors under a clear roof, open sides

shelter-plastic-shelter = Tunnel or house of plastic film

shelter-greenhouse = Glass greenhouse

shelter-windowsill = Indoors at a bright window

shelter-lamps = Indoors under lamps

climate-choice-upland-cool-humid = Upland, cool and humid

climate-choice-temperate-late-summer = Temperate, late summer to autumn

climate-choice-temperate-spring = Temperate, spring

climate-choice-maritime-summer = Cool coast, summer

climate-choice-mild-humid-coast = Mild humid coast, a porch

climate-choice-tropical-lowland = Tropical lowland, hot and humid

climate-choice-tropical-highland = Tropical highland, dry season

climate-choice-dry-summer = Inland, hot dry summer

climate-choice-desert-winter = Desert, winter

climate-choice-subtropical-winter = Subtropics, winter

climate-choice-room-under-lamps = A room under lamps

climate-choice-own = My own figures

foam-extruded-x = Extruded, 21 kg/m³ (type X)

foam-extruded-iv = Extruded, 25 kg/m³ (type IV, usual)

foam-extruded-vi = Extruded, 29 kg/m³ (type VI)

foam-expanded-i = Expanded beads, 15 kg/m³ (type I)

foam-expanded-viii = Expanded beads, 18 kg/m³ (type VIII)

foam-expanded-ii = Expanded beads, 22 kg/m³ (type II)

foam-expanded-ix = Expanded beads, 29 kg/m³ (type IX)

pot-choice-small = about 5 cm (2 in) wide, 5 cm deep

pot-choice-medium = about 7.5 cm (3 in) wide, 7.5 cm deep

pot-choice-deep = about 7.5 cm (3 in) wide, 10 cm deep

vessel-choice-bottle4 = 4 L bottle with a wide neck

vessel-choice-cut-bottle2 = 2 L bottle, top cut off

vessel-choice-bucket19 = 19 L (5 gal) bucket

vessel-choice-box45 = 45 L storage box

vessel-choice-tank240 = 2.4 × 1.2 m frame, lined

vessel-choice-tank720 = 7.35 × 1.25 m frame, lined

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

# Button.
forget = Forget

# Label of a kept blend's name.
blend-name = Name to keep this label under

# Button.
keep-blend = Keep this label for all plans

# Button where one of that name is kept.
keep-again = Keep it anew

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

label-pipe-price = Price of a metre of pipe

label-timber-price = Price of a metre of timber

label-liner-price = Price of a square metre of liner

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

label-label-nitrogen = Total nitrogen (N)

label-label-nitrate = Nitrate nitrogen

label-label-ammonium = Ammonium nitrogen

label-label-urea = Urea nitrogen

label-label-phosphate = Phosphate (P2O5)

label-label-potash = Potash (K2O)

label-label-calcium = Calcium (Ca)

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

label-stock-acalcium-nitrate = Stock A: calcium nitrate

label-stock-bblend = Stock B: blend

label-stock-bmagnesium-sulfate = Stock B: magnesium sulfate

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

label-elevation = Height above the sea

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

label-date-meaning = The date is the day of

label-dosing = How you measure out

label-blend = Blend, by its grade N-P2O5-K2O

label-strength-by = Set the strength by

label-calcium-nitrate = Kind of calcium nitrate

label-climate-kind = A place and season like

label-daylight-by = Light is known as

label-shelter = Shelter

label-measured = Water poured and depth read

hint-count = All filled and planted alike.

hint-height = Stand a ruler on the floor inside and read it at the rim.

hint-diameter = Lay a tape across the widest line inside.

hint-length = Between the inner faces, liner in place.

hint-bottom-length = The same, down at the floor.

hint-body-height = From the floor up to where it begins to narrow.

hint-shoulder-height = From there up to where the neck begins.

hint-cover-thickness = What the pots hang from. 0 if the pot hangs in the neck.

hint-pot-height = From the foot to the underside of the flange.

hint-pot-flange-diameter = The brim that keeps the pot from falling through.

hint-pot-immersion = The lowest 2 to 3 cm (about 1 in) is usual.

hint-fill-depth = Leave empty to have it worked out.

hint-board-count = Those that float in one tank.

hint-pipe-outside-diameter = Measure across the outside; a nominal size is not the true one.

hint-pipe-spacing = Leave empty to spread them evenly over the width.

hint-edge-distance = Leave empty for half the spacing.

hint-support-rating = From the builder's or maker's papers. Leave empty if you do not know; then do not build there.

hint-floor-drop = Measure with a water level; 0.5 cm is a good floor.

hint-brace-spacing = Corners count as braces. The solution pushes the sides out between them.

hint-prop-rows = Lengthwise, evenly between the sides; 0 for none.

hint-sheet-length = As sold, before cutting.

hint-pipe-count = They lie on the floor and carry the boards later.

hint-spacing-across = From plant to plant. It is also the room that a head may take.

hint-date = Year-month-day, such as 2027-03-01.

hint-seedling-age = Days from sowing. One to two weeks is usual.

hint-target-head = Fresh, cut above the pot. 150 to 250 g is usual for lettuce.

hint-growth-factor = Start with 0.75. 1 is the published growth model, which runs ahead of growers without pumps.

hint-water-factor = Start with 1. A crop that was followed teaches a better one.

hint-people = Leave empty if you do not plant every week.

hint-turnaround-days = Leave empty for 2 days.

hint-label-nitrogen = Copy every line from the bag. What it does not list stays empty or 0.

hint-target-conductivity = 1.2 to 1.8 mS/cm is usual for leafy greens in one charge.

hint-target-nitrogen = 100 to 200 mg/L is usual for leafy greens.

hint-raw-water-conductivity = Read it with the meter. Rain about 0.02, many taps 0.2 to 0.6 mS/cm.

hint-water-kind = Not sure? A tap with its EC will do.

hint-water-alkalinity = From the report; where it gives bicarbonate, enter 0.82 times that.

hint-water-sulfate = Where the report gives S, enter 3 times that.

hint-water-nitrate = Where the report gives nitrate as N, enter 4.43 times that.

hint-acid = Only where the pH would be too high. Never with unknown drain or battery acids.

hint-acid-strength = From the bottle's label.

hint-target-ph = 5.5 to 6.5 suits leafy greens.

hint-store-temperature = Salts fall out of strong stocks in the cold.

hint-recipe-strength = Recipes were made for circulating systems; 50 to 80% suits one charge.

hint-crops-in-arow = 1 is the safe answer. More save water and salts, but sodium builds up.

hint-sheet-price = In any currency. Leave empty if you do not care.

hint-salts = Choose from the list or type a formula, such as KNO3 or MgSO4.7H2O. Purity 100% unless the bag says less.

hint-stock-acalcium-nitrate = 120 g/L is usual.

hint-stock-bblend = 120 g/L of an 8-15-36 blend is usual.

hint-stock-bmagnesium-sulfate = The heptahydrate, Epsom salt. 72 g/L is usual.

hint-latitude = Degrees, north positive; south with a minus or an S.

hint-temperature-min = Where the plants stand, mean of the season.

hint-humidity = Mean of day and night where the plants stand.

hint-solar-radiation = From a weather service, mean of the season.

hint-light-through = Filled in from the shelter; change it if you measured it.

hint-lamp-flux = From the lamp's sheet or a quantum meter.

hint-carbon-dioxide = About 420 ppm outdoors.

hint-climate-kind = Fills in the figures below. Change any of them.

hint-blend = Fills in a typical label below. Copy the figures from your own bag.

hint-pipe = True outside diameters, not nominal sizes.

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
problem-measured-pairs = { $got } lines are filled in; { $needed } or more are needed.

# A file that was opened.
problem-not-a-plan = This is not a plan: it cannot be read from line { $line }, column { $column } on.

# Beside a field.
problem-beyond-any-solution = This asks for more than any solution holds.

problem-text-beyond-models = These figures lie together where the models cannot follow, such as a day without sun. Check climate and container.

# got and supported: versions of the file.
problem-newer-version = This plan was saved by a later version ({ $got }; this page reads up to { $supported }). Reload the page to get the later version.

# Beside a field. Here and below, got: the figure entered, limit: what the other entries allow, both with units.
conflict-neck-narrower-than-body = A neck of { $got } is wider than the body. At most { $limit }.

# got: thickness of the cover or board. limit: height of the pot.
conflict-pot-reaches-below-cover = The net pot is { $limit } high and would not reach through { $got }.

# limit: a diameter.
conflict-pot-narrows-downwards = A net pot is no wider at its foot than at its top: at most { $limit }.

# limit: diameter of the neck.
conflict-pot-passes-neck = The pot does not pass the neck of { $limit }.

# got: a spacing, or a number of plants.
conflict-pots-fit-cover = { $got } leaves no room for the flanges side by side. The limit is { $limit }.

# limit: diameter of the pot at its top.
conflict-flange-holds-pot = The flange must be wider than the pot's { $limit }, or the pot falls through.

# Lengths.
conflict-immersion-within-pot = The pot reaches only { $limit } below the cover, so it cannot stand { $got } deep.

# limit: a height of the pot.
conflict-pot-above-floor = The pot would stand on the floor. Lower than { $limit }.

# got: a depth.
conflict-within-rim = { $got } is above the rim. At most { $limit }.

# got: length or width of a board.
conflict-board-fits = A board of { $got } does not fit into the tank: at most { $limit }.

# got and limit: numbers of boards.
conflict-boards-fit-area = { $got } boards do not fit into the tank: at most { $limit }.

conflict-pipe-within-tank = This pipe leaves no room to float the boards above it in so low a tank.

# got and limit: numbers of pipes.
conflict-pipes-fit-width = { $got } pipes do not fit side by side: at most { $limit }.

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
conflict-dissolves-in-store = { $got } does not dissolve at the coldest of the store: at most { $limit }. Make the stock weaker, or keep it warmer.

# Beside the wanted EC or nitrogen.
conflict-target-above-raw-water = Your water alone has { $limit }. The target must be above that.

# Shares of a bag of fertilizer, as its label gives them.
conflict-nitrogen-forms-make-total = Total nitrogen is { $got }, but nitrate, ammonium and urea add up to { $limit }. One of them is not what the bag says.

# Plain numbers.
conflict-label-within-whole = What this label names makes at least { $got }% of the bag, and a bag holds { $limit }%. Check each line of it.

conflict-blend-conducts = Nothing on this label shows on an EC meter. Set the strength by nitrogen.

conflict-blend-has-nitrogen = This label has no nitrogen. Set the strength by EC.

# Beside a field.
field-left-empty = Left empty: { $value } is taken, as is usual.

# Beside a field, and after its name in the list of findings.
unusual-value = Unusual. Most are between { $low } and { $high }. Look again.

## results

event-planted = Seedlings go onto the solution

event-pot-foot-leaves = The level leaves the foot of the pots; water roots carry on

event-boards-rest = The boards come to rest on the pipes; the air gap opens

event-target-reached = Heads reach the mass to harvest at

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
pipe-heads-2 = Outside

# Heads of the pipe table.
pipe-heads-3 = Fill

# Heads of the pipe table.
pipe-heads-4 = Rests

# Heads of the pipe table.
pipe-heads-5 = Air gap

# Heads of the pipe table.
pipe-heads-6 = Verdict

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
stock-heads-2 = In a litre

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

## season

mark-fill = fill mark

mark-air = moist air

mark-never-above = never above

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

## doses

# What is measured out; begins with a small letter, as it stands after an amount.
material-blend = blend

# What is measured out.
material-stock-a = stock A

# What is measured out.
material-stock-b = stock B

# What is measured out. grade: 15.5-0-0.
material-calcium-nitrate-double-salt = calcium nitrate, granular ({ $grade })

# What is measured out.
material-calcium-nitrate-tetrahydrate = calcium nitrate tetrahydrate

# What is measured out.
material-magnesium-sulfate = magnesium sulfate heptahydrate (Epsom salt)

# An amount and what is measured out: 8 g blend. Several are joined by +.
dose-of = { $dose } { $material }

# In place of a list that would be long: how many salts are weighed.
salts-in-all = { $count } salts

# count is two or more.
all-doses-as-often = { $count } containers take { $count } times as much.

# count is two or more. doses: 16 g blend + 20 mL stock A.
all-doses = { $count } containers take { $doses }.

# Under the doses of one container, all with units but pH.
dose-more = { $ec } at 25 °C, pH { $ph }, { $nitrogen } nitrogen. For one container.

# charge: money for the fertilizer of one container. head: money for one plant of it.
cost-line = It costs about { $charge }, { $head } a head.

## findings

# Mark of a finding: the plan fails here.
weight-stop = Stop

# Mark of a finding: it may work, look again.
weight-caution = Take care

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

finding-immersion = The lowest { $immersion } of each pot stands in the solution at planting; { $low } to { $high } is usual.

finding-pots-hang-above = The pots hang { $by } above the solution at planting, so the medium stays dry. Fill higher or use deeper pots.

finding-overflows = The container overflows once pots or boards are in. Fill less.

finding-gap = Moist air gap of { $gap } at harvest; { $low } to { $high } is usual.

finding-boards-sink = The boards sink under pots and plants. Use thicker boards or fewer plants.

finding-rest-at-planting = The boards lie on the pipes from the first day. They float from a fill of { $depth } on.

finding-floats = The boards float at planting, { $clearance } clear of the pipes.

finding-never-rest = The boards still float at harvest, so no air gap opens and roots may lack air. Fill less, or use thicker pipes.

finding-little-left = Only { $depth } of solution is left under the boards at harvest; keep at least { $low }. A thicker pipe holds more.

finding-no-pipe-fits = No standard pipe gives a sound air gap here. See the table of pipes.

# nutrient: nitrogen, phosphorus, potassium, calcium or magnesium. The rest in grams.
finding-short = Too little { $nutrient } in the charge: { $supply } against { $need } that the crop takes.

# As before, with the day on which it begins.
finding-short-from-day = Too little { $nutrient } in the charge from day { $day } on: { $supply } against { $need } that the crop takes.

# After either of the two before.
finding-short-more = A stronger solution, another blend or another water must bring the rest.

finding-nutrients-last = Nitrogen, phosphorus, potassium, calcium and magnesium last to harvest.

finding-strong-at-end = The solution gets strong: about { $ec } at the end. Above { $limit } lettuce begins to suffer. Start weaker, or give more solution to each plant.

finding-urea = { $share } of the nitrogen is urea. It feeds slowly in still solution and a meter does not see it. Prefer a blend with nitrate.

finding-heavy = Full, the solution alone weighs { $mass }. More than about { $limit } is no load for one person: fill it where it will stand.

finding-floor-load = The solution loads what is under it with { $load }. Build on firm level ground. From about { $limit }, on any bench, deck, balcony or roof, ask a competent person and follow local code first.

finding-open-water = Small children can drown in a few centimetres of water. Keep the tank covered and fenced off, and never leave children alone with it.

finding-salts = Keep fertilizer and solution out of reach of children and animals, closed and named. Follow the product's label. Wash hands after mixing.

finding-electricity = Lamps and cords near water: use gear made for wet places on a protected (residual-current) outlet, well above the tank, with a drip loop, and let a licensed person wire it.

# minerals: one or more names of minerals, such as gypsum and lime.
finding-stocks-apart = Never pour stock A and stock B together undiluted: { $minerals } would fall out (saturation index up to { $index }).

# After the one before.
finding-stocks-thinned = They stay clear only once thinned { $times } times.

# After the two before.
finding-stocks-in-turn = Stir one into the full tank first, then the other.

finding-acid = Acid: gloves and eye protection, out of children's reach, and always pour acid into water, never water into acid. Add part of it, stir, measure the pH, go on. Follow the label.

# stock: stock A or stock B; the first letter of the sentence becomes a capital. share: per cent, without the sign.
finding-stock-clear = { $stock } stays clear at the coldest of the store; its salts take up { $share }% of what dissolves there.

# As before.
finding-stock-over-full = { $stock } does not stay clear: its salts are { $share }% of what dissolves at the coldest of the store.

# As before. minerals: one or more names of minerals.
finding-stock-falls-out = { $stock } does not stay clear: { $minerals } falls out.

# After one of the two before.
finding-stock-other-salts = Weaker does not help; use other salts.

# After one of the two before. share: per cent, without the sign.
finding-stock-weaker = Make it at most { $share }% of this strength, and pour more of it, or keep it warmer.

# low and high: EC.
finding-fitting-strength = In this climate a charge of { $low } to { $high } ends neither starved nor salty.

# low and high: EC.
finding-no-fitting-strength = No single strength fits: below { $low } a nutrient runs short, above { $high } the end gets salty. Give each plant more solution.

# nutrient: symbol of an element. form: nitrate, ammonium or nothing. reached and target: mg/L.
finding-target-missed = The salts on the shelf miss { $nutrient }{ $form ->
    [nitrate] {" as nitrate"}
    [ammonium] {" as ammonium"}
   *[none] {""}
}: { $reached } where the recipe asks { $target }.

# Electric charge of ions, in mmol.
finding-label-charges = The label of the blend does not balance: nitrate, phosphate and sulfate make { $anions } of charge in a gram, potassium, ammonium, calcium and magnesium only { $cations }. Check nitrate and phosphate against the bag.

finding-ph = pH { $ph } after mixing; { $low } to { $high } suits leafy greens.

# After the one before, where the pH is low.
finding-ph-low = Pure water does not buffer: part tap water brings it up, and it rises as the crop feeds.

# After it, where the pH is high.
finding-ph-high = Rain water or a little acid brings it down; see the fertilizer step.

finding-ph-drift = As the crop feeds, the pH drifts from { $from } to about { $to } (an outer bound: roots and air damp it).

# After the one before.
finding-ph-steady = With { $steady } of the nitrogen as ammonium instead of { $now } it would hold.

# After the two before: the pH.
finding-ph-measure = Measure it now and then.

finding-no-acid-needed = No acid is needed: the pH is { $ph } already.

# minerals: one or more names of minerals; the first letter of the sentence becomes a capital.
finding-falls-out = { $minerals } can fall out in the tank (saturation index { $index }). Use rain water, a lower pH or a weaker solution.

finding-analysis-agrees = The water analysis agrees with itself.

finding-analysis-disagrees = The water analysis does not agree with itself.

# After one of the two before.
finding-analysis-charge = Cations and anions differ by { $share }.

# After one of them.
finding-analysis-ec = The EC measured is { $share } of that of its ions.

# After the others, where the analysis does not agree.
finding-analysis-look = Look for a missing or mistyped line.

# item: what an analysis lists, such as Boron (FAO 29).
finding-water = { $item }: { $amount } in your water; up to { $limit } is without restriction.

# After the one before.
finding-water-severe = Severe: do not use it unmixed.

# After it.
finding-water-moderate = Slight to moderate.

finding-dilute-water = Mixed with rain, { $share } of your water and the rest rain meets every limit.

finding-salt-yield = Sodium chloride in the solution at the end leaves about { $share } of the full yield.

# crop: 2 for the second crop on the same solution.
finding-grow-on = Crop { $crop }: refill { $refill } of raw water and { $add_back } of the first charge (EC then { $ec }, sodium { $sodium }).

# After the one before.
finding-grow-on-drain = Better drain and start anew: too salty. Spread what is spent on soil that can use it, never into a stream or storm drain.

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
finding-midday-wilt = Expect wilting at midday: at { $max } the air is very dry (it lacks { $deficit } kPa of vapour; above { $limit } leaves lose more than roots bring). Leaves that stand up again by evening are no harm; wilting in the morning means the roots are in trouble. Give shade at midday.

finding-tip-burn = Tip burn is likely: { $light } of light a day (from about { $limit } on), warm at { $mean } and moist at { $humidity }. Give shade, move the air over the leaves, harvest smaller heads.

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

finding-not-validated = The growth model was made and tested for lettuce. For this crop dates and litres are a rough guide only.

# Where pots or roots lose the solution.
roots-mends-none = No single change of fill, pot or pipe mends it: take another container, or fewer and smaller plants.

# ways: some of the four below, with a semicolon between.
roots-mends-any = Any of these mends it: { $ways }.

# A way to mend. Also a button, which begins with a capital.
roots-way-fill-depth = fill to { $depth }

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

water-item-nitrate-nitrogen = Nitrate nitrogen (FAO 29; it feeds, count it)

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

inputs-stocks = Strength of each stock, volume you make up, and the coldest of the store.

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
card-rule-text = The level may only fall. Air roots grow in the moist gap that opens; water poured in later drowns them. Keep rain out. If it must be topped up, never above today's level.

# Heading.
card-watch = Watch for

# Heading.
card-cautions = Take care

# Heading.
card-notes = Notes

# What to watch for; the same for every plan.
watch-lines-1 = Mosquitoes: seal every gap wider than 1 mm; screen what must stay open.

# What to watch for; the same for every plan.
watch-lines-2 = Green water: light gets in. Cover it.

# What to watch for; the same for every plan.
watch-lines-3 = Midday wilt in hot sun that is gone by evening is no alarm; wilt in the morning is.

# What to watch for; the same for every plan.
watch-lines-4 = Brown slime or a foul smell on the roots: take the plant out, wash the container.

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
group-care-2 = A litre of water weighs a kilogram. Fill containers where they will stand.

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

## chances

offers-lasts = water

offers-feeds = food

# Heading of the fold.
chances = How sure is this?

# While changes are looked for.
looking = Looking for what would make it sure.

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

# Beside the check bar.
template-bar = 100 mm. If it is not, print again at 100%.

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

## build_figures

frame-checks-ground = firm ground

build-parts-spirit-level = a spirit level on a straight edge

build-parts-water-level = a water level: a clear hose filled with water

# Over that list.
hole-rows-heading = Middles of the holes from a corner, row by row

## build_lists

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

## built

built-name-sag = How the sag is worked out

built-name-clear-gap = How the clear gap is worked out

built-name-trim = How the trim is worked out

built-name-room = How the room at the edges is judged

built-name-ballast = How the ballast is worked out

built-name-uptake = How the water in the foam is worked out

built-name-cuts = How holes and cuts are worked out

built-name-cover = How the cover is worked out

built-name-level = How the floor is judged

built-name-sides = How the sides are worked out

built-name-load = How the load is worked out

frame-inputs-level = How much lower you say one end of the floor lies than the other.

## structure

fact-turns-over = Grown heads turn the boards over: they stand too high for the width. Take wider boards or lighter heads.

fact-sheet-too-small = The stock sheet is too small to cut a board or the cover from it.

fact-cover-light = This cover lets light through. Lay black film or a second layer over it, or algae grow and mosquitoes find the way.

fact-spirit-level = a spirit level on a straight edge

fact-water-level = a water level (a clear hose filled with water)

fact-above-rating = Nobody has said what it carries.

## glossary

# Opens the glossary.
glossary = Words and drawings

# What is in it.
glossary-more = What the words on this page mean. A letter before a word shows where it is in the drawing.

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

trial-hint-replicates = 1 to 50. Replicates: each on its own.

trial-hint-heads-per-unit = 1 to 200. Empty: as many as the plan has.

trial-hint-columns = 1 to 100. Empty: one row for each block.

trial-hint-seed = A whole number. The same one gives the same places.

trial-hint-difference = 1 to 200. Empty: 20.

trial-hint-power = 50 to 99. Empty: 80.

trial-hint-confidence = 50 to 99.9. Empty: 95.

trial-hint-unit-spread = 0.1 to 100, standard deviation of containers treated alike. Empty: 10, assumed. A past trial tells it.

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
differs-hint = One thing alone: whatever else differs too, nobody can tell apart from it.

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
design-hint = A block is a group of places alike, such as one end of a bench or one shelf; each holds every variant once. Use blocks where light or draught change along the bench.

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
paste-hint = A line for each container: its number, then grams of each head. Or with headings: unit, water_l, head_1_g, head_2_g; a line for each head does too. NA, a dash or nothing means missing. A trial laid out elsewhere comes with columns named unit, treatment and block.

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

## trial_problems

trial-problem-no-plan = There is no plan that this could differ from.

table-problem-no-records = there is no line to read.

table-problem-no-figures = there is no column of head masses or litres. The first column is the container.

table-problem-open-quote = a quotation mark is not closed.

# Over what is wrong with more than one field.
trial-waits = The layout waits until these entries are mended.

# Where cells of the records are wrong.
result-waits = The result waits until these records are mended.

## trial_tables

pair-note-one-spread = Tukey's honest differences: their intervals and chances hold for all pairs together.

pair-note-own-spreads = Differences of Games and Howell: each variant has a spread of its own; intervals and chances hold for all pairs together.

variance-lines-blocks = Blocks

variance-lines-treatments = Variants

variance-lines-units = Containers alike (error)

variance-lines-heads = Heads of one container

check-lines-head-mass = Sums of squares are in g². Variants are judged by containers, never by heads.

check-lines-water-per-kg = Sums of squares are in (L/kg)².

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

## notebook

notebook-problem-reading =  The container is not deeper.

csv-problem-table = There is nothing to read.

csv-problem-table-2 = A quotation mark is not closed.

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

# Where the kept plan is wrong.
notebook-plan-wrong = The plan kept in this notebook cannot be worked out:

# Where the models do not reach.
notebook-beyond = The models do not reach this far: no forecast can be given.

# Name of the picture.
levels = Level of the solution, day by day

# Heading.
top-up = Top-up

# In place of the second and third, where nothing was read.
level-key-plan = By the plan alone: middle, and eight seasons in ten

# Before anything was read.
top-up-waits = How much may be added is known once a level was read.

# Where the air roots forbid it.
add-nothing = Add nothing now

# Where none is needed.
no-top-up = No top-up is needed now.

# Heading.
close = When the crop is over

# Under it.
close-more = Read a last level, weigh the heads, then close the crop. It says what the crop measured and what it taught.

# Button.
close-crop = Close this crop

# Button.
reopen-crop = Open it again

# Before heads were weighed and a level was read.
not-measured = Litres per kilogram need the mass of the heads and a last level. Neither may be missing.

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
level-key-6 = Never above: air roots

# Heads of the table.
forecast-heads-1 = Eight seasons in ten:

# Heads of the table.
forecast-heads-2 = by the plan alone

# Heads of the table.
forecast-heads-3 = after your readings
