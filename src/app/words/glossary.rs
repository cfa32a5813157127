//! The words of the trade, as the page uses them.

/// A group of words that belong to one drawing.
pub struct Chapter {
    pub name: &'static str,
    /// What the drawing shows, for those who do not see it.
    pub drawing: &'static str,
    /// Word and meaning. The first words have a letter in the drawing, in order.
    pub terms: &'static [(&'static str, &'static str)],
}

/// The chapters, in the order of their drawings.
pub const CHAPTERS: [Chapter; 5] = [
    Chapter {
        name: "In the container",
        drawing: "A bucket cut open, on the day of planting and near harvest: the solution has fallen, and roots hang in the air above it.",
        terms: &[
            (
                "Rim",
                "The upper edge of the inside of a container. Depths are measured down from it or up from the floor.",
            ),
            (
                "Cover",
                "The lid, sheet or board that carries the plants and keeps light and insects out.",
            ),
            (
                "Net pot",
                "A slotted pot. Its flange rests on the cover, its foot stands in the solution on the day of planting, so that the medium in it stays moist.",
            ),
            (
                "Fill mark",
                "The level to fill to before planting. Everything the crop will drink is in there; nothing is added later.",
            ),
            (
                "Nutrient solution",
                "Water with all the fertilizer dissolved in it.",
            ),
            (
                "Moist air gap",
                "The air between the falling solution and the cover. It has to open early enough and must stay moist.",
            ),
            (
                "Air roots",
                "Short, branched roots that grow in the moist air gap and take up oxygen there. They drown when the level is raised again.",
            ),
            (
                "Water roots",
                "Roots in the solution. They drink and feed, and have to keep up with the falling level.",
            ),
            (
                "Never above",
                "The highest level that a top-up may reach: above it are air roots.",
            ),
            (
                "Head",
                "One plant, cut above its pot. Its mass is the fresh mass.",
            ),
        ],
    },
    Chapter {
        name: "Boards that float, then rest",
        drawing: "A tank cut open twice: a board floats on a high level with its pipe below; later the level is lower and the board rests on the pipe.",
        terms: &[
            (
                "Floating board",
                "A sheet of foam that carries pots and plants on the solution.",
            ),
            (
                "Draught",
                "How deep the underside of a floating board lies in the solution. It grows with the plants.",
            ),
            (
                "Pipe",
                "Lies on the floor under the boards. Its outside diameter decides where the boards come to rest.",
            ),
            (
                "Rest",
                "The day on which the falling level sets the boards down on their pipes. From then on the moist air gap opens.",
            ),
            (
                "Sag",
                "How far a resting board or a cover bends between its supports in the long run.",
            ),
            ("Clear gap", "What the sag leaves of the moist air gap."),
        ],
    },
    Chapter {
        name: "What is dissolved",
        drawing: "A bag with three numbers and a jug of raw water beside two stock bottles A and B.",
        terms: &[
            (
                "Grade",
                "The three numbers of a blend, N-P2O5-K2O: nitrogen, phosphate and potash as per cent of its mass.",
            ),
            (
                "Raw water",
                "Your water before anything is dissolved in it.",
            ),
            (
                "Stock A",
                "A strong solution of calcium nitrate. It is kept apart, because calcium falls out with sulfate and phosphate.",
            ),
            (
                "Stock B",
                "A strong solution of the blend and of magnesium sulfate.",
            ),
            (
                "EC",
                "Electrical conductivity at 25 °C, in millisiemens per centimetre: how much salt is dissolved, not which.",
            ),
            (
                "Alkalinity",
                "What neutralises acid in the water, as calcium carbonate. High alkalinity lifts the pH as plants drink.",
            ),
            (
                "Chelate",
                "Iron or another metal held in a ring of a larger molecule, so that it stays dissolved.",
            ),
            (
                "Falls out",
                "A salt that does not stay dissolved and settles as a solid: the plants do not get it.",
            ),
        ],
    },
    Chapter {
        name: "A crop in time",
        drawing: "A line of days: seed, a seedling in a pot, a grown head with the level much lower.",
        terms: &[
            (
                "Seeding",
                "The day on which seeds are laid into the medium.",
            ),
            (
                "Transplanting",
                "The day on which seedlings move onto the solution. The page counts days from here: it is day 0.",
            ),
            (
                "Harvest",
                "The day on which the mean head has the mass that you ask for.",
            ),
            (
                "Succession",
                "Plantings one after the other, so that there are heads every week.",
            ),
            (
                "Growth factor, water factor",
                "Numbers that make the model grow or drink more or less than the published one. A crop that you followed teaches them.",
            ),
            (
                "100 such seasons",
                "The same plan lived through many times with other weather and other plants: in how many of a hundred it goes well.",
            ),
        ],
    },
    Chapter {
        name: "Air and light",
        drawing: "The sun and a lamp over a leaf that gives off water into the air.",
        terms: &[
            (
                "Solar radiation",
                "The energy of sunlight that reaches a square metre in a day, in megajoules.",
            ),
            (
                "Photon flux (PPFD)",
                "How many photons that plants can use reach the leaves, in micromoles on a square metre each second. Lamps are sold by it.",
            ),
            (
                "Water given off",
                "What leaves lose to the air, more in sun, warmth and dry air. Nearly all of the solution goes this way.",
            ),
            (
                "Relative humidity",
                "How much water vapour the air holds, as a share of what it could hold at that temperature.",
            ),
            (
                "Shelter",
                "What stands between the sky and the plants: it takes light away and slows the wind.",
            ),
        ],
    },
];
