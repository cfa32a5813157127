//! What the page holds: the kept plans, which one is open, the units, and what follows from them.
//! Everything that can be derived is derived.

mod engine;
mod mends;
mod notes;
mod plans;
mod records;
mod settled;
mod tabs;

use std::collections::{BTreeMap, BTreeSet};
use std::ops::Deref;

use leptos::prelude::*;

pub use engine::{Engine, Latest};
pub use mends::Mended;
use notes::Notes;
pub use notes::{AcidIsWanted, Note, Remark};

use super::browser::{self, Found};
use super::building::Paper;
use super::words;
use crate::catalog::Keyed;
use crate::plan::notebook::Notebook;
use crate::plan::trial::Trial;
use crate::plan::{Entry, Field, FileError, Kept, Plan, Problem, Store, UnitSystem};

/// The four steps.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Step {
    /// Vessel, pots, boards.
    Container,
    /// Crop, spacing, dates.
    Crop,
    /// Water, blend, strength.
    Fertilizer,
    /// Air and light.
    Climate,
}

impl Step {
    /// In order.
    pub const ALL: [Self; 4] = [Self::Container, Self::Crop, Self::Fertilizer, Self::Climate];

    /// The step whose form holds a field.
    pub fn of(field: Field) -> Self {
        let path = field.path();
        match path.split('.').next() {
            Some("crop") => Self::Crop,
            Some("fertilizer") => Self::Fertilizer,
            Some("climate") => Self::Climate,
            _ => Self::Container,
        }
    }
}

/// A plan that was deleted, until something else is deleted.
#[derive(Clone, Debug, PartialEq)]
pub struct Deleted {
    place: usize,
    kept: Kept,
}

impl Deleted {
    /// Its name.
    pub fn name(&self) -> &str {
        &self.kept.plan.name
    }
}

