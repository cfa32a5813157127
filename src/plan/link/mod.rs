//! A whole plan in a few hundred letters, for the end of an address or a QR code.
//!
//! `P-` and then, in base 32: the version, the ready plan that this one is nearest to, every field
//! in which the two differ, and a checksum over all of it. The frame (letters and checksum) is the
//! same for all versions, so that a later link is told from a damaged one.
//!
//! Links are a contract: what a version's lists and ready plans say is never changed, only added to.

mod bases;
mod decimal;
mod frame;
mod leaves;
mod names;
mod pack;

pub use names::{PATHS as LINK_PATHS, WORDS as LINK_WORDS};

use serde::Serialize;
use serde_json::Value;

use super::model::Plan;
use decimal::Decimal;
use leaves::{Leaf, Leaves, Place, flatten, raise};

/// What every link begins with. No element of the page has an id with a capital letter, so a link
/// is never taken for a place on the page.
const MARK: &str = "P-";
/// The version of links that this program writes.
const VERSION: u8 = 1;
/// The version of the plan documents that links of version 1 carry.
const DOCUMENT: Decimal = Decimal {
    negative: false,
    digits: 1,
    exponent: 0,
};
/// The longest link that is written or read, in characters: about the most that a QR code takes at
/// arm's length, and a bound on the work that a link can cause.
pub const LONGEST_LINK: usize = 2000;

/// Why a text gives no plan, or a plan no link.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum LinkError {
    /// The text does not begin as a link does.
    NotALink,
    /// Letters are missing, changed or added.
    Damaged,
    /// More letters than a link may have.
    TooLong {
        /// How many there are.
        got: usize,
        /// How many there may be.
        most: usize,
    },
    /// A sound link made by a later version.
    NewerVersion,
}

impl Plan {
    /// Writes the plan as a link: what stands after `#` in an address.
    ///
    /// # Errors
    /// [`LinkError::TooLong`] where texts or lists are too long to be carried.
    ///
    /// ```
    /// use slackwater::plan::{Example, Plan};
    /// let plan = Example::Bucket.plan();
    /// let link = plan.to_link().unwrap();
    /// assert_eq!(Plan::from_link(&link), Ok(plan));
    /// ```
    pub fn to_link(&self) -> Result<String, LinkError> {
        let leaves = leaves_of(self);
        let empty = leaves_of(&Self::default());
        let shortest = (0..=bases::BASES.len())
            .filter_map(|base| {
                let number = u8::try_from(base).ok()?;
                let mut bytes = vec![VERSION, number];
                let mut against = empty.clone();
                against.extend(base_leaves(base).ok()?);
                pack::write(&leaves, &against, &mut bytes);
                Some(bytes)
            })
            .min_by_key(Vec::len)
            .unwrap_or_default();
        let link = format!("{MARK}{}", frame::seal(shortest));
        if link.len() > LONGEST_LINK || leaves::longest_list(&leaves) > pack::LONGEST_LIST {
            return Err(LinkError::TooLong {
                got: link.len(),
                most: LONGEST_LINK,
            });
        }
        Ok(link)
    }

    /// Reads a link, or a whole address that ends in one.
    ///
    /// # Errors
    /// [`LinkError`]: the text is no link, damaged, too long, or from a later version. Nothing is
    /// guessed: a link gives its whole plan or none.
    pub fn from_link(text: &str) -> Result<Self, LinkError> {
        let text = text.trim();
        let link = text.rsplit_once('#').map_or(text, |(_, link)| link);
        if link.len() > LONGEST_LINK {
            return Err(LinkError::TooLong {
                got: link.len(),
                most: LONGEST_LINK,
            });
        }
        let letters = link.strip_prefix(MARK).ok_or(LinkError::NotALink)?;
        let bytes = frame::open(letters).ok_or(LinkError::Damaged)?;
        let [version, base, ref differences @ ..] = bytes[..] else {
            return Err(LinkError::Damaged);
        };
        if version == 0 {
            return Err(LinkError::Damaged);
        }
        if version > VERSION || usize::from(base) > bases::BASES.len() {
            return Err(LinkError::NewerVersion);
        }
        let mut leaves = base_leaves(usize::from(base))?;
        pack::read(differences, &mut leaves)?;
        // A document of a damaged kind cannot come through the checksum by chance.
        Self::from_json(&raise(&leaves).to_string()).map_err(|_| LinkError::Damaged)
    }
}

fn leaves_of(plan: &Plan) -> Leaves {
    let mut leaves = Leaves::new();
    // What was written as JSON can be read as JSON.
    let document: Value = serde_json::from_str(&plan.to_json()).unwrap_or_default();
    flatten(&document, &mut leaves);
    leaves
}

/// What stands in the plan that a link is told against: number 0 is the one in which nothing is
/// filled in, which is all that is not said.
fn base_leaves(number: usize) -> Result<Leaves, LinkError> {
    let mut leaves = Leaves::new();
    let version = Place {
        path: "version".to_owned(),
        indices: Vec::new(),
    };
    leaves.insert(version, Leaf::Number(DOCUMENT));
    if let Some(letters) = number.checked_sub(1).and_then(|at| bases::BASES.get(at)) {
        let bytes = frame::bytes(letters).ok_or(LinkError::Damaged)?;
        pack::read(&bytes, &mut leaves)?;
    }
    Ok(leaves)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ready_plans_of_version_1_can_be_read() {
        for number in 1..=bases::BASES.len() {
            assert!(base_leaves(number).is_ok_and(|leaves| leaves.len() > 100));
        }
    }

    #[test]
    fn what_is_no_link_is_told_from_what_is_damaged() {
        let link = Plan::default().to_link().expect("short");
        assert_eq!(Plan::from_link(""), Err(LinkError::NotALink));
        assert_eq!(Plan::from_link("step-1"), Err(LinkError::NotALink));
        assert_eq!(Plan::from_link("P-"), Err(LinkError::Damaged));
        assert_eq!(
            Plan::from_link(&link[..link.len() - 1]),
            Err(LinkError::Damaged)
        );
        assert_eq!(
            Plan::from_link(&format!("P-{}", "0".repeat(3000))),
            Err(LinkError::TooLong {
                got: 3002,
                most: LONGEST_LINK
            })
        );
    }

    #[test]
    fn a_whole_address_will_do() {
        let link = Plan::default().to_link().expect("short");
        let address = format!(" https://example.org/a/b/#{link}\n");
        assert_eq!(Plan::from_link(&address), Ok(Plan::default()));
    }

    #[test]
    fn a_later_link_is_told_from_a_damaged_one() {
        let later = |bytes: &[u8]| format!("{MARK}{}", frame::seal(bytes.to_vec()));
        assert_eq!(
            Plan::from_link(&later(&[VERSION + 1, 0, 200, 200])),
            Err(LinkError::NewerVersion)
        );
        assert_eq!(
            Plan::from_link(&later(&[VERSION, 99])),
            Err(LinkError::NewerVersion)
        );
        // A field, or a choice, that was added since.
        assert_eq!(
            Plan::from_link(&later(&[VERSION, 0, 0xFF, 0x7F, 0])),
            Err(LinkError::NewerVersion)
        );
        assert_eq!(
            Plan::from_link(&later(&[VERSION, 0, 3, 0xFC, 0x7F])),
            Err(LinkError::NewerVersion)
        );
    }
}