/// The page's state: made once, for as long as the page stands, so that whatever answers an event holds
/// no more than where it is.
#[derive(Clone, Copy)]
pub struct App(&'static State);

impl Deref for App {
    type Target = State;

    fn deref(&self) -> &State {
        self.0
    }
}

/// What the page's state holds.
pub struct State {
    /// None until a plan is shown for the first time.
    engine: RwSignal<Option<&'static Engine>>,
    pub(super) store: RwSignal<Store>,
    /// The open plan.
    pub plan: Memo<Option<Plan>>,
    solved: Memo<Option<Result<Latest, Vec<Problem>>>>,
    /// The latest sound outcome of the open plan; stays while a field is being mended.
    pub outcome: Memo<Latest>,
    /// The problems of the open plan.
    pub problems: Memo<Vec<Problem>>,
    /// The fields that count under the present choices.
    pub used: Memo<BTreeSet<Field>>,
    notes: Notes,
    /// Changes whenever the plan does, except by what is being typed into a field.
    pub written: Memo<u32>,
    typing: StoredValue<bool>,
    /// The units.
    pub units: Memo<UnitSystem>,
    /// Key of the language. The words themselves follow nothing: whatever shows them follows this.
    pub language: RwSignal<&'static str>,
    /// The step whose form is shown.
    pub step: RwSignal<Step>,
    /// Day shown in the drawing; `None` is the last.
    pub day: RwSignal<Option<usize>>,
    /// The plan that was deleted last.
    pub deleted: RwSignal<Option<Deleted>>,
    mended: RwSignal<Option<Mended>>,
    /// What is printed.
    pub paper: RwSignal<Paper>,
    /// Whether the browser keeps plans.
    pub keeps: RwSignal<bool>,
    /// A stored text that could not be read.
    pub set_aside: RwSignal<Option<String>>,
    /// Plans that came by link or file and wait for a yes or no.
    pub brought: RwSignal<Option<Brought>>,
    /// Whether another tab wrote other plans.
    pub elsewhere: RwSignal<bool>,
    /// Number of the trial that is shown, if one is.
    pub trial: RwSignal<Option<usize>>,
    /// Number of the notebook that is shown, if one is.
    pub notebook: RwSignal<Option<usize>>,
    /// The open plan's link with the page's address before it.
    pub address: RwSignal<Option<String>>,
    settled: RwSignal<Latest>,
    listed: RwSignal<Latest>,
    tabled: RwSignal<Latest>,
    rested: RwSignal<Latest>,
}

/// What a file holds.
pub type Filed = (Vec<Plan>, Vec<Trial>, Vec<Notebook>);

/// What came from outside.
#[derive(Clone, Debug, PartialEq)]
pub enum Brought {
    /// By a link, as it stands in the address.
    Link(String),
    /// In a file.
    File(Result<Filed, FileError>),
}

impl App {
    /// Opens the kept plans.
    pub fn open(found: Found) -> Self {
        let Found {
            store,
            usable,
            keeps,
            set_aside,
        } = found;
        let engine = RwSignal::new(None::<&'static Engine>);
        let store = RwSignal::new(store);
        let plan = Memo::new(move |_| {
            store.with(|store| {
                let open = store.open?;
                store
                    .plans
                    .iter()
                    .find(|kept| kept.id == open)
                    .map(|kept| kept.plan.clone())
            })
        });
        let open_id = Memo::new(move |_| store.with(|store| store.open));
        let solved = Memo::new(move |_| {
            let engine = engine.get()?;
            plan.with(|plan| Some((engine.solve)(plan.as_ref()?)))
        });
        // The outcome of before stands while a number is half typed, but never that of another
        // plan.
        let of = StoredValue::new(None);
        let outcome = Memo::new(move |before: Option<&Latest>| {
            let id = open_id.get();
            let same = of.get_value() == id;
            of.set_value(id);
            solved.with(|solved| match (solved, before) {
                (Some(Ok(outcome)), _) => outcome.clone(),
                (Some(Err(_)), Some(before)) if same => before.clone(),
                _ => Latest(None),
            })
        });
        let problems = Memo::new(move |_| {
            solved.with(|solved| match solved {
                Some(Err(problems)) => problems.clone(),
                _ => Vec::new(),
            })
        });
        let used = Memo::new(move |_| {
            let used = |engine: &Engine| plan.with(|plan| plan.as_ref().map(engine.used));
            engine.get().and_then(used).unwrap_or_default()
        });
        let typing = StoredValue::new(false);
        let written = Memo::new(move |before: Option<&u32>| {
            plan.track();
            let before = before.copied().unwrap_or_default();
            before.wrapping_add(u32::from(!typing.get_value()))
        });
        let units = Memo::new(move |_| {
            store
                .with(Store::unit_system)
                .unwrap_or(if browser::prefers_us_units() {
                    UnitSystem::UsCustomary
                } else {
                    UnitSystem::Metric
                })
        });
        let app = Self(Box::leak(Box::new(State {
            engine,
            store,
            plan,
            solved,
            outcome,
            problems,
            used,
            notes: StoredValue::new(BTreeMap::new()),
            written,
            typing,
            units,
            language: RwSignal::new(words::language()),
            step: RwSignal::new(Step::Container),
            day: RwSignal::new(None),
            deleted: RwSignal::new(None),
            mended: RwSignal::new(None),
            paper: RwSignal::new(Paper::Card),
            keeps: RwSignal::new(keeps),
            set_aside: RwSignal::new(set_aside),
            brought: RwSignal::new(None),
            elsewhere: RwSignal::new(false),
            trial: RwSignal::new(None),
            notebook: RwSignal::new(None),
            settled: RwSignal::new(Latest(None)),
            listed: RwSignal::new(Latest(None)),
            tabled: RwSignal::new(Latest(None)),
            rested: RwSignal::new(Latest(None)),
            address: RwSignal::new(None),
        })));
        app.note_from_now_on();
        app.settle_from_now_on();
        if usable {
            app.keep_from_now_on();
            browser::on_change_elsewhere(move || {
                let other = store.with_untracked(browser::stored_elsewhere).is_some();
                app.elsewhere.set(other);
            });
        }
        app
    }

    /// Looks whether the address brings a plan.
    pub fn look_at_address(self) {
        if let Some(fragment) = browser::fragment() {
            self.brought.set(Some(Brought::Link(fragment)));
            browser::focus_soon("brought");
        }
    }

    /// Puts away what came from outside.
    pub fn put_away(self) {
        self.brought.set(None);
        browser::clear_fragment();
        browser::focus_soon(if self.plan_is_open() {
            "step-1"
        } else {
            "welcome"
        });
    }

    /// Whether a plan is open.
    pub fn plan_is_open(self) -> bool {
        self.plan.with(Option::is_some)
    }

    /// Whether the open plan has problems.
    pub fn has_problems(self) -> bool {
        self.solved.with(|solved| matches!(solved, Some(Err(_))))
    }

    /// Changes the open plan.
    pub fn edit(self, change: impl FnOnce(&mut Plan)) {
        self.store.update(|store| {
            let open = store.open;
            if let Some(kept) = store.plans.iter_mut().find(|kept| Some(kept.id) == open) {
                change(&mut kept.plan);
            }
        });
    }

    /// Writes what is being typed into a field: no other field has to look whether it changed.
    pub fn set_typed(self, field: Field, value: Entry) {
        self.typing.set_value(true);
        self.set_entry(field, value);
        // Looks at the plan now, while this is known.
        self.written.with_untracked(|_| ());
        self.typing.set_value(false);
    }

    /// Writes an entry of the open plan.
    pub fn set_entry(self, field: Field, value: Entry) {
        self.edit(|plan| {
            if let Some(entry) = field.entry_mut(plan) {
                *entry = value;
            }
        });
    }

    /// The entry of a field of the open plan.
    pub fn entry(self, field: Field) -> Entry {
        self.plan
            .with(|plan| plan.as_ref().and_then(|plan| field.entry(plan).cloned()))
            .unwrap_or_default()
    }

    /// The usual value that stands in for a field left empty.
    pub fn assumed(self, field: Field) -> Option<f64> {
        self.plan.with(|plan| {
            let plan = plan.as_ref()?;
            field
                .entry(plan)?
                .is_blank()
                .then(|| field.if_unknown(plan))?
        })
    }

    /// Chooses the units; no plan changes.
    pub fn choose_units(self, units: UnitSystem) {
        self.store
            .update(|store| units.key().clone_into(&mut store.units));
    }

    /// Whether the day of sowing is over by the device's clock.
    pub fn sowing_is_past(self) -> bool {
        self.sowing(|day| day < browser::today().as_str())
    }

    /// Whether the day of sowing is far off by the device's clock.
    pub fn sowing_is_far(self) -> bool {
        /// A plan for so soon was dated on purpose, or is not worth a word.
        const FAR_DAYS: u32 = 31;
        self.sowing(|day| day > browser::in_days(FAR_DAYS).as_str())
    }

    /// What holds of the day of sowing, if there is one.
    fn sowing(self, holds: impl Fn(&str) -> bool) -> bool {
        let of = |outcome: &Latest| Some(holds(&outcome.as_ref()?.calendar.seeding));
        self.settled_with(of).unwrap_or(false)
    }

    /// Speaks another language; no plan changes.
    pub fn choose_language(self, key: &str) {
        browser::choose_language(key, self.keeps.get_untracked(), move |spoken| {
            if spoken {
                self.language.set(words::language());
                browser::focus_soon("language");
            }
        });
    }

    /// Shows the form that holds a field and moves the focus to it.
    pub fn go_to(self, field: Field) {
        self.step.set(Step::of(field));
        browser::soon(move || {
            // A salt by its own formula is entered in a box beside the list.
            if !browser::focus(&own_id(field)) {
                browser::focus(&field_id(field));
            }
        });
    }
}

/// The element id of a field's input.
pub fn field_id(field: Field) -> String {
    field.path().replace(['.', '[', ']'], "-")
}

/// The element id of the box beside a list in which something of one's own is typed.
pub fn own_id(field: Field) -> String {
    format!("{}-own", field_id(field))
}

/// The state of the page that a component stands in.
pub fn app() -> App {
    expect_context::<App>()
}
